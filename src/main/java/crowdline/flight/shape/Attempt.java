package crowdline.flight.shape;

/**
 * The numbers left free when a figure is drawn.
 *
 * @param pullG load at the bottom of a pull, g
 * @param pushG the same of a push, below 0; NaN where it is never pushed
 * @param topShare how wide a loop is at its top as a share of how wide at its bottom, above 0 to 1
 * @param inTheAir true if it is so wide to the pilot, whatever the wind makes of it over the ground; false where it is to
 *     close over the ground
 * @param overStalls speed at which a line up is turned over, in stalling speeds
 * @param throttle how much of the power is used
 */
record Attempt(double pullG, double pushG, double topShare, boolean inTheAir, double overStalls, Throttle throttle) {
    /**
     * Shares of the power that the figure asks for, 0 to 1.
     *
     * @param up everywhere but down
     * @param down where the path goes steeply down
     */
    record Throttle(double up, double down) {}

    Attempt withOver(double stalls) {
        return new Attempt(pullG, pushG, topShare, inTheAir, stalls, throttle);
    }

    Attempt with(Throttle other) {
        return new Attempt(pullG, pushG, topShare, inTheAir, overStalls, other);
    }
}
