package tamabako.desk.work;

import java.util.List;
import java.util.Locale;
import tamabako.desk.web.Languages;
import tamabako.desk.web.Words;
import tamabako.problems.text.ProblemText;

/// A worked sum as plain text: for every step the digits of the rods from the left, the bead
/// formula and the sentence.
///
/// ```
/// 54 - 29 + 38
/// Soroban, 3 rods; the unit rod is C
///   ABC
/// first row
///   050  +5  Set 5 on the tens.
/// ```
public final class WorkText {

    private static final String INDENT = "  ";

    private final Locale language;
    private final Words words;

    /// Text in that language, or in English where the desk does not speak it.
    public WorkText(Locale language) {
        Languages languages = Languages.of(List.of("work"));
        this.language = language;
        this.words = languages.find(language.getLanguage()).orElseGet(languages::english);
    }

    /// The worked sum; its last line ends without a line end.
    public String of(Worked worked) {
        PlayerView view = PlayerView.of(worked, language);
        int formula =
                view.groups().stream()
                        .flatMap(group -> group.notes().stream())
                        .mapToInt(note -> note.brief().length())
                        .max()
                        .orElse(0);
        StringBuilder text = new StringBuilder();
        text.append(ProblemText.write(worked.problem())).append('\n');
        text.append(frame(worked)).append('\n');
        text.append(INDENT).append(letters(worked)).append('\n');
        for (StepGroup group : view.groups()) {
            text.append(group.label()).append('\n');
            group.notes().forEach(note -> text.append(line(note, formula)).append('\n'));
        }
        return text.append(view.answer()).toString();
    }

    private String frame(Worked worked) {
        String kind = words.say("frame.group." + worked.frameWord(), worked.start().rods().size());
        return words.say("work.text.frame", kind, worked.unit().letter());
    }

    private static String line(StepNote note, int formula) {
        String brief = note.brief() + " ".repeat(formula - note.brief().length());
        return INDENT + String.join(INDENT, List.of(note.after(), brief, note.say()));
    }

    /// The letters over the rods, those after Z left out.
    private static String letters(Worked worked) {
        StringBuilder letters = new StringBuilder();
        for (int rod = 1; rod <= Math.min(worked.start().rods().size(), 26); rod++) {
            letters.append(new UnitRod(rod).letter());
        }
        return letters.toString();
    }
}
