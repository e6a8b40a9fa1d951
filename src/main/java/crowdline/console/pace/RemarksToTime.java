package crowdline.console.pace;

import crowdline.speech.pace.PaceFit;
import crowdline.speech.say.Spoken;
import crowdline.speech.say.SpokenText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Chooses ten remarks of different lengths to time a speaker with. */
public final class RemarksToTime {
    /** Shorter remarks tell more of the thumb on the key than of the speaker. Tuned. */
    private static final int SHORTEST_LETTERS = 15;
    /** Longer ones are seldom said without a slip. Tuned. */
    private static final int LONGEST_LETTERS = 260;
    /** The longest must be at least this many times the shortest, or the time per letter stays unknown. Tuned. */
    private static final double SPREAD = 2.5;
    /** Every third of ten, so that short and long ones alternate. */
    private static final int STEP = 3;

    /** Our own, of no show, from short to long, with commas and stops in them. */
    private static final List<String> NEUTRAL = List.of(
            "Here he comes, low from the left.",
            "Look up, and a little to the right of the sun.",
            "That is as slow as this wing will go.",
            "Listen to the engine. It tells you when he pulls.",
            "From here to the far end of the runway takes him nine seconds.",
            "He is upside down now, hanging in his straps, and he still has to steer.",
            "Watch the nose. It stays on the horizon, while everything else goes round it.",
            "At the top he weighs almost nothing, and at the bottom, a breath later, four times what he weighs on the"
                    + " ground.",
            "The wind blows towards us today, so he leans a little away from it. If he did not, every figure would"
                    + " end closer to you than it began.",
            "There are no brakes up here and no second try. He has flown this in his head all morning, he has walked"
                    + " it on the grass with his hands out, and now he flies it for you.");

    private RemarksToTime() {}

    /**
     * Ten of a show's remarks, or ten neutral ones if the show has too few of different lengths.
     *
     * @param texts the show's, as written
     * @param spoken how the show says its words
     */
    public static List<SpokenText> of(List<String> texts, Spoken spoken) {
        List<SpokenText> fit = texts.stream()
                .distinct()
                .map(spoken::expand)
                .filter(t -> t.letters() >= SHORTEST_LETTERS && t.letters() <= LONGEST_LETTERS)
                .sorted(Comparator.comparingInt(SpokenText::letters).thenComparing(SpokenText::written))
                .toList();
        boolean varied = fit.size() >= PaceFit.ENOUGH
                && fit.get(fit.size() - 1).letters() >= SPREAD * fit.get(0).letters();
        return mixed(varied ? fit : NEUTRAL.stream().map(spoken::expand).toList());
    }

    /** Ten at even steps from the shortest to the longest, short and long ones in turn. */
    private static List<SpokenText> mixed(List<SpokenText> byLength) {
        List<SpokenText> ten = new ArrayList<>();
        for (int i = 0; i < PaceFit.ENOUGH; i++) {
            int rank = i * STEP % PaceFit.ENOUGH;
            ten.add(byLength.get(rank * (byLength.size() - 1) / (PaceFit.ENOUGH - 1)));
        }
        return ten;
    }
}
