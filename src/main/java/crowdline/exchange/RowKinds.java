package crowdline.exchange;

import crowdline.exchange.ActRows.Column;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Tells from what organisers write into a running order which of its rows are acts. */
final class RowKinds {
    private static final Pattern BREAK = Pattern.compile(
            "(?:tea|coffee|lunch|mittag|break|interval|intermission|pause|gap|no flying|raffle|prize|announcements?|rwy insp"
                    + "|runway inspection|end of|close|closing|closes|site closes|show closes|finish|gates|doors|crowd away"
                    + "|weather hold|church)\\b.*|.*\\b(?:break|interval|intermission)");
    /** What is no part of the display, wherever it is said. */
    private static final Pattern BESIDE = Pattern.compile(
            ".*\\b(?:rehearsal|repetition|photo ?call|brief|briefing|gates open|church service|no engines|no fly)\\b.*");

    private static final Pattern STANDBY = Pattern.compile("(?:stand-? ?by|s/by|sby)\\b.*", Pattern.CASE_INSENSITIVE);
    private static final Pattern GROUND =
            Pattern.compile(".*(?:\\(ground\\)|\\bno aircraft\\b|\\bno flying\\b).*", Pattern.CASE_INSENSITIVE);
    private static final Pattern CANCELLED = Pattern.compile(
            "(?:cancelled|canceled|canx|cnx|cancel|withdrawn|w/d|scratched|scrubbed|deleted)\\b.*",
            Pattern.CASE_INSENSITIVE);
    private static final Set<String> TOTAL =
            Set.of("total", "totals", "sum", "summe", "gesamt", "sub total", "grand total");
    private static final Set<String> NOBODY = Set.of("tbc", "tba", "tbd", "na", "n a", "none", "various");

    private static final Set<String> DITTO = Set.of("ditto", "do.", "\"", "''", "as above", "same");

    /** Sorts of acts, which organisers put where others put a title. */
    private static final Set<String> SORTS = Set.of(
            "solo",
            "pair",
            "flypast",
            "fly past",
            "display",
            "aerobatics",
            "aeros",
            "solo aero",
            "solo aerobatics",
            "formation",
            "team",
            "glider",
            "helicopter",
            "heli",
            "jet",
            "historic",
            "vintage",
            "warbird",
            "paradrop",
            "parachutes",
            "role demo");

    /** The end of an afternoon that is written without pm. */
    private static final int LAST_HOUR = 7;

    private static final int HALF_A_DAY = 12;

    private RowKinds() {}

    /** Why a row is no act, in a sentence; null if it is one. */
    static @Nullable String noAct(Cells.Row row, String named) {
        String key = Text.withoutAccents(Text.key(named));
        if (row.texts().anyMatch(text -> isTotal(Text.key(text)))) {
            return "A total is no act; it is passed over";
        }
        if (row.texts().anyMatch(text -> CANCELLED.matcher(text).matches())) {
            return "The row says that it is cancelled; it is passed over";
        }
        if (row.texts().anyMatch(text -> STANDBY.matcher(text).matches())) {
            return "It only stands by; it is passed over";
        }
        if (BESIDE.matcher(key).matches()) {
            return "It is no part of the display; it is passed over";
        }
        if (BREAK.matcher(key).matches()) {
            return "A break is the time between two slots; it is passed over";
        }
        if (row.texts().anyMatch(text -> GROUND.matcher(text).matches())) {
            return "Nothing flies in it; it is passed over";
        }
        return null;
    }

    private static boolean isTotal(String key) {
        return TOTAL.contains(key) || key.startsWith("total ");
    }

    /** Whether a row goes on with the one above: further names of a crew, or a note, without a time. */
    static boolean isMore(Cells.Row row, Heads<Column> heads) {
        if (!heads.has(Column.START)
                || !heads.has(Column.TITLE)
                || !row.text(heads.of(Column.START)).isEmpty()) {
            return false;
        }
        boolean isNote = Stream.of(Column.PERFORMER, Column.AIRCRAFT, Column.TEAM, Column.MINUTES, Column.END)
                .allMatch(column -> row.text(heads.of(column)).isEmpty());
        return isNote || row.text(heads.of(Column.TITLE)).isEmpty();
    }

    /** Whether a row has heads again, as the second day of a sheet has. */
    static boolean isHeads(Cells.Row row, Heads<Column> heads) {
        return heads.columns().values().stream()
                        .filter(column -> !row.text(column).isEmpty()
                                && Text.key(row.text(column))
                                        .equals(Text.key(heads.said().text(column))))
                        .count()
                >= 2;
    }

    /** A name without the number in front of it: "3. The pair". */
    static String unnumbered(String title) {
        return title.replaceFirst("^\\d{1,2}[.)]\\s+(?=\\S)", "");
    }

    /** Whether a title only says what sort of act it is. */
    static boolean isSort(String title) {
        return SORTS.contains(Text.key(title));
    }

    /** Whether a cell says what the one above it says. */
    static boolean isDitto(String text) {
        return DITTO.contains(text.toLowerCase(Locale.ROOT));
    }

    /** Who is named; empty where a cell says that nobody is yet. */
    static String named(String performer) {
        String key = Text.key(performer);
        return key.isEmpty() || NOBODY.contains(key) ? "" : performer;
    }

    /**
     * A time as it is meant: 1.00 below 12.15 is an hour after noon.
     *
     * @param before when the act above begins, or null if there is none
     */
    static LocalTime afternoon(String written, LocalTime time, @Nullable LocalTime before) {
        boolean mayBe = written.matches("[1-9] ?[.:h].*") && !written.matches("(?i).*[ap]\\.?m.*");
        return mayBe && before != null && time.isBefore(before) && time.getHour() <= LAST_HOUR
                ? time.plusHours(HALF_A_DAY)
                : time;
    }
}
