package tamabako.problems.setting;

/// What a form must keep besides its classes, such as the customs of a section.
@FunctionalInterface
public interface FormRule {

    /// Everything is allowed.
    FormRule NONE = (_, _) -> true;

    /// Whether a form may stay as it now is, after another candidate was put on `seat`.
    ///
    /// @param form the number of the candidate on each seat; only to be read
    boolean allows(int[] form, int seat);
}
