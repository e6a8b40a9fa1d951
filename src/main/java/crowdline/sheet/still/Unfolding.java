package crowdline.sheet.still;

import crowdline.flight.body.Vec;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.util.ArrayList;
import java.util.List;

/**
 * The way of one aircraft with room for what it does on the spot. It is drawn many times as large as it is, so where it turns
 * without going far it would cover itself: a pivot, a spin, a slide. There its way is drawn longer, onwards where it goes on,
 * and aside where it goes back over itself, to the side to which it leaves.
 *
 * @param flown with the longer way
 * @param extraM for each pose how much longer its step was made, metres on the pane
 */
record Unfolding(Flown flown, List<Double> extraM) {
    /** How many drawn spans a way has at least while the aircraft turns by a radian; tuned by looking. */
    private static final double SPANS_FOR_TURN = 0.42;
    /** The same where its way goes back over itself. */
    private static final double SPANS_FOR_TURN_BACK = 0.6;
    /** The same for a roll alone, which shows as a twist as well; tuned by looking. */
    private static final double SPANS_FOR_ROLL = 0.12;
    /** It rolls alone where its nose moves by no more than this share of it; tuned: more than in a flick, less than in a spin. */
    private static final double ROLLS_ALONE = 0.3;
    /** What lacks less than that is left as it is flown, spans; what lacks more gets no more than the second. Tuned. */
    private static final double LEAST_SPANS = 1;

    private static final double MOST_SPANS = 6;
    /** As far as that before and after it says whether a way goes on or back over itself, spans. */
    private static final double AROUND_SPANS = 1.5;
    /** It goes back over itself where it gets less far than this share of its length. */
    private static final double GOES_ON = 0.5;

    Unfolding {
        extraM = List.copyOf(extraM);
    }

    boolean isLonger() {
        return extraM.stream().anyMatch(m -> m > 0);
    }

    static Unfolding of(Flown flown, Eye eye, double spanM) {
        List<Pose> poses = flown.poses();
        List<Eye.Spot> spots = Place.spots(eye, flown);
        if (spots.size() < poses.size()) {
            return new Unfolding(flown, poses.stream().map(p -> 0.0).toList());
        }
        Way way = new Way(spots, spanM);
        List<Way.Step> steps = new ArrayList<>();
        double[] extraM = new double[poses.size()];
        steps.add(new Way.Step(0, 0, true));
        for (int i = 1; i < extraM.length; i++) {
            Way.Step onwards = way.onwards(i);
            steps.add(onwards);
            extraM[i] = lackM(poses.get(i - 1), poses.get(i), way.step(i), onwards, spanM);
        }
        bound(extraM, spanM);
        List<Pose> moved = new ArrayList<>(poses.size());
        double alongM = 0;
        double upM = 0;
        for (int i = 0; i < poses.size(); i++) {
            alongM += steps.get(i).along() * extraM[i];
            upM += steps.get(i).up() * extraM[i];
            double scale = spots.get(i).scale();
            moved.add(poses.get(i).movedBy(alongM / scale, 0, upM / scale));
        }
        double sinksM = lowest(poses) - lowest(moved);
        List<Double> extra = new ArrayList<>();
        for (double m : extraM) {
            extra.add(m);
        }
        return new Unfolding(
                new Flown(
                        moved.stream()
                                .map(p -> sinksM > 0 ? p.movedBy(0, 0, sinksM) : p)
                                .toList(),
                        flown.captions(),
                        flown.company()),
                extra);
    }

    private static double lowest(List<Pose> poses) {
        return poses.stream().mapToDouble(p -> p.place().z()).min().orElse(0);
    }

    /** Leaves out what is too little to be seen, and bounds the rest. */
    private static void bound(double[] extraM, double spanM) {
        int from = 1;
        while (from < extraM.length) {
            double sumM = 0;
            int to = from;
            while (to < extraM.length && extraM[to] > 0) {
                sumM += extraM[to];
                to++;
            }
            double share = sumM < LEAST_SPANS * spanM ? 0 : Math.min(1, MOST_SPANS * spanM / sumM);
            for (int i = from; i < to; i++) {
                extraM[i] *= share;
            }
            from = to + 1;
        }
    }

    /** What a step lacks to show how the aircraft turns in it, and that it slides back. */
    private static double lackM(Pose a, Pose b, Way.Step step, Way.Step onwards, double spanM) {
        double nose = 2 * Math.asin(Math.min(1, Math.sqrt(square(a.nose(), b.nose())) / 2));
        double all = turnedRad(a, b);
        boolean rollsAlone = onwards.goesOn() && nose < ROLLS_ALONE * all;
        double spans = rollsAlone ? SPANS_FOR_ROLL : onwards.goesOn() ? SPANS_FOR_TURN : SPANS_FOR_TURN_BACK;
        double slidesM =
                onwards.goesOn() ? 0 : Math.max(0, -b.place().minus(a.place()).dot(b.nose()));
        return Math.max(
                0,
                spans * all * spanM + slidesM - Math.max(0, step.along() * onwards.along() + step.up() * onwards.up()));
    }

    /** By how much an aircraft has turned, whatever about; from the chords of its three axes, as small angles are exact in them. */
    static double turnedRad(Pose a, Pose b) {
        double squares = square(a.nose(), b.nose()) + square(a.up(), b.up()) + square(a.right(), b.right());
        return 2 * Math.asin(Math.min(1, Math.sqrt(squares / 8)));
    }

    private static double square(Vec a, Vec b) {
        Vec chord = b.minus(a);
        return chord.dot(chord);
    }

    /** What is seen of a way, and how far along it each pose is. */
    private static final class Way {
        private final List<Eye.Spot> spots;
        private final double[] goneM;
        private final double aroundM;

        Way(List<Eye.Spot> spots, double spanM) {
            this.spots = spots;
            goneM = new double[spots.size()];
            for (int i = 1; i < goneM.length; i++) {
                goneM[i] = goneM[i - 1] + Math.hypot(along(i - 1, i), up(i - 1, i));
            }
            aroundM = AROUND_SPANS * spanM;
        }

        private double along(int a, int b) {
            return spots.get(b).alongM() - spots.get(a).alongM();
        }

        private double up(int a, int b) {
            return spots.get(b).upM() - spots.get(a).upM();
        }

        /**
         * A step on the pane.
         *
         * @param goesOn false where the way goes back over itself
         */
        record Step(double along, double up, boolean goesOn) {}

        Step step(int i) {
            return new Step(along(i - 1, i), up(i - 1, i), true);
        }

        /** Where a longer way leads at a pose, of length 1. */
        Step onwards(int i) {
            int before = i;
            while (before > 0 && goneM[i] - goneM[before] < aroundM) {
                before--;
            }
            int after = i;
            while (after < goneM.length - 1 && goneM[after] - goneM[i] < aroundM) {
                after++;
            }
            double farM = Math.hypot(along(before, after), up(before, after));
            if (farM > GOES_ON * (goneM[after] - goneM[before])) {
                return new Step(along(before, after) / farM, up(before, after) / farM, true);
            }
            double cameM = Math.hypot(along(before, i), up(before, i));
            double across = cameM > 0 ? up(before, i) / cameM : 1;
            double down = cameM > 0 ? -along(before, i) / cameM : 0;
            double leaves = along(i, goneM.length - 1) * across + up(i, goneM.length - 1) * down;
            return leaves < 0 ? new Step(-across, -down, false) : new Step(across, down, false);
        }
    }
}
