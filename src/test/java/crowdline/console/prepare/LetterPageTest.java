package crowdline.console.prepare;

import static crowdline.console.prepare.ListPageTest.find;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.event.FocusEvent;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

/** What the page of the list makes of a letter, and where the keys come to in it. */
class LetterPageTest {
    private final PreparePanel panel = new PreparePanel(
            new Appearance(Themes.DAY, Zoom.NONE),
            new SampleTools(ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null)).tools);

    private void paste(String list) {
        panel.pasteList();
        find(panel.listPage(), JTextArea.class, "The pilot's list").setText(list);
    }

    private JList<?> read() {
        return find(panel.listPage(), JList.class, "Figures read");
    }

    private JComboBox<?> kind() {
        return find(panel.listPage(), JComboBox.class, "Kind of aircraft");
    }

    @Test
    void theKindALetterNamesIsChosenUntilSomebodyChoosesAnother() {
        paste("I fly an old trainer.\nloop\nslow roll");
        assertThat(kind().getSelectedItem()).isEqualTo("old trainer");
        paste("I fly the glider.\nloop\nslow roll");
        assertThat(kind().getSelectedItem()).isEqualTo("aerobatic glider");
        paste("loop\nslow roll");
        assertThat(kind().getSelectedIndex()).isZero();
        kind().setSelectedItem("large biplane");
        paste("I fly an old trainer.\nloop\nslow roll");
        assertThat(kind().getSelectedItem()).as("as chosen").isEqualTo("large biplane");
    }

    @Test
    void theFirstGuessIsChosenAsTheKeysComeToTheList() {
        paste("loop\nslow roll\nupside down pas\nlanding");
        assertThat(read().getSelectedIndex()).isZero();
        FocusEvent comes =
                new FocusEvent(read(), FocusEvent.FOCUS_GAINED, false, null, FocusEvent.Cause.TRAVERSAL_FORWARD);
        Arrays.stream(read().getFocusListeners()).forEach(listener -> listener.focusGained(comes));
        assertThat(read().getSelectedIndex()).isEqualTo(2);
    }

    @Test
    void theMinutesStandThereOnlyWhereTheLetterSaysThemOrNothingIsListed() {
        JTextField minutes = find(panel.listPage(), JTextField.class, "How many minutes");
        paste("loop\nslow roll");
        assertThat(minutes.getText()).as("they follow from the figures").isEmpty();
        assertThat(minutes.isEnabled()).isFalse();
        paste("We are on at 15:30 for 12 minutes.\nloop\nslow roll");
        assertThat(minutes.getText()).isEqualTo("12");
        paste("");
        assertThat(minutes.isEnabled()).isTrue();
        assertThat(minutes.getText()).isEqualTo("12");
    }
}
