package tamabako.problems.grade.file;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.problems.grade.Cite;
import tamabako.problems.grade.Elective;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Label;
import tamabako.problems.grade.Numbering;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Section;
import tamabako.problems.marking.WritingRules;

/// Reads the grades of a ladder.
final class GradeReader {

    private static final int MOST_SECTIONS = 20;
    private static final Map<String, Numbering> NUMBERINGS = Words.of(Numbering.values());
    private static final List<String> KNOWN =
            List.of(
                    "grade",
                    "name",
                    "time",
                    "pass",
                    "numbering",
                    "commas",
                    "elective",
                    "sections",
                    "from");

    private final Sources sources;
    private final Names names = new Names("grade");

    GradeReader(Sources sources) {
        this.sources = sources;
    }

    /// The grade at `place`; empty if there is a mistake in it.
    Optional<Grade> read(Fields place) {
        int before = place.mistakes().count();
        place.knowing(KNOWN);
        String id = names.read(place);
        Label name = Labels.read(place, "name");
        List<Section> sections = sections(place);
        Optional<Duration> time = place.maybe("time").map(Value::time);
        Optional<Pass> pass = PassReader.read(place);
        Numbering numbering = place.word("numbering", NUMBERINGS, Numbering.THROUGH);
        WritingRules writing = commas(place);
        Optional<Elective> elective = elective(place, sections);
        List<Cite> cites = sources.cites(place);
        if (place.mistakes().count() > before || pass.isEmpty()) {
            return Optional.empty();
        }
        Grade grade =
                new Grade(
                        id,
                        name,
                        sections,
                        time,
                        pass.orElseThrow(),
                        numbering,
                        writing,
                        elective,
                        cites);
        PassReader.check(place, grade);
        return Optional.of(grade);
    }

    private List<Section> sections(Fields place) {
        SectionReader reader = new SectionReader(sources);
        List<Fields> all =
                place.items("sections", MOST_SECTIONS).stream()
                        .map(node -> Fields.of("sections", node, place.mistakes()))
                        .toList();
        checkTimes(place, all);
        return all.stream().map(reader::read).toList();
    }

    /// A time is for the whole paper, or for every section.
    private static void checkTimes(Fields place, List<Fields> sections) {
        boolean some = sections.stream().anyMatch(section -> section.has("time"));
        for (Fields section : sections) {
            if (section.has("time") && place.has("time")) {
                section.faultAtKey("time", new Fault.TimeTwice());
            } else if (some && !place.has("time") && !section.has("time")) {
                section.fault(new Fault.TimeMissing(Examples.of("time")));
            }
        }
    }

    private static WritingRules commas(Fields place) {
        boolean needed = !place.has("commas") || place.yes("commas");
        return needed ? WritingRules.STRICT : WritingRules.EASY;
    }

    private static Optional<Elective> elective(Fields place, List<Section> sections) {
        return place.there("elective")
                .map(node ->
                        Fields.of("elective", node, place.mistakes())
                                .knowing(List.of("choose", "of")))
                .flatMap(choice -> choice(choice, sections));
    }

    private static Optional<Elective> choice(Fields choice, List<Section> sections) {
        List<String> there = sections.stream().map(Section::id).toList();
        choice.needed("of");
        List<Value> of = choice.words("of", MOST_SECTIONS);
        for (Value name : of) {
            if (!there.contains(name.written())) {
                name.fault(new Fault.NothingOfThatName("of", name.shown(), there));
            }
        }
        int choose = choice.whole("choose", 1, MOST_SECTIONS);
        if (of.isEmpty()) {
            return Optional.empty();
        }
        if (of.size() <= choose) {
            choice.fault("choose", new Fault.NoChoice(choose, of.size()));
            return Optional.empty();
        }
        return Optional.of(new Elective(choose, of.stream().map(Value::written).toList()));
    }
}
