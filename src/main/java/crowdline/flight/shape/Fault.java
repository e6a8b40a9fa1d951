package crowdline.flight.shape;

/**
 * What is wrong with one way of drawing a figure.
 *
 * @param kind what would help
 * @param why the rest of a sentence that begins with the name of the figure
 */
record Fault(Kind kind, String why) {
    enum Kind {
        /** Too little speed or lift on the way round. */
        ENERGY,
        /** Too little speed or lift where a line up is turned over. */
        OVER,
        /** More load than the airframe is given. */
        LOAD,
        /** Faster than the never-exceed speed. */
        NEVER_EXCEED,
        /** Too fast for too long: it does not slow down to the speed at which the figure goes on. */
        NEVER_SLOWS,
        /** Not a thing such an aircraft does, at any speed. */
        NEVER
    }
}
