package crowdline.app.window;

import crowdline.app.shell.Folders;
import crowdline.app.shell.WindowOpener;
import crowdline.app.window.practice.PracticeKeeper;
import crowdline.app.window.practice.PractisedKeeper;
import crowdline.app.window.show.ShowOpener;
import crowdline.app.window.time.PaceInUse;
import crowdline.app.window.time.PaceKeeper;
import crowdline.app.window.time.PassesKeeper;
import crowdline.app.window.walk.WalkAndDebrief;
import crowdline.app.window.work.KeptSettings;
import crowdline.app.window.work.PendingWindow;
import crowdline.console.ConsoleFrame;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.practice.PracticeChoice;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.PassIds;
import crowdline.loaded.ShowLoader;
import crowdline.running.AircraftSource;
import crowdline.running.WorkerThreads;
import crowdline.show.catalogue.Catalogue;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.settings.DrillFile;
import crowdline.storage.settings.PaceShelf;
import crowdline.storage.settings.PractisedFile;
import crowdline.storage.settings.Settings;
import crowdline.storage.settings.SettingsFile;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.unsaved.UnsavedShelf;
import crowdline.telemetry.serial.SerialPorts;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** The console, wired top to bottom, on the clocks of a machine. */
final class ConsoleWiring {
    private static final long LEAVES_WITHIN_S = 20;

    /** The thread that reads and writes files. */
    static final String IO = "io";

    private final ExecutorService io = Executors.newSingleThreadExecutor(work -> new Thread(work, IO));
    private final WorkerThreads flights = new WorkerThreads();
    private final SettingsFile.Reading reading;
    private final PaceInUse paces;
    private final PendingWindow window = new PendingWindow();
    private final AircraftSource aircraft;
    private final ShowOpener opening;
    private final ConsoleHost host;

    /** @param machine its clocks are used everywhere */
    ConsoleWiring(Folders folders, JournalMachine machine) {
        this(folders, machine, LoadedShow.FLIGHTS);
    }

    /** @param settled varied flights behind each band of a show once it has been open for a while, 1 or more */
    ConsoleWiring(Folders folders, JournalMachine machine, int settled) {
        SwingUtilities.invokeLater(LookAndFeel::loadType);
        SettingsFile settingsFile = new SettingsFile(folders.settings());
        reading = settingsFile.read();
        Settings settings = reading.settings();
        // Whoever asks for it is on the io thread, where it is done first.
        Supplier<Catalogue> catalogue = CompletableFuture.supplyAsync(CatalogueFile::shipped, io)::join;
        PaceShelf shelf = new PaceShelf(folders.paces());
        paces = new PaceInUse(shelf.pacesOf(settings.speaker()));
        ShowLoader loader = new ShowLoader(catalogue, paces, folders.passes(), flights, settled);
        SerialPorts ports = new SerialPorts(folders.serial());
        aircraft = new AircraftSource(machine.ticker()::nanos, ports);
        Clock clock = machine.wall().withZone(ZoneOffset.UTC);
        PassesKeeper passes = new PassesKeeper(
                folders.passes(),
                folders.demoShow(),
                new PassIds(clock, () -> ThreadLocalRandom.current().nextInt()),
                window::send,
                io);
        opening = new ShowOpener(folders.journals(), catalogue, loader, window, aircraft, io, machine, passes);
        WalkAndDebrief rehearsal = new WalkAndDebrief(
                opening, window, passes, folders.notes(), new JournalShelf(folders.journals(), machine, 0), io, clock);
        KeptSettings kept = new KeptSettings(settingsFile, settings, io);
        PracticeKeeper practice = new PracticeKeeper(
                opening::running,
                kept,
                machine,
                new AircraftSource(machine.ticker()::nanos, ports),
                ThreadLocalRandom.current().nextLong(1, PracticeChoice.MOST),
                why -> opening.say(new Mark(Form.DIAMOND, Tone.CAUTION, why)),
                io,
                new PractisedKeeper(
                        new PractisedFile(folders.practised()),
                        () -> PaceKeeper.speaker(paces.get().own()),
                        machine.wall().withZone(ZoneId.systemDefault()),
                        why -> opening.say(new Mark(Form.DIAMOND, Tone.CAUTION, why)),
                        io));
        host = new ConsoleHost(
                folders.demoShow(),
                kept,
                opening,
                window,
                catalogue,
                passes,
                aircraft,
                ports,
                rehearsal,
                shelf,
                paces,
                new DrillFile(folders.drill()),
                new UnsavedShelf(folders.unsaved()),
                machine.ticker(),
                machine.wall().withZone(ZoneId.systemDefault()),
                flights,
                io,
                practice);
    }

    ShowOpener opening() {
        return opening;
    }

    AircraftSource aircraft() {
        return aircraft;
    }

    /** Leaves the program, and waits until nothing more goes to the disk. */
    void quit() throws InterruptedException, InvocationTargetException {
        SwingUtilities.invokeAndWait(host::quit);
        if (!io.awaitTermination(LEAVES_WITHIN_S, TimeUnit.SECONDS)) {
            throw new IllegalStateException("the program did not end within " + LEAVES_WITHIN_S + " s");
        }
    }

    /** Opens the window, and in it the show, the one that was open last, or none. */
    void open(@Nullable Path show, WindowOpener.Devices devices) {
        Settings settings = reading.settings();
        Stream.of(
                        Optional.ofNullable(reading.said()),
                        PaceKeeper.missing(settings.speaker(), paces.get().own()))
                .flatMap(Optional::stream)
                .forEach(said -> opening.say(new Mark(Form.DIAMOND, Tone.CAUTION, said)));
        Path first = show != null ? show : lastOpened(settings);
        // The show is read while the window is being made; the window appears once it is known what it will show first.
        if (first != null) {
            host.open(first);
        } else {
            opening.openNothing();
        }
        if (devices.receiver() != null) {
            host.useReceiver(devices.receiver(), devices.faster());
        }
        if (devices.pedal() != null) {
            host.pedals().use(devices.pedal());
        } else {
            host.pedals().listen();
        }
        SwingUtilities.invokeLater(() -> {
            Appearance appearance = appearance(settings);
            LookAndFeel.wear(appearance);
            ConsoleFrame frame = new ConsoleFrame(host, appearance);
            frame.showSpeaker(PaceKeeper.speaker(paces.get().own()));
            window.made(frame);
            host.listenAgain();
        });
    }

    /** The show that was open last: what was running goes on without a question. */
    private static @Nullable Path lastOpened(Settings settings) {
        return settings.recentFiles().stream()
                .findFirst()
                .filter(Files::isRegularFile)
                .orElse(null);
    }

    private static Appearance appearance(Settings settings) {
        int percent = (int) Math.round(settings.zoom() * 100);
        return new Appearance(
                Themes.byId(settings.theme()), new Zoom(Math.min(200, Math.max(100, percent))), settings.measures());
    }
}
