package crowdline.console.edit;

import crowdline.console.edit.WordsView.PlaceView;
import crowdline.console.edit.WordsView.RemarkPage;
import crowdline.console.edit.WordsView.RemarkRow;
import crowdline.console.keys.Command;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import crowdline.speech.SpeechFinding;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The Words place: where remarks belong at the left, the remarks and computed facts there, and the chosen one to write at the right. */
public final class WordsPanel extends JPanel {
    /** From this zoom on fields take lines of their own; tuned for a window 1280 wide. */
    private static final double ROOMY_ZOOM = 1.3;

    private static final Mark NO_SHORT = new Mark(Form.RING, Tone.CALM, "No short form");

    private final DefaultListModel<PlaceView> places = new DefaultListModel<>();
    private final JList<PlaceView> placeList = list("Where remarks belong", places);
    private final DefaultListModel<RemarkRow> remarks = new DefaultListModel<>();
    private final JList<RemarkRow> remarkList = list("Remarks", remarks);
    private final DefaultListModel<SpeechFinding> findings = new DefaultListModel<>();
    private final JList<SpeechFinding> findingList = list("What listeners may not follow", findings);
    private final RemarkFields fields = new RemarkFields(this::typed);
    private final FactsPanel facts = new FactsPanel(this::chooseFact);
    private final MarkLine verdict;
    private final MarkLine shortVerdict;
    private final JTextArea spoken = PlainText.wrapped("What will be said", "");
    private final JTextArea room = PlainText.wrapped("Time there is, and the plan", "");
    private final JLabel findingsTitle = new JLabel();
    private final JTextArea problems = PlainText.wrapped("What cannot be used", "");
    private transient Appearance appearance;
    private transient @Nullable WordsModel model;
    private transient Runnable changed = () -> {};
    /** What is shown, so that nobody asks the model anew for it. */
    private transient @Nullable WordsView shown;

    private boolean showing;

    public WordsPanel(Appearance appearance) {
        this.appearance = appearance;
        verdict = new MarkLine("Time of the text", appearance);
        shortVerdict = new MarkLine("Time of the short form", appearance);
        placeList.addListSelectionListener(e -> choosePlace());
        remarkList.addListSelectionListener(e -> chooseRemark());
        findingList.setVisibleRowCount(2);
        findingList.addListSelectionListener(e -> pointOut());
        getAccessibleContext().setAccessibleName("Words");
        wear(appearance);
        fields.enable(false);
    }

    /** Shows the words of a show; null for none. */
    public void show(@Nullable WordsModel next) {
        model = next;
        refresh();
    }

    /** Told whenever what can be done, or what is saved, may have changed. */
    public void onChange(Runnable told) {
        changed = told;
    }

    public @Nullable WordsModel model() {
        return model;
    }

