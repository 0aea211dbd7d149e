package tamabako.problems.making.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tamabako.frame.Technique;
import tamabako.problems.Column;
import tamabako.problems.Unreadable;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Digits;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.making.Numbers;
import tamabako.problems.making.ProductWish;
import tamabako.problems.making.QuotientWish;
import tamabako.problems.making.RootWish;
import tamabako.problems.making.Wish;
import tamabako.problems.making.column.HandCondition;
import tamabako.problems.making.column.Lengths;

class WishJsonTest {

    @Test
    void aColumnWishHasEverythingThatItsFileAsks() {
        ColumnWish wish =
                (ColumnWish)
                        WishJson.parse(
                                "{\"kind\":\"column\",\"rows\":6,\"digits\":\"2-4\",\"ji\":18,"
                                        + "\"minus\":\"1-2\",\"lastPlus\":true,"
                                        + "\"techniques\":[\"direct\",\"ten-complement\"],"
                                        + "\"require\":[\"ten-complement\"],"
                                        + "\"strokes\":\"10-60\",\"customs\":\"none\"}");

        assertThat(wish.rows()).isEqualTo(6);
        assertThat(wish.shape().lengths()).isEqualTo(new Lengths.Total(18, 2, 4));
        assertThat(wish.signs().leastMinus()).isEqualTo(1);
        assertThat(wish.signs().mostMinus()).isEqualTo(2);
        assertThat(wish.signs().lastPlus()).isTrue();
        assertThat(wish.allowed()).containsOnly(Technique.DIRECT, Technique.TEN_COMPLEMENT);
        assertThat(wish.required()).containsOnly(Technique.TEN_COMPLEMENT);
        assertThat(wish.conditions()).contains(new HandCondition.Strokes(10, 60));
        Made made = Maker.make(wish, 3, 1);
        assertThat(made).isInstanceOf(Made.Found.class);
        ((Made.Found) made)
                .problems()
                .forEach(column -> assertThat(wish.missedBy((Column) column)).isEmpty());
    }

    @Test
    void theOtherKindsAreReadToo() {
        assertThat(
                        WishJson.parse(
                                "{\"kind\":\"product\",\"inAll\":11,\"multiplicand\":\"5-7\","
                                        + "\"multiplier\":\"4-6\",\"numbers\":\"amounts\"}"))
                .isEqualTo(
                        ProductWish.inAll(11, new Digits(5, 7), new Digits(4, 6))
                                .with(Numbers.yen()));
        assertThat(WishJson.parse("{\"kind\":\"quotient\",\"divisor\":2,\"quotient\":\"3\"}"))
                .isEqualTo(new QuotientWish(2, 3));
        assertThat(WishJson.parse("{\"kind\":\"root\",\"digits\":\"2-3\",\"places\":2}"))
                .isEqualTo(new RootWish(2, new Digits(2, 3), OptionalInt.of(2)));
    }

    @Test
    void whatIsWrittenReadsBackAsTheSame() {
        for (String text :
                List.of(
                        "{\"rows\":6,\"digits\":\"2-4\",\"ji\":18,\"minus\":\"1-2\","
                                + "\"lastPlus\":true,\"techniques\":[\"direct\","
                                + "\"ten-complement\"],\"require\":[\"ten-complement\"],"
                                + "\"strokes\":\"10-60\",\"customs\":\"none\"}",
                        "{\"rows\":10,\"digits\":4,\"minus\":4,\"minusRun\":1,\"carryRun\":2,"
                                + "\"answerDigits\":\"4-5\",\"belowZero\":\"any\","
                                + "\"strokesWithin\":5,\"places\":2,\"customs\":\"papers\"}",
                        "{\"rows\":3,\"belowZero\":\"to-the-end\",\"minus\":1}",
                        "{\"kind\":\"product\",\"inAll\":11,\"multiplicand\":\"5-7\","
                                + "\"multiplier\":\"4-6\",\"numbers\":\"amounts\",\"unit\":\"EUR\","
                                + "\"customs\":true}",
                        "{\"kind\":\"quotient\",\"divisor\":2,\"quotient\":3,"
                                + "\"numbers\":\"plain\",\"places\":2,\"decimals\":50}",
                        "{\"kind\":\"root\",\"degree\":3,\"digits\":\"2-3\",\"places\":2}")) {
            Wish wish = WishJson.parse(text);

            assertThat(WishJson.parse(WishJson.line(wish))).as(text).isEqualTo(wish);
        }
    }

    @Test
    void whatDoesNotFitIsNamedByItsKey() {
        for (List<String> one :
                List.of(
                        List.of("{\"rowz\":5}", "The key \"rowz\" is not known"),
                        List.of("{\"kind\":\"puzzle\"}", "kind: \"puzzle\" is not known"),
                        List.of("{\"digits\":\"many\"}", "digits: \"many\" is not the kind"),
                        List.of("{\"rows\":\"3-4\"}", "rows: \"3-4\" does not fit"),
                        List.of("{\"lastPlus\":1}", "lastPlus: 1 is not the kind"),
                        List.of("{\"techniques\":[\"sideways\"]}", "techniques: \"sideways\""),
                        List.of("[1]", "is no JSON object"),
                        List.of("{", "stops being JSON"))) {
            assertThatThrownBy(() -> WishJson.parse(one.getFirst()))
                    .isInstanceOf(Unreadable.class)
                    .hasMessageContaining(one.getLast());
        }
    }
}
