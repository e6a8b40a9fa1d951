package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.arrange.ShowArranging;
import crowdline.console.prepare.PrepareView.FigureView;
import crowdline.console.prepare.PrepareView.PinView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.edit.Change;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.CannotBe;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.list.ListReader;
import crowdline.show.Act;
import crowdline.show.Asked;
import crowdline.show.Figure;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.speech.pace.SpokenTime;
import crowdline.storage.show.KindsFile;
import crowdline.timing.ActTimes;
import java.awt.event.FocusEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

class EditingActsTest {
    private final SampleTools sample = new SampleTools(solo());
    private final PreparePanel panel = new PreparePanel(new Appearance(Themes.DAY, Zoom.NONE), sample.tools);
    private final JTable table = ListPageTest.find(panel, JTable.class, "Figures in the order flown");

    EditingActsTest() {
        sample.editing.onChange(this::show);
        show();
    }

    static Show solo() {
        Show empty = ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null);
        try {
            return new SampleTools(empty)
                    .adding()
                    .fromList(
                            new ListReader(SampleTools.CATALOGUE)
                                    .read("take-off, loop at 600 ft, stall turn, slow roll, landing"),
                            new AddAct.Wanted(
                                    KindsFile.shipped().named("light aerobatic biplane"),
                                    null,
                                    "Solo",
                                    "Ada Field",
                                    LocalTime.of(14, 0)))
                    .of(empty)
                    .show();
        } catch (CannotBe e) {
            throw new AssertionError(e.why(), e);
        }
    }

    private PrepareView view() {
        Show show = sample.editing.now();
        PreparePresenter.Predictions flown = new PreparePresenter.Predictions() {
            @Override
            public Optional<Flight> flight(Act act, Variant variant) {
                return Optional.of(new Predictor(show, SampleTools.CATALOGUE, act, variant).predict());
            }

            @Override
            public Optional<ActTimes> times(Act act, Variant variant) {
                return Optional.empty();
            }
        };
        return new PreparePresenter(SampleTools.CATALOGUE, text -> new SpokenTime(4, 3.5, 4.5), flown)
                .view(show, List.of());
    }

    private void show() {
        panel.show(view());
    }

    private Act act() {
        return sample.editing.now().acts().get(0);
    }

    private List<String> flown() {
        return act().inOrder(act().variants().get(0)).stream()
                .filter(f -> !f.transit())
                .map(Figure::figure)
                .toList();
    }

    private void chooseFigure(String name) {
        for (int row = 0; row < table.getRowCount(); row++) {
            if (table.getValueAt(row, 1).equals(name)) {
                table.setRowSelectionInterval(row, row);
                return;
            }
        }
        throw new AssertionError("there is no " + name);
    }

    private void aimAtFigures() {
        for (var listener : table.getFocusListeners()) {
            if (listener instanceof Aim aim) {
                aim.focusGained(new FocusEvent(table, FocusEvent.FOCUS_GAINED));
            }
        }
    }

    private String chosen() {
        return String.valueOf(table.getValueAt(table.getSelectedRow(), 1));
    }

    private JTextField field(PinField field) {
        return ListPageTest.find(panel, JTextField.class, field.label());
    }

    private FigureView figure(String name) {
        return view().acts().get(0).variants().get(0).figures().stream()
                .filter(f -> f.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Optional<Asked> asked(String figure) {
        return act().figures().stream()
                .filter(f -> f.figure().equals(figure))
                .findFirst()
                .map(Figure::asked);
    }

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
                        .contains("is no number; Begins at, kt takes knots, such as 120")
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

    private double alongM(String figure) {
        return Objects.requireNonNull(figure(figure).edit().place()).alongM();
    }

    @Test
    void aFigureIsMovedByKeysAndTheRestFollowsInOneStep() {
        Show before = sample.editing.now();
        double was = alongM("slow roll");
        chooseFigure("slow roll");
        FigureCommands chosen = panel.acts().act().commands().orElseThrow();
        chosen.nudge(Nudge.ALONG, 50);
        chosen.nudge(Nudge.ALONG, 50);
        chosen.nudge(Nudge.ALONG, 50);
        assertThat(alongM("slow roll")).isCloseTo(was + 150, within(70.0));
        assertThat(asked("slow roll")).map(Asked::alongM).contains(Math.rint(was / 10) * 10 + 150);
        assertThat(sample.editing.undo()).contains("Pin the place of slow roll");
        assertThat(sample.editing.now()).isEqualTo(before);
    }

    @Test
    void aFigureIsFlownHigherAndLonger() {
        chooseFigure("slow roll");
        double ft = Objects.requireNonNull(figure("slow roll").edit().place()).beginsFt();
        double seconds =
                Objects.requireNonNull(figure("slow roll").edit().place()).seconds();
        panel.acts().act().commands().orElseThrow().nudge(Nudge.HEIGHT, 300);
        assertThat(Objects.requireNonNull(figure("slow roll").edit().place()).beginsFt())
                .isCloseTo(ft + 300, within(60.0));
        panel.acts().act().commands().orElseThrow().nudge(Nudge.LENGTH, 4);
        assertThat(Objects.requireNonNull(figure("slow roll").edit().place()).seconds())
                .isCloseTo(seconds + 4, within(1.0));
        assertThat(sample.refused).isEmpty();
    }

    @Test
    void whatCannotBeLongerIsRefusedInASentence() {
        Show before = sample.editing.now();
        chooseFigure("loop");
        panel.acts().act().commands().orElseThrow().nudge(Nudge.LENGTH, 12);
        assertThat(sample.refused)
                .singleElement()
                .satisfies(
                        why -> assertThat(why).matches("Loop cannot be flown in [0-9]+ s: only its straight lines .*"));
        assertThat(sample.editing.now()).isEqualTo(before);
    }

    @Test
    void aFigureDraggedOutOfTheDisplayAreaIsRefusedByTheLayout() {
        Venue v = sample.editing.now().venue();
        sample.editing.change(Change.of(
                "Limits",
                sample.editing
                        .now()
                        .withVenue(new Venue(
                                v.name(),
                                null,
                                null,
                                null,
                                null,
                                null,
                                v.timeZone(),
                                new Venue.Limits(null, null, 800.0, null)))));
        Show before = sample.editing.now();
        chooseFigure("slow roll");
        panel.acts().act().commands().orElseThrow().drag(Drag.of(2_000, 3, 1));
        assertThat(sample.refused)
                .singleElement()
                .satisfies(
                        why -> assertThat(why)
                                .matches(
                                        "Slow roll reaches [0-9]+ m beyond the right end of the display area; it needs .* further in."));
        assertThat(sample.editing.now()).isEqualTo(before);
    }

    @Test
    void aHandMovesAFigureOneWayAtATime() {
        assertThat(Drag.of(30, -10, 0.5)).isEqualTo(new Drag(60, 0));
        assertThat(Drag.of(-10, 30, 0.5)).isEqualTo(new Drag(0, -60));
    }

    @Test
    void draggingThePictureMovesTheChosenFigure() {
        chooseFigure("slow roll");
        PathPicture picture = ListPageTest.find(panel, PathPicture.class, "The act seen");
        picture.setSize(500, 300);
        picture.paint(new BufferedImage(500, 300, BufferedImage.TYPE_INT_RGB).createGraphics());
        double was = alongM("slow roll");
        drag(picture, MouseEvent.MOUSE_PRESSED, 200, 100);
        drag(picture, MouseEvent.MOUSE_DRAGGED, 215, 102);
        drag(picture, MouseEvent.MOUSE_RELEASED, 230, 102);
        assertThat(sample.refused).isEmpty();
        assertThat(alongM("slow roll")).isGreaterThan(was + 10);
    }

    private static void drag(PathPicture on, int what, int x, int y) {
        int held = what == MouseEvent.MOUSE_RELEASED ? 0 : MouseEvent.BUTTON1_DOWN_MASK;
        on.dispatchEvent(new MouseEvent(on, what, 1, held, x, y, 1, false, MouseEvent.BUTTON1));
    }

    @Test
    void aVariantIsAddedAgreedAndRemoved() {
        button("New variant").doClick();
        assertThat(act().variants()).extracting(Variant::name).containsExactly("full", "low");
        JTextField base = ListPageTest.find(panel, JTextField.class, "Lowest cloud base");
        base.setText("2,000 ft");
        base.postActionEvent();
        assertThat(act().variants().get(0).minCloudBaseFt()).isEqualTo(2_000);
        button("Remove it").doClick();
        assertThat(act().variants()).extracting(Variant::name).containsExactly("low");
        assertThat(button("Remove it").isEnabled()).isFalse();
        assertThat(sample.editing.undo()).contains("Remove variant “full”");
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
