package crowdline.flight.moment;

import crowdline.show.figure.MomentName;

/**
 * Something to see within a figure, and when.
 *
 * @param afterS seconds since the figure began, 0 or more
 * @param worthWatching true if the crowd should be left to see it: nothing but what explains it is said meanwhile
 */
public record Moment(MomentName name, double afterS, boolean worthWatching) {
    /** This moment in a figure that lasts so many times as long. */
    Moment scaled(double times) {
        return at(afterS * times);
    }

    Moment at(double otherS) {
        return new Moment(name, otherS, worthWatching);
    }
}
