package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.console.keys.CommandActions;
import crowdline.console.live.SampleLiveViews;
import crowdline.console.place.Place;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.console.tour.Ring;
import crowdline.console.tour.Tour;
import crowdline.console.tour.TourRow;
import crowdline.console.window.NamedAction;
import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import javax.swing.JFrame;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The tour, led by keys in a real window. */
@Tag("window")
class TourOnScreenTest {
    private @Nullable RealWindow window;

    @BeforeEach
    void open() throws Exception {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
        window = new RealWindow(new StageHost());
        window().host.show(SampleLiveViews.all().values().iterator().next());
    }

    @AfterEach
    void close() {
        if (window != null) {
            window().close();
        }
    }

    private RealWindow window() {
        return Objects.requireNonNull(window);
    }

    private <T> T only(Class<T> type) {
        return RealWindow.onEventThread(() -> RealWindow.all(window().frame).stream()
                .filter(type::isInstance)
                .map(type::cast)
                .findFirst()
                .orElseThrow());
    }

    private static String words(TourRow row) {
        return RealWindow.all(row).stream()
                .filter(JTextArea.class::isInstance)
                .map(area -> ((JTextArea) area).getText())
                .findFirst()
                .orElse("");
    }

    private Place place() {
        return RealWindow.onEventThread(() -> ((ConsolePane) window().frame.getContentPane()).place());
    }

    @Test
    void oneKeyLeadsThroughEveryPlaceAndOut() {
        TourRow row = only(TourRow.class);
        assertThat(row.isShowing()).isFalse();
        Set<Place> seen = EnumSet.noneOf(Place.class);
        int steps = Tour.begin().steps().size();
        for (int i = 0; i < steps; i++) {
            pressF9();
            Tour.Step step = Tour.begin().steps().get(i);
            window().await("step " + i, () -> words(row).equals(step.words()));
            assertThat(place()).isEqualTo(step.place());
            seen.add(step.place());
        }
        assertThat(seen).containsExactlyInAnyOrder(Place.values());
        pressF9();
        window().await("the tour is over", () -> !row.isShowing());
    }

    /** No finger is so quick that it is taken for the same press again. */
    private void pressF9() {
        window().robot().delay(10);
        window().press(KeyEvent.VK_F9);
    }

    @Test
    void escapeLeavesItAndOtherKeysGoOnWorking() {
        TourRow row = only(TourRow.class);
        window().press(KeyEvent.VK_F9);
        window().await("it has begun", row::isShowing);
        window().press(KeyEvent.VK_F7);
        window().await("in the glossary", () -> place() == Place.GLOSSARY);
        assertThat(row.isShowing()).isTrue();
        window().press(KeyEvent.VK_ESCAPE);
        window().await("it is left", () -> !row.isShowing());
        assertThat(only(Ring.class).isVisible()).isFalse();
    }

    /** Over another show it would call that the demo show. */
    @Test
    void withoutTheDemoShowItDoesNotBegin() {
        TourRow row = only(TourRow.class);
        window().host.mayOpenDemo = false;
        window().press(KeyEvent.VK_F9);
        window().press(KeyEvent.VK_F7);
        window().await("in the glossary", () -> place() == Place.GLOSSARY);
        assertThat(row.isShowing()).isFalse();
    }

    @Test
    void itEndsWithItsWindow() {
        TourGuide guide = RealWindow.onEventThread(() -> {
            CommandActions actions = new CommandActions(command -> {});
            ConsolePane pane =
                    new ConsolePane(new Appearance(Themes.DAY, Zoom.NONE), actions, new NamedAction("Demo", () -> {}));
            JFrame frame = new JFrame();
            TourGuide made = new TourGuide(frame, pane, actions, Runnable::run, place -> {});
            frame.setContentPane(pane);
            frame.pack();
            made.next();
            assertThat(made.isFollowing()).isTrue();
            frame.dispose();
            return made;
        });
        window().await("nothing keeps the program from ending", () -> !guide.isFollowing());
    }

    @Test
    void incidentPageEndsIt() {
        TourRow row = only(TourRow.class);
        window().press(KeyEvent.VK_F9);
        window().await("it has begun", row::isShowing);
        window().incident("the tour");
        window().await("it is over", () -> !row.isShowing());
        window().leaveAtOnce();
    }
}
