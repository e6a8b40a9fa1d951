package crowdline;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a test makes the program log as a warning or worse; any other fails it ({@link UnexpectedWarnings}). On a method each of
 * these must come, on a class each may come in any of its tests.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.METHOD, ElementType.TYPE})
public @interface ExpectsWarning {
    /** A part of each message, or of what was thrown with it. */
    String[] value();
}
