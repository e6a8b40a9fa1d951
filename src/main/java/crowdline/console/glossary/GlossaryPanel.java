package crowdline.console.glossary;

import crowdline.console.glossary.GlossaryView.EntryView;
import crowdline.console.glossary.GlossaryView.Sift;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.EveryLetter;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.TextMenu;
import crowdline.glossary.drill.Session;
import crowdline.sight.clue.WhatIsThat;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;
import java.util.function.DoubleSupplier;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The Glossary place: search and list at the left, the chosen figure or word large at the right. */
public final class GlossaryPanel extends JPanel {
    private final JTextField search = TextMenu.on(new JTextField());
    private final DefaultListModel<EntryView> model = new DefaultListModel<>();
    private final JList<EntryView> list = new JList<>(model);
    private final JButton sifting = new JButton();
    private final JTextArea count = PlainText.wrapped("How many pages", "");
    private final transient Deque<String> before = new ArrayDeque<>();
    private final EntryPage page;
    private final FigurePanel figure;
    private final OwnForm form;
    private final DrillPanel drillPanel;
    private final transient GlossaryHost host;
    private final AskPanel askPanel;
    private transient Sift sift = Sift.ALL;
    private transient @Nullable Drill drill;
    private boolean asking;
    private boolean writing;
    private transient Runnable changed = () -> {};
    private transient Appearance worn;
    private transient GlossaryView view = GlossaryView.EMPTY;

    /** With nobody to fly with another kind of aircraft, and no clock. */
    public GlossaryPanel(Appearance appearance) {
        this(appearance, GlossaryHost.NONE, () -> 0, () -> {});
    }

    /**
     * @param clockS seconds on a clock that never goes back
     * @param kept told when what is written in the form is to be kept
     */
    public GlossaryPanel(Appearance appearance, GlossaryHost host, DoubleSupplier clockS, Runnable kept) {
        form = new OwnForm(appearance, kept, this::leaveForm);
        worn = appearance;
        figure = new FigurePanel(appearance, host, clockS);
        page = new EntryPage(appearance, this::follow);
        drillPanel = new DrillPanel(appearance, clockS, this::write);
        this.host = host;
        askPanel = new AskPanel(appearance, this::found, () -> new Beliefs(host.believed()), () -> changed.run());
        search.putClientProperty("JTextField.placeholderText", "Search (Ctrl+F)");
        search.putClientProperty("JTextField.showClearButton", true);
        search.getAccessibleContext().setAccessibleName("Search every page");
        // Tab goes between the field and the list.
        count.setFocusable(false);
        search.getDocument().addDocumentListener(new EveryLetter(() -> refill()));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName("Pages");
        list.addListSelectionListener(e -> choose(list.getSelectedValue()));
        sifting.setFocusable(false);
        sifting.addActionListener(e -> siftOn());
        sift(Sift.ALL);
        getAccessibleContext().setAccessibleName("Glossary");
        wear(appearance);
    }

    /** Told whenever what can be done here may have changed. */
    void onChange(Runnable told) {
        changed = told;
    }

    public void show(GlossaryView next) {
        if (!next.equals(view)) {
            view = next;
            refill(false);
        }
    }

    /** Chooses a page by name, as when another place asks what it is; it takes away whatever keeps it out of the list. */
    public void choose(String name) {
        if (!select(name)) {
            sift(Sift.ALL);
            search.setText("");
            refill(false);
            select(name);
        }
    }

    private boolean select(String name) {
        for (int i = 0; i < model.size(); i++) {
            if (model.get(i).name().equals(name)) {
                list.setSelectedIndex(i);
                list.ensureIndexIsVisible(i);
                return true;
            }
        }
        return false;
    }

    /** Puts the cursor into the search, what is in there chosen, so that typing replaces it. */
    void find() {
        search.requestFocusInWindow();
        search.selectAll();
    }

    /** Figures, words, both, in turn. */
    void siftOn() {
        sift(sift.next());
        refill();
    }

    private void sift(Sift next) {
        sift = next;
        sifting.setText(next + " (Ctrl+K)");
        sifting.getAccessibleContext().setAccessibleName("The list has: " + next);
    }

    /** What is shown here. */
    GlossaryView view() {
        return view;
    }

    /** The page that is open; null if there is none. */
    @Nullable
    EntryView shown() {
        return list.getSelectedValue();
    }

    /** Whether something is being explained in own words. */
    boolean isWriting() {
        return writing;
    }

    /** The form for own words. */
    OwnForm form() {
        return form;
    }

    /** Opens the form in place of the page. */
    void openForm() {
        writing = true;
        wear(worn);
        form.takeFocus();
        changed.run();
    }

    /** Puts the page in its place again. */
    void leaveForm() {
        writing = false;
        wear(worn);
        list.requestFocusInWindow();
        changed.run();
        form.back();
    }

    /** To the next moment there is something to see in the figure. */
    public void nextMoment() {
        figure.step(true);
    }

    /** The figure in the air. */
    FigurePanel figure() {
        return figure;
    }

    boolean hasLink(int index) {
        EntryView now = list.getSelectedValue();
        return now != null && index < now.links().size();
    }

    /** Opens a page that is named on this one, from 0. */
    void follow(int index) {
        if (hasLink(index)) {
            follow(list.getSelectedValue().links().get(index));
        }
    }

    private void follow(String name) {
        EntryView from = list.getSelectedValue();
        choose(name);
        if (from != null) {
            before.push(from.name());
        }
    }

    boolean canGoBack() {
        return !before.isEmpty();
    }

    /** The page from which this one was opened. */
    void back() {
        if (canGoBack()) {
            choose(before.pop());
        }
    }

