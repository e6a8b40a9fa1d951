package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.console.keys.Command;
import crowdline.console.live.LiveView;
import crowdline.console.live.SampleLiveViews;
import crowdline.console.place.Place;
import java.awt.Component;
import java.awt.Dialog.ModalityType;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JMenu;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** One key brings the incident page to the front, whatever is there. Keys come from the system, as a keyboard's do. */
@Tag("window")
class IncidentEverywhereTest {
    private @Nullable RealWindow window;
    private final List<Double> tookMs = new ArrayList<>();

    @BeforeEach
    void open() throws Exception {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
        window = new RealWindow(new StageHost());
    }

    @AfterEach
    void close() {
        RealWindow opened = window;
        if (opened != null) {
            opened.close();
            // The median, since other work on the machine counts too and a single press says little.
            if (tookMs.size() > 20) {
                assertThat(tookMs.stream().sorted().toList().get(tookMs.size() / 2))
                        .as("the event thread is done with the key, painting included, in ms: %s", tookMs)
                        .isLessThan(100);
            }
            // A single press may meet whatever else the machine does.
            assertThat(tookMs).allMatch(ms -> ms < 5000);
        }
    }

    private RealWindow window() {
        RealWindow opened = window;
        assertThat(opened).isNotNull();
        return opened;
    }

    private void go(Place place) {
        RealWindow.onEventThread(() -> {
            window().frame.go(place);
            return 0;
        });
    }

    /** By a key from the system; the word that leaves is typed through the system where a test is about that. */
    private void callAndLeave(String from) {
        callAndLeave(from, true);
    }

    private void callAndLeave(String from, boolean throughTheSystem) {
        tookMs.add(throughTheSystem ? window().incident(from) : window().incidentAtOnce(from));
        window().leaveAtOnce();
    }

    /** Through the system in every state of Live, and in every place without a show. */
    @Test
    void fromEveryPlaceInEveryState() {
        Map<String, @Nullable LiveView> states = new LinkedHashMap<>(SampleLiveViews.all());
        states.put("no show", null);
        states.forEach((name, view) -> {
            for (Place place : Place.values()) {
                window().host.show(view);
                go(place);
                callAndLeave(name + ", " + place, place == Place.LIVE || view == null);
            }
        });
    }

    /** Through the system from each kind of component in each place. */
    @Test
    void fromEveryComponentThatCanHaveTheKeys() {
        int walked = 0;
        for (Place place : Place.values()) {
            Set<Class<?>> kinds = new HashSet<>();
            go(place);
            for (Component component : RealWindow.focusable(window().frame)) {
                go(place);
                window().focus(component);
                callAndLeave(place + ", " + component.getClass(), kinds.add(component.getClass()));
                walked++;
            }
        }
        assertThat(walked).isGreaterThan(100);
    }

    @Test
    void fromTheSheetOfKeysInEveryPlace() {
        for (Place place : Place.values()) {
            go(place);
            window().press(KeyEvent.VK_F1);
            callAndLeave("keys of " + place);
        }
        // As long as that is all that was pressed, I does it in Live.
        window().press(KeyEvent.VK_F1);
        window().press(KeyEvent.VK_I);
        window().await("I opens it as well", window()::isPageShowing);
        window().leave("I");
    }

    @Test
    void fromEveryMenu() {
        List<JMenu> menus =
                RealWindow.onEventThread(() -> RealWindow.all(window().frame.getJMenuBar()).stream()
                        .filter(JMenu.class::isInstance)
                        .map(JMenu.class::cast)
                        .toList());
        assertThat(menus).hasSizeGreaterThan(4);
        for (JMenu menu : menus) {
            open(window().frame.getJMenuBar(), menu, menu.getPopupMenu());
            callAndLeave(menu.getText());
            for (Component item : menu.getMenuComponents()) {
                if (item instanceof JMenu inner) {
                    open(window().frame.getJMenuBar(), menu, menu.getPopupMenu(), inner, inner.getPopupMenu());
                    callAndLeave(inner.getText());
                }
            }
        }
    }

    private void open(MenuElement... path) {
        RealWindow.onEventThread(() -> {
            MenuSelectionManager.defaultManager().setSelectedPath(path);
            return 0;
        });
        window().await(
                        "the menu is open",
                        () -> path[path.length - 1].getComponent().isShowing());
    }

