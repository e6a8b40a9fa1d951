package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import crowdline.console.edit.EditHost;
import crowdline.console.edit.Editing;
import crowdline.console.foot.FootBar;
import crowdline.console.keys.Command;
import crowdline.console.live.SampleOnAir;
import crowdline.console.live.SmallShow;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.prepare.SampleTools;
import crowdline.console.prepare.page.PrepareHost;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import crowdline.console.words.SampleWords;
import crowdline.console.words.WordsBasis;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.sight.fact.CrowdFacts;
import java.awt.Component;
import java.awt.Container;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The Words place in a real window, by keys. */
@Tag("window")
class WordsKeysTest {
    private final FakeHost host = new FakeHost();
    private @Nullable ConsoleFrame frame;
    private long whenMs = 10_000;

    @BeforeEach
    void open() throws Exception {
        assumeThat(GraphicsEnvironment.isHeadless()).as("there is a screen").isFalse();
        SwingUtilities.invokeAndWait(() -> {
            LookAndFeel.loadType();
            Appearance appearance = new Appearance(Themes.DAY, Zoom.NONE);
            LookAndFeel.wear(appearance);
            ConsoleFrame opened = new ConsoleFrame(host, appearance);
            host.frame = opened;
            opened.onAir(host.onAir);
            frame = opened;
            opened.setVisible(true);
            press(opened, KeyEvent.VK_F3, 0);
        });
        settle();
    }

    @AfterEach
    void close() throws Exception {
        ConsoleFrame opened = frame;
        if (opened != null) {
            SwingUtilities.invokeAndWait(opened::dispose);
        }
    }

    private static void settle() throws Exception {
        for (int i = 0; i < 3; i++) {
            SwingUtilities.invokeAndWait(() -> {});
        }
    }

    private ConsoleFrame frame() {
        ConsoleFrame opened = frame;
        assertThat(opened).isNotNull();
        return opened;
    }

    private void press(Component on, int code, int modifiers) {
        whenMs += 500;
        KeyboardFocusManager manager = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        manager.dispatchEvent(new KeyEvent(on, KeyEvent.KEY_PRESSED, whenMs, modifiers, code, KeyEvent.CHAR_UNDEFINED));
        manager.dispatchEvent(
                new KeyEvent(on, KeyEvent.KEY_RELEASED, whenMs + 50, modifiers, code, KeyEvent.CHAR_UNDEFINED));
    }

    private void ctrl(int code) throws Exception {
        SwingUtilities.invokeAndWait(() -> press(frame(), code, InputEvent.CTRL_DOWN_MASK));
        settle();
    }

