package tamabako.paper.wish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tamabako.paper.SheetPrint;
import tamabako.problems.Column;
import tamabako.problems.PadLine;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Sheet;
import tamabako.problems.Story;
import tamabako.problems.Terms;
import tamabako.testkit.Golden;

/// Every refusal, as it comes from real sheets, in both languages.
class UnprintableTest {

    private static final PrintWish NORMAL = PrintWish.ENGLISH;
    private static final PrintWish LARGE = NORMAL.with(Size.LARGE);

    @Test
    void everyRefusalSaysWhatWhereAndHowToMendIt() {
        StringBuilder told = new StringBuilder();
        tell(told, new Sheet("1", "Empty", List.of()), NORMAL);
        tell(told, column("3", 1, "1".repeat(80)), NORMAL);
        tell(told, column("3", 1, "1".repeat(45)), LARGE);
        tell(told, product("9".repeat(40), "9".repeat(40)), NORMAL);
        tell(told, column("12", 60, "5"), NORMAL);
        tell(told, column("12", 40, "5"), LARGE);
        tell(told, new Sheet("1", "Fox \ud83e\udd8a", column("1", 1, "5").problems()), NORMAL);
        tell(told, column("1", 1, "5"), NORMAL.forPupil("\ud83d\udc27"));
        tell(told, column("1", 1, "5"), NORMAL.onDate("\u0e51"));
        tell(told, new Sheet("\u0e51", "Id", column("1", 1, "5").problems()), NORMAL);
        tell(told, column("\u0e51", 1, "5"), NORMAL);
        tell(told, ofPad(new PadLine(3, 4, 2), 505), NORMAL);
        tell(told, story("A fox \ud83e\udd8a buys 2 buns at 3 yen each."), NORMAL);
        Golden.assertGolden("unprintable.txt", told.toString());
    }

    @Test
    void theLimitThatIsToldIsTheTrueOne() throws Exception {
        for (PrintWish wish : List.of(NORMAL, LARGE)) {
            Unprintable refused =
                    catchThrowableOfType(
                            Unprintable.class,
                            () ->
                                    SheetPrint.write(
                                            column("1", 99, "5"),
                                            wish,
                                            new ByteArrayOutputStream()));
            int most = ((Unprintable.Reason.TooManyRows) refused.reason()).most();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            SheetPrint.write(column("1", most, "5"), wish, out);
            assertThat(out.size()).isPositive();
            assertThatThrownBy(() -> SheetPrint.write(column("1", most + 1, "5"), wish, out))
                    .isInstanceOf(Unprintable.class);
        }
    }

    @Test
    void aColumnOfTwentyRowsOfSixteenDigitsIsPrintedInEverySize() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SheetPrint.write(column("1", 20, "9".repeat(16)), LARGE, out);
        SheetPrint.write(column("1", 20, "-" + "9".repeat(16)), NORMAL, out);
        assertThat(out.size()).isPositive();
    }

    private static void tell(StringBuilder told, Sheet sheet, PrintWish wish) {
        Unprintable refused =
                catchThrowableOfType(
                        Unprintable.class,
                        () -> SheetPrint.write(sheet, wish, new ByteArrayOutputStream()));
        assertThat(refused).as("%s", sheet).isNotNull();
        assertThat(refused).hasMessage(refused.message(Locale.ENGLISH));
        told.append(refused.message(Locale.ENGLISH)).append('\n');
        told.append(refused.message(Locale.JAPANESE)).append("\n\n");
    }

    private static Sheet column(String id, int rows, String number) {
        List<BigDecimal> numbers = Collections.nCopies(rows, new BigDecimal(number));
        return sheet(new Column(id, numbers, Terms.PLAIN));
    }

    private static Sheet product(String multiplicand, String multiplier) {
        return sheet(
                new Product(
                        "3",
                        new BigDecimal(multiplicand),
                        new BigDecimal(multiplier),
                        Terms.PLAIN));
    }

    /// Two problems that have other numbers on the same line of a pad.
    private static Sheet ofPad(PadLine line, long other) {
        Terms terms = Terms.PLAIN.withTold(line);
        List<BigDecimal> rows = List.of(new BigDecimal(1293), new BigDecimal(2070));
        List<BigDecimal> others = List.of(new BigDecimal(1293), BigDecimal.valueOf(other));
        return new Sheet(
                "s1",
                "Pads",
                List.of(new Column("1", rows, terms), new Column("2", others, terms)));
    }

    private static Sheet story(String text) {
        Story story = new Story(Map.of("en", text), List.of());
        Terms terms = Terms.PLAIN.withTold(story);
        return sheet(new Product("1", BigDecimal.TWO, BigDecimal.valueOf(3), terms));
    }

    private static Sheet sheet(Problem problem) {
        return new Sheet("s1", "Sheet", List.of(problem));
    }
}
