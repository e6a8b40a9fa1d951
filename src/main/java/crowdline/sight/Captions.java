package crowdline.sight;

import crowdline.flight.FigureFlight;
import crowdline.flight.leg.Sample;
import crowdline.flight.moment.FigureMoments;
import crowdline.flight.moment.Moment;
import crowdline.show.figure.MomentKind;
import crowdline.sight.picture.Caption;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.util.ArrayList;
import java.util.List;

/** What there is to see in a figure, moment by moment, with what the pilot feels there. */
final class Captions {
    /** A pull is felt fully within this time after it begins, seconds; tuned by looking. */
    private static final double BUILDS_UP_S = 1.5;
    /** Between these load factors nothing is said of it; judgement, no source: nobody on the ground could picture it. */
    private static final double LIGHT_G = 0.35;

    private static final double HEAVY_G = 1.75;
    private static final double LIFTED_G = -0.35;

    private Captions() {}

    /**
     * A figure to be watched; nothing for one that is only timed.
     *
     * @param samples of its flight, in order
     */
    static Flown flown(FigureFlight one, List<Sample> samples) {
        List<Sample> own = samples.stream()
                .filter(s -> s.tS() >= one.startS() - 1e-9 && s.tS() <= one.endS() + 1e-9)
                .toList();
        if (!one.simulated() || own.size() < 2) {
            return Flown.NONE;
        }
        List<Pose> poses = new ArrayList<>();
        for (Sample sample : own) {
            if (poses.isEmpty() || sample.tS() > poses.get(poses.size() - 1).tS()) {
                poses.add(Pose.of(sample));
            }
        }
        Flown flown = new Flown(poses, List.of());
        List<Moment> moments = FigureMoments.of(one, own).moments();
        List<Caption> captions = new ArrayList<>();
        for (int i = 0; i < moments.size(); i++) {
            double atS = one.startS() + moments.get(i).afterS();
            double nextS =
                    i + 1 < moments.size() ? one.startS() + moments.get(i + 1).afterS() : atS;
            String felt = felt(flown, moments.get(i), atS, nextS);
            MomentKind kind = moments.get(i).name().kind();
            String words = kind.words();
            captions.add(new Caption(atS, kind, felt.isEmpty() ? words : words + ": " + felt));
        }
        return new Flown(poses, captions);
    }

    private static String felt(Flown flown, Moment moment, double atS, double nextS) {
        double g = flown.at(atS).g();
        switch (moment.name().kind()) {
            case BEGINS, FLIES_OUT, TURN_ENDS -> {
                return "";
            }
            case PULLS_UP, PULLS_OUT, PUSHES_UP, PUSHES_OUT, PUSHES_OVER, TURN_BEGINS -> {
                for (Pose pose : flown.between(atS, Math.min(atS + BUILDS_UP_S, Math.max(nextS, atS)))) {
                    g = Math.abs(pose.g() - 1) > Math.abs(g - 1) ? pose.g() : g;
                }
            }
            default -> {}
        }
        return felt(g);
    }

    private static String felt(double g) {
        if (g >= HEAVY_G) {
            return Said.times(g, "g").words() + " as heavy";
        }
        if (g <= -HEAVY_G) {
            return "hanging in the straps, " + Said.times(-g, "g").words() + " as heavy";
        }
        if (g <= LIFTED_G) {
            return "lifted into the straps";
        }
        return g < LIGHT_G ? "nearly floating" : "";
    }
}
