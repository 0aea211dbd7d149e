package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.paper.layout.PaperHead.Boxed;
import tamabako.paper.wish.PaperPart;
import tamabako.paper.wish.PaperPrintWish;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.words.PrintWords;
import tamabako.problems.Mode;
import tamabako.problems.Problem;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperSection;

/// Lays the parts of a paper on pages.
///
/// A paper that has a time as a whole is one run of pages. One whose sections have times of their
/// own is handed out section by section, so each begins a page with a head of its own.
public final class PaperLayout {

    private final PaperFacts facts;
    private final PaperPrintWish wish;
    private final Setting setting;

    private PaperLayout(Paper paper, PaperPrintWish wish, Measure measure) {
        PrintWords words = PrintWords.of(wish.language());
        this.facts = new PaperFacts(paper, wish.title(), wish.ladder(), words);
        this.wish = wish;
        this.setting = new Setting(words, wish.size(), Page.of(wish.page()), measure);
    }

    /// A part of `paper` on pages, of which the first is number `firstPage` (from 0) of its
    /// document; nothing where the paper has no such part.
    ///
    /// @throws Unprintable if a number is too long, a column has too many rows, or the font lacks a
    ///   character
    public static List<Laid> of(
            Paper paper, PaperPart part, PaperPrintWish wish, Measure measure, int firstPage) {
        Legible.check(paper, wish, measure);
        PaperLayout layout = new PaperLayout(paper, wish, measure);
        return switch (part) {
            case PAPER -> layout.problems(firstPage);
            case PADS -> layout.pads(firstPage);
            case SCRIPT -> layout.script(firstPage);
            case KEY -> layout.key(firstPage);
            case MARKING -> layout.marking(firstPage);
        };
    }

    /// What the window of a reader shows for a file with this paper first.
    public static String title(Paper paper, PaperPrintWish wish) {
        PrintWords words = PrintWords.of(wish.language());
        PaperFacts facts = new PaperFacts(paper, wish.title(), wish.ladder(), words);
        return words.say("paper.title", facts.ladder(), facts.title());
    }

    private List<Laid> problems(int firstPage) {
        if (facts.isSatAtOnce()) {
            List<Boxed> boxes = boxes(facts.paper().grade().fullMarks());
            Head head = new PaperHead(title(""), lines(facts.ofPaper()), boxes, setting);
            return List.of(new Layout(head, foot(), asked(sections()), setting).lay(firstPage));
        }
        List<Laid> pages = new ArrayList<>();
        int next = firstPage;
        for (PaperSection section : sections()) {
            List<Boxed> boxes = boxes(section.section().fullMarks());
            Head head = new PaperHead(title(""), lines(facts.ofSection(section)), boxes, setting);
            List<Block> blocks = asked(List.of(section));
            pages.add(new Layout(head, foot(), blocks, setting).lay(next));
            next += pages.getLast().pages();
        }
        return pages;
    }

    private List<Block> asked(List<PaperSection> some) {
        List<Block> blocks = new ArrayList<>();
        for (PaperSection each : some) {
            for (Section section : kinds(each)) {
                boolean called = each.section().mode() == Mode.CALLED;
                Piece piece =
                        called
                                ? Lists.of(section, BoxLine.ofCalled(section, setting), setting)
                                : Pieces.asked(section, setting);
                blocks.add(new Block(over(each, section, false), piece));
            }
        }
        return blocks;
    }

    private List<Laid> pads(int firstPage) {
        List<Laid> pages = new ArrayList<>();
        int next = firstPage;
        Setting lying = setting.lying();
        for (PaperSection section : sections()) {
            if (section.pad().isPresent()) {
                Problem first = section.problems().getFirst();
                Optional<String> unit = first.terms().unit();
                String name = setting.words().say("paper.id", facts.paper().id());
                PrintedPad pad = PrintedPad.of(section.pad().get(), unit);
                pages.add(new PadLeaves(pad, name, lying).lay(next));
                next += pages.getLast().pages();
            }
        }
        return pages;
    }

