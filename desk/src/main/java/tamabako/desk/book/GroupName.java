package tamabako.desk.book;

import tamabako.desk.sheet.Form;
import tamabako.desk.web.Words;
import tamabako.records.ClassBook;

/// The field in which a group gets its name.
final class GroupName {

    /// The longest name of a group.
    static final int LONGEST = 60;

    private GroupName() {}

    /// The name as it was written. What is wrong with it is told in the form.
    ///
    /// @param own the identity of the group that is renamed, blank for a new one
    static String read(Form form, ClassBook book, String own, Words words) {
        String name = form.line("group", LONGEST);
        if (name.isBlank()) {
            form.blame("group", words.say("book.group-nameless"));
        }
        book.groups().all().stream()
                .filter(group -> group.name().equalsIgnoreCase(name) && !group.id().equals(own))
                .findFirst()
                .ifPresent(
                        group -> form.blame("group", words.say("book.group-twice", group.name())));
        return name;
    }
}
