package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledIf;
import org.junit.jupiter.api.io.TempDir;

/** What was filled in of an announcement survives the program: typed in a process that is killed, and read out in the next. */
@Tag("window")
@Timeout(300)
@DisabledIf("java.awt.GraphicsEnvironment#isHeadless")
class KilledAnnouncementOnScreenTest {
    private static final Path SHOW = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    private static final String OWN = """
              "announcements": [
                {"id": "lost", "occasion": "Lost child", "agreedWith": "the organiser, 3 May",
                 "words": ["A child waits at [where].", "It is [age and sex]. Please come."]}],
            """;

    @TempDir
    Path folder;

    @Test
    void whatWasFilledInBeforeAKillIsThereAfterItAndWhatWasOnlyBegunIsAskedForAgain() throws Exception {
        Files.writeString(
                Files.createDirectories(folder.resolve("made")).resolve("day.json"),
                Files.readString(SHOW).replaceFirst("\\n  \"incident\"", "\n" + OWN + "  \"incident\""));
        assertThat(KilledChild.after(AnnouncementChild.READY, AnnouncementChild.class, folder))
                .isEqualTo(AnnouncementChild.READY);

        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, AnnouncementChild.HOUR.plusSeconds(90))) {
            screen.await("it runs again", () -> screen.acts() == 2 && screen.runs(screen.edited()));
            screen.press("F5");
            assertThat(screen.running().desk().snapshot().state().course().inTheAir())
                    .as("the act goes on")
                    .isTrue();
            screen.press("B");
            assertThat(screen.spoken("Announcements")).contains("1: Lost child, Agreed, 1 blank to fill in.");
            screen.press("1");
            assertThat(screen.spoken("Announcement"))
                    .contains("where: the blue tent")
                    .doesNotContain("a girl of");
            screen.type("a girl of six");
            screen.press("ENTER");
            assertThat(screen.spoken("Announcement"))
                    .contains("A child waits at the blue tent. It is a girl of six. Please come.");
            screen.press("ENTER");
            assertThat(screen.running().desk().snapshot().state().announced().pages())
                    .last()
                    .satisfies(page -> assertThat(page.words())
                            .containsExactly("A child waits at the blue tent.", "It is a girl of six. Please come."));
        }
    }
}
