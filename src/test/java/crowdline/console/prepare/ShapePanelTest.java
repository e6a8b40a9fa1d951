package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.prepare.glance.PinField;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.edit.shape.Shape;
import crowdline.loaded.ShowRemarks;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ShapePanelTest extends ActsFixture {
    private final Show before = sample.editing.now();

    @BeforeEach
    void openTheShapeOfTheLoop() {
        chooseFigure("loop");
        toggle("Shape").doClick();
    }

    private JToggleButton toggle(String words) {
        return all(panel, JToggleButton.class)
                .filter(b -> words.equals(b.getText()))
                .findFirst()
                .orElseThrow();
    }

    private static <T extends Component> Stream<T> all(Container in, Class<T> type) {
        return Arrays.stream(in.getComponents())
                .flatMap(c -> Stream.concat(
                        type.isInstance(c) ? Stream.of(type.cast(c)) : Stream.empty(),
                        c instanceof Container inner ? all(inner, type) : Stream.empty()));
    }

    private JList<?> elements() {
        return ListPageTest.find(panel.acts().act().shape(), JList.class, "Elements of the figure");
    }

    private JTextField number(String label) {
        return ListPageTest.find(panel.acts().act().shape(), JTextField.class, label + ": ");
    }

    private void type(String label, String text) {
        number(label).setText(text);
        number(label).postActionEvent();
    }

    private JComboBox<?> box(String label) {
        return ListPageTest.find(panel.acts().act().shape(), JComboBox.class, label);
    }

    private void press(String words) {
        all(panel.acts().act().shape(), JButton.class)
                .filter(b -> words.equals(b.getText()))
                .findFirst()
                .orElseThrow()
                .doClick();
    }

    private List<String> shape(String figure) {
        Figure flown = act().figures().stream()
                .filter(f -> f.figure().equals(figure))
                .findFirst()
                .orElseThrow();
        return new Shape(Objects.requireNonNull(flown.elements()))
                .rows().stream().map(Shape.Row::words).toList();
    }

    @Test
    void aNumberOfAnElementIsTypedAndTheFigureIsFlownSo() {
        type("Degrees", "270");
        assertThat(shape("loop")).singleElement().asString().startsWith("pull 270°");
        assertThat(sample.editing.undoName()).contains("Change the pull or push of loop");
        assertThat(number("Degrees").getText()).isEqualTo("270");
        assertThat(figure("loop").edit().shape().isOwn()).isTrue();
        sample.editing.undo();
        assertThat(sample.editing.now()).isEqualTo(before);
        assertThat(number("Degrees").getText()).isEqualTo("360");
    }

    /** On a slow machine the second is told before the first is flown. */
    @Test
    void whatIsToldBeforeTheLastWasFlownKeepsIt() {
        List<Runnable> waiting = new ArrayList<>();
        sample.making = waiting::add;
        type("Degrees", "270");
        press("Add");
        type("Seconds", "1");
        assertThat(sample.editing.now()).isEqualTo(before);
        while (!waiting.isEmpty()) {
            waiting.remove(0).run();
        }
        assertThat(shape("loop")).hasSize(2).last().isEqualTo("straight on for 1 s");
        assertThat(shape("loop").get(0)).startsWith("pull 270°");
        for (int step = 0; step < 3; step++) {
            sample.editing.undo();
        }
        assertThat(sample.editing.now()).isEqualTo(before);
    }

    @Test
    void whatIsTypedWhileTheLastIsBeingFlownStaysUntilItIsTold() {
        List<Runnable> waiting = new ArrayList<>();
        sample.making = waiting::add;
        type("Degrees", "270");
        number("Degrees").setText("18");
        waiting.remove(0).run();
        assertThat(number("Degrees").getText()).isEqualTo("18");
        type("Degrees", "180");
        waiting.remove(0).run();
        assertThat(shape("loop")).singleElement().asString().startsWith("pull 180°");
        type("Degrees", "no number");
        assertThat(number("Degrees").getText()).as("what cannot be is not kept").isEqualTo("180");
    }

    @Test
    void anElementIsAddedMadeAnotherMovedAndRemovedEachInOneStep() {
        press("Add");
        assertThat(shape("loop")).hasSize(2).last().isEqualTo("straight on for 2 s");
        assertThat(elements().getSelectedIndex()).isEqualTo(1);
        box("Kind").setSelectedItem("roll");
        assertThat(shape("loop")).last().isEqualTo("roll left 360°");
        panel.acts().act().shape().move(-1);
        assertThat(shape("loop")).first().isEqualTo("roll left 360°");
        assertThat(elements().getSelectedIndex()).isZero();
        press("Remove");
        assertThat(shape("loop")).hasSize(1);
        assertThat(sample.refused).isEmpty();
        for (String step : List.of(
                "Remove the roll from loop",
                "Move the roll in loop",
                "Change the straight line of loop",
                "Add an element to loop")) {
            assertThat(sample.editing.undoName()).contains(step);
            sample.editing.undo();
        }
        assertThat(sample.editing.now()).isEqualTo(before);
    }

    @Test
    void theCataloguesShapeIsBackInOneStep() {
        type("Degrees", "270");
        press("Add");
        press("As in the catalogue");
        // A way between two figures that was another meanwhile has lost the words that were drafted for it.
        assertThat(ShowRemarks.none(sample.editing.now())).isEqualTo(ShowRemarks.none(before));
        assertThat(sample.editing.undoName()).contains("Fly loop as in the catalogue");
        assertThat(shape("loop")).hasSize(1);
    }

    @Test
    void whatCannotBeIsSaidAndTheFieldStandsAsItWas() {
        type("Degrees", "4000");
        type("Degrees", "a lot");
        press("Remove");
        assertThat(sample.refused)
                .containsExactly(
                        "Degrees is 4,000; it must be from 0 to 3,600",
                        "“a lot” is no number; Degrees takes one, usually 1 to 1,080",
                        "A shape needs at least one element; add another first, or fly it as in the catalogue");
        assertThat(number("Degrees").getText()).isEqualTo("360");
        assertThat(sample.editing.now()).isEqualTo(before);
    }

    @Test
    void whatTheAircraftCannotFlyIsRefusedWithTheLayoutsSentence() {
        box("Kind").setSelectedItem("pivot");
        assertThat(sample.refused)
                .singleElement()
                .asString()
                .contains("the line up to the pivot never reaches its end");
        assertThat(box("Kind").getSelectedItem()).isEqualTo("pull or push");
        assertThat(sample.editing.now()).isEqualTo(before);
    }

    @Test
    void whatIsOnlyDrawnByTheCatalogueIsNotAskedOfAnOwnShape() {
        type("Degrees", "270");
        assertThat(figure("loop").edit().pins())
                .extracting(PrepareView.PinView::field)
                .containsExactly(PinField.PLACE, PinField.WAY, PinField.HEIGHT, PinField.SPEED);
    }

    @Test
    void whatStandsBesideAFieldIsReadWhole() {
        panel.setSize(1280, 700);
        for (int i = 0; i < 3; i++) {
            layOut(panel);
        }
        assertThat(all(panel.acts().act().shape(), JLabel.class)
                        .filter(label -> label.getLabelFor() != null)
                        .filter(label -> label.getWidth() < label.getPreferredSize().width)
                        .map(label -> label.getText() + " has " + label.getWidth()))
                .isEmpty();
    }

    private static void layOut(Container parent) {
        parent.doLayout();
        for (Component each : parent.getComponents()) {
            if (each instanceof Container inner) {
                layOut(inner);
            }
        }
    }
}
