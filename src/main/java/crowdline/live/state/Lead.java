package crowdline.live.state;

import crowdline.live.event.Source;

/**
 * Who moves the position.
 *
 * @param source what was chosen to
 * @param clockStandsIn true while the clock stands in for the aircraft
 * @param handBegins true if a start of this act was taken back: only the hand begins it then, until a source is chosen again
 */
record Lead(Source source, boolean clockStandsIn, boolean handBegins) {
    static final Lead HAND = of(Source.HAND);

    /** What was chosen does, and nothing was taken back. */
    static Lead of(Source source) {
        return new Lead(source, false, false);
    }

    Lead standingIn(boolean clock) {
        return new Lead(source, clock, handBegins);
    }

    /** The clock is in nobody's stead before an act. */
    Lead startTakenBack() {
        return new Lead(source, false, true);
    }

    /** What moves the position at this moment. */
    Source now() {
        return clockStandsIn ? Source.CLOCK : source;
    }
}
