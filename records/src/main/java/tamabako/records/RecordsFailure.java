package tamabako.records;

/// The class book could not be read or written: the disk or the database failed. What was kept
/// before is untouched.
public final class RecordsFailure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    RecordsFailure(String message) {
        super(message);
    }

    RecordsFailure(String message, Throwable cause) {
        super(message, cause);
    }
}
