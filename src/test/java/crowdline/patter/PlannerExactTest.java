package crowdline.patter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class PlannerExactTest {
    private final Planner planner = new Planner();

    private void agreesWithExhaustion(String act, PlanRequest request) {
        Plan plan = planner.plan(request);
        Judge.check(act, request, plan);
        assertThat(plan.provenBest()).as(act + " is proven").isTrue();
        assertThat(Judge.worth(request, plan)).as(act).isEqualTo(Exhaustion.greatestWorth(request));
    }

    @Test
    void isNeverBeatenByTryingEverythingInSmallActs() {
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            PlanRequest request = Acts.random(random, 1 + random.nextInt(3), 1 + random.nextInt(3), random.nextInt(6));
            agreesWithExhaustion("small act " + seed, request);
        }
    }

    @Test
    void isNeverBeatenByTryingEverythingInLargerActs() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(10_000 + seed);
            PlanRequest request = Acts.random(random, 4 + random.nextInt(3), 2, 6 + random.nextInt(4));
            agreesWithExhaustion("larger act " + seed, request);
        }
    }

    @Test
    void isNeverBeatenWhereRemarksAreTiedToMomentsAndSomeAreWorthWatching() {
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(30_000 + seed);
            PlanRequest first = Acts.withMoments(
                    random, Acts.random(random, 1 + random.nextInt(3), 1 + random.nextInt(4), random.nextInt(6)));
            agreesWithExhaustion("act with moments " + seed, first);
            double driftS = Acts.tenths(random, -2, 2);
            PlanRequest second = Acts.with(
                    first, Acts.tenths(random, 0, 6), Acts.drifted(first.slots(), driftS), planner.plan(first));
            agreesWithExhaustion("act with moments " + seed + " drifted by " + driftS + " s", second);
        }
    }

    @Test
    void isNeverBeatenWhenAPlanIsAlreadyOnTheScreen() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(20_000 + seed);
            PlanRequest first = Acts.random(random, 2 + random.nextInt(2), 2, 1 + random.nextInt(5));
            Plan before = planner.plan(first);
            double driftS = Acts.tenths(random, -2, 2);
            double nowS = Acts.tenths(random, 0, 6);
            PlanRequest second = Acts.with(first, nowS, Acts.drifted(first.slots(), driftS), before);
            agreesWithExhaustion("act " + seed + " drifted by " + driftS + " s at " + nowS + " s", second);
        }
    }
}
