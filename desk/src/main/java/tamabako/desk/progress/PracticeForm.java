package tamabako.desk.progress;

import java.util.Map;
import java.util.OptionalInt;
import java.util.function.LongSupplier;
import tamabako.desk.sheet.Form;
import tamabako.desk.web.Request;

/// The form that asks for the next practice: how many problems, and how long until the exam.
///
/// @param form as it came
/// @param asked what it asks for; the usual where it cannot be read
record PracticeForm(Form form, Planning.Asked asked) {

    private static final int MOST = 60;
    private static final int MOST_DAYS = 400;

    static PracticeForm of(Request request, LongSupplier seeds) {
        Form form = new Form(request, Map.of("count", "20", "days", ""));
        OptionalInt days = form.wholeIfAny("days", 0, MOST_DAYS);
        int count = form.whole("count", 1, MOST);
        return new PracticeForm(form, new Planning.Asked(count, days, seed(form, seeds)));
    }

    private static long seed(Form form, LongSupplier seeds) {
        String written = form.text("seed");
        return written.matches("-?\\d{1,18}") ? Long.parseLong(written) : seeds.getAsLong() >>> 8;
    }
}
