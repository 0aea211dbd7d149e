package tamabako.problems.story;

import java.util.List;
import java.util.Map;

/// The templates of one file, and the names of the children in them.
///
/// @param names each name by language
public record StoryTemplates(List<Map<String, String>> names, List<StoryTemplate> templates) {

    private static final class Usual {
        static final StoryTemplates TEMPLATES = read(StoryTexts.shipped());
    }

    public StoryTemplates {
        names = List.copyOf(names);
        templates = List.copyOf(templates);
    }

    /// The templates that come with the program.
    public static StoryTemplates usual() {
        return Usual.TEMPLATES;
    }

    /// Reads the text of a file.
    ///
    /// @throws UnreadableStory naming the line that does not fit
    public static StoryTemplates read(String yaml) {
        return new StoryFileReader().read(yaml);
    }

    /// The templates for one grade, in their order.
    public List<StoryTemplate> ofGrade(int grade) {
        return templates.stream().filter(template -> template.grade() == grade).toList();
    }
}
