package crowdline.draft;

import crowdline.show.figure.Asked;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Announces figures, in turn with other words: nobody would say "now" twelve times. */
final class Calls {
    private static final List<String> WAYS = List.of(
            "Now %s", "Next comes %s", "And here is %s", "Watch for %s", "Now for %s", "Next, %s", "Coming up, %s");
    /** Of what is only taken for it, so that it stays true if it is something else. */
    private static final List<String> GUESSED =
            List.of("This should be %s", "Next, most likely, %s", "Now, by the look of it, %s");

    private static final List<String> BACK = List.of("Back again, with %s", "And back for %s");
    private static final List<String> LAST = List.of("To finish, %s", "And last of all, %s");
    /** A way is not taken again before so many others were. */
    private static final int APART = 4;

    private final Deque<String> lately = new ArrayDeque<>();
    private int next;
    private int back;
    private int guessed;

    /** @param act which act of the day, from 0: another begins with another way */
    Calls(int act) {
        next = act % WAYS.size();
        back = act;
    }

    /**
     * A call without its full stop.
     *
     * @param called the figure, such as "a loop"
     */
    String of(String called, Scene scene) {
        if (scene.isGuess()) {
            return String.format(GUESSED.get(guessed++ % GUESSED.size()), called);
        }
        if (scene.last() && !called.startsWith("the ")) {
            return String.format(LAST.get(next % LAST.size()), called);
        }
        if (scene.cameBack() && !called.startsWith("the ") && back++ % 3 == 0) {
            String way = BACK.get((back / 3) % BACK.size());
            if (!lately.contains(way)) {
                return said(way, called);
            }
        }
        Asked asked = scene.figure().asked();
        String end = asked == null ? null : end(asked.place());
        if (end != null && !lately.contains(end)) {
            return said(end, called);
        }
        String way = WAYS.get(next % WAYS.size());
        for (int i = 0; i < WAYS.size() && (lately.contains(way) || clashes(way, called)); i++) {
            next++;
            way = WAYS.get(next % WAYS.size());
        }
        next++;
        return said(way, called);
    }

    /** At an end that the list names; null anywhere else. */
    private static @Nullable String end(Asked.@Nullable Place place) {
        return place == Asked.Place.LEFT_END
                ? "At the left-hand end, %s"
                : place == Asked.Place.RIGHT_END ? "At the right-hand end, %s" : null;
    }

    private static boolean clashes(String way, String called) {
        return called.contains(",") && way.contains(",");
    }

    private String said(String way, String called) {
        lately.addLast(way);
        if (lately.size() > APART) {
            lately.removeFirst();
        }
        return String.format(Called.isSeveral(called) ? several(way) : way, called);
    }

    /** "Next come two rolls", "And here are two rolls". */
    private static String several(String way) {
        return way.replace(" comes ", " come ").replace(" is ", " are ");
    }
}
