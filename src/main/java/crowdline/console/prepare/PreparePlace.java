package crowdline.console.prepare;

import crowdline.console.edit.Editing;
import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.passes.PassesHost;
import crowdline.console.place.EmptyShow;
import crowdline.console.place.LazyCard;
import crowdline.console.place.PlaceOrEmpty;
import crowdline.console.place.PlaceScreen;
import crowdline.console.place.Ways;
import crowdline.console.prepare.cells.CellsWindow;
import crowdline.console.prepare.figure.FigureCommands;
import crowdline.console.prepare.figure.Nudge;
import crowdline.console.prepare.figure.ShapePanel;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.prepare.page.Editor;
import crowdline.console.prepare.page.PrepareHost;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Tone;
import crowdline.edit.act.Edit;
import crowdline.measure.Measures;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import java.awt.Frame;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** The Prepare place, or how to open a show. */
public final class PreparePlace implements PlaceScreen {
    private final PlaceOrEmpty<PrepareView, PreparePanel> place;
    private final CommandTable commands;
    private Runnable metar = () -> {};
    private final Editor editor;
    private PassesHost passes = PassesHost.NONE;
    private PrepareHost host = PrepareHost.NONE;
    private Consumer<Mark> say = mark -> {};
    private Runnable changed = () -> {};
    private Consumer<Measures> read = measures -> {};
    private @Nullable PreparePanel panel;
    /** The show without an act that was asked for its day; null once it has one, or was edited. */
    private @Nullable Show begun;

    private Appearance worn;

    /**
     * @param editing the show that is edited
     * @param actions what each command does, for menus
     */
    public PreparePlace(Appearance appearance, Ways ways, Editing editing, Function<Command, Action> actions) {
        worn = appearance;
        editor = new Editor(
                editing,
                () -> host,
                why -> say.accept(
                        new Mark(Form.DIAMOND, Tone.CAUTION, worn.measures().told(why))));
        editing.onChange(() -> {
            if (panel != null && hasShow()) {
                panel.edited();
            }
        });
        Tools tools = new Tools(
                editor, () -> host, () -> passes, () -> changed.run(), actions, measures -> read.accept(measures));
        commands = CommandTable.of(Command.Scope.PREPARE)
                .on(Command.METAR, this::hasShow, () -> metar.run())
                .on(Command.PASTE_LIST, this::canEdit, () -> panel().pasteList())
                .on(Command.CELLS, this::canEdit, () -> cells(""))
                .on(
                        Command.MAKE_ACT,
                        () -> canEdit()
                                && panel().inList()
                                && panel().listPage().canMake(),
                        () -> panel().listPage().make())
                .on(
                        Command.ADD,
                        () -> isOn(Page.ACTS) || isOn(Page.PEOPLE) || isOn(Page.ANNOUNCEMENTS) || isOn(Page.DUTIES),
                        this::add)
                .on(
                        Command.REMOVE,
                        () -> hasActs() || isOn(Page.PEOPLE) || isOn(Page.ANNOUNCEMENTS) || isOn(Page.DUTIES),
                        this::remove)
                .on(Command.EARLIER, this::hasActs, () -> panel().acts().move(-1))
                .on(Command.LATER, this::hasActs, () -> panel().acts().move(1))
                .on(Command.DUPLICATE, this::hasActs, () -> panel().acts().duplicate())
                .on(Command.TO_THE_LEFT, this::hasActs, () -> nudge(Nudge.ALONG, -50))
                .on(Command.TO_THE_RIGHT, this::hasActs, () -> nudge(Nudge.ALONG, 50))
                .on(Command.HIGHER, this::hasActs, () -> nudge(Nudge.HEIGHT, 50))
                .on(Command.LOWER, this::hasActs, () -> nudge(Nudge.HEIGHT, -50))
                .on(Command.LONGER, this::hasActs, () -> nudge(Nudge.LENGTH, 1))
                .on(Command.SHORTER, this::hasActs, () -> nudge(Nudge.LENGTH, -1))
                .on(
                        Command.LAY_OUT,
                        this::hasActs,
                        () -> panel().acts().act().commands().ifPresent(FigureCommands::layOut))
                .on(
                        Command.DRAFT_FIGURE,
                        this::hasActs,
                        () -> panel().acts().act().commands().ifPresent(FigureCommands::draft))
                .on(
                        Command.DRAFT_ACT,
                        this::hasActs,
                        () -> panel().acts().act().commands().ifPresent(FigureCommands::draftAct))
                .on(Command.PAGE_ACTS, this::canEdit, () -> panel().turn(Page.ACTS))
                .on(Command.PAGE_SHOW, this::canEdit, () -> panel().turn(Page.SHOW))
                .on(Command.PAGE_AIRCRAFT, this::canEdit, () -> panel().turn(Page.AIRCRAFT))
                .on(Command.PAGE_PEOPLE, this::canEdit, () -> panel().turn(Page.PEOPLE))
                .on(Command.PAGE_ANNOUNCEMENTS, this::canEdit, () -> panel().turn(Page.ANNOUNCEMENTS))
                .on(Command.PAGE_DUTIES, this::canEdit, () -> panel().turn(Page.DUTIES))
                .filled();
        place = new PlaceOrEmpty<>(
                "Prepare",
                appearance,
                new LazyCard<>(
                        appearance, a -> made(new PreparePanel(a, tools)), PreparePanel::show, PreparePanel::wear),
                ways);
    }

    /** Makes an edit that was asked for elsewhere, as those of this place are made. */
    public void make(Edit edit) {
        editor.make(edit);
    }

