package crowdline.steer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.follow.FollowPlan;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.FlightEvent.AircraftBegan;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import crowdline.live.state.Step;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import crowdline.telemetry.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What comes before an act, and whether the aircraft begins it, on a clock of the test's own. */
@Tag("slow")
class ActBeginTest {
    private static final double STEP_S = 0.2;

    private static Show show;
    private static Flight takeOff;
    private static Flight inTheAir;

    private final SplittableRandom random = new SplittableRandom(5);
    private final List<FlightEvent> moved = new ArrayList<>();
    /** Those that began an act, and put no start right. */
    private final List<AircraftBegan> starts = new ArrayList<>();

    private LiveState state = LiveState.initial();
    private AircraftFollowing following = new AircraftFollowing(s -> Optional.empty());
    private @Nullable Flight awaited;
    private double nowS = 10;

    @BeforeAll
    static void predict() throws ShowFileException {
        show = Objects.requireNonNull(new ShowFile()
                .read(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"))
                .show());
        takeOff = predicted("jackanapes-solo");
        inTheAir = predicted("thistledown-glider");
    }

    private static Flight predicted(String id) {
        Act act = show.act(id).orElseThrow();
        return new Predictor(show, CatalogueFile.shipped(), act, act.variants().get(0)).predict();
    }

    private void happens(LiveEvent event) {
        if (Live.next(state, event) instanceof Step.Moved next) {
            state = next.state();
        }
    }

    private void waitFor(Flight act) {
        awaited = act;
        FollowPlan plan = FollowPlan.of(act);
        following = new AircraftFollowing(s -> Optional.of(plan));
        happens(new ShowEvent.ShowOpened(0, "Test", List.of(act.actId())));
        happens(new FlightEvent.ActChosen(
                1,
                act.actId(),
                act.variant(),
                act.figures().stream().map(FigureFlight::figureId).toList(),
                null));
        happens(new FlightEvent.SourceChosen(2, Source.AIRCRAFT));
    }

    private void see(double alongM, double awayM, double heightM) {
        Reading reading = new Reading(
                nowS,
                alongM + 2 * random.nextGaussian(),
                awayM + 2 * random.nextGaussian(),
                heightM + 2 * random.nextGaussian(),
                null,
                null);
        following.reading(state, reading).ifPresent(this::move);
        nowS += STEP_S;
    }

    private void move(FlightEvent event) {
        moved.add(event);
        if (event instanceof AircraftBegan began && state.phase() instanceof Phase.Waiting) {
            starts.add(began);
        }
        happens(event);
    }

    private void hearNothing(double seconds) {
        for (double s = 0; s < seconds; s += STEP_S) {
            following.tick(state, nowS).ifPresent(this::move);
            nowS += STEP_S;
        }
    }

    private Flight flight() {
        return Objects.requireNonNull(awaited);
    }

    private Vec entry() {
        return flight().samples().get(0).place();
    }

    /** Along a straight line from here to there, at a speed. */
    private void straight(Vec from, Vec to, double mps) {
        double wayM = Math.sqrt(
                Math.pow(to.x() - from.x(), 2) + Math.pow(to.y() - from.y(), 2) + Math.pow(to.z() - from.z(), 2));
        int steps = (int) (wayM / mps / STEP_S);
        for (int i = 0; i < steps; i++) {
            double u = (double) i / steps;
            see(
                    from.x() + u * (to.x() - from.x()),
                    from.y() + u * (to.y() - from.y()),
                    from.z() + u * (to.z() - from.z()));
        }
    }

    private void stand(Vec at, double seconds) {
        for (double s = 0; s < seconds; s += STEP_S) {
            see(at.x(), at.y(), at.z());
        }
    }

    /** A run down the runway that gathers speed evenly. */
    private void run(Vec from, double mpss, double seconds) {
        for (double s = 0; s < seconds; s += STEP_S) {
            see(from.x() + mpss * s * s / 2, from.y(), from.z());
        }
    }

    /** The act as predicted, to a time of it. */
    private void fly(double toS) {
        double beginS = nowS;
        for (Sample sample : flight().samples()) {
            if (sample.tS() <= toS && sample.tS() >= nowS - beginS - 1e-6) {
                see(sample.place().x(), sample.place().y(), sample.place().z());
            }
        }
    }

    private static Vec beside(Vec place, double x, double y, double z) {
        return new Vec(place.x() + x, place.y() + y, place.z() + z);
    }

    private AircraftBegan onlyStart() {
        assertThat(starts).hasSize(1);
        return starts.get(0);
    }

    @Test
    void takeOffBeginsTheActAfterTaxiingOut() {
        waitFor(takeOff);
        stand(beside(entry(), -300, -80, 0), 60);
        straight(beside(entry(), -300, -80, 0), entry(), 8);
        stand(entry(), 30);
        assertThat(following.tracking(nowS).begins()).isTrue();
        double beginS = nowS;
        run(entry(), 3, 15);
        AircraftBegan began = onlyStart();
        assertThat(began.sinceS()).isBetween(beginS, beginS + 9);
        assertThat(began.atS()).isBetween(beginS + 9, beginS + 15);
        assertThat(state.figureId()).isEqualTo(flight().figures().get(0).figureId());
        assertThat(state.source()).isEqualTo(Source.AIRCRAFT);
    }

    @Test
    void whoPressesSpaceWhileItStandsIsStillLedOnceItGoes() {
        for (double earlyS : new double[] {10, 15, 30, 90}) {
            state = LiveState.initial();
            moved.clear();
            waitFor(takeOff);
            happens(new FlightEvent.SourceChosen(nowS, Source.HAND));
            stand(entry(), 20);
            happens(new FlightEvent.ActStarted(nowS));
            stand(entry(), 2);
            happens(new FlightEvent.SourceChosen(nowS, Source.AIRCRAFT));
            stand(entry(), earlyS);
            assertThat(moved).as("while it stands").isEmpty();
            double beginS = nowS;
            fly(flight().figures().get(4).startS() - 2);
            assertThat(moved)
                    .as("pressed %s s early", earlyS)
                    .allSatisfy(e -> assertThat(e).isInstanceOf(FlightEvent.AircraftSeen.class))
                    .extracting(e -> ((FlightEvent.AircraftSeen) e).index())
                    .containsExactly(1, 2, 3);
            assertThat(moved.get(0).atS() - beginS)
                    .isCloseTo(flight().figures().get(1).startS(), within(5.0));
        }
    }

    @Test
    void actThatBeginsInTheAirBeginsWhereItIsPlanned() {
        waitFor(inTheAir);
        Sample a = flight().samples().get(0);
        Sample b = flight().samples().get(10);
        double secondsS = b.tS() - a.tS();
        double vx = (b.place().x() - a.place().x()) / secondsS;
        double vy = (b.place().y() - a.place().y()) / secondsS;
        straight(beside(entry(), -60 * vx, -60 * vy, 0), entry(), Math.hypot(vx, vy));
        double beginS = nowS;
        fly(30);
        assertThat(onlyStart().sinceS()).isCloseTo(beginS, within(3.0));
        assertThat(moved)
                .as("and is followed from there")
                .filteredOn(FlightEvent.AircraftSeen.class::isInstance)
                .extracting(e -> ((FlightEvent.AircraftSeen) e).index())
                .containsExactly(1);
    }

    @Test
    void taxiingAndARunThatIsGivenUpBeginNothing() {
        waitFor(takeOff);
        stand(entry(), 20);
        straight(entry(), beside(entry(), 900, 0, 0), 14);
        straight(beside(entry(), 900, 0, 0), entry(), 14);
        run(entry(), 3, 7);
        for (double s = 0; s < 6; s += STEP_S) {
            see(entry().x() + 73 + 21 * s - 1.75 * s * s, entry().y(), entry().z());
        }
        stand(beside(entry(), 136, 0, 0), 30);
        assertThat(moved).isEmpty();
        run(beside(entry(), 136, 0, 0), 3, 15);
        onlyStart();
    }

    @Test
    void towPastTheEntryAndTheWayBackToItBeginNothing() {
        waitFor(inTheAir);
        straight(new Vec(-600, 200, 0), new Vec(900, 200, 200), 28);
        straight(new Vec(900, 700, 250), new Vec(-900, 700, 450), 28);
        straight(new Vec(-900, 300, 480), new Vec(900, 300, 680), 28);
        straight(new Vec(900, 2500, 700), new Vec(-900, 2500, 900), 28);
        assertThat(moved).isEmpty();
    }

    @Test
    void aircraftThatComesInFromElsewhereBeginsNothingUntilItHasStoodOnTheGround() {
        waitFor(takeOff);
        straight(new Vec(-6000, 800, 300), new Vec(-1500, 0, 150), 55);
        straight(new Vec(-1500, 0, 150), beside(entry(), -200, 0, 0), 40);
        straight(beside(entry(), -200, 0, 0), entry(), 10);
        assertThat(moved).isEmpty();
        stand(entry(), 60);
        assertThat(moved).isEmpty();
        run(entry(), 3, 15);
        onlyStart();
    }

    @Test
    void waitWithoutReadingsBeginsNothingAndSpoilsNothing() {
        waitFor(takeOff);
        hearNothing(900);
        stand(entry(), 30);
        hearNothing(300);
        assertThat(following.tracking(nowS).begins()).isFalse();
        stand(entry(), 20);
        assertThat(moved).isEmpty();
        run(entry(), 3, 15);
        onlyStart();
    }

    @Test
    void aircraftThatIsSeenOnlyOnceTheActGoesOnBeginsNothing() {
        waitFor(inTheAir);
        double gone = flight().figures().get(3).startS();
        double beginS = nowS - gone;
        for (Sample sample : flight().samples()) {
            if (sample.tS() >= gone && sample.tS() >= nowS - beginS - 1e-6) {
                see(sample.place().x(), sample.place().y(), sample.place().z());
            }
        }
        assertThat(moved).isEmpty();
    }

    @Test
    void startTakenBackComesOnlyByHand() {
        waitFor(takeOff);
        stand(entry(), 20);
        run(entry(), 3, 15);
        onlyStart();
        happens(new FlightEvent.SteppedBack(nowS));
        assertThat(state.phase()).isInstanceOf(Phase.Waiting.class);
        stand(beside(entry(), 216, 0, 0), 30);
        run(beside(entry(), 216, 0, 0), 3, 15);
        onlyStart();
        assertThat(following.tracking(nowS).begins()).isFalse();
    }

    /** Its arrow span like a compass in a drawer: the noise of the receiver was taken for its way. */
    @Test
    void arrowOfAnAircraftThatStandsKeepsTheWayItCameBy() {
        waitFor(takeOff);
        straight(beside(entry(), -200, 0, 0), entry(), 12);
        for (int i = 0; i < 20; i++) {
            stand(entry(), 3);
            var craft = Objects.requireNonNull(following.tracking(nowS).craft());
            assertThat(Math.cos(craft.pathRad())).as("to the right").isGreaterThan(0.8);
            assertThat(Math.cos(craft.headingRad())).as("to the right").isGreaterThan(0.8);
        }
    }

    @Test
    void aircraftIsShownBeforeTheActAndForHalfAMinuteAfterItsLastReading() {
        waitFor(takeOff);
        stand(entry(), 10);
        assertThat(following.tracking(nowS + 20).craft()).isNotNull();
        assertThat(following.tracking(nowS + 40).craft()).isNull();
    }
}
