package crowdline.live.now;

import crowdline.live.event.TalkEvent;
import crowdline.live.state.Flown;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import crowdline.live.state.TalkEnd;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.PlanRequest;
import crowdline.patter.Speaking;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What stood on the screen in its time and was taken to be said, though no key said so: hands are seldom free. It is not
 * planned again in the same run of the act, and what is on the screen now is not moved. It is no record: only keys say what was said.
 * What is remembered over the day is written down as shown once no key has said more of it.
 * The words of a figure count only once the act has begun, and no more when its start is taken back.
 *
 * <p>Not thread-safe.
 */
public final class TakenAsSaid {
    /** What was taken to be said, and the figure it belongs to, or an empty text. */
    private final Map<String, String> figureOf = new HashMap<>();

    /** What has passed of that which is remembered over the day, and is not known to the state yet. */
    private final Map<String, Placed> passed = new LinkedHashMap<>();

    private final Set<String> writtenDown = new HashSet<>();

    private List<String> flownIds = List.of();
    private @Nullable String actId;
    private double earlierRunEndS = Double.NEGATIVE_INFINITY;
    private @Nullable Placed airing;

    /**
     * Sees what the plan has on the screen at {@code nowS}.
     *
     * @param allDay whether the remark with this id is remembered over the day
     */
    public void follow(LiveState state, Plan plan, double nowS, Predicate<String> allDay) {
        goOn(state);
        boolean notBegun = state.phase() instanceof Phase.Waiting;
        boolean stopped = state.incidentOpen() || state.talk().speaking() != null;
        for (Placed placed : plan.placed()) {
            boolean settled = settledHere(state, placed);
            if (stopped || settled || placed.startS() > nowS) {
                continue;
            }
            if (placed.endS() <= nowS) {
                String figureId = placed.figureId();
                if (figureId == null || !notBegun) {
                    figureOf.put(placed.remarkId(), figureId == null ? "" : figureId);
                    if (allDay.test(placed.remarkId())) {
                        passed.putIfAbsent(placed.remarkId(), placed);
                    }
                }
            } else {
                airing = placed;
            }
        }
    }

    /** Sees that nobody sees what is planned: of that nothing can have been said. */
    public void outOfSight(LiveState state) {
        goOn(state);
    }

    private void goOn(LiveState state) {
        forgetKnown(state);
        double earlierS = state.course().earlierRunEndS();
        if (!Objects.equals(actId, state.actId()) || earlierS != earlierRunEndS) {
            actId = state.actId();
            earlierRunEndS = earlierS;
            figureOf.clear();
            flownIds = List.of();
        }
        withdraw(state.course().flown().stream().map(Flown::figureId).toList());
        airing = null;
    }

    private void forgetKnown(LiveState state) {
        for (Placed placed : List.copyOf(passed.values())) {
            if (state.talk().settled(placed)) {
                passed.remove(placed.remarkId());
                writtenDown.remove(placed.remarkId());
                figureOf.remove(placed.remarkId());
            }
        }
    }

    /** What is to be written down now as shown; each once. */
    public List<TalkEvent.RemarkShown> toWriteDown(LiveState state, double nowS) {
        return state.incidentOpen()
                ? List.of()
                : passed.values().stream()
                        .filter(p -> p.endS() + TalkEnd.LINGER_S <= nowS && writtenDown.add(p.remarkId()))
                        .map(p -> new TalkEvent.RemarkShown(Math.max(0, p.endS()), p.remarkId(), p.form(), p.startS()))
                        .toList();
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
    private static boolean settledHere(LiveState state, Placed placed) {
        return state.talkHere().settled(placed);
    }

    /** Ids of what was taken to be said in this run of the act. */
    public Set<String> ids() {
        Set<String> ids = new HashSet<>(figureOf.keySet());
        ids.addAll(passed.keySet());
        return Set.copyOf(ids);
    }

    /** The request with all that in it: what is on the screen counts as being said, as long as its figure is still ahead. */
    public PlanRequest request(PlanRequest request) {
        Set<String> said = new HashSet<>(request.alreadySaid());
        said.addAll(ids());
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
                request.rules(),
                request.gap());
    }

    private static boolean stillMeant(PlanRequest request, Placed placed) {
        return request.everything().anyMatch(c -> c.remark().id().equals(placed.remarkId()));
    }
}
