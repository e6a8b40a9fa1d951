package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Show;
import crowdline.show.figure.Remark;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledIf;
import org.junit.jupiter.api.io.TempDir;

/** A show of three acts made from nothing by keys alone, as somebody would who has one evening. */
@Tag("window")
@Timeout(300)
@DisabledIf("java.awt.GraphicsEnvironment#isHeadless")
class ShowFromNothingOnScreenTest {
    private static final Path DEMO = Path.of("src", "test", "resources", "crowdline", "shows", "fenmarsh-air-day.json");

    @TempDir
    Path folder;

    @Test
    void threeActsAreMadeByKeysAndTakenBackOneByOne() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, DEMO, Instant.parse("2027-06-12T13:00:00Z"))) {
            screen.give("F2");
            screen.await("the demo can be edited", () -> screen.acts() > 0);
            // At once the next key: it waits until the show is begun.
            screen.give("ctrl N");

            screen.await("its title is asked for first", () -> screen.focusIs("Title"));
            screen.await(
                    "what to do next is said",
                    () -> screen.spoken("Messages").contains("Ctrl+I takes in the pilot's list"));
            screen.type("Marsh day");
            screen.give("TAB");
            screen.await("it is told", () -> screen.edited().title().equals("Marsh day"));
            screen.await("the date is next", () -> screen.focusIs("Date, such as 2027-06-12"));
            screen.give("F1");
            screen.await("the keys are in front", () -> screen.focusIs("Crowdline"));
            screen.give("ESCAPE");
            screen.await("whoever looked at the keys goes on", () -> screen.focusIs("Date, such as 2027-06-12"));
            screen.give("F5");
            screen.await("Live is in front", () -> !screen.focusIs("Date, such as 2027-06-12"));
            screen.give("F2");
            screen.await("whoever looked at Live goes on", () -> screen.focusIs("Date, such as 2027-06-12"));

            ActsByKeys.threeActs(screen);
            ActsByKeys.invertedPass(screen);

            Show show = screen.edited();
            assertThat(ActsByKeys.flown(show.acts().get(0)))
                    .containsExactly("run-in", "loop", "stall turn", "slow roll", "spin");
            assertThat(show.everyRemark().map(Remark::id)).isNotEmpty().doesNotHaveDuplicates();
            assertThat(show.acts()).extracting(a -> a.slotStart().toString()).startsWith("14:00");

            assertThat(show.title()).isEqualTo("Marsh day");

            for (int left = 3; left >= 0; left--) {
                int acts = left;
                screen.give("ctrl Z");
                screen.await(
                        "one step less",
                        () -> acts == 3
                                ? !ActsByKeys.flown(screen.edited().acts().get(2))
                                        .contains("inverted pass")
                                : screen.acts() == acts);
            }

            screen.give("ctrl 2");
            screen.await("the day is asked for", () -> screen.focusIs("Title"));
            screen.give("ctrl shift I");
            screen.await("cells are asked for", () -> screen.focusIs("Cells of a spreadsheet"));
            screen.type("start;act;aircraft");
            screen.give("ENTER");
            screen.type("19:00;Owls;helicopter");
            screen.await("they can be taken", () -> screen.canPress("Take them"));
            screen.give("ctrl ENTER");
            screen.awaitAlone();
            screen.await("the act is made", () -> screen.acts() == 1);
            screen.await("it is chosen", () -> screen.focusIs("Acts in running order"));
        }
    }
}
