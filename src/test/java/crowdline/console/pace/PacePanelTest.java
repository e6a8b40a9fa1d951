package crowdline.console.pace;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.pace.PaceHost.Found;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.speech.hear.Hearing;
import crowdline.speech.hear.Hearing.State;
import crowdline.speech.hear.Utterance;
import crowdline.speech.pace.Pace;
import crowdline.speech.say.Spoken;
import crowdline.speech.say.SpokenText;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;

class PacePanelTest {
    private static final List<SpokenText> REMARKS = RemarksToTime.of(List.of(), new Spoken(Map.of()));

    private final Calls host = new Calls();
    private final PacePanel panel = new PacePanel(
            new Appearance(Themes.DAY, Zoom.NONE),
            new Found(List.of("Anna", "<html>Bo"), "Anna", REMARKS, ""),
            host,
            () -> host.said.add("closed"));

    private static final class Calls implements PaceHost {
        private final List<String> said = new ArrayList<>();
        private final Heard microphone = new Heard();
        private final List<Pace> kept = new ArrayList<>();

        @Override
        public void find(Consumer<Found> found) {}

        @Override
        public void use(String speaker) {
            said.add("use " + speaker);
        }

        @Override
        public void useNext() {}

        @Override
        public void keep(Pace pace) {
            kept.add(pace);
        }

        @Override
        public Microphone microphone() {
            return microphone;
        }
    }

    /** Hears what the test says. */
    private static final class Heard implements Microphone, Microphone.Listening {
        private final List<Listener> listeners = new ArrayList<>();
        private int closed;
        private int forgotten;

        @Override
        public Listening listen(Listener listener) {
            listeners.add(listener);
            return this;
        }

        @Override
        public void forget() {
            forgotten++;
        }

        @Override
        public void close() {
            closed++;
        }

        private void hears(State state, double soFarS, double overNoiseDb, boolean tooLoud) {
            last().hears(List.of(new Hearing(state, overNoiseDb, tooLoud, soFarS, null, null)));
        }

        private void heard(double seconds) {
            last().hears(List.of(new Hearing(State.QUIET, 0, false, 0, new Utterance(1, 1 + seconds), null)));
        }

        private Listener last() {
            return listeners.get(listeners.size() - 1);
        }
    }

    private static List<Component> all(Container container) {
        List<Component> found = new ArrayList<>();
        for (Component child : container.getComponents()) {
            found.add(child);
            if (child instanceof Container inner) {
                found.addAll(all(inner));
            }
        }
        return found;
    }

