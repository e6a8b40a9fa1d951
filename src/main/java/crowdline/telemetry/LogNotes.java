package crowdline.telemetry;

import java.util.ArrayList;
import java.util.List;

/** Gathers notes; the same about lines in a row becomes one, and a broken file does not make millions. */
final class LogNotes {
    /** Said of a position that comes no later than the one before. */
    static final String NOT_AFTER = "the time does not lie after the one before; left out";

    private static final int MOST = 100;

    private final List<LogNote> notes = new ArrayList<>();
    private long more;

    void about(int line, String what) {
        int end = notes.size() - 1;
        if (end >= 0) {
            LogNote last = notes.get(end);
            if (last.line() != null && last.what().equals(what) && last.line() + last.lines() == line) {
                notes.set(end, new LogNote(last.line(), last.lines() + 1, what));
                return;
            }
        }
        add(new LogNote(line, 1, what));
    }

    void aboutAll(String what) {
        add(new LogNote(null, 1, what));
    }

    private void add(LogNote note) {
        if (notes.size() < MOST) {
            notes.add(note);
        } else {
            more++;
        }
    }

    List<LogNote> all() {
        if (more == 0) {
            return List.copyOf(notes);
        }
        List<LogNote> all = new ArrayList<>(notes);
        all.add(new LogNote(null, 1, more + " more notes like these"));
        return List.copyOf(all);
    }
}
