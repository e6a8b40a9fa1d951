package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.file.ShowFileException;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class IdealTest {
    private static final long SEED = 640;
    private static Display solo;

    @BeforeAll
    static void read() throws ShowFileException {
        solo = FollowTrial.display("jackanapes-solo");
    }

    private static Scenario hard(Scenario.Change change) {
        return Scenario.inAHardSky().get(0).with(change);
    }

    @Test
    void anotherPilotFliesTheSameUpToTheFigureAndOtherwiseFromThere() {
        Scenario scenario = hard(Scenario.Change.NONE);
        Truth truth = scenario.fly(solo, SEED);
        Truth other = scenario.fly(solo, solo.asPlanned(), new Fork(4, 3), SEED);
        double forkS = truth.flown.get(4).startS();
        assertThat(other.flown.subList(0, 4)).isEqualTo(truth.flown.subList(0, 4));
        assertThat(other.at(forkS - 0.1)).isEqualTo(truth.at(forkS - 0.1));
        assertThat(other.at(forkS + 5)
                        .place()
                        .minus(truth.at(forkS + 5).place())
                        .length())
                .isBetween(0.5, 200.0);
    }

    /** A landing in place of a figure turns another way within seconds. */
    @Test
    void changeIsToldInSecondsAndWhatIsAsPlannedIsNotDoubted() {
        Ideal ideal = new Ideal();
        Scenario broken = hard(Scenario.Change.BROKEN_OFF);
        List<Integer> order = broken.order(solo, SEED);
        ideal.ask(solo, broken, order, order.size() - 1, broken.fly(solo, SEED), SEED);
        assertThat(ideal.toldS(0.5)).isBetween(0.2, 10.0);
        Scenario planned = hard(Scenario.Change.NONE);
        ideal.ask(solo, planned, solo.asPlanned(), 4, planned.fly(solo, SEED), SEED);
        assertThat(ideal.doubted()).isZero();
    }
}
