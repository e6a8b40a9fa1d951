package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.console.place.Place;
import crowdline.live.event.FlightEvent;
import crowdline.live.state.LiveState;
import crowdline.live.state.RemarkEntry;
import crowdline.live.state.Talk;
import crowdline.practice.Level;
import crowdline.practice.PracticeFlight;
import crowdline.practice.PracticePilot;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.storage.show.CatalogueFile;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A practice flight in a real window, by keys from the start to the score, and what is left of it for the day: nothing. */
@Tag("window")
@Timeout(300)
class PracticeOnScreenTest {
    private static final Path WRACKENHOLT = Path.of("src/test/resources/crowdline/shows/wrackenholt-evening.json");
    private static final Instant BEFORE = Instant.parse("2027-06-19T17:39:00Z");
    private static final long SEED = 7;

    @TempDir
    Path folder;

    @BeforeEach
    void needsAScreen() {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
    }

    /** Every file of the program with what is in it, but for edits, which open when they like, and what the journal has. */
    private Map<Path, Integer> files() throws IOException {
        Map<Path, Integer> all = new TreeMap<>();
        try (Stream<Path> walked = Files.walk(folder)) {
            for (Path file : walked.filter(Files::isRegularFile)
                    .filter(f -> !f.startsWith(folder.resolve("unsaved")))
                    .toList()) {
                all.put(file, isJournal(file) ? 0 : Arrays.hashCode(Files.readAllBytes(file)));
            }
        }
        return all;
    }

    private static boolean isJournal(Path file) {
        return file.toString().endsWith(".journal");
    }

    /** The day's clock goes on, and what was shown by it meanwhile is written down. */
    private static LiveState withoutTalk(LiveState state) {
        assertThat(state.talk().entries()).allMatch(entry -> entry.outcome() == RemarkEntry.Outcome.SHOWN);
        return new LiveState(
                state.showTitle(),
                state.day(),
                state.course(),
                new Talk(null, List.of()),
                state.listened(),
                state.incidents(),
                state.announced(),
                state.whoseTurn(),
                state.notes(),
                state.takeBacks());
    }

    private static PracticeFlight flight(Show show) throws Exception {
        Act act = show.acts().get(0);
        return new PracticePilot(show, CatalogueFile.shipped())
                .fly(act, act.variantUnder(show.air().cloudBaseFt()), Level.ONE, SEED);
    }

    private static boolean isPractice(ConsoleOnScreen screen) throws Exception {
        return screen.isIn(Place.LIVE)
                && screen.shows("Strip")
                && screen.strip().practice() != null;
    }

