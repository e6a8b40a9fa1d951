package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.console.paint.Form;
import crowdline.console.prepare.list.ListView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.list.ListReader;
import crowdline.list.line.Aside;
import crowdline.list.line.Corrected;
import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.list.line.Meaning;
import crowdline.show.Act;
import crowdline.show.Show;
import java.awt.Component;
import java.awt.Container;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

public class ListPageTest {
    private static final Show EMPTY = ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null);

    private final SampleTools sample = new SampleTools(EMPTY);
    private final PreparePanel panel = new PreparePanel(new Appearance(Themes.DAY, Zoom.NONE), sample.tools);

    private <T extends Component> T named(Class<T> type, String name) {
        return find(panel.listPage(), type, name);
    }

    public static <T extends Component> T find(Container in, Class<T> type, String name) {
        T found = search(in, type, name);
        if (found == null) {
            throw new AssertionError("there is no " + type.getSimpleName() + " called " + name);
        }
        return found;
    }

    private static <T extends Component> @Nullable T search(Container in, Class<T> type, String name) {
        for (Component child : in.getComponents()) {
            String called = child.getAccessibleContext() == null
                    ? null
                    : child.getAccessibleContext().getAccessibleName();
            if (type.isInstance(child) && called != null && called.startsWith(name)) {
                return type.cast(child);
            }
            T deeper = child instanceof Container inner ? search(inner, type, name) : null;
            if (deeper != null) {
                return deeper;
            }
        }
        return null;
    }

    public static void press(JComponent on, String key) {
        Object name = on.getInputMap().get(KeyStroke.getKeyStroke(key));
        on.getActionMap().get(name).actionPerformed(null);
    }

    /** Presses a key that works wherever the focus is. */
    private void pressWithin(String key) {
        Object name = panel.listPage()
                .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .get(KeyStroke.getKeyStroke(key));
        panel.listPage().getActionMap().get(name).actionPerformed(null);
    }

    private void paste(String list) {
        panel.pasteList();
        named(JTextArea.class, "The pilot's list").setText(list);
    }

    private String said(String name) {
        return named(JTextComponent.class, name).getText();
    }

    @SuppressWarnings("unchecked")
    private JList<ListView.Row> read() {
        return named(JList.class, "Figures read");
    }

    private void choose(String kind) {
        named(JComboBox.class, "Kind of aircraft").setSelectedItem(kind);
    }

    /** A show is shown a moment after it is begun; a list may be asked for in that moment. */
    @Test
    void aListThatIsOpenStaysWhereAShowIsBegun() {
        paste("loop");
        panel.begin();
        assertThat(panel.back()).as("the list is open").isTrue();
        panel.begin();
        assertThat(panel.page()).isEqualTo(Page.SHOW);
    }

    @Test
    void everyLineShowsWhatItIsTakenForAndWhatIsAssumed() {
        paste("loop at 600 ft\n2 turn spin, centre\nsomething upside downish");
        ListView.Row loop = read().getModel().getElementAt(0);
        assertThat(loop.figure()).isEqualTo("loop");
        assertThat(loop.told()).isEqualTo("600 ft");
        assertThat(loop.assumed()).isEqualTo("assumed: place, speed");
        assertThat(loop.mark().form()).isEqualTo(Form.DISC);
        ListView.Row spin = read().getModel().getElementAt(1);
        assertThat(spin.told()).isEqualTo("2 turns, centre");
        assertThat(spin.assumed()).isEqualTo("assumed: height, speed");
    }

    @Test
    void whereItComesFromIsReadInEachLine() {
        paste("run in from the left\nloop");
        assertThat(read().getModel().getElementAt(0).told()).isEqualTo("from the left");
    }

    @Test
    void whatWasTakenOutIsCountedNoLonger() {
        paste("loop\nslow roll\nspin");
        assertThat(said("What was read")).isEqualTo("3 figures read");
        read().setSelectedIndex(1);
        press(read(), "DELETE");
        assertThat(said("What was read")).isEqualTo("2 figures read");
        press(read(), "INSERT");
        assertThat(said("What was read")).isEqualTo("3 figures read");
    }

    @Test
    void whatNamesNoFigureIsSaidToBeLeftOut() {
        paste("Hi Bob, see you on Sunday\nloop\nslow roll");
        choose("old trainer");
        assertThat(said("What is wrong")).startsWith("Not taken as a figure to fly: “Hi Bob");
        assertThat(panel.listPage().canMake()).isTrue();
    }

    @Test
    void whatWasLeftOutIsShownInItsPlaceAndTakenInByAKey() {
        paste("Hi Bob, see you on Sunday\nloop\nsomething nobody has seen\nslow roll\nAll the best, Ada");
        choose("old trainer");
        assertThat(figures()).containsExactly("loop", "slow roll");
        assertThat(said("What was read")).matches("2 figures read; \\d left out: Alt\\+L shows them");

        pressWithin("alt L");
        int at = figures().indexOf("something nobody has seen");
        assertThat(at)
                .isGreaterThan(figures().indexOf("loop"))
                .isLessThan(figures().indexOf("slow roll"));
        assertThat(read().getModel().getElementAt(at).mark().word()).isEqualTo("left out");
        read().setSelectedIndex(at);
        press(read(), "INSERT");
        assertThat(read().getModel().getElementAt(at).mark().word()).isEqualTo("only a time");
        assertThat(said("What was read")).startsWith("3 figures read");
        press(read(), "DELETE");
        assertThat(read().getModel().getElementAt(at).mark().word()).isEqualTo("left out");
        press(read(), "INSERT");

        pressWithin("alt L");
        assertThat(figures())
                .as("what was taken in stays")
                .containsExactly("loop", "something nobody has seen", "slow roll");
        panel.listPage().make();
        assertThat(sample.editing.now().acts().get(0).figures().stream()
                        .filter(figure -> !figure.transit())
                        .map(figure -> figure.figure()))
                .containsExactly("loop", "something nobody has seen", "slow roll");
    }

    /** Esc is pressed for a menu as well, and a mail is not found again so quickly. */
    @Test
    void whatWasPastedIsStillThereWhereItIsLeftBeforeItIsAnAct() {
        paste("loop\nslow roll\nAll the best, Ada");
        choose("old trainer");
        named(JTextField.class, "Who flies").setText("Ada Merrow");
        read().setSelectedIndex(1);
        press(read(), "DELETE");
        assertThat(panel.back()).isTrue();

        panel.pasteList();
        assertThat(said("The pilot's list")).startsWith("loop\nslow roll");
        assertThat(said("Who flies")).isEqualTo("Ada Merrow");
        assertThat(read().getModel().getElementAt(1).mark().word()).isEqualTo("left out");
        assertThat(panel.listPage().canMake()).isTrue();

        panel.listPage().make();
        assertThat(find(panel, JTextArea.class, "What to do first").getText())
                .as("until its times are known")
                .contains("being flown");
        panel.pasteList();
        assertThat(said("The pilot's list")).as("it is an act by now").isEmpty();
        assertThat(said("Who flies")).isEmpty();
        assertThat(panel.listPage().canMake()).isFalse();
    }

    @Test
    void whatALetterSaysOfTheActStandsInItsFieldsUntilSomebodyTypesAnother() {
        paste("Hi Sam, my slot is 15:20, about 8 min.\n1. loop\n2. slow roll\n3. spin\nCheers, Ada Quillan");
        assertThat(said("When it begins")).isEqualTo("15:20");
        assertThat(said("Who flies")).isEqualTo("Ada Quillan");
        assertThat(said("How many minutes")).isEqualTo("8");

        named(JTextField.class, "Who flies").setText("A. Quillan");
        paste("Hi Sam, my slot is 15:40.\n1. loop\n2. slow roll\n3. spin\nCheers, Ada Quillan");
        assertThat(said("When it begins")).isEqualTo("15:40");
        assertThat(said("Who flies")).as("as typed").isEqualTo("A. Quillan");

        paste("loop, slow roll");
        assertThat(said("When it begins")).as("as without a letter").isEqualTo("14:00");
    }

    /** The slot is offered behind the acts there are, unless somebody typed one. */
    @Test
    void slotIsOfferedAnewUntilOneIsTyped() {
        paste("loop");
        choose("old trainer");
        String first = said("When it begins");
        panel.listPage().make();
        panel.pasteList();
        assertThat(said("When it begins")).isNotEmpty().isNotEqualTo(first);
        named(JTextField.class, "When it begins").setText("16:20");
        panel.back();
        panel.pasteList();
        assertThat(said("When it begins")).isEqualTo("16:20");
    }

    @Test
    void whatWasLeftOutOffersTheFiguresItMayBe() {
        FigureList list = new FigureList(
                List.of(new ListReader(SampleTools.CATALOGUE)
                        .read("loop")
                        .lines()
                        .get(0)),
                List.of(new Aside("the rolly thing", 1, List.of("slow roll", "barrel roll"))),
                List.of());

        Corrected read = Corrected.of(list);
        ListView view = ListView.of(read, false, true);
        assertThat(view.rows().get(1).choices()).containsExactly("slow roll", "barrel roll");
        assertThat(view.head()).isEqualTo("1 figure read; 1 left out: Insert takes one in");
        FigureList taken = read.with(-1, new Meaning.Named("barrel roll")).list();
        assertThat(taken.lines()).extracting(ListLine::figure).containsExactly("loop", "barrel roll");
        assertThat(taken.lines().get(1).sure()).isTrue();
        assertThat(taken.notes()).isEmpty();
    }

    private List<String> figures() {
        return IntStream.range(0, read().getModel().getSize())
                .mapToObj(i -> read().getModel().getElementAt(i).figure())
                .toList();
    }

    @Test
    void aLineThatIsNoneIsLeftOutByAKeyAndTakenInAgain() {
        paste("loop\nslow roll\nwobble of doom");
        choose("old trainer");
        read().setSelectedIndex(2);
        press(read(), "DELETE");
        assertThat(read().getModel().getElementAt(2).mark().word()).isEqualTo("left out");
        press(read(), "DELETE");
        assertThat(read().getModel().getElementAt(2).mark().word()).isNotEqualTo("left out");
        press(read(), "DELETE");
        panel.listPage().make();
        assertThat(sample.editing.now().acts().get(0).figures().stream()
                        .filter(f -> !f.transit())
                        .map(f -> f.figure()))
                .containsExactly("loop", "slow roll");
    }

    @Test
    void theListFillsTheHeightOfTheWindow() {
        paste("loop");
        panel.setSize(1280, 700);
        layOut(panel);
        layOut(panel);
        JTextArea box = named(JTextArea.class, "The pilot's list");
        assertThat(box.getParent().getHeight()).isGreaterThan(450);
    }

    private static void layOut(Container parent) {
        parent.doLayout();
        for (Component child : parent.getComponents()) {
            if (child instanceof Container inner) {
                layOut(inner);
            }
        }
    }

    @Test
    void aGuessOffersItsChoicesByNumberAndIsThenRead() {
        paste("loop\nupside down pas\nspin");
        ListView.Row guess = read().getModel().getElementAt(1);
        assertThat(guess.choices()).isNotEmpty();
        assertThat(said("What was read")).isEqualTo("3 figures read; 1 is a guess: press its number");
        paste("loop\nupside down pas\nspin\nupside down pas");
        assertThat(said("What was read")).isEqualTo("4 figures read; 2 are guesses: press a number for each");
        paste("loop\nupside down pas\nspin");
        read().setSelectedIndex(1);
        press(read(), "1");
        ListView.Row chosen = read().getModel().getElementAt(1);
        assertThat(chosen.figure()).isEqualTo(guess.choices().get(0));
        assertThat(chosen.choices()).isEmpty();
        assertThat(said("What was read")).isEqualTo("3 figures read");
        named(JTextArea.class, "The pilot's list").append("\nloop");
        assertThat(read().getModel().getElementAt(1)).isEqualTo(chosen);
    }

    @Test
    void anActIsMadeWithItsWordsInOneStepThatCanBeTakenBack() {
        paste("take-off, loop, stall turn, slow roll, landing");
        assertThat(panel.listPage().canMake()).isFalse();
        assertThat(said("What is wrong")).isEqualTo("Choose the kind of aircraft.");
        choose("light aerobatic biplane");
        named(JTextField.class, "Who flies").setText("Ada Field");
        named(JTextField.class, "When it begins").setText("9:05");
        panel.listPage().make();
        panel.listPage().make();
        assertThat(sample.editing.now().acts()).hasSize(1);
        Act act = sample.editing.now().acts().get(0);
        assertThat(act.title()).isEqualTo("Ada Field, light aerobatic biplane");
        assertThat(act.slotStart()).isEqualTo(LocalTime.of(9, 5));
        assertThat(sample.editing.now().everyRemark()).isNotEmpty();
        assertThat(panel.inList()).isFalse();
        assertThat(sample.editing.undo()).contains("Add act “Ada Field, light aerobatic biplane”");
        assertThat(sample.editing.now()).isEqualTo(EMPTY);
        assertThat(sample.editing.redo()).isPresent();
        assertThat(sample.editing.now().acts()).containsExactly(act);
    }

    @Test
    void tenThousandLinesAreToldAndMakeNoAct() {
        paste("loop\n".repeat(10_000));
        choose("old trainer");
        assertThat(said("What is wrong")).startsWith("The list has 10,000 lines");
        assertThat(panel.listPage().canMake()).isFalse();
        panel.listPage().make();
        assertThat(sample.editing.now()).isEqualTo(EMPTY);
    }

    @Test
    void aSlotThatIsNoTimeIsAskedFor() {
        paste("loop");
        choose("old trainer");
        for (String typed : List.of("", "25:00", "two", "14:3", "-1:00")) {
            named(JTextField.class, "When it begins").setText(typed);
            assertThat(said("What is wrong")).as(typed).startsWith("When does it begin?");
            assertThat(panel.listPage().canMake()).as(typed).isFalse();
        }
        named(JTextField.class, "When it begins").setText("14.35");
        assertThat(panel.listPage().canMake()).isTrue();
    }

    @Test
    void anyWordsAreAFigureOfWhatIsOnlyTimed() {
        paste("smoke trellis over the lake\nloop (30 s)\nbreak (0:20)");
        choose("formation");
        assertThat(read().getModel().getElementAt(0).mark().word()).isEqualTo("only a time");
        assertThat(read().getModel().getElementAt(1).told()).isEqualTo("30 s");
        panel.listPage().make();
        assertThat(sample.editing.now().acts()).hasSize(1);
    }

    @Test
    void formulasAndNamesThatRunTheOtherWayAreJustWords() {
        paste("=HYPERLINK(\"x\")\nloop\n<html><b>roll</b>");
        choose("old trainer");
        named(JTextField.class, "How the act is announced").setText("<html>عرض جوي =1+1");
        panel.listPage().make();
        assertThat(sample.editing.now().acts()).extracting(Act::title).containsExactly("<html>عرض جوي =1+1");
    }

    @Test
    void whatWasChosenForALineIsForgottenWhenItReadsOtherwise() {
        paste("loop\nupside down pas");
        read().setSelectedIndex(1);
        press(read(), "1");
        named(JTextArea.class, "The pilot's list").setText("loop\nupside down wobbly pas");
        assertThat(read().getModel().getElementAt(1).mark().word()).isNotEqualTo("read");
    }
}
