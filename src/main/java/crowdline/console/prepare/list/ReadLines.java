package crowdline.console.prepare.list;

import crowdline.console.keys.Clicked;
import crowdline.console.keys.KeyOn;
import crowdline.console.paint.NamedList;
import crowdline.list.line.Corrected;
import crowdline.list.line.FigureList;
import crowdline.list.line.Meaning;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;
import org.jspecify.annotations.Nullable;

/** The figures that were read, in order, to be corrected by keys. */
final class ReadLines {
    private static final String NAME =
            "Figures read; 1, 2 or 3 chooses what a guess means, Enter asks for any figure, Delete leaves a line out, Alt"
                    + " with Up or Down moves it, Alt+L shows what was left out, Insert takes it in under its own words,"
                    + " Ctrl+Z takes the last of these back";

    private final DefaultListModel<ListView.Row> rows = new DefaultListModel<>();
    private final JList<ListView.Row> list = new NamedList<>(rows, ListView.Row::figure);
    private final Runnable changed;
    private final Deque<Corrected> earlier = new ArrayDeque<>();
    private @Nullable Corrected now;
    private boolean showsAsides;
    private boolean isTimed;
    private ListView view = ListView.NOTHING;

    /**
     * Nothing is read yet.
     *
     * @param asked told of a row that is to be another figure
     * @param changed told when something was corrected
     */
    ReadLines(Consumer<ListView.Row> asked, Runnable changed) {
        this.changed = changed;
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName(NAME);
        Runnable ask = () -> chosen(asked);
        KeyOn.all(
                list,
                Map.ofEntries(
                        Map.entry("DELETE", () -> chosen(this::leaveOut)),
                        Map.entry("1", () -> take(0)),
                        Map.entry("2", () -> take(1)),
                        Map.entry("3", () -> take(2)),
                        Map.entry("NUMPAD1", () -> take(0)),
                        Map.entry("NUMPAD2", () -> take(1)),
                        Map.entry("NUMPAD3", () -> take(2)),
                        Map.entry("INSERT", () -> chosen(this::takeIn)),
                        Map.entry("ENTER", ask),
                        Map.entry("alt UP", () -> move(-1)),
                        Map.entry("alt DOWN", () -> move(1)),
                        Map.entry("ctrl Z", this::takeBack)));
        list.addMouseListener(new Clicked(ask));
        list.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                if (event.getCause() == FocusEvent.Cause.TRAVERSAL_FORWARD
                        || event.getCause() == FocusEvent.Cause.TRAVERSAL_BACKWARD) {
                    chooseAGuess();
                }
            }
        });
    }

    JList<ListView.Row> list() {
        return list;
    }

    ListView view() {
        return view;
    }

    /** The list as it was corrected; null if nothing was read. */
    @Nullable
    FigureList corrected() {
        Corrected from = now;
        return from == null ? null : from.list();
    }

    /** Shows a list that was read anew; what is written as before stays corrected. */
    void read(FigureList found, boolean timed) {
        Corrected before = now;
        now = before == null ? Corrected.of(found) : before.carriedTo(found);
        // They were corrections of another list.
        earlier.clear();
        show(timed);
    }

    /** Shows it as what is only timed, or as what is flown by figures. */
    void show(boolean timed) {
        isTimed = timed;
        Corrected from = now;
        if (from == null) {
            return;
        }
        view = ListView.of(from, isTimed, showsAsides);
        int at = Math.max(0, list.getSelectedIndex());
        int key = at < rows.size() ? rows.get(at).key() : 0;
        rows.clear();
        rows.addAll(view.rows());
        if (!rows.isEmpty()) {
            goTo(at(key).orElse(Math.min(at, rows.size() - 1)));
        }
    }

    /** Begins with nothing corrected, and with what was left out hidden. */
    void clear() {
        now = null;
        earlier.clear();
        showsAsides = false;
        rows.clear();
        view = ListView.NOTHING;
    }

    /** Says what a row means, and goes on to the next guess if it was one. */
    void mean(ListView.Row row, Meaning meaning) {
        correct(from -> from.with(row.key(), meaning));
        if (row.isGuess()) {
            chooseAGuess();
        }
    }

    /** Shows what was left out, each in its place, and goes to the next of it unless a guess is chosen; or hides it again. */
    void showLeftOut() {
        showsAsides = !showsAsides;
        changed.run();
        if (showsAsides) {
            goToNext(row -> row.isGuess() || !row.flown());
        }
    }

    /** Chooses the row of a piece, if it is shown. */
    void choose(int key) {
        at(key).ifPresent(this::goTo);
    }

    private OptionalInt at(int key) {
        return IntStream.range(0, rows.size())
                .filter(i -> rows.get(i).key() == key)
                .findFirst();
    }

    private void goTo(int row) {
        list.setSelectedIndex(row);
        list.ensureIndexIsVisible(row);
    }

    /** Goes to the next line that is a guess unless one is chosen: its number is what is asked for. */
    private void chooseAGuess() {
        goToNext(ListView.Row::isGuess);
    }

    /** Goes to the next row of a kind, once round, from the one that is chosen on. */
    private void goToNext(Predicate<ListView.Row> kind) {
        int from = Math.max(0, list.getSelectedIndex());
        IntStream.range(0, rows.size())
                .map(i -> (from + i) % rows.size())
                .filter(i -> kind.test(rows.get(i)))
                .findFirst()
                .ifPresent(this::goTo);
    }

    private void chosen(Consumer<ListView.Row> done) {
        ListView.Row row = list.getSelectedValue();
        if (row != null) {
            done.accept(row);
        }
    }

    private void correct(UnaryOperator<Corrected> how) {
        Corrected before = now;
        if (before == null) {
            return;
        }
        Corrected after = how.apply(before);
        if (!after.equals(before)) {
            earlier.push(before);
            now = after;
            changed.run();
        }
    }

    private void take(int choice) {
        chosen(row -> {
            if (choice < row.choices().size()) {
                mean(row, new Meaning.Named(row.choices().get(choice)));
            }
        });
    }

    /** Leaves a line out of the act, or takes it in again. */
    private void leaveOut(ListView.Row row) {
        correct(from -> from.isOut(row.key()) ? from.asRead(row.key()) : from.without(row.key()));
    }

    /** Takes in what was left out: under its own words, or as the figure it was read as before somebody took it out. */
    private void takeIn(ListView.Row row) {
        correct(from -> from.isOut(row.key())
                ? from.asRead(row.key())
                : row.flown() ? from : from.with(row.key(), new Meaning.Own(row.text())));
    }

    /** Moves a row past its neighbour. */
    private void move(int by) {
        int to = list.getSelectedIndex() + by;
        if (to >= 0 && to < rows.size()) {
            int past = rows.get(to).key();
            chosen(row -> correct(from -> from.moved(row.key(), past)));
        }
    }

    private void takeBack() {
        if (!earlier.isEmpty()) {
            now = earlier.pop();
            changed.run();
        }
    }
}
