package crowdline.patter;

import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How near a plan came to what it could not do: full forms that had to be short, and what a longer figure would let in. */
public final class Margins {
    private final PlanRequest request;
    private final Plan plan;

    /** @param plan what was planned for this request */
    public Margins(PlanRequest request, Plan plan) {
        this.request = request;
        this.plan = plan;
    }

    /**
     * Why a remark is said in its short form, in one sentence with numbers; empty if it is said in full.
     *
     * @param placed one of the plan
     */
    public Optional<String> whyShort(Placed placed) {
        Candidate candidate = candidate(placed.remarkId()).orElse(null);
        if (placed.form() == RemarkForm.FULL || candidate == null) {
            return Optional.empty();
        }
        double needed = candidate.full().seconds();
        double there = roomS(candidate);
        String spare = there >= needed ? ", with nothing to spare" : "";
        return Optional.of(String.format(
                Locale.ROOT, "%.1f s needed, %.1f s available%s; the short form fits", needed, there, spare));
    }

    /**
     * Whether a remark without a place would find one if the figure it needs were as long as the wide end of its band:
     * its own figure, or for a call the figure before it. What belongs to no figure has no such day.
     *
     * @param unplaced one of the plan
     */
    public boolean fitsOnAGoodDay(Unplaced unplaced) {
        Candidate candidate = candidate(unplaced.remarkId()).orElse(null);
        if (candidate == null || candidate.figureId() == null) {
            return false;
        }
        int own = 0;
        while (own < request.slots().size()
                && !request.slots().get(own).figureId().equals(candidate.figureId())) {
            own++;
        }
        int longer = candidate.remark().kind() == RemarkKind.CALL ? own - 1 : own;
        if (longer < 0 || own == request.slots().size()) {
            return false;
        }
        PlanRequest goodDay = new PlanRequest(
                request.nowS(),
                lengthened(longer),
                request.candidates(),
                request.alreadySaid(),
                Optional.of(plan),
                request.speaking(),
                request.rules());
        return new Planner().plan(goodDay).find(unplaced.remarkId()).isPresent();
    }

    /** The longest stretch a remark could have if everything else stayed where it is. */
    private double roomS(Candidate candidate) {
        Horizon horizon = Horizon.of(request, null);
        Gaps gaps = new Gaps(
                horizon,
                horizon.closedTo(candidate.remark()),
                Tick.at(request.rules().breathS()));
        for (Placed other : plan.placed()) {
            if (!other.remarkId().equals(candidate.remark().id())) {
                gaps.take(Tick.at(other.startS()), Tick.at(other.endS()));
            }
        }
        int needed = Tick.up(candidate.full().seconds());
        Window window = request.slots().stream()
                .filter(slot -> slot.figureId().equals(candidate.figureId()))
                .map(slot -> Window.of(candidate.remark(), needed, slot, request.rules()))
                .findFirst()
                .orElseGet(() -> Window.floating(candidate.remark().kind(), needed, horizon, request.rules()));
        return Tick.seconds(gaps.longest(window.first(), window.last() + needed));
    }

    private List<Slot> lengthened(int figure) {
        List<Slot> slots = new ArrayList<>();
        double laterS = 0;
        for (int i = 0; i < request.slots().size(); i++) {
            Slot slot = request.slots().get(i);
            double moreS = i == figure ? slot.endHighS() - slot.endS() : 0;
            double endS = slot.endS() + laterS + moreS;
            slots.add(new Slot(
                    slot.figureId(),
                    slot.startS() + laterS,
                    endS,
                    Math.min(endS, slot.endLowS() + laterS),
                    slot.endHighS() + laterS,
                    slot.quiets(),
                    i == figure ? slot.moments().lasting(slot.endS() - slot.startS() + moreS) : slot.moments()));
            laterS += moreS;
        }
        return slots;
    }

    private Optional<Candidate> candidate(String remarkId) {
        return request.candidates().stream()
                .filter(c -> c.remark().id().equals(remarkId))
                .findFirst();
    }
}
