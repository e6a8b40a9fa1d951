package crowdline.show.bounds;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds the name somebody most likely meant. The distance is that of F. J. Damerau, "A technique for computer detection
 * and correction of spelling errors", Communications of the ACM 7 (3), 1964: letters inserted, dropped, changed, or two
 * neighbours swapped, each counting one.
 */
public final class Nearest {
    private Nearest() {}

    /**
     * The allowed name nearest to {@code given}, the letters' case not counted; empty if none is near: more than a third
     * of the letters would have to change (tuned: "lop" still finds "loop", and "spin" does not find "loop").
     */
    public static Optional<String> to(String given, Collection<String> allowed) {
        String wanted = given.strip().toLowerCase(Locale.ROOT);
        String best = null;
        int bestDistance = Integer.MAX_VALUE;
        for (String name : allowed) {
            int greatest = Math.max(1, Math.max(wanted.length(), name.length()) / 3);
            if (Math.abs(wanted.length() - name.length()) > greatest) {
                continue;
            }
            int distance = distance(wanted, name.toLowerCase(Locale.ROOT));
            if (distance <= greatest && distance < bestDistance) {
                best = name;
                bestDistance = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    /** The words to add to a message: {@code ; did you mean "loop"?}, or nothing. */
    public static String hint(String given, Collection<String> allowed) {
        return to(given, allowed)
                .map(name -> "; did you mean \"" + name + "\"?")
                .orElse("");
    }

    /** The number of letters to insert, drop, change, or swap with their neighbour. */
    public static int distance(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] now = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                now[j] = Math.min(Math.min(last[j] + 1, now[j - 1] + 1), last[j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    now[j] = Math.min(now[j], before[j - 2] + 1);
                }
            }
            int[] free = before;
            before = last;
            last = now;
            now = free;
        }
        return last[b.length()];
    }
}
