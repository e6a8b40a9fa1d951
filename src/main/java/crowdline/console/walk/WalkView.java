package crowdline.console.walk;

import crowdline.console.paint.Mark;
import crowdline.console.path.SkyView;
import crowdline.sight.SideView;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything the Walk through place shows at one moment, decided.
 *
 * @param top the line along the top
 * @param flying what is flown
 * @param saying what is said, or how a practice run went
 * @param bar the whole act as a line
 * @param noteFor the figure a note would belong to now, or empty if there is none
 * @param hint what the keys do now
 */
public record WalkView(Top top, Flying flying, Saying saying, Bar bar, String noteFor, String hint) {

    /**
     * The line along the top.
     *
     * @param times where the times come from
     * @param clock such as "1:23 of 4:10"
     */
    public record Top(String act, String variant, String times, Mark state, String speed, String clock) {}

    /**
     * What is flown.
     *
     * @param name of the figure, or of what comes first
     * @param place such as "4 of 14"
     * @param element what the aircraft does within the figure
     * @param look one sentence of what to look for
     * @param values speed, height, load and where
     * @param side the path with the aircraft on it
     * @param sky the figure as the crowd sees it; nothing where it is only timed or the crowd line is not known
     */
    public record Flying(
            String name, String place, String element, String look, List<Value> values, SideView side, SkyView sky) {
        public Flying {
            values = List.copyOf(values);
        }
    }

    /** A value under its label. */
    public record Value(String label, String value) {}

    /**
     * What is said.
     *
     * @param now the remark to say now, or null in silence
     * @param silence what stands there instead of a remark
     * @param next the one after it, or null
     * @param note the note on the figure, or empty
     * @param score how a practice run went, shown in place of all the rest; empty if there is none
     */
    public record Saying(
            @Nullable Words now, String silence, @Nullable Words next, String note, List<ScoreLine> score) {
        public Saying {
            score = List.copyOf(score);
        }
    }

    /**
     * A remark.
     *
     * @param kind its kind in a word
     * @param text the words to say
     * @param when such as "in 4 s" or "3 s left"
     * @param share share of its time gone, 0 to 1
     * @param open true while it is being read aloud by the keys
     */
    public record Words(String kind, String text, String when, double share, boolean open) {}

    /**
     * One line of a score.
     *
     * @param mark a state, or null for a line that only explains
     */
    public record ScoreLine(@Nullable Mark mark, String text) {}

    /**
     * The whole act as a line; shares from 0 at its left to 1 at its right.
     *
     * @param figures in the order flown
     * @param remarks when something is said
     * @param at where the walk is
     */
    public record Bar(List<Segment> figures, List<Stretch> remarks, double at) {
        public Bar {
            figures = List.copyOf(figures);
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * A figure on the line.
     *
     * @param way true for what is flown between two figures
     */
    public record Segment(double from, double to, String name, boolean way, boolean current, boolean noted) {}

    /** A remark on the line; {@code now} while it is said. */
    public record Stretch(double from, double to, boolean now) {}
}
