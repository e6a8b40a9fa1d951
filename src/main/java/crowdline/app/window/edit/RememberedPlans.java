package crowdline.app.window.edit;

import crowdline.patter.Plan;
import crowdline.patter.PlanRequest;
import crowdline.patter.Planner;
import java.util.HashMap;
import java.util.Map;

/**
 * Plans acts, each question once as long as it is asked in every round: after an edit only the acts that it touches are
 * planned anew. Belongs to one thread.
 */
final class RememberedPlans {
    private final Planner planner = new Planner();
    private Map<PlanRequest, Plan> before = new HashMap<>();
    private Map<PlanRequest, Plan> now = new HashMap<>();

    Plan of(PlanRequest asked) {
        Plan known = before.get(asked);
        Plan plan = known == null ? planner.plan(asked) : known;
        now.put(asked, plan);
        return plan;
    }

    /** Forgets what was not asked since the last turn. */
    void turn() {
        before = now;
        now = new HashMap<>();
    }
}
