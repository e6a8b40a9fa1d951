package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.file.ShowFileException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What becomes of the order of an act in which ways lead to half the figures. */
class ScenarioTest {
    private static final int SEEDS = 6;

    private final Display display;
    private final Set<Integer> ways;

    ScenarioTest() throws ShowFileException {
        display = FollowTrial.display("arranged/pilot-three-jet-trainer");
        ways = display.ways();
    }

    private List<Integer> flown(Scenario.Change change, long seed) {
        return Scenario.inAHardSky().get(0).with(change).fly(display, seed).flown.stream()
                .map(Truth.Flown::figure)
                .toList();
    }

    @Test
    void figureIsDroppedWithTheWayThatLeadsToIt() {
        for (long seed = 0; seed < SEEDS; seed++) {
            List<Integer> left = new ArrayList<>(display.asPlanned());
            left.removeAll(flown(Scenario.Change.DROPPED, seed));
            assertThat(left.stream().filter(f -> !ways.contains(f)))
                    .as("one figure")
                    .hasSize(1);
            int figure = left.get(left.size() - 1);
            assertThat(left.size()).isEqualTo(ways.contains(figure - 1) ? 2 : 1);
        }
    }

    @Test
    void figureIsFlownAgainByTheWayThatLeadsToIt() {
        for (long seed = 0; seed < SEEDS; seed++) {
            List<Integer> flown = flown(Scenario.Change.REPEATED, seed);
            int at = 1;
            while (flown.get(at) > flown.get(at - 1)) {
                at++;
            }
            int figure = flown.get(at - 1);
            assertThat(ways).doesNotContain(figure);
            assertThat(flown.get(at)).isEqualTo(ways.contains(figure - 1) ? figure - 1 : figure);
        }
    }

    @Test
    void figuresAreSwappedEachWithItsWayAndNothingIsLost() {
        for (long seed = 0; seed < SEEDS; seed++) {
            List<Integer> flown = flown(Scenario.Change.SWAPPED, seed);
            assertThat(flown).containsExactlyInAnyOrderElementsOf(display.asPlanned());
            assertThat(flown).isNotEqualTo(display.asPlanned());
            for (int i = 0; i + 1 < flown.size(); i++) {
                if (ways.contains(flown.get(i))) {
                    assertThat(flown.get(i + 1)).isEqualTo(flown.get(i) + 1);
                }
            }
        }
    }

    /** A glider's farewell pass came after its landing. */
    @Test
    void nothingIsFlownOnceTheAircraftHasLanded() throws ShowFileException {
        Display glider = FollowTrial.display("thistledown-glider");
        Scenario swapped = Scenario.inAHardSky().get(0).with(Scenario.Change.SWAPPED);
        for (long seed = 385; seed < 395; seed++) {
            List<Truth.Flown> flown = swapped.fly(glider, seed).flown;
            assertThat(flown.get(flown.size() - 1).figure()).isEqualTo(glider.size() - 1);
        }
    }

    /** Broken off, it flew its last pass from wherever it was. */
    @Test
    void actThatDoesNotLandIsBrokenOffToALandingInNoPlan() throws ShowFileException {
        Display leaves = FollowTrial.display("wrackenholt/quickthorn-solo");
        Truth broken =
                Scenario.inAHardSky().get(0).with(Scenario.Change.BROKEN_OFF).fly(leaves, 420);
        Truth.Flown last = broken.flown.get(broken.flown.size() - 1);
        assertThat(last.figure()).isEqualTo(Truth.UNKNOWN);
        Truth.Instant end = broken.at(last.endS());
        assertThat(end.place().z()).isLessThan(2);
        assertThat(end.groundMps().length()).isLessThan(5);
    }

    /** A jet flew its loop seven kilometres from the crowd and half as fast again as planned, a glider at half its speed. */
    @Test
    void nobodyBeginsAFigureWhereverSomethingElseHasLeftHim() throws ShowFileException {
        for (String act : List.of("arranged/pilot-three-jet-trainer", "thistledown-glider")) {
            Display flown = FollowTrial.display(act);
            Bins bins = flown.plan.bins;
            for (long seed = 430; seed < 434; seed++) {
                Truth truth = Scenario.inAHardSky()
                        .get(0)
                        .with(Scenario.Change.STRANGE)
                        .fly(flown, seed);
                int at = 1;
                while (truth.flown.get(at - 1).figure() != Truth.UNKNOWN) {
                    at++;
                }
                Truth.Flown next = truth.flown.get(at);
                if (bins.isWay(next.figure())) {
                    continue;
                }
                int bin = bins.first[next.figure()];
                Truth.Instant begin = truth.at(next.startS());
                double planned = Math.sqrt(bins.squareOfSpeed(bin));
                assertThat(Math.abs(Math.abs(begin.place().x()) - Math.abs(bins.xM[bin])))
                        .isLessThan(20 * planned);
                assertThat(truth.at(next.startS() + 0.5).groundMps().length() / planned)
                        .isBetween(0.6, 1.3);
            }
        }
    }

    /** It dragged its last pass on at half its stalling speed. */
    @Test
    void gliderOutOfHeightAndSpeedPassesForLess() throws ShowFileException {
        Display glider = FollowTrial.display("thistledown-glider");
        Truth truth =
                Scenario.inAHardSky().get(0).with(Scenario.Change.REPOSITION).fly(glider, 425);
        Truth.Flown pass = truth.flown.get(truth.flown.size() - 2);
        assertThat(glider.plan.name(pass.figure())).isEqualTo("farewell pass");
        assertThat(pass.endS() - pass.startS()).isLessThan(60);
        assertThat(truth.instants.stream()
                        .filter(i -> i.tS() > pass.startS() && i.tS() < pass.endS())
                        .mapToDouble(i -> i.groundMps().length())
                        .min()
                        .orElseThrow())
                .isGreaterThan(12);
    }
}
