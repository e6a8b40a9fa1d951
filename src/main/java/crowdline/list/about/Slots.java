package crowdline.list.about;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * When the slot of an act is: "slot 15:20", "our slot is 3.20 to 3.28 pm", "displaying at 1520". Of other hours, such as that of
 * the briefing, nothing is taken.
 *
 * @param minutes how long it is, where its end is said too
 */
record Slots(@Nullable LocalTime begins, @Nullable Double minutes) {
    private static final String HOUR =
            "(\\d{1,2})\\s?[:.h]\\s?([0-5]\\d)|([012]\\d[0-5]\\d)|(\\d{1,2})(?=\\s?[ap]\\.?m\\b)";
    private static final String TIME = "(?:" + HOUR + ")(?!\\d)\\s?(?:([ap])\\.?m\\b\\.?)?";
    private static final Pattern SLOT = Pattern.compile("(?i)(?:\\bslot(?:\\s+time)?\\b[^\\d\\n.!?]{0,20}?"
            + "|\\b(?:display|show)\\s+(?:time|start|begins?)\\b\\s*(?:is|at|:|=)?\\s*"
            + "|\\b(?:(?:display|fly)(?:ing|s)?|on|starts?|starting|begins?|beginning)\\s+at\\s+"
            + "|\\bstart(?: time)?(?:\\s+is|:|=)\\s*"
            + "|\\b(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?,?\\s+(?:at\\s+)?)"
            + TIME + "(?:\\s?(?:-|–|—|to|till?|until)\\s?" + TIME + ")?");
    /** From one hour to another, or an hour that somebody would like. */
    private static final Pattern ALSO =
            Pattern.compile("(?i)(?<![\\d:.])" + TIME + "\\s?(?:-|–|—|to|till?|until)\\s?" + TIME);

    private static final Pattern WISHED = Pattern.compile(
            "(?i)(?<![\\d:.])" + TIME + "(?=\\s(?:would|will|suits?|is (?:fine|good|best)|if (?:possible|you))\\b)");
    private static final Pattern OTHER = Pattern.compile(
            "(?i)\\b(?:brief\\w*|arriv\\w*|meet\\w*|practi[cs]\\w*|rehears\\w*|lunch|tea|phone|ring|call|gates?|open\\w*|take-?off|airborne|landing|hold\\w*)\\b");
    /** Groups of one time. */
    private static final int GROUPS = 5;

    /** Nobody flies at a display before; an earlier hour without a word to it is one of the afternoon. Common practice, no source. */
    private static final int EARLIEST_H = 8;

    private static final int NOON_H = 12;
    private static final double SECONDS = 60;

    static Slots in(List<String> notes) {
        Slots said = in(notes, SLOT);
        if (said.begins() != null) {
            return said;
        }
        List<String> open =
                notes.stream().filter(note -> !OTHER.matcher(note).find()).toList();
        Slots also = in(open, ALSO);
        if (also.minutes() != null) {
            return also;
        }
        Slots wished = in(open, WISHED);
        return new Slots(wished.begins(), null);
    }

    private static Slots in(List<String> notes, Pattern pattern) {
        for (String note : notes) {
            Matcher found = pattern.matcher(note);
            while (found.find()) {
                String half = found.group(GROUPS) == null && found.groupCount() > GROUPS
                        ? found.group(2 * GROUPS)
                        : found.group(GROUPS);
                LocalTime begins = time(found, 0, half);
                if (begins != null) {
                    boolean isRange = found.groupCount() > GROUPS;
                    return new Slots(
                            begins, isRange ? minutes(begins, time(found, GROUPS, found.group(2 * GROUPS))) : null);
                }
            }
        }
        return new Slots(null, null);
    }

    private static @Nullable Double minutes(LocalTime begins, @Nullable LocalTime ends) {
        double minutes = ends == null ? 0 : Duration.between(begins, ends).toSeconds() / SECONDS;
        return minutes >= Lengths.LEAST && minutes <= Lengths.MOST ? minutes : null;
    }

    /** @param half "a" or "p" of the day's halves, or null if nothing is said */
    private static @Nullable LocalTime time(Matcher found, int before, @Nullable String half) {
        String apart = found.group(before + 1);
        String joined = found.group(before + 3);
        String alone = found.group(before + 4);
        if (apart == null && joined == null && alone == null) {
            return null;
        }
        int hour = apart != null
                ? Integer.parseInt(apart)
                : joined != null ? Integer.parseInt(joined.substring(0, 2)) : Integer.parseInt(String.valueOf(alone));
        int minute = apart != null
                ? Integer.parseInt(found.group(before + 2))
                : joined != null ? Integer.parseInt(joined.substring(2)) : 0;
        boolean afternoon = half == null ? hour < EARLIEST_H : half.equalsIgnoreCase("p");
        if (afternoon && hour < NOON_H) {
            hour += NOON_H;
        }
        return hour < 24 ? LocalTime.of(hour, minute) : null;
    }
}
