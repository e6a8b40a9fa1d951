package crowdline.console.practice;

import crowdline.practice.Level;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What practising asks of the rest of the program. On the event thread; every method returns at once. */
public interface PracticeHost {
    /** Nothing can be practised. */
    PracticeHost NONE = new PracticeHost() {};

    /** An act that can be practised. */
    record ActRow(String id, String title, String who) {}

    /** Why nothing may be practised now, and what to do; empty if something may. */
    default Optional<String> refusal() {
        return Optional.of("No show is open.");
    }

    /** The acts of the open show that have a flight. */
    default List<ActRow> acts() {
        return List.of();
    }

    /** How the last flights of a level went for whoever speaks, the newest first, a sentence each. */
    default List<String> past(Level level) {
        return List.of();
    }

    /** A number for the next flight. */
    default long seed() {
        return 1;
    }

    /** Whether the sky has a window of its own. */
    default boolean skyApart() {
        return false;
    }

    /** From now on it has one, or not. */
    default void keepSkyApart(boolean apart) {}

    /** Makes a flight and begins it; the answer comes on the event thread. */
    default void begin(PracticeChoice choice, Begun answer) {}

    /** Makes a flight to be watched, in which one thing is changed; the answer comes on the event thread. */
    default void spot(PracticeChoice choice, Spotting answer) {}

    /** What became of the wish to watch one; one of the two is called. */
    interface Spotting {
        /** It is there. */
        void asks(Spotted asked);

        /**
         * There is no such flight.
         *
         * @param why a sentence, and what to do
         */
        void doesNot(String why);
    }

    /** What became of the wish to practise; one of the two is called. */
    interface Begun {
        /** It has begun. */
        void flies(Practice practice);

        /**
         * There is no such flight.
         *
         * @param why a sentence, and what to do
         */
        void doesNot(String why);
    }

    /** Hears how a practice went. */
    interface Told extends Consumer<PracticeScored> {}
}
