package tamabako.problems.story;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tamabako.problems.Problem;
import tamabako.problems.making.Avoided;
import tamabako.problems.making.Made.Part;
import tamabako.problems.making.Made.Reason;
import tamabako.problems.making.draw.Draws;

/// Makes word problems from templates.
///
/// Templates are dealt: each comes once before one comes again, in an order that is drawn anew each
/// round. Of a template, all numbers that fit are equally likely as far as its ranges are; names
/// are drawn from all.
public final class StoryMaker {

    /// The most stories that are made at once.
    public static final int MOST_PROBLEMS = 200;

    private static final int MOST_TRIES = 10_000;

    private final StoryTemplates templates;
    private final Draws draws;
    private final Avoided avoided;
    private final Set<String> told = new HashSet<>();

    private StoryMaker(StoryTemplates templates, long seed, Set<Problem> avoided) {
        this.templates = templates;
        this.draws = new Draws(seed);
        this.avoided = Avoided.of(avoided);
    }

    /// `count` stories of `grade`, 6 to 1, drawn from `seed`: the same grade, count and seed make
    /// the same stories on every machine.
    public static StoryMade make(int grade, int count, long seed) {
        return make(StoryTemplates.usual(), grade, count, seed);
    }

    /// As with the usual templates, by templates of one's own.
    public static StoryMade make(StoryTemplates templates, int grade, int count, long seed) {
        return new StoryMaker(templates, seed, Set.of()).tell(grade, count, seed);
    }

    /// As with nothing to avoid, but no story whose last sum is one of `avoided`.
    public static StoryMade make(int grade, int count, long seed, Set<Problem> avoided) {
        return new StoryMaker(StoryTemplates.usual(), seed, avoided).tell(grade, count, seed);
    }

    private StoryMade tell(int grade, int count, long seed) {
        List<StoryTemplate> ofGrade = templates.ofGrade(grade);
        Optional<Reason> broken =
                Part.GRADE
                        .range(grade, 1, 6)
                        .or(() ->
                                Part.COUNT.range(count, 1, ofGrade.isEmpty() ? 0 : MOST_PROBLEMS));
        if (broken.isPresent()) {
            return new StoryMade.Impossible(broken.get());
        }
        List<Problem> problems = new ArrayList<>(count);
        List<StoryTemplate> round = new ArrayList<>();
        while (problems.size() < count) {
            if (round.isEmpty()) {
                round.addAll(ofGrade);
            }
            StoryTemplate template = round.remove((int) draws.below(round.size()));
            Optional<Problem> problem = tell(template, Integer.toString(problems.size() + 1));
            if (problem.isEmpty()) {
                return new StoryMade.NotFound(new Reason.NoMoreFound(problems.size(), MOST_TRIES));
            }
            problems.add(problem.get());
        }
        return new StoryMade.Found(problems, seed);
    }

    private Optional<Problem> tell(StoryTemplate template, String id) {
        for (int i = 0; i < MOST_TRIES; i++) {
            Optional<Map<String, BigDecimal>> values = template.draw(draws);
            if (values.isPresent()) {
                Problem problem = template.tell(id, values.get(), names());
                if (!avoided.contains(problem) && told.add(template.name() + values.get())) {
                    return Optional.of(problem);
                }
            }
        }
        return Optional.empty();
    }

    /// Two different names, in every language.
    private Map<String, Map<String, String>> names() {
        int all = templates.names().size();
        int one = (int) draws.below(all);
        int other = (one + 1 + (int) draws.below(all - 1)) % all;
        Map<String, Map<String, String>> names = new HashMap<>();
        templates.names().get(one).forEach((language, name) -> put(names, language, "name", name));
        templates
                .names()
                .get(other)
                .forEach((language, name) -> put(names, language, "other", name));
        return names;
    }

    private static void put(
            Map<String, Map<String, String>> names, String language, String blank, String name) {
        names.computeIfAbsent(language, _ -> new HashMap<>()).put(blank, name);
    }
}
