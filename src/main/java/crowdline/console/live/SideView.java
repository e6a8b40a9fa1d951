package crowdline.console.live;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The act's path seen from the crowd, one stretch for each figure.
 *
 * @param stretches in the order flown
 * @param current index of the stretch being flown, or −1
 * @param craft where the aircraft is, or null if nobody knows
 */
public record SideView(
        List<Stretch> stretches, int current, @Nullable Craft craft) {

    public static final SideView NONE = new SideView(List.of(), -1, null);

    /**
     * A point of the path.
     *
     * @param alongM metres to the commentator's right of the datum
     * @param heightM metres above the datum
     */
    public record Spot(double alongM, double heightM) {}

    /** One figure's part of the path. */
    public record Stretch(List<Spot> spots) {
        public Stretch {
            spots = List.copyOf(spots);
        }
    }

    /**
     * The aircraft.
     *
     * @param at where it is
     * @param pathRad which way it goes as the crowd sees it: 0 to the right, π/2 straight up
     * @param predicted true if this is where the plan has it, false if a reading has it there
     */
    public record Craft(Spot at, double pathRad, boolean predicted) {}

    public SideView {
        stretches = List.copyOf(stretches);
    }

    public boolean isEmpty() {
        return stretches.stream().allMatch(s -> s.spots().isEmpty());
    }
}
