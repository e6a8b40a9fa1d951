package crowdline.app.window;

import crowdline.app.sound.JavaSound;
import crowdline.app.sound.MicrophoneListener;
import crowdline.app.window.device.ByPosition;
import crowdline.app.window.device.LiveEar;
import crowdline.app.window.device.PedalListener;
import crowdline.app.window.device.ReceiverFinder;
import crowdline.app.window.device.Troubles;
import crowdline.app.window.edit.EditKeeper;
import crowdline.app.window.edit.PrepareKeeper;
import crowdline.app.window.glossary.DrillKeeper;
import crowdline.app.window.glossary.GlossaryFlights;
import crowdline.app.window.paper.PaperKeeper;
import crowdline.app.window.practice.PracticeKeeper;
import crowdline.app.window.show.Departure;
import crowdline.app.window.show.ShowOpener;
import crowdline.app.window.time.PaceInUse;
import crowdline.app.window.time.PaceKeeper;
import crowdline.app.window.time.PassesKeeper;
import crowdline.app.window.walk.WalkAndDebrief;
import crowdline.app.window.work.KeptSettings;
import crowdline.app.window.work.PendingWindow;
import crowdline.app.window.work.SecondKeeper;
import crowdline.console.ConsoleFrame;
import crowdline.console.Host;
import crowdline.console.debrief.DebriefHost;
import crowdline.console.edit.EditHost;
import crowdline.console.glossary.GlossaryHost;
import crowdline.console.incident.IncidentView;
import crowdline.console.keys.Command;
import crowdline.console.pace.PaceHost;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.passes.PassesHost;
import crowdline.console.prepare.page.PrepareHost;
import crowdline.console.preview.PaperHost;
import crowdline.console.receiver.Receivers;
import crowdline.console.second.SecondHost;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Tone;
import crowdline.live.now.Desk;
import crowdline.live.now.Ticker;
import crowdline.running.AircraftSource;
import crowdline.running.RunningShow;
import crowdline.running.WorkerThreads;
import crowdline.show.DayAir;
import crowdline.show.catalogue.Catalogue;
import crowdline.speech.pace.Paces;
import crowdline.storage.settings.DrillFile;
import crowdline.storage.settings.PaceShelf;
import crowdline.storage.unsaved.UnsavedShelf;
import crowdline.telemetry.serial.SerialPorts;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;

/** Answers the window. What takes time runs on the {@code io} thread. */
final class ConsoleHost implements Host {
    private static final System.Logger LOG = System.getLogger(ConsoleHost.class.getName());
    private static final double NANOS_PER_S = 1e9;
    private static final int WATCH_MS = 250;
    /** Asked to close again within this time in mid-act, the window closes. Tuned: long enough to read why it did not. */
    private static final double CLOSE_AGAIN_S = 10;

    private final Path demoShow;
    private final KeptSettings settings;
    private final ShowOpener opening;
    private final PendingWindow window;
    private final WorkerThreads flights;
    private final ExecutorService io;
    private final EditKeeper edit;
    private final ExecutorService edits = Executors.newSingleThreadExecutor(work -> new Thread(work, "edit"));
    private final PrepareKeeper prepare;
    private final GlossaryFlights glossary;
    private final ExecutorService papers = Executors.newSingleThreadExecutor(work -> new Thread(work, "paper"));
    private final PaperKeeper paper;
    private final PassesKeeper passes;
    private final AircraftSource aircraft;
    private final WalkAndDebrief rehearsal;
    private final Ticker ticker;
    private final PaceKeeper pace;
    /** On the event thread only. */
    private boolean closed;
    /** On the event thread only: when closing was asked for in mid-act. */
    private double askedToCloseS = Double.NEGATIVE_INFINITY;

    private final PracticeKeeper practice;
    private final PedalListener pedals;
    private final ReceiverFinder receivers;
    private final LiveEar ear;
    /** Looks how the devices stand. */
    private final Timer watch;

    ConsoleHost(
            Path demoShow,
            KeptSettings settings,
            ShowOpener opening,
            PendingWindow window,
            Supplier<Catalogue> catalogue,
            PassesKeeper passes,
            AircraftSource aircraft,
            SerialPorts ports,
            WalkAndDebrief rehearsal,
            PaceShelf shelf,
            PaceInUse paces,
            DrillFile drill,
            UnsavedShelf unsaved,
            Ticker ticker,
            Clock wall,
            WorkerThreads flights,
            ExecutorService io,
            PracticeKeeper practice) {
        this.practice = practice;
        this.demoShow = demoShow.toAbsolutePath();
        this.settings = settings;
        this.opening = opening;
        this.window = window;
        this.passes = passes;
        this.aircraft = aircraft;
        this.rehearsal = rehearsal;
        this.ticker = ticker;
        this.flights = flights;
        this.io = io;
        prepare = new PrepareKeeper(catalogue, paces, edits);
        glossary = new GlossaryFlights(
                catalogue,
                io,
                new DrillKeeper(
                        drill,
                        () -> PaceKeeper.speaker(paces.get().own()),
                        wall,
                        why -> opening.say(new Mark(Form.DIAMOND, Tone.CAUTION, why)),
                        io),
                () -> ByPosition.of(opening.running()));
        paper = new PaperKeeper(
                catalogue,
                opening::running,
                paces,
                rehearsal::flown,
                () -> settings.get().measures(),
                flights,
                papers);
        edit = new EditKeeper(
                catalogue,
                opening,
                unsaved,
                paces,
                wall,
                saved -> settings.change(s -> s.withRecent(saved)),
                window::send,
                this::unlessClosed);
        this.pace = new PaceKeeper(shelf, paces, opening::running, this::retimed, opening::say, io);
        receivers = new ReceiverFinder(aircraft, ports, opening::say, io);
        pedals = new PedalListener(
                settings.get().buttons(),
                ports,
                ticker::nanos,
                signal -> window.send(w -> w.pedal(signal)),
                learned -> settings.change(s -> s.withButtons(learned)),
                aircraft::name,
                io);
        ear = new LiveEar(
                new MicrophoneListener(new JavaSound()::open, SwingUtilities::invokeLater, LiveEar.WITHOUT),
                this::desk,
                listens -> settings.change(s -> s.withListens(listens)),
                opening::say);
        Troubles troubles = new Troubles(
                List.of(
                        new Troubles.Device(aircraft::trouble, aircraft::isOpen, "The receiver is giving positions"),
                        new Troubles.Device(pedals::trouble, pedals::isOpen, "The pedal is connected"),
                        new Troubles.Device(ear::trouble, ear::isOn, "The microphone is back")),
                opening::stand,
                opening::say);
        watch = new Timer(WATCH_MS, e -> {
            ear.look();
            troubles.look();
        });
        watch.start();
    }

