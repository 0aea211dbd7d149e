package tamabako.desk.exam;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import tamabako.desk.ladder.KnownLadders;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Words;
import tamabako.problems.HalfWidth;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;

/// The exam whose outcomes are written down.
///
/// @param day when it was held
public record ChosenExam(LocalDate day, Ladder ladder, Grade grade) {

    /// No book goes back further.
    private static final int YEARS = 120;

    /// What came of reading which exam it is.
    ///
    /// @param day the day as it is to stand in its field
    /// @param exam ladder and grade as their field has them, such as `abacus-one-sheet/3`; blank
    ///   where none was chosen yet
    /// @param chosen the exam; empty where none was chosen, or something cannot be taken
    /// @param fault what cannot be taken, and how to mend it; blank for nothing
    public record Read(String day, String exam, Optional<ChosenExam> chosen, String fault) {}

    static Read read(Fields fields, KnownLadders ladders, LocalDate today, Words words) {
        String exam = fields.text("exam").strip();
        String written = HalfWidth.of(fields.text("day")).strip().replace('/', '-');
        if (exam.isEmpty() && written.isEmpty()) {
            return new Read(today.toString(), "", Optional.empty(), "");
        }
        Optional<LocalDate> day = day(written);
        if (day.isEmpty() || day.get().isBefore(today.minusYears(YEARS))) {
            return fault(written, exam, words.say("book.day-unreadable", today));
        }
        if (day.get().isAfter(today)) {
            return fault(written, exam, words.say("book.day-to-come", today));
        }
        int slash = exam.lastIndexOf('/');
        Optional<Ladder> ladder =
                slash < 0
                        ? Optional.empty()
                        : ladders.find(exam.substring(0, slash)).map(KnownLadders.Known::ladder);
        Optional<ChosenExam> chosen =
                ladder.flatMap(known ->
                        known.grade(exam.substring(slash + 1))
                                .map(grade -> new ChosenExam(day.get(), known, grade)));
        return chosen.isPresent()
                ? new Read(written, exam, chosen, "")
                : fault(written, exam, words.say("exams.no-grade"));
    }

    private static Read fault(String day, String exam, String fault) {
        return new Read(day, exam, Optional.empty(), fault);
    }

    private static Optional<LocalDate> day(String written) {
        try {
            return Optional.of(LocalDate.parse(written));
        } catch (DateTimeException unreadable) {
            return Optional.empty();
        }
    }

    /// The value of the field for ladder and grade.
    static String value(String ladder, String grade) {
        return ladder + "/" + grade;
    }

    /// The fields of an address that asks for this exam.
    String query() {
        return query(day, ladder.id(), grade.id());
    }

    static String query(LocalDate day, String ladder, String grade) {
        return "day=%s&exam=%s"
                .formatted(day, URLEncoder.encode(value(ladder, grade), StandardCharsets.UTF_8));
    }

    /// What it is called, such as "Grade 3".
    public String name(Locale language) {
        return grade.name().in(language);
    }
}