    @Test
    void fromEveryBoxThatIsOpen() {
        go(Place.WORDS);
        // With no figure chosen nothing can be tied to a moment, and the boxes for it stand there dim.
        List<JComboBox<?>> boxes = window().boxes(window().frame).stream()
                .filter(JComboBox::isEnabled)
                .toList();
        assertThat(boxes).as("the kind, and who says it in each language").hasSize(3);
        for (JComboBox<?> box : boxes) {
            go(Place.WORDS);
            window().focus(box);
            window().press(KeyEvent.VK_DOWN, KeyEvent.VK_ALT);
            window().await("the box is open", box::isPopupVisible);
            callAndLeave("the box " + box.getAccessibleContext().getAccessibleName());
            assertThat(box.isPopupVisible()).isFalse();
        }
        go(Place.LIVE);
        window().pressUntil(
                        "pedals are open",
                        () -> window().otherWindows().findAny().isPresent(),
                        KeyEvent.VK_B,
                        KeyEvent.VK_CONTROL);
        Window pedals = window().inFront();
        JComboBox<?> speed = window().boxes(pedals).get(0);
        window().focus(speed);
        RealWindow.onEventThread(() -> {
            speed.showPopup();
            return 0;
        });
        callAndLeave("the speed of a pedal");
    }

    /**
     * Each window through the system as it comes up. Then with the keys in one component of each kind that a window before it
     * did not have: what a component does with a key hangs on its kind, not on the window it is in.
     */
    @Test
    void fromEveryWindowOfItsOwn() {
        Set<Class<?>> walked = new HashSet<>();
        OwnWindows own = new OwnWindows(window());
        OwnWindows.all()
                .forEach((maker, windows) -> windows.forEach((name, how) -> {
                    Runnable opening = () -> how.accept(own);
                    opening.run();
                    boolean another = OwnWindows.hasAnother(window(), walked);
                    callAndLeaveWindow(maker + ", " + name, true);
                    if (another) {
                        walk(maker + ", " + name, opening, walked);
                    }
                    assertThat(window().host.quit)
                            .as("%s is not answered by it", name)
                            .isZero();
                }));
        assertThat(walked).hasSizeGreaterThan(12);
    }

    /** From one component of each kind that is not among those walked, which they then are. */
    private void walk(String name, Runnable opening, Set<Class<?>> walked) {
        opening.run();
        Class<?> next = OwnWindows.focusAnother(window(), name, walked);
        while (next != null) {
            walked.add(next);
            callAndLeaveWindow(name + ", " + next.getSimpleName(), false);
            opening.run();
            next = OwnWindows.focusAnother(window(), name, walked);
        }
        window().incidentAtOnce(name);
        window().leaveAtOnce();
    }

    private void callAndLeaveWindow(String from, boolean throughTheSystem) {
        Window shown = window().inFront();
        callAndLeave(from, throughTheSystem);
        assertThat(shown.isShowing()).as(from).isFalse();
    }

    @Test
    void fromWindowsNobodyHasThoughtOf() {
        for (ModalityType modality : ModalityType.values()) {
            JTable table = new JTable(2, 2);
            window().begin(() -> {
                JDialog first = new JDialog(window().frame, "A stranger", modality);
                first.add(table);
                first.setBounds(window().frame.getBounds());
                first.setVisible(true);
            });
            window().inFront();
            RealWindow.onEventThread(() -> {
                table.changeSelection(0, 0, false, false);
                return 0;
            });
            window().focus(table);
            window().type("a");
            window().await("a cell is written in", table::isEditing);
            callAndLeave("a stranger's table, " + modality);
            assertThat(window().host.onAir.given).doesNotContain(Command.BY_AIRCRAFT);
        }
    }

    @Test
    void whileTheMouseDrags() {
        go(Place.WALK);
        Rectangle bounds = RealWindow.onEventThread(() -> new Rectangle(
                window().frame.getLocationOnScreen(), window().frame.getSize()));
        Robot robot = window().robot();
        robot.mouseMove(bounds.x + 300, bounds.y + (int) (bounds.height * 0.82));
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseMove(bounds.x + 700, bounds.y + (int) (bounds.height * 0.82));
        tookMs.add(window().incident("a drag"));
        robot.mouseMove(bounds.x + 200, bounds.y + (int) (bounds.height * 0.82));
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.delay(50);
        assertThat(RealWindow.onEventThread(window()::isPageShowing)).isTrue();
        window().leave("a drag");
    }

