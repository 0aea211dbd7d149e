package tamabako.desk.web;

import java.util.List;

/// What a page package offers to the desk.
public interface Routes {

    /// Its addresses.
    List<Route> routes();

    /// The names of its word files beside the desk's own: `work` stands for
    /// `words/work_en.properties`, `words/work_ja.properties` and so on.
    default List<String> wordFiles() {
        return List.of();
    }
}
