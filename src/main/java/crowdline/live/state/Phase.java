package crowdline.live.state;

import crowdline.measure.Must;

/** Where the act is. Times are seconds on the session's scale; an index counts the variant's figures from 0. */
public sealed interface Phase {

    /** No act is in the air: none has been chosen yet, or the chosen one has not started. */
    record Waiting() implements Phase {}

    /**
     * A figure is being flown.
     *
     * @param index which figure
     * @param startedAtS when it began
     * @param heldS seconds of it during which its clock was held
     * @param confirmedAtS when the hand, or the aircraft before it was lost, last said that this is the figure; a clock
     *     that would have left it before then was wrong and waits for the hand
     */
    record Flying(int index, double startedAtS, double heldS, double confirmedAtS) implements Phase {
        public Flying {
            Must.beIndex("flying index", index);
            Must.beTime("flying startedAtS", startedAtS);
            Must.beTime("flying heldS", heldS);
            Must.beTime("flying confirmedAtS", confirmedAtS);
        }
    }

    /** The figure's clock stands still until it is released; {@code heldS} counts earlier holds of the same figure. */
    record Held(int index, double startedAtS, double heldS, double heldSinceS) implements Phase {
        public Held {
            Must.beIndex("held index", index);
            Must.beTime("held startedAtS", startedAtS);
            Must.beTime("held heldS", heldS);
            Must.beTime("held heldSinceS", heldSinceS);
        }
    }

    /**
     * The aircraft does something that is not in the plan.
     *
     * @param lastIndex the figure of the plan that was flown last, −1 if none of this variant was
     * @param sinceS since when
     */
    record OffPlan(int lastIndex, double sinceS) implements Phase {
        public OffPlan {
            if (lastIndex < -1) {
                throw new IllegalArgumentException("lastIndex is " + lastIndex + "; it must be -1 or more");
            }
            Must.beTime("off plan sinceS", sinceS);
        }
    }

    /** The act is over and the next one has not been chosen. */
    record ActDone(double endedAtS) implements Phase {
        public ActDone {
            Must.beTime("act endedAtS", endedAtS);
        }
    }

    /** The show is over. */
    record ShowDone(double endedAtS) implements Phase {
        public ShowDone {
            Must.beTime("show endedAtS", endedAtS);
        }
    }
}
