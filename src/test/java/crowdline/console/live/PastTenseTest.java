package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.TalkEvent;
import crowdline.live.now.PlanAhead;
import crowdline.live.state.LiveState;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Plan;
import crowdline.patter.PlanRequest;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.sight.ActSheet;
import crowdline.speech.pace.SpokenTime;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A loop whose fact is "That was five g.", a stall turn with one of its own, a low pass. */
class PastTenseTest {
    private static final SpokenTime TIME = new SpokenTime(4, 3.5, 4.5);
    private static final FlightEvent START = new FlightEvent.ActStarted(100);
    private static final FlightEvent ON = new FlightEvent.Stepped(110);

    private final Show show = show();
    private final LivePresenter presenter =
            new LivePresenter(new ShowLookup(show, new Catalogue(List.of()), text -> TIME, (act, v) -> ActSheet.NONE));

    private static Show show() {
        Show small = SmallShow.show();
        Act one = small.acts().get(0);
        List<Figure> figures = new ArrayList<>(one.figures());
        figures.set(0, with(figures.get(0), Remark.of("r-past", RemarkKind.FACT, "That was five g.")));
        Remark stop = Remark.of("r-stop", RemarkKind.FACT, "At the top it was down to 20 knots.");
        figures.set(1, with(figures.get(1), stop));
        figures.set(2, with(figures.get(2), Remark.of("r-last", RemarkKind.FACT, "That was 180 knots.")));
        Act act = new Act(
                one.id(),
                one.title(),
                one.performer(),
                one.airframe(),
                one.slotStart(),
                one.slotMinutes(),
                one.entry(),
                figures,
                one.variants(),
                one.remarks());
        return small.withActs(List.of(act), small.remarks());
    }

    private static Figure with(Figure figure, Remark remark) {
        List<Remark> remarks = new ArrayList<>(figure.remarks());
        remarks.add(remark);
        return new Figure(
                figure.id(),
                figure.figure(),
                figure.title(),
                figure.look(),
                figure.elements(),
                figure.durationS(),
                figure.exit(),
                figure.minEntryKt(),
                figure.quiets(),
                remarks);
    }

    private List<String> facts(double nowS, LiveEvent... events) {
        return presenter
                .view(SmallShow.moment(nowS, Plan.EMPTY, SmallShow.after(events)))
                .handles()
                .factIds();
    }

    private @Nullable String figureOf(String remarkId, double nowS, LiveEvent... events) {
        LiveState state = SmallShow.after(events);
        List<FigureTime> times = new ArrayList<>();
        for (String id : List.of("f1", "f2", "f3")) {
            times.add(new FigureTime(id, 10.0 * times.size(), 10, 9, 11));
        }
        PlanRequest request = new PlanAhead(show, text -> TIME)
                .request(
                        state,
                        SmallShow.moment(nowS, Plan.EMPTY, state).now(),
                        new ActTimes("a1", "full", times),
                        Optional.empty());
        return request.candidates().stream()
                .filter(c -> c.remark().id().equals(remarkId))
                .map(c -> c.figureId() == null ? "floats" : c.figureId())
                .findFirst()
                .orElse(null);
    }

    @Test
    void aFactInThePastTenseIsOfferedOnceItsFigureHasBeenFlown() {
        assertThat(facts(50)).contains("r-fact-1").doesNotContain("r-past", "r-stop");
        assertThat(facts(104, START)).contains("r-fact-1").doesNotContain("r-past", "r-stop");
        assertThat(facts(112, START, ON)).startsWith("r-past").doesNotContain("r-stop");
        assertThat(facts(122, START, ON, new FlightEvent.Stepped(120)))
                .startsWith("r-stop")
                .doesNotContain("r-past");
        assertThat(facts(140, START, ON, new FlightEvent.Stepped(120), new FlightEvent.ActEnded(130)))
                .startsWith("r-last");
        assertThat(facts(113, START, ON, new TalkEvent.RemarkSaid(112, "r-past", RemarkForm.FULL)))
                .doesNotContain("r-past");
    }

    @Test
    void thePlanHasItWhileTheNextFigureIsFlown() {
        assertThat(figureOf("r-past", 104, START)).isEqualTo("f2");
        assertThat(figureOf("r-past", 112, START, ON)).isEqualTo("f2");
        assertThat(figureOf("r-fact-1", 104, START)).isEqualTo("f1");
        assertThat(figureOf("r-past", 122, START, ON, new FlightEvent.Stepped(120)))
                .isNull();
        assertThat(figureOf("r-last", 122, START, ON, new FlightEvent.Stepped(120)))
                .isNull();
        assertThat(figureOf("r-last", 140, START, ON, new FlightEvent.Stepped(120), new FlightEvent.ActEnded(130)))
                .isEqualTo("floats");
    }
}
