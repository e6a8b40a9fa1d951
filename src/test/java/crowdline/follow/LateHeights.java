package crowdline.follow;

import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * What a receiver does that sends pressure heights, to the next step of some, and sends everything late.
 *
 * @param lateS how late a reading comes, all flight long
 * @param laterS how much later yet its height is
 * @param stepM heights are told in steps of so much, metres
 * @param offM how far off they are
 */
record LateHeights(double lateS, double laterS, double stepM, double offM) {
    private static final double STEP_M = 25 * 0.3048;

    static LateHeights drawn(SplittableRandom random) {
        return new LateHeights(
                0.2 + 0.8 * random.nextDouble(), 0.7 * random.nextDouble(), STEP_M, 15 * random.nextGaussian());
    }

    List<Reading> receive(List<Reading> log) {
        List<Reading> late = new ArrayList<>();
        int from = 0;
        for (Reading r : log) {
            double then = r.tS() - laterS;
            while (from + 1 < log.size() && log.get(from + 1).tS() <= then) {
                from++;
            }
            Reading a = log.get(from);
            Reading b = log.get(Math.min(from + 1, log.size() - 1));
            double span = b.tS() - a.tS();
            double share = span <= 0 ? 0 : Math.max(0, Math.min(1, (then - a.tS()) / span));
            double height = a.heightM() + share * (b.heightM() - a.heightM()) + offM;
            late.add(new Reading(
                    r.tS() + lateS,
                    r.alongM(),
                    r.awayM(),
                    Math.rint(height / stepM) * stepM,
                    r.alongMps(),
                    r.awayMps()));
        }
        return late;
    }
}
