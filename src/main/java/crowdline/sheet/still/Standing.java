package crowdline.sheet.still;

import crowdline.flight.body.Vec;
import crowdline.sight.picture.Eye;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * Where aircraft stand in a still.
 *
 * @param spanM how large they are drawn, metres
 * @param extraM for each pose how much longer its step was made than it was flown; none where nothing was
 */
record Standing(Subject subject, double spanM, List<Double> extraM) {
    /** One stands each time it has gone so many of its spans, at most this often. */
    private static final double APART_SPANS = 2.1;

    private static final int MOST_AIRCRAFT = 16;
    /** The same where its way is drawn longer. */
    private static final double UNFOLDED_APART_SPANS = 0.65;

    /** Nearer to one that stands there already none is drawn. */
    private static final double CLEAR_SPANS = 0.8;
    /** The same of several that fly together. */
    private static final double TOGETHER_CLEAR_SPANS = 1;
    /** The same where its way is drawn longer. */
    private static final double UNFOLDED_CLEAR_SPANS = 0.5;
    /** Several are seen at most so often. */
    private static final int MOST_GROUPS = 4;
    /** What goes less far than this, in spans, stands on the spot. */
    private static final double ON_THE_SPOT_SPANS = 1;
    /** It turns if its nose moves further than this: cosine of 15 degrees. */
    private static final double TURNS = 0.966;

    Standing {
        extraM = List.copyOf(extraM);
    }

    private double extraM(int i) {
        return extraM.isEmpty() ? 0 : extraM.get(i);
    }

    /** At even steps along what is seen of its way, shorter ones where that is drawn longer, but none over another. */
    List<Pose> along() {
        List<Pose> poses = subject.flown().poses();
        List<Eye.Spot> spots = Place.spots(subject.eye(), subject.flown());
        if (spots.size() < poses.size()) {
            return poses.subList(0, 1);
        }
        double[] steps = new double[spots.size()];
        for (int i = 1; i < steps.length; i++) {
            double goneM = apartM(spots.get(i - 1), spots.get(i));
            double extra = Math.min(extraM(i), goneM);
            steps[i] = steps[i - 1] + (goneM - extra) / (APART_SPANS * spanM) + extra / (UNFOLDED_APART_SPANS * spanM);
        }
        double scale = Math.min(1, (MOST_AIRCRAFT - 1) / steps[steps.length - 1]);
        NavigableSet<Integer> standing = new TreeSet<>();
        List<Integer> marks = marks(steps.length);
        marks.forEach(at -> stand(at, spots, standing));
        List<Integer> inOrder = marks.stream().sorted().toList();
        for (int m = 1; m < inOrder.size(); m++) {
            double from = steps[inOrder.get(m - 1)];
            double far = steps[inOrder.get(m)] - from;
            long count = Math.round(far * scale);
            for (int k = 1; k < count; k++) {
                stand(reached(steps, from + far * k / count), spots, standing);
            }
        }
        return standing.stream().map(poses::get).toList();
    }

    /** Where one stands before any other does: where it begins and ends, and where a longer way does. */
    private List<Integer> marks(int poses) {
        List<Integer> marks = new ArrayList<>(List.of(0, poses - 1));
        for (int i = 1; i < poses - 1; i++) {
            if (extraM(i) > 0 != extraM(i + 1) > 0) {
                marks.add(i);
            }
        }
        return marks;
    }

    private void stand(int at, List<Eye.Spot> spots, NavigableSet<Integer> standing) {
        boolean longer = extraM(at) > 0 || (at + 1 < spots.size() && extraM(at + 1) > 0);
        double clearM = (longer ? UNFOLDED_CLEAR_SPANS : CLEAR_SPANS) * spanM;
        if (standing.stream().allMatch(other -> apartM(spots.get(other), spots.get(at)) > clearM)) {
            standing.add(at);
        }
    }

    private static int reached(double[] steps, double step) {
        int at = 0;
        while (at < steps.length - 1 && steps[at] < step - 1e-6) {
            at++;
        }
        return at;
    }

    private static double apartM(Eye.Spot a, Eye.Spot b) {
        return Math.hypot(b.alongM() - a.alongM(), b.upM() - a.upM());
    }

    /** When all of them are shown: first where they end, then where they begin, then between; none over another. */
    List<Double> groups() {
        List<Double> standing = new ArrayList<>();
        List<Eye.Spot> taken = new ArrayList<>();
        List<Subject.Seen> all = subject.all(spanM);
        double fromS = subject.flown().fromS();
        double forS = subject.flown().toS() - fromS;
        for (int k : new int[] {MOST_GROUPS - 1, 0, 2, 1}) {
            double atS = fromS + forS * k / (MOST_GROUPS - 1);
            List<Eye.Spot> spots = all.stream()
                    .flatMap(one -> subject.eye().see(one.flown().at(atS).place()).stream())
                    .toList();
            if (spots.stream()
                    .allMatch(s -> taken.stream().allMatch(t -> apartM(t, s) > TOGETHER_CLEAR_SPANS * spanM))) {
                taken.addAll(spots);
                standing.add(atS);
            }
        }
        return standing;
    }

    /** Whether it does nothing else. */
    boolean turnsOnTheSpot() {
        Flown flown = subject.flown();
        Vec nose = flown.poses().get(0).nose();
        return flown.company().sketched()
                && flown.reach().size().length() < ON_THE_SPOT_SPANS * spanM
                && flown.poses().stream().anyMatch(p -> p.nose().dot(nose) < TURNS);
    }
}
