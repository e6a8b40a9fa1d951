package crowdline.console.words;

import crowdline.console.edit.EditHost;
import crowdline.console.edit.Editing;
import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.place.EmptyShow;
import crowdline.console.place.LazyCard;
import crowdline.console.place.PlaceOrEmpty;
import crowdline.console.place.PlaceScreen;
import crowdline.console.place.Ways;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Tone;
import crowdline.show.RemarkPlace;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.Action;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;

/** The Words place tied to the rest of the program. On the event thread. */
public final class WordsPlace implements PlaceScreen {
    private final WordsPanel panel;
    private final PlaceOrEmpty<Boolean, WordsPanel> place;
    private final CommandTable commands;
    private final Editing editing;
    private EditHost host = EditHost.NONE;
    /** Where the place was that was left for this one. */
    private RemarkPlace came = RemarkPlace.SHOW;

    private Consumer<String> explained = word -> {};
    private Consumer<Mark> says = mark -> {};

    /**
     * With no words yet.
     *
     * @param ways to a show
     * @param actions what each command does, for menus
     */
    public WordsPlace(Appearance appearance, Ways ways, Editing editing, Function<Command, Action> actions) {
        this.editing = editing;
        panel = new WordsPanel(appearance);
        panel.offer(actions);
        place = new PlaceOrEmpty<>(
                "The words",
                appearance,
                new LazyCard<>(appearance, worn -> panel, (made, there) -> {}, (made, worn) -> {}),
                ways);
        place.show(null);
        CommandTable.Filling table = CommandTable.of(Command.Scope.WORDS)
                .on(Command.ADD_REMARK, panel::hasWords, () -> {
                    change(WordsModel::add);
                    panel.writeAnew();
                })
                .on(Command.DELETE_REMARK, panel::hasRemark, () -> change(WordsModel::delete))
                .on(Command.REMARK_UP, panel::hasRemark, () -> change(model -> model.move(-1)))
                .on(Command.REMARK_DOWN, panel::hasRemark, () -> change(model -> model.move(1)))
                .on(Command.PLAIN_WORDS, panel::hasRemark, () -> change(panel::insertPlainWords))
                .on(Command.EXPLAIN_WORD, panel::hasRemark, () -> explained.accept(panel.chosenWord()))
                .on(Command.ACCEPT, panel::hasToAccept, () -> change(WordsModel::accept))
                .on(Command.ACCEPT_ALL, panel::hasDrafts, () -> change(this::acceptAll))
                .on(Command.FACT_REMARK, panel::hasFact, () -> change(WordsModel::addFact));
        commands = table.filled();
        editing.onChange(this::follow);
    }

    /** Who serves it, and who says in the foot line what was done. */
    public void serve(EditHost next, Consumer<Mark> foot) {
        host = next;
        says = foot;
    }

    /** Gives the keys to the text of the remark that is chosen. */
    public void writeOn() {
        panel.writeOn();
    }

    /** Told of a word that is to be explained in the glossary; empty for none in particular. */
    public void onExplain(Consumer<String> told) {
        explained = told;
    }

    /** Told whenever what can be done here may have changed. */
    public void onChange(Runnable told) {
        panel.onChange(told);
    }

    @Override
    public JComponent component() {
        return place;
    }

    /** There is a show, whose words may still have to be loaded. */
    public void hasShow() {
        place.show(Boolean.TRUE);
    }

    @Override
    public void showEmpty(EmptyShow.Shown shown) {
        place.showEmpty(shown);
    }

    @Override
    public CommandTable commands() {
        return commands;
    }

    /** Out of the remark that is written to the remarks; false if the keys are not in it. */
    public boolean back() {
        return panel.back();
    }

    @Override
    public boolean takeFocus() {
        if (!place.hasShow()) {
            return place.takeFocus();
        }
        panel.takeFocus();
        return true;
    }

    @Override
    public void wear(Appearance appearance) {
        panel.wear(appearance);
        place.wear(appearance);
    }

    /** Shows the words of a show; null for none. */
    public void show(@Nullable WordsModel words) {
        if (words != null) {
            hasShow();
        }
        panel.show(words);
    }

    /** Where every draft is accepted most of them are out of sight, so that how many there were is said. */
    private void acceptAll(WordsModel model) {
        int drafts = model.acceptAll();
        says.accept(new Mark(
                Form.DISC,
                Tone.GOOD,
                (drafts == 1 ? "1 draft is accepted" : drafts + " drafts are accepted") + "; Ctrl+Z takes that back"));
    }

    private void change(Consumer<WordsModel> step) {
        panel.change(step);
    }

    private void follow() {
        if (editing.isOpen()) {
            panel.follow();
        } else {
            panel.show(null);
        }
    }

    @Override
    public void arrive() {
        if (panel.model() == null) {
            host.open();
        }
    }

    /** The show that was opened for editing is judged by this. */
    public void opened(WordsBasis basis) {
        WordsModel model = new WordsModel(editing, basis);
        model.choosePlace(came.actId(), came.figureId());
        show(model);
    }

    /** Goes where another place is, unless it was there already when this was gone to before. */
    public void comeFrom(RemarkPlace there) {
        if (!there.equals(came)) {
            came = there;
            if (panel.model() != null) {
                change(model -> model.choosePlace(there.actId(), there.figureId()));
            }
        }
    }

    /** The figure or act whose remarks are shown. */
    public RemarkPlace chosenPlace() {
        WordsModel model = panel.model();
        return model == null ? RemarkPlace.SHOW : model.chosenPlace();
    }

    /** What was found about the plan of remarks and whole acts. */
    public void planned(WordsPlan plan) {
        WordsModel model = panel.model();
        if (model != null) {
            model.planned(plan);
            panel.refresh();
        }
    }

    /** What was computed about each act and figure. */
    public void computed(Map<RemarkPlace, PlaceFacts> facts) {
        WordsModel model = panel.model();
        if (model != null) {
            model.computed(facts);
            panel.refresh();
        }
    }

    /** Another speaker's times count from now on, or those of other air. */
    public void retimed() {
        panel.refresh();
    }
}
