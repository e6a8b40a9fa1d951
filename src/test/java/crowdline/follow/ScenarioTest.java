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
}
