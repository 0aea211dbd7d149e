package tamabako.problems.grade.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Label;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Pass.Scored;
import tamabako.problems.grade.Section;

/// Reads what has to be reached, and checks that it can be.
final class PassReader {

    private static final int MOST_POINTS = 100_000;
    private static final int MOST_RANKS = 50;
    private static final List<String> WAYS =
            List.of("points", "points in each", "right in each", "ranks");
    private static final List<String> KNOWN =
            List.of("points", "points in each", "right in each", "ranks", "scored by");
    private static final Map<String, Scored> SCORED = Words.of(Scored.values());

    private PassReader() {}

    static Optional<Pass> read(Fields grade) {
        return grade.needed("pass")
                .map(node -> Fields.of("pass", node, grade.mistakes()).knowing(KNOWN))
                .filter(Fields::areThere)
                .flatMap(PassReader::pass);
    }

    private static Optional<Pass> pass(Fields place) {
        List<String> ways = WAYS.stream().filter(place::has).toList();
        if (ways.size() != 1) {
            place.fault(new Fault.NotOnePass(WAYS));
            return Optional.empty();
        }
        String way = ways.getFirst();
        if (place.has("scored by") && !way.equals("ranks")) {
            place.faultAtKey(
                    "scored by", new Fault.NeedsKey("scored by", "ranks", Examples.of("ranks")));
        }
        return Optional.of(
                switch (way) {
                    case "points" -> new Pass.Whole(place.whole(way, 1, MOST_POINTS));
                    case "points in each" ->
                            new Pass.PointsInEach(place.whole(way, 1, MOST_POINTS));
                    case "right in each" -> new Pass.RightInEach(place.whole(way, 1, MOST_POINTS));
                    default -> byScore(place);
                });
    }

    private static Pass byScore(Fields place) {
        Names names = new Names("rank");
        List<Pass.Rank> ranks =
                place.items("ranks", MOST_RANKS).stream()
                        .map(node -> rank(node, place, names))
                        .toList();
        place.needed("scored by");
        return new Pass.ByScore(ranks, place.word("scored by", SCORED, Scored.WHOLE));
    }

    private static Pass.Rank rank(Node node, Fields place, Names names) {
        Fields rank =
                Fields.of("ranks", node, place.mistakes())
                        .knowing(List.of("rank", "name", "points"));
        String id = names.read(rank);
        Label name = Labels.read(rank, "name");
        return new Pass.Rank(id, name, rank.whole("points", 1, MOST_POINTS));
    }

    /// Checks that what is asked for can be reached.
    static void check(Fields place, Grade grade) {
        Fields pass = Fields.of("pass", place.needed("pass").orElseThrow(), place.mistakes());
        int lowest = lowest(grade.sections().stream().map(Section::fullMarks).toList());
        switch (grade.pass()) {
            case Pass.Whole(int points) -> reach(pass, "points", points, grade.fullMarks());
            case Pass.PointsInEach(int points) -> reach(pass, "points in each", points, lowest);
            case Pass.RightInEach(int answers) ->
                    reach(
                            pass,
                            "right in each",
                            answers,
                            lowest(grade.sections().stream().map(Section::count).toList()));
            case Pass.ByScore(List<Pass.Rank> ranks, Scored scored) ->
                    ascending(pass, ranks, scored == Scored.WHOLE ? grade.fullMarks() : lowest);
        }
    }

    private static int lowest(List<Integer> sections) {
        return sections.stream().mapToInt(Integer::intValue).min().orElse(0);
    }

    private static void reach(Fields place, String key, int asked, int full) {
        if (asked > full) {
            place.fault(key, new Fault.PassTooHigh(key, asked, full));
        }
    }

    private static void ascending(Fields pass, List<Pass.Rank> ranks, int full) {
        List<Node> nodes = pass.items("ranks", MOST_RANKS);
        int before = 0;
        for (int i = 0; i < ranks.size(); i++) {
            int points = ranks.get(i).points();
            Fields place = Fields.of("ranks", nodes.get(i), pass.mistakes());
            if (points <= before) {
                place.fault("points", new Fault.RankNotHigher(ranks.get(i).id(), points, before));
            }
            reach(place, "points", points, full);
            before = points;
        }
    }
}
