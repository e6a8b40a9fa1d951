package crowdline.speech.pace;

import crowdline.show.Interpreting;
import crowdline.show.Speaker;
import crowdline.show.figure.Remark;
import java.util.Optional;

/** Who says the remarks of a show, and how long they take. */
@FunctionalInterface
public interface Voices {
    /** Before the other language begins the first one ends, and somebody breathes in, seconds. Tuned. */
    double BREATH_S = 0.5;

    /** How long a text takes whoever is at the console. */
    SpokenTime time(String text);

    /** How long the first language of a remark takes whoever says it. */
    default SpokenTime first(Remark remark, boolean shortForm) {
        return time(remark.words(shortForm));
    }

    /** How long a form of a remark takes, with its other language. */
    default SpokenTime time(Remark remark, boolean shortForm) {
        SpokenTime first = first(remark, shortForm);
        return interpreted(remark, shortForm)
                .map(other -> interpreting() == Interpreting.AFTER
                        ? first.plus(new SpokenTime(BREATH_S, BREATH_S, BREATH_S))
                                .plus(other.time())
                        : first.longer(other.time()))
                .orElse(first);
    }

    /** The name of who says a remark, if it is not whoever is at the console. */
    default Optional<String> other(Remark remark) {
        return Optional.empty();
    }

    /** What is said in the other language where a remark is said in a form, if anybody is there to say it today. */
    default Optional<Interpreted> interpreted(Remark remark, boolean shortForm) {
        return Optional.empty();
    }

    /** True if a speaker goes by a pace that was timed, and not by the usual one. */
    default boolean isTimed(Speaker speaker) {
        return true;
    }

    /** When that is said. */
    default Interpreting interpreting() {
        return Interpreting.AFTER;
    }
}
