package crowdline.edit.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.edit.act.CannotBe;
import crowdline.show.figure.Element;
import crowdline.show.figure.Element.RollStyle;
import crowdline.show.figure.Element.Side;
import crowdline.show.figure.Element.Size;
import crowdline.show.figure.Element.Until;
import crowdline.show.figure.Element.Way;
import crowdline.storage.show.CatalogueFile;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class ShapeTest {
    private static final Element ROLL = ElementKind.ROLL.fresh();
    private static final Element LINE = new Element.Line(Until.RADII, 2, List.of(ROLL), 1);
    private static final Element ARC = new Element.Arc(Way.PULL, 90.0, null, Size.LOAD_G, 4, 1);

    private static ElementField field(Element element, String label) {
        return ElementFields.of(element).stream()
                .filter(f -> f.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " is not among "
                        + ElementFields.of(element).stream()
                                .map(ElementField::label)
                                .toList()));
    }

    /** Every element there is in the catalogue, and a new one of each kind. */
    static Stream<Element> everyElement() {
        return Stream.concat(
                        CatalogueFile.shipped().entries().stream()
                                .flatMap(e -> new Shape(e.elements()).rows().stream())
                                .map(Shape.Row::element),
                        Arrays.stream(ElementKind.values()).map(ElementKind::fresh))
                .distinct();
    }

    @ParameterizedTest
    @MethodSource("everyElement")
    void whatStandsInAFieldTypedAgainChangesNothing(Element element) throws CannotBe {
        for (ElementField field : ElementFields.of(element)) {
            assertThat(field.with(field.value())).as(field.label()).isEqualTo(element);
        }
    }

    @ParameterizedTest
    @MethodSource("everyElement")
    void everyOptionCanBeChosenAndIsThenWhatStandsThere(Element element) throws CannotBe {
        for (ElementField field : ElementFields.of(element)) {
            for (String option : field.options()) {
                Element chosen = field.with(option);
                assertThat(field(chosen, field.label()).value()).isEqualTo(option);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("everyElement")
    void whatIsNoNumberOrFarTooLargeIsRefusedUnderTheNameOfTheField(Element element) {
        for (ElementField field : ElementFields.of(element)) {
            if (field.options().isEmpty()) {
                for (String typed : List.of("much", "9999999", "1e3", "NaN", "x".repeat(5_000))) {
                    assertThatThrownBy(() -> field.with(typed))
                            .isInstanceOf(CannotBe.class)
                            .satisfies(e -> assertThat(e.getMessage())
                                    .contains(field.label().replaceFirst(",.*", ""))
                                    .hasSizeLessThan(200));
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(ElementKind.class)
    void everyKindIsNamedByItsOwnWord(ElementKind kind) throws CannotBe {
        assertThat(field(ARC, "Kind").with(kind.word()).getClass())
                .isEqualTo(kind.fresh().getClass());
    }

    @Test
    void numbersAreTypedWithOrWithoutTheirUnitAndRefusedWithTheirRange() throws CannotBe {
        assertThat(field(ARC, "Degrees").with("180°"))
                .isEqualTo(new Element.Arc(Way.PULL, 180.0, null, Size.LOAD_G, 4, 1));
        assertThat(field(ARC, "Load, g").with("−2 g"))
                .isEqualTo(new Element.Arc(Way.PULL, 90.0, null, Size.LOAD_G, -2, 1));
        assertThatThrownBy(() -> field(ARC, "Load, g").with("31"))
                .hasMessage("Load, g is 31; it must be from -30 to 30");
        assertThat(field(ARC, "Load, g").range()).isEqualTo("-9 to 12");
    }

    @Test
    void aRollGetsWhatItsStyleNeeds() throws CannotBe {
        assertThat(field(ROLL, "Style").with("slow"))
                .isEqualTo(new Element.Roll(RollStyle.SLOW, Side.LEFT, 360, 6.0, 0, 0.5, 1));
        Element points = field(ROLL, "Style").with("hesitation");
        assertThatThrownBy(() -> field(points, "Points in a turn").with("1"))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("2 or more points");
        Element slow = field(ROLL, "Style").with("slow");
        assertThatThrownBy(() -> field(slow, "Lasts, s").with("")).hasMessage("A slow roll needs its seconds");
    }

    @Test
    void whatIsInTheMiddleOfALineIsARowOfItsOwn() {
        Shape shape = new Shape(List.of(ARC, LINE, ARC));
        List<Shape.Row> rows = shape.rows();
        assertThat(rows.stream().map(Shape.Row::words))
                .containsExactly(
                        "pull 90°, 4 g",
                        "straight on for 2 radii",
                        "   in the middle: roll left 360°",
                        "pull 90°, 4 g");
        Element other = ElementKind.FLICK.fresh();
        assertThat(shape.with(rows.get(2), other).elements().get(1))
                .isEqualTo(new Element.Line(Until.RADII, 2, List.of(other), 1));
        assertThat(shape.without(rows.get(2)).elements().get(1)).isEqualTo(new Element.Line(Until.RADII, 2, 1));
        assertThatThrownBy(() -> shape.with(rows.get(2), ARC)).hasMessageContaining("rolls and flicks only");
    }

    @Test
    void turnsThatStayBankedAndTheRollBetweenThemAreMadeByWords() throws CannotBe {
        Element turn = field(ElementKind.TURN.fresh(), "At its end").with("stays banked");
        assertThat(turn).isEqualTo(new Element.Turn(Side.LEFT, 180, 45.0, 0, false, 0, true, 1));
        for (ElementField field : ElementFields.of(turn)) {
            if (!field.label().equals("Kind") && !field.label().equals("At its end")) {
                assertThat(field(field.with(field.value()), "At its end").value())
                        .as(field.label())
                        .isEqualTo("stays banked");
            }
        }
        Element roll = field(turn, "Kind").with("roll to the other bank");
        assertThat(new Shape(List.of(turn, roll, field(roll, "Rolls").with("over the top")))
                        .rows().stream().map(Shape.Row::words))
                .containsExactly(
                        "turn left 180°, stays banked",
                        "roll to the other bank, underneath",
                        "roll to the other bank, over the top");
    }

    @Test
    void rowsAreAddedTakenOutAndMovedAsFarAsThereAreAny() {
        Shape shape = new Shape(List.of(ARC, LINE, ROLL));
        List<Shape.Row> rows = shape.rows();
        assertThat(shape.after(rows.get(0), ROLL).elements()).containsExactly(ARC, ROLL, LINE, ROLL);
        assertThat(shape.begun(ROLL).elements()).containsExactly(ROLL, ARC, LINE, ROLL);
        assertThat(shape.without(rows.get(1)).elements()).containsExactly(ARC, ROLL);
        assertThat(shape.moved(rows.get(3), -1).elements()).containsExactly(ARC, ROLL, LINE);
        assertThat(shape.moved(rows.get(0), -5)).isEqualTo(shape);
        assertThat(shape.moved(rows.get(0), 9).elements()).containsExactly(LINE, ROLL, ARC);
    }
}
