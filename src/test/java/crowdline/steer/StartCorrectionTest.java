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
import crowdline.live.event.FlightEvent.AircraftSeen;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import crowdline.telemetry.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Acts that the aircraft begins and flies exactly to plan, with the noise of a receiver at five readings a second. */
class StartCorrectionTest {
    private static final double STEP_S = 0.2;
    private static final double WAIT_S = 60;

    private final List<Double> latesS = new ArrayList<>();
    private LiveState state = LiveState.initial();

    private void happens(LiveEvent event) {
        if (Live.next(state, event) instanceof Step.Moved moved) {
            state = moved.state();
        }
    }

    private static Flight predicted(String file, String actId) throws Exception {
        Show show = Objects.requireNonNull(new ShowFile().read(Path.of(file)).show());
        Act act = show.act(actId).orElseThrow();
        return new Predictor(show, CatalogueFile.shipped(), act, act.variants().get(0)).predict();
    }

    /** Flies it and returns how far out the start is that the act counts from, in seconds. */
    private double startOff(Flight flight, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        FollowPlan plan = FollowPlan.of(flight);
        AircraftFollowing following = new AircraftFollowing(s -> Optional.of(plan));
        List<FigureFlight> figures = flight.figures();
        happens(new ShowEvent.ShowOpened(0, "Test", List.of(flight.actId())));
        happens(new FlightEvent.ActChosen(
                1,
                flight.actId(),
                flight.variant(),
                figures.stream().map(FigureFlight::figureId).toList(),
                null));
        happens(new FlightEvent.SourceChosen(2, Source.AIRCRAFT));
        List<Sample> samples = flight.samples();
        double beginS = 10 + WAIT_S;
        double endS = beginS + samples.get(samples.size() - 1).tS() - 2;
        int told = 0;
        int at = 0;
        for (double nowS = 10; nowS < endS; nowS += STEP_S) {
            while (at < samples.size() - 1 && samples.get(at + 1).tS() <= nowS - beginS) {
                at++;
            }
            Vec place = nowS < beginS
                    ? before(plan, samples, nowS - beginS)
                    : samples.get(at).place();
            Reading reading = new Reading(
                    nowS,
                    place.x() + 2 * random.nextGaussian(),
                    place.y() + 2 * random.nextGaussian(),
                    place.z() + 2 * random.nextGaussian(),
                    null,
                    null);
            FlightEvent event = following.reading(state, reading).orElse(null);
            if (event == null) {
                continue;
            }
            happens(event);
            told += event instanceof AircraftBegan ? 1 : 0;
            Double startS = state.course().actStartedAtS();
            if (event instanceof AircraftSeen seen && startS != null && !plan.isTimedOnly(seen.index() - 1)) {
                latesS.add(seen.atS() - startS - figures.get(seen.index()).startS());
            }
        }
        assertThat(told).as("told a few times, not at every reading").isBetween(1, 10);
        return Objects.requireNonNull(state.course().actStartedAtS()) - beginS;
    }

    /** Standing where the take-off begins, or coming straight in. */
    private static Vec before(FollowPlan plan, List<Sample> samples, double untilS) {
        Vec entry = samples.get(0).place();
        Sample later = samples.get(10);
        double share = plan.startsOnGround()
                ? 0
                : untilS / (later.tS() - samples.get(0).tS());
        return new Vec(
                entry.x() + share * (later.place().x() - entry.x()),
                entry.y() + share * (later.place().y() - entry.y()),
                entry.z());
    }

    private void isOnTime() {
        assertThat(latesS).hasSizeGreaterThan(5);
        assertThat(latesS.stream().filter(s -> Math.abs(s) <= 1).count())
                .as("boundaries within a second: %s", latesS)
                .isGreaterThanOrEqualTo((long) Math.floor(0.85 * latesS.size()));
        assertThat(latesS).allSatisfy(s -> assertThat(Math.abs(s)).isLessThan(2));
    }

    /** It was 6.8 s early to the end of the act. */
    @Test
    void anActThatIsSureOnlyInMidFigureCountsFromWhereItBegan() throws Exception {
        for (long seed = 1; seed <= 3; seed++) {
            state = LiveState.initial();
            assertThat(startOff(
                            predicted("src/test/resources/crowdline/shows/wrackenholt-evening.json", "quickthorn-solo"),
                            seed))
                    .isCloseTo(0, within(0.7));
        }
        isOnTime();
    }

    /** It was 3.5 s late to the end of the act: the straight way in was taken for the first figure. */
    @Test
    void anActThatIsBelievedTooSoonCountsFromWhereItBegan() throws Exception {
        assertThat(startOff(predicted("src/test/resources/crowdline/shows/wrackenholt-evening.json", "teasel-solo"), 4))
                .isCloseTo(0, within(0.7));
        isOnTime();
    }

    @Test
    void aGlidersActCountsFromWhereItBegan() throws Exception {
        assertThat(startOff(
                        predicted("src/test/resources/crowdline/shows/fenmarsh-air-day.json", "thistledown-glider"), 5))
                .isCloseTo(0, within(0.75));
        isOnTime();
    }

    /** It was 15 s early to the end of the act: a take-off as given is known by its time alone. */
    @Test
    void anActThatBeginsWithAFigureAsGivenIsPutRightByTheFirstThatIsSeen() throws Exception {
        assertThat(startOff(
                        predicted("src/test/resources/crowdline/shows/fenmarsh-air-day.json", "jackanapes-solo"), 6))
                .isCloseTo(0, within(0.7));
    }
}