    private List<Laid> script(int firstPage) {
        List<Block> blocks = new ArrayList<>();
        for (PaperSection each : sections()) {
            if (each.section().mode() == Mode.CALLED) {
                for (Section section : kinds(each)) {
                    SectionHead over = over(each, section, true);
                    String note = setting.words().say("script.note");
                    SectionHead noted = section.isOfColumns() ? over.noting(note) : over;
                    blocks.add(new Block(noted, called(section)));
                }
            }
        }
        return blocks.isEmpty() ? List.of() : List.of(told("script", blocks, firstPage));
    }

    private Piece called(Section section) {
        return section.isOfColumns()
                ? ColumnBlocks.called(section, setting)
                : Lists.of(section, ExpressionLine.of(section, setting).answered(section), setting);
    }

    private List<Laid> key(int firstPage) {
        List<Block> blocks = new ArrayList<>();
        for (PaperSection each : sections()) {
            for (Section section : kinds(each)) {
                blocks.add(new Block(over(each, section, true), new KeyGrid(section, setting)));
            }
        }
        return List.of(told("key", blocks, firstPage));
    }

    private List<Laid> marking(int firstPage) {
        Head head =
                new PaperHead(
                        title(setting.words().say("marking")),
                        List.of(facts.ofPaper()),
                        List.of(
                                new Boxed(
                                        setting.words().say("name"), "", "", setting.pick(0.6, 1)),
                                new Boxed(
                                        setting.words().say("marking.by"),
                                        "",
                                        "",
                                        setting.pick(0.4, 1))),
                        setting);
        List<Block> blocks = new MarkingBlocks(facts, setting).blocks(head);
        return List.of(new Layout(head, foot(), blocks, setting).lay(firstPage));
    }

    /// A part for the teacher, under its name.
    private Laid told(String name, List<Block> blocks, int firstPage) {
        List<String> told = new ArrayList<>(lines(facts.ofPaper()));
        facts.unconfirmed().ifPresent(told::add);
        wish.date().ifPresent(told::add);
        Head head = new PaperHead(title(setting.words().say(name)), told, List.of(), setting);
        return new Layout(head, foot(), blocks, setting).lay(firstPage);
    }

    private List<String> lines(String told) {
        return List.of(facts.ladder(), told);
    }

    /// Its name. Where a section has problems of several kinds, that of the kind too; mental and
    /// called kinds say enough by themselves.
    private SectionHead over(PaperSection of, Section section, boolean key) {
        String name = facts.name(of);
        boolean all = section.problems().size() == of.problems().size();
        return SectionHead.of(section, all ? name : kind(of, section), key, setting);
    }

    private String kind(PaperSection of, Section section) {
        PrintWords words = setting.words();
        String kind = words.say(section.heading());
        return switch (of.section().mode()) {
            case FRAME -> words.say("paper.kind", facts.name(of), kind);
            case MENTAL, CALLED -> kind;
        };
    }

    private List<Boxed> boxes(int full) {
        PrintWords words = setting.words();
        return List.of(
                new Boxed(words.say("name"), "", "", setting.pick(0.45, 1)),
                new Boxed(words.say("date"), wish.date().orElse(""), "", setting.pick(0.27, 0.55)),
                new Boxed(
                        words.say("score"),
                        "",
                        words.say("score.of", full),
                        setting.pick(0.28, 0.45)));
    }

    private Title title(String label) {
        return new Title(facts.title(), label, setting);
    }

    private Foot foot() {
        return new Foot(setting.words().say("paper.id", facts.paper().id()), setting);
    }

    private List<PaperSection> sections() {
        return facts.paper().sections();
    }

    private static List<Section> kinds(PaperSection section) {
        return Section.kinds(Numbered.of(section.problems()));
    }
}
