package tamabako.desk.sheet;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tamabako.desk.web.Request;
import tamabako.desk.web.Words;
import tamabako.frame.Technique;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.ProductWish;
import tamabako.problems.making.QuotientWish;
import tamabako.problems.making.RootWish;
import tamabako.problems.making.Wish;

/// The form of the page "Make a sheet", read as a wish.
final class WishForm {

    /// The most problems of a sheet.
    static final int MOST_PROBLEMS = 100;

    /// More rows than any paper has, and still looked through while a teacher waits.
    private static final int MOST_ROWS = 30;

    private static final int LONGEST_TITLE = 60;

    /// More digits than any kind of problem may have; the maker knows the limit of each kind.
    private static final int MOST_DIGITS = 16;

    private final Form form;
    private final int count;
    private final String title;
    private final Wish wish;

    WishForm(Request request) {
        this.form = new Form(request, usual(request.words()));
        this.count = form.whole("count", 1, MOST_PROBLEMS);
        this.title = form.line("title", LONGEST_TITLE);
        this.wish = readWish();
    }

    Form form() {
        return form;
    }

    int count() {
        return count;
    }

    /// What the teacher calls the sheet; the usual title where nothing was written.
    String title(Words words) {
        return title.isEmpty() ? words.say("make.usual-title") : title;
    }

    /// The wish, if every field could be read. Whether it can be granted is for the maker to say.
    Optional<Wish> wish() {
        return form.isGood() ? Optional.of(wish) : Optional.empty();
    }

    private Wish readWish() {
        return switch (form.word("kind", MakeView.KINDS)) {
            case "product" -> new ProductWish(digits("multiplicand"), digits("multiplier"));
            case "quotient" -> new QuotientWish(digits("divisor"), digits("quotient"));
            case "root" ->
                    new RootWish(
                            Integer.parseInt(form.word("degree", MakeView.DEGREES)),
                            digits("digits"));
            default -> column();
        };
    }

    private Wish column() {
        Set<Technique> allowed = EnumSet.noneOf(Technique.class);
        for (Technique technique : Technique.values()) {
            if (form.isTicked("technique", technique.word())) {
                allowed.add(technique);
            }
        }
        return ColumnWish.of(form.whole("rows", 2, MOST_ROWS), 1)
                .withDigits(digits("least"), digits("most"))
                .withMinusRows(form.whole("minus", 0, MOST_ROWS))
                .withPlaces(form.whole("places", 0, 15))
                .allowing(allowed)
                .requiring(required())
                .goingBelowZero(form.isTicked("below", "yes"));
    }

    private Set<Technique> required() {
        String practised = form.word("practise", MakeView.PRACTISED);
        Set<Technique> required = EnumSet.noneOf(Technique.class);
        for (Technique technique : Technique.values()) {
            if (technique.word().equals(practised)) {
                required.add(technique);
            }
        }
        return required;
    }

    private int digits(String name) {
        return form.whole(name, 1, MOST_DIGITS);
    }

    private static Map<String, String> usual(Words words) {
        return Map.ofEntries(
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
                Map.entry("multiplicand", "2"),
                Map.entry("multiplier", "2"),
                Map.entry("divisor", "2"),
                Map.entry("quotient", "2"),
                Map.entry("degree", "2"),
                Map.entry("digits", "2"));
    }
}
