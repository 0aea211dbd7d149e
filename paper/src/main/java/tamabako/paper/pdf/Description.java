package tamabako.paper.pdf;

import java.util.Locale;

/// What a file says about itself.
///
/// @param title what the window of a reader shows
/// @param language the language of the words
/// @param seed from this and the title the identifier of the file is made
public record Description(String title, Locale language, long seed) {}
