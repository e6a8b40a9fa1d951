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
 */
public record Shaped(List<Element> elements, FlightState end, Extremes extremes, double topShare) {
    public Shaped {
        elements = List.copyOf(elements);
    }
}