    private PreparePanel made(PreparePanel now) {
        panel = now;
        return now;
    }

    private PreparePanel panel() {
        return Objects.requireNonNull(panel, "the panel is there before anything can be done in it");
    }

    private boolean isOn(Page page) {
        return canEdit() && !panel().inList() && panel().page() == page;
    }

    private boolean hasActs() {
        return isOn(Page.ACTS) && panel().acts().hasActs();
    }

    private void nudge(Nudge what, double by) {
        panel().acts().act().commands().ifPresent(c -> c.nudge(what, by));
    }

    private void remove() {
        if (isOn(Page.PEOPLE)) {
            panel().people().remove();
        } else if (isOn(Page.ANNOUNCEMENTS)) {
            panel().announcements().remove();
        } else if (isOn(Page.DUTIES)) {
            panel().duties().remove();
        } else {
            panel().acts().remove();
        }
    }

    /** A figure where the figures are aimed at, else an act; on the pages of people and announcements one of those. */
    private void add() {
        if (isOn(Page.PEOPLE)) {
            panel().people().add();
        } else if (isOn(Page.ANNOUNCEMENTS)) {
            panel().announcements().add();
        } else if (isOn(Page.DUTIES)) {
            panel().duties().add();
        } else if (panel().acts().act().shapeInWork().isPresent()) {
            panel().acts().act().shapeInWork().ifPresent(ShapePanel::add);
        } else if (panel().acts().aimsAtFigures() && panel().acts().hasActs()) {
            panel().acts().act().add();
        } else {
            panel().pasteList();
        }
    }

    private void cells(String text) {
        if (SwingUtilities.getWindowAncestor(place) instanceof Frame frame) {
            CellsWindow.open(frame, worn, editor, host, text, () -> panel().turn(Page.ACTS));
        }
    }

    /**
     * Takes a file of text as a pilot's list, and a table as cells, where a show is edited.
     *
     * @param comes brings this place in front, once the file is read
     * @return false if it is neither by its name
     */
    public boolean takes(Path file, Runnable comes) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        boolean isTable = name.matches(".*\\.(csv|tsv)");
        if (!editor.isOpen() || !(isTable || name.matches(".*\\.(txt|text|eml)"))) {
            return false;
        }
        host.text(
                file,
                text -> {
                    comes.run();
                    // The panel may be made only now that it is looked at.
                    SwingUtilities.invokeLater(() -> {
                        if (!canEdit()) {
                            editor.refuse(
                                    file.getFileName() + " comes too soon; drop it again once the acts are there");
                        } else if (isTable) {
                            cells(text);
                        } else {
                            pasteList(text);
                        }
                    });
                },
                editor::refuse);
        return true;
    }

    private boolean canEdit() {
        return hasShow() && panel != null && editor.isOpen();
    }

    /**
     * Who serves it.
     *
     * @param deciding asked when somebody decides about a pass
     * @param editing asked for edits that take time
     * @param pasteMetar asks for the air of the day
     * @param saying told why something cannot be
     * @param reading told what speeds and heights are to be read in
     */
    public void serve(
            PassesHost deciding,
            PrepareHost editing,
            Runnable pasteMetar,
            Consumer<Mark> saying,
            Consumer<Measures> reading) {
        read = reading;
        passes = deciding;
        host = editing;
        metar = pasteMetar;
        say = saying;
    }

    /** Told when what can be done here may have changed. */
    public void onChange(Runnable told) {
        changed = told;
    }

    /** Leaves the page that is open over the acts; false if none is. */
    public boolean back() {
        return panel != null && panel.back();
    }

    @Override
    public boolean takeFocus() {
        return hasShow() ? panel != null && panel.takeFocus() : place.takeFocus();
    }

    @Override
    public JComponent component() {
        return place;
    }

    @Override
    public CommandTable commands() {
        return commands;
    }

    @Override
    public void refresh() {
        if (!hasShow()) {
            // Made only where it is looked at: a start in the middle of an act does not wait for it.
            if (place.show(null)) {
                SwingUtilities.invokeLater(place::takeFocus);
            }
        }
    }

    /** Whether it shows a show. */
    public boolean hasShow() {
        return place.hasShow();
    }

    /** Shows the show at a glance; null for none. One that was just begun is asked for its day and place first. */
    public void show(@Nullable PrepareView view) {
        place.show(view);
        if (view == null || !view.acts().isEmpty() || !editor.isUntouched()) {
            begun = null;
        } else if (!editor.now().equals(begun)) {
            begun = editor.now();
            place.ifShown(PreparePanel::begin);
        }
    }

    /** Asks for the list of an act, with this in the box already. */
    public void pasteList(String text) {
        panel().pasteList();
        panel().listPage().put(text);
    }

    /** Chooses an act, as soon as it is shown. */
    public void chooseAct(String actId) {
        place.ifShown(shown -> shown.acts().chooseNext(actId));
    }

    /** The act and the figure that are chosen; the show where there is none. */
    public RemarkPlace chosenPlace() {
        PreparePanel now = panel;
        return now == null || !hasShow() ? RemarkPlace.SHOW : now.acts().chosenPlace();
    }

    /** Turns from the remarks to the passes. */
    public void showPasses() {
        place.ifShown(PreparePanel::showPasses);
    }

    @Override
    public void showEmpty(EmptyShow.Shown shown) {
        place.showEmpty(shown);
    }

    @Override
    public void wear(Appearance appearance) {
        worn = appearance;
        place.wear(appearance);
    }
}
