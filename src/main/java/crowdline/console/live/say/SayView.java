package crowdline.console.live.say;

import crowdline.console.paint.Mark;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What to say now, or that nothing is to be said.
 *
 * @param what whether there are words and their time has come, a quiet, or neither
 * @param caption such as "Say now"
 * @param kind the remark's kind in a word, or why it is quiet; may be empty
 * @param breaths the words, broken where one breathes
 * @param saidShare share of the words that should be out by now, 0 to 1
 * @param verdict whether the words fit the time, or null if there is nothing to judge
 * @param bars the time there is and the time it takes, or null if there is no window
 */
public record SayView(
        What what,
        String caption,
        String kind,
        List<String> breaths,
        double saidShare,
        @Nullable Mark verdict,
        @Nullable Bars bars) {

    /** What the row holds. */
    public enum What {
        /** Words to say now. */
        WORDS,
        /** Words whose time has not come. */
        WAITING,
        /** A quiet. */
        LISTEN,
        NOTHING
    }

    /**
     * Two stretches of time on one scale, from the moment the window opened.
     *
     * @param thereIsS seconds the window lasts
     * @param takesS seconds the words take, 0 in a quiet
     * @param takesAtMostS seconds they take when spoken slowly, the upper end of the band
     * @param goneS seconds gone
     * @param thereIs words beside the first bar, such as "9 s left"
     * @param takes words beside the second bar, such as "needs 7 s"
     */
    public record Bars(
            double thereIsS, double takesS, double takesAtMostS, double goneS, String thereIs, String takes) {}

    public SayView {
        breaths = List.copyOf(breaths);
        if (!(saidShare >= 0 && saidShare <= 1)) {
            throw new IllegalArgumentException("saidShare is " + saidShare + "; it must be from 0 to 1");
        }
    }
}
