package tamabako.desk.sheet;

import java.util.Map;
import java.util.Optional;
import tamabako.desk.ladder.KnownLadders;
import tamabako.desk.web.Request;
import tamabako.desk.web.Words;
import tamabako.problems.making.ProductWish;
import tamabako.problems.making.QuotientWish;
import tamabako.problems.making.RootWish;
import tamabako.problems.making.Wish;

/// The form of the page "Make a sheet", read as what it asks for: a free wish, practice of one
/// technique, or a section of a grade.
final class WishForm {

    /// The most problems of a sheet.
    static final int MOST_PROBLEMS = 100;

    private static final int LONGEST_TITLE = 60;

    private final Form form;
    private final String by;
    private final int count;
    private final String title;
    private final SectionChoice section;
    private final Practice practice;

    WishForm(Request request, KnownLadders ladders) {
        this.form = new Form(request, usual(request.words()));
        this.by = form.text("by").isEmpty() ? "free" : form.word("by", MakeView.WAYS);
        this.section = SectionChoice.of(ladders, form);
        boolean counts = !by.equals("section");
        this.count = counts ? form.whole("count", 1, MOST_PROBLEMS) : section.section().count();
        this.title = form.line("title", LONGEST_TITLE);
        this.practice = counts ? new Practice.OfWish(wish(), count) : section.practice();
    }

    Form form() {
        return form;
    }

    /// Which of the ways to ask: `free`, `technique` or `section`.
    String by() {
        return by;
    }

    int count() {
        return count;
    }

    /// The section that is chosen, or would be.
    SectionChoice section() {
        return section;
    }

    /// What the teacher calls the sheet; the usual title where nothing was written.
    String title(Words words) {
        String usual = words.say("make.usual-title");
        if (!title.isEmpty() && !(by.equals("section") && title.equals(usual))) {
            return title;
        }
        return by.equals("section")
                ? section.grade().name().in(words.language())
                        + " "
                        + section.section().name().in(words.language())
                : usual;
    }

    /// What is asked for, if every field could be read. Whether it can be granted is for the maker
    /// to say.
    Optional<Practice> practice() {
        return form.isGood() ? Optional.of(practice) : Optional.empty();
    }

    private Wish wish() {
        if (by.equals("technique")) {
            return ColumnFields.oneTechnique(form);
        }
        return switch (form.word("kind", MakeView.KINDS)) {
            case "product" -> new ProductWish(digits("multiplicand"), digits("multiplier"));
            case "quotient" -> new QuotientWish(digits("divisor"), digits("quotient"));
            case "root" ->
                    new RootWish(
                            Integer.parseInt(form.word("degree", MakeView.DEGREES)),
                            digits("digits"));
            default -> ColumnFields.free(form);
        };
    }

    private int digits(String name) {
        return form.whole(name, 1, ColumnFields.MOST_DIGITS);
    }

    private static Map<String, String> usual(Words words) {
        return Map.ofEntries(
                Map.entry("by", "free"),
                Map.entry("kind", "column"),
                Map.entry("count", "10"),
                Map.entry("title", words.say("make.usual-title")),
                Map.entry("rows", "5"),
                Map.entry("least", "2"),
                Map.entry("most", "2"),
                Map.entry("minus", "0"),
                Map.entry("places", "0"),
                Map.entry("technique", "direct five-complement ten-complement ten-with-five"),
                Map.entry("practise", "any"),
                Map.entry("learning", "five-complement"),
                Map.entry("multiplicand", "2"),
                Map.entry("multiplier", "2"),
                Map.entry("divisor", "2"),
                Map.entry("quotient", "2"),
                Map.entry("degree", "2"),
                Map.entry("digits", "2"));
    }
}
