package crowdline.console.keys;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.place.Place;
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
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class KeyDispatcherTest {
    private final List<Command> given = new ArrayList<>();
    private final CommandActions actions = new CommandActions(given::add);
    private boolean ours = true;
    private boolean writing;
    private boolean taking;
    private boolean finding;
    private final KeyDispatcher dispatcher = new KeyDispatcher(actions, new KeyDispatcher.Room() {
        @Override
        public boolean owns(KeyEvent press) {
            return ours;
        }

        @Override
        public boolean isWriting() {
            return writing;
        }

        @Override
        public boolean isFinding() {
            return finding;
        }

        @Override
        public boolean take(KeyEvent press, boolean held) {
            return taking;
        }
    });

    @Test
    void whatIsPressedWhileAShowIsBegunIsDoneInOrderOnceItCanBe() throws Exception {
        JPanel on = new JPanel();
        actions.allow(Set.of());
        dispatcher.await();
        assertThat(press(on, "ctrl I", 1)).isTrue();
        assertThat(press(on, "ctrl P", 400)).isTrue();
        dispatcher.ready();
        assertThat(given).as("not possible yet").isEmpty();

        actions.allow(Set.of(Command.PASTE_LIST, Command.PRINT, Command.PREPARE));
        for (int i = 0; i < 200 && given.size() < 2; i++) {
            Thread.sleep(25);
            SwingUtilities.invokeAndWait(() -> {});
        }
        assertThat(given).containsExactly(Command.PASTE_LIST, Command.PRINT);
        press(on, "F2", 800);
        assertThat(given).as("nothing is kept any more").hasSize(3);
    }

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
                stroke.getModifiers()
                        & (InputEvent.CTRL_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK | InputEvent.ALT_DOWN_MASK),
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
            Set<Command.Scope> everywhere = EnumSet.of(Command.Scope.WINDOW, Command.Scope.FIRST);
            boolean here = other.scope() == command.scope()
                    || everywhere.contains(other.scope())
                    || everywhere.contains(command.scope())
                    || isBeside(command, other)
                    || isBeside(other, command);
            if (here) {
                commands.add(other);
            }
        }
        return commands;
    }

    /** Steps of the edited show are taken in every place but Live. */
    private static boolean isBeside(Command step, Command other) {
        return step.scope() == Command.Scope.EDIT && other.scope() != Command.Scope.LIVE;
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
    void altWithASignWorksWhileAFieldIsWrittenInAndAltWithAnArrowBelongsToIt() {
        actions.allow(EnumSet.of(Command.FLOWN_BY, Command.NEXT_MOMENT, Command.PAGE_1, Command.FLY_FASTER));
        writing = true;
        press(new JButton(), "alt K", 1000);
        press(new JButton(), "alt PERIOD", 2000);
        press(new JButton(), "alt 1", 3000);
        assertThat(press(new JButton(), "alt UP", 4000)).isFalse();
        assertThat(press(new JButton(), "alt B", 5000)).as("no command has it").isFalse();
        assertThat(given).containsExactly(Command.FLOWN_BY, Command.NEXT_MOMENT, Command.PAGE_1);
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

    /** In a dialog, a menu, a field, under whatever takes keys first, and with other keys down. */
    @Test
    void theIncidentPageIsHeardBeforeAnything() {
        ours = false;
        writing = true;
        taking = true;
        actions.allow(Set.of());
        dispatcher.alsoHear(Map.of("F12", Command.NEXT, "ctrl F12", Command.NEXT));
        for (String key : List.of("F12", "ctrl F12", "shift F12", "ctrl shift F12")) {
            given.clear();
            assertThat(press(new JButton(), key, 1000)).isTrue();
            assertThat(given).as(key).containsExactly(Command.INCIDENT);
        }
    }

    /** The release of the last press may have gone to a dialog that this press closed. */
    @Test
    void theIncidentPageIsCalledThoughItsKeyWasNotSeenToBeLetGo() {
        press(new JButton(), "F12", 1000);
        press(new JButton(), "F12", 600_000);
        assertThat(given).containsExactly(Command.INCIDENT, Command.INCIDENT);
    }

    @Test
    void noOtherCommandIsGivenByAKeyOfSomethingInFront() {
        ours = false;
        for (Command command : Command.values()) {
            if (command.scope() != Command.Scope.FIRST) {
                command.keys()
                        .forEach(key -> assertThat(press(new JButton(), key, 1000))
                                .as(key)
                                .isFalse());
            }
        }
        assertThat(given).isEmpty();
    }

    /** Enter chooses from a menu, which closes; held down it must not go on as a key of the place behind. */
    @Test
    void aKeyHeldDownSinceAMenuWasOpenIsNoCommand() {
        ours = false;
        press(new JButton(), "ENTER", 1000);
        ours = true;
        press(new JButton(), "ENTER", 1030);
        assertThat(given).isEmpty();
        release(new JButton(), "ENTER", 1060);
        press(new JButton(), "ENTER", 2000);
        assertThat(given).containsExactly(Command.SAID);
    }

    @Test
    void theTypedLetterOfACommandReachesNobody() {
        JButton button = new JButton();
        press(button, "SPACE", 1000);
        assertThat(dispatcher.dispatchKeyEvent(
                        new KeyEvent(button, KeyEvent.KEY_TYPED, 1000, 0, KeyEvent.VK_UNDEFINED, ' ')))
                .isTrue();
    }

    @Test
    void whereLettersFindRowsNoneOfThemIsACommand() {
        finding = true;
        JList<String> list = new JList<>(new String[] {"turn"});
        for (char letter = 'A'; letter <= 'Z'; letter++) {
            assertThat(press(list, String.valueOf(letter), 10)).isFalse();
            release(list, String.valueOf(letter), 20);
        }
        assertThat(press(list, "shift T", 30)).isFalse();
        release(list, "T", 35);
        assertThat(given).isEmpty();
        assertThat(press(list, "ctrl T", 40)).isTrue();
        release(list, "T", 45);
        assertThat(press(list, "F2", 50)).isTrue();
        assertThat(press(list, "'?'", 60)).isTrue();
        assertThat(given).containsExactly(Command.THEME, Command.PREPARE, Command.HELP);
    }
}
