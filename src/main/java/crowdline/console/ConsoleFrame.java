package crowdline.console;

import crowdline.console.foot.MessagesPanel;
import crowdline.console.glossary.GlossaryView;
import crowdline.console.keys.Command;
import crowdline.console.keys.CommandActions;
import crowdline.console.keys.KeyDispatcher;
import crowdline.console.live.LiveView;
import crowdline.console.paint.Mark;
import crowdline.console.pedals.PedalPresses;
import crowdline.console.place.EmptyShow;
import crowdline.console.place.Place;
import crowdline.console.prepare.PrepareView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.window.Courier;
import crowdline.console.window.FileDrop;
import crowdline.console.window.FullScreen;
import crowdline.console.words.PlaceFacts;
import crowdline.console.words.WordsOpened;
import crowdline.console.words.WordsPlace;
import crowdline.console.words.WordsPlan;
import crowdline.show.DayAir;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.telemetry.serial.HeardSignal;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.WindowConstants;

/**
 * The window. Made and shown on the event thread; what it shows may be sent from any thread.
 *
 * <p>While Live or Walk through is shown it asks the host for the present moment 20 times a second. Rows whose part of the moment has
 * not changed are not painted again, so only what means something moves.
 */
public final class ConsoleFrame extends JFrame {
    private static final String NAME = "Crowdline";
    private static final int FRAME_MS = 50;

    private final transient Host host;
    private final transient CommandActions actions = new CommandActions(this::carryOut);
    private final transient ConsoleMenus menus;
    private final ConsolePane pane;
    private final transient PlaceCommands places;
    private final transient WordsPlace words;
    private final transient KeyDispatcher dispatcher;
    private final transient Windows windows;
    private final transient IncidentCall incident;
    private final transient FullScreen fullScreen = new FullScreen(this);
    private final transient PedalPresses pedals;
    private final Timer ticker = new Timer(FRAME_MS, e -> refresh());
    private final transient Courier<PrepareView> prepareCourier;
    private final transient Courier<EmptyShow.Shown> emptyCourier;
    private final transient Courier<GlossaryView> glossaryCourier;
    private final transient Courier<Boolean> liveCourier = new Courier<>(now -> refresh());

