package beltmark.packaged;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.condition.DisabledIfSystemProperty;

/** On a test class that drives a real browser. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@DisabledIfSystemProperty(
        named = "skipBrowserTests",
        matches = "true",
        disabledReason = "browser tests are left out by -DskipBrowserTests")
@interface NeedsChromium {}
