package crowdline.flight.shape;

import crowdline.flight.body.FlightState;
import crowdline.flight.leg.Extremes;
import crowdline.show.figure.Element;
import java.util.List;

/**
 * A figure drawn for one aircraft from one place.
 *
 * @param elements with every number it is flown with; none of them open
 * @param end where it leaves the aircraft
 * @param extremes the least and the greatest of the whole figure
 * @param topShare how wide its loops are at the top as a share of the bottom; 1 is a circle
 * @param shortM how much height was missing on a way down that was to end where the figure began, metres; 0 if it had room
 */
public record Shaped(List<Element> elements, FlightState end, Extremes extremes, double topShare, double shortM) {
    /** Of how high the figure is: by so much it may come out lower than it began and nobody sees it. */
    private static final double UNSEEN = 0.05;

    private static final double UNSEEN_M = 3;

    public Shaped {
        elements = List.copyOf(elements);
    }

    /** How much lower it comes out than nobody sees, metres; 0 or below if it does not. */
    double missingM() {
        return shortM - UNSEEN * (extremes.highestM() - extremes.lowestM()) - UNSEEN_M;
    }

    /** Whether it comes out lower than it began though it was to come out there: it is not high enough for its way down. */
    public boolean isLow() {
        return missingM() > 0;
    }
}
