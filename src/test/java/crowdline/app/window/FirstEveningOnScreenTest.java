package crowdline.app.window;

import crowdline.console.place.Place;
import crowdline.show.figure.Remark;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledIf;
import org.junit.jupiter.api.io.TempDir;

/** What somebody presses who sees the program for the first time: Enter, on whatever is in front. */
@Tag("window")
@Timeout(120)
@DisabledIf("java.awt.GraphicsEnvironment#isHeadless")
class FirstEveningOnScreenTest {
    @TempDir
    Path folder;

    @Test
    void enterLeadsFromNothingIntoTheWordsOfTheFirstFigureAndEscapeBack() throws Exception {
        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, Instant.parse("2027-06-12T13:00:00Z"))) {
            screen.await("a new show is offered first", () -> screen.focusIs("New show"));
            screen.give("ENTER");
            screen.await("its title is asked for", () -> screen.focusIs("Title"));

            ActsByKeys.list(screen, "loop, stall turn", "light");
            ActsByKeys.made(screen, 1);

            screen.give("F3");
            screen.await("the words are there", () -> screen.isIn(Place.WORDS) && screen.focusIs("Where remarks"));
            // It opens at the figure that is chosen in Prepare: the first.
            screen.give("ENTER");
            screen.await("the remarks have the keys", () -> screen.focusIs("Remarks"));
            screen.give("ENTER");
            screen.await("the text has the keys", () -> screen.focusIs("What to say"));
            screen.type(" Look up.");
            screen.await(
                    "it is written behind what was there",
                    () -> screen.edited().everyRemark().map(Remark::text).anyMatch(t -> t.endsWith(" Look up.")));
            screen.give("ESCAPE");
            screen.await("the remarks have the keys again", () -> screen.focusIs("Remarks"));
            screen.give("LEFT");
            screen.await("and the places", () -> screen.focusIs("Where remarks"));
        }
    }
}
