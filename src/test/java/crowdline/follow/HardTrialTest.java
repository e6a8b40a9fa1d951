package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.storage.file.ShowFileException;
import crowdline.telemetry.Reading;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The flights of the hard trial are such as aircraft fly and receivers receive. */
@Tag("slow")
class HardTrialTest {
    private static final long SEED = 6100;
    private static Display jet;
    private static Truth flight;

    @BeforeAll
    static void fly() throws ShowFileException {
        jet = FollowTrial.display("arranged/pilot-three-jet-trainer");
        flight = scenario("10 %, 5 Hz").fly(jet, SEED);
    }

    private static Scenario scenario(String name) {
        return Scenario.inAHardSky().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<Truth.Instant> during(Truth.Flown flown) {
        return flight.instants.stream()
                .filter(i -> i.tS() > flown.startS() && i.tS() <= flown.endS())
                .toList();
    }

    @Test
    void landingIsNoFasterThanThePassBeforeItAndEndsAtRestOnTheGround() {
        Truth.Flown landing = flight.flown.get(flight.flown.size() - 1);
        List<Truth.Instant> way = during(landing);
        double cameInMps = way.get(0).groundMps().length();
        assertThat(way).allMatch(i -> i.groundMps().length() < cameInMps + 15);
        Truth.Instant end = way.get(way.size() - 1);
        assertThat(end.place().z()).isCloseTo(0, within(1.0));
        assertThat(end.groundMps().length()).isLessThan(5);
    }

    @Test
    void everyFigureBeginsNotFarFromItsPlaceAndNeverQuiteThere() {
        int near = 0;
        for (Truth.Flown flown : flight.flown) {
            double planned = jet.flight.figures().get(flown.figure()).startS();
            V3 is = flight.at(flown.startS()).place();
            double alongM = jet.samples().stream()
                    .filter(s -> s.tS() >= planned)
                    .findFirst()
                    .orElseThrow()
                    .place()
                    .x();
            double off = Math.abs(Math.abs(is.x()) - Math.abs(alongM));
            near += off > 1 && off < 350 ? 1 : 0;
        }
        assertThat(near).isGreaterThan(flight.flown.size() * 2 / 3);
    }

    @Test
    void heightsOfAReceiverMayBeOffFromFirstToLast() {
        Radio radio = Radio.good(5).slowly(50);
        List<Reading> log = radio.receive(flight, new SplittableRandom(SEED));
        double off = log.stream()
                .mapToDouble(r -> r.heightM() - flight.at(r.tS()).place().z())
                .average()
                .orElseThrow();
        assertThat(Math.abs(off)).isCloseTo(50, within(5.0));
    }

    /** Nobody turns round as it is planned: this one was off the plan or landing for four minutes of twelve. */
    @Test
    void waysBetweenFiguresAreFollowedThoughNoneIsFlownAsPlanned() {
        Scenario scenario = scenario("10 %, 5 Hz");
        Truth truth = scenario.fly(jet, 310);
        List<Reading> log = scenario.radio().receive(truth, new SplittableRandom(310 + 99));
        Score score = new Score();
        score.count(truth, FollowTrial.follow(jet, scenario, truth, log));
        assertThat(score.rightShare()).isGreaterThan(0.8);
        assertThat(score.sureWrongShare()).isLessThan(0.005);
    }

    /** It climbed along a line until it hung, for 65 s: a pilot lowers the nose. */
    @Test
    void nobodyWaitsOnALineUntilTheSpeedIsGone() throws ShowFileException {
        Display glider = FollowTrial.display("thistledown-glider");
        Truth.Flown roll = scenario("10 %, 5 Hz").fly(glider, 381).flown.get(7);
        assertThat(glider.plan.name(7)).isEqualTo("barrel roll");
        assertThat(roll.endS() - roll.startS()).isBetween(15.0, 30.0);
    }

    /** A receiver is often switched on, or finds its satellites, in the midst of an act; the log said "before the act" to its end. */
    @Test
    void logThatBeginsInTheMidstOfTheActIsFollowed() {
        List<Reading> log = from(scenario("10 %, 5 Hz").receive(flight, SEED), flight, 0.3);
        Follower follower = Follower.heardLate(jet.plan);
        assertThat(follower.reading(log.get(0)).confidence())
                .as("nobody can know that it has not begun")
                .isLessThanOrEqualTo(FollowNow.SURE);
        int half = log.size() / 2;
        int right = 0;
        for (Reading r : log.subList(1, log.size())) {
            boolean is = follower.reading(r).figureIndex() == flight.figureAt(r.tS());
            right += is && r.tS() > log.get(half).tS() ? 1 : 0;
        }
        assertThat(right).isGreaterThan((int) (0.85 * half));
        Follower watched = new Follower(jet.plan);
        assertThat(log.stream().map(watched::reading).filter(n -> n.state() == FollowNow.State.BEFORE))
                .as("one that has watched since before the act")
                .hasSizeGreaterThan(half);
    }

    @Test
    void logThatLacksTheFirstFiguresShowsTheActAndOneOfItsLastThirdDoesNot() throws ShowFileException {
        Display glider = FollowTrial.display("thistledown-glider");
        Truth truth = scenario("10 %, 5 Hz").fly(glider, SEED);
        List<Reading> log = scenario("10 %, 5 Hz").receive(truth, SEED);
        assertThat(Boundaries.of(glider.plan, from(log, truth, 0.1)).show(glider.plan))
                .isTrue();
        assertThat(Boundaries.of(glider.plan, from(log, truth, 0.67)).show(glider.plan))
                .isFalse();
    }

    private static List<Reading> from(List<Reading> log, Truth truth, double share) {
        double fromS = truth.flown.get(0).startS() + share * truth.endS();
        return log.stream().filter(r -> r.tS() > fromS).toList();
    }
}
