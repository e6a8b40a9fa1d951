package crowdline.patter;

import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;

/**
 * What a remark is worth to a plan, in whole numbers so that sums are exact.
 *
 * <p>Each kind is worth a hundred of the next one down, times the remark's own weight; so what fits into the time of a
 * duty never outweighs it as long as weights stay within tens of each other. The full form is worth {@value #FULL_PERCENT}
 * hundredths of a remark of the next kind down more than the short one (of itself, for a fact): a remark is shortened if
 * that makes room for another that counts as much. A form that was in the plan before is worth {@value #KEPT_PERCENT}
 * hundredths of the same more: near ties do not reshuffle the plan. The numbers are design choices. Fillers are worth
 * nothing here; they take what is left over.
 */
final class Worth {
    static final int FULL_PERCENT = 30;
    static final int KEPT_PERCENT = 5;

    private static final long FACT = 10_000;
    private static final long STEP = 100;
    private static final double GREATEST_WEIGHT = 1000;

    private Worth() {}

    static long of(RemarkKind kind, double weight, RemarkForm form, boolean kept) {
        long value = scaled(kindWorth(kind), weight);
        long nextDown = scaled(kind == RemarkKind.FACT ? FACT : kindWorth(kind) / STEP, weight);
        if (form == RemarkForm.SHORT) {
            value -= nextDown * FULL_PERCENT / 100;
        }
        return kept ? value + nextDown * KEPT_PERCENT / 100 : value;
    }

    private static long kindWorth(RemarkKind kind) {
        return switch (kind) {
            case DUTY -> FACT * STEP * STEP * STEP;
            case CALL -> FACT * STEP * STEP;
            case EXPLANATION -> FACT * STEP;
            case FACT -> FACT;
            case FILLER -> 0;
        };
    }

    private static long scaled(long worth, double weight) {
        return Math.max(1, Math.round(worth * Math.min(weight, GREATEST_WEIGHT)));
    }
}
