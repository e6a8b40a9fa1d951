package crowdline.console.path;

import crowdline.flight.body.Vec;
import crowdline.show.aircraft.Outline;
import crowdline.sight.PathExtent;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The sky as somebody in the crowd has it before them, who looks where the display is and not after the aircraft: nothing tells
 * what comes.
 *
 * @param sky what flies, at a moment
 * @param looksAt what is seen of the pane, metres
 */
public record CrowdView(SkyView sky, PathExtent looksAt) {
    private static final double GROUND_M = 0;

    /**
     * Of a display, at its first moment.
     *
     * @param fromS when the display begins
     * @param toS when it ends
     */
    public static CrowdView of(Flown flown, double fromS, double toS, Eye eye, Outline outline) {
        List<Eye.Spot> spots = flown.between(fromS, toS).stream()
                .map(Pose::place)
                .map(CrowdView::aboveGround)
                .flatMap(place -> eye.see(place).stream())
                .toList();
        PathExtent all = new PathExtent(0, 0, GROUND_M, GROUND_M);
        for (Eye.Spot spot : spots) {
            all = all.with(spot.alongM(), spot.upM());
        }
        SkyView sky = new SkyView(flown, OptionalDouble.of(flown.fromS()), eye, outline, "");
        return new CrowdView(sky, all);
    }

    private static Vec aboveGround(Vec place) {
        return new Vec(place.x(), place.y(), Math.max(GROUND_M, place.z()));
    }

    /** The same at a moment. */
    public CrowdView at(double tS) {
        return new CrowdView(sky.at(tS), looksAt);
    }
}
