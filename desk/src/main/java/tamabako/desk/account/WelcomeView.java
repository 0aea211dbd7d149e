package tamabako.desk.account;

/// What the page shows on which someone chooses their first password.
///
/// @param name what they are called
/// @param code the one-time code that they typed
/// @param fault what was wrong, empty where nothing was
public record WelcomeView(String name, String code, String fault) {}
