package crowdline.console.live;

import crowdline.sheet.PathExtent;
import crowdline.sheet.PathView;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The act's path, one stretch for each figure, to be seen from the crowd or from above.
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
     * @param awayM metres away from the crowd, from the display line
     * @param heightM metres above the datum
     */
    public record Spot(double alongM, double awayM, double heightM) {
        /** Over the display line. */
        public Spot(double alongM, double heightM) {
            this(alongM, 0, heightM);
        }

        double upM(PathView view) {
            return view == PathView.SIDE ? heightM : awayM;
        }
    }

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

    /** True if the path leaves the display line anywhere, so that it is worth a look from above. */
    public boolean hasDepth() {
        return stretches.stream().flatMap(s -> s.spots().stream()).anyMatch(s -> Math.abs(s.awayM()) > 1);
    }

    PathExtent extent(PathView view) {
        PathExtent all = view == PathView.SIDE ? new PathExtent(-50, 50, 0, 50) : new PathExtent(-50, 50, -20, 50);
        for (Stretch stretch : stretches) {
            for (Spot spot : stretch.spots()) {
                double upM = view == PathView.SIDE ? Math.max(0, spot.heightM()) : spot.awayM();
                all = all.with(spot.alongM(), upM);
            }
        }
        return all;
    }

    public boolean isEmpty() {
        return stretches.stream().allMatch(s -> s.spots().isEmpty());
    }
}
