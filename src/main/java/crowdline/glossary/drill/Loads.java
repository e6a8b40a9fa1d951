package crowdline.glossary.drill;

import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

/**
 * Three loads of one flight that differ enough to be told apart, in times the weight.
 *
 * @param bottom the strongest in the lowest quarter of its height
 * @param up halfway up, where it first comes by there
 * @param top at its highest place
 */
record Loads(double bottom, double up, double top) {
    /** Lower than this there is no top and no bottom, metres; a design choice. */
    private static final double LEAST_HEIGHT_M = 60;
    /** Loads nearer to each other than this cannot be told apart by thinking; a design choice. */
    private static final double APART = 0.7;

    static Optional<Loads> of(Flown flown) {
        if (flown.isEmpty()) {
            return Optional.empty();
        }
        double low = flown.reach().least().z();
        double height = flown.reach().size().z();
        Comparator<Pose> strength = Comparator.comparingDouble(pose -> Math.abs(pose.g()));
        Loads loads = new Loads(
                flown.poses().stream()
                        .filter(p -> p.place().z() <= low + height / 4)
                        .max(strength)
                        .orElseThrow()
                        .g(),
                flown.poses().stream()
                        .filter(p -> p.place().z() >= low + height / 2)
                        .findFirst()
                        .orElseThrow()
                        .g(),
                flown.poses().stream()
                        .max(Comparator.comparingDouble(p -> p.place().z()))
                        .orElseThrow()
                        .g());
        return height >= LEAST_HEIGHT_M
                        && Math.abs(loads.bottom - loads.up) >= APART
                        && Math.abs(loads.bottom - loads.top) >= APART
                        && Math.abs(loads.up - loads.top) >= APART
                ? Optional.of(loads)
                : Optional.empty();
    }

    /** Which of the three is felt at the bottom, or at the top. */
    Question ask(String figure, Flown flown, Random random) {
        boolean atTop = random.nextBoolean();
        List<String> said = new ArrayList<>(List.of(said(bottom), said(up), said(top)));
        Collections.shuffle(said, random);
        return new Question(
                Question.Kind.LOADS,
                figure,
                "What does the pilot feel " + (atTop ? "at the very top" : "at the bottom, where it is strongest")
                        + ": " + figure,
                flown,
                said,
                said.indexOf(said(atTop ? top : bottom)),
                "At the bottom " + said(bottom) + ", halfway up " + said(up) + ", at the very top " + said(top) + ".");
    }

    private static String said(double load) {
        String number = String.format(Locale.ROOT, "%.1f", Math.abs(load));
        return load < 0 && !number.equals("0.0")
                ? number + " times the weight, up into the straps"
                : number + " times the weight, into the seat";
    }
}
