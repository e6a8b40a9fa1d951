package crowdline.exchange;

import crowdline.edit.Change;
import crowdline.edit.act.Acts;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.sheet.CsvCell;
import crowdline.show.Act;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Kinds;
import crowdline.show.aircraft.Sliders;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.storage.file.ShowFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;

/** The acts of a day as rows of cells: an organiser's running order is taken, and the show's is given. */
public final class RunningOrder {
    private static final String HEAD = "start,minutes,act,performer,aircraft";

    private RunningOrder() {}

    /**
     * What was understood, for a person to look at before it is taken.
     *
     * @param rows every row below the heads
     */
    public record Reading(List<ActRow> rows) {
        public Reading {
            rows = List.copyOf(rows);
        }

        public long taken() {
            return rows.stream().filter(ActRow::taken).count();
        }
    }

    /**
     * Reads cells, with or without heads.
     *
     * @param name of the file, or what to call it
     * @throws ShowFileException if it is no table, or none of acts
     */
    public static Reading read(Path name, String text, Show show, Kinds kinds) throws ShowFileException {
        return new Reading(new ActRows(show, kinds).read(name, Cells.of(name, text)));
    }

    /** The acts of the rows that are taken: new ones added, those the show has moved to their slots; as one change. */
    public static Edit take(Reading reading, AddAct adding) {
        return take(reading, adding, taken -> true);
    }

    /**
     * The same; it cannot be if it is stopped, and nothing is taken then.
     *
     * @param goesOn told how many were taken so far, on whichever thread makes the edit; false stops it
     */
    public static Edit take(Reading reading, AddAct adding, IntPredicate goesOn) {
        return show -> {
            Show now = show;
            List<String> order = new ArrayList<>();
            for (ActRow row : reading.rows()) {
                if (row.taken()) {
                    Show before = now;
                    now = row.actId() == null ? added(now, row, adding) : moved(now, row, row.actId());
                    order.add(
                            row.actId() != null
                                    ? row.actId()
                                    : AddAct.added(before, now).id());
                    if (!goesOn.test(order.size())) {
                        throw new CannotBe("Stopped after " + acts(order.size()) + "; none of them was taken");
                    }
                }
            }
            if (order.isEmpty()) {
                throw Text.noneTaken();
            }
            return Change.of("Take " + acts(order.size()) + " from cells", inOrder(now, order));
        };
    }

    private static String acts(int number) {
        return number == 1 ? "1 act" : number + " acts";
    }

    private static Show added(Show show, ActRow row, AddAct adding) throws CannotBe {
        Show added = adding.fromNothing(
                        new AddAct.Wanted(
                                row.kind().kind(), row.kind().number(), row.title(), row.performer(), row.start()),
                        row.minutes())
                .of(show)
                .show();
        if (row.aircraft().isEmpty()) {
            return added;
        }
        String id = AddAct.added(show, added).airframe();
        Kind kind = row.kind().kind();
        Aircraft called = kind.flies()
                ? kind.airframe(id, row.aircraft(), Sliders.TYPICAL)
                : new TimedAircraft(id, row.aircraft(), kind, row.kind().number());
        return added.withAircraft(added.airframes().stream()
                .map(each -> each.id().equals(id) ? called : each)
                .toList());
    }

    private static Show moved(Show show, ActRow row, String actId) throws CannotBe {
        Show slotted = Acts.slot(actId, row.start(), row.minutes()).of(show).show();
        return row.performer().isEmpty()
                ? slotted
                : Acts.performer(actId, row.performer()).of(slotted).show();
    }

    /** Those of the rows in their order; any other before the first that begins later. */
    private static Show inOrder(Show show, List<String> order) {
        List<Act> acts = new ArrayList<>();
        order.forEach(id -> acts.add(show.act(id).orElseThrow()));
        for (Act act : show.acts()) {
            if (!order.contains(act.id())) {
                int at = 0;
                while (at < acts.size() && !acts.get(at).slotStart().isAfter(act.slotStart())) {
                    at++;
                }
                acts.add(at, act);
            }
        }
        return show.withActs(acts, show.remarks());
    }

    /** The running order with something else between the cells, such as tabs to be pasted. */
    public static String of(Show show, char separator) {
        return Cells.separatedBy(separator, of(show));
    }

    /** The running order as comma-separated values that a spreadsheet opens and {@link #read} takes. */
    public static String of(Show show) {
        StringBuilder text = new StringBuilder(HEAD).append("\r\n");
        for (Act act : show.acts()) {
            text.append(act.slotStart())
                    .append(',')
                    .append(number(act.slotMinutes()))
                    .append(',')
                    .append(CsvCell.quoted(act.title()))
                    .append(',')
                    .append(CsvCell.quoted(
                            show.performer(act.performer()).map(Performer::name).orElse("")))
                    .append(',')
                    .append(CsvCell.quoted(
                            show.aircraft(act.airframe()).map(Aircraft::name).orElse("")))
                    .append("\r\n");
        }
        return text.toString();
    }

    static String number(double value) {
        return value == Math.rint(value)
                ? String.valueOf((long) value)
                : String.format(Locale.ROOT, "%.3f", value).replaceAll("0+$", "");
    }
}
