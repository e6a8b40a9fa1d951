package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.console.paint.Form;
import crowdline.console.prepare.glance.PinField;
import crowdline.console.prepare.glance.PreparePresenter;
import crowdline.console.prepare.glance.PrepareView.FigureEdit;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.list.ListReader;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.aircraft.Sliders;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import crowdline.speech.pace.SpokenTime;
import crowdline.storage.show.KindsFile;
import crowdline.timing.ActTimes;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a pilot wrote of a figure stands at it, with what of it is not drawn, and a number that is not kept is not called told. */
class WrittenOfFigureTest {
    private static Show show(String list) {
        return new ShowArranging(SampleTools.CATALOGUE)
                .add(
                        ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null),
                        new ListReader(SampleTools.CATALOGUE).read(list),
                        id -> KindsFile.shipped()
                                .named("aerobatic two-seater")
                                .airframe(id, "The two-seater", Sliders.TYPICAL),
                        new ShowArranging.About("An act", "Somebody", LocalTime.of(14, 0), null))
                .show();
    }

    private static FigureEdit edit(Show show, String figure) {
        PreparePresenter.Predictions predictions = new PreparePresenter.Predictions() {
            @Override
            public Optional<Flight> flight(Act act, Variant variant) {
                return Optional.of(new Predictor(show, SampleTools.CATALOGUE, act, variant).predict());
            }

            @Override
            public Optional<ActTimes> times(Act act, Variant variant) {
                return Optional.empty();
            }
        };
        return new PreparePresenter(SampleTools.CATALOGUE, text -> new SpokenTime(4, 3.5, 4.5), predictions)
                .view(show, List.of()).acts().get(0).variants().get(0).figures().stream()
                        .filter(f -> f.name().equals(figure))
                        .map(FigureView::edit)
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void thePilotsOwnLineAndWhatOfItIsNotDrawn() {
        Show show = show("loop\n2.  stall turn,   quarter roll\nslow roll along the line");
        assertThat(edit(show, "stall turn").written().text()).isEqualTo("2. stall turn, quarter roll");
        assertThat(edit(show, "stall turn").written().undrawn()).isEqualTo("“quarter roll”");
        assertThat(edit(show, "slow roll").written().undrawn()).isEmpty();
    }

    @Test
    void whatIsToldAndNotFlownSoIsMarkedWithWhatIsFlown() {
        Show show = show("loop\nslow roll at 130 kt\nstall turn");
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
        return asked == null || asked.kt() == null
                ? f
                : new Figure(
                        f.id(),
                        f.figure(),
                        f.title(),
                        f.look(),
                        f.elements(),
                        f.durationS(),
                        f.exit(),
                        f.minEntryKt(),
                        asked.withKt(200.0),
                        false,
                        f.quiets(),
                        f.remarks());
    }
}
