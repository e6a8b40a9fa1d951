package crowdline.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.console.live.SideView.Craft;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.Sample;
import crowdline.follow.FollowPlan;
import crowdline.live.ClockAdvance;
import crowdline.live.Durations;
import crowdline.live.FlightEvent;
import crowdline.live.Live;
import crowdline.live.LiveEvent;
import crowdline.live.LiveState;
import crowdline.live.ShowEvent;
import crowdline.live.Source;
import crowdline.live.Step;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.storage.CatalogueFile;
import crowdline.storage.ShowFile;
import crowdline.storage.ShowFileException;
import crowdline.telemetry.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A whole act led by the aircraft, event by event, on a clock of the test's own. */
class AircraftFollowingTest {
    private static final double BEGIN_S = 20;

    private static Flight flight;
    private static FollowPlan plan;
    private static Act act;

    private LiveState state = LiveState.initial();
    private final AircraftFollowing following = new AircraftFollowing(s -> Optional.of(plan));
    private final SplittableRandom random = new SplittableRandom(11);
    private final List<FlightEvent> moved = new ArrayList<>();

    @BeforeAll
    static void predict() throws ShowFileException {
        Show show = Objects.requireNonNull(
                new ShowFile().read(Path.of("demo-shows/fenmarsh-air-day.json")).show());
        act = show.act("thistledown-glider").orElseThrow();
        flight =
                new Predictor(show, CatalogueFile.shipped(), act, act.variants().get(0)).predict();
        plan = FollowPlan.of(flight);
    }

    private void happens(LiveEvent event) {
        if (Live.next(state, event) instanceof Step.Moved next) {
            state = next.state();
        }
    }

    private void begin() {
        happens(new ShowEvent.ShowOpened(0, "Test", List.of(act.id())));
        happens(new FlightEvent.ActChosen(
                1,
                act.id(),
                flight.variant(),
                flight.figures().stream().map(FigureFlight::figureId).toList(),
                null));
        happens(new FlightEvent.SourceChosen(2, Source.AIRCRAFT));
        happens(new FlightEvent.ActStarted(BEGIN_S));
    }

    /** Flies to a time of the act; readings come five times a second where they are heard. */
    private void fly(double fromS, double toS, DoublePredicate heard) {
        Durations durations = index -> flight.figures().get(index).durationS();
        for (Sample sample : flight.samples()) {
            double t = sample.tS();
            if (t < fromS || t >= toS || Math.round(t * 10) % 2 != 0) {
                continue;
            }
            double nowS = BEGIN_S + t;
            ClockAdvance.due(state, durations, nowS).ifPresent(this::happens);
            Optional<FlightEvent> event =
                    heard.test(t) ? following.reading(state, reading(sample, nowS)) : following.tick(state, nowS);
            event.ifPresent(e -> {
                moved.add(e);
                happens(e);
            });
        }
    }

    private Reading reading(Sample sample, double nowS) {
        return new Reading(
                nowS,
                sample.place().x() + 2 * random.nextGaussian(),
                sample.place().y() + 2 * random.nextGaussian(),
                sample.place().z() + 2 * random.nextGaussian(),
                null,
                null);
    }

    private FigureFlight middle() {
        return flight.figures().get(flight.figures().size() / 2);
    }

    @Test
    void aircraftMovesTheActFigureByFigure() {
        begin();
        fly(0, flight.totalS(), t -> true);
        List<FlightEvent.AircraftSeen> seen = moved.stream()
                .filter(FlightEvent.AircraftSeen.class::isInstance)
                .map(FlightEvent.AircraftSeen.class::cast)
                .toList();
        assertThat(seen).extracting(FlightEvent.AircraftSeen::index).isSorted();
        for (FlightEvent.AircraftSeen event : seen) {
            FigureFlight figure = flight.figures().get(event.index());
            assertThat(event.atS() - BEGIN_S).as(figure.name()).isCloseTo(figure.startS(), within(1.5));
        }
        assertThat(seen.size()).isGreaterThanOrEqualTo(flight.figures().size() - 2);
        assertThat(state.source()).isEqualTo(Source.AIRCRAFT);
    }

    @Test
    void clockStandsInWhileReadingsAreGoneAndHandsBack() {
        begin();
        double gone = middle().startS();
        fly(0, gone + 40, t -> t < gone || t > gone + 12);
        assertThat(moved)
                .filteredOn(FlightEvent.SourceChosen.class::isInstance)
                .extracting(e -> ((FlightEvent.SourceChosen) e).source())
                .containsExactly(Source.CLOCK, Source.AIRCRAFT);
        assertThat(state.source()).isEqualTo(Source.AIRCRAFT);
    }

