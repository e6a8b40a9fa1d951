package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.prepare.day.CompassPicture;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.edit.Change;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.TimedAircraft;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JSlider;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PagesTest {
    private final SampleTools sample = new SampleTools(ActsFixture.solo());
    private final PreparePanel panel = new PreparePanel(new Appearance(Themes.DAY, Zoom.NONE), sample.tools);

    PagesTest() {
        sample.editing.onChange(panel::edited);
    }

    private Show now() {
        return sample.editing.now();
    }

    private JTextField field(String name) {
        return ListPageTest.find(panel, JTextField.class, name);
    }

    private void type(String name, String text) {
        field(name).setText(text);
        field(name).postActionEvent();
    }

    @Test
    void limitsAreEmptyUntilTheyAreTyped() {
        panel.turn(Page.SHOW);
        for (String limit : List.of("Lowest height", "Greatest height", "To each side", "Beyond the line")) {
            assertThat(field(limit).getText()).as(limit).isEmpty();
        }
        type("Lowest height", "500 ft");
        assertThat(now().venue().limits().baseFt()).isEqualTo(500);
        type("Lowest height", "");
        assertThat(now().venue().limits().baseFt()).isNull();
    }

    @Test
    void theDayIsTypedWhereItStands() {
        panel.turn(Page.SHOW);
        type("Title", "Summer show");
        type("Date", "2027-08-14");
        type("Latitude", "51.4, -0.97");
        type("Time zone", "Europe/London");
        assertThat(now().title()).isEqualTo("Summer show");
        assertThat(now().date()).isEqualTo(LocalDate.of(2027, 8, 14));
        assertThat(now().venue().lonDeg()).isEqualTo(-0.97);
        assertThat(sample.editing.undo()).contains("Change the time zone");
        assertThat(field("Time zone").getText()).isEqualTo("Z");
    }

    @ParameterizedTest
    @CsvSource({
        "Date, tomorrow, '2027-06-12 or 12 June 2027'", "Date, 2027-02-30, '2027-06-12 or 12 June 2027'",
                "Latitude, 51, degrees north and degrees east",
        "Latitude, '95, 0', latDeg", "Time zone, Mars, such as Europe/London", "Elevation, low, is no number",
        "Pressure, 20, qnhHpa", "Title, '', empty"
    })
    void whatCannotBeIsSaidAndTheFieldIsAsBefore(String name, String typed, String why) {
        panel.turn(Page.SHOW);
        Show before = now();
        String text = field(name).getText();
        type(name, typed);
        assertThat(sample.refused).hasSize(1);
        assertThat(sample.refused.get(0)).contains(why);
        assertThat(now()).isEqualTo(before);
        assertThat(field(name).getText()).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"85, 'north, to 355°'", "180, 'east, to 90°'", "0, 'west, to 270°'", "359, 'west, to 269°'"})
    void theCompassSaysWhichWayTheCrowdLooks(double right, String looks) {
        assertThat(CompassPicture.words(Optional.of(right))).startsWith("The crowd looks " + looks);
    }

    @Test
    void aKindIsChosenAndMovedBySliders() {
        panel.turn(Page.AIRCRAFT);
        JSlider heavier = ListPageTest.find(panel, JSlider.class, "Lighter or heavier");
        double before = ((Airframe) now().airframes().get(0)).massKg();
        heavier.setValue(100);
        assertThat(((Airframe) now().airframes().get(0)).massKg()).isGreaterThan(before);
        ListPageTest.find(panel, JComboBox.class, "Kind").setSelectedItem("formation");
        assertThat(now().airframes().get(0)).isInstanceOf(TimedAircraft.class);
        type("How many they are", "four");
        assertThat(sample.refused).hasSize(1);
        type("How many they are", "4");
        assertThat(((TimedAircraft) now().airframes().get(0)).number()).isEqualTo(4);
    }

    @Test
    void numbersLieBehindAFoldAndAreToldOrTypical() {
        panel.turn(Page.AIRCRAFT);
        JButton fold = foldButton();
        assertThat(fold.getText()).isEqualTo("Show the numbers");
        fold.doClick();
        JTable numbers = ListPageTest.find(panel, JTable.class, "Numbers of the aircraft");
        assertThat(numbers.getValueAt(0, 0)).isEqualTo("mass, kg");
        assertThat(numbers.getValueAt(0, 2)).isEqualTo("○ typical, assumed");
        numbers.setValueAt("640", 0, 1);
        assertThat(numbers.getValueAt(0, 2)).isEqualTo("● told");
        numbers.setValueAt("", 0, 1);
        assertThat(numbers.getValueAt(0, 2)).isEqualTo("○ typical, assumed");
    }

    private JButton foldButton() {
        return ListPageTest.find(panel, JButton.class, "Show the numbers");
    }

    @Test
    void aFactNeedsWhoVouchesForIt() {
        panel.turn(Page.PEOPLE);
        JTable facts = ListPageTest.find(panel, JTable.class, "Facts with their sources");
        facts.setValueAt("Mends clocks.", 0, 0);
        assertThat(now().performers().get(0).facts()).isEmpty();
        facts.setValueAt("her own form, 3 May", 0, 1);
        assertThat(now().performers().get(0).facts())
                .containsExactly(new Performer.SourcedFact("Mends clocks.", "her own form, 3 May"));
        facts.setValueAt("", 0, 0);
        facts.setValueAt("", 0, 1);
        assertThat(now().performers().get(0).facts()).isEmpty();
        type("How to say the name", "AY-da");
        assertThat(now().performers().get(0).sayAs()).isEqualTo("AY-da");
    }

    @Test
    void somebodyIsAddedAndRemoved() {
        panel.turn(Page.PEOPLE);
        panel.people().add();
        assertThat(now().performers()).hasSize(2);
        JTextField name = ListPageTest.find(panel.people(), JTextField.class, "Name");
        name.setText("Bo Marsh");
        name.postActionEvent();
        assertThat(now().performers().get(1).name()).isEqualTo("Bo Marsh");
        panel.people().remove();
        assertThat(now().performers()).hasSize(1);
        panel.people().remove();
        assertThat(sample.refused).hasSize(1);
    }

    @Test
    void whatWasTypedAboutAnAircraftIsKeptWhenAnotherIsClicked() {
        TimedAircraft other = new TimedAircraft(
                "four", "The Four", sample.kinds().find("formation").orElseThrow(), 4);
        sample.editing.change(Change.of(
                "Add The Four", now().withAircraft(List.of(now().airframes().get(0), other))));
        panel.turn(Page.AIRCRAFT);
        JList<?> aircraft = ListPageTest.find(panel, JList.class, "Aircraft");
        aircraft.setSelectedIndex(1);
        assertThat(field("What it is called").getText()).isEqualTo("The Four");
        field("What it is called").setText("The Five");
        aircraft.setSelectedIndex(0);
        assertThat(now().airframes().get(1).name()).isEqualTo("The Five");
        assertThat(now().airframes().get(0).name()).isNotEqualTo("The Five");
        assertThat(field("What it is called").getText())
                .isEqualTo(now().airframes().get(0).name());
    }

    @Test
    void whatWasTypedAboutSomebodyIsKeptWhenSomebodyElseIsClicked() {
        panel.turn(Page.PEOPLE);
        panel.people().add();
        JTextField name = ListPageTest.find(panel.people(), JTextField.class, "Name");
        JTable facts = ListPageTest.find(panel.people(), JTable.class, "Facts");
        JList<?> people = ListPageTest.find(panel.people(), JList.class, "People");
        name.setText("Bo Marsh");
        facts.editCellAt(0, 0);
        ((JTextField) facts.getEditorComponent()).setText("Flies gliders.");
        people.setSelectedIndex(0);
        assertThat(now().performers()).extracting(p -> p.name()).containsExactly("Ada Field", "Bo Marsh");
        assertThat(name.getText()).isEqualTo("Ada Field");
        assertThat(now().performers()).allSatisfy(p -> assertThat(p.facts()).isEmpty());
    }

    @Test
    void theIncidentPageBeginsWithTheTemplateAndIsAgreedWithNobody() {
        panel.turn(Page.ANNOUNCEMENTS);
        assertThat(now().incident()).isNull();
        ListPageTest.find(panel, JButton.class, "Begin with the template").doClick();
        assertThat(now().incident()).isNotNull();
        assertThat(ListPageTest.find(panel, JTextArea.class, "What to say").getText())
                .isNotBlank();
        assertThat(field("Agreed").getText()).isEmpty();
        type("Agreed", "the director, 2 May");
        assertThat(now().incident()).isNotNull().extracting(i -> i.agreedWith()).isEqualTo("the director, 2 May");
    }

    @Test
    void anAnnouncementIsChosenWrittenAndAgreed() {
        panel.turn(Page.ANNOUNCEMENTS);
        ListPageTest.find(panel, JButton.class, "Add other occasions").doClick();
        assertThat(now().announcements()).hasSize(5);
        JList<?> occasions = ListPageTest.find(panel, JList.class, "Occasions");
        occasions.setSelectedIndex(2);
        JTextField agreed = ListPageTest.find(panel, JTextField.class, "Agreed with whom, and when, for");
        agreed.setText("the organiser, 3 May");
        agreed.postActionEvent();
        assertThat(now().announcements().get(1).agreedWith()).isEqualTo("the organiser, 3 May");
        assertThat(occasions.getSelectedIndex()).isEqualTo(2);
        sample.editing.undo();
        assertThat(agreed.getText()).isEmpty();
        panel.announcements().remove();
        assertThat(now().announcements()).extracting(a -> a.occasion()).doesNotContain("Lost child");
        panel.announcements().add();
        assertThat(ListPageTest.find(panel, JTextField.class, "Occasion").getText())
                .isEqualTo("New occasion");
        JTextArea words = ListPageTest.find(panel, JTextArea.class, "What to say then");
        words.setText("Not left yet.");
        occasions.setSelectedIndex(0);
        assertThat(now().announcements().get(4).words()).containsExactly("Not left yet.");
        panel.announcements().remove();
        assertThat(sample.refused)
                .containsExactly("The incident page stays; only other announcements can be taken out");
    }

    @Test
    void aDutyIsWordedAndAskedForAndAPieceIsAddedBelow() {
        panel.turn(Page.DUTIES);
        panel.duties().add();
        JTextField times = ListPageTest.find(panel, JTextField.class, "How often");
        times.setText("4");
        times.postActionEvent();
        int last = now().remarks().size() - 1;
        assertThat(now().remarks().get(last).dutyTimes().times()).isEqualTo(4);
        JComboBox<?> after = ListPageTest.find(panel, JComboBox.class, "After the act");
        after.setSelectedIndex(1);
        assertThat(now().remarks().get(last).dutyTimes().afterAct())
                .isEqualTo(now().acts().get(0).id());
        sample.editing.undo();
        assertThat(after.getSelectedIndex()).isZero();
        ListPageTest.find(panel, JTextArea.class, "What must be said").setText("Thank the dairy.");
        ListPageTest.find(panel, JButton.class, "Add a piece for a gap").doClick();
        assertThat(now().remarks().get(last).text()).as("not left yet").isEqualTo("Thank the dairy.");
        assertThat(now().gaps().pieces()).hasSize(1);
        JTextField talk = ListPageTest.find(panel, JTextField.class, "Talk in gaps");
        talk.setText("20");
        talk.postActionEvent();
        assertThat(now().gaps().talkPercent()).isEqualTo(20);
        panel.duties().remove();
        assertThat(now().gaps().pieces()).isEmpty();
    }
}