    private <C extends Component> C find(Class<C> type, String name) {
        return all(panel).stream()
                .filter(type::isInstance)
                .map(type::cast)
                .filter(c -> name.equals(c.getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow();
    }

    private void press(int key, long whenMs) {
        Component on = find(JTextComponent.class, "Say this");
        KeyEvent event = new KeyEvent(on, KeyEvent.KEY_PRESSED, whenMs, 0, key, KeyEvent.CHAR_UNDEFINED);
        Stream.of(on.getKeyListeners()).forEach(l -> l.keyPressed(event));
    }

    private void release(int key, long whenMs) {
        Component on = find(JTextComponent.class, "Say this");
        KeyEvent event = new KeyEvent(on, KeyEvent.KEY_RELEASED, whenMs, 0, key, KeyEvent.CHAR_UNDEFINED);
        Stream.of(on.getKeyListeners()).forEach(l -> l.keyReleased(event));
    }

    private void tap(int key, long whenMs) {
        press(key, whenMs);
        release(key, whenMs + 60);
    }

    private String count() {
        return find(JTextComponent.class, "Progress").getText();
    }

    private void begin(String name) {
        find(JTextField.class, "Name of a speaker to time").setText(name);
        find(AbstractButton.class, "Time this speaker").doClick();
    }

    @Test
    void theKeysGoToTheNameWhileNobodyWasTimedYet() {
        PacePanel nobody = new PacePanel(
                new Appearance(Themes.DAY, Zoom.NONE), new Found(List.of(), "", REMARKS, ""), host, () -> {});
        assertThat(nobody.first()).isInstanceOf(JTextField.class);
        assertThat(panel.first()).isNotInstanceOf(JTextField.class);
    }

    @Test
    void theSpeakerOfTheMomentIsMarkedAndAnotherCanBeUsed() {
        JList<?> speakers = find(JList.class, "Whose pace the times are for");
        assertThat(speakers.getSelectedValue()).isEqualTo("Anna");
        speakers.setSelectedIndex(2);
        find(AbstractButton.class, "Use this pace").doClick();
        assertThat(host.said).containsExactly("use <html>Bo", "closed");
    }

    @Test
    void aSpeakerWithoutANameIsNotTimed() {
        begin("  ");
        assertThat(find(JTextComponent.class, "What is wrong").getText())
                .isEqualTo("the speaker has no name; type one");
        tap(KeyEvent.VK_SPACE, 1000);
        assertThat(count()).isEmpty();
    }

    @Test
    void tenRemarksSaidWithSpaceGiveAPaceThatIsKept() {
        begin("Cleo");
        long whenMs = 10_000;
        for (SpokenText remark : REMARKS) {
            tap(KeyEvent.VK_SPACE, whenMs);
            whenMs += Math.round(1000 * Pace.DEFAULT.time(remark).seconds());
            tap(KeyEvent.VK_SPACE, whenMs);
            whenMs += 3000;
        }
        assertThat(count()).isEqualTo("Cleo: All 10 remarks are timed");
        tap(KeyEvent.VK_ENTER, whenMs);
        assertThat(find(JTextComponent.class, "What was learned").getText()).contains("10 of 10 within 10%");
        find(AbstractButton.class, "Keep and use it").doClick();
        assertThat(host.kept)
                .singleElement()
                .satisfies(p -> assertThat(p.name()).isEqualTo("Cleo"));
        assertThat(host.said).containsExactly("closed");
    }

    /** X11 reports a held key as release and press with the same time, other systems as presses alone. */
    @Test
    void aKeyHeldDownCountsOnce() {
        begin("Cleo");
        press(KeyEvent.VK_SPACE, 1000);
        press(KeyEvent.VK_SPACE, 1500);
        release(KeyEvent.VK_SPACE, 1530);
        press(KeyEvent.VK_SPACE, 1530);
        assertThat(count()).isEqualTo("Cleo: Remark 1 of 10, timing");
        release(KeyEvent.VK_SPACE, 1560);
        tap(KeyEvent.VK_SPACE, 3000);
        assertThat(count()).isEqualTo("Cleo: Remark 2 of 10");
    }

    @Test
    void backspaceSaysTheLastOneAgain() {
        begin("Cleo");
        tap(KeyEvent.VK_SPACE, 1000);
        tap(KeyEvent.VK_SPACE, 3000);
        assertThat(count()).isEqualTo("Cleo: Remark 2 of 10");
        tap(KeyEvent.VK_BACK_SPACE, 4000);
        assertThat(count()).isEqualTo("Cleo: Remark 1 of 10");
        assertThat(find(JTextComponent.class, "Say this").getText())
                .isEqualTo(REMARKS.get(0).written());
    }

    private String meter() {
        return find(LevelMeter.class, "Microphone").getAccessibleContext().getAccessibleDescription();
    }

    private String said() {
        return find(JTextComponent.class, "Result").getText();
    }

    @Test
    void byMicrophoneRemarksAreTimedByThemselvesAndSaidAgain() {
        begin("Cleo");
        assertThat(host.microphone.listeners).isEmpty();
        tap(KeyEvent.VK_M, 1000);
        assertThat(meter()).isEqualTo("opening the microphone");
        host.microphone.hears(State.QUIET, 0, 0, false);
        assertThat(meter()).isEqualTo("quiet");
        host.microphone.hears(State.SPEECH, 1, 25, false);
        assertThat(meter()).isEqualTo("hearing you");
        host.microphone.hears(State.SPEECH, 1, 25, true);
        assertThat(meter()).startsWith("too loud");
        host.microphone.heard(2.5);
        assertThat(count()).isEqualTo("Cleo: Remark 2 of 10");
        assertThat(said()).isEqualTo("That took 2.5 s.");
        tap(KeyEvent.VK_BACK_SPACE, 9000);
        assertThat(count()).isEqualTo("Cleo: Remark 1 of 10");
    }

    @Test
    void theKeyWinsOverTheMicrophone() {
        begin("Cleo");
        tap(KeyEvent.VK_M, 1000);
        tap(KeyEvent.VK_SPACE, 2000);
        host.microphone.hears(State.IGNORING, 0, 20, false);
        host.microphone.heard(1.7);
        assertThat(count()).isEqualTo("Cleo: Remark 1 of 10, timing");
        tap(KeyEvent.VK_SPACE, 4500);
        assertThat(said()).isEqualTo("That took 2.5 s.");
        host.microphone.hears(State.SPEECH, 2.6, 20, false);
        tap(KeyEvent.VK_SPACE, 9000);
        assertThat(said()).isEqualTo("That took 2.6 s.");
        assertThat(host.microphone.forgotten).isEqualTo(3);
    }

    @Test
    void aMicrophoneThatIsLostLeavesTheKeyAndLosesNothing() {
        begin("Cleo");
        tap(KeyEvent.VK_M, 1000);
        host.microphone.heard(2.5);
        host.microphone.last().lost("The microphone is gone.");
        assertThat(count()).isEqualTo("Cleo: Remark 2 of 10");
        assertThat(said()).isEqualTo("The microphone is gone.");
        assertThat(find(AbstractButton.class, "By key").isSelected()).isTrue();
        tap(KeyEvent.VK_SPACE, 4000);
        assertThat(count()).endsWith(", timing");
    }

    @Test
    void theMicrophoneIsLetGoWithTheWindow() {
        begin("Cleo");
        tap(KeyEvent.VK_M, 1000);
        int before = host.microphone.closed;
        panel.removeNotify();
        assertThat(host.microphone.closed).isEqualTo(before + 1);
    }

    @Test
    void withoutAMicrophoneTheWindowSaysWhyAndMDoesNothing() {
        PacePanel without = new PacePanel(
                new Appearance(Themes.DAY, Zoom.NONE),
                new Found(List.of(), "", REMARKS, "There is no microphone; plug one in."),
                host,
                () -> {});
        assertThat(all(without).stream()
                        .filter(JTextComponent.class::isInstance)
                        .map(c -> ((JTextComponent) c).getText()))
                .contains("There is no microphone; plug one in.");
        assertThat(all(without).stream()
                        .filter(AbstractButton.class::isInstance)
                        .map(AbstractButton.class::cast)
                        .filter(b -> b.getText() != null && b.getText().startsWith("By microphone"))
                        .map(Component::isEnabled))
                .containsExactly(false);
    }

    @Test
    void everythingThatTakesTheFocusHasAName() {
        for (Component component : all(panel)) {
            if (component instanceof JList
                    || component instanceof AbstractButton
                    || component instanceof JTextComponent) {
                if (!component.getClass().getName().contains("Scroll")
                        && !String.valueOf(component.getParent()).contains("ScrollBar")) {
                    assertThat(component.getAccessibleContext().getAccessibleName())
                            .as("name of %s", component.getClass())
                            .isNotBlank();
                }
            }
        }
    }
}
