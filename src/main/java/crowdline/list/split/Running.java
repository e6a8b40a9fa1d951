package crowdline.list.split;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers within a line that count what is flown, with nothing behind them: "1 take-off 2 loop 3 half Cuban 4 spin 2 turns 5 land". */
final class Running {
    private static final Pattern NUMBER = Pattern.compile(
            "(?<![\\d.:,-])\\b(\\d{1,2})\\s(?=\\p{L})(?!(?:turns?|x|times?|points?|pts?|secs?|s|ft|kts?|mins?|m)\\b)");

    private static final Pattern STOP = Pattern.compile("[.!?]\\s");

    /** Fewer may be how often each is flown. */
    private static final int LEAST = 4;

    private final Set<Integer> starts = new HashSet<>();

    Running(String folded, int from, int to) {
        Set<Integer> found = new HashSet<>();
        Matcher number = NUMBER.matcher(folded).region(from, to);
        int next = 1;
        int behind = from;
        while (number.find()) {
            int at = number.start();
            if (next > 1 && STOP.matcher(folded.substring(behind, at)).find()) {
                break;
            }
            behind = number.end();
            if (Integer.parseInt(number.group(1)) == next) {
                found.add(number.start());
                next++;
            }
        }
        if (found.size() >= LEAST) {
            starts.addAll(found);
        }
    }

    /** Whether one begins here. */
    boolean isAt(int at) {
        return starts.contains(at);
    }
}