    @Test
    void theSkyHasAWindowOfItsOwnOnceItWasChosenAndTheKeysStayInLive() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, WRACKENHOLT, BEFORE)) {
            // Room for the sky beside it.
            SwingUtilities.invokeAndWait(() -> OpenWindows.size(1000, 700));
            screen.give("ctrl G");
            screen.awaitOpen(2);
            screen.await("the keys are in the list", () -> screen.focusIs("Act"));
            screen.give("alt W");
            screen.await("the keys are in the choice", () -> screen.focusIs("The sky in a window of its own"));
            screen.give("ENTER");
            screen.await("the practice is on the screen", () -> isPractice(screen));
            screen.awaitOpen(2);
            assertThat(screen.shows("The sky")).as("it is not in Live").isFalse();
            screen.give("ctrl G");
            screen.awaitAlone();

            screen.give("ctrl G");
            screen.awaitOpen(2);
            screen.await("the keys are in the list", () -> screen.focusIs("Act"));
            screen.give("ENTER");
            screen.await("the practice is on the screen", () -> isPractice(screen));
            screen.awaitOpen(2);
            assertThat(screen.shows("The sky")).as("it was remembered").isFalse();
        }
    }

    /** Chooses level one of the first act by its keys. */
    private static void start(ConsoleOnScreen screen) throws Exception {
        screen.give("ctrl G");
        screen.awaitOpen(2);
        screen.await("it can be started", () -> screen.canPress("Start"));
        for (String next : List.of("Act", "Level", "Number of the flight")) {
            screen.await("the keys are in " + next, () -> screen.focusIs(next));
            if (!next.startsWith("Number")) {
                screen.give("TAB");
            }
        }
        screen.give("ctrl A");
        screen.type(String.valueOf(SEED));
        screen.give("ENTER");
        screen.await("the practice is on the screen", () -> isPractice(screen));
        screen.awaitOpen(1);
    }

    @Test
    void aFlightIsPractisedOnFromTheStartToTheScoreAndTheDayKnowsNothingOfIt() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, WRACKENHOLT, BEFORE)) {
            PracticeFlight flight = flight(screen.loaded().show());
            LiveState day = screen.running().desk().snapshot().state();
            Path settings = folder.resolve("settings").resolve("settings.json");
            screen.await("that it was opened is kept", () -> Files.exists(settings));
            Map<Path, Integer> before = files();
            double zeroS = screen.nowS();
            start(screen);
            assertThat(screen.shows("The sky")).isTrue();

            Act act = screen.loaded().show().acts().get(0);
            String first = screen.loaded()
                    .words()
                    .name(act, flight.variant(), flight.pieces().get(0).figureId());
            screen.jump(zeroS + flight.startS() + 1);
            screen.give("SPACE");
            screen.await(
                    "its figure is on the screen", () -> screen.now().name().equals(first));
            assertThat(screen.spoken("Strip")).startsWith("PRACTICE");

            screen.jump(zeroS + flight.startS() + 20);
            screen.give("ctrl G");
            screen.await("the score is told", () -> screen.isIn(Place.DEBRIEF) && screen.focusIs("How it went"));
            assertThat(screen.says("level 1, flight " + SEED)).isTrue();
            screen.awaitAlone();
            screen.give("B");
            screen.await("the score is away", () -> !screen.says("level 1, flight " + SEED));
            screen.give("ctrl G");
            screen.awaitOpen(2);
            screen.await("it is told how it went before", () -> screen.says("flight " + SEED + ": "));
            screen.give("ESCAPE");
            screen.awaitAlone();
            screen.give("F5");
            screen.await("the day is in front", () -> screen.isIn(Place.LIVE));

            assertThat(screen.strip().practice()).isNull();
            assertThat(screen.shows("The sky")).isFalse();
            assertThat(withoutTalk(screen.running().desk().snapshot().state())).isEqualTo(withoutTalk(day));
            // But for how it went, which is the speaker's and not the day's.
            Map<Path, Integer> after = files();
            after.keySet().removeIf(file -> file.endsWith("practice.json"));
            assertThat(after).isEqualTo(before);
        }
    }

    @Test
    void itIsRefusedInAnActOfTheDayAndLeftWhenOneBegins() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, WRACKENHOLT, BEFORE)) {
            start(screen);
            screen.running().desk().post(FlightEvent.ActStarted::new);
            screen.await("the day is back", () -> !isPractice(screen));
            screen.await("it is said why", () -> screen.spoken("Messages").contains("so the practice was left"));

            screen.press("ctrl G");
            screen.await(
                    "it is said why not", () -> screen.spoken("Messages").contains("press E in Live when it is over"));
            screen.awaitAlone();
        }
    }

    @Test
    void theIncidentPageOfAPracticeStaysUntilItsWordIsTyped() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, WRACKENHOLT, BEFORE)) {
            start(screen);
            screen.press("F12");
            screen.running().desk().post(FlightEvent.ActStarted::new);
            screen.press("ctrl G");
            assertThat(screen.shows("Incident page")).isTrue();
            for (String letter : List.of("R", "E", "S", "U", "M", "E")) {
                screen.press(letter);
            }
            screen.await("the day is back", () -> !screen.shows("Incident page") && !isPractice(screen));
            assertThat(screen.running().desk().snapshot().state().incidents()).isEmpty();
        }
    }

    @Test
    void whoeverEndsTheActEarlyIsToldHowToGoOn() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, WRACKENHOLT, BEFORE)) {
            screen.give("ctrl G");
            screen.awaitOpen(2);
            screen.await("the keys are in the list", () -> screen.focusIs("Act"));
            screen.give("ENTER");
            screen.await("the practice is on the screen", () -> isPractice(screen));
            screen.give("SPACE");
            screen.await("it has begun", () -> screen.now().caption().startsWith("Flying now"));
            screen.give("E");
            screen.await("it is over", () -> screen.now().look().startsWith("Ctrl+G ends the practice"));
            screen.give("F6");
            screen.await("that it still flies", () -> screen.spoken("Messages").contains("Ctrl+G ends it"));
        }
    }
}
