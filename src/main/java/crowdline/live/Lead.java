package crowdline.live;

/**
 * Who moves the position.
 *
 * @param source what was chosen to
 * @param clockStandsIn true while the clock does in the aircraft's stead
 */
record Lead(Source source, boolean clockStandsIn) {
    static final Lead HAND = new Lead(Source.HAND, false);

    /** What moves the position at this moment. */
    Source now() {
        return clockStandsIn ? Source.CLOCK : source;
    }
}
