package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.live.state.Announced.Page;
import java.awt.GraphicsEnvironment;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Announcements by keys alone in a real window, while an act is in the air: 14:30, opened at 14:29. */
@Tag("window")
@Timeout(120)
class AnnouncementsOnScreenTest {
    private static final Path SHOW = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    private static final Instant BEFORE = Instant.parse("2027-06-12T13:29:00Z");
    private static final String OWN = """
              "announcements": [
                {"id": "lost", "occasion": "Lost child", "agreedWith": "the organiser, 3 May",
                 "words": ["A child waits at [where].", "It is [age and sex]. Please come."]},
                {"id": "out", "occasion": "Evacuation", "words": ["Please leave by the east gate."]}],
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void needsAScreen() {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
    }

    private Path show() throws Exception {
        String text = Files.readString(SHOW);
        Path file = Files.createDirectories(folder.resolve("made")).resolve("day.json");
        Files.writeString(file, text.replaceFirst("\\n  \"incident\"", "\n" + OWN + "  \"incident\""));
        return file;
    }

    private static List<Page> pages(ConsoleOnScreen screen) {
        return screen.running().desk().snapshot().state().announced().pages();
    }

    @Test
    void theActGoesOnUnderThePageAndOneKeyLeadsBack() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, show(), BEFORE)) {
            screen.at(60);
            screen.press("SPACE");
            screen.press("C");
            String first = screen.now().name();

            screen.press("B");
            assertThat(screen.spoken("Announcements")).contains("1: Lost child, Agreed, 2 blanks to fill in.");
            screen.press("1");
            screen.type("the blue tent");
            screen.press("ENTER");
            assertThat(screen.spoken("Announcement")).contains("Not to be read out yet: 1 blank to fill in");
            screen.press("ESCAPE");
            screen.press("ENTER");
            assertThat(pages(screen)).extracting(Page::readAtS).containsOnlyNulls();
            screen.type("a girl of six");
            screen.press("ENTER");
            screen.at(150);
            assertThat(screen.spoken("Announcement"))
                    .contains("A child waits at the blue tent. It is a girl of six. Please come.")
                    .doesNotContain("Not to be read out");
            assertThat(screen.spoken("Strip over the announcements")).contains(", 1:30, slot ");
            screen.press("SPACE");
            screen.press("ENTER");

            assertThat(screen.now().name())
                    .as("the clock went on, Space did not step")
                    .isNotEqualTo(first);
            assertThat(pages(screen))
                    .containsExactly(new Page(
                            "lost",
                            "Lost child",
                            60,
                            150.0,
                            List.of("A child waits at the blue tent.", "It is a girl of six. Please come.")));
            screen.press("Z");
            assertThat(pages(screen)).extracting(Page::readAtS).containsOnlyNulls();
            screen.press("B");
            screen.press("1");
            assertThat(screen.spoken("Announcement")).as("kept for the day").contains("It is a girl of six.");
            screen.press("ESCAPE");
            assertThat(screen.shows("Flying now")).isTrue();
        }
    }

    @Test
    void itIsReachedFromTheIncidentPageAndLeadsBackToIt() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, show(), BEFORE)) {
            screen.press("F12");
            screen.type("RES");
            screen.press("B");
            screen.press("2");
            assertThat(screen.spoken("Announcement")).contains("Please leave by the east gate.");
            screen.press("ENTER");
            assertThat(screen.shows("Incident page")).isTrue();
            assertThat(pages(screen)).extracting(Page::occasion).containsExactly("Evacuation");

            screen.press("B");
            screen.press("2");
            screen.press("F12");
            assertThat(screen.shows("Incident page"))
                    .as("F12 leads to it at once")
                    .isTrue();
            screen.type("UME");
            screen.await("it is left", () -> screen.shows("Flying now"));
        }
    }
}
