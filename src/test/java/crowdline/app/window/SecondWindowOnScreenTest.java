package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.app.shell.Folders;
import crowdline.app.window.second.WatchingWindow;
import crowdline.console.second.SecondWindow;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.state.WhoseTurn;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.settings.SecondLook;
import crowdline.storage.settings.SettingsFile;
import java.awt.Component;
import java.awt.GraphicsEnvironment;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.FutureTask;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The window of a co-commentator beside the console, by keys of the console alone. */
@Tag("window")
@Timeout(120)
class SecondWindowOnScreenTest {
    private static final Path SHOW = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    private static final Instant BEFORE = Instant.parse("2027-06-12T13:29:00Z");

    @TempDir
    Path folder;

    @BeforeEach
    void needsAScreen() {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
    }

    /** What is asked of the second window; null if it is not open. */
    private static <T> @Nullable T second(Function<SecondWindow, T> asked) throws Exception {
        FutureTask<@Nullable T> task = new FutureTask<>(() -> OpenWindows.windows()
                .filter(SecondWindow.class::isInstance)
                .map(w -> asked.apply((SecondWindow) w))
                .findFirst()
                .orElse(null));
        SwingUtilities.invokeLater(task);
        return task.get();
    }

    private static boolean says(String row, String words) throws Exception {
        return Boolean.TRUE.equals(second(window -> {
            Component found = OpenWindows.painted(window.getContentPane(), row);
            return found != null
                    && found.isShowing()
                    && String.valueOf(found.getAccessibleContext().getAccessibleDescription())
                            .contains(words);
        }));
    }

    @Test
    void itShowsWhatIsFlownAndWhoseTurnItIsAndNeverTakesTheKeys() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, SHOW, BEFORE)) {
            screen.press("ctrl F11");
            screen.await("it is open", () -> second(window -> true) != null);
            screen.await("nobody was handed anything", () -> says("Whose turn", "The commentator speaks"));
            screen.at(60);
            screen.press("SPACE");
            String flown = screen.now().name();
            screen.await("it shows what is flown", () -> says("Flying now", flown));

            screen.press("Y");
            screen.await("it is told", () -> says("Whose turn", "You speak next"));
            screen.press("Y");
            screen.await("and told again", () -> says("Whose turn", "The commentator speaks"));
            screen.press("Z");
            screen.await("taken back", () -> says("Whose turn", "You speak next"));

            screen.press("F12");
            screen.await("nobody speaks", () -> says("Whose turn", "Incident: say nothing"));
            assertThat(says("Flying now", "")).as("nothing else is shown then").isFalse();
            screen.type("RESUME");
            screen.await("it goes on", () -> says("Flying now", ""));

            screen.press("ctrl shift T");
            screen.press("ctrl shift PAGE_UP");
            screen.press("ctrl F11");
            screen.await("it is closed", () -> second(window -> true) == null);
        }
        SecondLook kept =
                new SettingsFile(folder.resolve("settings")).read().settings().second();
        assertThat(kept.theme()).isNotEqualTo(SecondLook.DEFAULT.theme());
        assertThat(kept.zoom()).isGreaterThan(1);
        assertThat(kept.place()).isNotNull();
    }

    /** As the program started again on the show: by its journal alone, which stays as it is. */
    @Test
    void aSecondProgramFollowsTheJournalAndChangesNothing() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, SHOW, BEFORE)) {
            screen.at(60);
            screen.press("SPACE");
            String flown = screen.now().name();
            screen.press("Y");
            Folders folders =
                    new Folders(folder.resolve("settings"), folder.resolve("journals"), folder.resolve("demo.json"));
            List<byte[]> before = journals();
            try (WatchingWindow watching = new WatchingWindow(
                    folders,
                    folder.resolve(SHOW.getFileName()),
                    new JournalMachine(() -> 0, () -> BEFORE.plusSeconds(62), "another boot"))) {
                watching.open();
                screen.await("it shows what is flown", () -> says("Flying now", flown));
                screen.await("whose turn it is", () -> says("Whose turn", "You speak next"));
                // The console may have written on meanwhile; nothing else may be there, and nothing before it be
                // changed.
                List<byte[]> after = journals();
                assertThat(after).hasSameSizeAs(before);
                for (int i = 0; i < before.size(); i++) {
                    assertThat(after.get(i)).startsWith(before.get(i));
                }

                // Its window has the keys now, and the console goes on by itself.
                happens(screen, atS -> new LiveEvent.HandedOver(atS, false));
                screen.await("it follows", () -> says("Whose turn", "The commentator speaks"));
                happens(screen, IncidentEvent.IncidentOpened::new);
                screen.await("nobody speaks", () -> says("Whose turn", "Incident: say nothing"));
                happens(screen, atS -> new IncidentEvent.IncidentClosed(atS, true));
                screen.await("it goes on", () -> says("Flying now", ""));
                second(window -> {
                    window.dispose();
                    return true;
                });
                Path look = folder.resolve("settings").resolve("second").resolve("settings.json");
                screen.await("how it looks is kept beside", () -> Files.exists(look));
            }
            assertThat(screen.running().desk().snapshot().state().whoseTurn()).isEqualTo(WhoseTurn.BY_PLAN);
        }
    }

    private static void happens(ConsoleOnScreen screen, DoubleFunction<LiveEvent> event) {
        screen.running().desk().post(event);
    }

    private List<byte[]> journals() throws Exception {
        List<byte[]> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder.resolve("journals"))) {
            for (Path file : files.sorted().toList()) {
                all.add(Files.readAllBytes(file));
            }
        }
        return all;
    }
}
