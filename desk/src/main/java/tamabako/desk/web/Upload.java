package tamabako.desk.web;

/// A file that was sent with a form.
///
/// @param name what it was called, without folders; blank where no file was chosen
/// @param bytes what is in it
@SuppressWarnings("ArrayRecordComponent") // read once, never compared
public record Upload(String name, byte[] bytes) {

    /// Whether a file was chosen at all.
    public boolean isChosen() {
        return !name.isEmpty();
    }
}
