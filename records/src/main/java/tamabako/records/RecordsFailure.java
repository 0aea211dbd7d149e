package tamabako.records;

import java.util.Locale;

/// The class book could not be read or written: the disk or the database failed. What was kept
/// before is untouched.
public final class RecordsFailure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Reason reason;

    /// Failed for `reason`.
    public RecordsFailure(Reason reason) {
        super(said(reason));
        this.reason = reason;
    }

    /// Failed for `reason`, because of `cause`.
    public RecordsFailure(Reason reason, Throwable cause) {
        super(said(reason), cause);
        this.reason = reason;
    }

    /// Why; [RecordsWords] says it in any language, [#getMessage()] in English.
    public Reason reason() {
        return reason;
    }

    private static String said(Reason reason) {
        return RecordsWords.of(Locale.ENGLISH).say(reason);
    }
}
