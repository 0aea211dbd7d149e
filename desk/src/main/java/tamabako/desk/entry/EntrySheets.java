package tamabako.desk.entry;

import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tamabako.desk.web.Words;
import tamabako.problems.HalfWidth;
import tamabako.problems.Sheet;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperSection;
import tamabako.records.ClassBook;

/// The sheets and the forms of papers that can be entered, by the number printed on them.
///
/// @param clock tells when a form of a paper is first worked
record EntrySheets(ClassBook book, InstantSource clock) {

    private static final int LETTERS = 26;

    /// A sheet, or a form of a paper, to be entered.
    ///
    /// @param sheet what is worked
    /// @param sections the parts of a paper; none for a sheet
    record Entered(Sheet sheet, List<PaperSection> sections) {
        Entered {
            sections = List.copyOf(sections);
        }
    }

    /// The identity that a number stands for, as it is printed or typed from there.
    Optional<String> identity(String number) {
        String typed =
                HalfWidth.of(number)
                        .strip()
                        .toUpperCase(Locale.ROOT)
                        .replaceFirst("^([A-Z0-9]{4})[ -]?([A-Z0-9]{4})$", "$1-$2");
        if (book.sheets().find(typed).isPresent()) {
            return Optional.of(typed);
        }
        return PaperId.read(number) instanceof PaperId.Read.Known(PaperId id)
                        && book.papers().setOf(id.toString()).isPresent()
                ? Optional.of(id.toString())
                : Optional.empty();
    }

    /// The sheet of that identity, if there is one.
    Optional<Entered> find(String id, Words words) {
        Optional<Paper> paper = paper(id);
        return paper.map(one ->
                        new Entered(
                                new Sheet(one.id(), title(one, words), one.problems()),
                                one.sections()))
                .or(() ->
                        book.sheets().find(id).map(kept -> new Entered(kept.sheet(), List.of())));
    }

    /// The sheet of that identity, for work that is about to be kept: a form of a paper is put in
    /// the book as a sheet where it is not one yet.
    Optional<Sheet> forWork(String id, Words words) {
        if (book.sheets().find(id).isEmpty()) {
            paper(id).ifPresent(paper ->
                    book.sheets().keep(paper, title(paper, words), clock.instant()));
        }
        return book.sheets().find(id).map(kept -> kept.sheet());
    }

    private Optional<Paper> paper(String id) {
        return book.papers().setOf(id).flatMap(book.papers()::find).stream()
                .flatMap(set -> set.papers().stream())
                .filter(paper -> paper.id().equals(id))
                .findFirst();
    }

    private static String title(Paper paper, Words words) {
        String letter =
                paper.form() <= LETTERS
                        ? String.valueOf((char) ('A' + paper.form() - 1))
                        : "" + paper.form();
        return words.say("entry.paper-title", paper.grade().name().in(words.language()), letter);
    }
}
