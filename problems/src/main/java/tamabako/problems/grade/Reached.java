package tamabako.problems.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// What the points of a sat paper come to by the rule of its grade.
///
/// @param passed whether the grade is passed, or its lowest rank reached
/// @param rank the highest rank reached; empty for grades without ranks, and where none was
public record Reached(boolean passed, Optional<Pass.Rank> rank) {

    /// A section that was sat, with its points.
    private record Sat(Section section, int points) {}

    /// Of the points of each section, by the name of the section. Of sections to choose from those
    /// with the largest part of their points count, as many as are to be sat. Empty where the
    /// points of a section that has to be sat are missing.
    public static Optional<Reached> of(Grade grade, Map<String, Integer> points) {
        List<Sat> sat = new ArrayList<>();
        List<Sat> chosen = new ArrayList<>();
        for (Section section : grade.sections()) {
            Optional<Integer> found = Optional.ofNullable(points.get(section.id()));
            if (found.isPresent()) {
                (grade.isForAll(section) ? sat : chosen).add(new Sat(section, found.get()));
            } else if (grade.isForAll(section)) {
                return Optional.empty();
            }
        }
        int choose = grade.elective().map(Elective::choose).orElse(0);
        if (chosen.size() < choose) {
            return Optional.empty();
        }
        chosen.sort((one, other) -> Double.compare(part(other), part(one)));
        sat.addAll(chosen.subList(0, choose));
        return Optional.of(by(grade.pass(), sat));
    }

    private static double part(Sat one) {
        return (double) one.points() / one.section().fullMarks();
    }

    private static Reached by(Pass pass, List<Sat> sat) {
        int all = sat.stream().mapToInt(Sat::points).sum();
        int least = sat.stream().mapToInt(Sat::points).min().orElse(0);
        return switch (pass) {
            case Pass.Whole(int points) -> plain(all >= points);
            case Pass.PointsInEach(int points) -> plain(least >= points);
            case Pass.RightInEach(int answers) ->
                    plain(
                            sat.stream()
                                    .allMatch(one ->
                                            one.points() >= answers * one.section().points()));
            case Pass.ByScore(List<Pass.Rank> ranks, Pass.Scored scored) -> {
                int score =
                        switch (scored) {
                            case LOWEST_SECTION -> least;
                            case WHOLE -> all;
                        };
                Optional<Pass.Rank> highest =
                        ranks.stream()
                                .filter(rank -> rank.points() <= score)
                                .reduce((_, higher) -> higher);
                yield new Reached(highest.isPresent(), highest);
            }
        };
    }

    private static Reached plain(boolean passed) {
        return new Reached(passed, Optional.empty());
    }
}
