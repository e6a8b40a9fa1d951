package crowdline.draft;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.Set;

/** What is known of those who fly, as remarks that belong to no figure. */
public final class FactWords {
    /** Wanted less than what tells of a figure: it can be said at any time. A choice without a source. */
    private static final double WEIGHT = 0.6;

    private FactWords() {}

    /** A fact about the performer of an act as it is said there. */
    public static String said(Show show, Act act, String fact) {
        return Names.of(show, act).said(fact);
    }

    /** Whether a remark of the show has the words of a text. */
    public static boolean isSaid(Show show, String text) {
        return !new SaidBefore(show).isNew(text);
    }

    /**
     * A draft that floats in an act.
     *
     * @param said as it is said
     * @param taken ids of remarks, which its own joins
     */
    public static Remark floating(String said, Act act, Set<String> taken) {
        String base = act.id() + "-fact";
        String id = base;
        for (int i = 2; !taken.add(id); i++) {
            id = base + "-" + i;
        }
        return new Remark(id, RemarkKind.FACT, said, null, null, null, null, null, WEIGHT, false, true);
    }
}
