package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Something is looked up by keys alone while an act is in the air. */
@Tag("window")
@Timeout(120)
class LookUpOnScreenTest {
    private static final Path SHOW = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    private static final Instant BEFORE = Instant.parse("2027-06-12T13:29:00Z");

    @TempDir
    Path folder;

    @BeforeEach
    void needsAScreen() {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
    }

    @Test
    void lettersFindDigitsChooseAndTheActIsSteeredMeanwhile() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, SHOW, BEFORE)) {
            screen.at(60);
            screen.press("SPACE");
            String first = screen.now().name();

            screen.press("L");
            screen.await("it takes the letters", () -> screen.focusIs("Look up"));
            screen.type("stal");
            assertThat(screen.spoken("Found")).contains("1: stall turn, Figure.");
            screen.type(" trun");
            assertThat(screen.spoken("Found")).contains("1: stall turn, Figure.");
            assertThat(screen.say()).as("the words stay in sight").isNotNull();
            assertThat(screen.now().name()).as("Space was a letter").isEqualTo(first);

            screen.at(70);
            screen.press("PAGE_DOWN");
            assertThat(screen.now().name()).as("a remote steps").isNotEqualTo(first);
            screen.press("PAGE_UP");
            assertThat(screen.now().name()).isEqualTo(first);
            assertThat(screen.spoken("Found")).contains("stall turn");

            screen.press("ESCAPE");
            assertThat(screen.shows("Found")).isFalse();
            screen.at(75);
            screen.press("SPACE");
            assertThat(screen.now().name()).as("the keys are Live's again").isNotEqualTo(first);

            screen.press("L");
            screen.type("loop");
            screen.press("2");
            assertThat(screen.stands("loop")).as("a digit is no letter").isTrue();
            screen.press("F12");
            screen.type("RESUME");
            screen.await("it is left", () -> screen.shows("Flying now"));
            assertThat(screen.shows("Found")).isFalse();
        }
    }

    @Test
    void theStripStaysInEveryOtherPlaceWhileAnActFlies() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, SHOW, BEFORE)) {
            screen.press("F2");
            assertThat(screen.shows("Strip of the act")).as("nothing flies").isFalse();
            screen.press("F5");
            screen.at(60);
            screen.press("SPACE");
            assertThat(screen.shows("Strip of the act")).as("Live has its own").isFalse();
            for (String place : List.of("F2", "F3", "F4", "F6", "F7")) {
                screen.press(place);
                screen.await(place + " shows the strip", () -> screen.shows("Strip of the act"));
            }
            screen.at(80);
            screen.await("it goes on", () -> screen.spoken("Strip of the act").contains(", 0:20, slot "));
            screen.press("F5");
            assertThat(screen.strip().timeInAct()).startsWith("0:20");
        }
    }
}
