package tamabako.problems.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.exc.StreamReadException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import tamabako.problems.Numerals;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;

/// One JSON value a line, read exactly: decimals keep every digit, a key may stand once only, and
/// nothing may follow.
final class Lines {

    /// The most characters of a line.
    static final int LONGEST = 100_000;

    /// An attempt holds a problem, its story holds a list of earlier sums, these hold rows: five,
    /// and room for one more.
    static final int DEEPEST = 6;

    private static final JsonMapper MAPPER =
            JsonMapper.builder(
                            JsonFactory.builder()
                                    .streamReadConstraints(
                                            StreamReadConstraints.builder()
                                                    .maxNestingDepth(DEEPEST)
                                                    .maxNumberLength(LONGEST)
                                                    .maxStringLength(LONGEST)
                                                    .maxNameLength(LONGEST)
                                                    .build())
                                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                                    .build())
                    .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
                    .build();

    private Lines() {}

    static JsonNode parse(String line) {
        if (line.length() > LONGEST) {
            throw new Unreadable(new Reason.LineTooLong(line.length(), LONGEST));
        }
        if (line.isBlank()) {
            throw new Unreadable(new Reason.EmptyLine());
        }
        try {
            return MAPPER.readTree(line);
        } catch (StreamConstraintsException _) {
            throw new Unreadable(new Reason.TooDeep(DEEPEST));
        } catch (JsonProcessingException fault) {
            throw new Unreadable(reason(line, fault));
        } catch (NumberFormatException _) {
            // An exponent of so many digits that the number cannot be built at all.
            throw new Unreadable(
                    new Reason.NumberTooLong(Unreadable.shown(line.strip()), Numerals.MOST_DIGITS));
        }
    }

    static String write(JsonNode node) {
        try {
            return MAPPER.writeValueAsString(node);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static Reason reason(String line, JsonProcessingException fault) {
        if (fault instanceof StreamReadException read
                && read.getOriginalMessage().startsWith("Duplicate")
                && read.getProcessor() != null) {
            return new Reason.KeyTwice(
                    Unreadable.shown(read.getProcessor().getParsingContext().getCurrentName()));
        }
        long offset = fault.getLocation() == null ? -1 : fault.getLocation().getCharOffset();
        return new Reason.NotJson(Math.clamp(offset + 1, 1, line.length() + 1));
    }
}
