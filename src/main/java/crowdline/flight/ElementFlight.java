package crowdline.flight;

import crowdline.flight.body.Attitude;
import crowdline.measure.Units;
import crowdline.show.figure.Element;

/**
 * When and how one element of a figure is flown.
 *
 * @param index place among the figure's elements, from 0
 * @param element what was flown
 * @param startS seconds since the act began
 * @param lastLegS when its last leg begins, seconds since the act began: for a spin the spin itself, for a pivot the
 *     pivot, for a slide the slide, after the line that leads to it; {@code startS} where it has one leg
 * @param endS seconds since the act began
 * @param start attitude at its start
 * @param end attitude at its end
 */
public record ElementFlight(
        int index, Element element, double startS, double lastLegS, double endS, Attitude start, Attitude end) {

    /** What it is, in words. */
    public String name() {
        return ElementWords.of(element);
    }

    /** What ends it. */
    public Ends ends() {
        return Ends.of(element);
    }

    /** What ends an element. */
    public sealed interface Ends {
        /** Anything but a place or a height, such as an angle turned through, a speed or a time. */
        Ends OTHERWISE = new Otherwise();

        static Ends of(Element element) {
            if (element instanceof Element.Line line && line.until() == Element.Until.FEET) {
                return new AtHeight(Units.mFromFt(line.value()));
            }
            return element instanceof Element.Line line && line.until() == Element.Until.ALONG_M
                    ? new AtPlace(line.value())
                    : OTHERWISE;
        }
    }

    /**
     * A straight line flown to a height.
     *
     * @param heightM above the datum
     */
    public record AtHeight(double heightM) implements Ends {}

    /**
     * A straight line flown to a place on the A-axis; it has no length if that was passed before.
     *
     * @param alongM along the A-axis
     */
    public record AtPlace(double alongM) implements Ends {}

    /** Neither. */
    public record Otherwise() implements Ends {}
}
