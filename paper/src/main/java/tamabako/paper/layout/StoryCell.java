package tamabako.paper.layout;

import java.util.List;

/// A word problem among problems of other kinds, over the whole width of the page.
record StoryCell(PrintedStory story) implements MixedCell {

    @Override
    public String label() {
        return story.problem().label();
    }

    @Override
    public String told() {
        return story.lines().getFirst();
    }

    @Override
    public double width(double figures) {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public double height(double figures, double air) {
        return story.height() + story.setting().pick(8, 12) * air;
    }

    @Override
    public void lay(Flow flow, Room at, double figures, double air) {
        double top = at.top() + (at.height() - story.height()) / 2;
        flow.put(new Element.Group(Role.TABLE, List.of(story.lay(flow, at.left(), top))));
    }
}
