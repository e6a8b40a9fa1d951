package crowdline.console;

import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.console.place.Place;
import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The incident page while a practice flight is flown whose sky has a window of its own. */
@Tag("window")
class IncidentInPracticeTest {
    @BeforeEach
    void needsAScreen() {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
    }

    /** The sky never has the keys; it is put away for the page, and is there again after it. */
    @Test
    void theIncidentPageComesFromAPracticeWithTheSkyApart() throws Exception {
        try (RealWindow window = new RealWindow(new StageHost())) {
            walk(window);
        }
    }

    private static void walk(RealWindow window) {
        RealWindow.onEventThread(() -> window.host.practice.apart = true);
        RealWindow.onEventThread(() -> {
            // Room for the sky beside it.
            window.frame.setSize(1000, 700);
            window.frame.go(Place.LIVE);
            return 0;
        });
        window.pressUntil(
                "a flight is asked for",
                () -> window.otherWindows().findAny().isPresent(),
                KeyEvent.VK_G,
                KeyEvent.VK_CONTROL);
        window.inFront();
        window.pressUntil(
                "the sky is seen",
                () -> window.otherWindows().anyMatch(w -> !w.isFocusableWindow()),
                KeyEvent.VK_ENTER);
        window.await("the window has the keys", window.frame::isFocused);
        window.incident("a practice");
        window.leaveAtOnce();
        window.await("the sky is back", () -> window.otherWindows().findAny().isPresent());
        window.press(KeyEvent.VK_G, KeyEvent.VK_CONTROL);
        window.await("the sky is away", () -> window.otherWindows().findAny().isEmpty());
        window.incident("how it went");
        window.leaveAtOnce();
    }
}
