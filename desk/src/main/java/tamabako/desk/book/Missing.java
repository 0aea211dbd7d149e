package tamabako.desk.book;

import java.util.Optional;
import java.util.function.Function;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Pupil;

/// What is answered where an address names a group or a pupil who is not in the book.
public final class Missing {

    private Missing() {}

    public static Reply orGroup(ClassBook book, Request request, Function<Group, Reply> answer) {
        Optional<Group> group = book.groups().find(request.part("id"));
        return group.map(answer).orElseGet(() -> Reply.trouble(404, "book-group"));
    }

    public static Reply orPupil(ClassBook book, Request request, Function<Pupil, Reply> answer) {
        Optional<Pupil> pupil = book.pupils().find(request.part("id"));
        return pupil.map(answer).orElseGet(() -> Reply.trouble(404, "book-pupil"));
    }
}
