package crowdline.console.prepare.list;

import crowdline.console.keys.KeyOn;
import crowdline.console.paint.EveryLetter;
import crowdline.console.paint.NamedList;
import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Fields;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.page.PrepareHost;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.edit.act.AddAct;
import crowdline.list.about.AboutAct;
import crowdline.list.about.SeveralActs;
import crowdline.list.about.WhatFlies;
import crowdline.list.line.FigureList;
import crowdline.show.Show;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Takes the list a pilot sent, shows at every letter what is read in it, and makes an act of it when told to. */
public final class ListPage extends JPanel {
    private final Fields fields = new Fields();
    private final JTextArea list = fields.area("The pilot's list", 10);
    private final DefaultListModel<ListView.Row> rows = new DefaultListModel<>();
    private final JList<ListView.Row> read = new NamedList<>(rows, ListView.Row::figure);
    private final JTextArea head = PlainText.wrapped("What was read", ListView.HOW);
    private final JTextArea wrong = PlainText.wrapped("What is wrong", "");
    private final ActForm form;
    private final JButton make = fields.button("Make the act   Ctrl+Enter");
    private final JButton leave = fields.button("Back   Esc");
    private final transient Supplier<PrepareHost> host;
    private final transient Runnable changed;
    private final transient Consumer<Added> made;
    private final Map<Integer, String> chosen = new HashMap<>();
    private boolean showsAsides;
    private transient @Nullable FigureList last;
    private transient @Nullable Show show;
    private transient @Nullable Show before;
    private transient ListView view = new ListView(java.util.List.of(), ListView.HOW, "", false);
    private transient Appearance appearance;

    /**
     * What is to be added.
     *
     * @param list null for an act of which only its length is known
     * @param minutes of its slot; null where they follow from the list
     */
    public record Added(
            @Nullable FigureList list,
            AddAct.Wanted wanted,
            @Nullable Double minutes) {}

