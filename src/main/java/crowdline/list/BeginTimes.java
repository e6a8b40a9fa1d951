package crowdline.list;

import crowdline.list.line.ListLine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The clock that runs beside a list: "0:40 loop", "Stall turn (1:05)", "T+95 s spin". It is one where at least
 * {@value #LEAST} lines have such a time and each comes after the one before.
 */
final class BeginTimes {
    private static final int LEAST = 3;
    /** No act begins so late by a clock that runs from its beginning; by the day's it may, minutes. */
    private static final int HOUR_OF_DAY_MIN = 5;

    /** Figures are begun further apart than this on the whole, seconds. */
    private static final double LEAST_APART_S = 10;

    /** Of fewer times two out of order are no clock. */
    private static final int LEAST_WITH_A_SWAP = 6;

    private static final double MINUTE_S = 60;
    private static final double HOUR_S = 3600;

    private static final String CLOCK =
            "(?:T\\s?)?\\+?\\s?(\\d{0,2}):([0-5]\\d)(?::([0-5]\\d))?(?:\\s?[-–]\\s?\\d{1,2}:[0-5]\\d(?::[0-5]\\d)?)?";
    /** Ahead of the figure, behind at most the number of its line. */
    private static final Pattern AHEAD = Pattern.compile(
            "(?i)\\s*(?:[-*•·#]\\s*)?(?:\\d{1,3}[.):]?(?:\\s+|\\s*\\|\\s*)|[^\\t\\d]{1,20}\\t)?[\\[(]?(?:"
                    + CLOCK.replace(":([0-5]", "[:.]([0-5]")
                    + "|(?:T\\s?\\+\\s?|(?=\\d{1,4}\\s?-\\s?\\d{1,4}\\s?s))(\\d{1,4})(?:\\s?-\\s?\\d{1,4})?\\s?s?(?:ec(?:onds|s)?)?)(?=[\\s\\])|,;:.-]).*",
            Pattern.DOTALL);
    /** Behind it, at the end of its line. */
    private static final Pattern BEHIND =
            Pattern.compile("(?i).*[\\s(\\[|,;@-](?:at )?" + CLOCK + "()[)\\]]?[\\s.,;]*", Pattern.DOTALL);

    private static final Pattern OF_CLOCK = Pattern.compile("(?i)T(?:\\s?\\+\\s?\\d*)?|at [\\d:]+");

    private BeginTimes() {}

    /** The same lines with what the clock says of them; unchanged where there is none. */
    static List<ListLine> of(List<ListLine> lines) {
        List<ListLine> ahead = of(lines, AHEAD);
        return ahead.equals(lines) ? of(lines, BEHIND) : ahead;
    }

    private static List<ListLine> of(List<ListLine> lines, Pattern pattern) {
        List<OptionalDouble> times =
                lines.stream().map(line -> seconds(line.text(), pattern)).toList();
        double[] told = inPlace(times.stream()
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray());
        if (told.length < LEAST || !rises(told) || isHours(lines, pattern) || (pattern == BEHIND && mayLast(told))) {
            return lines;
        }
        // A clock of the day says when the act began.
        double zeroS = told[0] >= HOUR_S ? told[0] : 0;
        if (told[told.length - 1] - zeroS > ListLine.MOST_SECONDS) {
            return lines;
        }
        List<ListLine> begun = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < lines.size(); i++) {
            ListLine line = lines.get(i);
            begun.add(
                    times.get(i).isPresent()
                            ? line.begun(
                                    told[next++] - zeroS,
                                    isThat(line.seconds(), times.get(i).getAsDouble()) ? null : line.seconds(),
                                    isClock(line.note()) ? null : line.note())
                            : line);
        }
        return begun;
    }

    /** Whether the reader took the time on the clock for how long the figure lasts. */
    private static boolean isThat(@Nullable Double seconds, double clockS) {
        return seconds != null && seconds == clockS;
    }

    /** Behind a figure the time may be how long it lasts: "run-in 0:15, loop 0:20, stall turn 0:25". */
    private static boolean mayLast(double[] told) {
        double last = told[told.length - 1];
        return last < MINUTE_S || (last - told[0]) / (told.length - 1) < LEAST_APART_S;
    }

    private static boolean isClock(@Nullable String note) {
        return note != null && OF_CLOCK.matcher(note).matches();
    }

    /** The times in the order flown: where two figures changed places, each has the time of its new place. */
    private static double[] inPlace(double[] told) {
        double[] sorted = told.clone();
        Arrays.sort(sorted);
        long moved = IntStream.range(0, told.length)
                .filter(i -> told[i] != sorted[i])
                .count();
        return moved <= 2 && told.length >= LEAST_WITH_A_SWAP ? sorted : told;
    }

    private static boolean rises(double[] told) {
        for (int i = 1; i < told.length; i++) {
            if (!(told[i] > told[i - 1])) {
                return false;
            }
        }
        return true;
    }

    /** "14:20 loop, 14:25 spin" is the day's, by the minute, which is too rough for a figure. */
    private static boolean isHours(List<ListLine> lines, Pattern pattern) {
        for (ListLine line : lines) {
            Matcher found = pattern.matcher(line.text());
            if (found.matches() && found.group(1) != null) {
                return found.group(3) == null
                        && !found.group(1).isEmpty()
                        && Integer.parseInt(found.group(1)) >= HOUR_OF_DAY_MIN;
            }
        }
        return false;
    }

    private static OptionalDouble seconds(String text, Pattern pattern) {
        Matcher found = pattern.matcher(text);
        if (!found.matches()) {
            return OptionalDouble.empty();
        }
        if (found.group(1) == null) {
            return OptionalDouble.of(Double.parseDouble(found.group(4)));
        }
        double first = found.group(1).isEmpty() ? 0 : Double.parseDouble(found.group(1));
        double second = Double.parseDouble(found.group(2));
        return OptionalDouble.of(
                found.group(3) == null
                        ? MINUTE_S * first + second
                        : HOUR_S * first + MINUTE_S * second + Double.parseDouble(found.group(3)));
    }
}
