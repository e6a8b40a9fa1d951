package crowdline.console.receiver;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A row of the list of receivers.
 *
 * @param name to be shown
 * @param where a port's path or a flight log's file; empty for what is asked for next, or for none
 * @param way what choosing it does
 * @param inUse whether positions come from there now
 */
public record ReceiverRow(String name, String where, Way way, boolean inUse) {
    /** How much faster a flight log is played to try it out. */
    private static final double FASTER = 4;

    /** What choosing a row does. */
    public enum Way {
        /** Uses it. */
        USE,
        /** Asks for a flight log. */
        LOG,
        /** Asks for a flight log, to be played faster than flown. */
        LOG_FASTER
    }

    /** What there is to choose from, what is in use among it. */
    static List<ReceiverRow> of(Receivers found) {
        String inUse = found.inUse();
        List<ReceiverRow> rows = new ArrayList<>();
        if (!inUse.isEmpty() && found.ports().stream().noneMatch(p -> p.where().equals(inUse))) {
            rows.add(new ReceiverRow(named(inUse), inUse, Way.USE, true));
        }
        found.ports()
                .forEach(p -> rows.add(
                        new ReceiverRow(p.name(), p.where(), Way.USE, p.where().equals(inUse))));
        rows.add(new ReceiverRow("A flight log, played as it was flown…", "", Way.LOG, false));
        rows.add(new ReceiverRow("A flight log, four times as fast, to try things out…", "", Way.LOG_FASTER, false));
        rows.add(new ReceiverRow("None: by hand and by clock only", "", Way.USE, inUse.isEmpty()));
        return List.copyOf(rows);
    }

    private static String named(String where) {
        if (where.equals("-")) {
            return "Standard input";
        }
        Path name = Path.of(where).getFileName();
        return name == null || where.startsWith("/dev/") || name.toString().equals(where)
                ? where
                : name + " (" + where + ")";
    }

    /** How much faster than flown a flight log of this row is played. */
    double faster() {
        return way == Way.LOG_FASTER ? FASTER : 1;
    }

    /** What stands above the list. */
    static String said(Receivers found) {
        String how = "Enter chooses, Esc cancels. Tab goes to the field for a port that is not listed.";
        if (!found.inUse().isEmpty()) {
            return "In use: " + named(found.inUse()) + (found.state().isEmpty() ? "" : ": " + found.state()) + ". "
                    + how;
        }
        return (found.ports().isEmpty()
                        ? "No serial port was found. Plug the receiver in and open this again. "
                        : "The speed of a port is found automatically. ")
                + how;
    }
}
