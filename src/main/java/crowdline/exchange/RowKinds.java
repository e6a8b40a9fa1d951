package crowdline.exchange;

import crowdline.exchange.ActRows.Column;
import java.time.LocalTime;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Tells from what organisers write into a running order which of its rows are acts. */
final class RowKinds {
    private static final Pattern BREAK = Pattern.compile(
            "(?:tea|coffee|lunch|mittag|break|interval|pause|gap|no flying|raffle|prize|announcements?|rwy insp|runway inspection"
                    + "|end of|close|closing|closes|site closes|show closes|finish)\\b.*|.*\\b(?:break|interval)");
    private static final Pattern GROUND =
            Pattern.compile(".*(?:\\(ground\\)|\\bno aircraft\\b|\\bno flying\\b).*", Pattern.CASE_INSENSITIVE);
    private static final Pattern CANCELLED = Pattern.compile(
            "(?:cancelled|canceled|canx|cnx|cancel|withdrawn|w/d|scratched|scrubbed|deleted)\\b.*",
            Pattern.CASE_INSENSITIVE);
    private static final Set<String> TOTAL =
            Set.of("total", "totals", "sum", "summe", "gesamt", "sub total", "grand total");
    private static final Set<String> NOBODY = Set.of("tbc", "tba", "tbd", "na", "n a", "none", "various");

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
        String key = Text.key(named);
        if (row.texts().anyMatch(text -> TOTAL.contains(Text.key(text)))) {
            return "A total is no act; it is passed over";
        }
        if (row.texts().anyMatch(text -> CANCELLED.matcher(text).matches())) {
            return "The row says that it is cancelled; it is passed over";
        }
        if (BREAK.matcher(key).matches()) {
            return "A break is the time between two slots; it is passed over";
        }
        if (row.texts().anyMatch(text -> GROUND.matcher(text).matches())) {
            return "Nothing flies in it; it is passed over";
        }
        return null;
    }

    /** Whether a row goes on with the one above: further names of a crew, without a time. */
    static boolean isMore(Cells.Row row, Heads<Column> heads) {
        return heads.has(Column.START)
                && heads.has(Column.TITLE)
                && row.text(heads.of(Column.START)).isEmpty()
                && row.text(heads.of(Column.TITLE)).isEmpty();
    }

    /** Whether a title only says what sort of act it is. */
    static boolean isSort(String title) {
        return SORTS.contains(Text.key(title));
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
