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
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.text.Position;
import org.junit.jupiter.api.Test;

/** What the page of the list makes of a letter, and where the keys come to in it. */
class LetterPageTest {
    private final SampleTools sample =
            new SampleTools(ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null));
    private final PreparePanel panel = new PreparePanel(new Appearance(Themes.DAY, Zoom.NONE), sample.tools);

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

    private JTextField aircraft() {
        return find(panel.listPage(), JTextField.class, "What the aircraft is called");
    }

    @Test
    void theNameOfTheAircraftStandsInAFieldOfItsOwn() {
        paste("Pilot: Ada Quillan   Aircraft: Corvane 300\nloop\nslow roll");
        assertThat(aircraft().getText()).isEqualTo("Corvane 300");
        // What was typed stays, whatever the list says then.
        aircraft().setText("Petrel");
        paste("Pilot: Ada Quillan   Aircraft: Halvard T.7\nloop");
        assertThat(aircraft().getText()).isEqualTo("Petrel");
    }

    @Test
    void aKindIsNoNameOfAnAircraft() {
        paste("Pilot: Ada Quillan   Aircraft: Aerobatic glider\nloop\nslow roll");
        assertThat(aircraft().getText()).isEmpty();
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
    void aDigitChoosesWhatAGuessMeansAndGoesOnToTheNextGuessAndFindsNoRowByIt() {
        paste("upside down pas\nslow roll\n1 hour off the coast I was born\nupside down pas\nlanding");
        show("alt L");
        assertThat(read().getSelectedIndex()).isZero();
        assertThat(read().getNextMatch("ho", 0, Position.Bias.Forward)).isEqualTo(2);
        assertThat(read().getNextMatch("1", 0, Position.Bias.Forward))
                .as("its digits choose")
                .isNegative();
        Object key = read().getInputMap().get(KeyStroke.getKeyStroke("1"));
        read().getActionMap().get(key).actionPerformed(null);
        assertThat(read().getSelectedIndex()).isEqualTo(3);
        read().getActionMap().get(key).actionPerformed(null);
        assertThat(read().getSelectedIndex()).as("no guess is left").isEqualTo(3);
    }

    @Test
    void theKeysDoNotComeToWhatWasTakenOutThoughItCouldBeTakenIn() {
        paste("1. loop\n2. barrel roll\n3. upside down pas\nForget no. 2.");
        show("alt L");
        FocusEvent comes =
                new FocusEvent(read(), FocusEvent.FOCUS_GAINED, false, null, FocusEvent.Cause.TRAVERSAL_FORWARD);
        Arrays.stream(read().getFocusListeners()).forEach(listener -> listener.focusGained(comes));
        assertThat(read().getSelectedValue().toString()).contains("upside down pas");
    }

    @Test
    void theSlotIsAsLongAsTypedAndALetterIsThereAgainWhenItsActIsTakenBack() {
        String letter = "I fly an old trainer.\nloop\nslow roll";
        paste(letter);
        find(panel.listPage(), JTextField.class, "How many minutes").setText("9");
        panel.listPage().make();
        assertThat(sample.editing.now().acts().get(0).slotMinutes()).isEqualTo(9);
        sample.editing.undo();
        panel.pasteList();
        JTextArea list = find(panel.listPage(), JTextArea.class, "The pilot's list");
        assertThat(list.getText()).isEqualTo(letter);
        panel.listPage().make();
        panel.pasteList();
        assertThat(list.getText()).isEmpty();
    }

    @Test
    void aConditionIsNamedBeforeWhatOnlyTells() {
        paste(
                "I fly the glider.\nSequence, with the crowd at the middle:\n1. loop\n2. slow roll\n\nThe owners painted her.\n\n"
                        + "If the base is under 2500 ft, the flat show.");
        assertThat(find(panel.listPage(), JTextArea.class, "What is wrong").getText())
                .startsWith("Not taken as a figure to fly: “If the base is under");
    }

    @Test
    void twoActsInOneLetterAreAskedAbout() {
        paste("15:20 - me in the glider, 6 min\nloop\nslow roll\n\n15:40 - the team, 9 min\nbreak\nlanding");
        kind().setSelectedItem("aerobatic glider");
        assertThat(find(panel.listPage(), JTextArea.class, "What is wrong").getText())
                .startsWith("More than one act seems to stand here, at 15:20 and 15:40");
    }

    private void show(String key) {
        Object name = panel.listPage()
                .getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .get(KeyStroke.getKeyStroke(key));
        panel.listPage().getActionMap().get(name).actionPerformed(null);
    }

    @Test
    void theMinutesStandThereWhereTheLetterSaysThemUntilSomebodyTypesOthers() {
        JTextField minutes = find(panel.listPage(), JTextField.class, "How many minutes");
        paste("loop\nslow roll");
        assertThat(minutes.getText()).as("they follow from the figures").isEmpty();
        paste("We are on at 15:30 for 12 minutes.\nloop\nslow roll");
        assertThat(minutes.getText()).isEqualTo("12");
        paste("");
        assertThat(minutes.getText()).as("with no list there must be some").isEqualTo("10");
        minutes.setText("7");
        paste("We are on at 15:30 for 12 minutes.\nloop\nslow roll");
        assertThat(minutes.getText()).as("as typed").isEqualTo("7");
    }
}
