package crowdline.list.about;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
            + "|\\b(?:(?:display|fly|jump|exit|perform)(?:ing|s)?|on|starts?|starting|begins?|beginning)\\s+at\\s+"
            + "|\\b(?:down|booked|listed|pencilled in|programmed|scheduled)\\s+for\\s+(?=\\d{1,2}[:.h]\\d)"
            + "|\\bstart(?:s|ing)?\\s+(?=\\d{1,2}[:.h]\\d)|\\b(?:exit(?=\\s+\\d)|p-?hour|h-?hour|drop(?: time)?|jump time|on target|start(?: time)?|time over (?:the )?(?:field|airfield|target|venue|crowd))(?:\\s+is|:|=)?\\s*"
            + "|\\b(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?,?\\s+(?:at\\s+)?)"
            + TIME + "(?:\\s?(?:-|–|—|to|till?|until|,? off(?: at)?|,? finish(?:ing)?(?: at)?)\\s?" + TIME + ")?");
    /** From one hour to another, or an hour that somebody would like. */
    private static final Pattern ALSO =
            Pattern.compile("(?i)(?<![\\d:.])" + TIME + "\\s?(?:-|–|—|to|till?|until)\\s?" + TIME);

    private static final Pattern WISHED = Pattern.compile(
            "(?i)(?<![\\d:.])" + TIME + "(?=\\s(?:would|will|suits?|is (?:fine|good|best)|if (?:possible|you))\\b)");
    /** "From 13:40", "at 12:15": an hour and no word to it. */
    private static final Pattern BARE = Pattern.compile("(?i)\\b(?:from|at|begin(?:ning)? at)\\s+" + TIME
            + "(?!\\s?(?:ft|feet|kts?|knots?|m|rpm|metres?|mph|kmh)\\b)");

    private static final Map<String, Integer> WORDS = Map.ofEntries(
            Map.entry("one", 1),
            Map.entry("two", 2),
            Map.entry("three", 3),
            Map.entry("four", 4),
            Map.entry("five", 5),
            Map.entry("six", 6),
            Map.entry("seven", 7),
            Map.entry("eight", 8),
            Map.entry("nine", 9),
            Map.entry("ten", 10),
            Map.entry("eleven", 11),
            Map.entry("twelve", 12),
            Map.entry("quarter", 15),
            Map.entry("twenty", 20),
            Map.entry("twenty-five", 25),
            Map.entry("half", 30));
    private static final String WORD = "(" + String.join("|", WORDS.keySet()) + "|\\d{1,2})";
    /** "Twenty past two", "half past three". */
    private static final Pattern SPOKEN =
            Pattern.compile("(?i)(?<![\\p{L}\\d.:])(?:a )?" + WORD + " (past|to) " + WORD + "(?!\\p{L})");

    private static final Pattern FULL = Pattern.compile("(?i)(?<![\\p{L}\\d])" + WORD + " o['’]?clock");
    private static final Pattern OTHER = Pattern.compile(
            "(?i)\\b(?:brief\\w*|arriv\\w*|meet\\w*|see|weather|forecast|practi[cs]\\w*|rehears\\w*|lunch|tea|phone|ring|call|gates?|open\\w*|take-?off|airborne|landing|hold\\w*)\\b");
    /** Groups of one time. */
    private static final int GROUPS = 5;

    /** Nobody flies at a display before; an earlier hour without a word to it is one of the afternoon. Common practice, no source. */
    private static final int EARLIEST_H = 8;

    private static final int NOON_H = 12;
    private static final int MINUTES = 60;
    private static final double SECONDS = 60;

    /**
     * Of a letter.
     *
     * @param written what stands around the figures
     * @param all the same and the figures as they were written
     */
    static Slots in(List<String> written, List<String> all) {
        List<String> notes = written.stream().map(Slots::inDigits).toList();
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
        if (wished.begins() != null) {
            return new Slots(wished.begins(), null);
        }
        Slots line = in(all.stream().map(Slots::inDigits).toList(), SLOT);
        return line.begins() != null ? line : new Slots(in(open, BARE).begins(), null);
    }

    private static String inDigits(String note) {
        String full = FULL.matcher(note).replaceAll(hour -> number(hour.group(1)) + ":00");
        return SPOKEN.matcher(full).replaceAll(spoken -> {
            int minutes = number(spoken.group(1));
            int hour = number(spoken.group(3));
            boolean isTo = spoken.group(2).equalsIgnoreCase("to");
            boolean isTime = minutes < MINUTES && hour >= 1 && hour <= NOON_H && (!isTo || minutes % 5 == 0);
            return isTime
                    ? String.format(
                            "%d:%02d",
                            isTo ? (hour + NOON_H - 2) % NOON_H + 1 : hour, isTo ? MINUTES - minutes : minutes)
                    : Matcher.quoteReplacement(spoken.group());
        });
    }

    private static int number(String word) {
        Integer known = WORDS.get(word.toLowerCase(Locale.UK));
        return known == null ? Integer.parseInt(word) : known;
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
