package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/// The pages of a part while they fill from top to bottom.
///
/// A trial only tells how many pages it takes: bodies may leave their elements out of it.
final class Flow {

    private final Page paper;
    private final boolean trial;
    private final int firstPage;
    private final double topOfLater;
    private final List<Element> elements = new ArrayList<>();
    private final List<Decoration> decorations = new ArrayList<>();
    private int page;
    private boolean open;
    private String heading = "";
    private final Map<Integer, String> goingOn = new HashMap<>();
    private int torn;
    private double y;

    /// @param paper what the pages are like
    /// @param firstPage the number of the first page, from 0
    /// @param topOfLater where the body begins on all pages but the first
    Flow(Page paper, int firstPage, double topOfLater) {
        this(paper, firstPage, topOfLater, false);
    }

    private Flow(Page paper, int firstPage, double topOfLater, boolean trial) {
        this.trial = trial;
        this.paper = paper;
        this.firstPage = firstPage;
        this.topOfLater = topOfLater;
        this.page = firstPage;
        this.y = paper.top();
    }

    static Flow trial(Page paper, double topOfLater) {
        return new Flow(paper, 0, topOfLater, true);
    }

    boolean isTrial() {
        return trial;
    }

    /// How far down the page the print has come.
    double y() {
        return y;
    }

    void down(double distance) {
        y += distance;
    }

    /// What is left of the page.
    double room() {
        return paper.bottom() - y;
    }

    /// The room of a page with nothing on it.
    double roomOfPage() {
        return paper.bottom() - topOfLater;
    }

    /// Goes on to a new page unless `height` still fits on this one, or nothing is on it yet.
    void require(double height) {
        if (height > room() && y > topOfLater) {
            page++;
            goingOn.put(page - firstPage, heading);
            y = topOfLater;
            torn += open ? 1 : 0;
        }
    }

    /// The same between two parts of what hangs together: a page turned here tears nothing.
    void requireBetween(double height) {
        boolean wasOpen = open;
        open = false;
        require(height);
        open = wasOpen;
    }

    /// An element on this page.
    Element.Leaf leaf(Role role, Mark... marks) {
        return leaf(role, List.of(marks));
    }

    /// An element on this page.
    Element.Leaf leaf(Role role, List<Mark> marks) {
        return new Element.Leaf(role, page, marks);
    }

    void put(Element element) {
        elements.add(element);
    }

    void decorate(Mark... marks) {
        decorations.add(new Decoration(page, List.of(marks)));
    }

    /// A section begins here.
    ///
    /// @param section what stands over it
    /// @param hangsTogether whether it had better not be torn by a page turn
    void open(String section, boolean hangsTogether) {
        heading = section;
        open = hangsTogether;
    }

    /// The section that goes on at the top of a page, counted from 0; empty where another begins.
    String goingOn(int onPage) {
        return goingOn.getOrDefault(onPage, "");
    }

    /// Whether a page turned within what had better hang together.
    boolean isTorn() {
        return torn > 0;
    }

    /// What the layout costs: pages first, then page turns within what had better hang together.
    long cost() {
        return 1000L * pages() + torn;
    }

    /// A section ends here: all elements put since there were `from` of them are its parts.
    void gather(int from) {
        open = false;
        heading = "";
        List<Element> tail = elements.subList(from, elements.size());
        Element section = new Element.Group(Role.SECTION, tail);
        tail.clear();
        elements.add(section);
    }

    int put() {
        return elements.size();
    }

    int pages() {
        return page - firstPage + 1;
    }

    Laid laid() {
        return new Laid(paper, pages(), elements, decorations);
    }

    void decorate(int onPage, Mark... marks) {
        decorations.add(new Decoration(firstPage + onPage, List.of(marks)));
    }
}
