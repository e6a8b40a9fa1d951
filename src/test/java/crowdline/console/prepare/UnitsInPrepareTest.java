package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.measure.LengthUnit;
import crowdline.measure.Measures;
import crowdline.measure.SpeedUnit;
import crowdline.show.figure.Asked;
import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

class UnitsInPrepareTest extends ActsFixture {
    private static final Measures METRIC = new Measures(SpeedUnit.KMH, LengthUnit.METRES);

    UnitsInPrepareTest() {
        wear(METRIC);
    }

    private void wear(Measures measures) {
        panel.wear(new Appearance(Themes.DAY, Zoom.NONE, measures));
    }

    private void type(String label, String text) {
        JTextField field = ListPageTest.find(panel, JTextField.class, label);
        field.setText(text);
        field.postActionEvent();
    }

    private Asked loop() {
        return asked("loop").orElseThrow();
    }

    private String cell(String header) {
        chooseFigure("loop");
        for (int i = 0; i < table.getColumnCount(); i++) {
            if (table.getColumnModel().getColumn(i).getHeaderValue().equals(header)) {
                return String.valueOf(table.getValueAt(table.getSelectedRow(), i));
            }
        }
        throw new AssertionError("there is no column " + header);
    }

    @Test
    void tableIsInTheChosenUnitsAndBackAgain() {
        double kmh = Double.parseDouble(cell("Entry km/h"));
        double lowestM = lowest("Height m");
        wear(Measures.USUAL);
        assertThat(kmh).isCloseTo(1.852 * Double.parseDouble(cell("Entry kt")), within(1.0));
        assertThat(lowestM).isCloseTo(0.3048 * lowest("Height ft"), within(0.7));
    }

    private double lowest(String header) {
        return Double.parseDouble(cell(header).replaceFirst("–.*", ""));
    }

    @Test
    void heightIsShownAndTypedInMetres() {
        chooseFigure("loop");
        assertThat(ListPageTest.find(panel, JTextField.class, "Begins at, m").getText())
                .isEqualTo("182.9");
        type("Begins at, m", "300");
        assertThat(loop().heightFt()).isEqualTo(984.25);
        assertThat(ListPageTest.find(panel, JTextField.class, "Begins at, m").getText())
                .isEqualTo("300");
    }

    @Test
    void unitThatIsTypedIsUnderstoodWhateverTheChoice() {
        chooseFigure("loop");
        type("Begins at, m", "900 ft");
        type("Begins at, km/h", "118 kt");
        assertThat(loop().heightFt()).isEqualTo(900);
        assertThat(loop().kt()).isEqualTo(118);
        wear(Measures.USUAL);
        type("Begins at, ft", "300 m");
        assertThat(loop().heightFt()).isEqualTo(984.25);
    }

    @Test
    void unitOfSomethingElseIsRefused() {
        chooseFigure("loop");
        type("Begins at, m", "300 kt");
        assertThat(loop().heightFt()).isEqualTo(600);
        assertThat(sample.refused).singleElement().asString().startsWith("“300 kt” is no number");
    }

    @Test
    void limitsOfTheShowAreTypedInMetres() {
        panel.turn(Page.SHOW);
        type("Lowest height, m", "100");
        type("To each side, m", "2,000 ft");
        type("Wind, km/h", "37.04");
        assertThat(sample.editing.now().venue().limits().baseFt()).isEqualTo(328.08);
        assertThat(sample.editing.now().venue().limits().halfLengthM()).isEqualTo(609.6);
        assertThat(sample.editing.now().air().windKt()).isEqualTo(20);
        assertThat(ListPageTest.find(panel, JTextField.class, "Lowest height, m")
                        .getText())
                .isEqualTo("100");
        wear(Measures.USUAL);
        assertThat(ListPageTest.find(panel, JTextField.class, "Lowest height, ft")
                        .getText())
                .isEqualTo("328.08");
    }

    @Test
    void chosenOnThePageOfTheShow() {
        panel.turn(Page.SHOW);
        JComboBox<?> speeds = ListPageTest.find(panel, JComboBox.class, "You read speeds in");
        assertThat(speeds.getSelectedItem()).isEqualTo(SpeedUnit.KMH);
        speeds.setSelectedItem(SpeedUnit.MPH);
        assertThat(sample.read).containsExactly(METRIC.with(SpeedUnit.MPH));
    }

    /** Knots and feet are nowhere left on a page of an act or of the show. */
    @Test
    void noKnotsOrFeetAreLeftOnTheScreen() {
        panel.acts().act().showPasses();
        for (Page page : Page.values()) {
            panel.turn(page);
            assertThat(words(panel))
                    .filteredOn(w -> w.matches("(?s).*(\\d|[, ])(kt|ft|feet|knots)\\b.*"))
                    .isEmpty();
        }
    }

    private static List<String> words(Component part) {
        List<String> words = new ArrayList<>();
        if (part instanceof JLabel label && label.getText() != null) {
            words.add(label.getText());
        }
        if (part instanceof javax.swing.JTable table) {
            for (int i = 0; i < table.getColumnCount(); i++) {
                words.add(String.valueOf(table.getColumnModel().getColumn(i).getHeaderValue()));
            }
        }
        if (part.getAccessibleContext() != null && part.getAccessibleContext().getAccessibleName() != null) {
            words.add(part.getAccessibleContext().getAccessibleName());
        }
        if (part instanceof Container all) {
            for (Component each : all.getComponents()) {
                words.addAll(words(each));
            }
        }
        return words;
    }
}
