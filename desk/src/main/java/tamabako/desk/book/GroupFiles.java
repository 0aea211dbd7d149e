package tamabako.desk.book;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.RecordsWords;
import tamabako.records.table.BookTable;
import tamabako.records.table.GroupTables;
import tamabako.records.table.TableBook;
import tamabako.records.table.TableCsv;

/// The pupils and the results of a group as files for other programs.
record GroupFiles(ClassBook book, ZoneId zone) implements Routes {

    private static final String CSV = "text/csv; charset=utf-8";
    private static final String XLSX =
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    @Override
    public List<Route> routes() {
        return List.of(
                file("pupils.csv", GroupTables::pupils, TableCsv::write),
                file("pupils.xlsx", GroupTables::pupils, TableBook::write),
                file("results.csv", GroupTables::results, TableCsv::write),
                file("results.xlsx", GroupTables::results, TableBook::write));
    }

    private Route file(
            String name,
            BiFunction<GroupTables, Group, BookTable> gathering,
            Function<BookTable, byte[]> writing) {
        return Route.get(
                "/book/groups/{id}/" + name,
                request ->
                        Missing.orGroup(
                                book,
                                request,
                                group -> {
                                    BookTable table = gathering.apply(tables(request), group);
                                    return reply(name, writing.apply(table));
                                }));
    }

    private GroupTables tables(Request request) {
        return new GroupTables(book, RecordsWords.of(request.words().language()), zone);
    }

    /// The file is named by what it is, without the name of the group.
    private static Reply reply(String name, byte[] bytes) {
        return new Reply.Bytes(
                200,
                name.endsWith(".csv") ? CSV : XLSX,
                Map.of("Content-Disposition", "attachment; filename=\"" + name + "\""),
                bytes);
    }
}