    private <C extends Component> C named(Class<C> kind, String name) {
        return all(frame().getContentPane()).stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .filter(c -> name.equals(c.getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow();
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

    private List<String> texts() {
        return host.newest.remarks().stream().map(Remark::text).toList();
    }

    @Test
    void aRemarkIsWrittenTakenBackAndSavedByKeys() throws Exception {
        ctrl(KeyEvent.VK_K);
        JTextComponent text = named(JTextComponent.class, "What to say");
        SwingUtilities.invokeAndWait(() -> text.setText("Mind the rudder now."));
        settle();
        assertThat(texts()).containsExactly("The smoke is only paraffin.", "Mind the rudder now.");
        assertThat(frame().getTitle()).isEqualTo("day.json, not saved – Crowdline");
        assertThat(named(JTextComponent.class, "What will be said").getText()).isEqualTo("Said: Mind the rudder now.");
        assertThat(text.getHighlighter().getHighlights()).hasSize(1);

        ctrl(KeyEvent.VK_PERIOD);
        assertThat(text.getText()).startsWith("Mind the rudder, that is, the moving panel on the fin");
        assertThat(text.getHighlighter().getHighlights()).isEmpty();
        ctrl(KeyEvent.VK_Z);
        assertThat(text.getText()).isEqualTo("Mind the rudder now.");
        ctrl(KeyEvent.VK_UP);
        assertThat(texts()).containsExactly("Mind the rudder now.", "The smoke is only paraffin.");

        ctrl(KeyEvent.VK_S);
        assertThat(host.saved).containsExactly(host.newest);
        assertThat(frame().getTitle()).isEqualTo("day.json – Crowdline");
        ctrl(KeyEvent.VK_D);
        assertThat(texts()).containsExactly("The smoke is only paraffin.");
        assertThat(frame().getTitle()).startsWith("day.json, not saved");
    }

    @Test
    void savedGivesWayToTheNextLetter() throws Exception {
        ctrl(KeyEvent.VK_K);
        ctrl(KeyEvent.VK_S);
        frame().say(new Mark(Form.DISC, Tone.GOOD, "Saved day.json"));
        frame().stand(List.of(new Mark(Form.DIAMOND, Tone.CAUTION, "The pedal is not there")));
        settle();
        FootBar foot = named(FootBar.class, "Messages");
        assertThat(foot.getAccessibleContext().getAccessibleDescription())
                .startsWith("The pedal is not there. Saved day.json.");
        JTextComponent text = named(JTextComponent.class, "What to say");
        SwingUtilities.invokeAndWait(() -> text.setText("Mind the wind."));
        settle();
        assertThat(foot.getAccessibleContext().getAccessibleDescription()).startsWith("The pedal is not there");
        assertThat(frame().getTitle()).startsWith("day.json, not saved");
    }

    @Test
    void airPutIntoTheShowIsTakenBackAndSavedInPrepare() throws Exception {
        DayAir before = SmallShow.show().air();
        DayAir air = new DayAir(1008, 21, 240, 12, null);
        SwingUtilities.invokeAndWait(() -> {
            press(frame(), KeyEvent.VK_F2, 0);
            frame().keepAir(air);
        });
        settle();
        assertThat(host.newest.air()).isEqualTo(air);
        assertThat(frame().getTitle()).isEqualTo("day.json, not saved – Crowdline");
        ctrl(KeyEvent.VK_Z);
        assertThat(host.newest.air()).isEqualTo(before);
        assertThat(frame().getTitle()).isEqualTo("day.json – Crowdline");
        ctrl(KeyEvent.VK_Y);
        ctrl(KeyEvent.VK_S);
        assertThat(host.saved).containsExactly(SmallShow.show().withAir(air));
        assertThat(host.flown).containsExactly(air, before, air);
        SwingUtilities.invokeAndWait(() -> press(frame(), KeyEvent.VK_F3, 0));
        ctrl(KeyEvent.VK_K);
        SwingUtilities.invokeAndWait(() -> press(frame(), KeyEvent.VK_F2, 0));
        assertThat(menuItems()).contains("Undo Add a remark (The whole show)");
        ctrl(KeyEvent.VK_Z);
        assertThat(host.newest).isEqualTo(SmallShow.show().withAir(air));
        assertThat(named(FootBar.class, "Messages").getAccessibleContext().getAccessibleDescription())
                .startsWith("Took back: Add a remark (The whole show)");
        assertThat(menuItems()).contains("Undo Change the day's air", "Redo Add a remark (The whole show)");
    }

    /** A show that was never saved does not run, and has a day's air all the same. */
    @Test
    void airOfAShowThatDoesNotRunIsTheOneThatIsEdited() {
        Editing editing = new Editing();
        Windows windows =
                new Windows(frame(), new StageHost(false), () -> new Appearance(Themes.DAY, Zoom.NONE), () -> false);
        assertThat(windows.air(editing)).isEmpty();
        editing.openWithoutFile("New show", SmallShow.show());
        assertThat(windows.air(editing)).hasValue(SmallShow.show().air());
    }

    private List<String> menuItems() {
        List<String> names = new ArrayList<>();
        JMenuBar bar = frame().getJMenuBar();
        for (int m = 0; m < bar.getMenuCount(); m++) {
            JMenu menu = bar.getMenu(m);
            if (menu != null) {
                for (Component item : menu.getMenuComponents()) {
                    names.add(item.getAccessibleContext().getAccessibleName());
                }
            }
        }
        return names;
    }

    /** In Live a step back is one of the running show; what was edited stays, whatever is pressed. */
    @Test
    void keysOfStepsLeaveTheEditedShowAloneInLive() throws Exception {
        ctrl(KeyEvent.VK_K);
        Show edited = host.newest;
        SwingUtilities.invokeAndWait(() -> press(frame(), KeyEvent.VK_F5, 0));
        settle();
        ctrl(KeyEvent.VK_Z);
        ctrl(KeyEvent.VK_Y);
        assertThat(host.newest).isEqualTo(edited);
        assertThat(host.onAir.given).containsExactly(Command.TAKE_BACK);
        ctrl(KeyEvent.VK_S);
        assertThat(host.saved).containsExactly(edited);
        SwingUtilities.invokeAndWait(() -> press(frame(), KeyEvent.VK_F6, 0));
        ctrl(KeyEvent.VK_Z);
        assertThat(host.newest).isEqualTo(SmallShow.show());
    }

    /** What is shown is found once for each letter, not once more for every one who asks what can be done. */
    @Test
    void aLetterTypedIsJudgedOnce() throws Exception {
        AtomicInteger judged = new AtomicInteger();
        WordsBasis basis = SampleWords.BASIS;
        WordsBasis counting = new WordsBasis(
                basis.tradeWords(),
                figure -> {
                    judged.incrementAndGet();
                    return basis.called().apply(figure);
                },
                basis.said(),
                basis.voices(),
                basis.lasts(),
                basis.names());
        SwingUtilities.invokeAndWait(() -> {
            ConsoleFrame opened = Objects.requireNonNull(frame);
            opened.forgetEdit();
            opened.edit(new EditOpened("day.json", SmallShow.show(), counting));
        });
        settle();
        JList<?> places = named(JList.class, "Where remarks belong");
        SwingUtilities.invokeAndWait(() -> places.setSelectedIndex(2));
        JTextComponent text = named(JTextComponent.class, "What to say");
        judged.set(0);
        for (int letter = 0; letter < 20; letter++) {
            SwingUtilities.invokeAndWait(() -> text.replaceSelection("x"));
            settle();
        }
        assertThat(host.newest.acts().get(0).figures().get(0).remarks().get(0).text())
                .contains("x".repeat(20));
        assertThat(judged).hasValue(20);
    }

    @Test
    void aComputedFactBecomesARemarkByKeys() throws Exception {
        frame().showFacts(SampleWords.FACTS);
        settle();
        JList<?> places = named(JList.class, "Where remarks belong");
        JList<?> facts = named(JList.class, "Computed facts");
        assertThat(facts.getModel().getSize()).isZero();
        assertThat(named(JTextComponent.class, "Caution").getText()).isEqualTo(CrowdFacts.CAUTION);
        SwingUtilities.invokeAndWait(() -> {
            places.setSelectedIndex(2);
            assertThat(facts.requestFocusInWindow()).isTrue();
        });
        settle();
        SwingUtilities.invokeAndWait(() -> press(facts, KeyEvent.VK_DOWN, 0));
        assertThat(facts.getSelectedIndex()).isEqualTo(1);
        ctrl(KeyEvent.VK_F);
        assertThat(named(JTextComponent.class, "What to say").getText())
                .isEqualTo("The top is about one thousand two hundred feet up.");
        assertThat(named(JTextComponent.class, "Short form").getText())
                .isEqualTo("About one thousand two hundred feet up.");
        assertThat(named(JList.class, "Remarks").getModel().getSize()).isEqualTo(4);
        ctrl(KeyEvent.VK_Z);
        assertThat(host.newest).isEqualTo(SmallShow.show());
    }

    @Test
    void nothingReachesLiveUntilItIsAskedFor() throws Exception {
        ctrl(KeyEvent.VK_K);
        assertThat(host.intoLive).isEmpty();
        ctrl(KeyEvent.VK_L);
        assertThat(host.intoLive).containsExactly(host.newest);
    }

    @Test
    void lettersTypedIntoAFieldAreNoCommands() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            JTextComponent text = named(JTextComponent.class, "What to say");
            assertThat(text.requestFocusInWindow()).isTrue();
        });
        settle();
        SwingUtilities.invokeAndWait(() -> {
            press(named(JTextComponent.class, "What to say"), KeyEvent.VK_T, 0);
            press(named(JTextComponent.class, "What to say"), KeyEvent.VK_SPACE, 0);
        });
        assertThat(host.kept).isZero();
        assertThat(host.onAir.given).isEmpty();
    }

