package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.console.place.Place;
import java.awt.GraphicsEnvironment;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The debrief by keys alone in a real window: an act flown at 14:30, opened at 14:29, with a duty said in it. */
@Tag("window")
@Timeout(120)
class DebriefOnScreenTest {
    private static final Path SHOW = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    private static final Instant BEFORE = Instant.parse("2027-06-12T13:29:00Z");
    private static final String SOLO = "Quillan Tarrowby and the Sedgeby Jackanapes";

    @TempDir
    Path folder;

    @BeforeEach
    void needsAScreen() {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
    }

    /** Two minutes late: 14:32 to 14:34, a duty ticked a minute into it, a note. */
    private static void fly(ConsoleOnScreen screen) throws Exception {
        screen.jump(180);
        screen.press("SPACE");
        screen.jump(240);
        screen.press("U");
        screen.press("S");
        screen.press("ESCAPE");
        screen.press("J");
        screen.type("gusty");
        screen.press("ENTER");
        screen.jump(300);
        screen.press("E");
        screen.press("F6");
        assertThat(screen.isIn(Place.DEBRIEF)).isTrue();
    }

    private static void save(ConsoleOnScreen screen, String key, Path to) throws Exception {
        screen.give(key);
        screen.await("a file is asked for", () -> screen.focusIs("File Name"));
        screen.give("ctrl A");
        screen.type(to.toString());
        screen.give("ENTER");
        screen.awaitAlone();
        screen.await("it is saved", () -> screen.spoken("Messages").contains("Saved as " + to.getFileName()));
    }

    @Test
    void theChartsOfTheDayAndOfEachActAreReachedByKeysAndTellInWordsWhatTheyShow() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, SHOW, BEFORE)) {
            fly(screen);
            assertThat(screen.shows("Chart")).isFalse();
            screen.press("G");
            assertThat(screen.spoken("Chart"))
                    .startsWith("The day. ")
                    .contains(SOLO + ": planned for 14:30, began 14:32, 2 min late. Talk ")
                    .contains("Duty: Said, shown once and not marked (shown 14:29, 14:33): Please stay")
                    .contains("Note at 14:33:00")
                    .contains("gusty");
            assertThat(screen.focusIs("Chart")).as("the arrows scroll it").isTrue();
            screen.press("RIGHT");
            assertThat(screen.spoken("Chart"))
                    .startsWith(SOLO + ", full, 14:32:00 to 14:34:00. ")
                    .contains("Duty said 14:33:00: ");
            screen.press("RIGHT");
            assertThat(screen.spoken("Chart")).as("the last").startsWith(SOLO);
            screen.press("LEFT");
            assertThat(screen.spoken("Chart")).startsWith("The day. ");
            screen.press("G");
            assertThat(screen.shows("Chart")).isFalse();
            assertThat(screen.chosen("Acts flown")).isZero();
        }
    }

    @Test
    void theDayAndEverythingAreSavedByKeysAndTellTheSame() throws Exception {
        Path table = folder.resolve("told.csv");
        Path all = folder.resolve("told.json");
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, SHOW, BEFORE)) {
            fly(screen);
            save(screen, "D", table);
            save(screen, "J", all);
            assertThat(screen.notes()).as("J writes no note here").hasSize(1);
        }
        List<String> lines = Files.readAllLines(table);
        JsonNode day = JsonMapper.shared().readTree(Files.readString(all)).get("day");
        JsonNode flight = day.get("acts").get(0).get("flights").get(0);
        assertThat(flight.get("startS").asDouble()).isEqualTo(180);
        assertThat(flight.get("endS").asDouble()).isEqualTo(300);
        assertThat(lines)
                .filteredOn(l -> l.startsWith("act,"))
                .satisfiesExactly(
                        first -> assertThat(first)
                                .startsWith("act,\"" + SOLO + "\",14:30:00,14:32:00,14:34:00,2.0,")
                                .endsWith(",flown"),
                        second -> assertThat(second).endsWith(",not-flown"));
        for (boolean said : List.of(true, false)) {
            List<String> told = new ArrayList<>();
            for (JsonNode duty : day.get("duties")) {
                for (JsonNode one : duty.get("told")) {
                    if (one.get("said").asBoolean() == said) {
                        told.add("duty,\"" + duty.get("text").asString() + "\",,"
                                + LocalTime.of(14, 29)
                                        .plusSeconds((long) one.get("atS").asDouble()));
                    }
                }
            }
            assertThat(told).hasSize(said ? 1 : 4);
            assertThat(lines)
                    .filteredOn(l -> l.startsWith("duty,") && l.endsWith(said ? ",said" : ",shown"))
                    .zipSatisfy(told, (line, begin) -> assertThat(line).startsWith(begin));
        }
        assertThat(lines)
                .filteredOn(l -> l.startsWith("talk,"))
                .hasSize(day.get("talk").size());
    }

    @Test
    void lastYearsDayIsChosenByKeysAndStandsBesideThisOne() throws Exception {
        try (ConsoleOnScreen then = new ConsoleOnScreen(folder, SHOW, BEFORE.minus(365, ChronoUnit.DAYS))) {
            then.jump(60);
            then.press("SPACE");
            then.jump(360);
            then.press("E");
        }
        Path journal;
        try (Stream<Path> files = Files.list(folder.resolve("journals"))) {
            journal = files.filter(f -> f.toString().endsWith(".journal"))
                    .findFirst()
                    .orElseThrow();
        }
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, BEFORE)) {
            screen.await("it is open again", () -> screen.acts() == 2 && screen.runs(screen.edited()));
            screen.press("F5");
            fly(screen);
            screen.give("O");
            screen.await("a day is asked for", () -> screen.focusIs("Days flown"));
            assertThat(screen.chosen("Days flown")).as("the newest").isZero();
            screen.give("ESCAPE");
            screen.await("it was left", () -> screen.shows("Chart"));
            assertThat(screen.spoken("Chart")).startsWith("The day. ");
            screen.give("O");
            screen.await("a day is asked for again", () -> screen.focusIs("Days flown"));
            screen.give("ENTER");
            screen.await(
                    "it stands beside",
                    () -> screen.shows("Chart") && screen.spoken("Chart").startsWith("The day beside 12 June 2026. "));
            assertThat(screen.spoken("Chart"))
                    .contains("In brackets: 12 June 2026.")
                    .contains(SOLO + ": began 14:32 (14:30), lasted 2:00 (5:00), talk ")
                    .contains("Hettie Pellingdyke and the Larkmere Thistledown: not flown (not flown).");
            screen.press("RIGHT");
            assertThat(screen.spoken("Chart")).contains("12 June 2026: began 14:30, 5:00 flown, ");
            screen.press("LEFT");
            screen.give("O");
            screen.await("a day is asked for once more", () -> screen.focusIs("Days flown"));
            screen.give("END");
            screen.give("ENTER");
            screen.await(
                    "this day is alone again",
                    () -> screen.shows("Chart") && screen.spoken("Chart").startsWith("The day. "));
            screen.press("F2");
            screen.give("ctrl O");
            screen.await("a file is asked for", () -> screen.focusIs("File Name"));
            screen.type(journal.toString());
            screen.give("ENTER");
            screen.awaitAlone();
            screen.await(
                    "a journal opened is no show, but a day to set beside",
                    () -> screen.shows("Chart") && screen.spoken("Chart").startsWith("The day beside 12 June 2026. "));
        }
    }
}
