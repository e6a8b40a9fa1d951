package crowdline.telemetry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Gathers notes and folds them by kind: of each the first few are told, then how many more lines there are like them. */
final class LogNotes {
    /** Said of a position that comes no later than the one before. */
    static final String NOT_AFTER = "the time does not lie after the one before; left out";

    /** Notes of one kind, each about lines in a row. */
    private static final int MOST_OF_A_KIND = 3;
    /** A broken file may hold as many kinds as lines. */
    private static final int MOST_KINDS = 50;

    private static final String OTHERS = "other notes";

    private final Map<String, Kind> kinds = new LinkedHashMap<>();

    /** What was said in the same words, whatever the numbers in them. */
    private static final class Kind {
        final List<LogNote> first = new ArrayList<>();
        int more;
        int lastLine;

        void about(int line, String what) {
            int end = first.size() - 1;
            LogNote last = end < 0 ? null : first.get(end);
            if (last != null
                    && more == 0
                    && last.line() != null
                    && last.what().equals(what)
                    && last.line() + last.lines() == line) {
                first.set(end, new LogNote(last.line(), last.lines() + 1, what));
            } else if (first.size() < MOST_OF_A_KIND) {
                first.add(new LogNote(line, 1, what));
            } else {
                more++;
                lastLine = line;
            }
        }

        List<LogNote> all(String kind) {
            if (more == 0) {
                return first;
            }
            List<LogNote> all = new ArrayList<>(first);
            String like = kind.equals(OTHERS)
                    ? "with other notes"
                    : "like line " + first.get(first.size() - 1).line();
            String text = more == 1
                    ? String.format(Locale.UK, "1 more line %s, line %d", like, lastLine)
                    : String.format(Locale.UK, "%,d more lines %s, the last of them line %d", more, like, lastLine);
            all.add(new LogNote(null, 1, text));
            return all;
        }
    }

    void about(int line, String what) {
        kind(what).about(line, what);
    }

    void aboutAll(String what) {
        Kind kind = kind(what);
        if (kind.first.size() < MOST_OF_A_KIND) {
            kind.first.add(new LogNote(null, 1, what));
        }
    }

    private Kind kind(String what) {
        String key = what.replaceAll("\\d+", "0");
        return kinds.containsKey(key) || kinds.size() < MOST_KINDS
                ? kinds.computeIfAbsent(key, k -> new Kind())
                : kinds.computeIfAbsent(OTHERS, k -> new Kind());
    }

    List<LogNote> all() {
        List<LogNote> all = new ArrayList<>();
        kinds.forEach((key, kind) -> all.addAll(kind.all(key)));
        return List.copyOf(all);
    }
}
