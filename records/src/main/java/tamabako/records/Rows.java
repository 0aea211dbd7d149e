package tamabako.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.Year;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;
import tamabako.problems.json.ProblemJson;

/// How rows of the database are read as what they mean. Sheets keep their problems as the
/// documented format writes them, one problem a line.
final class Rows {

    private Rows() {}

    static Group group(ResultSet row) throws SQLException {
        return new Group(row.getString("id"), row.getString("name"), row.getBoolean("demo"));
    }

    static Pupil pupil(ResultSet row) throws SQLException {
        return new Pupil(
                row.getString("id"),
                row.getString("group_id"),
                row.getString("name"),
                Locale.forLanguageTag(row.getString("language")),
                about(row),
                new Preferences(
                        row.getBoolean("no_flashing"),
                        row.getInt("extra_time"),
                        row.getInt("pace")),
                row.getBoolean("demo"));
    }

    private static About about(ResultSet row) throws SQLException {
        int born = row.getInt("born");
        Optional<Year> year = row.wasNull() ? Optional.empty() : Optional.of(Year.of(born));
        return new About(
                row.getString("kana"), year, row.getString("grade"), row.getString("roster_id"));
    }

    static KeptSheet sheet(ResultSet row) throws SQLException {
        List<Problem> problems = row.getString("problems").lines().map(ProblemJson::parse).toList();
        return new KeptSheet(
                new Sheet(row.getString("id"), row.getString("title"), problems),
                Instant.parse(row.getString("kept_at")),
                row.getBoolean("demo"));
    }

    static String problems(Sheet sheet) {
        return String.join("\n", sheet.problems().stream().map(ProblemJson::line).toList());
    }

    static Work workWithoutAnswers(ResultSet row) throws SQLException {
        return new Work(
                row.getString("id"),
                row.getString("sheet_id"),
                Optional.ofNullable(row.getString("pupil_id")),
                Instant.parse(row.getString("handed_at")),
                List.of(),
                took(row));
    }

    static Work.MarkedAnswer answer(ResultSet row) throws SQLException {
        return new Work.MarkedAnswer(row.getString("written"), row.getString("mark"), took(row));
    }

    private static Optional<Duration> took(ResultSet row) throws SQLException {
        long milliseconds = row.getLong("took_ms");
        return row.wasNull() ? Optional.empty() : Optional.of(Duration.ofMillis(milliseconds));
    }

    /// Yes and no are 1 and 0 in every database.
    static int flag(boolean yes) {
        return yes ? 1 : 0;
    }
}