    /** Puts the focus where one begins: on the list of places, unless something here has it. */
    public void takeFocus() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        if (owner == null || !SwingUtilities.isDescendingFrom(owner, this)) {
            placeList.requestFocusInWindow();
        }
    }

    /** The title of what is shown; empty if no words are open. */
    public Optional<String> title() {
        return Optional.ofNullable(shown).map(WordsView::title);
    }

    /** The commands of this place that can be given now. */
    public Set<Command> possible() {
        WordsView view = shown;
        if (view == null) {
            return EnumSet.noneOf(Command.class);
        }
        Set<Command> possible = EnumSet.of(Command.ADD_REMARK, Command.SAVE, Command.SAVE_AS, Command.INTO_LIVE);
        if (view.page().isPresent()) {
            possible.addAll(
                    EnumSet.of(Command.DELETE_REMARK, Command.REMARK_UP, Command.REMARK_DOWN, Command.PLAIN_WORDS));
        }
        if (view.facts().chosen() >= 0) {
            possible.add(Command.FACT_REMARK);
        }
        if (view.canUndo()) {
            possible.add(Command.UNDO);
        }
        if (view.canRedo()) {
            possible.add(Command.REDO);
        }
        return possible;
    }

    /** Carries out a command that only changes the words. */
    public void carryOut(Command command) {
        WordsModel open = model;
        if (open == null) {
            return;
        }
        switch (command) {
            case ADD_REMARK -> open.add();
            case DELETE_REMARK -> open.delete();
            case REMARK_UP -> open.move(-1);
            case REMARK_DOWN -> open.move(1);
            case FACT_REMARK -> open.addFact();
            case UNDO -> open.undo();
            case REDO -> open.redo();
            case PLAIN_WORDS ->
                open.insertPlainWords(fields.text.getCaretPosition()).ifPresent(caret -> {
                    refresh();
                    fields.text.setCaretPosition(caret);
                });
            default -> {}
        }
        refresh();
        if (command == Command.ADD_REMARK) {
            fields.text.requestFocusInWindow();
            fields.text.selectAll();
        }
    }

    /** Shows what the model has now. */
    public void refresh() {
        showing = true;
        try {
            WordsModel open = model;
            if (open == null) {
                shown = null;
                places.clear();
                remarks.clear();
                fields.enable(false);
                facts.blank();
                blank();
            } else {
                show(open.view());
            }
        } finally {
            showing = false;
        }
        changed.run();
    }

    private void show(WordsView view) {
        shown = view;
        fill(places, view.places());
        placeList.setSelectedIndex(view.place());
        placeList.ensureIndexIsVisible(view.place());
        fill(remarks, view.remarks());
        if (view.remark() < 0) {
            remarkList.clearSelection();
        } else {
            remarkList.setSelectedIndex(view.remark());
            remarkList.ensureIndexIsVisible(view.remark());
        }
        facts.show(view.facts());
        fields.enable(view.page().isPresent());
        view.page().ifPresentOrElse(this::show, this::blank);
    }

    private void show(RemarkPage page) {
        fields.show(page);
        fields.underline(page, appearance);
        verdict.show(page.verdict());
        Mark shorter = page.shortVerdict();
        shortVerdict.show(shorter == null ? NO_SHORT : shorter);
        spoken.setText("Said: " + page.spoken());
        room.setText(page.room() + (page.planned().isEmpty() ? "" : " " + page.planned()));
        problems.setText(String.join(" ", page.problems()));
        fill(findings, page.findings());
        findingsTitle.setText(page.reads()
                + (page.reads().isEmpty() ? "" : " ")
                + (page.findings().isEmpty()
                        ? "Nothing was found that listeners may not follow"
                        : "Listeners may not follow:"));
    }

    private void blank() {
        fields.text.setText("");
        fields.shortText.setText("");
        spoken.setText("");
        room.setText(
                model == null
                        ? "The words come in a moment. If no show is open, open one with Ctrl+O."
                        : "Nothing to say here yet. Ctrl+N adds a remark.");
        problems.setText("");
        findings.clear();
        findingsTitle.setText(" ");
    }

    public void wear(Appearance worn) {
        appearance = worn;
        removeAll();
        String gap = worn.room(16);
        setLayout(new MigLayout(
                "insets " + gap + ", gap " + gap + " 0px", "[22%!][30%!][0:0:,grow,fill]", "[0:0:,grow,fill]"));
        placeList.setCellRenderer(WordsCells.places(worn));
        remarkList.setCellRenderer(WordsCells.remarks(worn));
        findingList.setCellRenderer(WordsCells.findings(worn));
        for (JList<?> each : List.of(placeList, remarkList, findingList)) {
            each.setBackground(worn.palette().stage());
        }
        fields.wear(worn);
        facts.wear(worn);
        verdict.dress(worn);
        shortVerdict.dress(worn);
        for (JTextArea each : List.of(spoken, room, problems)) {
            each.setFont(worn.plain(TextRole.BODY));
        }
        room.setForeground(worn.palette().soft());
        problems.setForeground(worn.palette().alarm());
        add(scroll(placeList), "grow, wmin 0, hmin 0");
        JPanel said = new JPanel(new MigLayout(
                "insets 0, gap 0 " + worn.room(8), "[0:0:,grow,fill]", "[0:0:,grow 42,fill][0:0:,grow 58,fill]"));
        said.add(scroll(remarkList), "grow, wmin 0, hmin 0, wrap");
        said.add(facts, "grow, wmin 0, hmin 0");
        add(said, "grow, wmin 0, hmin 0");
        JScrollPane page = new JScrollPane(new WordsPage(page(worn)));
        page.setBorder(null);
        page.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        page.getVerticalScrollBar().setUnitIncrement(worn.px(20));
        add(page, "grow, wmin 0, hmin 0");
        refresh();
        revalidate();
        repaint();
    }

    private JPanel page(Appearance worn) {
        boolean roomy = worn.zoom().factor() < ROOMY_ZOOM;
        JPanel page = new JPanel(new MigLayout(
                "insets 0 0 0 " + worn.room(6) + ", gap " + worn.room(8) + " " + worn.room(5),
                "[][0:0:,grow,fill][][0:0:,grow,fill]",
                (roomy ? "" : "[]") + "[][][" + worn.room(84) + ":,fill][][][][][][" + worn.room(70) + ":,grow,fill][]["
                        + worn.room(58) + ":,fill][][][]"));
        page.add(label("Kind", fields.kind, worn));
        page.add(fields.kind, roomy ? "growx" : "spanx, growx, wmin 0, wrap");
        page.add(fields.once, "spanx, wmin 0, wrap");
        page.add(label("What to say", fields.text, worn), "spanx, wrap");
        page.add(new JScrollPane(fields.text), "spanx, grow, wmin 0, wrap");
        page.add(verdict, "spanx, growx, wmin 0, wrap");
        page.add(spoken, "spanx, growx, wmin 0, wrap");
        page.add(room, "spanx, growx, wmin 0, wrap");
        page.add(problems, "spanx, growx, wmin 0, hidemode 3, wrap");
        findingsTitle.setFont(worn.plain(TextRole.LABEL));
        findingsTitle.setForeground(worn.palette().soft());
        page.add(findingsTitle, "spanx, growx, w 0:0:, wrap");
        page.add(scroll(findingList), "spanx, grow, wmin 0, wrap");
        page.add(label("Short form, for when time is short", fields.shortText, worn), "spanx, wrap");
        page.add(new JScrollPane(fields.shortText), "spanx, grow, wmin 0, wrap");
        page.add(shortVerdict, "spanx, growx, wmin 0, wrap");
        page.add(label("Weight", fields.weight, worn));
        page.add(fields.weight, "growx, wrap");
        page.add(label("Earliest, s", fields.earliest, worn));
        page.add(fields.earliest, "growx" + (roomy ? "" : ", wrap"));
        page.add(label("Latest end, s", fields.latest, worn));
        page.add(fields.latest, "growx");
        return page;
    }

    private static JLabel label(String words, Component of, Appearance worn) {
        JLabel label = new JLabel(words);
        label.setLabelFor(of);
        label.setFont(worn.plain(TextRole.LABEL));
        label.setForeground(worn.palette().soft());
        return label;
    }

    static <V> JList<V> list(String name, DefaultListModel<V> of) {
        JList<V> list = new JList<>(of);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName(name);
        return list;
    }

    static JScrollPane scroll(JList<?> list) {
        JScrollPane scroll = new JScrollPane(list);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }

    /** Only rows that changed are replaced, so that a letter typed does not repaint every list. */
    static <V> void fill(DefaultListModel<V> into, List<V> rows) {
        while (into.size() > rows.size()) {
            into.remove(into.size() - 1);
        }
        for (int i = 0; i < rows.size(); i++) {
            if (i >= into.size()) {
                into.addElement(rows.get(i));
            } else if (!into.get(i).equals(rows.get(i))) {
                into.set(i, rows.get(i));
            }
        }
    }

    private void typed(RemarkDraft draft) {
        WordsModel open = model;
        if (open != null && !showing) {
            open.type(draft);
            // A document may not be changed while it tells of a change; what is shown beside it may.
            refresh();
        }
    }

    private void choosePlace() {
        WordsModel open = model;
        if (open != null && !showing && placeList.getSelectedIndex() >= 0) {
            open.choosePlace(placeList.getSelectedIndex());
            refresh();
        }
    }

    private void chooseRemark() {
        WordsModel open = model;
        if (open != null && !showing && remarkList.getSelectedIndex() >= 0) {
            open.choose(remarkList.getSelectedIndex());
            refresh();
        }
    }

    private void chooseFact(int number) {
        WordsModel open = model;
        if (open != null && !showing) {
            open.chooseFact(number);
            refresh();
        }
    }

    private void pointOut() {
        SpeechFinding finding = findingList.getSelectedValue();
        if (!showing
                && finding != null
                && finding.toChar() <= fields.text.getDocument().getLength()) {
            fields.text.select(finding.fromChar(), finding.toChar());
        }
    }
}
