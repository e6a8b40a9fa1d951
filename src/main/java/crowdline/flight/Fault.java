package crowdline.flight;

/** What is wrong with one way of drawing a figure. */
enum Fault {
    /** Too little speed or lift on the way round. */
    ENERGY,
    /** Too little speed or lift where a line up is turned over. */
    OVER,
    /** More load than the airframe is given. */
    LOAD,
    /** Faster than the never-exceed speed. */
    NEVER_EXCEED
}
