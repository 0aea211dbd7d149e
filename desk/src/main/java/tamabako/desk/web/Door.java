package tamabako.desk.web;

import java.util.Optional;

/// The one place where it is decided who comes in.
public interface Door {

    /// Who that caller is.
    Who who(Caller caller);

    /// What they get instead of a route that is for `access`; empty where they may come in.
    ///
    /// @param verb looking, or sending a form
    /// @param here the address asked for, to come back to
    Optional<Reply> turnAway(Who who, Access access, Verb verb, String here);

    /// A door that stands open to whoever sits at this computer.
    static Door open() {
        return new Door() {
            @Override
            public Who who(Caller caller) {
                return new Who.AtThisComputer();
            }

            @Override
            public Optional<Reply> turnAway(Who who, Access access, Verb verb, String here) {
                return Optional.empty();
            }
        };
    }
}
