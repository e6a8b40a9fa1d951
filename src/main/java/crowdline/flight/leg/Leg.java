package crowdline.flight.leg;

import crowdline.flight.body.FlightState;

/**
 * One way of moving, as a small set of differential equations with coordinates of its own. The first three are always
 * the place x, y, z in metres; {@code t} is seconds since the leg began.
 */
public interface Leg {
    /** The coordinates at the start; the caller may change the array. */
    double[] start();

    /** Writes the rates of change of the coordinates. */
    void rates(double t, double[] y, double[] dy);

    /** Ends the leg when it rises through zero; already zero or more at the start means there is nothing to fly. */
    double end(double t, double[] y);

    /** Writes what is seen and felt at this instant. */
    void look(double t, double[] y, Look look);

    /** What the next leg starts from. */
    FlightState after(double tS, double t, double[] y);

    /** When it ends, seconds since it began, where that is known beforehand; a step is then aimed at it. */
    default double dueS() {
        return Double.POSITIVE_INFINITY;
    }

    /** How often between two samples it is worth looking, for the least and greatest of what is felt. */
    default int looksPerSample() {
        return 1;
    }

    /** Longest the leg may last, seconds; beyond that it counts as not flyable. */
    default double longestS() {
        return 60;
    }

    /** True when the aircraft has run out of speed in a way that ends the figure. */
    default boolean outOfSpeed(double t, double[] y) {
        return false;
    }
}
