package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Plan;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.sight.ActSheet;
import crowdline.speech.pace.SpokenTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What adds up an act is no fact to be taken once one of its figures is not flown. */
class DroppedSumTest {
    private static final String SUM = "In this act the aeroplane rolls right round about four times.";

    private final LivePresenter presenter = new LivePresenter(new ShowLookup(
            show(), new Catalogue(List.of()), text -> new SpokenTime(4, 3.5, 4.5), (act, v) -> ActSheet.NONE));

    private static Show show() {
        Show small = SmallShow.show();
        Act act = small.acts().get(0);
        Remark sum = Remark.of("r-sum", RemarkKind.FACT, SUM);
        return small.withAct(act.withFigures(act.figures(), List.of(sum)));
    }

    private List<String> facts(LiveEvent... events) {
        return presenter
                .view(SmallShow.moment(104, Plan.EMPTY, SmallShow.after(events)))
                .handles()
                .factIds();
    }

    @Test
    void aSumIsOfferedAsLongAsEverythingItCountsIsFlown() {
        FlightEvent start = new FlightEvent.ActStarted(100);
        assertThat(facts(start)).contains("r-sum");
        assertThat(facts(start, new FlightEvent.NextSwapped(102))).contains("r-sum");
        assertThat(facts(start, new FlightEvent.NextDropped(102))).isNotEmpty().doesNotContain("r-sum");
    }
}
