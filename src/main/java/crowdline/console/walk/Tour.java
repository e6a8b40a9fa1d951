package crowdline.console.walk;

import crowdline.console.live.ActSheet;
import crowdline.flight.Flight;
import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.timing.ActTimes;

/**
 * One variant of an act that can be walked through.
 *
 * @param flight its prediction, with samples
 * @param times when each figure is flown by that prediction
 * @param sheet its path
 */
public record Tour(Act act, Variant variant, Flight flight, ActTimes times, ActSheet sheet) {}