    @Override
    public IncidentView incident(double openS) {
        return opening.incident(openS);
    }

    @Override
    public void askForWalk() {
        rehearsal.askForWalk();
    }

    @Override
    public @Nullable DebriefHost debrief() {
        return rehearsal.debrief();
    }

    @Override
    public double nowS() {
        return ticker.nanos() / NANOS_PER_S;
    }

    @Override
    public EditHost edit() {
        return edit;
    }

    @Override
    public PaperHost paper() {
        return paper;
    }

    @Override
    public GlossaryHost glossary() {
        return glossary;
    }

    @Override
    public PrepareHost prepare() {
        return prepare;
    }

    @Override
    public void findReceivers(Consumer<Receivers> found) {
        receivers.find(found);
    }

    @Override
    public void useReceiver(String where, double faster) {
        receivers.use(where, faster);
    }

    @Override
    public void listen() {
        ear.turn();
    }

    private @Nullable Desk desk() {
        RunningShow show = opening.running();
        return show == null ? null : show.desk();
    }

    /** Listens, if that was chosen when the program was last left. */
    void listenAgain() {
        if (settings.get().listens()) {
            ear.begin();
        }
    }

    @Override
    public PassesHost passes() {
        return passes;
    }

    @Override
    public PaceHost pace() {
        return pace;
    }

    @Override
    public PracticeKeeper practice() {
        return practice;
    }

    @Override
    public PedalListener pedals() {
        return pedals;
    }

    /** Does something on the io thread, unless the window was closed meanwhile and nobody waits for it. */
    private void unlessClosed(Runnable work) {
        try {
            io.execute(work);
        } catch (RejectedExecutionException e) {
            LOG.log(System.Logger.Level.DEBUG, "Not done, since the window is closed", e);
        }
    }

    private void retimed(Paces next) {
        String speaker = PaceKeeper.speaker(next.own());
        opening.usePaces(next);
        window.send(w -> w.showSpeaker(speaker));
        settings.change(s -> s.withSpeaker(speaker.isEmpty() ? null : speaker));
    }

    @Override
    public boolean mayOpen(@Nullable Path file) {
        Optional<String> refusal = opening.refusal(file == null ? null : file.toAbsolutePath());
        refusal.ifPresent(why -> refuse(Command.OPEN, why));
        return refusal.isEmpty();
    }

    /** Says why not in the foot line of every place and, as large as what any key does, in Live. */
    private void refuse(Command command, String why) {
        say(new Mark(Form.DIAMOND, Tone.CAUTION, why));
        RunningShow show = opening.running();
        if (show != null) {
            show.keys().refuse(command.key(), why);
        }
    }

    @Override
    public boolean mayOpenDemo() {
        return mayOpen(demoShow);
    }

    @Override
    public boolean mayClose() {
        RunningShow show = opening.running();
        Optional<String> warning =
                show == null ? Optional.empty() : Departure.warning(show, !demoShow.equals(opening.openFile()));
        boolean again = nowS() - askedToCloseS < CLOSE_AGAIN_S;
        if (warning.isEmpty() || again) {
            return true;
        }
        askedToCloseS = nowS();
        refuse(Command.QUIT, warning.get());
        return false;
    }

    @Override
    public void say(Mark mark) {
        opening.say(mark);
    }

    @Override
    public void open(Path file) {
        opening.open(file.toAbsolutePath(), opened -> settings.change(s -> s.withRecent(opened)));
    }

    @Override
    public void openDemo() {
        open(demoShow);
    }

    @Override
    public @Nullable DayAir air() {
        RunningShow show = opening.running();
        return show == null ? null : show.loaded().show().air();
    }

    @Override
    public void useAir(DayAir air, boolean toBeSaved) {
        opening.useAir(air, toBeSaved);
    }

    @Override
    public List<Path> recent() {
        return settings.get().recentFiles();
    }

    @Override
    public SecondHost second() {
        return new SecondKeeper(settings);
    }

    @Override
    public void keep(Appearance appearance) {
        settings.change(s -> s.withTheme(appearance.theme().id())
                .withZoom(appearance.zoom().percent() / 100.0)
                .withMeasures(appearance.measures()));
    }

    @Override
    public void quit() {
        if (closed) {
            return;
        }
        closed = true;
        watch.stop();
        window.send(ConsoleFrame::dispose);
        aircraft.close();
        pedals.close();
        ear.close();
        edits.shutdownNow();
        paper.stop();
        papers.shutdownNow();
        new Leaving(opening, demoShow, flights, io).begin();
    }
}
