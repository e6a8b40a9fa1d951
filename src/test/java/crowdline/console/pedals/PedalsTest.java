package crowdline.console.pedals;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.keys.Command;
import crowdline.console.keys.RemoteKey;
import crowdline.storage.settings.LearnedButtons;
import crowdline.telemetry.serial.ButtonSignal;
import crowdline.telemetry.serial.ControlLine;
import crowdline.telemetry.serial.HeardSignal;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;

class PedalsTest {
    private static final ButtonSignal ONE = new ButtonSignal.Sent('1');
    private static final ButtonSignal TWO = new ButtonSignal.Sent('2');
    private static final ButtonSignal DOWN = new ButtonSignal.Turned(ControlLine.CTS, true);
    private static final ButtonSignal UP = new ButtonSignal.Turned(ControlLine.CTS, false);
    private static final RemoteKey F9 = new RemoteKey("F9", "F9", null);
    private static final RemoteKey PERIOD = new RemoteKey("PERIOD", "full stop", Command.SAID);

    private final List<LearnedButtons> kept = new ArrayList<>();
    private final Pedals pedals = new Pedals(LearnedButtons.NONE, kept::add);

    private static RemoteKey key(String code) {
        KeyStroke stroke = KeyStroke.getKeyStroke(code);
        return RemoteKey.of(new KeyEvent(
                        new JPanel(),
                        KeyEvent.KEY_PRESSED,
                        1000,
                        stroke.getModifiers() & (InputEvent.CTRL_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK),
                        stroke.getKeyCode(),
                        KeyEvent.CHAR_UNDEFINED))
                .orElseThrow();
    }

    private void press(double atS, ButtonSignal signal) {
        pedals.hear(new HeardSignal(signal, atS));
    }

    private void teach(Command command, ButtonSignal signal, double atS) {
        pedals.learn(command);
        press(atS, signal);
        press(atS + 1, signal);
    }

    private String said() {
        return pedals.view().said().word();
    }

    @Test
    void aPedalPressedTwiceIsLearnedAndSaidByWhatItSends() {
        pedals.learn(Command.NEXT);
        assertThat(said()).startsWith("Press the pedal for Next figure");
        press(1, ONE);
        assertThat(said()).startsWith("Byte 0x31 heard. Press it once more");
        assertThat(kept).isEmpty();
        press(2, ONE);
        assertThat(said()).startsWith("Learned: byte 0x31 gives Next figure");
        assertThat(pedals.view().learning()).isNull();
        assertThat(kept).containsExactly(LearnedButtons.NONE.with(ONE, "next"));
        assertThat(pedals.view().rows().get(0).pedals()).isEqualTo("byte 0x31");
    }

    @Test
    void aLineIsLearnedAndLettingGoSaysNothing() {
        pedals.learn(Command.HOLD);
        press(1.0, DOWN);
        press(1.3, UP);
        press(2.0, DOWN);
        String learned = said();
        assertThat(learned).startsWith("Learned: CTS line goes on gives Hold or carry on");
        press(2.4, UP);
        assertThat(said()).isEqualTo(learned);
    }

    @Test
    void aPressWhileNothingIsLearnedOnlySaysWhatItWouldGive() {
        teach(Command.NEXT, ONE, 1);
        kept.clear();
        press(5, ONE);
        assertThat(said()).isEqualTo("Byte 0x31 gives Next figure");
        press(6, TWO);
        assertThat(said()).startsWith("Byte 0x32 does nothing yet");
        pedals.press(PERIOD);
        assertThat(said()).isEqualTo("The key full stop gives Said");
        pedals.press(F9);
        assertThat(said()).startsWith("The key F9 does nothing yet");
        assertThat(kept).isEmpty();
    }

    @Test
    void aPedalThatHasACommandIsMovedOnlyWhenTold() {
        teach(Command.NEXT, DOWN, 1);
        press(2.4, UP);
        kept.clear();
        pedals.learn(Command.SAID);
        press(10, DOWN);
        assertThat(said()).startsWith("CTS line goes on already gives Next figure. Enter moves it to Said");
        assertThat(pedals.view().asks()).isTrue();
        press(10.4, UP);
        press(11, DOWN);
        press(11.3, UP);
        assertThat(pedals.view().asks()).as("it still asks after more presses").isTrue();
        assertThat(kept).isEmpty();
        pedals.move();
        assertThat(kept).containsExactly(LearnedButtons.NONE.with(DOWN, "said"));
    }

