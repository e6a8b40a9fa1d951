package crowdline.flight;

/**
 * When one element of a figure is flown.
 *
 * @param index place among the figure's elements, from 0
 * @param name what it is, in words
 * @param startS seconds since the act began
 * @param endS seconds since the act began
 */
public record ElementFlight(int index, String name, double startS, double endS) {}
