package crowdline.patter;

import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
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

    /** What is on the screen changes its mark only once it is past the edge by more than the spare time. */
    boolean isTight(Candidate candidate, RemarkForm form, int start, int end) {
        int over = over(candidate, start, end);
        Placed before = request.previous()
                .flatMap(plan -> plan.find(candidate.remark().id()))
                .orElse(null);
        boolean same = before != null && before.form() == form && Tick.at(before.startS()) == start;
        if (before != null && same && Math.abs(over) <= Tick.at(request.rules().spareS())) {
            return before.tight();
        }
        return over > 0;
    }

    /** Ticks by which a remark would be too long if the figure flown meanwhile were a short one; below 0 if it is not. */
    private int over(Candidate candidate, int start, int end) {
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
                return end - earliestEnd;
            }
            Integer call = i + 1 < slots.size() ? callNeeds.get(slots.get(i + 1).figureId()) : null;
            int room = call == null ? Tick.at(request.rules().runPastS()) : -call;
            return end - earliestEnd - room;
        }
        return -Tick.NEVER;
    }

    private static boolean isCall(Candidate candidate) {
        return candidate.remark().kind() == RemarkKind.CALL && candidate.figureId() != null;
    }
}
