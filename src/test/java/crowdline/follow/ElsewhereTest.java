package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.telemetry.Reading;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The flights of somebody else are flights, begin their figures along the A-axis, and have loops as high as geometry says. */
@Tag("slow")
class ElsewhereTest {
    private static final long SEED = 6101;
    private static Display solo;
    private static Truth flight;

    @BeforeAll
    static void fly() throws Exception {
        solo = FollowTrial.display("jackanapes-solo");
        flight = Scenario.elsewhere().get(0).fly(solo, SEED);
    }

    @Test
    void itStaysAboveTheGroundAndWithinItsSpeeds() {
        assertThat(flight.instants).allMatch(i -> i.place().z() > -5);
        assertThat(flight.instants).allMatch(i -> i.groundMps().length() < 130);
        assertThat(flight.instants.get(flight.instants.size() - 1).groundMps().length())
                .isLessThan(12);
    }

    @Test
    void figuresBeginAlongTheAxis() {
        long along = flight.flown.stream()
                .map(f -> flight.at(f.startS() + 0.1).groundMps())
                .filter(v -> Math.abs(v.x()) > 0.9 * Math.hypot(v.x(), v.y()))
                .count();
        assertThat(along).isGreaterThan(flight.flown.size() * 3 / 4);
    }

    /** R = v²/(g (n − 1)), as any textbook has it (from memory), and never more than takes it over the top. */
    @Test
    void loopIsAsHighAsItsSpeedAllows() {
        Truth.Flown loop = flight.flown.get(2);
        assertThat(solo.plan.name(loop.figure())).isEqualTo("loop");
        double fastest = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (Truth.Instant i : flight.instants) {
            if (i.tS() >= loop.startS() && i.tS() <= loop.endS()) {
                fastest = Math.max(fastest, i.groundMps().length());
                low = Math.min(low, i.place().z());
                high = Math.max(high, i.place().z());
            }
        }
        assertThat(high - low).isBetween(80.0, fastest * fastest / (2 * PlainAircraft.G));
    }

    @Test
    void receiverIsLateAndTellsHeightsInSteps() {
        List<Reading> log = Scenario.elsewhere().get(0).receive(flight, SEED);
        assertThat(log).hasSizeGreaterThan(1000);
        assertThat(log).allMatch(r -> Math.abs(Math.IEEEremainder(r.heightM(), 7.62)) < 1e-6);
        double late = log.stream()
                .mapToDouble(r ->
                        Math.abs(r.alongM() - flight.at(r.tS() - 0.35).place().x()))
                .average()
                .orElseThrow();
        assertThat(late).isCloseTo(1.2, within(0.3));
    }
}
