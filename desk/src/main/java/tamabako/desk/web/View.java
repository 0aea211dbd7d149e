package tamabako.desk.web;

import java.util.List;

/// What every template knows about the page it is part of.
///
/// @param words the texts of the reader's language
/// @param languages every language the desk speaks
/// @param path the address without its query
/// @param here the address that shows this page again, for the language switch
/// @param who who looks at it
public record View(Words words, List<Words> languages, String path, String here, Who who) {

    public View {
        languages = List.copyOf(languages);
    }

    /// The text of that key, with the values in their places.
    public String say(String key, Object... values) {
        return words.say(key, values);
    }

    /// The text for a count.
    public String count(String key, long count) {
        return words.count(key, count);
    }

    /// Whether the page lies at or below that address.
    public boolean isUnder(String address) {
        return path.equals(address) || path.startsWith(address + "/");
    }

    /// Whether whoever looks at it may do what teachers do, such as adding pupils. What they may
    /// not do is not offered.
    public boolean isForTeachers() {
        return who.may(Access.TEACHER);
    }
}
