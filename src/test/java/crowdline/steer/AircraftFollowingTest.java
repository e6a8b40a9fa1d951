package crowdline.steer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.leg.Sample;
import crowdline.follow.FollowPlan;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.state.ClockAdvance;
import crowdline.live.state.Durations;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.sight.SideView.Craft;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import crowdline.telemetry.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
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
    private static Show show;
    private static Act act;

    private LiveState state = LiveState.initial();
    private final AircraftFollowing following = new AircraftFollowing(s -> Optional.of(plan));
    private final SplittableRandom random = new SplittableRandom(11);
    private final List<FlightEvent> moved = new ArrayList<>();

    @BeforeAll
    static void predict() throws ShowFileException {
        Path file = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
        show = Objects.requireNonNull(new ShowFile().read(file).show());
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
        fly(flight, fromS, toS, heard);
    }

    private void fly(Flight flown, double fromS, double toS, DoublePredicate heard) {
        Durations durations = index -> flight.figures().get(index).durationS();
        for (Sample sample : flown.samples()) {
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
                .filteredOn(e -> !(e instanceof FlightEvent.AircraftSeen))
                .hasExactlyElementsOfTypes(FlightEvent.AircraftLost.class, FlightEvent.AircraftFound.class);
        assertThat(state.source()).isEqualTo(Source.AIRCRAFT);
    }

    /** The known fault: a clock taken up after the figure should have ended stood there for good. */
    @Test
    void feedCutShortlyBeforeAFigureEndsDoesNotLeaveThePositionStanding() {
        begin();
        FigureFlight figure = middle();
        double gone = figure.endS() - 2;
        fly(0, gone + 9, t -> t < gone);
        assertThat(moved.get(moved.size() - 1)).isInstanceOf(FlightEvent.AircraftLost.class);
        assertThat(state.course().clockStandsIn()).isTrue();
        assertThat(state.course().position())
                .as("flown by now")
                .isEqualTo(flight.figures().indexOf(figure) + 1);
    }

    @Test
    void clockStandsInWhereNoReadingEverCame() {
        begin();
        fly(0, flight.figures().get(2).startS() + 1, t -> false);
        assertThat(moved).hasExactlyElementsOfTypes(FlightEvent.AircraftLost.class);
        assertThat(state.course().position()).isEqualTo(2);
    }

    @Test
    void aircraftThatWasNeverHeardIsNotFollowedWhileTheHandLeads() {
        List<LiveState> asked = new ArrayList<>();
        AircraftFollowing quiet = new AircraftFollowing(s -> {
            asked.add(s);
            return Optional.of(plan);
        });
        begin();
        happens(new FlightEvent.SourceChosen(BEGIN_S, Source.HAND));
        for (int i = 1; i < 4; i++) {
            happens(new FlightEvent.Stepped(BEGIN_S + 10 * i));
            assertThat(quiet.tick(state, BEGIN_S + 10 * i + 1)).isEmpty();
        }
        assertThat(asked).isEmpty();
        quiet.reading(state, reading(flight.samples().get(0), BEGIN_S + 40));
        assertThat(asked).hasSize(1);
    }

    @Test
    void clockStandsInWhereTheActCannotBeFollowed() {
        AircraftFollowing blind = new AircraftFollowing(s -> Optional.empty());
        begin();
        List<FlightEvent> lost = new ArrayList<>();
        for (double s = 0; s < 6; s += 0.25) {
            blind.tick(state, BEGIN_S + s).ifPresent(lost::add);
        }
        assertThat(lost).isNotEmpty().allMatch(FlightEvent.AircraftLost.class::isInstance);
    }

    /** As after a crash: the journal knows where the show was, and the follower nothing. */
    @Test
    void followerThatBeginsInTheMiddleTakesWhatTheScreenSays() {
        begin();
        double to = middle().startS() + 2;
        fly(0, to, t -> true);
        int before = state.course().position();
        AircraftFollowing again = new AircraftFollowing(s -> Optional.of(plan));
        List<FlightEvent> events = new ArrayList<>();
        for (Sample sample : flight.samples()) {
            double t = sample.tS();
            if (t >= to && t < middle().endS() + 3 && Math.round(t * 10) % 2 == 0) {
                again.reading(state, reading(sample, BEGIN_S + t)).ifPresent(e -> {
                    events.add(e);
                    happens(e);
                });
            }
        }
        assertThat(events).hasExactlyElementsOfTypes(FlightEvent.AircraftSeen.class);
        assertThat(state.course().position()).isEqualTo(before + 1);
    }

    @Test
    void beingSureThatNothingOfThePlanIsFlownIsNotBeingSureOfTheFigure() {
        begin();
        fly(0, 4, t -> true);
        Sample last = flight.samples().stream()
                .filter(s -> s.tS() >= middle().startS())
                .findFirst()
                .orElseThrow();
        fly(4, last.tS(), t -> true);
        // Circles down, which nothing of the plan does.
        double radiusM = 120;
        double least = 1;
        for (int i = 1; i < 200; i++) {
            double s = i * 0.2;
            double turnedRad = s * last.speedMps() / radiusM;
            following.reading(
                    state,
                    new Reading(
                            BEGIN_S + last.tS() + s,
                            last.place().x() + radiusM * Math.sin(turnedRad) + random.nextGaussian(),
                            last.place().y() + radiusM * (1 - Math.cos(turnedRad)) + random.nextGaussian(),
                            last.place().z() - s + random.nextGaussian(),
                            null,
                            null));
            least = Math.min(
                    least,
                    Objects.requireNonNull(
                            following.tracking(BEGIN_S + last.tS() + s).sureness()));
        }
        assertThat(least).as("off the plan, it is sure of no figure").isZero();
    }

    /** What the hand says of the order reaches the follower, which then expects what is flown. */
    @Test
    void actFlownInASwappedOrderIsFollowedWhenTheHandSaidSo() {
        List<String> order = new ArrayList<>(act.variants().get(0).order());
        int at = order.indexOf(middle().figureId());
        Collections.swap(order, at, at + 1);
        Flight swapped =
                new Predictor(show, CatalogueFile.shipped(), act, new Variant("swapped", null, order)).predict();
        begin();
        double to = swapped.figures().get(at).startS();
        fly(swapped, 0, to - 3, t -> true);
        happens(new FlightEvent.NextSwapped(BEGIN_S + to - 3));
        fly(swapped, to - 3, swapped.figures().get(at + 2).startS() + 3, t -> true);
        List<FlightEvent.AircraftSeen> seen = moved.stream()
                .filter(FlightEvent.AircraftSeen.class::isInstance)
                .map(FlightEvent.AircraftSeen.class::cast)
                .toList();
        assertThat(seen.subList(seen.size() - 3, seen.size()))
                .extracting(FlightEvent.AircraftSeen::index)
                .containsExactly(at + 1, at, at + 2);
        for (int i = 0; i < 3; i++) {
            assertThat(seen.get(seen.size() - 3 + i).atS() - BEGIN_S)
                    .isCloseTo(swapped.figures().get(at + i).startS(), within(2.5));
        }
    }

    @Test
    void stepByHandHoldsForTheFigure() {
        begin();
        int ahead = flight.figures().indexOf(middle());
        fly(0, middle().startS() - 3, t -> true);
        double handS = BEGIN_S + middle().startS() - 3;
        happens(new FlightEvent.WentOffPlan(handS));
        happens(new FlightEvent.CameBack(handS, ahead));
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
    void screenIsToldHowFarThroughItsFigureTheAircraftIs() {
        begin();
        List<Double> off = new ArrayList<>();
        int looks = 0;
        for (double t = 2; t < flight.totalS(); t += 1) {
            fly(t == 2 ? 0 : t - 1, t, any -> true);
            double tS = t;
            FigureFlight flown = flight.figures().stream()
                    .filter(f -> f.startS() <= tS && tS < f.endS())
                    .findFirst()
                    .orElseThrow();
            looks++;
            following
                    .tracking(BEGIN_S + t)
                    .inFigureS(flight.figures().indexOf(flown), BEGIN_S + t, flown.durationS())
                    .ifPresent(s -> off.add(Math.abs(s - (tS - flown.startS()))));
        }
        assertThat(off.size()).isGreaterThan(looks / 2);
        assertThat(off.stream().filter(s -> s < 1).count()).isGreaterThan(off.size() * 9L / 10);
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
