package crowdline.console.prepare;

import static crowdline.console.prepare.ListPageTest.find;
import static crowdline.console.prepare.ListPageTest.press;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.console.prepare.list.ListView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.text.Highlighter;
import org.junit.jupiter.api.Test;

/** Whoever reads along corrects what was read by keys, and sees in the letter what became a figure. */
class CorrectingListsTest {
    private final SampleTools sample =
            new SampleTools(ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null));
    private final PreparePanel panel = new PreparePanel(new Appearance(Themes.DAY, Zoom.NONE), sample.tools);

    private JTextArea letter() {
        return find(panel.listPage(), JTextArea.class, "The pilot's list");
    }

    private void paste(String list) {
        panel.pasteList();
        letter().setText(list);
        find(panel.listPage(), JComboBox.class, "Kind of aircraft").setSelectedItem("old trainer");
    }

    @SuppressWarnings("unchecked")
    private JList<ListView.Row> read() {
        return find(panel.listPage(), JList.class, "Figures read");
    }

    private List<String> figures() {
        return IntStream.range(0, read().getModel().getSize())
                .mapToObj(i -> read().getModel().getElementAt(i).figure())
                .toList();
    }

    private List<String> flown() {
        panel.listPage().make();
        return sample.editing.now().acts().get(0).figures().stream()
                .filter(f -> !f.transit())
                .map(f -> f.figure())
                .toList();
    }

    private void name(int row, String typed) {
        read().setSelectedIndex(row);
        press(read(), "ENTER");
        JTextField which = find(panel.listPage(), JTextField.class, "Which figure");
        which.setText(typed);
        which.postActionEvent();
    }

    @Test
    void anyLineCanBeNamedAnewHoweverSureItWasRead() {
        paste("loop at 900 ft\nslow roll\nspin");
        name(0, "square lo");
        ListView.Row row = read().getModel().getElementAt(0);
        assertThat(row.figure()).isEqualTo("square loop");
        assertThat(row.told()).as("what else it tells is kept").isEqualTo("900 ft");
        assertThat(row.mark().word()).isEqualTo("as you said");
        assertThat(read().getSelectedIndex()).isZero();
        name(1, "the wobble of old");
        assertThat(read().getModel().getElementAt(1).mark().word()).isEqualTo("only a time");
        assertThat(flown()).containsExactly("square loop", "the wobble of old", "spin");
    }

    @Test
    void theSearchIsLeftWithoutAChangeAndThenThePage() {
        paste("loop\nspin");
        read().setSelectedIndex(0);
        press(read(), "ENTER");
        assertThat(panel.listPage().canMake())
                .as("Ctrl+Enter makes no act while it is asked which figure")
                .isFalse();
        assertThat(panel.back()).isTrue();
        assertThat(panel.inList()).isTrue();
        assertThat(panel.listPage().canMake()).isTrue();
        assertThat(figures()).containsExactly("loop", "spin");
        assertThat(panel.back()).isTrue();
        assertThat(panel.inList()).isFalse();
        assertThat(sample.editing.now().acts()).isEmpty();
    }

    @Test
    void linesAreMovedAndEachStepIsTakenBack() {
        paste("loop\nslow roll\nspin");
        read().setSelectedIndex(2);
        press(read(), "alt UP");
        press(read(), "alt UP");
        press(read(), "alt UP");
        assertThat(figures()).containsExactly("spin", "loop", "slow roll");
        assertThat(read().getSelectedIndex()).as("goes with it").isZero();
        press(read(), "alt DOWN");
        assertThat(figures()).containsExactly("loop", "spin", "slow roll");
        press(read(), "DELETE");
        press(read(), "ctrl Z");
        press(read(), "ctrl Z");
        assertThat(figures()).containsExactly("spin", "loop", "slow roll");
        assertThat(flown()).containsExactly("spin", "loop", "slow roll");
    }

    @Test
    void nothingIsTakenBackThatWasNotDone() {
        paste("loop\nspin");
        press(read(), "ctrl Z");
        press(read(), "alt UP");
        press(read(), "INSERT");
        press(read(), "ctrl Z");
        assertThat(figures()).containsExactly("loop", "spin");
        assertThat(read().getModel().getElementAt(0).mark().word()).isEqualTo("read");
    }

    @Test
    void whatWasSaidOfALineStaysWhereAnotherIsTypedAheadOfIt() {
        paste("loop\nspin");
        name(1, "flat spin");
        letter().insert("take-off\n", 0);
        assertThat(figures()).containsExactly("take-off", "loop", "flat spin");
        letter().setText("");
        assertThat(figures()).isEmpty();
    }

    private List<String> marked() {
        return Arrays.stream(letter().getHighlighter().getHighlights())
                .sorted(java.util.Comparator.comparing(Highlighter.Highlight::getStartOffset))
                .map(h -> letter().getText().substring(h.getStartOffset(), h.getEndOffset()))
                .toList();
    }

    @Test
    void theLetterShowsWhatBecameAFigure() {
        paste("Hi Bob, see you on Sunday\nloop\nslow roll\nspin\nAll the best, Ada");
        assertThat(marked()).containsExactly("loop", "slow roll", "spin");
        read().setSelectedIndex(1);
        press(read(), "DELETE");
        read().setSelectedIndex(0);
        assertThat(marked()).as("what is left out has no mark").containsExactly("loop", "spin");
        read().setSelectedIndex(1);
        assertThat(marked()).as("but where it is chosen").containsExactly("loop", "slow roll", "spin");
        letter().updateUI();
        assertThat(marked()).as("at another size, in other colours").containsExactly("loop", "slow roll", "spin");
    }

    @Test
    void whatWasLeftOutIsGoneTo() {
        paste("Hi Bob, see you on Sunday\nloop\nslow roll\nspin");
        read().setSelectedIndex(2);
        Object name = panel.listPage()
                .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .get(KeyStroke.getKeyStroke("alt L"));
        panel.listPage().getActionMap().get(name).actionPerformed(null);
        assertThat(read().getSelectedValue().text()).isEqualTo("Hi Bob, see you on Sunday");
    }
}
