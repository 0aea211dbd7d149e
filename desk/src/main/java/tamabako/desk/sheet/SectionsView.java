package tamabako.desk.sheet;

import java.util.List;
import java.util.Locale;
import tamabako.desk.ladder.FormatWords;
import tamabako.desk.web.Words;

/// The ladders, the grades of the one chosen, and the sections of the grade chosen.
///
/// @param asks what the chosen section asks, a line for each batch
/// @param hasPad whether it is worked from slip pads
/// @param address the address at which a paper of the grade is made
public record SectionsView(
        List<Choice> ladders,
        List<Choice> grades,
        List<Choice> sections,
        List<String> asks,
        boolean hasPad,
        String address) {

    public SectionsView {
        ladders = List.copyOf(ladders);
        grades = List.copyOf(grades);
        sections = List.copyOf(sections);
        asks = List.copyOf(asks);
    }

    /// Something to choose, by the name it goes by and the name that people read.
    public record Choice(String id, String name, boolean isChosen) {}

    static SectionsView of(SectionChoice choice, Words words) {
        Locale language = words.language();
        FormatWords formats = new FormatWords(words);
        return new SectionsView(
                choice.ladders().stream()
                        .map(known ->
                                new Choice(
                                        known.ladder().id(),
                                        known.ladder().name().in(language),
                                        known.equals(choice.known())))
                        .toList(),
                choice.known().ladder().grades().stream()
                        .map(grade ->
                                new Choice(
                                        grade.id(),
                                        grade.name().in(language),
                                        grade.equals(choice.grade())))
                        .toList(),
                choice.grade().sections().stream()
                        .map(section ->
                                new Choice(
                                        section.id(),
                                        section.name().in(language),
                                        section.equals(choice.section())))
                        .toList(),
                choice.section().batches().stream().map(formats::say).toList(),
                choice.practice().hasPad(),
                "/papers?ladder=" + choice.known().ladder().id() + "&grade=" + choice.grade().id());
    }
}
