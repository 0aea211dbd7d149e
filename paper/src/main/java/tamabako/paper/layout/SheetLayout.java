package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.paper.wish.PageSize;
import tamabako.paper.wish.PrintWish;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.words.PrintWords;
import tamabako.problems.Sheet;

/// Lays a practice sheet, or its key, on pages.
public final class SheetLayout {

    private SheetLayout() {}

    /// The problems of `sheet` on pages, of which the first is number `firstPage` (from 0) of its
    /// document.
    ///
    /// @throws Unprintable if a number is too long, a column has too many rows, the font lacks a
    ///   character, or there are no problems
    public static Laid ofSheet(Sheet sheet, PrintWish wish, Measure measure, int firstPage) {
        return lay(sheet, false, wish, measure, firstPage);
    }

    /// The answers of `sheet` on pages.
    ///
    /// @throws Unprintable as [#ofSheet]
    public static Laid ofKey(Sheet sheet, PrintWish wish, Measure measure, int firstPage) {
        return lay(sheet, true, wish, measure, firstPage);
    }

    /// The answers of `sheets`, one sheet after the other, as many on a page as fit.
    ///
    /// @throws Unprintable as [#ofSheet]
    public static Laid ofKeys(List<Sheet> sheets, PrintWish wish, Measure measure, int firstPage) {
        if (sheets.size() == 1) {
            return ofKey(sheets.getFirst(), wish, measure, firstPage);
        }
        sheets.forEach(sheet -> Legible.check(sheet, wish, measure));
        PrintWords words = PrintWords.of(wish.language());
        Setting setting = new Setting(words, wish.size(), Page.of(PageSize.A4), measure);
        String all = words.say("keys", sheets.size());
        Head head = new SheetHead(new Sheet("", all, List.of()), true, wish, setting);
        List<Block> blocks =
                sheets.stream().flatMap(sheet -> keyOf(sheet, setting).stream()).toList();
        return new Layout(head, new Foot(all, setting), blocks, setting).layEvenly(firstPage);
    }

    private static List<Block> keyOf(Sheet sheet, Setting setting) {
        List<Section> sections = Section.of(Numbered.of(sheet.problems()));
        List<Block> blocks = new ArrayList<>();
        for (Section section : sections) {
            String kind = sections.size() == 1 ? "" : setting.words().say(section.heading());
            blocks.add(
                    new Block(
                            SectionHead.ofSheet(sheet, section, kind, setting),
                            Pieces.of(section, true, setting)));
        }
        return blocks;
    }

    /// The slip pads that problems of `sheet` are told by, as far as these tell of them.
    ///
    /// @throws Unprintable as [#ofSheet], or if problems side by side tell of different pads
    public static List<Laid> ofPads(Sheet sheet, PrintWish wish, Measure measure, int firstPage) {
        PrintWords words = PrintWords.of(wish.language());
        Setting setting = new Setting(words, wish.size(), Page.of(PageSize.A4), measure).lying();
        String name = words.say("sheet", sheet.id());
        List<Laid> pages = new ArrayList<>();
        int next = firstPage;
        for (Section section : Section.of(Numbered.of(sheet.problems()))) {
            List<Numbered> asked = section.told(Telling.PAD);
            if (!asked.isEmpty()) {
                PrintedPad pad = PrintedPad.of(asked);
                pages.add(new PadLeaves(pad, name, setting).lay(next));
                next += pages.getLast().pages();
            }
        }
        return pages;
    }

    private static Laid lay(
            Sheet sheet, boolean key, PrintWish wish, Measure measure, int firstPage) {
        Legible.check(sheet, wish, measure);
        PrintWords words = PrintWords.of(wish.language());
        Setting setting = new Setting(words, wish.size(), Page.of(PageSize.A4), measure);
        Head head = new SheetHead(sheet, key, wish, setting);
        Foot foot = new Foot(words.say("sheet", sheet.id()), setting);
        List<Block> blocks =
                Section.of(Numbered.of(sheet.problems())).stream()
                        .map(section ->
                                new Block(
                                        SectionHead.of(section, key, setting),
                                        Pieces.of(section, key, setting)))
                        .toList();
        return new Layout(head, foot, blocks, setting).lay(firstPage);
    }
}
