package crowdline.console.paint;

import crowdline.console.theme.Tone;
import crowdline.patter.Fit;

/** How a {@link Fit} looks in every place. */
public final class FitMark {
    private FitMark() {}

    /** Its shape and tone, and its word with {@code more} behind it, such as ": 4 s of 10 s". */
    public static Mark of(Fit fit, String more) {
        String word = fit.word() + more;
        return switch (fit) {
            case FITS -> new Mark(Form.DISC, Tone.GOOD, word);
            case JUST_FITS, RUNS_OVER, ON_A_GOOD_DAY -> new Mark(Form.DIAMOND, Tone.CAUTION, word);
            case TOO_LONG -> new Mark(Form.STOP, Tone.ALARM, word);
        };
    }
}
