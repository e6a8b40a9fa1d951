package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.draft.Drafted;
import crowdline.flight.Workers;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.now.LiveNow;
import crowdline.live.now.PlanAhead;
import crowdline.live.state.Durations;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.patter.Carried;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.PlanRequest;
import crowdline.patter.Planner;
import crowdline.patter.Slot;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.CatalogueFile;
import crowdline.timing.ActTimes;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** An act that was awaited, and its first key: what is said in it is planned as if nobody had waited. */
class FirstSpaceTest {
    private static final double SLOT_S = 100;
    private static final double BEGAN_S = 112.4;

    private final Act act;
    private final ActTimes times;
    private final Durations durations;
    private final PlanAhead ahead;
    private final Planner planner = new Planner();
    private LiveState state = LiveState.initial();
    private Plan plan = Plan.EMPTY;
    private List<Slot> slots = List.of();

    FirstSpaceTest() {
        Show show = Drafted.of(
                        Drafted.empty(),
                        "aerobatic two-seater",
                        "Ada Quillan",
                        "run-in from the right\nhalf Cuban\nloop\nstall turn\nslow roll\nbarrel roll\nhumpty bump")
                .show();
        LoadedShow loaded = new LoadedShow(show, CatalogueFile.shipped(), Paces.DEFAULT, Workers.ALONE, 3);
        act = show.acts().get(0);
        String variant = act.variants().get(0).name();
        List<String> ids =
                act.inOrder(act.variants().get(0)).stream().map(Figure::id).toList();
        times = loaded.prediction(act.id(), variant).orElseThrow().times();
        durations = loaded.durations().of(act.id(), variant, ids);
        ahead = loaded.planAhead();
        step(new ShowEvent.ShowOpened(0, "A day", List.of(act.id())));
        step(new FlightEvent.ActChosen(0, act.id(), variant, ids, SLOT_S));
    }

    private void step(LiveEvent event) {
        state = ((Step.Moved) Live.next(state, event)).state();
    }

    private PlanRequest request(double nowS, Plan before) {
        LiveNow now = LiveNow.of(state, durations, nowS, Instant.EPOCH);
        return ahead.request(state, now, times, Optional.of(before), Set.of(), 0);
    }

    private void plan(double nowS, UnaryOperator<Plan> carried) {
        PlanRequest request = request(nowS, plan).after(carried.apply(plan));
        plan = planner.plan(request);
        slots = request.slots();
    }

    private double late(Placed placed) {
        double figureS = slots.stream()
                .filter(s -> s.figureId().equals(placed.figureId()))
                .findFirst()
                .orElseThrow()
                .startS();
        return placed.startS() - figureS;
    }

    private Placed call(int number) {
        return plan.placed().stream()
                .filter(p -> p.kind() == RemarkKind.CALL)
                .skip(number)
                .findFirst()
                .orElseThrow();
    }

    /** The aircraft comes into sight as the key is pressed, and that is when the commentator says who it is. */
    @Test
    void introductionIsDueUntilItHasBeenSaidAndLeavesTheNextCallItsTime() {
        plan(SLOT_S, before -> before);
        step(new FlightEvent.ActStarted(BEGAN_S));
        plan(BEGAN_S, before -> before);

        Placed introduction = call(0);
        assertThat(introduction.remarkId()).isEqualTo("run-in-call");
        assertThat(introduction.startS()).isEqualTo(BEGAN_S);
        Placed next = call(1);
        double nextS = slots.stream()
                .filter(s -> s.figureId().equals(next.figureId()))
                .findFirst()
                .orElseThrow()
                .startS();
        assertThat(next.startS()).isGreaterThanOrEqualTo(introduction.endS());
        assertThat(next.endS()).isLessThanOrEqualTo(nextS - 1 + 1e-9);

        plan(BEGAN_S + 1, before -> before);
        assertThat(call(0)).isEqualTo(introduction);
    }

    @Test
    void nothingIsLateForHavingWaited() {
        for (double nowS = SLOT_S; nowS < BEGAN_S; nowS += 1) {
            plan(nowS, before -> before);
        }
        step(new FlightEvent.ActStarted(BEGAN_S));

        plan(
                BEGAN_S,
                before -> Carried.of(before, slots, request(BEGAN_S, before).slots(), BEGAN_S));
        Plan fresh = planner.plan(request(BEGAN_S, Plan.EMPTY));
        assertThat(fresh.placed()).hasSizeGreaterThan(6);
        for (Placed made : fresh.placed()) {
            if (made.figureId() != null) {
                Placed now = plan.find(made.remarkId()).orElseThrow();
                assertThat(late(now)).as(made.remarkId()).isCloseTo(late(made), within(1.0));
            }
        }
    }
}
