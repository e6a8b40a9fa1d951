package crowdline.speech.pace;

import crowdline.speech.say.SpokenText;
import java.util.Objects;

/**
 * A remark that a speaker said against the clock.
 *
 * @param seconds from the first sound to the last, above 0
 * @param text what was said; has at least one letter
 */
public record TimedRemark(double seconds, SpokenText text) {

    public TimedRemark {
        Objects.requireNonNull(text, "text");
        if (!(seconds > 0 && seconds < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a timed remark lasted " + seconds + " s, but it must last more than 0 s; time it again");
        }
        if (text.letters() == 0) {
            throw new IllegalArgumentException("a timed remark of " + seconds + " s has no words (\"" + text.written()
                    + "\"); time a remark that is spoken");
        }
    }
}
