package crowdline.console.keys;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.Place;
import java.awt.Component;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class KeyDispatcherTest {
    private final List<Command> given = new ArrayList<>();
    private final CommandActions actions = new CommandActions(given::add);
    private boolean writing;
    private final KeyDispatcher dispatcher = new KeyDispatcher(actions, e -> true, () -> writing, e -> false);

    static Stream<JComponent> componentsThatEatKeys() {
        return Stream.of(
                new JButton("x"),
                new JToggleButton("x"),
                new JList<>(new String[] {"a", "b"}),
                new JTable(3, 3),
                new JScrollPane(),
                new JMenuItem("x"));
    }

    private boolean press(Component on, String key, long whenMs) {
        if (key.startsWith("'")) {
            return dispatcher.dispatchKeyEvent(
                    new KeyEvent(on, KeyEvent.KEY_PRESSED, whenMs, InputEvent.SHIFT_DOWN_MASK, 0, key.charAt(1)));
        }
        KeyStroke stroke = KeyStroke.getKeyStroke(key);
        return dispatcher.dispatchKeyEvent(new KeyEvent(
                on,
                KeyEvent.KEY_PRESSED,
                whenMs,
                stroke.getModifiers() & (InputEvent.CTRL_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK),
                stroke.getKeyCode(),
                KeyEvent.CHAR_UNDEFINED));
    }

    private void release(Component on, String key, long whenMs) {
        KeyStroke stroke = KeyStroke.getKeyStroke(key);
        dispatcher.dispatchKeyEvent(
                new KeyEvent(on, KeyEvent.KEY_RELEASED, whenMs, 0, stroke.getKeyCode(), KeyEvent.CHAR_UNDEFINED));
    }

    @ParameterizedTest
    @MethodSource("componentsThatEatKeys")
    void everyKeyOfEveryCommandWorksWhateverHasTheFocus(JComponent focused) {
        long whenMs = 1000;
        for (Command command : Command.values()) {
            actions.allow(together(command));
            for (String key : command.keys()) {
                given.clear();
                dispatcher.forget();
                whenMs += 1000;
                assertThat(press(focused, key, whenMs)).as("%s is eaten", key).isTrue();
                assertThat(given).as("%s gives", key).containsExactly(command);
            }
        }
    }

    /** What can be given in the same place as a command. */
    private static Set<Command> together(Command command) {
        Set<Command> commands = EnumSet.noneOf(Command.class);
        for (Command other : Command.values()) {
            boolean here = other.scope() == command.scope()
                    || other.scope() == Command.Scope.WINDOW
                    || command.scope() == Command.Scope.WINDOW;
            if (here) {
                commands.add(other);
            }
        }
        return commands;
    }

    @Test
    void noKeyMeansTwoCommandsInOnePlace() {
        for (Command command : Command.values()) {
            for (Command other : together(command)) {
                if (other != command) {
                    assertThat(other.keys())
                            .as("%s and %s", command, other)
                            .doesNotContainAnyElementsOf(command.keys());
                }
            }
        }
    }

    @Test
    void functionKeysStandInTheOrderOfThePlaces() {
        assertThat(Stream.of(Place.values()).map(p -> p.command().keys().get(0)))
                .containsExactly("F2", "F3", "F4", "F5", "F6", "F7");
    }

    @Test
    void aKeyHeldDownCountsOnce() {
        JButton button = new JButton();
        press(button, "SPACE", 1000);
        press(button, "SPACE", 1300);
        press(button, "SPACE", 1330);
        assertThat(given).containsExactly(Command.NEXT);
    }

    @Test
    void aKeyHeldDownOnX11CountsOnce() {
        JButton button = new JButton();
        press(button, "SPACE", 1000);
        release(button, "SPACE", 1300);
        press(button, "SPACE", 1300);
        assertThat(given).containsExactly(Command.NEXT);
    }

    @Test
    void aKeyPressedAgainCountsAgain() {
        JButton button = new JButton();
        press(button, "SPACE", 1000);
        release(button, "SPACE", 1080);
        press(button, "SPACE", 1200);
        assertThat(given).containsExactly(Command.NEXT, Command.NEXT);
    }

    @Test
    void lettersGoIntoAFieldThatIsWrittenIn() {
        writing = true;
        assertThat(press(new JButton(), "D", 1000)).isFalse();
        assertThat(given).isEmpty();
    }

    @Test
    void functionKeysWorkWhileAFieldIsWrittenIn() {
        writing = true;
        press(new JButton(), "F5", 1000);
        assertThat(given).containsExactly(Command.LIVE);
    }

    @Test
    void whatARemoteTypesForStartAndEndDoesNoHarmInLive() {
        actions.allow(EnumSet.allOf(Command.class));
        assertThat(press(new JButton(), "F5", 1000)).isTrue();
        assertThat(press(new JButton(), "ESCAPE", 2000)).isFalse();
        assertThat(given).containsExactly(Command.LIVE);
    }

    @Test
    void aKeyOfARemoteGivesTheCommandItWasLearnedFor() {
        dispatcher.alsoHear(Map.of("F9", Command.NEXT, "PERIOD", Command.NOT_SAID));
        press(new JButton(), "F9", 1000);
        press(new JButton(), "PERIOD", 2000);
        press(new JButton(), "S", 3000);
        assertThat(given).containsExactly(Command.NEXT, Command.NOT_SAID, Command.SAID);
    }

    @Test
    void aKeyOfARemoteKeepsItsOwnMeaningWhereItsCommandIsNotPossible() {
        dispatcher.alsoHear(Map.of("PAGE_DOWN", Command.SAID));
        actions.allow(Set.of(Command.WALK_NEXT));
        press(new JButton(), "PAGE_DOWN", 1000);
        assertThat(given).containsExactly(Command.WALK_NEXT);
    }

    @Test
    void aCommandThatIsNotPossibleIsNotGiven() {
        actions.allow(Set.of(Command.HELP));
        press(new JButton(), "SPACE", 1000);
        assertThat(given).isEmpty();
    }

    @Test
    void theTypedLetterOfACommandReachesNobody() {
        JButton button = new JButton();
        press(button, "SPACE", 1000);
        assertThat(dispatcher.dispatchKeyEvent(
                        new KeyEvent(button, KeyEvent.KEY_TYPED, 1000, 0, KeyEvent.VK_UNDEFINED, ' ')))
                .isTrue();
    }
}