    @Test
    void stepByHandHoldsForTheFigure() {
        begin();
        int ahead = flight.figures().indexOf(middle());
        fly(0, middle().startS() - 3, t -> true);
        happens(new FlightEvent.JumpedTo(BEGIN_S + middle().startS() - 3, ahead));
        int before = moved.size();
        fly(middle().startS() - 3, middle().startS() + 2, t -> true);
        assertThat(moved.subList(before, moved.size())).isEmpty();
        assertThat(state.course().position()).isEqualTo(ahead);
    }

    /** The show takes a step on another thread, so readings come before it has. */
    @Test
    void stepOnItsWayIsNotToldAgain() {
        begin();
        LiveState before = state;
        fly(0, flight.figures().get(1).startS() - 1, t -> true);
        LiveState waiting = state;
        int told = 0;
        for (Sample sample : flight.samples()) {
            double t = sample.tS() - flight.figures().get(1).startS();
            if (t >= -1 && t < 1.1 && Math.round(sample.tS() * 10) % 2 == 0) {
                double nowS = BEGIN_S + sample.tS();
                told += following.reading(waiting, reading(sample, nowS)).isPresent() ? 1 : 0;
            }
        }
        assertThat(before.course().position()).isZero();
        assertThat(told).isEqualTo(1);
    }

    @Test
    void nothingIsMovedThatTheHandMoves() {
        begin();
        happens(new FlightEvent.SourceChosen(BEGIN_S + 0.1, Source.HAND));
        fly(0, middle().endS(), t -> true);
        assertThat(moved).isEmpty();
        assertThat(state.course().position()).isZero();
    }

    @Test
    void nothingBeginsAnActButTheHand() {
        happens(new ShowEvent.ShowOpened(0, "Test", List.of(act.id())));
        happens(new FlightEvent.ActChosen(
                1,
                act.id(),
                flight.variant(),
                flight.figures().stream().map(FigureFlight::figureId).toList(),
                null));
        happens(new FlightEvent.SourceChosen(2, Source.AIRCRAFT));
        fly(0, middle().endS(), t -> true);
        assertThat(moved).isEmpty();
    }

    @Test
    void screenIsToldWhereTheAircraftIsAndHowSureThatIs() {
        begin();
        assertThat(following.tracking(BEGIN_S).sureness()).isNull();
        fly(0, middle().endS(), t -> true);
        var tracking = following.tracking(BEGIN_S + middle().endS());
        assertThat(tracking.sureness()).isGreaterThan(0.5);
        assertThat(tracking.readingAgeS()).isLessThan(1.0);
        assertThat(Objects.requireNonNull(tracking.craft()).predicted()).isFalse();
    }

    @Test
    void aircraftIsShownWithItsTrailAndItsWayOverTheGround() {
        begin();
        Sample furthest = flight.samples().stream()
                .max(Comparator.comparingDouble(s -> s.place().y()))
                .orElseThrow();
        fly(0, furthest.tS(), t -> true);
        Craft craft = Objects.requireNonNull(
                following.tracking(BEGIN_S + furthest.tS()).craft());
        // One reading in two is kept, five a second for six seconds.
        assertThat(craft.trail()).hasSizeBetween(10, 20);
        assertThat(craft.word()).isEqualTo("read");
        Sample before = flight.samples().stream()
                .filter(s -> s.tS() >= furthest.tS() - 1)
                .findFirst()
                .orElseThrow();
        double wayRad = Math.atan2(
                furthest.place().y() - before.place().y(),
                furthest.place().x() - before.place().x());
        assertThat(Math.cos(craft.headingRad() - wayRad)).isGreaterThan(0.9);
        assertThat(Objects.requireNonNull(
                                following.tracking(BEGIN_S + furthest.tS() + 2).craft())
                        .word())
                .startsWith("read 2 s ago");
        assertThat(following.tracking(BEGIN_S + furthest.tS() + 4).craft())
                .as("then it is where the plan has it")
                .isNull();
    }

    @Test
    void noTrailIsDrawnAcrossAGap() {
        begin();
        fly(0, 30, t -> t < 20 || t > 26);
        Craft craft = Objects.requireNonNull(following.tracking(BEGIN_S + 30).craft());
        double stepM = 0;
        for (int i = 1; i < craft.trail().size(); i++) {
            stepM = Math.max(
                    stepM,
                    Math.hypot(
                            craft.trail().get(i).alongM()
                                    - craft.trail().get(i - 1).alongM(),
                            craft.trail().get(i).awayM()
                                    - craft.trail().get(i - 1).awayM()));
        }
        assertThat(craft.trail()).isNotEmpty();
        assertThat(stepM).isLessThan(60);
    }
}
