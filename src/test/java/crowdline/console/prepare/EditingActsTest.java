package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.prepare.field.RowDrag;
import crowdline.console.prepare.glance.PinField;
import crowdline.console.prepare.glance.PrepareView.PinView;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.figure.Asked;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

class EditingActsTest extends ActsFixture {
    @Test
    void whatIsToldAndWhatIsAssumedIsSaidByAWordAndAShape() {
        List<PinView> pins = figure("loop").edit().pins();
        assertThat(pins)
                .filteredOn(p -> p.mark().word().equals("told"))
                .extracting(PinView::field)
                .containsExactly(PinField.HEIGHT);
        assertThat(pins.stream().map(p -> p.mark().form()).distinct()).hasSize(2);
        assertThat(figure("loop").edit().pins())
                .filteredOn(p -> p.field() == PinField.SPEED)
                .singleElement()
                .satisfies(p -> {
                    assertThat(p.told()).isEmpty();
                    assertThat(Integer.parseInt(p.value())).isBetween(80, 180);
                });
    }

    @Test
    void aNumberTypedIsToldAndClearedIsAssumedAgain() {
        Show before = sample.editing.now();
        chooseFigure("slow roll");
        field(PinField.HEIGHT).setText("1,200 ft");
        field(PinField.HEIGHT).postActionEvent();
        assertThat(asked("slow roll")).map(Asked::heightFt).contains(1_200.0);
        assertThat(chosen()).isEqualTo("slow roll");
        field(PinField.HEIGHT).setText("");
        field(PinField.HEIGHT).postActionEvent();
        assertThat(sample.editing.now()).isEqualTo(before);
        assertThat(sample.editing.undoName()).contains("Free the height of slow roll");
    }

    @Test
    void whatAStepBackOrForthChangesIsChosen() {
        chooseFigure("slow roll");
        field(PinField.HEIGHT).setText("1,200 ft");
        field(PinField.HEIGHT).postActionEvent();
        chooseFigure("loop");
        sample.editing.undo();
        assertThat(chosen()).isEqualTo("slow roll");
        chooseFigure("take-off");
        sample.editing.redo();
        assertThat(chosen()).isEqualTo("slow roll");
    }

    @Test
    void whatIsNoNumberIsSaidAndNothingChanged() {
        Show before = sample.editing.now();
        chooseFigure("slow roll");
        for (String typed : List.of("high", "1e9", "∞", "12..5", "9".repeat(5_000))) {
            field(PinField.SPEED).setText(typed);
            field(PinField.SPEED).postActionEvent();
        }
        assertThat(sample.refused)
                .hasSize(5)
                .allSatisfy(why -> assertThat(why)
                        .contains("is no number; Begins at, kt takes a speed, such as 120 kt")
                        .hasSizeLessThan(200));
        assertThat(sample.editing.now()).isEqualTo(before);
        assertThat(field(PinField.SPEED).getText()).isEmpty();
    }

    @Test
    void aNumberTypedIntoTheTableIsTold() {
        chooseFigure("slow roll");
        int row = table.getSelectedRow();
        assertThat(table.isCellEditable(row, 5)).isTrue();
        assertThat(table.isCellEditable(row, 0)).isFalse();
        table.setValueAt("130", row, 5);
        assertThat(asked("slow roll")).map(Asked::kt).contains(130.0);
    }

    @Test
    void aPlaceIsChosenFromAFew() {
        chooseFigure("slow roll");
        JComboBox<?> place = ListPageTest.find(panel, JComboBox.class, "Place");
        place.setSelectedItem("right end");
        assertThat(asked("slow roll")).map(Asked::place).contains(Asked.Place.RIGHT_END);
        place.setSelectedItem("anywhere");
        assertThat(asked("slow roll")).map(a -> Optional.ofNullable(a.place())).contains(Optional.empty());
    }

    @Test
    void aFigureIsAddedByPartOfWhatItIsAndChosenThen() {
        chooseFigure("loop");
        panel.acts().act().add();
        JTextField typed = ListPageTest.find(panel, JTextField.class, "Which figure");
        typed.setText("upside down");
        typed.postActionEvent();
        assertThat(flown()).containsExactly("take-off", "loop", "inverted pass", "stall turn", "slow roll", "landing");
        assertThat(chosen()).isEqualTo("inverted pass");
        assertThat(sample.editing.undo()).contains("Add inverted pass");
        assertThat(flown()).doesNotContain("inverted pass");
    }

    @Test
    void enterReplacesTheChosenFigure() {
        chooseFigure("loop");
        ListPageTest.press(table, "ENTER");
        JTextField typed = ListPageTest.find(panel, JTextField.class, "Which figure");
        typed.setText("half cub");
        typed.postActionEvent();
        assertThat(flown()).startsWith("take-off", "half Cuban");
    }

    @Test
    void aMovedFigureStaysChosen() {
        chooseFigure("loop");
        aimAtFigures();
        panel.acts().move(1);
        assertThat(flown()).startsWith("take-off", "stall turn", "loop");
        assertThat(chosen()).isEqualTo("loop");
    }

