package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import tamabako.frame.Technique;
import tamabako.paper.wish.PaperPrintWish;
import tamabako.paper.words.PrintWords;
import tamabako.problems.grade.Grade;
import tamabako.problems.setting.FormReport;
import tamabako.problems.setting.FormReport.FormLoad;
import tamabako.problems.setting.FormReport.Load;

/// Lays what the forms of a paper ask of a pupil side by side: for the whole paper and for each
/// section one table, with by how much the forms differ in its last column.
public final class FormReportLayout {

    private static final int FORMS_ACROSS = 8;

    private final FormReport report;
    private final Grade grade;
    private final Setting setting;

    private FormReportLayout(FormReport report, Grade grade, Setting setting) {
        this.report = report;
        this.grade = grade;
        this.setting = setting;
    }

    /// The pages of the report.
    ///
    /// @param grade the grade that the forms are of
    public static Laid of(FormReport report, Grade grade, PaperPrintWish wish, Measure measure) {
        PrintWords words = PrintWords.of(wish.language());
        Setting setting = new Setting(words, wish.size(), Page.of(wish.page()), measure);
        return new FormReportLayout(report, grade, setting).lay(wish);
    }

    /// What the window of a reader shows.
    public static String title(Grade grade, PaperPrintWish wish) {
        PrintWords words = PrintWords.of(wish.language());
        String name = grade.name().in(words.language());
        return words.say("forms.title", wish.title().orElse(name));
    }

    private Laid lay(PaperPrintWish wish) {
        Title title = new Title(title(grade, wish), say("forms"), setting);
        List<String> lines = new ArrayList<>(List.of(say("forms.told")));
        wish.date().ifPresent(lines::add);
        Head head = new PaperHead(title, lines, List.of(), setting);
        List<Block> blocks = new ArrayList<>();
        for (int first = 0; first < report.forms().size(); first += FORMS_ACROSS) {
            int end = Math.min(report.forms().size(), first + FORMS_ACROSS);
            blocks.addAll(tables(report.forms().subList(first, end)));
        }
        return new Layout(head, new Foot("", setting), blocks, setting).lay(0);
    }

    private List<Block> tables(List<FormLoad> forms) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(table(say("forms.whole"), forms, FormLoad::whole));
        int sections = forms.getFirst().sections().size();
        for (int i = 0; i < sections && sections > 1; i++) {
            int place = i;
            String id = forms.getFirst().sections().get(i).section();
            String name =
                    grade.section(id)
                            .map(section -> section.name().in(setting.words().language()))
                            .orElse(id);
            blocks.add(table(name, forms, form -> form.sections().get(place).load()));
        }
        return blocks;
    }

    private Block table(String name, List<FormLoad> forms, Function<FormLoad, Load> load) {
        List<String> heads = new ArrayList<>(List.of(""));
        forms.forEach(form -> heads.add(PaperFacts.form(form.form(), setting.words())));
        heads.add(say("forms.spread"));
        List<List<String>> lines = new ArrayList<>();
        lines.add(line("strokes", forms, load, each -> each.effort().strokes()));
        lines.add(line("motions", forms, load, each -> each.effort().motions()));
        lines.add(line("seconds", forms, load, each -> each.effort().seconds()));
        lines.add(line("digits", forms, load, Load::digits));
        for (Technique technique : Technique.values()) {
            String key = technique.word();
            lines.add(line(key, forms, load, each -> each.effort().count(technique)));
        }
        return new Block(
                new SectionHead(name, "", List.of(), setting),
                new FormTable(heads, lines, setting));
    }

    private List<String> line(
            String key,
            List<FormLoad> forms,
            Function<FormLoad, Load> load,
            ToDoubleFunction<Load> measure) {
        List<String> cells = new ArrayList<>(List.of(say("forms." + key)));
        for (FormLoad form : forms) {
            double figure = measure.applyAsDouble(load.apply(form));
            cells.add(String.format(Locale.ROOT, "%,d", Math.round(figure)));
        }
        cells.add(spread(load, measure));
        return cells;
    }

    /// The most less the fewest of all forms, as a share of their mean.
    private String spread(Function<FormLoad, Load> load, ToDoubleFunction<Load> measure) {
        var all = report.forms().stream().map(load).mapToDouble(measure).summaryStatistics();
        double spread = all.getSum() == 0 ? 0 : (all.getMax() - all.getMin()) / all.getAverage();
        return String.format(Locale.ROOT, "%.1f%%", spread * 100);
    }

    private String say(String key) {
        return setting.words().say(key);
    }
}
