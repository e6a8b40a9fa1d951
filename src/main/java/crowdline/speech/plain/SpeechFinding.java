package crowdline.speech.plain;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Something in a text that listeners may not follow. A finding never changes the text.
 *
 * @param code which kind: one of the constants of {@link PlainLanguage}
 * @param message one sentence for the author
 * @param fromChar first character concerned, an index into the text checked
 * @param toChar the character after the last one concerned
 * @param suggestion what could be said instead, if anything is known
 */
public record SpeechFinding(
        String code,
        String message,
        int fromChar,
        int toChar,
        @Nullable String suggestion) {

    public SpeechFinding {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(message, "message");
        if (fromChar < 0 || toChar < fromChar) {
            throw new IllegalArgumentException(
                    "a finding needs 0 <= from <= to, but got from " + fromChar + " to " + toChar);
        }
    }
}
