package tamabako.records.roster;

import java.util.ArrayList;
import java.util.List;
import tamabako.records.ClassBook;

/// Plans what a roster does to a class book, and does it.
public final class Importing {

    private Importing() {}

    /// What came of writing.
    public sealed interface Written {
        /// It was done.
        record Done(Plan plan) implements Written {}

        /// The book was changed since the plan was looked at; nothing was done, and this is what
        /// would be done now.
        record Outdated(Plan plan) implements Written {}
    }

    /// What the roster would do to the book as it is now.
    public static Plan plan(ClassBook book, Read.Roster roster, Wishes wishes) {
        return Planner.plan(book.groups().all(), book.pupils().all(), roster, wishes);
    }

    /// What the roster would do to a book with nothing in it.
    public static Plan planForNewBook(Read.Roster roster, Wishes wishes) {
        return Planner.plan(List.of(), List.of(), roster, wishes);
    }

    /// Does it, in one transaction.
    public static Plan write(ClassBook book, Read.Roster roster, Wishes wishes) {
        List<Plan> done = new ArrayList<>();
        book.whole(() -> done.add(kept(book, plan(book, roster, wishes))));
        return done.getFirst();
    }

    /// Does it, if it is still what `fingerprint` was taken of.
    public static Written write(
            ClassBook book, Read.Roster roster, Wishes wishes, String fingerprint) {
        List<Written> done = new ArrayList<>();
        book.whole(() -> {
            Plan plan = plan(book, roster, wishes);
            done.add(
                    plan.fingerprint().equals(fingerprint)
                            ? new Written.Done(kept(book, plan))
                            : new Written.Outdated(plan));
        });
        return done.getFirst();
    }

    private static Plan kept(ClassBook book, Plan plan) {
        plan.groups().forEach(book.groups()::keep);
        book.pupils()
                .keep(
                        plan.steps().stream()
                                .filter(step -> !(step instanceof Step.Same))
                                .map(Step::pupil)
                                .toList());
        return plan;
    }
}