    public ConsoleFrame(Host host, Appearance appearance) {
        super(NAME);
        this.host = host;
        Action demo = new OpenDemo();
        menus = new ConsoleMenus(actions, demo, new ReadMessages(), host::recent, this::open);
        pane = new ConsolePane(appearance, actions, demo);
        pane.passesBy(host.passes());
        places = new PlaceCommands(host, pane);
        words = new WordsPlace(pane.words(), host.words(), host::useAir, this);
        pane.words().onChange(() -> {
            if (words.isUnsaved()) {
                pane.foot().forgetGoodNews();
            }
            pane.allow();
            setTitle(words.title().map(t -> t + " – ").orElse("") + NAME);
        });
        prepareCourier = new Courier<>(pane::showPrepare);
        emptyCourier = new Courier<>(pane::showEmpty);
        glossaryCourier = new Courier<>(pane::showGlossary);
        setJMenuBar(menus.bar());
        setContentPane(pane);
        pane.foot().bar().addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                readMessages();
            }
        });
        pane.setTransferHandler(new FileDrop(this::open, host::say));
        Front front = new Front(this);
        incident = new IncidentCall(host, front, pane);
        windows = new Windows(this, host, pane::appearance, pane::inIncident);
        dispatcher = new KeyDispatcher(actions, new FirstKeys(this, front, pane, this::resume));
        pedals = new PedalPresses(actions, dispatcher, pane::showLearned);
        pedals.use(host.pedals().learned());
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                leave();
            }

            @Override
            public void windowOpened(WindowEvent event) {
                keepOnScreen();
            }

            @Override
            public void windowActivated(WindowEvent event) {
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
        setLocationByPlatform(true);
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

    /** On a screen no larger than the window, its own border must not push the foot line off the edge. */
    private void keepOnScreen() {
        Rectangle room = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        Rectangle now = getBounds();
        if (!room.contains(now)) {
            int width = Math.min(now.width, room.width);
            int height = Math.min(now.height, room.height);
            setBounds(
                    Math.max(room.x, Math.min(now.x, room.x + room.width - width)),
                    Math.max(room.y, Math.min(now.y, room.y + room.height - height)),
                    width,
                    height);
        }
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

    /** Says that the running show has changed, so that the place in front shows it without waiting for its next frame. */
    public void liveChanged() {
        liveCourier.send(Boolean.TRUE);
    }

    /** A pedal was worked; from any thread. None is skipped. */
    public void pedal(HeardSignal signal) {
        SwingUtilities.invokeLater(() -> pedals.hear(signal));
    }

    /** Lets the words of a show be edited; from any thread. */
    public void showWords(WordsOpened opened) {
        SwingUtilities.invokeLater(() -> words.opened(opened));
    }

    /** Says that another show was opened, whose words are not yet here; from any thread. */
    public void forgetWords() {
        SwingUtilities.invokeLater(() -> {
            pane.walk().closeNote();
            words.forget(pane.place() == Place.WORDS);
        });
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
            words.retimed();
        });
    }

    /** Says that the running show was predicted again in other air; from any thread. */
    public void airChanged() {
        SwingUtilities.invokeLater(words::retimed);
    }

    /** Says that words were saved into a file of this name; from any thread. */
    public void wordsSaved(Show written, String file) {
        SwingUtilities.invokeLater(() -> words.saved(written, file));
    }

    /** Says that words could not be saved; a banner says why; from any thread. */
    public void wordsNotSaved() {
        SwingUtilities.invokeLater(words::notSaved);
    }

    /** Goes to a place; on the event thread. */
    public void go(Place place) {
        pane.go(place);
        arrived(place);
    }

    private void arrived(Place place) {
        menus.chosen(place);
        if (place == Place.LIVE || place == Place.WALK) {
            ticker.start();
        } else {
            ticker.stop();
        }
        if (place == Place.WORDS) {
            words.enter();
        }
        refresh();
    }

    private void refresh() {
        if (pane.place() == Place.LIVE) {
            LiveView now = host.live();
            pane.showLive(now, incident.page(now));
        } else {
            places.refresh();
        }
    }

    private void carryOut(Command command) {
        pane.foot().acted();
        switch (command) {
            case INCIDENT, INCIDENT_IN_LIVE -> {
                incident.open();
                arrived(Place.LIVE);
            }
            case OPEN -> chooseShow();
            case METAR -> windows.pasteMetar(this::keepAir);
            case RECEIVER -> windows.chooseReceiver();
            case PEDALS -> pedals.ask(this, pane.appearance(), host.pedals());
            case PACE -> windows.askPace();
            case NEXT_SPEAKER -> host.pace().useNext();
            case PREPARE -> go(Place.PREPARE);
            case WORDS -> go(Place.WORDS);
            case LIVE -> go(Place.LIVE);
            case WALK -> go(Place.WALK);
            case DEBRIEF -> go(Place.DEBRIEF);
            case GLOSSARY -> go(Place.GLOSSARY);
            case THEME ->
                wear(new Appearance(
                        Themes.after(pane.appearance().theme()),
                        pane.appearance().zoom()));
            case LARGER ->
                wear(new Appearance(
                        pane.appearance().theme(), pane.appearance().zoom().larger()));
            case SMALLER ->
                wear(new Appearance(
                        pane.appearance().theme(), pane.appearance().zoom().smaller()));
            case FULL_SCREEN -> fullScreen.turn();
            case HELP -> pane.showKeys(!pane.keysShown());
            case QUIT -> leave();
            case SAVE,
                    SAVE_AS,
                    UNDO,
                    REDO,
                    ADD_REMARK,
                    DELETE_REMARK,
                    REMARK_UP,
                    REMARK_DOWN,
                    PLAIN_WORDS,
                    FACT_REMARK,
                    INTO_LIVE -> words.carryOut(command);
            default -> {
                switch (command.scope()) {
                    case WALK -> places.walk(command);
                    case DEBRIEF -> places.debrief(command);
                    case GLOSSARY -> places.glossary(command);
                    default -> {
                        host.command(command);
                        refresh();
                    }
                }
            }
        }
    }

    private void wear(Appearance appearance) {
        LookAndFeel.wear(appearance);
        pane.wear(appearance);
        host.keep(appearance);
    }

    private void chooseShow() {
        if (host.mayOpen(null)) {
            windows.chooseShow(this::open);
        }
    }

    private void open(Path file) {
        if (host.mayOpen(file)) {
            words.leaving(() -> host.open(file));
        }
    }

    private void readMessages() {
        MessagesPanel.open(this, pane.appearance(), pane.foot().all(), host.nowS());
    }

    private void leave() {
        if (host.mayClose()) {
            words.leaving(host::quit);
        }
    }

    private void resume() {
        incident.leave();
        refresh();
    }

    /** Puts the air of the day into the show that is edited. */
    void keepAir(DayAir air) {
        words.keepAir(air);
    }

    /** Shows all messages of the session. */
    private final class ReadMessages extends AbstractAction {
        ReadMessages() {
            super("Messages of this session");
        }

        @Override
        public void actionPerformed(ActionEvent event) {
            readMessages();
        }
    }

    /** Opens the demo show. */
    private final class OpenDemo extends AbstractAction {
        OpenDemo() {
            super("Open the demo show");
        }

        @Override
        public void actionPerformed(ActionEvent event) {
            if (host.mayOpenDemo()) {
                words.leaving(host::openDemo);
            }
        }
    }
}
