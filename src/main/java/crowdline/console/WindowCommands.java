package crowdline.console;

import crowdline.console.edit.EditCommands;
import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.keys.KeyDispatcher;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.pedals.PedalPresses;
import crowdline.console.place.Place;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.window.FullScreen;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** What the commands of the whole window do, and leaving the show that is open, which asks first. On the event thread. */
final class WindowCommands {
    /** How the name of a journal ends. */
    private static final String JOURNAL = ".journal";

    private static final Mark BEGINNING = new Mark(Form.RING, Tone.CALM, "Beginning a new show…");

    private final ConsoleFrame frame;
    private final Host host;
    private final ConsolePane pane;
    private final Windows windows;
    private final PedalPresses pedals;
    private final TourGuide tour;
    private final FullScreen fullScreen;
    private final SecondScreen second;
    private final EditCommands edit;
    private final KeyDispatcher keys;
    private final PracticeGuide practice;

    WindowCommands(
            ConsoleFrame frame,
            Host host,
            ConsolePane pane,
            Windows windows,
            PedalPresses pedals,
            EditCommands edit,
            TourGuide tour,
            PracticeGuide practice,
            KeyDispatcher keys) {
        this.keys = keys;
        edit.onBegun(() -> {
            keys.ready();
            pane.foot().unsay(BEGINNING.word());
        });
        this.practice = practice;
        this.edit = edit;
        this.frame = frame;
        this.host = host;
        this.pane = pane;
        this.windows = windows;
        this.pedals = pedals;
        this.tour = tour;
        fullScreen = new FullScreen(frame);
        second = new SecondScreen(pane.live()::running, host.second(), pane::appearance);
        pane.alsoInSight(second::isOpen);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent event) {
                second.close();
            }
        });
    }

    /** @param go goes to a place */
    CommandTable table(Consumer<Place> go) {
        BooleanSupplier outside = () -> !pane.inIncident();
        // What changes the look of the incident page, or closes the console, does not take it from the front.
        BooleanSupplier always = () -> true;
        CommandTable.Filling table = CommandTable.of(Command.Scope.WINDOW)
                .on(Command.NEW_SHOW, outside, this::begin)
                .on(Command.OPEN, outside, this::chooseShow)
                .on(Command.PRACTICE_FLIGHT, outside, practice::turn)
                .on(Command.RECEIVER, outside, windows::chooseReceiver)
                .on(Command.PEDALS, outside, () -> pedals.ask(frame, look(), host.pedals()))
                .on(
                        Command.PRINT,
                        () -> outside.getAsBoolean() && edit.now().isPresent(),
                        () -> edit.now().ifPresent(show -> windows.print(show, pane.place())))
                .on(Command.LISTEN, outside, host::listen)
                .on(Command.PACE, outside, windows::askPace)
                .on(Command.NEXT_SPEAKER, outside, () -> host.pace().useNext())
                .on(Command.THEME, always, () -> wear(look().with(Themes.after(look().theme()))))
                .on(Command.LARGER, always, () -> wear(look().with(look().zoom().larger())))
                .on(
                        Command.SMALLER,
                        always,
                        () -> wear(look().with(look().zoom().smaller())))
                .on(Command.FULL_SCREEN, always, fullScreen::turn)
                .on(Command.HELP, outside, pane::turnKeys)
                .on(Command.EXPLAIN, outside, () -> windows.explain(pane.place()))
                .on(Command.TOUR, outside, tour::next)
                .on(Command.TOUR_BACK, () -> outside.getAsBoolean() && tour.isOn(), tour::back)
                .on(Command.QUIT, always, this::leave);
        for (Place place : Place.values()) {
            table.on(place.command(), outside, () -> go.accept(place));
        }
        edit.fill(table, outside);
        second.fill(table);
        return table.filled();
    }

    private Appearance look() {
        return pane.appearance();
    }

    /** Puts everything into another look, and keeps it. */
    void wear(Appearance appearance) {
        LookAndFeel.wear(appearance);
        pane.wear(appearance);
        tour.wear(appearance);
        practice.wear(appearance);
        host.keep(appearance);
    }

    /** Begins an empty show, once nothing unsaved is lost by it. */
    private void begin() {
        if (host.mayOpen(null)) {
            edit.leaving(() -> {
                keys.await();
                // On a cold start it takes a moment.
                frame.say(BEGINNING);
                host.edit().begin();
            });
        }
    }

    private void chooseShow() {
        if (host.mayOpen(null)) {
            windows.chooseShow(this::open);
        }
    }

    /**
     * Opens a show, once nothing unsaved is lost by it; the journal of a day is set beside the one in Debrief, and a list or a
     * table is taken into the show that is edited.
     */
    void open(Path file) {
        if (host.debrief() != null && String.valueOf(file.getFileName()).endsWith(JOURNAL)) {
            pane.go(Place.DEBRIEF);
            pane.debrief().refresh();
            pane.debrief().beside(file);
        } else if (!pane.prepare().takes(file, () -> frame.go(Place.PREPARE)) && host.mayOpen(file)) {
            edit.leaving(() -> host.open(file));
        }
    }

    /**
     * The same with the demo show.
     *
     * @param then done once it is being opened
     */
    void openDemo(Runnable then) {
        if (host.mayOpenDemo()) {
            edit.leaving(() -> {
                host.openDemo();
                then.run();
            });
        }
    }

    /** Closes the window, once nothing unsaved is lost by it. */
    void leave() {
        if (host.mayClose()) {
            edit.leaving(host::quit);
        }
    }
}
