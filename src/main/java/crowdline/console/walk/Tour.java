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
 * @param times when each figure is flown by that prediction, and by the passes that teach
 * @param sheet its path
 * @param passes how many passes taught the times anything
 */
public record Tour(Act act, Variant variant, Flight flight, ActTimes times, ActSheet sheet, int passes) {}
