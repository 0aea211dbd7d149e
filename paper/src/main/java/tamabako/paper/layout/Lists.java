package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;

/// Problems in lists side by side, numbered downward.
///
/// Two halves, such as ten plain products and ten of amounts, are two lists where a page holds
/// them; where it does not, one comes after the other, each in lists of its own and on one page, if
/// one holds it.
///
/// @param runs how many problems belong together, in their order
/// @param page the room of a page below head and heading; two halves that fit there stay on one
///   page
/// @param after the clear room below
record Lists(ListLine line, List<Integer> runs, double page, double after) implements Piece {

    private static final int FEWEST_LINES = 3;

    Lists {
        runs = List.copyOf(runs);
    }

    /// Lists of the problems of `section`.
    static Lists of(Section section, ListLine line, Setting setting) {
        List<Integer> runs = section.byUnit().stream().map(List::size).toList();
        boolean halves = runs.size() == 2 && runs.getFirst().equals(runs.getLast());
        int all = section.problems().size();
        return new Lists(line, halves ? runs : List.of(all), page(setting), setting.pick(8, 10));
    }

    /// Lists of so many lines without any such halves.
    static Lists of(int lines, ListLine line, Setting setting) {
        return new Lists(line, List.of(lines), page(setting), 3);
    }

    private static double page(Setting setting) {
        return setting.page().bottom() - setting.page().top() - setting.pick(230, 330);
    }

    @Override
    public boolean hangsTogether() {
        return true;
    }

    @Override
    public double opening(double air) {
        return staysOnPage(air)
                ? lines(count()) * line.pitch(air)
                : opening(runs.getFirst(), line.pitch(air));
    }

    /// What must fit below a heading: a half as a whole, if a page holds it; else some lines.
    private double opening(int run, double pitch) {
        double whole = lines(run) * pitch;
        return runs.size() > 1 && whole <= page
                ? whole
                : Math.min(FEWEST_LINES, lines(run)) * pitch;
    }

    @Override
    public void lay(Flow flow, double air) {
        double pitch = line.pitch(air);
        int all = count();
        if (staysOnPage(air)) {
            flow.require(lines(all) * pitch);
        }
        if (runs.size() == 1 || lines(all) * pitch <= flow.room()) {
            layRun(flow, 0, all, pitch);
        } else {
            int first = 0;
            for (int run : runs) {
                flow.requireBetween(opening(run, pitch));
                layRun(flow, first, first + run, pitch);
                first += run;
            }
        }
        flow.down(after);
    }

    /// The height of all lines at their closest, with the clear room below.
    double height() {
        return lines(count()) * line.pitch(0) + after;
    }

    private boolean staysOnPage(double air) {
        return runs.size() > 1 && lines(count()) * line.pitch(air) <= page;
    }

    private void layRun(Flow flow, int first, int end, double pitch) {
        int next = first;
        while (next < end) {
            int needed = lines(end - next);
            flow.require(Math.min(FEWEST_LINES, needed) * pitch);
            int lines = onThisPage(needed, (int) (flow.room() / pitch));
            int taken = Math.min(end - next, lines * line.across());
            if (!flow.isTrial()) {
                layLists(flow, next, next + taken, lines, pitch);
            }
            flow.down(lines * pitch);
            next += taken;
        }
    }

    /// How many of the `needed` lines go on this page: as many as fit, but not so many that a
    /// single one is left for the next.
    private static int onThisPage(int needed, int fitting) {
        return needed - fitting == 1 && fitting > FEWEST_LINES
                ? fitting - 1
                : Math.min(needed, fitting);
    }

    private void layLists(Flow flow, int first, int end, int lines, double pitch) {
        for (int list = 0; first + list * lines < end; list++) {
            int from = first + list * lines;
            List<Element> rows = new ArrayList<>();
            for (int i = from; i < Math.min(end, from + lines); i++) {
                rows.add(line.lay(flow, i, list, flow.y() + (i - from) * pitch));
            }
            flow.put(new Element.Group(Role.TABLE, rows));
        }
    }

    private int count() {
        return runs.stream().mapToInt(Integer::intValue).sum();
    }

    private int lines(int some) {
        return Math.ceilDiv(some, line.across());
    }
}
