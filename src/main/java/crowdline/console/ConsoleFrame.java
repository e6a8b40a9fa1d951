package crowdline.console;

import crowdline.console.edit.EditCommands;
import crowdline.console.edit.Editing;
import crowdline.console.foot.MessagesPanel;
import crowdline.console.glossary.GlossaryView;
import crowdline.console.keys.Command;
import crowdline.console.keys.CommandActions;
import crowdline.console.keys.CommandTable;
import crowdline.console.keys.KeyDispatcher;
import crowdline.console.live.OnAir;
import crowdline.console.paint.Mark;
import crowdline.console.pedals.PedalPresses;
import crowdline.console.place.EmptyShow;
import crowdline.console.place.Place;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.theme.Appearance;
import crowdline.console.walk.Walk;
import crowdline.console.window.Courier;
import crowdline.console.window.FileDrop;
import crowdline.console.window.NamedAction;
import crowdline.console.window.OnScreen;
import crowdline.console.words.PlaceFacts;
import crowdline.console.words.WordsPlace;
import crowdline.console.words.WordsPlan;
import crowdline.edit.Change;
import crowdline.measure.Measures;
import crowdline.show.DayAir;
import crowdline.show.RemarkPlace;
import crowdline.telemetry.serial.HeardSignal;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.WindowConstants;
import org.jspecify.annotations.Nullable;

/**
 * The window. Made and shown on the event thread; what it shows may be sent from any thread.
 *
 * <p>A place that moves with the clock is shown anew 20 times a second from what it was last told. Rows whose part of the
 * moment has not changed are not painted again, so only what means something moves.
 */
public final class ConsoleFrame extends JFrame {
    private static final String NAME = "Crowdline";
    private static final int FRAME_MS = 50;

    private final transient Host host;
    private final transient CommandActions actions = new CommandActions(this::carryOut);
    private final transient ConsoleMenus menus;
    private final ConsolePane pane;
    private final transient WindowCommands window;
    private final transient CommandTable commands;
    private final transient CommandTable steps;
    private final transient WordsPlace words;
    private final transient EditCommands edit;
    private final transient KeyDispatcher dispatcher;
    private final transient IncidentCall incident;
    private final transient PedalPresses pedals;
    private final transient PracticeGuide practice;
    private final Timer ticker = new Timer(FRAME_MS, e -> refresh());
    private final transient Courier<PrepareView> prepareCourier;
    private final transient Courier<EmptyShow.Shown> emptyCourier;
    private final transient Courier<GlossaryView> glossaryCourier;
    private final transient Courier<Boolean> liveCourier = new Courier<>(now -> changed());

