package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.console.prepare.PreparePresenter.Found;
import crowdline.console.prepare.PreparePresenter.Predictions;
import crowdline.console.prepare.PrepareView.ActView;
import crowdline.console.prepare.PrepareView.FigureView;
import crowdline.console.prepare.PrepareView.RemarkView;
import crowdline.flight.Flight;
import crowdline.show.Act;
import crowdline.show.Catalogue;
import crowdline.show.Severity;
import crowdline.show.Variant;
import crowdline.speech.SpokenTime;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PrepareTest {
    private static PrepareView view(Found... found) {
        Predictions predictions = new Predictions() {
            @Override
            public Optional<Flight> flight(Act act, Variant variant) {
                return Optional.empty();
            }

            @Override
            public Optional<ActTimes> times(Act act, Variant variant) {
                return Optional.of(new ActTimes("a1", "full", List.of(new FigureTime("f1", 65, 3, 2, 5))));
            }
        };
        return new PreparePresenter(new Catalogue(List.of()), text -> new SpokenTime(4, 3.5, 4.5), predictions)
                .view(SmallShow.show(), List.of(found));
    }

    @Test
    void aVariantIsChosenByTheCloudBase() {
        ActView act = view().acts().get(0);
        assertThat(act.under(2500).orElseThrow().name()).isEqualTo("full");
        assertThat(act.under(1500).orElseThrow().name()).isEqualTo("flat");
    }

    @Test
    void whatNobodyPredictedIsADash() {
        FigureView loop = view().acts().get(0).variants().get(0).figures().get(0);
        assertThat(loop.entry()).isEqualTo("–");
        assertThat(loop.start()).isEqualTo("1:05");
        assertThat(loop.band()).isEqualTo("2–5 s");
    }

    @Test
    void aRemarkLongerThanItsFigureSaysSo() {
        List<RemarkView> remarks =
                view().acts().get(0).variants().get(0).figures().get(0).remarks();
        assertThat(remarks.get(0).verdict().word()).isEqualTo("4 s");
        assertThat(remarks.get(1).verdict().word()).isEqualTo("Too long: 4 s of 3 s");
    }

    @Test
    void theWorstFindingComesFirstWithItsLine() {
        PrepareView view = view(new Found(Severity.NOTE, "small", 3), new Found(Severity.ERROR, "large", 9));
        assertThat(view.findings().get(0).message()).isEqualTo("large");
        assertThat(view.findings().get(0).where()).isEqualTo("line 9");
    }

    @Test
    void cloudBasesAreReadAsTyped() {
        assertThat(CloudBase.read("1,500 ft")).hasValue(1500);
        assertThat(CloudBase.read(" 800 ")).hasValue(800);
        assertThat(CloudBase.read("low")).isEmpty();
        assertThat(CloudBase.read("")).isEmpty();
    }
}
