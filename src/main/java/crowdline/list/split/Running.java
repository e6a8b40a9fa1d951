package crowdline.list.split;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers within a line that count what is flown, with nothing behind them: "1 take-off 2 loop 3 half Cuban 4 spin 2 turns 5 land". */
final class Running {
    private static final Pattern NUMBER = Pattern.compile(
            "(?<![\\d.:,-])\\b(\\d{1,2})\\s(?=\\p{L}|1/[24])(?!(?:turns?|x|times?|points?|pts?|secs?|s|ft|kts?|mins?|m)\\b)");

    private static final Pattern STOP = Pattern.compile("[.!?]\\s");

    /** Fewer may be how often each is flown. */
    private static final int LEAST = 4;

    private final Set<Integer> starts = new HashSet<>();
    /** What the last of them counts; 0 if there is none. */
    private int last;

    private Running() {}

    /** None. */
    static Running none() {
        return new Running();
    }

    /** Those of a line; they may go on with what the line before counted. */
    Running of(String folded, int from, int to) {
        Running anew = new Running();
        anew.read(folded, from, to, 1, LEAST);
        if (anew.last == 0 && last > 0) {
            anew.read(folded, from, to, last + 1, 1);
        }
        return anew;
    }

    private void read(String folded, int from, int to, int first, int least) {
        Set<Integer> found = new HashSet<>();
        Matcher number = NUMBER.matcher(folded).region(from, to);
        int next = first;
        int behind = from;
        while (number.find()) {
            int at = number.start();
            if (next > first && STOP.matcher(folded.substring(behind, at)).find()) {
                break;
            }
            behind = number.end();
            if (Integer.parseInt(number.group(1)) == next) {
                found.add(number.start());
                next++;
            }
        }
        if (found.size() >= least) {
            starts.addAll(found);
            last = next - 1;
        }
    }

    /** Whether one begins here. */
    boolean isAt(int at) {
        return starts.contains(at);
    }
}
