package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.say.SayView;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledIf;
import org.junit.jupiter.api.io.TempDir;

/**
 * A gap before the first act by keys alone in a real window: opened at 14:22, the act is at 14:30. Of the two longer pieces one fits
 * into it, and the other takes longer than the gap does.
 */
@Tag("window")
@Timeout(180)
@DisabledIf("java.awt.GraphicsEnvironment#isHeadless")
class GapOnScreenTest {
    private static final Path SHOW = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    private static final Instant BEFORE = Instant.parse("2027-06-12T13:22:00Z");
    private static final List<String> DUTIES = List.of(
            "Please stay on your side of the rope",
            "Nobody is paid for today",
            "Thank you to the farmers",
            "Please leave drones and kites");
    private static final String SHORT = "How do you fold a wing?";
    private static final String LONG = "Where did you learn to mend an engine?";
    private static final String GAPS = """
              "gaps": {"talkPercent": 60, "pieces": [
                {"id": "long", "title": "The engine shop",
                 "parts": [{"text": "Where did you learn to mend an engine?", "answerS": 240},
                           {"text": "And what breaks first?", "answerS": 240}]},
                {"id": "short", "title": "The hangar", "parts": [{"text": "How do you fold a wing?", "answerS": 40}]}]},
            """;

    @TempDir
    Path folder;

    private Path show() throws Exception {
        return Files.writeString(
                Files.createDirectories(folder.resolve("made")).resolve("day.json"),
                Files.readString(SHOW).replaceFirst("\\n  \"incident\"", "\n" + GAPS + "  \"incident\""));
    }

    /** What is to be said until a moment, each once, in the order it came; looked at every five seconds. */
    private static Set<String> said(ConsoleOnScreen screen, double untilS) throws Exception {
        Set<String> said = new LinkedHashSet<>();
        for (double atS = screen.nowS() + 5; atS <= untilS; atS += 5) {
            screen.at(atS);
            SayView say = screen.say();
            if (say.what() == SayView.What.WORDS) {
                said.add(String.join(" ", say.breaths()));
            }
        }
        return said;
    }

    private static int at(Set<String> said, String words) {
        List<String> all = List.copyOf(said);
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).startsWith(words)) {
                return i;
            }
        }
        return -1;
    }

    @Test
    void aGapTakesDutiesThenAPieceThatFitsAndADelayMakesRoomForTheLongOne() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, show(), BEFORE)) {
            Set<String> before = said(screen, 270);
            assertThat(DUTIES)
                    .as("duties come first: " + before)
                    .allMatch(duty -> at(before, duty) >= 0 && at(before, duty) < DUTIES.size());
            assertThat(at(before, SHORT))
                    .as("then a piece that fits: " + before)
                    .isEqualTo(DUTIES.size());
            assertThat(before).as("then fillers").hasSizeGreaterThan(DUTIES.size() + 1);
            assertThat(at(before, LONG)).as("one that does not: " + before).isNegative();

            screen.press("R");
            screen.press("alt PAGE_DOWN");
            screen.press("ESCAPE");
            Set<String> later = said(screen, 400);
            assertThat(at(later, LONG))
                    .as("the act is ten minutes later: " + later)
                    .isNotNegative();
            assertThat(at(later, SHORT)).as("said once a day: " + later).isNegative();
        }
    }

    /** Whoever is in another place for half the gap has said nothing of what was planned meanwhile. */
    @Test
    void whatWasPlannedWhileTheWordsWereOutOfSightIsStillToBeSaid() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, show(), BEFORE)) {
            screen.press("F2");
            for (double atS = screen.nowS() + 5; atS <= 120; atS += 5) {
                screen.at(atS);
            }
            screen.press("F5");
            Set<String> after = said(screen, 220);
            assertThat(DUTIES).as("" + after).allMatch(duty -> at(after, duty) >= 0);
        }
    }
}
