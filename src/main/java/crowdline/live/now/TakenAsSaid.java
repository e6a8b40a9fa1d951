package crowdline.live.now;

import crowdline.live.state.Flown;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.PlanRequest;
import crowdline.patter.Speaking;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What stood on the screen in its time and was taken to be said, though no key said so: hands are seldom free. It is not
 * planned again in the same run of the act, and what is on the screen now is not moved. It is no record: only keys say what was said.
 * The words of a figure count only once the act has begun, and no more when its start is taken back.
 *
 * <p>Not thread-safe.
 */
public final class TakenAsSaid {
    /** What was taken to be said, and the figure it belongs to, or an empty text. */
    private final Map<String, String> figureOf = new HashMap<>();

    private List<String> flownIds = List.of();
    private @Nullable String actId;
    private double earlierRunEndS = Double.NEGATIVE_INFINITY;
    private @Nullable Placed airing;

    /** Sees what the plan has on the screen at {@code nowS}. */
    public void follow(LiveState state, Plan plan, double nowS) {
        double earlierS = state.course().earlierRunEndS();
        if (!Objects.equals(actId, state.actId()) || earlierS != earlierRunEndS) {
            actId = state.actId();
            earlierRunEndS = earlierS;
            figureOf.clear();
            flownIds = List.of();
        }
        withdraw(state.course().flown().stream().map(Flown::figureId).toList());
        boolean notBegun = state.phase() instanceof Phase.Waiting;
        airing = null;
        boolean stopped = state.incidentOpen() || state.talk().speaking() != null;
        for (Placed placed : plan.placed()) {
            boolean settled = settledHere(state, placed.remarkId());
            if (stopped || settled || placed.startS() > nowS) {
                continue;
            }
            if (placed.endS() <= nowS) {
                String figureId = placed.figureId();
                if (figureId == null || !notBegun) {
                    figureOf.put(placed.remarkId(), figureId == null ? "" : figureId);
                }
            } else {
                airing = placed;
            }
        }
    }

    /** What belongs to a figure that has not begun after all is still to be said. */
    private void withdraw(List<String> nowFlown) {
        for (String id : Set.copyOf(flownIds)) {
            if (Collections.frequency(nowFlown, id) < Collections.frequency(flownIds, id)) {
                figureOf.values().removeIf(id::equals);
            }
        }
        flownIds = nowFlown;
    }

    /** True if a key settled it in this run; what was said in an earlier one may come again. */
    private static boolean settledHere(LiveState state, String remarkId) {
        return state.talk().entries().stream()
                .anyMatch(e -> e.remarkId().equals(remarkId) && e.settles() && state.isOfThisRun(e));
    }

    /** Ids of what was taken to be said in this run of the act. */
    public Set<String> ids() {
        return Set.copyOf(figureOf.keySet());
    }

    /** The request with all that in it: what is on the screen counts as being said, as long as its figure is still ahead. */
    public PlanRequest request(PlanRequest request) {
        Set<String> said = new HashSet<>(request.alreadySaid());
        said.addAll(figureOf.keySet());
        Placed now = airing;
        Speaking speaking = request.speaking();
        if (speaking == null && now != null && stillMeant(request, now)) {
            speaking = new Speaking(now.remarkId(), now.form(), now.startS(), false);
        }
        return new PlanRequest(
                request.nowS(),
                request.slots(),
                request.candidates(),
                said,
                request.previous(),
                speaking,
                request.rules());
    }

    private static boolean stillMeant(PlanRequest request, Placed placed) {
        return request.candidates().stream().anyMatch(c -> c.remark().id().equals(placed.remarkId()));
    }
}
