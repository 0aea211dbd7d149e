package tamabako.records.roster;

/// Where in a roster something stands.
///
/// @param file the file inside a package of several; blank where there is one only
/// @param line the line, from 1; 0 for the file as a whole
/// @param column the column, from 1; 0 for the line as a whole
/// @param heading what stands above the column; blank where nothing does
public record Place(String file, int line, int column, String heading) {

    /// The file as a whole.
    public static final Place WHOLE = new Place("", 0, 0, "");

    /// A whole line.
    static Place line(int line) {
        return new Place("", line, 0, "");
    }

    /// A whole line of one of several files.
    static Place line(String file, int line) {
        return new Place(file, line, 0, "");
    }
}
