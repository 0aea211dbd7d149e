package tamabako.records;

import java.util.List;

/// Answers of one pupil to one sheet that were typed and are not handed in yet.
///
/// @param sheetId the sheet
/// @param pupilId the pupil
/// @param written the answers in the sheet's order, blank where none was typed; without line breaks
/// @param took the time as it was typed, which may not be readable yet
public record Draft(String sheetId, String pupilId, List<String> written, String took) {

    public Draft {
        written = List.copyOf(written);
    }
}
