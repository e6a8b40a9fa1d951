package crowdline.layout;

import crowdline.flight.FigureTrial;
import java.util.List;

/**
 * Lays out an act. First it chooses for each figure which way and where it is flown, by estimates of what the ways
 * between them take; then it flies the best of them from end to end, with the transits that are needed. The same wishes
 * give the same act.
 */
public final class Layout {
    private final Ground ground;

    public Layout(FigureTrial trial, Area area) {
        ground = new Ground(trial, area);
    }

    /** The act of these figures in this order. */
    public LaidOut of(List<Wish> wishes) {
        ground.work.isFor(wishes.size());
        return ground.joining.sinks()
                ? new Releasing(ground, wishes).laid()
                : new Flights(ground, wishes).best(0, Flying.TooLow.GIVEN_UP).laid();
    }
}
