package tamabako.desk.command;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import tamabako.frame.Technique;
import tamabako.problems.making.ColumnWish;

/// The options of `make` that say what a column is like.
final class ColumnOptions {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--rows", defaultValue = "5", description = "Rows of a column (default 5).")
    private int rows;

    @Option(
            names = "--digits",
            defaultValue = "2",
            paramLabel = "N or N-M",
            description = "Digits of each row, such as 2 or 2-4 (default 2).")
    private String digits = "2";

    @Option(names = "--minus", defaultValue = "0", description = "Minus rows (default 0).")
    private int minus;

    @Option(
            names = "--places",
            defaultValue = "0",
            description = "Digits behind the point (default 0).")
    private int places;

    @Option(
            names = "--techniques",
            split = ",",
            paramLabel = "T",
            description = "Techniques that steps may be done by (default all).")
    private List<String> techniques = List.of();

    @Option(
            names = "--require",
            split = ",",
            paramLabel = "T",
            description = "Techniques that must occur in every column.")
    private List<String> required = List.of();

    @Option(names = "--below-zero", description = "Let the running total fall below zero.")
    private boolean belowZero;

    /// The wish that they make.
    ///
    /// @throws ParameterException if there is no such technique or range
    ColumnWish wish() {
        Span span = Span.parse(digits, this::refuse);
        return ColumnWish.of(rows, span.least())
                .withDigits(span.least(), span.most())
                .withMinusRows(minus)
                .withPlaces(places)
                .allowing(techniques.isEmpty() ? EnumSet.allOf(Technique.class) : named(techniques))
                .requiring(named(required))
                .goingBelowZero(belowZero)
                .withCustomsOfPractice();
    }

    private Set<Technique> named(List<String> words) {
        Set<Technique> named = EnumSet.noneOf(Technique.class);
        for (String word : words) {
            named.add(
                    List.of(Technique.values()).stream()
                            .filter(technique -> technique.word().equals(word.strip()))
                            .findFirst()
                            .orElseThrow(() ->
                                    refuse(
                                            "There is no technique \""
                                                    + word
                                                    + "\". Name some of: direct,"
                                                    + " five-complement, ten-complement,"
                                                    + " ten-with-five.")));
        }
        return named;
    }

    private ParameterException refuse(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
