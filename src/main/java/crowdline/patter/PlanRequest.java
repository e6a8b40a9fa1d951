package crowdline.patter;

import crowdline.measure.Must;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a plan is made from.
 *
 * @param nowS the moment from which something new may be said, on the scale of the slots: now, or just after something
 *     was said, a breath later
 * @param slots the figure being flown, if any, and those ahead, in the order of their starts
 * @param candidates every remark that may be said; those of one figure in the order written
 * @param alreadySaid ids of remarks never to be said again
 * @param previous the plan on the screen, if any; the new one keeps to it where that costs nothing
 * @param speaking what is being said at this moment, or null
 * @param rules the rules to keep
 * @param gap what is left before the first slot and what it can be filled with, or null if something flies
 */
public record PlanRequest(
        double nowS,
        List<Slot> slots,
        List<Candidate> candidates,
        Set<String> alreadySaid,
        Optional<Plan> previous,
        @Nullable Speaking speaking,
        PatterRules rules,
        @Nullable Gap gap) {
    /** In an act, or on paper. */
    public PlanRequest(
            double nowS,
            List<Slot> slots,
            List<Candidate> candidates,
            Set<String> alreadySaid,
            Optional<Plan> previous,
            @Nullable Speaking speaking,
            PatterRules rules) {
        this(nowS, slots, candidates, alreadySaid, previous, speaking, rules, null);
    }

    /** The same, knowing another plan before it. */
    public PlanRequest after(Plan before) {
        return new PlanRequest(nowS, slots, candidates, alreadySaid, Optional.of(before), speaking, rules, gap);
    }

    /** Whatever may be said: the candidates, and what is only for the gap. */
    public Stream<Candidate> everything() {
        return gap == null
                ? candidates.stream()
                : Stream.of(
                                candidates.stream(),
                                gap.pieces().stream().flatMap(piece -> piece.parts().stream()),
                                gap.loose().stream())
                        .flatMap(all -> all);
    }

    public PlanRequest {
        Must.beFinite("nowS", nowS);
        slots = List.copyOf(slots);
        candidates = List.copyOf(candidates);
        alreadySaid = Set.copyOf(alreadySaid);
        Set<String> ids = new HashSet<>();
        for (Candidate candidate : candidates) {
            if (!ids.add(candidate.remark().id())) {
                throw new IllegalArgumentException(
                        "two candidates have the id " + candidate.remark().id() + "; ids must differ");
            }
        }
        Set<String> figures = new HashSet<>();
        for (int i = 0; i < slots.size(); i++) {
            Slot slot = slots.get(i);
            if (!figures.add(slot.figureId())) {
                throw new IllegalArgumentException("two slots have the id " + slot.figureId() + "; ids must differ");
            }
            if (i > 0 && slot.startS() < slots.get(i - 1).startS()) {
                throw new IllegalArgumentException("slot " + slot.figureId() + " starts at " + slot.startS()
                        + " s, before the one ahead of it; slots must be in the order of their starts");
            }
        }
    }
}
