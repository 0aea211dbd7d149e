package tamabako.paper.wish;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import tamabako.problems.grade.Label;

/// How papers are to be printed.
///
/// @param language the language of the words of print; one that is not known is printed in English
/// @param parts what is printed of each paper; a part that a paper does not have is left out
/// @param size normal or large print
/// @param page the paper that is printed on
/// @param title what stands above the name of the grade; empty for the name of its ladder
/// @param ladder the name of the ladder; empty for a ladder that is shipped
/// @param date the date as it is to stand on the paper; empty for a line to write it on
public record PaperPrintWish(
        Locale language,
        Set<PaperPart> parts,
        Size size,
        PageSize page,
        Optional<String> title,
        Optional<Label> ladder,
        Optional<String> date) {

    /// Everything, in English, at normal size, on A4.
    public static final PaperPrintWish ENGLISH =
            new PaperPrintWish(
                    Locale.ENGLISH,
                    EnumSet.allOf(PaperPart.class),
                    Size.NORMAL,
                    PageSize.A4,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());

    /// The same in Japanese.
    public static final PaperPrintWish JAPANESE = ENGLISH.in(Locale.JAPANESE);

    public PaperPrintWish {
        parts = Collections.unmodifiableSet(new TreeSet<>(parts));
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("A wish is for one part of a paper at least.");
        }
    }

    /// The same wish in another language.
    public PaperPrintWish in(Locale changed) {
        return new PaperPrintWish(changed, parts, size, page, title, ladder, date);
    }

    /// The same wish for these parts only.
    public PaperPrintWish with(PaperPart first, PaperPart... others) {
        return new PaperPrintWish(
                language, EnumSet.of(first, others), size, page, title, ladder, date);
    }

    /// The same wish in another size of print.
    public PaperPrintWish with(Size changed) {
        return new PaperPrintWish(language, parts, changed, page, title, ladder, date);
    }

    /// The same wish on other paper.
    public PaperPrintWish on(PageSize changed) {
        return new PaperPrintWish(language, parts, size, changed, title, ladder, date);
    }

    /// The same wish under another title.
    public PaperPrintWish titled(String changed) {
        return new PaperPrintWish(language, parts, size, page, Optional.of(changed), ladder, date);
    }

    /// The same wish for papers of a ladder of that name, which need not be shipped.
    public PaperPrintWish ofLadder(Label changed) {
        return new PaperPrintWish(language, parts, size, page, title, Optional.of(changed), date);
    }

    /// The same wish with the date printed.
    public PaperPrintWish onDate(String changed) {
        return new PaperPrintWish(language, parts, size, page, title, ladder, Optional.of(changed));
    }
}