    @Test
    void aFigureIsDraggedToThePlaceOfAnother() {
        chooseFigure("slow roll");
        int from = table.getSelectedRow();
        chooseFigure("loop");
        int to = table.getSelectedRow();
        table.setSize(900, 900);
        drop(from, to);
        assertThat(flown()).startsWith("take-off", "slow roll", "loop", "stall turn");
        assertThat(chosen()).isEqualTo("slow roll");
        drop(table.getSelectedRow(), rowOf("stall turn"));
        assertThat(flown()).startsWith("take-off", "loop", "stall turn", "slow roll");
        int takeOff = rowOf("take-off");
        int loop = rowOf("loop");
        assertThat(loop - takeOff).as("there is a way between them").isGreaterThan(1);
        drop(loop, loop - 1);
        assertThat(flown()).startsWith("take-off", "loop", "stall turn", "slow roll");
    }

    private int rowOf(String name) {
        chooseFigure(name);
        return table.getSelectedRow();
    }

    private void drop(int from, int to) {
        mouse(MouseEvent.MOUSE_PRESSED, from);
        mouse(MouseEvent.MOUSE_DRAGGED, to);
        mouse(MouseEvent.MOUSE_RELEASED, to);
    }

    private void mouse(int what, int row) {
        Rectangle cell = table.getCellRect(row, 1, true);
        int held = what == MouseEvent.MOUSE_RELEASED ? 0 : MouseEvent.BUTTON1_DOWN_MASK;
        MouseEvent event = new MouseEvent(table, what, 1, held, cell.x + 5, cell.y + 5, 1, false, MouseEvent.BUTTON1);
        for (var listener : table.getMouseListeners()) {
            if (listener instanceof RowDrag drag) {
                if (what == MouseEvent.MOUSE_PRESSED) {
                    drag.mousePressed(event);
                } else if (what == MouseEvent.MOUSE_DRAGGED) {
                    drag.mouseDragged(event);
                } else {
                    drag.mouseReleased(event);
                }
            }
        }
    }

    @Test
    void removingTakesTheFigureAndNotTheAct() {
        chooseFigure("loop");
        aimAtFigures();
        panel.acts().remove();
        assertThat(flown()).containsExactly("take-off", "stall turn", "slow roll", "landing");
        assertThat(sample.editing.now().acts()).hasSize(1);
    }

    @Test
    void theWayBetweenTwoFiguresCannotBeRemovedAlone() {
        int row = 1;
        table.setRowSelectionInterval(row, row);
        aimAtFigures();
        panel.acts().remove();
        assertThat(sample.refused)
                .containsExactly("What is flown between two figures goes with them; choose one of them");
    }

    @Test
    void anActIsAnnouncedAndPlannedWhereItStands() {
        JTextField title = ListPageTest.find(panel.acts(), JTextField.class, "How the act is announced");
        title.setText("Evening solo");
        title.postActionEvent();
        JTextField begins = ListPageTest.find(panel.acts(), JTextField.class, "When it begins");
        begins.setText("9.30");
        begins.postActionEvent();
        assertThat(act().title()).isEqualTo("Evening solo");
        assertThat(act().slotStart()).isEqualTo(LocalTime.of(9, 30));
        begins.setText("noon");
        begins.postActionEvent();
        assertThat(sample.refused).containsExactly("“noon” is no time; type hours and minutes, such as 14:30");
        assertThat(begins.getText()).isEqualTo("09:30");
    }

    @Test
    void aVariantIsAddedAgreedAndRemoved() {
        button("New variant").doClick();
        assertThat(act().variants()).extracting(Variant::name).containsExactly("full", "low");
        JTextField name = ListPageTest.find(panel, JTextField.class, "Name of the variant");
        assertThat(name.getText()).as("the new one is chosen").isEqualTo("low");
        JTextField base = ListPageTest.find(panel, JTextField.class, "Lowest cloud base");
        base.setText("2,000 ft");
        base.postActionEvent();
        assertThat(act().variants().get(0)).satisfies(first -> {
            assertThat(first.name()).isEqualTo("low");
            assertThat(first.minCloudBaseFt()).isEqualTo(2_000);
        });
        name.setText("flat");
        name.postActionEvent();
        assertThat(name.getText()).as("it stays chosen under another name").isEqualTo("flat");
        button("Remove it").doClick();
        assertThat(act().variants()).extracting(Variant::name).containsExactly("full");
        assertThat(button("Remove it").isEnabled()).isFalse();
        assertThat(sample.editing.undo()).contains("Remove variant “flat”");
        assertThat(act().variants()).hasSize(2);
    }

    private JButton button(String words) {
        return ListPageTest.find(panel, JButton.class, words);
    }

    @Test
    void aCopyIsChosenAndRemovedAgain() {
        panel.acts().duplicate();
        JList<?> acts = ListPageTest.find(panel, JList.class, "Acts in running order");
        assertThat(acts.getSelectedIndex()).isEqualTo(1);
        panel.acts().remove();
        assertThat(sample.editing.now().acts()).hasSize(1);
        panel.acts().remove();
        assertThat(sample.editing.now().acts()).isEmpty();
        assertThat(ListPageTest.find(panel, javax.swing.JTextArea.class, "What to do first")
                        .isVisible())
                .isTrue();
    }
}
