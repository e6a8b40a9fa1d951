package crowdline.app;

import crowdline.console.ConsoleFrame;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import crowdline.show.Catalogue;
import crowdline.storage.CatalogueFile;
import crowdline.storage.PaceShelf;
import crowdline.storage.Settings;
import crowdline.storage.SettingsFile;
import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Opens the console window and wires it, top to bottom. */
final class ConsoleOpening implements Opening {
    private final Folders folders;

    ConsoleOpening(Folders folders) {
        this.folders = folders;
    }

    /** Why no window can be opened here, or null if one can. */
    static @Nullable String whyNoWindow() {
        if (GraphicsEnvironment.isHeadless()) {
            return "there is no display here";
        }
        try {
            Toolkit.getDefaultToolkit().getScreenSize();
            return null;
        } catch (AWTError | java.awt.HeadlessException e) {
            return "the display named in DISPLAY does not answer";
        }
    }

    @Override
    public int open(@Nullable Path show, Terminal terminal) {
        return open(show, Devices.NONE, terminal);
    }

    @Override
    public int open(@Nullable Path show, Devices devices, Terminal terminal) {
        String why = whyNoWindow();
        if (why != null) {
            terminal.complain(why + ", so the window cannot open; start it where there is a screen, or see crowdline"
                    + " --help for what works without one");
            return ExitCode.UNUSABLE;
        }
        SwingUtilities.invokeLater(LookAndFeel::loadType);
        ExecutorService io = Executors.newSingleThreadExecutor(work -> new Thread(work, "io"));
        SettingsFile settingsFile = new SettingsFile(folders.settings());
        SettingsFile.Reading reading = settingsFile.read();
        Settings settings = reading.settings();
        // Whoever asks for it is on the io thread, where it is done first.
        Supplier<Catalogue> catalogue = CompletableFuture.supplyAsync(CatalogueFile::shipped, io)::join;
        PaceShelf paces = new PaceShelf(folders.paces());
        PaceNow pace = new PaceNow(PaceDesk.first(paces, settings.speaker()));
        ShowLoader loader = new ShowLoader(catalogue, pace, folders.passes());
        WindowAhead window = new WindowAhead();
        Clock clock = Clock.systemUTC();
        AircraftSource aircraft = new AircraftSource(System::nanoTime);
        PassesDesk passes = new PassesDesk(folders.passes(), folders.demoShow(), PassIds.here(clock), window::send, io);
        ShowOpening opening =
                new ShowOpening(folders.journals(), catalogue, loader, window, aircraft, io, clock, passes);
        Rehearsal rehearsal = new Rehearsal(opening, passes, folders.notes(), io, clock);
        ConsoleHost host = new ConsoleHost(
                folders.demoShow(),
                settingsFile,
                settings,
                opening,
                window,
                catalogue,
                passes,
                aircraft,
                rehearsal,
                paces,
                pace,
                io);
        Path first = show != null ? show : lastOpened(settings);
        // The show is read while the window is made, and the window shown when it is known what it shows first.
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
            frame.showSpeaker(PaceDesk.speaker(pace.get()));
            List<Mark> marks = new ArrayList<>();
            Stream.of(Optional.ofNullable(reading.said()), PaceDesk.missing(settings.speaker(), pace.get()))
                    .flatMap(Optional::stream)
                    .forEach(said -> marks.add(new Mark(Form.DIAMOND, Tone.CAUTION, said)));
            if (!marks.isEmpty()) {
                frame.showBanners(marks);
            }
            window.made(frame);
        });
        return STAYS_OPEN;
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
        return new Appearance(Themes.byId(settings.theme()), new Zoom(Math.min(200, Math.max(100, percent))));
    }
}
