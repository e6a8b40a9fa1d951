package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
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
            screen.give("ctrl N");
            screen.await("an empty show", () -> screen.acts() == 0);

            list(screen, "run in from the left, loop at 800 ft, stall turn right end, slow roll, 2 turn spin", "light");
            made(screen, 1);
            list(screen, "", "formation");
            made(screen, 2);
            list(screen, "", "aerobatic glider");
            made(screen, 3);

            screen.await("it is shown", () -> screen.stands("aerobatic glider"));
            screen.give("RIGHT");
            screen.await("the figures have the focus", () -> screen.focusIs("Figures in the order flown"));
            screen.give("INSERT");
            screen.await("a figure is asked for", () -> screen.focusIs("Which figure"));
            screen.type("upside down");
            screen.give("ENTER");
            screen.await(
                    "it is flown", () -> flown(screen.edited().acts().get(2)).contains("inverted pass"));

            Show show = screen.edited();
            assertThat(flown(show.acts().get(0))).containsExactly("run-in", "loop", "stall turn", "slow roll", "spin");
            assertThat(show.everyRemark().map(Remark::id)).isNotEmpty().doesNotHaveDuplicates();
            assertThat(show.acts()).extracting(a -> a.slotStart().toString()).startsWith("14:00");

            for (int left = 3; left >= 0; left--) {
                int acts = left;
                screen.give("ctrl Z");
                screen.await(
                        "one step less",
                        () -> acts == 3
                                ? !flown(screen.edited().acts().get(2)).contains("inverted pass")
                                : screen.acts() == acts);
            }
        }
    }

    private static void list(ConsoleOnScreen screen, String list, String kind) throws Exception {
        screen.give("ctrl I");
        screen.await("a list is asked for", () -> screen.focusIs("The pilot's list"));
        screen.type(list);
        screen.give("TAB");
        screen.give("TAB");
        screen.await("the kind is asked for", () -> screen.focusIs("Kind of aircraft"));
        for (int i = 0; i < kind.length(); i++) {
            char letter = kind.charAt(i);
            screen.give(letter == ' ' ? "SPACE" : String.valueOf(Character.toUpperCase(letter)));
        }
        screen.await("the act can be made", () -> screen.canPress("Make the act"));
        screen.give("ctrl ENTER");
    }

    private static void made(ConsoleOnScreen screen, int acts) throws Exception {
        screen.await("act " + acts + " is made", () -> screen.acts() == acts);
        screen.await("it is chosen", () -> screen.focusIs("Acts in running order"));
    }

    private static List<String> flown(Act act) {
        return act.inOrder(act.variants().get(0)).stream()
                .filter(f -> !f.transit())
                .map(Figure::figure)
                .toList();
    }
}
