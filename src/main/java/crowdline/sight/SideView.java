package crowdline.sight;

import crowdline.flight.body.Vec;
import crowdline.show.aircraft.Outline;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * The act's path, one stretch for each figure, to be seen from the crowd or from above.
 *
 * @param stretches in the order flown
 * @param current index of the stretch being flown, or −1
 * @param next index of the stretch that comes next, or −1
 * @param craft where the aircraft is, or null if nobody knows
 * @param crowdM from the crowd line to the display line, metres, or null if nobody knows
 */
public record SideView(
        List<Stretch> stretches,
        int current,
        int next,
        @Nullable Craft craft,
        @Nullable Double crowdM) {

    public static final SideView NONE = new SideView(List.of(), -1, null);

    /** So far beyond the picture the arrow still seems to be in its place, metres. Tuned by eye. */
    private static final double BEYOND_M = 60;

    /** So far off nothing is seen from beneath, metres. */
    private static final double FAR_OFF_M = 5000;

    /** What is shown where only an aircraft is known and no path: judgement, an ordinary display area. */
    private static final PathExtent ANYWHERE_SIDE = new PathExtent(-900, 900, 0, 450);

    private static final PathExtent ANYWHERE_PLAN = new PathExtent(-900, 900, -20, 500);

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

        public double upM(PathView view) {
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
     * @param headingRad which way it goes seen from above: 0 to the right, π/2 away from the crowd
     * @param predicted true if this is where the plan has it, false if a reading has it there
     * @param trail where it was read to be in the last seconds, the oldest first; empty where it is predicted
     * @param word where the place comes from, and how old it is if that matters
     * @param lies how it lies in the air, or null if nobody knows
     */
    public record Craft(
            Spot at,
            double pathRad,
            double headingRad,
            boolean predicted,
            List<Spot> trail,
            String word,
            @Nullable Lies lies) {
        /** Younger readings are as good as now, seconds: a slow receiver gives one each second. */
        private static final double FRESH_S = 1.5;

        public Craft {
            trail = List.copyOf(trail);
        }

        /** Where the plan has it. */
        public static Craft predicted(Spot at, double pathRad, double headingRad) {
            return predicted(at, pathRad, headingRad, null);
        }

        /** Where the plan has it, and how it lies in the air there. */
        static Craft predicted(Spot at, double pathRad, double headingRad, @Nullable Lies lies) {
            return new Craft(at, pathRad, headingRad, true, List.of(), "predicted", lies);
        }

        /**
         * Where a reading has it.
         *
         * @param ageS of the reading, seconds
         */
        public static Craft read(Spot at, double pathRad, double headingRad, List<Spot> trail, double ageS) {
            String word = ageS < FRESH_S ? "read" : "read " + Math.round(ageS) + " s ago";
            return new Craft(at, pathRad, headingRad, false, trail, word, null);
        }

        public double turnedRad(PathView view) {
            return view == PathView.SIDE ? pathRad : headingRad;
        }
    }

    /** How an aircraft of some shape lies in the air. */
    public record Lies(Pose pose, Outline outline) {}

    /** Nothing is known of the crowd line. */
    public SideView(List<Stretch> stretches, int current, @Nullable Craft craft) {
        this(stretches, current, craft, null);
    }

    /** In the order of the plan. */
    public SideView(List<Stretch> stretches, int current, @Nullable Craft craft, @Nullable Double crowdM) {
        this(stretches, current, current + 1 < stretches.size() ? current + 1 : -1, craft, crowdM);
    }

    /**
     * One figure alone, the aircraft where it is at a moment.
     *
     * @param atS seconds since the act began; at its beginning if it is empty
     */
    public static SideView of(Flown flown, OptionalDouble atS) {
        if (flown.isEmpty()) {
            return NONE;
        }
        Pose now = flown.at(atS.orElse(flown.fromS()));
        return new SideView(
                List.of(new Stretch(
                        flown.poses().stream().map(p -> spot(p.place())).toList())),
                0,
                new Craft(
                        spot(now.place()),
                        Math.atan2(now.nose().z(), now.nose().x()),
                        Math.atan2(now.nose().y(), now.nose().x()),
                        true,
                        List.of(),
                        "",
                        null));
    }

    private static Spot spot(Vec place) {
        return new Spot(place.x(), place.y(), place.z());
    }

    /** With another stretch coming next, or −1 for none. */
    public SideView withNext(int index) {
        return new SideView(stretches, current, index, craft, crowdM);
    }

    public SideView {
        stretches = List.copyOf(stretches);
    }

    /** True if there is something to see from above: a crowd line, or a path that leaves the display line. */
    public boolean hasDepth() {
        return crowdM != null
                || stretches.stream().flatMap(s -> s.spots().stream()).anyMatch(s -> Math.abs(s.awayM()) > 1);
    }

    /** Where it is seen from: the crowd line, or far off if nobody knows where that is. */
    public Eye eye() {
        return Eye.standing(crowdM == null || !(crowdM > 0) ? FAR_OFF_M : crowdM);
    }

    public PathExtent extent(PathView view) {
        if (isEmpty()) {
            return crowd(view, view == PathView.SIDE ? ANYWHERE_SIDE : ANYWHERE_PLAN);
        }
        PathExtent all =
                crowd(view, view == PathView.SIDE ? new PathExtent(-50, 50, 0, 50) : new PathExtent(-50, 50, -20, 50));
        for (Stretch stretch : stretches) {
            for (Spot spot : stretch.spots()) {
                double upM = view == PathView.SIDE ? Math.max(0, spot.heightM()) : spot.awayM();
                all = all.with(spot.alongM(), upM);
            }
        }
        return all;
    }

    private PathExtent crowd(PathView view, PathExtent extent) {
        return crowdM == null || view == PathView.SIDE ? extent : extent.with(0, -crowdM);
    }

    /** The places of a stretch; none for one that is only timed, or for −1. */
    public List<Spot> spots(int index) {
        return index < 0 || index >= stretches.size()
                ? List.of()
                : stretches.get(index).spots();
    }

    /** Where the aircraft's place comes from, and how far off it is if that is beyond the picture, where it stays at the edge. */
    public String craftWord() {
        if (craft == null) {
            return "";
        }
        Spot at = craft.at();
        boolean shown = extent(PathView.SIDE).holds(at.alongM(), at.heightM(), BEYOND_M)
                && (!hasDepth() || extent(PathView.PLAN).holds(at.alongM(), at.awayM(), BEYOND_M));
        return craftWord(shown);
    }

    /** The same, for a picture of the caller's. */
    public String craftWord(boolean shown) {
        if (craft == null) {
            return "";
        }
        Spot at = craft.at();
        double awayM = Math.hypot(at.alongM(), at.awayM() + (crowdM == null ? 0 : crowdM));
        return shown
                ? craft.word()
                : craft.word()
                        + String.format(Locale.ROOT, awayM < 9_950 ? ", %.1f km away" : ", %.0f km away", awayM / 1000);
    }

    public boolean isEmpty() {
        return stretches.stream().allMatch(s -> s.spots().isEmpty());
    }
}
