package tamabako.paper.layout;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.paper.words.PrintWords;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Label;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.file.Ladders;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperSection;

/// What a paper says of itself in words.
///
/// @param own what the teacher wants to stand before the name of the grade, if anything
/// @param named the name of the ladder; empty for one that is shipped
record PaperFacts(Paper paper, Optional<String> own, Optional<Label> named, PrintWords words) {

    private static final int LETTERS = 26;

    /// The name of the grade, after the teacher's own title where there is one.
    String title() {
        String grade = grade().name().in(words.language());
        return own.map(title -> words.say("paper.title", title, grade)).orElse(grade);
    }

    /// The name of the ladder.
    String ladder() {
        return named.or(() -> Ladders.ladder(paper.ladder()).map(Ladder::name))
                .map(name -> name.in(words.language()))
                .orElse(paper.ladder());
    }

    /// The name of a section.
    String name(PaperSection section) {
        return section.section().name().in(words.language());
    }

    /// What holds for the whole paper, in short.
    String ofPaper() {
        List<String> facts = new ArrayList<>();
        facts.add(form());
        grade().time().ifPresent(time -> facts.add(time(time)));
        facts.add(words.say("paper.marks", grade().fullMarks()));
        facts.add(pass());
        choice().ifPresent(facts::add);
        return String.join(words.say("paper.between"), facts);
    }

    /// What holds for a section that is sat by itself.
    String ofSection(PaperSection section) {
        List<String> facts = new ArrayList<>();
        facts.add(form());
        section.section().time().ifPresent(time -> facts.add(time(time)));
        facts.add(words.say("paper.marks", section.section().fullMarks()));
        switch (grade().pass()) {
            case Pass.PointsInEach _, Pass.RightInEach _ -> facts.add(pass());
            case Pass.ByScore _, Pass.Whole _ -> {}
        }
        return String.join(words.say("paper.between"), facts);
    }

    /// What has to be reached.
    String pass() {
        return switch (grade().pass()) {
            case Pass.Whole(int points) -> words.say("pass.whole", points);
            case Pass.PointsInEach(int points) -> words.say("pass.points", points);
            case Pass.RightInEach(int answers) -> words.say("pass.right", answers);
            case Pass.ByScore byScore ->
                    switch (byScore.scored()) {
                        case WHOLE -> words.say("pass.ranks");
                        case LOWEST_SECTION -> words.say("pass.ranks.lowest");
                    };
        };
    }

    /// The ranks that the score tells, from the lowest up; none where it does not.
    List<Pass.Rank> ranks() {
        return switch (grade().pass()) {
            case Pass.ByScore(var ranks, _) -> ranks;
            case Pass.Whole _, Pass.PointsInEach _, Pass.RightInEach _ -> List.of();
        };
    }

    /// Whether the pupil sits the whole paper at once, not section by section.
    boolean isSatAtOnce() {
        return paper.sections().stream().allMatch(each -> each.section().time().isEmpty());
    }

    /// What must honestly be added where figures of the grade are not confirmed by its body.
    Optional<String> unconfirmed() {
        return grade().hasUnconfirmed()
                ? Optional.of(words.say("paper.unconfirmed"))
                : Optional.empty();
    }

    private Grade grade() {
        return paper.grade();
    }

    private String form() {
        return form(paper.form(), words);
    }

    /// Forms go by letters, and by numbers where there are more forms than letters.
    static String form(int form, PrintWords words) {
        String named = form <= LETTERS ? String.valueOf((char) ('A' + form - 1)) : "" + form;
        return words.say("paper.form", named);
    }

    private String time(Duration time) {
        long minutes = time.toMinutes();
        int seconds = time.toSecondsPart();
        return seconds == 0
                ? words.say("paper.minutes", minutes)
                : words.say("paper.seconds", minutes, seconds);
    }

    private Optional<String> choice() {
        return grade().elective()
                .map(choice -> {
                    List<String> names = new ArrayList<>();
                    for (PaperSection each : paper.sections()) {
                        if (choice.of().contains(each.section().id())) {
                            names.add(name(each));
                        }
                    }
                    return words.say(
                            "paper.choice", choice.choose(), String.join(words.say("list"), names));
                });
    }
}
