package crowdline.speech.pace;

import crowdline.show.figure.Remark;
import java.util.Optional;

/** Who says the remarks of a show, and how long they take. */
@FunctionalInterface
public interface Voices {
    /** How long a text takes whoever sits at the console. */
    SpokenTime time(String text);

    /** How long a form of a remark takes whoever says it. */
    default SpokenTime time(Remark remark, boolean shortForm) {
        return time(remark.words(shortForm));
    }

    /** The name of who says a remark, if it is not whoever sits at the console. */
    default Optional<String> other(Remark remark) {
        return Optional.empty();
    }
}
