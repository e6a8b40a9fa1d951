package crowdline.console.second;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.RealWindow;
import crowdline.console.live.SampleOnAir;
import crowdline.console.live.SecondView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.storage.settings.SecondLook;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledIf;

/** The keys of the window that is opened alone, each as the system gives it. */
@Tag("window")
@Timeout(60)
@DisabledIf("java.awt.GraphicsEnvironment#isHeadless")
class SecondAloneTest {
    private final CountDownLatch closed = new CountDownLatch(1);
    private volatile SecondLook kept = SecondLook.DEFAULT;

    private final SecondHost host = new SecondHost() {
        @Override
        public SecondLook look() {
            return kept;
        }

        @Override
        public void keep(SecondLook look) {
            kept = look;
        }
    };

    private final SecondWindow window = opened();

    private static SecondView view(@Nullable String reader) {
        SecondView sample = new SampleOnAir().second(null);
        return new SecondView(sample.live(), sample.turn(), sample.then(), List.of("Ann", "Claire"), reader);
    }

    private SecondWindow opened() {
        return RealWindow.onEventThread(() -> SecondWindow.alone(
                SecondAloneTest::view, host, new Appearance(Themes.DAY, Zoom.NONE), closed::countDown));
    }

    @AfterEach
    void close() throws Exception {
        SwingUtilities.invokeAndWait(window::dispose);
    }

    private void press(String key) throws Exception {
        KeyStroke stroke = Objects.requireNonNull(KeyStroke.getKeyStroke(key), key);
        SwingUtilities.invokeAndWait(() -> KeyboardFocusManager.getCurrentKeyboardFocusManager()
                .redispatchEvent(
                        window.getRootPane(),
                        new KeyEvent(
                                window.getRootPane(),
                                KeyEvent.KEY_PRESSED,
                                0,
                                stroke.getModifiers(),
                                stroke.getKeyCode(),
                                KeyEvent.CHAR_UNDEFINED)));
    }

    @Test
    void tGoesThroughTheThemes() throws Exception {
        String first = kept.theme();
        press("T");
        assertThat(kept.theme()).isNotEqualTo(first);
        press("T");
        press("T");
        assertThat(kept.theme()).isEqualTo(first);
    }

    @Test
    void plusAndMinusChangeTheSizeOnEveryKeyboard() throws Exception {
        for (String plus : List.of("ctrl PLUS", "ctrl EQUALS", "ctrl shift EQUALS", "ctrl ADD")) {
            double before = kept.zoom();
            press(plus);
            assertThat(kept.zoom()).as(plus).isGreaterThan(before);
        }
        for (String minus : List.of("ctrl MINUS", "ctrl SUBTRACT")) {
            double before = kept.zoom();
            press(minus);
            assertThat(kept.zoom()).as(minus).isLessThan(before);
        }
    }

    @Test
    void f11FillsTheScreenAndGoesBackToTheWindowItWas() throws Exception {
        int width = window.getWidth();
        press("F11");
        press("T");
        assertThat(Objects.requireNonNull(kept.place()).width())
                .as("what is kept is the window")
                .isEqualTo(width);
        press("F11");
        assertThat(window.isDisplayable()).isTrue();
    }

    @Test
    void sGoesThroughTheSpeakersAndThenToAnybody() throws Exception {
        press("S");
        assertThat(kept.speaker()).isEqualTo("Ann");
        press("S");
        assertThat(kept.speaker()).isEqualTo("Claire");
        press("S");
        assertThat(kept.speaker()).isNull();
    }

    @Test
    void ctrlQClosesItAndTellsThatItIsClosed() throws Exception {
        press("ctrl Q");
        assertThat(closed.await(30, TimeUnit.SECONDS)).isTrue();
        assertThat(window.isDisplayable()).isFalse();
    }
}
