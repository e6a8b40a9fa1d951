package crowdline.console.walk;

import crowdline.flight.Flight;
import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.sight.ActSheet;
import crowdline.timing.ActTimes;
import java.util.function.Supplier;

/**
 * One variant of an act that can be walked through.
 *
 * @param flown its prediction, with samples; asked for when they are needed, as those of a whole show are many
 * @param times when each figure is flown by that prediction, and by the passes that teach
 * @param drawn its path, likewise
 * @param passes how many passes taught the times anything
 */
public record Tour(
        Act act, Variant variant, Supplier<Flight> flown, ActTimes times, Supplier<ActSheet> drawn, int passes) {
    Flight flight() {
        return flown.get();
    }

    ActSheet sheet() {
        return drawn.get();
    }
}
