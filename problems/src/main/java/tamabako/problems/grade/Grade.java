package tamabako.problems.grade;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tamabako.problems.marking.WritingRules;

/// One exam paper: a grade, or several that one paper is for, told apart by the score.
///
/// @param id the name it goes by within its ladder
/// @param sections in the order of the paper, no two of one name
/// @param time for the whole paper, where it is not given section by section
/// @param pass what has to be reached
/// @param numbering how its problems are numbered
/// @param writing how strictly the form of an answer is looked at
/// @param elective the sections of which only some are sat, if there are such
/// @param cites where the figures of the paper come from; those of a section stand with the section
public record Grade(
        String id,
        Label name,
        List<Section> sections,
        Optional<Duration> time,
        Pass pass,
        Numbering numbering,
        WritingRules writing,
        Optional<Elective> elective,
        List<Cite> cites) {

    public Grade {
        sections = List.copyOf(sections);
        cites = List.copyOf(cites);
    }

    /// The section that goes by `id`, if the paper has it.
    public Optional<Section> section(String id) {
        return sections.stream().filter(section -> section.id().equals(id)).findFirst();
    }

    /// Whether every pupil sits this section.
    public boolean isForAll(Section section) {
        return elective.filter(choice -> choice.of().contains(section.id())).isEmpty();
    }

    /// The marks for all right answers of what one pupil sits; of the sections to choose from,
    /// those with the most marks count.
    public int fullMarks() {
        int forAll = sections.stream().filter(this::isForAll).mapToInt(Section::fullMarks).sum();
        int chosen =
                sections.stream()
                        .filter(section -> !isForAll(section))
                        .map(Section::fullMarks)
                        .sorted(Comparator.reverseOrder())
                        .limit(elective.map(Elective::choose).orElse(0))
                        .mapToInt(Integer::intValue)
                        .sum();
        return forAll + chosen;
    }

    /// Where the figures come from: those of the paper, then those of its sections.
    public List<Cite> allCites() {
        return Stream.concat(
                        cites.stream(),
                        sections.stream().flatMap(section -> section.cites().stream()))
                .distinct()
                .toList();
    }

    /// Whether any figure of the paper or its sections is unconfirmed.
    public boolean hasUnconfirmed() {
        return allCites().stream().anyMatch(cite -> !cite.confirmed());
    }
}