    /**
     * @param made told what is to be made an act
     * @param back told when nothing is to be made
     */
    public ListPage(Appearance appearance, Tools tools, Consumer<Added> made, Runnable back) {
        this.appearance = appearance;
        host = tools.host();
        changed = tools.changed();
        this.made = made;
        list.putClientProperty("JTextArea.placeholderText", "loop, stall turn, slow roll …");
        list.getDocument().addDocumentListener(new EveryLetter(this::look));
        form = new ActForm(host, this::say);
        read.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        read.getAccessibleContext()
                .setAccessibleName(
                        "Figures read; 1, 2 or 3 chooses what a guess means, Delete leaves a line out, Alt+L shows what was left out, Insert takes it"
                                + " in under its own words");
        KeyOn.all(
                read,
                Map.ofEntries(
                        Map.entry("DELETE", this::leaveOut),
                        Map.entry("1", () -> choose(0)),
                        Map.entry("2", () -> choose(1)),
                        Map.entry("3", () -> choose(2)),
                        Map.entry("NUMPAD1", () -> choose(0)),
                        Map.entry("NUMPAD2", () -> choose(1)),
                        Map.entry("NUMPAD3", () -> choose(2)),
                        Map.entry("INSERT", this::takeIn),
                        Map.entry("ENTER", this::make)));
        read.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                if (event.getCause() == FocusEvent.Cause.TRAVERSAL_FORWARD
                        || event.getCause() == FocusEvent.Cause.TRAVERSAL_BACKWARD) {
                    chooseAGuess();
                }
            }
        });
        // Wherever the focus is: the menus would take it elsewhere.
        KeyOn.within(this, Map.of("alt L", this::showLeftOut));
        make.addActionListener(e -> make());
        leave.addActionListener(e -> back.run());
        getAccessibleContext().setAccessibleName("Add an act from a list");
    }

    /**
     * Begins an act behind those of a show: with what was left here before it was made an act, or was again since that was
     * taken back, or else with nothing.
     */
    public void begin(Show now) {
        if (before != null && !before.equals(now)) {
            clear();
        }
        before = null;
        show = now;
        form.begin(now);
        look();
        list.requestFocusInWindow();
    }

    /**
     * What stands here has become an act: the next one begins with nothing, unless it was taken back.
     *
     * @param without the show before it
     */
    public void made(Show without) {
        before = without;
    }

    private void clear() {
        chosen.clear();
        showsAsides = false;
        list.setText("");
        form.clear();
    }

    public void put(String text) {
        list.setText(text);
    }

    public boolean takeFocus() {
        return list.requestFocusInWindow();
    }

    public boolean canMake() {
        return make.isEnabled();
    }

    /** Makes the act, if one can be made of what stands here. */
    public void make() {
        FigureList from = last;
        if (!make.isEnabled()) {
            return;
        }
        boolean isListed = from != null && !list.getText().isBlank();
        // A second press makes no second act.
        make.setEnabled(false);
        wrong.setText("Making the act…");
        wrong.setForeground(appearance.palette().text());
        form.wanted()
                .ifPresent(wanted -> made.accept(new Added(
                        from == null || !isListed ? null : ListView.taken(from, chosen),
                        wanted,
                        form.minutes().orElse(null))));
    }

    private void look() {
        Show now = show;
        if (now != null) {
            host.get().read(now, list.getText(), this::found);
        }
    }

    private void found(FigureList found) {
        FigureList before = last;
        // What was chosen for a line that reads otherwise now was chosen for another.
        chosen.keySet().removeIf(key -> before == null || !written(before, key).equals(written(found, key)));
        last = found;
        form.offer(
                AboutAct.of(found),
                new WhatFlies(host.get().kinds()).in(found),
                !list.getText().isBlank());
        say();
    }

    /** What a choice was made for; nothing if there is no such line. */
    private static String written(FigureList list, int key) {
        if (key >= 0) {
            return key < list.lines().size() ? list.lines().get(key).text() : "";
        }
        return -1 - key < list.asides().size() ? list.asides().get(-1 - key).text() : "";
    }

    private void choose(int which) {
        int index = read.getSelectedIndex();
        if (index >= 0 && which < rows.get(index).choices().size()) {
            chosen.put(rows.get(index).key(), rows.get(index).choices().get(which));
            say();
            chooseAGuess();
        }
    }

    /** Goes to the next line that is a guess, once round, unless one is chosen: its number is what is asked for. */
    private void chooseAGuess() {
        int from = Math.max(0, read.getSelectedIndex());
        IntStream.range(0, rows.size())
                .map(i -> (from + i) % rows.size())
                .filter(i -> ListView.isGuess(rows.get(i), chosen))
                .findFirst()
                .ifPresent(i -> {
                    read.setSelectedIndex(i);
                    read.ensureIndexIsVisible(i);
                });
    }

    /** Leaves a line out of the act, or takes it in again. */
    private void leaveOut() {
        int index = read.getSelectedIndex();
        int key = index < 0 ? 0 : rows.get(index).key();
        if (key < 0) {
            chosen.remove(key);
        } else if (index >= 0 && !chosen.remove(key, ListView.LEFT_OUT)) {
            chosen.put(key, ListView.LEFT_OUT);
        }
        say();
    }

    /** Shows what was left out, each in its place, or hides it again. */
    private void showLeftOut() {
        showsAsides = !showsAsides;
        say();
    }

    /** Takes in what was left out: under its own words, or as the figure it was read as before somebody took it out. */
    private void takeIn() {
        int index = read.getSelectedIndex();
        if (index < 0) {
            return;
        }
        int key = rows.get(index).key();
        if (key < 0) {
            chosen.put(key, ListView.OWN_WORDS);
        } else {
            chosen.remove(key, ListView.LEFT_OUT);
        }
        say();
    }

    private void say() {
        FigureList found = last;
        if (found == null) {
            return;
        }
        view = ListView.of(found, chosen, form.isTimed(), showsAsides);
        int at = Math.max(0, read.getSelectedIndex());
        int key = at < rows.size() ? rows.get(at).key() : 0;
        rows.clear();
        rows.addAll(view.rows());
        if (!rows.isEmpty()) {
            read.setSelectedIndex(IntStream.range(0, rows.size())
                    .filter(i -> rows.get(i).key() == key)
                    .findFirst()
                    .orElse(Math.min(at, rows.size() - 1)));
            read.ensureIndexIsVisible(read.getSelectedIndex());
        }
        allow();
    }

    /** What was to be made an act cannot be: it can be tried again. */
    public void refused() {
        allow();
    }

    /** Says what is still missing where only a field is empty. */
    private void allow() {
        boolean isListed = !list.getText().isBlank();
        boolean isUsable = view.isUsable() || !isListed;
        String missing = !isUsable ? "" : form.missing(isListed);
        head.setText(view.head());
        boolean isMissing = !missing.isEmpty() && isUsable;
        String several = view.isUsable() ? SeveralActs.said(list.getText()) : "";
        wrong.setText(isMissing ? missing : several.isEmpty() ? view.wrong() : several);
        wrong.setForeground(
                isMissing ? appearance.palette().text() : appearance.palette().caution());
        make.setEnabled(isUsable && missing.isEmpty());
        changed.run();
    }

    public void wear(Appearance worn) {
        appearance = worn;
        removeAll();
        String gap = worn.room(12);
        setLayout(new MigLayout(
                "insets 0, gap " + gap + " " + worn.room(4),
                "[0:0:,grow 42,fill][0:0:,grow 58,fill]",
                "[][0:0:,grow,fill]" + worn.room(8) + "[][]"));
        fields.wear(worn);
        read.setCellRenderer(ReadCells.read(worn));
        read.setBackground(worn.palette().stage());
        head.setFont(worn.plain(TextRole.BODY));
        wrong.setFont(worn.strong(TextRole.BODY));
        add(fields.over(list, "The pilot's list"), "wmin 0");
        add(head, "wmin 0, wrap");
        add(Scrolling.down(list), "grow, wmin 0, hmin 0");
        add(Scrolling.down(read), "grow, wmin 0, hmin 0, wrap");
        form.wear(worn);
        add(form, "spanx, growx, wmin 0, wrap");
        add(wrong, "spanx, split 3, growx, wmin 0");
        add(leave, "growx 0, wmin 0");
        add(make, "growx 0, wmin 0");
        allow();
        revalidate();
        repaint();
    }
}
