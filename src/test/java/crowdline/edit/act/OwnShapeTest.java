package crowdline.edit.act;

import static crowdline.edit.act.Edited.CATALOGUE;
import static crowdline.edit.act.Edited.act;
import static crowdline.edit.act.Edited.change;
import static crowdline.edit.act.Edited.done;
import static crowdline.edit.act.Edited.figure;
import static crowdline.edit.act.Edited.id;
import static crowdline.edit.act.Edited.words;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.edit.Change;
import crowdline.edit.EditedShow;
import crowdline.flight.FigureFlight;
import crowdline.flight.Predictor;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Element;
import crowdline.show.figure.Element.Size;
import crowdline.show.figure.Element.Until;
import crowdline.show.figure.Element.Way;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class OwnShapeTest {
    private static final String SOLO = "solo";
    private static final Element WIDE = new Element.Arc(Way.PULL, 360.0, null, Size.RADIUS_M, 140, 1);
    private static final Element LINE = new Element.Line(Until.SECONDS, 3, 1);

    private final Figures figures = new Figures(CATALOGUE);

    private Edit shape(Show show, String figure, Element... own) {
        return figures.shape(SOLO, id(show, figure), "Change the line of {figure}", List.of(own));
    }

    private static FigureFlight flown(Show show, String figure) {
        return new Predictor(show, CATALOGUE, act(show), act(show).variants().get(0))
                .predict()
                .figure(id(show, figure))
                .orElseThrow();
    }

    @Test
    void anOwnShapeIsFlownAndTheRestFollows() throws CannotBe {
        Show show = Edited.worded(Edited.solo());
        Show own = done(show, shape(show, "loop", LINE, WIDE));
        assertThat(figure(own, "loop").elements()).containsExactly(LINE, WIDE);
        assertThat(figure(own, "loop").hasOwnShape()).isTrue();
        assertThat(figure(show, "loop").hasOwnShape()).isFalse();
        FigureFlight flown = flown(own, "loop");
        assertThat(flown.completed()).isTrue();
        assertThat(flown.durationS()).isGreaterThan(flown(show, "loop").durationS() + 3);
        assertThat(words(own)).isEqualTo(words(show));
    }

    @Test
    void itIsTakenBackByName() throws CannotBe {
        Show show = Edited.solo();
        EditedShow edited = EditedShow.opened(show).changed(change(show, shape(show, "loop", LINE, WIDE)));
        assertThat(edited.undoName()).contains("Change the line of loop");
        assertThat(edited.undone().now()).isEqualTo(show);
    }

    @Test
    void itStaysWhenAnotherFigureIsMovedAndWhenItsOwnPlaceIsTold() throws CannotBe {
        Show show = Edited.solo();
        Show now = done(show, shape(show, "loop", LINE, WIDE));
        now = done(now, figures.pin(SOLO, id(now, "slow roll"), new Pin.Height(900.0)));
        now = done(now, figures.pin(SOLO, id(now, "loop"), new Pin.Height(800.0)));
        now = done(now, figures.layOut(SOLO));
        assertThat(figure(now, "loop").elements()).containsExactly(LINE, WIDE);
        assertThat(flown(now, "loop").lowestM()).isGreaterThan(800 * 0.3048 - 10);
    }

    @Test
    void theCataloguesShapeComesBackInOneStepWithWhatWasTold() throws CannotBe {
        Show show = Edited.solo();
        Show told = done(show, figures.pin(SOLO, id(show, "loop"), new Pin.Height(800.0)));
        Show own = done(told, shape(told, "loop", LINE, WIDE));
        Change back = change(own, figures.asInCatalogue(SOLO, id(own, "loop")));
        assertThat(back.show()).isEqualTo(told);
        assertThat(back.name()).isEqualTo("Fly loop as in the catalogue");
    }

    @Test
    void anActOfOneFigureIsLaidOutWhenItIsFlownAsInTheCatalogue() throws CannotBe {
        Show solo = Edited.solo();
        Act act = act(solo);
        Figure loop = figure(solo, "loop");
        Figure typed =
                new Figure(loop.id(), "loop", null, null, List.of(LINE, WIDE), null, null, null, List.of(), List.of());
        Placing high = new Placing(0, 0, 9_000, 100, Placing.Heading.RIGHT);
        Variant only = act.variants().get(0).inOrder(List.of(typed.id()));
        Show one =
                solo.withAct(act.flown(high, List.of(typed), List.of(only)).withFigures(List.of(typed), act.remarks()));

        Show back = done(one, figures.asInCatalogue(SOLO, typed.id()));

        assertThat(figure(back, "loop").isLaidOut()).isTrue();
        assertThat(figure(back, "loop").elements()).isNotNull().doesNotContain(WIDE);
        assertThat(Objects.requireNonNull(act(back).entry()).heightFt()).isLessThan(3_000);
        assertThat(flown(back, "loop").completed()).isTrue();
    }

    @Test
    void whatIsOnlyDrawnByTheCatalogueIsRefusedOfAnOwnShape() throws CannotBe {
        Show show = Edited.solo();
        Show own = done(show, shape(show, "loop", LINE, WIDE));
        for (Pin pin : List.of(new Pin.Count(2.0), new Pin.Length(20.0), new Pin.Side(Asked.Hand.LEFT))) {
            assertThatThrownBy(() -> figures.pin(SOLO, id(own, "loop"), pin).of(own))
                    .isInstanceOf(CannotBe.class)
                    .hasMessageContaining("“loop” has a shape of its own, and its " + pin.word());
        }
    }

    @Test
    void whatCannotBeFlownIsRefusedWithTheLayoutsSentence() throws CannotBe {
        Show show = Edited.solo();
        assertThatThrownBy(() -> shape(show, "loop", new Element.Line(Until.SECONDS, 600, 1))
                        .of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("never reaches its end");
        assertThatThrownBy(() -> shape(show, "loop", new Element.Line(Until.FEET, 9_000, 1))
                        .of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("lasts no time");
        assertThatThrownBy(() -> shape(show, "loop").of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("at least one element");
    }

    @Test
    void whatIsFlownBetweenTwoFiguresHasNoShapeOfItsOwn() throws CannotBe {
        Show show = Edited.solo();
        Figure transit =
                act(show).figures().stream().filter(Figure::transit).findFirst().orElseThrow();
        assertThatThrownBy(() ->
                        figures.shape(SOLO, transit.id(), "x", List.of(LINE)).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("follows from them");
    }

    @Test
    void anotherFigureInItsPlaceIsFlownAsInTheCatalogue() throws CannotBe {
        Show show = Edited.solo();
        Show own = done(show, shape(show, "loop", LINE, WIDE));
        Show other = done(own, figures.replace(SOLO, id(own, "loop"), "Cuban eight"));
        Figure figure = figure(other, "Cuban eight");
        assertThat(figure.hasOwnShape()).isFalse();
        assertThat(Objects.requireNonNull(figure.elements())).doesNotContain(LINE);
    }
}
