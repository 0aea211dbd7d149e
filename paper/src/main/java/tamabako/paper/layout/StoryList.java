package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;

/// Word problems (ōyō keisan), one below the other.
final class StoryList implements Piece {

    private final List<PrintedStory> stories;
    private final Setting setting;

    StoryList(Section section, Setting setting) {
        List<Numbered> problems = section.problems();
        AnswerBox box = AnswerBox.of(section, setting);
        double labels = Labels.width(problems.stream().map(Numbered::label).toList(), setting);
        this.setting = setting;
        this.stories =
                problems.stream()
                        .map(each -> PrintedStory.of(each, box, labels, setting.across(), setting))
                        .toList();
    }

    @Override
    public boolean hangsTogether() {
        return false;
    }

    @Override
    public double opening(double air) {
        return stories.getFirst().height();
    }

    @Override
    public void lay(Flow flow, double air) {
        List<Element> rows = new ArrayList<>();
        for (PrintedStory story : stories) {
            flow.require(story.height());
            if (!flow.isTrial()) {
                rows.add(story.lay(flow, setting.left(), flow.y()));
            }
            flow.down(story.height() + setting.pick(7, 10) + 16 * air);
        }
        flow.put(new Element.Group(Role.TABLE, rows));
    }
}