    @Test
    void anotherPedalMayBePressedInsteadOfTheTakenOne() {
        teach(Command.NEXT, ONE, 1);
        pedals.learn(Command.SAID);
        press(10, ONE);
        press(11, TWO);
        press(12, TWO);
        assertThat(pedals.learned().pedals()).isEqualTo(Map.of(ONE, "next", TWO, "said"));
    }

    @Test
    void aTakenPedalLeftAloneStaysAsItWas() {
        teach(Command.NEXT, ONE, 1);
        kept.clear();
        pedals.learn(Command.SAID);
        press(10, ONE);
        pedals.stop();
        assertThat(kept).isEmpty();
        assertThat(pedals.view().learning()).isNull();
    }

    @Test
    void differentPressesAreNotLearned() {
        pedals.learn(Command.NEXT);
        press(1, ONE);
        press(2, TWO);
        assertThat(said()).startsWith("First byte 0x31, then byte 0x32. Begin again");
        assertThat(kept).isEmpty();
    }

    @Test
    void aKeyOfTheRemotePressedTwiceIsLearned() {
        pedals.learn(Command.NEXT);
        pedals.press(F9);
        assertThat(kept).isEmpty();
        pedals.press(F9);
        assertThat(said()).startsWith("Learned: the key F9 gives Next figure");
        assertThat(kept).containsExactly(LearnedButtons.NONE.with("F9", "next"));
    }

    @Test
    void aKeyThatMeansSomethingInLiveIsMovedOnlyWhenTold() {
        pedals.learn(Command.NOT_SAID);
        pedals.press(PERIOD);
        pedals.press(PERIOD);
        assertThat(kept).isEmpty();
        assertThat(said()).startsWith("The key full stop already gives Said. Enter moves it to Not said");
        pedals.move();
        assertThat(kept).containsExactly(LearnedButtons.NONE.with("PERIOD", "not-said"));
        PedalsView.Row saidRow = pedals.view().rows().stream()
                .filter(r -> r.command() == Command.SAID)
                .findFirst()
                .orElseThrow();
        assertThat(saidRow.always()).isEqualTo("S, Enter");
    }

    @Test
    void theKeysOfTheIncidentPageAreNeverTaken() {
        pedals.learn(Command.NEXT);
        for (String key : List.of("F12", "shift F12", "ctrl F12", "I")) {
            pedals.press(key(key));
            assertThat(said())
                    .isEqualTo("The key " + key(key).words() + " is always for Incident page; choose another.");
            pedals.press(key(key));
            pedals.move();
            assertThat(kept).isEmpty();
        }
        LearnedButtons byHand = LearnedButtons.NONE
                .with("F12", "next")
                .with("shift F12", "next")
                .with("I", "next");
        assertThat(PedalCommands.keys(byHand)).isEmpty();
    }

    @Test
    void forgettingLeavesTheOthers() {
        teach(Command.NEXT, ONE, 1);
        teach(Command.SAID, TWO, 10);
        pedals.forget(Command.NEXT);
        assertThat(pedals.learned().pedals()).isEqualTo(Map.of(TWO, "said"));
        assertThat(said()).startsWith("Forgotten: Next figure");
    }

    @Test
    void onlyCommandsAPedalMayGiveAreTakenFromSettings() {
        LearnedButtons odd =
                LearnedButtons.NONE.with("F9", "incident").with("B", "next").with("NO SUCH KEY", "said");
        assertThat(PedalCommands.keys(odd)).isEqualTo(Map.of("B", Command.NEXT));
        assertThat(PedalCommands.of("incident")).isEmpty();
        assertThat(PedalCommands.of("end-act")).isEmpty();
    }

    @Test
    void theSheetOfKeysListsWhatWasLearned() {
        LearnedButtons learned = LearnedButtons.NONE
                .with(ONE, "next")
                .with("F9", "next")
                .with(DOWN, "said")
                .with("F9", "incident-of-old");
        assertThat(PedalCommands.inWords(learned.with("B", "next")))
                .isEqualTo("Pedals and remotes: Next figure: byte 0x31, B. Said: CTS line goes on");
        assertThat(PedalCommands.inWords(LearnedButtons.NONE)).isEmpty();
    }
}
