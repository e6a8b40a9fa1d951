package crowdline.console.words;

import crowdline.console.keys.Clicked;
import crowdline.console.keys.Command;
import crowdline.console.keys.KeyOn;
import crowdline.console.theme.Appearance;
import crowdline.console.window.ContextMenu;
import crowdline.console.words.WordsView.PlaceView;
import crowdline.console.words.WordsView.RemarkRow;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.Action;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The Words place: where remarks belong at the left, the remarks and computed facts there, and the chosen one to write at the right. */
public final class WordsPanel extends JPanel {
    private final WordsList<PlaceView> places = new WordsList<>(
            "Where remarks belong", PlaceView::name, number -> change(open -> open.choosePlace(number)));
    private final WordsList<RemarkRow> remarks =
            new WordsList<>("Remarks", RemarkRow::text, number -> change(open -> open.choose(number)));
    private final FactsPanel facts = new FactsPanel(number -> change(open -> open.chooseFact(number)));
    private final RemarkPanel remark;
    private transient @Nullable WordsModel model;
    private transient Runnable changed = () -> {};
    /** What is shown; kept so that the model is not asked for it again. */
    private transient @Nullable WordsView shown;

    private boolean showing;
    /** True while a change is made here: it shows its own result. */
    private boolean changing;

    public WordsPanel(Appearance appearance) {
        remark = new RemarkPanel(appearance, this::typed);
        KeyOn.all(places.list(), Map.of("ENTER", this::toRemarks, "RIGHT", this::toRemarks));
        KeyOn.all(
                remarks.list(),
                Map.of(
                        "ENTER",
                        this::write,
                        "RIGHT",
                        this::write,
                        "LEFT",
                        () -> places.list().requestFocusInWindow()));
        remarks.list().addMouseListener(new Clicked(this::write));
        getAccessibleContext().setAccessibleName("Words");
        wear(appearance);
    }

    private void toRemarks() {
        if (hasRemark()) {
            remarks.list().requestFocusInWindow();
        }
    }

    private void write() {
        if (hasRemark()) {
            remark.write();
        }
    }

    /** Out of the chosen remark to the remarks; false if the keys are not in it. */
    boolean back() {
        return remark.hasKeys() && remarks.list().requestFocusInWindow();
    }

    /** Gives the remarks a menu of what can be done with them. */
    void offer(Function<Command, Action> actions) {
        ContextMenu.on(
                remarks.list(),
                actions,
                List.of(
                        Command.ADD_REMARK,
                        Command.REMARK_UP,
                        Command.REMARK_DOWN,
                        Command.PLAIN_WORDS,
                        Command.DELETE_REMARK));
    }

    /** Shows the words of a show; null for none. */
    public void show(@Nullable WordsModel next) {
        model = next;
        refresh();
    }

    /** Told whenever what can be done here may have changed. */
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
            places.list().requestFocusInWindow();
        }
    }

    boolean hasWords() {
        return shown != null;
    }

    boolean hasRemark() {
        WordsView view = shown;
        return view != null && view.page().isPresent();
    }

    boolean hasToAccept() {
        WordsView view = shown;
        return view != null
                && view.page().filter(WordsView.RemarkPage::acceptable).isPresent();
    }

    boolean hasDrafts() {
        WordsView view = shown;
        return view != null && view.drafts() > 0;
    }

    boolean hasFact() {
        WordsView view = shown;
        return view != null && view.facts().takesChosen();
    }

    /** Puts plain words behind the trade word at the caret. */
    void insertPlainWords(WordsModel open) {
        open.insertPlainWords(remark.caret()).ifPresent(caret -> {
            refresh();
            remark.caret(caret);
        });
    }

    /** The word that is chosen in the remark, or that one writes in. */
    String chosenWord() {
        return remark.chosenWord();
    }

    /** Begins to write the remark that was added. */
    void writeOn() {
        remark.writeOn();
    }

    void writeAnew() {
        remark.writeAnew();
    }

    /** Shows what the model has now. */
    public void refresh() {
        showing = true;
        try {
            WordsModel open = model;
            if (open == null) {
                shown = null;
                places.show(List.of());
                remarks.show(List.of());
                facts.blank();
                remark.blank("Loading the words…");
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
        places.show(view.places(), view.place());
        remarks.show(view.remarks(), view.remark());
        facts.show(view.facts());
        view.page().ifPresentOrElse(remark::show, () -> remark.blank("Nothing to say here yet. Ctrl+K adds a remark."));
    }

    public void wear(Appearance worn) {
        removeAll();
        String gap = worn.room(16);
        setLayout(new MigLayout(
                "insets " + gap + ", gap " + gap + " 0px", "[22%!][30%!][0:0:,grow,fill]", "[0:0:,grow,fill]"));
        places.list().setCellRenderer(WordsCells.places(worn));
        remarks.list().setCellRenderer(WordsCells.remarks(worn));
        places.list().setBackground(worn.palette().stage());
        remarks.list().setBackground(worn.palette().stage());
        facts.wear(worn);
        remark.wear(worn);
        add(places.scroll(), "grow, wmin 0, hmin 0");
        JPanel said = new JPanel(new MigLayout(
                "insets 0, gap 0 " + worn.room(8), "[0:0:,grow,fill]", "[0:0:,grow 42,fill][0:0:,grow 58,fill]"));
        said.add(remarks.scroll(), "grow, wmin 0, hmin 0, wrap");
        said.add(facts, "grow, wmin 0, hmin 0");
        add(said, "grow, wmin 0, hmin 0");
        add(remark, "grow, wmin 0, hmin 0");
        refresh();
        revalidate();
        repaint();
    }

    private void typed(RemarkDraft draft) {
        if (!showing) {
            // A document may not be changed while it tells of a change; what is shown beside it may.
            change(open -> open.type(draft));
        }
    }

    /** Changes the words, if any are open, and shows the result. */
    void change(Consumer<WordsModel> done) {
        WordsModel open = model;
        if (open != null) {
            changing = true;
            try {
                done.accept(open);
            } finally {
                changing = false;
            }
            refresh();
        }
    }

    /** Refreshes the panel if the show was changed elsewhere. */
    void follow() {
        WordsModel open = model;
        if (open != null && !changing && open.follow()) {
            refresh();
        }
    }
}
