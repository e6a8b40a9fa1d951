package crowdline.patter;

import crowdline.show.RemarkKind;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Tells whether a remark fits only as long as the figure flown meanwhile is not a short one. */
final class Tightness {
    private final PlanRequest request;

    /** For each figure, the ticks its call must begin before it, if its call is placed. */
    private final Map<String, Integer> callNeeds = new HashMap<>();

    Tightness(PlanRequest request, List<Placement.Timed> timed) {
        this.request = request;
        int reserve = Tick.up(request.rules().callEndsAtLeastBeforeS())
                + Tick.up(request.rules().breathS());
        for (Placement.Timed t : timed) {
            Candidate candidate = t.step().item().candidate();
            if (candidate.remark().kind() == RemarkKind.CALL && candidate.figureId() != null) {
                callNeeds.put(candidate.figureId(), t.step().choice().length() + reserve);
            }
        }
    }

    boolean isTight(Candidate candidate, int start, int end) {
        List<Slot> slots = request.slots();
        for (int i = slots.size() - 1; i >= 0; i--) {
            Slot slot = slots.get(i);
            boolean own = slot.figureId().equals(candidate.figureId());
            boolean flown = isCall(candidate)
                    ? !own && Tick.at(slot.startS()) <= start
                    : own || Tick.at(slot.startS()) <= start;
            if (!flown) {
                continue;
            }
            int earliestEnd = Tick.at(slot.endLowS());
            if (isCall(candidate)) {
                return end > earliestEnd;
            }
            Integer call = i + 1 < slots.size() ? callNeeds.get(slots.get(i + 1).figureId()) : null;
            int room = call == null ? Tick.at(request.rules().runPastS()) : -call;
            return end > earliestEnd + room;
        }
        return false;
    }

    private static boolean isCall(Candidate candidate) {
        return candidate.remark().kind() == RemarkKind.CALL && candidate.figureId() != null;
    }
}
