package tamabako.paper.layout;

import java.util.ArrayList;
import java.util.List;
import tamabako.problems.PadLine;

/// What a slip pad asks for, in words: a line, and from which leaf to which.
record PadWords(List<String> words, Setting setting) implements ShortCell.Asked {

    PadWords {
        words = List.copyOf(words);
    }

    static PadWords of(PadLine asked, Setting setting) {
        return new PadWords(
                List.of(
                        setting.words().say("pad.line", asked.line()),
                        setting.words().say("pad.leaves", asked.firstLeaf(), asked.lastLeaf())),
                setting);
    }

    @Override
    public String told() {
        return String.join(" ", words);
    }

    @Override
    public double width(double figures) {
        return words.stream().mapToDouble(this::width).max().orElse(0);
    }

    @Override
    public int lines() {
        return words.size();
    }

    @Override
    public List<Mark> marks(double left, double width, double baseline, double figures) {
        List<Mark> marks = new ArrayList<>();
        for (String line : words) {
            double y = baseline + marks.size() * figures * ShortCell.LEADING;
            marks.add(
                    setting.centred(
                            left + width / 2, y, Face.REGULAR, setting.size().words(), line));
        }
        return marks;
    }

    private double width(String line) {
        return setting.width(Face.REGULAR, setting.size().words(), line);
    }
}
