package tamabako.desk.account;

/// A one-time code, as it is shown this once.
///
/// @param name for whom
/// @param code the code
/// @param days so many days it counts
public record CodeView(String name, String code, long days) {}