    /**
     * Begins to ask about figures, or ends it.
     *
     * @param seed the same seed asks the same questions
     */
    public void drill(long seed) {
        if (drill == null) {
            drill(seed, Set.of(), "");
        } else {
            drill = null;
            wear(worn);
            ask();
        }
    }

    /**
     * Begins to ask about figures.
     *
     * @param only the figures to ask about, or empty for all of them
     * @param of what these are, in words; empty for all of them
     */
    void drill(long seed, Set<String> only, String of) {
        drill = new Drill(
                new Session(view.questions(), only, host.remembered(), host.today(), seed, host::remember), of);
        wear(worn);
        ask();
    }

    private void write(String words) {
        Drill asking = drill;
        if (asking != null) {
            asking.write(words);
            ask();
        }
    }

    /** Asks what was seen, or asks no more. */
    public void ask(@Nullable WhatIsThat first) {
        asking = first != null;
        if (first != null) {
            askPanel.begin(first);
            drill = null;
            writing = false;
        }
        wear(worn);
        changed.run();
    }

    boolean asking() {
        return asking;
    }

    /** What is asked. */
    AskPanel asked() {
        return askPanel;
    }

    /** Opens the page of a figure that was found. */
    private void found(String name) {
        ask(null);
        choose(name);
    }

    public boolean drilling() {
        return drill != null;
    }

    /** How many answers there are to choose from in the drill; any of the digits goes on once it is answered. */
    int answers() {
        return drill == null ? 0 : drill.view().choices().size();
    }

    /** What is watched in the drill. */
    DrillPanel drillPanel() {
        return drillPanel;
    }

    /** Chooses a name in the drill, from 0. */
    public void answer(int index) {
        Drill asking = drill;
        if (asking != null) {
            asking.choose(index);
            ask();
        }
    }

    /** The next question of the drill. */
    public void nextQuestion() {
        Drill asking = drill;
        if (asking != null) {
            asking.next();
            ask();
        }
    }

    private void ask() {
        Drill asking = drill;
        if (asking != null) {
            drillPanel.ask(asking.view());
        }
        changed.run();
    }

    public void wear(Appearance appearance) {
        worn = appearance;
        // What was not in the window when the look changed still has the old one; see the last line.
        removeAll();
        String gap = appearance.room(16);
        if (drill != null || asking) {
            setLayout(new MigLayout("insets " + gap, "[0:0:,grow,fill]", "[0:0:,grow,fill]"));
            drillPanel.wear(appearance);
            askPanel.wear(appearance);
            add(drill != null ? drillPanel : askPanel, "grow, wmin 0, hmin 0");
            SwingUtilities.updateComponentTreeUI(this);
            return;
        }
        setLayout(
                new MigLayout("insets " + gap + ", gap " + gap + " 0px", "[24%!][0:0:,grow,fill]", "[0:0:,grow,fill]"));
        JPanel left = new JPanel(
                new MigLayout("insets 0, gap 0px " + appearance.room(8), "[0:0:,grow,fill]", "[][][0:0:,grow,fill][]"));
        search.setFont(appearance.plain(TextRole.SMALL));
        sifting.setFont(appearance.plain(TextRole.SMALL));
        list.setCellRenderer(new CellPainter<>(
                appearance,
                PageCell.isLarge(appearance) ? 70 : 52,
                e -> e.name() + ", " + e.family(),
                PageCell::paint));
        list.setBackground(appearance.palette().stage());
        JScrollPane scroll = new JScrollPane(list);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        count.setFont(appearance.plain(TextRole.BODY));
        count.setForeground(appearance.palette().soft());
        page.wear(appearance);
        left.add(search, "wrap");
        left.add(sifting, "growx, wmin 0, wrap");
        left.add(scroll, "grow, wrap, hmin 0");
        left.add(count, "growx, wmin 0");
        figure.wear(appearance);
        JPanel right = new JPanel(new MigLayout(
                "insets 0, gap " + gap + " " + gap + ", hidemode 3" + (PageCell.isLarge(appearance) ? ", flowy" : ""),
                PageCell.isLarge(appearance) ? "[0:0:,grow,fill]" : "[0:0:,grow 54,fill][0:0:,grow 46,fill]",
                PageCell.isLarge(appearance) ? "[0:0:,grow 50,fill][0:0:,grow 50,fill]" : "[0:0:,grow,fill]"));
        right.setOpaque(false);
        right.add(page, "grow, wmin 0, hmin 0");
        right.add(figure, "grow, wmin 0, hmin 0");
        add(left, "grow, wmin 0");
        form.wear(appearance);
        add(writing ? form : right, "grow, wmin 0, hmin 0");
        SwingUtilities.updateComponentTreeUI(this);
    }

    private void choose(EntryView entry) {
        if (entry != null) {
            page.show(entry);
            view.figure(entry.name()).ifPresent(shown -> figure.show(shown, entry.flown()));
            figure.setVisible(!entry.flown().isEmpty());
            changed.run();
        }
    }

    private void refill() {
        refill(!search.getText().isBlank());
    }

    /** @param best whether the best is opened, as for somebody who searches; else the page stays if it is still there */
    private void refill(boolean best) {
        EntryView chosen = list.getSelectedValue();
        String asked = search.getText().strip();
        model.clear();
        view.matching(asked, sift).forEach(model::addElement);
        if (model.isEmpty()) {
            count.setText("No page");
            if (!view.entries().isEmpty()) {
                figure.setVisible(false);
                page.showNothingWith(asked, sift);
            }
            return;
        }
        count.setText(model.size() + (model.size() == 1 ? " page" : " pages") + "; Ctrl+D starts the drill");
        if (best || chosen == null || !select(chosen.name())) {
            list.setSelectedIndex(0);
            list.ensureIndexIsVisible(0);
        }
    }
}
