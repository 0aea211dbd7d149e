package tamabako.desk.account;

/// What the page to sign in shows.
///
/// @param name the name typed so far
/// @param back where to go afterwards
/// @param readable whether others in the network could read the password on its way
/// @param fault what was wrong, empty where nothing was
public record SignInView(String name, String back, boolean readable, String fault) {}
