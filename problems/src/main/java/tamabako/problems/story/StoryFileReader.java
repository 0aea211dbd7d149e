package tamabako.problems.story;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import tamabako.problems.story.UnreadableStory.Fault;

/// Reads a file of story templates.
final class StoryFileReader {

    private static final List<String> LANGUAGES = List.of("en", "ja");

    StoryTemplates read(String yaml) {
        Keys file = new Keys(compose(yaml), List.of("names", "stories"));
        List<Map<String, String>> names = new ArrayList<>();
        for (Node name : file.list("names", "names: [{en: Aoi, ja: あおい}, {en: Ben, ja: ベン}]")) {
            names.add(name(new Keys(name, LANGUAGES)));
        }
        if (names.size() < 2) {
            throw file.missing("names", "names: [{en: Aoi, ja: あおい}, {en: Ben, ja: ベン}]");
        }
        List<StoryTemplate> templates = new ArrayList<>();
        for (Node story : file.list("stories", "stories: [...]")) {
            templates.add(new TemplateReader(story, templates).read());
        }
        return new StoryTemplates(names, templates);
    }

    private static Map<String, String> name(Keys keys) {
        Map<String, String> name = new TreeMap<>();
        LANGUAGES.forEach(language -> name.put(language, keys.text(language, language + ": Aoi")));
        return new LinkedHashMap<>(name);
    }

    private static Node compose(String yaml) {
        try {
            return new Compose(LoadSettings.builder().build())
                    .composeString(yaml)
                    .orElseThrow(() -> new UnreadableStory(1, new Fault.NotYaml()));
        } catch (MarkedYamlEngineException broken) {
            int line = broken.getProblemMark().map(Mark::getLine).orElse(0) + 1;
            throw new UnreadableStory(line, new Fault.NotYaml());
        } catch (YamlEngineException _) {
            throw new UnreadableStory(1, new Fault.NotYaml());
        }
    }
}
