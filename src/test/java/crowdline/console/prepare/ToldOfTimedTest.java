package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.prepare.glance.PreparePresenter;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.flight.Flight;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.speech.pace.SpokenTime;
import crowdline.timing.ActTimes;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Of a figure that is only timed stands in the table what was told of its height and its speed. */
class ToldOfTimedTest {
    private static List<FigureView> figures(String list) {
        Show show = Listed.show(list);
        PreparePresenter.Predictions none = new PreparePresenter.Predictions() {
            @Override
            public Optional<Flight> flight(Act act, Variant variant) {
                return Optional.empty();
            }

            @Override
            public Optional<ActTimes> times(Act act, Variant variant) {
                return Optional.empty();
            }
        };
        return new PreparePresenter(SampleTools.CATALOGUE, text -> new SpokenTime(4, 3.5, 4.5), none)
                .view(show, List.of())
                .acts()
                .get(0)
                .variants()
                .get(0)
                .figures();
    }

    @Test
    void aRunInHasWhatItWasTold() {
        FigureView runIn = figures("run in from the right, 300 ft, 150 kt\nloop\nslow roll")
                .get(0);
        assertThat(runIn.name()).isEqualTo("run-in");
        assertThat(runIn.entry()).isEqualTo("150");
        assertThat(runIn.height()).isEqualTo("300");
    }

    @Test
    void whatWasNotToldIsNotKnown() {
        FigureView runIn = figures("run in from the right\nloop\nslow roll").get(0);
        assertThat(runIn.entry()).isEqualTo("–");
        assertThat(runIn.height()).isEqualTo("–");
    }
}
