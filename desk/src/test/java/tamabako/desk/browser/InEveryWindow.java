package tamabako.desk.browser;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// A test of a language and a width, for both languages on a phone, a tablet and a projector.
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@ParameterizedTest
@CsvSource({"en,390", "en,1024", "en,1920", "ja,390", "ja,1024", "ja,1920"})
@interface InEveryWindow {}