    @Test
    void anotherFigureIsChosenFromTheListByKeys() throws Exception {
        JList<?> places = named(JList.class, "Where remarks belong");
        JList<?> remarks = named(JList.class, "Remarks");
        SwingUtilities.invokeAndWait(() -> {
            places.setSelectedIndex(2);
            assertThat(remarks.getModel().getSize()).isEqualTo(3);
            remarks.setSelectedIndex(2);
        });
        assertThat(named(JTextComponent.class, "What to say").getText()).isEqualTo("It is two hundred metres high.");
        assertThat(named(JTextComponent.class, "Weight").getText()).isEqualTo("1");
    }

    private static final class FakeHost extends IdleHost implements EditHost {
        private final SampleOnAir onAir = new SampleOnAir();
        private final List<Show> saved = new ArrayList<>();
        private final List<Show> intoLive = new ArrayList<>();
        private Show newest = SmallShow.show();
        private final List<DayAir> flown = new ArrayList<>();
        private int kept;
        private @Nullable ConsoleFrame frame;

        @Override
        public EditHost edit() {
            return this;
        }

        @Override
        public PrepareHost prepare() {
            return new SampleTools(SmallShow.show());
        }

        @Override
        public void useAir(DayAir air, boolean toBeSaved) {
            flown.add(air);
        }

        @Override
        public void open() {
            ConsoleFrame window = frame;
            if (window != null) {
                window.edit(new EditOpened("day.json", SmallShow.show(), SampleWords.BASIS));
            }
        }

        @Override
        public void edited(Show show) {
            newest = show;
        }

        @Override
        public void save(Show show) {
            saved.add(show);
            ConsoleFrame window = frame;
            if (window != null) {
                window.tellEdit(edit -> edit.saved(show, "day.json"));
            }
        }

        @Override
        public void saveAs(Show show, Path file) {}

        @Override
        public void intoLive(Show show) {
            intoLive.add(show);
        }

        @Override
        public void keep(Appearance appearance) {
            kept++;
        }
    }
}
