package crowdline.list.about;

import crowdline.list.word.MailHead;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
            + "|\\b(?:(?:display|fly|jump|exit|perform)(?:ing|s)?|go(?:es)?|on|starts?|starting|begins?|beginning)\\s+(?:at|clock|around|about)\\s+"
            + "|\\boverhead (?:at|from|by)\\s+|\\bon (?:task|station|stage|display) (?:at )?(?=\\d)|(?:^|[.;] )time ?[:=] ?|\\bsay (?=\\d{1,2}[:.]\\d{2}\\b)|\\b(?:over|above|overhead) the (?:field|airfield|crowd|runway|showground) (?:at|from|by)\\s+|\\bwe (?:want|have|got|would like|are|fly)\\s+(?=\\d{1,2}[:.h]\\d)"
            + "|\\b(?:down|booked|listed|pencilled in|programmed|scheduled)\\s+for\\s+(?=\\d{1,2}[:.h]\\d)"
            + "|\\bstart(?:s|ing)?\\s+(?=\\d{1,2}[:.h]\\d)|\\b(?:exit(?=\\s+\\d)|p-?hour|h-?hour|drop(?: time)?|jump time|jump ?run(?: is)?(?: at)?|on target|start(?: time)?|time over (?:the )?(?:field|airfield|target|venue|crowd))(?:\\s+is|:|=)?\\s*"
            + "|\\b(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?,?\\s+(?:at\\s+)?)"
            + TIME
            + "(?!\\s?(?:ft|feet|kts?|knots|mph|km|metres|m)\\b)(?:\\s?(?:-|–|—|to|till?|until|,? off(?: at)?|,? finish(?:ing)?(?: at)?)\\s?"
            + TIME + ")?");
    /** From one hour to another, or an hour that somebody would like. */
    private static final Pattern ALSO =
            Pattern.compile("(?i)(?<![\\d:.])" + TIME + "\\s?(?:-|–|—|to|till?|until)\\s?(?:clock |kl\\.? )?" + TIME);

    private static final Pattern WISHED = Pattern.compile(
            "(?i)(?<![\\d:.])" + TIME + "(?=\\s(?:would|will|suits?|is (?:fine|good|best)|if (?:possible|you))\\b)");
    /** "From 13:40", "at 12:15": an hour and no word to it; "from 1938" an aeroplane is. */
    private static final Pattern BARE = Pattern.compile(
            "(?i)\\b(?:from(?!\\s+(?:19|20)\\d{2}\\b(?!\\s?(?:h|hrs?|hours|l|lt|local|onwards?|to|till?|until|-|–)\\b))|at|begin(?:ning)? at)\\s+"
                    + TIME + "(?!\\s?(?:ft|feet|kts?|knots?|m|rpm|metres?|mph|kmh)\\b)");

    private static final Pattern SENTENCES = Pattern.compile("(?<=[.!?])\\s+|\\n");
    private static final Pattern OTHER = Pattern.compile(
            "(?i)\\b(?<!after the )(?<!after )(?:brief\\w*|voicemail|message|received|recorded|sent|arriv\\w*|meet\\w*|see|weather|forecast|practi[cs]\\w*|rehears\\w*|lunch|tea|phone|ring|call|gates?|open\\w*|take-?off|airborne|landing|hold\\w*)\\b");
    private static final Pattern BRACKET = Pattern.compile("\\([^)\\d\\n]{0,60}\\)");

    /** What stands between two things of a heading, or two sentences. */
    private static final Pattern PARTED = Pattern.compile("[,;|\\n\\t]|(?<=\\s)[-–—]{1,3}\\s|[.!?](?=\\s|$)");

    /** An hour that stands by itself in a heading: "Ada Quillan, 7 mins, 12:30", or at the beginning of a sentence. */
    private static final Pattern ALONE = Pattern.compile("(?i)^(?!(?:19|20)\\d{2}\\W{0,3}$)(?:(?:sat|sun|on|at|slot) )?"
            + TIME + "(?:\\s?(?:l|lt|local|hrs?|hours|h)(?: time)?)?[^\\p{L}\\d]{0,3}$");

    private static final Pattern THOUGHT = Pattern.compile(
            "(?i)^(?:(?:it['’]?s|so|at|about|er|um) ){0,2}" + TIME
                    + " (?:i think|i believe|they said|i was told|was said|or thereabouts|or so|please|confirmed|i understand)\\b");

    /** "Fred Applegarth 14.10 8min". */
    private static final Pattern AHEAD_OF_ITS_LENGTH = Pattern.compile("(?i)(?<![\\d:.])" + TIME
            + "[\\s,]+(?:for )?(?=(?:\\d{1,2}(?:[.,]5)?|" + Numbers.WORD + ")(?: and a half)?[ -]?min)");

    /** What a mail says of itself, and hours by which messages were sent. */
    private static final Pattern MAIL_HEAD = Pattern.compile(
            "(?im)^[ \\t>]{0,9}" + MailHead.FIELDS
                    + " ?:(?!.*\\bslot\\b).*$|^[ \\t>]{0,9}on .{5,80} wrote ?:.*$|^[ \\t]{0,9}\\[\\d{1,2}[:.]\\d{2}[^\\]\\n]{0,30}\\]");

    private static final Pattern ROW =
            Pattern.compile("(?i)[^\\p{L}\\d\\[]{0,3}(?=[7-9]|0[7-9]|1\\d|2[0-3])" + TIME + "(?=[ \\t–-])");
    private static final int LEAST_ROWS = 3;
    /** As many notes head a letter. */
    private static final int HEADINGS = 3;
    /** Letters: a longer part says more than an hour. */
    private static final int LONGEST_PART = 60;
    /** Groups of one time. */
    private static final int GROUPS = 5;

    /** Nobody flies at a display before; an earlier hour without a word to it is one of the afternoon. Common practice, no source. */
    private static final int EARLIEST_H = 8;

    private static final int NOON_H = 12;
    private static final double SECONDS = 60;

    /**
     * Of a letter.
     *
     * @param written what stands around the figures
     * @param all the same and the figures as they were written
     */
    static Slots in(List<String> written, List<String> all) {
        List<String> notes = written.stream()
                .map(note -> MAIL_HEAD.matcher(note).replaceAll(""))
                .map(SpokenHours::inDigits)
                .toList();
        Slots said = in(notes, SLOT);
        if (said.begins() != null) {
            return said;
        }
        List<String> open = notes.stream().map(note -> withoutOther(note)).toList();
        Slots also = in(open, ALSO);
        if (also.minutes() != null) {
            return also;
        }
        Slots wished = in(open, WISHED);
        if (wished.begins() != null) {
            return new Slots(wished.begins(), null);
        }
        Slots line = in(all.stream().map(SpokenHours::inDigits).toList(), SLOT);
        return Stream.of(
                        line,
                        in(open, AHEAD_OF_ITS_LENGTH),
                        in(parts(open.stream().limit(HEADINGS)), ALONE),
                        in(parts(open.stream().skip(Math.max(0, open.size() - 1))), ALONE),
                        in(parts(open.stream()), THOUGHT),
                        in(open, BARE),
                        ofRows(all))
                .filter(slots -> slots.begins() != null)
                .findFirst()
                .map(slots -> slots.equals(line) ? line : new Slots(slots.begins(), null))
                .orElse(line);
    }

    /** "11.10 aircraft runs in", "11.12 canopies": the first of the hours that rows begin with, each no earlier than the one before. */
    private static Slots ofRows(List<String> all) {
        List<LocalTime> times = all.stream()
                .flatMap(String::lines)
                .map(ROW::matcher)
                .filter(Matcher::lookingAt)
                .map(row -> time(row, 0, row.group(GROUPS)))
                .filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .toList();
        boolean isSorted = times.equals(times.stream().sorted().toList());
        boolean isOfADay = times.size() >= LEAST_ROWS && times.get(0).getHour() >= EARLIEST_H;
        return isSorted && isOfADay ? new Slots(times.get(0), null) : new Slots(null, null);
    }

    /** The sentences of a note that speak of nothing else. */
    private static String withoutOther(String note) {
        return SENTENCES
                .splitAsStream(note)
                .filter(sentence ->
                        !OTHER.matcher(BRACKET.matcher(sentence).replaceAll("")).find())
                .collect(Collectors.joining("\n"));
    }

    private static List<String> parts(Stream<String> notes) {
        return notes.flatMap(PARTED::splitAsStream)
                .map(String::strip)
                .filter(part -> part.length() <= LONGEST_PART)
                .toList();
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
