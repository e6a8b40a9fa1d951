package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Form;
import crowdline.console.prepare.glance.PinField;
import crowdline.console.prepare.glance.PrepareView.FigureEdit;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Redrawn;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a pilot wrote of a figure stands at it, with what of it is not drawn, and a number that is not kept is not called told. */
class WrittenOfFigureTest {
    private static FigureEdit edit(Show show, String figure) {
        return Listed.flown(show).acts().get(0).variants().get(0).figures().stream()
                .filter(f -> f.name().equals(figure))
                .map(FigureView::edit)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void thePilotsOwnLineAndWhatOfItIsNotDrawn() {
        Show show = Listed.show("loop\n2.  stall turn,   quarter roll\nslow roll along the line");
        assertThat(edit(show, "stall turn").written().text()).isEqualTo("2. stall turn, quarter roll");
        assertThat(edit(show, "stall turn").written().undrawn()).isEqualTo("“quarter roll”");
        assertThat(edit(show, "slow roll").written().undrawn()).isEmpty();
    }

    @Test
    void whatIsToldAndNotFlownSoIsMarkedWithWhatIsFlown() {
        Show show = Listed.show("loop\nslow roll at 130 kt\nstall turn");
        assertThat(speed(edit(show, "slow roll"))).isEqualTo("told");
        Act act = show.acts().get(0);
        List<Figure> figures =
                act.figures().stream().map(WrittenOfFigureTest::faster).toList();
        FigureEdit not = edit(show.withAct(act.withFigures(figures, act.remarks())), "slow roll");
        assertThat(speed(not)).matches("flown: \\d+ kt");
        assertThat(not.pins())
                .filteredOn(pin -> pin.field() == PinField.SPEED)
                .singleElement()
                .satisfies(pin -> assertThat(pin.mark().form()).isEqualTo(Form.DIAMOND));
    }

    private static String speed(FigureEdit edit) {
        return edit.pins().stream()
                .filter(pin -> pin.field() == PinField.SPEED)
                .findFirst()
                .orElseThrow()
                .mark()
                .word();
    }

    private static Figure faster(Figure f) {
        Asked asked = f.asked();
        return asked == null || asked.kt() == null ? f : Redrawn.asked(f, asked.withKt(200.0), false);
    }
}
