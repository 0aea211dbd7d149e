package tamabako.insight.readiness;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import tamabako.insight.pooling.Manner;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.PadLine;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Story;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Section;

/// Work of one sort, done in one manner: what a pupil may be better or worse at than at the rest.
///
/// @param sort what is worked
/// @param manner on the frame or in the head
public record Field(Sort sort, Manner manner) implements Comparable<Field> {

    private static final Comparator<Field> ORDER =
            Comparator.comparing((Field field) -> field.sort).thenComparing(field -> field.manner);

    private static final List<Field> ALL =
            Arrays.stream(Sort.values())
                    .flatMap(sort ->
                            Arrays.stream(Manner.values()).map(manner -> new Field(sort, manner)))
                    .toList();

    /// The sorts of work that papers have sections of.
    public enum Sort {
        COLUMNS,
        PRODUCTS,
        QUOTIENTS,
        ROOTS,
        PAD_LINES,
        STORIES,
        /// Numbers that are only set or read.
        READINGS
    }

    /// All fields in their order.
    static List<Field> all() {
        return ALL;
    }

    /// The field of a problem.
    public static Field of(Problem problem) {
        return new Field(
                problem.terms()
                        .told()
                        .map(told ->
                                switch (told) {
                                    case PadLine _ -> Sort.PAD_LINES;
                                    case Story _ -> Sort.STORIES;
                                })
                        .orElseGet(() -> sort(problem)),
                Manner.of(problem));
    }

    private static Sort sort(Problem problem) {
        return switch (problem) {
            case Column column -> column.rows().size() == 1 ? Sort.READINGS : Sort.COLUMNS;
            case Product _ -> Sort.PRODUCTS;
            case Quotient _ -> Sort.QUOTIENTS;
            case Root _ -> Sort.ROOTS;
        };
    }

    /// The field of a section; that of its first batch where there are several.
    public static Field of(Section section) {
        Sort sort =
                switch (section.batches().getFirst().format()) {
                    case Format.Columns _ -> Sort.COLUMNS;
                    case Format.Products _ -> Sort.PRODUCTS;
                    case Format.Quotients _ -> Sort.QUOTIENTS;
                    case Format.Roots _ -> Sort.ROOTS;
                    case Format.PadLines _ -> Sort.PAD_LINES;
                    case Format.Stories _ -> Sort.STORIES;
                    case Format.Readings _ -> Sort.READINGS;
                };
        return new Field(sort, section.mode() == Mode.FRAME ? Manner.FRAME : Manner.MIND);
    }

    /// The word used in files, such as `pad-lines` or `mind-columns`.
    public String word() {
        String word = sort.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return switch (manner) {
            case FRAME -> word;
            case MIND -> "mind-" + word;
        };
    }

    @Override
    public int compareTo(Field other) {
        return ORDER.compare(this, other);
    }
}