    public ConsoleFrame(Host host, Appearance appearance) {
        super(NAME);
        this.host = host;
        Action demo = new NamedAction("Open the demo show", () -> openDemo(() -> {}));
        menus = new ConsoleMenus(
                actions,
                demo,
                new NamedAction(MessagesPanel.TITLE, this::readMessages),
                host::recent,
                file -> open(file),
                new UnitsMenu(() -> look().measures(), this::read));
        pane = new ConsolePane(appearance, actions, demo, () -> OpenAgain.of(host::recent, file -> open(file)));
        words = pane.words();
        edit = new EditCommands(pane.editing(), this, pane::inIncident, host::say, pane.foot()::unsay);
        pane.editing().onEdit(show -> pane.foot().forgetGoodNews());
        pane.editing().onChange(this::edited);
        prepareCourier = new Courier<>(view -> {
            pane.showPrepare(view);
            changed();
        });
        emptyCourier = new Courier<>(pane::showEmpty);
        glossaryCourier = new Courier<>(pane.glossary()::show);
        setJMenuBar(menus.bar());
        setContentPane(pane);
        pane.foot().bar().addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                readMessages();
            }
        });
        pane.setTransferHandler(new FileDrop(file -> open(file), host::say));
        Front front = new Front(this);
        incident = new IncidentCall(host, front, pane);
        pane.live().insteadOf(incident::page);
        Windows windows = new Windows(this, host, pane::appearance, pane::inIncident);
        serve(windows);
        TourGuide tour = new TourGuide(this, pane, actions, this::openDemo, this::go);
        dispatcher = new KeyDispatcher(actions, new FirstKeys(this, front, pane, tour, this::resume));
        pedals = new PedalPresses(actions, dispatcher, pane::showLearned);
        pedals.use(host.pedals().learned());
        practice = new PracticeGuide(this, host.practice(), pane, incident, host::say, host::nowS, this::go);
        window = new WindowCommands(this, host, pane, windows, pedals, edit, tour, practice, dispatcher);
        commands = window.table(this::go);
        steps = edit.steps(said -> pane.foot().say(host.nowS(), said));
        pane.allowing(commands::possible, steps::possible);
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                window.leave();
            }

            @Override
            public void windowOpened(WindowEvent event) {
                OnScreen.keep(ConsoleFrame.this);
            }

            @Override
            public void windowActivated(WindowEvent event) {
                edit.lookOutside();
                if (pane.inIncident()) {
                    // The window that was in front before is gone, and the word has to be heard.
                    pane.keepFocus();
                }
            }

            @Override
            public void windowDeactivated(WindowEvent event) {
                dispatcher.forget();
            }
        });
        setSize(1280, 800);
        setMinimumSize(new Dimension(800, 500));
        // Java is not always told where the platform puts a window, and the sky must know what it may not cover.
        setLocationRelativeTo(null);
    }

    private void serve(Windows windows) {
        pane.prepare()
                .serve(
                        host.passes(),
                        host.prepare(),
                        () -> windows.pasteMetar(pane.editing(), this::keepAir),
                        mark -> pane.foot().say(host.nowS(), mark),
                        this::read);
        pane.words().serve(host.edit(), mark -> pane.foot().say(host.nowS(), mark));
        edit.serve(host.edit(), host::useAir);
        pane.walk().serve(host::nowS, host::askForWalk);
        pane.debrief().serve(host::debrief);
        pane.glossary().serve(host::nowS, host.glossary(), mark -> pane.foot().say(host.nowS(), mark));
    }

    @Override
    public void addNotify() {
        super.addNotify();
        go(pane.place());
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addKeyEventDispatcher(dispatcher);
    }

    @Override
    public void removeNotify() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removeKeyEventDispatcher(dispatcher);
        ticker.stop();
        super.removeNotify();
    }

    @Override
    public void dispose() {
        practice.close();
        super.dispose();
    }

    /** Shows the show at a glance; from any thread. */
    public void showPrepare(PrepareView view) {
        prepareCourier.send(view);
    }

    /** Shows the glossary; from any thread. */
    public void showGlossary(GlossaryView view) {
        glossaryCourier.send(view);
    }

    /** Says this wherever a show would be; from any thread. */
    public void showEmpty(EmptyShow.Shown shown) {
        emptyCourier.send(shown);
    }

    /** Says this in the foot line until it can have been read; none is skipped; from any thread. */
    public void say(Mark mark) {
        SwingUtilities.invokeLater(() -> pane.foot().say(host.nowS(), mark));
    }

    /** Says these in the foot line until told others; from any thread. */
    public void stand(List<Mark> marks) {
        SwingUtilities.invokeLater(() -> pane.foot().stand(host.nowS(), List.copyOf(marks)));
    }

    /** Another show runs now, or none; from any thread. */
    public void onAir(@Nullable OnAir show) {
        SwingUtilities.invokeLater(() -> {
            pane.walk().walk(null);
            practice.day(show);
            changed();
        });
    }

    /** This is walked through from now on; from any thread. */
    public void walk(@Nullable Walk walk) {
        SwingUtilities.invokeLater(() -> {
            pane.walk().walk(walk);
            refresh();
        });
    }

    /** Says that the running show has changed, so that the place in front shows it without waiting for its next frame. */
    public void liveChanged() {
        liveCourier.send(Boolean.TRUE);
    }

    /** A pedal was worked; from any thread. None is skipped. */
    public void pedal(HeardSignal signal) {
        SwingUtilities.invokeLater(() -> pedals.hear(signal));
    }

    /** Lets a show be edited; from any thread. */
    public void edit(EditOpened opened) {
        SwingUtilities.invokeLater(() -> {
            // Asked for twice it is the same show, in which something may have been done since.
            if (!pane.editing().isOpen()) {
                if (opened.hasFile()) {
                    pane.editing().open(opened.called(), opened.show());
                } else {
                    pane.editing().openWithoutFile(opened.called(), opened.show());
                }
                words.opened(opened.basis());
            }
        });
    }

    /** Says that another show runs, or the same as its file has it now, so that it can be edited; from any thread. */
    public void openEdit() {
        SwingUtilities.invokeLater(() -> host.edit().open());
    }

    /** Says that what was edited is no longer the show that runs; from any thread. */
    public void forgetEdit() {
        SwingUtilities.invokeLater(() -> {
            pane.walk().closeNote();
            pane.editing().close();
        });
    }

    private void edited() {
        pane.allow();
        menus.steps(pane.editing().undoName(), pane.editing().redoName());
        setTitle(pane.editing().title().map(t -> t + " – ").orElse("") + NAME);
    }

    /** Puts the air of the day into the show, to be saved with it, and predicts by it; only the latter if none can be edited. */
    void keepAir(DayAir air) {
        Editing editing = pane.editing();
        if (editing.isOpen()) {
            pane.prepare().make(show -> Change.of("Change the day's air", show.withAir(air.toTenths())));
        } else {
            host.useAir(air, false);
        }
    }

    /** Says what was found about the plan of remarks and about whole acts; from any thread. */
    public void showPlan(WordsPlan plan) {
        SwingUtilities.invokeLater(() -> words.planned(plan));
    }

    /** Shows what was computed about each act and figure, where their remarks are written; from any thread. */
    public void showFacts(Map<RemarkPlace, PlaceFacts> facts) {
        SwingUtilities.invokeLater(() -> words.computed(facts));
    }

    /** Says whose pace the times are for, empty for the default's; from any thread. */
    public void showSpeaker(String speaker) {
        SwingUtilities.invokeLater(() -> {
            pane.foot().showSpeaker(speaker);
            retimed();
        });
    }

    /** Says that the running show was predicted again in other air; from any thread. */
    public void airChanged() {
        SwingUtilities.invokeLater(this::retimed);
    }

    /** Shows the show that runs at a glance, unless it is edited, and then what became of it; from any thread. */
    public void showRunning(PrepareView view) {
        SwingUtilities.invokeLater(() -> {
            if (pane.editing().isOpen()) {
                edit.retimed();
            } else {
                showPrepare(view);
            }
        });
    }

    private void retimed() {
        edit.retimed();
        words.retimed();
    }

    /** Tells the editing of the show something; from any thread. */
    public void tellEdit(Consumer<EditCommands> told) {
        SwingUtilities.invokeLater(() -> told.accept(edit));
    }

    /** Shows the show that was begun; from any thread. */
    public void showNew() {
        showEmpty(new EmptyShow.Shown("This show is not saved yet", "Save it with Ctrl+S; then it appears here."));
        SwingUtilities.invokeLater(() -> go(Place.PREPARE));
    }

    /** Goes to a place; on the event thread. */
    public void go(Place place) {
        pane.go(place);
        arrived(place);
    }

    private void arrived(Place place) {
        menus.chosen(place);
        if (pane.arrived()) {
            ticker.start();
        } else {
            ticker.stop();
        }
        refresh();
    }

    private void refresh() {
        pane.refresh();
    }

    /** The show has changed; what is made of it takes its time and is asked for only where it is looked at. */
    private void changed() {
        if (pane.place() == Place.WALK) {
            host.askForWalk();
        }
        refresh();
    }

    private void carryOut(Command command) {
        pane.foot().acted();
        switch (command.scope()) {
            case FIRST -> {
                incident.open();
                arrived(Place.LIVE);
            }
            case WINDOW -> commands.carryOut(command);
            case EDIT -> steps.carryOut(command);
            default -> pane.carryOut(command);
        }
    }

    private void open(Path file) {
        window.open(file);
    }

    private Appearance look() {
        return pane.appearance();
    }

    private void read(Measures measures) {
        window.wear(look().with(measures));
    }

    private void openDemo(Runnable then) {
        window.openDemo(then);
    }

    private void readMessages() {
        MessagesPanel.open(this, pane.appearance(), pane.foot().all(), host.nowS());
    }

    private void resume() {
        incident.leave();
        refresh();
    }
}
