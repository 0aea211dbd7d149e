package tamabako.desk.web;

/// What a visitor may do at an address: look, or send a form.
public enum Verb {
    GET,
    POST
}
