package crowdline.sight.fact;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.Flight;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.sight.fact.CrowdFact.Kind;
import org.junit.jupiter.api.Test;

/** What is wrong with one number keeps no other fact back. */
class UnmadeFactsTest {
    private static final Vec AHEAD = new Vec(1, 0, 0);
    private static final Vec UP = new Vec(0, 0, 1);

    /** Straight up at 60 m/s for ten seconds, from a height in metres. */
    private static Flight up(double fromM) {
        return Flown.written(10, t -> Flown.sample(t, fromM + 60 * t, 60, UP, AHEAD, 3));
    }

    private static CrowdFacts of(Flight flight) {
        return Flown.allFacts(Flown.glider(), flight);
    }

    @Test
    void aFigureBelowTheGroundHasNoFactOfItsHeightsAndKeepsTheOthers() {
        CrowdFacts found = of(up(-300));
        assertThat(found.unmade())
                .containsExactly(
                        new UnmadeFact(
                                null,
                                "it: it comes to -984 ft, below the ground, so no fact is made of the act's heights"),
                        new UnmadeFact(
                                "it", "it comes to -984 ft, below the ground, so no fact is made of its heights"));
        assertThat(found.facts())
                .extracting(CrowdFact::kind)
                .contains(Kind.FASTEST, Kind.HEAVIEST)
                .doesNotContain(Kind.HIGHEST, Kind.CLIMB, Kind.TOTAL_CLIMB);
    }

    @Test
    void aFigureAboveTheGroundLacksNone() {
        assertThat(of(up(Units.mFromFt(10))).unmade()).isEmpty();
        assertThat(of(up(Units.mFromFt(10))).facts())
                .extracting(CrowdFact::kind)
                .contains(Kind.HIGHEST, Kind.CLIMB);
    }

    @Test
    void aNumberBeyondWordsIsToldWithItsUnit() {
        Flight flight = Flown.written(10, t -> Flown.sample(t, 500, 1e6, AHEAD, UP, 1));
        assertThat(of(flight).unmade())
                .contains(new UnmadeFact(
                        "it", "the greatest speed is 2,236,936 mph, beyond words, so no fact is made of it"));
        assertThat(of(flight).facts()).extracting(CrowdFact::kind).contains(Kind.MASS);
    }

    @Test
    void noNumberAtAllIsToldToo() {
        Flight flight = Flown.written(10, t -> Flown.sample(t, 500, 60, AHEAD, UP, Double.NaN));
        assertThat(of(flight).facts()).extracting(CrowdFact::kind).contains(Kind.FASTEST);
    }
}
