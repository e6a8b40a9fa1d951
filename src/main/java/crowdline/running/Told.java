package crowdline.running;

import crowdline.live.event.LiveEvent;
import crowdline.live.state.LiveState;

/** What a key of the running show did, to be told for some seconds. */
public sealed interface Told {
    /** How long it is told, seconds. Tuned: what a key did is read once with the eyes back from the sky. */
    default double seconds() {
        return 5;
    }

    /** It did this. */
    record Did(LiveEvent event, LiveState before, LiveState after) implements Told {}

    /** It did nothing, and why. That is longer to read and comes unexpected. */
    record Refused(String why) implements Told {
        @Override
        public double seconds() {
            return 8;
        }
    }

    /** Nothing was taken back, for the key before had done nothing. */
    record NothingToTakeBack(String key) implements Told {
        @Override
        public double seconds() {
            return 8;
        }
    }
}
