package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.arrange.ShowArranging;
import crowdline.flight.Workers;
import crowdline.list.ListReader;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.now.FigureNow;
import crowdline.live.now.LiveNow;
import crowdline.live.state.ClockAdvance;
import crowdline.live.state.Durations;
import crowdline.live.state.Flown;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import crowdline.timing.ToldTimes;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** An act whose list has a clock of its own, moved on by the clock in Live: each figure begins when the list says. */
class ListClockLiveTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    /** The slow roll goes right over into the barrel roll, and the list has eleven seconds more for it than it takes. */
    private static final String LIST =
            "0:00 loop\n0:40 stall turn\n1:15 slow roll left to right\n1:35 barrel roll\n2:05 humpty bump\n2:40 low pass";

    private static final double BEGAN_S = 100;

    private final Act act;
    private final Durations durations;
    private LiveState state = LiveState.initial();

    ListClockLiveTest() {
        Show show = new ShowArranging(CATALOGUE)
                .add(
                        ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null),
                        new ListReader(CATALOGUE).read(LIST),
                        id -> KindsFile.shipped()
                                .named("aerobatic two-seater")
                                .airframe(id, "The two-seater", Sliders.TYPICAL),
                        new ShowArranging.About("An act", "Somebody", LocalTime.of(14, 0), null))
                .show();
        act = show.acts().get(0);
        String variant = act.variants().get(0).name();
        List<String> ids =
                act.inOrder(act.variants().get(0)).stream().map(Figure::id).toList();
        durations = new LoadedShow(show, CATALOGUE, Paces.DEFAULT, Workers.ALONE, 3)
                .durations()
                .of(act.id(), variant, ids);
        step(new ShowEvent.ShowOpened(0, "A day", List.of(act.id())));
        step(new FlightEvent.ActChosen(0, act.id(), variant, ids, BEGAN_S));
        step(new FlightEvent.SourceChosen(1, Source.CLOCK));
        step(new FlightEvent.ActStarted(BEGAN_S));
    }

    private void step(LiveEvent event) {
        state = ((Step.Moved) Live.next(state, event)).state();
    }

    private void clockUntil(double nowS) {
        ClockAdvance.due(state, durations, nowS).ifPresent(due -> {
            step(due);
            clockUntil(nowS);
        });
    }

    private LiveNow at(double nowS) {
        clockUntil(nowS);
        return LiveNow.of(state, durations, nowS, Instant.EPOCH);
    }

    @Test
    void theClockBeginsEachFigureWhenTheListSays() {
        clockUntil(BEGAN_S + 170);

        var told = ToldTimes.of(act).beginsS();
        List<Flown> begun = state.course().flown().stream()
                .filter(flown -> told.containsKey(flown.figureId()))
                .toList();
        assertThat(begun)
                .hasSize(6)
                .allSatisfy(flown -> assertThat(flown.startedAtS() - firstBeganS())
                        .as(flown.figureId())
                        .isCloseTo(Objects.requireNonNull(told.get(flown.figureId())), within(0.01)));
    }

    /** On the way to the first figure the list's clock does not run yet. */
    private double firstBeganS() {
        return state.course().flown().stream()
                .filter(flown -> ToldTimes.of(act).beginsS().containsKey(flown.figureId()))
                .findFirst()
                .orElseThrow()
                .startedAtS();
    }

    @Test
    void betweenTwoFiguresTheFirstIsOverAndTheNextCountedDown() {
        clockUntil(BEGAN_S + 40);
        LiveNow now = at(firstBeganS() + 90);
        FigureNow figure = Objects.requireNonNull(now.figure());

        assertThat(act.figure(figure.figureId()).orElseThrow().figure()).isEqualTo("slow roll");
        assertThat(figure.leftS()).isZero();
        assertThat(figure.overS()).isZero();
        assertThat(figure.isOver()).isTrue();
        assertThat(figure.wholeS()).isCloseTo(durations.secondsOf(figure.index()), within(1e-6));
        assertThat(now.upcoming().get(0).inS()).isCloseTo(5, within(0.01));
        assertThat(now.upcoming().get(1).inS()).isNotNull().isGreaterThan(5.0);
        assertThat(now.lateS()).isCloseTo(0, within(0.01));
    }
}
