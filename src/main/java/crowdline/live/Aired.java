package crowdline.live;

import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.PlanRequest;
import crowdline.patter.Speaking;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What stood on the screen in its time and was taken to be said, though no key said so: hands are seldom free. It is not
 * planned again in the same run of the act, and what is on the screen now is not moved. It is no record: only keys say what was said.
 *
 * <p>Not for several threads at once.
 */
public final class Aired {
    private final Set<String> ids = new HashSet<>();
    private @Nullable String actId;
    private double earlierRunEndS = Double.NEGATIVE_INFINITY;
    private @Nullable Placed airing;

    /** Sees what the plan has on the screen at {@code nowS}. */
    public void follow(LiveState state, Plan plan, double nowS) {
        double earlierS = state.course().earlierRunEndS();
        if (!Objects.equals(actId, state.actId()) || earlierS != earlierRunEndS) {
            actId = state.actId();
            earlierRunEndS = earlierS;
            ids.clear();
        }
        airing = null;
        boolean stopped = state.incidentOpen() || state.talk().speaking() != null;
        for (Placed placed : plan.placed()) {
            boolean settled = settledHere(state, placed.remarkId());
            if (stopped || settled || placed.startS() > nowS) {
                continue;
            }
            if (placed.endS() <= nowS) {
                ids.add(placed.remarkId());
            } else {
                airing = placed;
            }
        }
    }

    /** True if a key settled it in this run; what was said in an earlier one may come again. */
    private static boolean settledHere(LiveState state, String remarkId) {
        return state.talk().entries().stream()
                .anyMatch(e -> e.remarkId().equals(remarkId) && e.settles() && state.isOfThisRun(e));
    }

    /** Ids of what was taken to be said in this run of the act. */
    public Set<String> ids() {
        return Set.copyOf(ids);
    }

    /** The request with all that in it: what is on the screen counts as being said, as long as its figure is still ahead. */
    public PlanRequest request(PlanRequest request) {
        Set<String> said = new HashSet<>(request.alreadySaid());
        said.addAll(ids);
        Placed now = airing;
        Speaking speaking = request.speaking();
        if (speaking == null && now != null && stillMeant(request, now)) {
            speaking = new Speaking(now.remarkId(), now.form(), now.startS());
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
