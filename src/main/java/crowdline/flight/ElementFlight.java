package crowdline.flight;

import crowdline.show.Element;

/**
 * When one element of a figure is flown.
 *
 * @param index place among the figure's elements, from 0
 * @param name what it is, in words
 * @param startS seconds since the act began
 * @param endS seconds since the act began
 * @param ends what ends it
 */
public record ElementFlight(int index, String name, double startS, double endS, Ends ends) {
    /** What ends an element. */
    public enum Ends {
        /** A straight line flown to a height. */
        AT_HEIGHT,
        /** A straight line flown to a place on the A-axis. */
        AT_PLACE,
        /** Anything else, such as an angle turned through, a speed or a time. */
        OTHERWISE;

        static Ends of(Element element) {
            if (element instanceof Element.Line line && line.until() == Element.Until.FEET) {
                return AT_HEIGHT;
            }
            return element instanceof Element.Line line && line.until() == Element.Until.ALONG_M ? AT_PLACE : OTHERWISE;
        }
    }
}
