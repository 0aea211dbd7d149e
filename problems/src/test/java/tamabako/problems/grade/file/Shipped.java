package tamabako.problems.grade.file;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tamabako.problems.grade.Batch;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Lengths;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Section;

/// Looks up figures of shipped ladders, as the published tables write them.
final class Shipped {

    private Shipped() {}

    static Grade grade(String ladder, String grade) {
        return Ladders.ladder(ladder).orElseThrow().grade(grade).orElseThrow();
    }

    static List<Format> formats(Grade grade, String section) {
        return grade.section(section).orElseThrow().batches().stream().map(Batch::format).toList();
    }

    /// The one thing that all batches of a section have in common.
    static <T> T only(Grade grade, String section, Function<Format, T> of) {
        List<T> found = formats(grade, section).stream().map(of).distinct().toList();
        if (found.size() != 1) {
            throw new AssertionError("%s of %s: %s".formatted(section, grade.id(), found));
        }
        return found.getFirst();
    }

    /// `6x10` for ten rows of six digits; `1-2x5=8` where the rows have 8 digits in all.
    static String rows(Format format) {
        Format.Columns columns = (Format.Columns) format;
        return switch (columns.lengths()) {
            case Lengths.Equal(int rows, int digits) -> digits + "x" + rows;
            case Lengths.Between between -> between.digits() + "x" + between.rows();
            case Lengths.InAll all -> all.digits() + "x" + all.rows() + "=" + all.ji();
            case Lengths.Table table -> table.rowsByDigits().toString();
        };
    }

    /// `7=3-5+2-4`: seven digits in all, 3 to 5 of the first number and 2 to 4 of the second.
    static String pair(Format format) {
        return switch (format) {
            case Format.Products(var inAll, var first, var second, _) ->
                    inAll + "=" + first + "+" + second;
            case Format.Quotients(var inAll, var first, var second, _) ->
                    inAll + "=" + first + "+" + second;
            default -> throw new AssertionError(format);
        };
    }

    static int inAll(Format format) {
        String pair = pair(format);
        return Integer.parseInt(pair.substring(0, pair.indexOf('=')));
    }

    static Format.Answers answers(Format format) {
        return switch (format) {
            case Format.Products products -> products.answers();
            case Format.Quotients quotients -> quotients.answers();
            default -> throw new AssertionError(format);
        };
    }

    /// `jun-1 90, 1 100`: the least score of each rank.
    static String ranks(Grade grade) {
        return ((Pass.ByScore) grade.pass())
                .ranks().stream()
                        .map(rank -> rank.id() + " " + rank.points())
                        .collect(Collectors.joining(", "));
    }

    /// `columns 10x10`: problems and points of each section.
    static List<String> counts(Grade grade) {
        return grade.sections().stream()
                .map(section -> section.id() + " " + section.count() + "x" + section.points())
                .toList();
    }

    /// `columns 7`: the minutes of each section.
    static List<String> minutes(Grade grade) {
        return grade.sections().stream()
                .map(section -> section.id() + " " + section.time().orElseThrow().toMinutes())
                .toList();
    }

    static Stream<Section> sections() {
        return Ladders.shipped().stream()
                .flatMap(ladder -> ladder.grades().stream())
                .flatMap(grade -> grade.sections().stream());
    }
}
