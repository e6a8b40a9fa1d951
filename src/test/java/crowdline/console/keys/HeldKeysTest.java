package crowdline.console.keys;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;

class HeldKeysTest {
    private final HeldKeys keys = new HeldKeys();
    private final JLabel focus = new JLabel();

    private KeyEvent event(int id, long whenMs) {
        return new KeyEvent(focus, id, whenMs, 0, KeyEvent.VK_SPACE, ' ');
    }

    private boolean pressAndRelease(long pressedMs, long releasedMs) {
        boolean taken = keys.press(event(KeyEvent.KEY_PRESSED, pressedMs));
        keys.release(event(KeyEvent.KEY_RELEASED, releasedMs));
        return taken;
    }

    @Test
    void pressInTheMomentOfTheReleaseIsTheKeyStillHeld() {
        assertThat(pressAndRelease(10_000, 10_500)).isTrue();
        assertThat(pressAndRelease(10_502, 10_530)).isFalse();
        assertThat(pressAndRelease(10_533, 10_560)).isTrue();
    }

    @Test
    void clockThatIsPutBackLeavesNoKeyDead() {
        assertThat(pressAndRelease(10_000_000, 10_000_050)).isTrue();
        assertThat(pressAndRelease(6_400_000, 6_400_050)).isTrue();
        assertThat(pressAndRelease(6_400_300, 6_400_350)).isTrue();
    }
}