    @Test
    void fromTheFootLine() {
        for (Place place : Place.values()) {
            go(place);
            List<JButton> buttons = window().shown(window().frame.getContentPane(), JButton.class).stream()
                    .filter(b -> b.getText().equals("F12 Incident page"))
                    .toList();
            assertThat(buttons).as(place.name()).hasSize(1);
            RealWindow.onEventThread(() -> {
                JButton button = buttons.get(0);
                assertThat(button.getWidth()).isGreaterThanOrEqualTo(button.getPreferredSize().width);
                button.doClick(0);
                return 0;
            });
            assertThat(RealWindow.onEventThread(window()::isPageShowing)).isTrue();
            window().leaveAtOnce();
        }
    }

    @Test
    void aNoteHalfWrittenIsStillThereAfterwards() {
        go(Place.WALK);
        window().press(KeyEvent.VK_N);
        window().await(
                        "there is a note to write",
                        () -> !window().shown(window().frame, JTextField.class).isEmpty());
        JTextField note = window().shown(window().frame, JTextField.class).get(0);
        window().await("the note has the keys", note::isFocusOwner);
        window().type("abc");
        callAndLeave("a note");
        window().press(KeyEvent.VK_D);
        window().press(KeyEvent.VK_F4);
        window().await("the note has the keys again", note::isFocusOwner);
        window().type("d");
        window().press(KeyEvent.VK_ENTER);
        window().await("the note is kept", () -> !note.isShowing());
        assertThat(RealWindow.onEventThread(() -> window().host.walk.note(0))).isEqualTo("abcd");
    }

    @Test
    void aRemarkHalfWrittenIsStillThereAfterwards() {
        window().press(KeyEvent.VK_F3);
        window().await(
                        "words are open",
                        () -> !window().shown(window().frame, JTextArea.class).isEmpty());
        window().press(KeyEvent.VK_K, KeyEvent.VK_CONTROL);
        JTextComponent text = window().shown(window().frame, JTextArea.class).stream()
                .filter(t -> "What to say".equals(t.getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow();
        window().focus(text);
        window().type("mind");
        callAndLeave("a remark");
        window().press(KeyEvent.VK_F3);
        assertThat(RealWindow.onEventThread(() -> text.getText())).isEqualTo("mind");
        window().await("it can be gone on with", text::isShowing);
    }

    @Test
    void theShowIsToldOnceHoweverOftenTheKeyIsPressed() {
        for (int i = 0; i < 3; i++) {
            window().incident("again");
        }
        assertThat(window().host.onAir.given).containsExactly(Command.INCIDENT);
        window().leave("again");
        window().incident("another");
        assertThat(window().host.onAir.given).containsExactly(Command.INCIDENT, Command.INCIDENT);
    }

    @Test
    void aShowThatIsOpenedWhileThePageIsInFrontIsToldThen() {
        window().host.show(null);
        window().incident("no show");
        assertThat(window().host.onAir.given).isEmpty();
        window().host.show(SampleLiveViews.flying());
        window().await("the show is told", () -> window().host.onAir.given.contains(Command.INCIDENT));
        window().leave("no show at first");
    }

    /** Space goes through the words, and neither it nor anything but a wrong letter disturbs the word that leaves. */
    @Test
    void spaceGoesThroughTheWordsAndDoesNotDisturbTheWordThatLeaves() {
        window().host.show(SampleLiveViews.incident());
        go(Place.LIVE);
        window().incident("it is open");
        window().type("res");
        for (int key : new int[] {KeyEvent.VK_SPACE, KeyEvent.VK_BACK_SPACE, KeyEvent.VK_DOWN, KeyEvent.VK_ESCAPE}) {
            window().press(key);
        }
        window().type("ume");
        window().await("the word is heard", () -> window().host.onAir.resumed == 1);
        assertThat(window().host.onAir.given).isEmpty();
    }
}
