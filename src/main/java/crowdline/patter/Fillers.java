package crowdline.patter;

import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Puts fillers into what the plan leaves empty. A filler on the screen stays where it is as long as it fits; then every
 * stretch of at least {@link PatterRules#leastFillerGapS()}, in the order of time, gets the longest filler that leaves
 * {@link PatterRules#spareS()} at its end, in the full form if it fits. A filler never moves or replaces anything else.
 */
final class Fillers {
    /** A filler and its time in ticks. */
    record Filled(Candidate candidate, RemarkForm form, int start, int end) {}

    private final PlanRequest request;
    private final Gaps gaps;
    private final Map<String, Slot> slots = new HashMap<>();
    private final List<Candidate> waiting = new ArrayList<>();
    private final List<Filled> filled = new ArrayList<>();

    private Fillers(PlanRequest request, Gaps gaps) {
        this.request = request;
        this.gaps = gaps;
        request.slots().forEach(slot -> slots.put(slot.figureId(), slot));
        Speaking speaking = request.speaking();
        for (Candidate candidate : request.candidates()) {
            String id = candidate.remark().id();
            if (candidate.remark().kind() == RemarkKind.FILLER
                    && !request.alreadySaid().contains(id)
                    && (speaking == null || !speaking.remarkId().equals(id))) {
                waiting.add(candidate);
            }
        }
    }

    /** @param used what is placed already */
    static List<Filled> into(Gaps gaps, PlanRequest request, List<Filled> used) {
        Fillers fillers = new Fillers(request, gaps);
        used.forEach(f -> fillers.waiting.remove(f.candidate()));
        request.previous().map(Plan::placed).orElse(List.of()).forEach(fillers::keep);
        fillers.fill();
        return fillers.filled;
    }

    private void keep(Placed placed) {
        for (Candidate candidate : List.copyOf(waiting)) {
            SpokenLength length = candidate.length(placed.form());
            if (candidate.remark().id().equals(placed.remarkId()) && length != null) {
                int start = Tick.at(placed.startS());
                int end = start + Tick.up(length.seconds());
                if (gaps.longest(start, end) == end - start && mayLie(candidate, start, end)) {
                    put(candidate, placed.form(), start, end);
                }
            }
        }
    }

    private void fill() {
        int least = Tick.up(request.rules().leastFillerGapS());
        boolean found = true;
        while (found) {
            found = false;
            for (Starts.Stretch gap : gaps.all()) {
                if (gap.to() - gap.from() >= least && fill(gap)) {
                    found = true;
                    break;
                }
            }
        }
    }

    private boolean fill(Starts.Stretch gap) {
        int spare = Tick.up(request.rules().spareS());
        @Nullable Filled best = null;
        for (Candidate candidate : waiting) {
            for (RemarkForm form : RemarkForm.values()) {
                SpokenLength length = candidate.length(form);
                if (length == null) {
                    continue;
                }
                int start = Math.max(gap.from(), firstStart(candidate));
                int end = start + Tick.up(length.seconds());
                if (end + spare <= gap.to() && mayLie(candidate, start, end) && isBetter(candidate, start, end, best)) {
                    best = new Filled(candidate, form, start, end);
                }
            }
        }
        if (best == null) {
            return false;
        }
        put(best.candidate(), best.form(), best.start(), best.end());
        return true;
    }

    private static boolean isBetter(Candidate candidate, int start, int end, @Nullable Filled best) {
        if (best == null) {
            return true;
        }
        int longer = Integer.compare(end - start, best.end() - best.start());
        if (longer != 0) {
            return longer > 0;
        }
        return candidate.remark().weight() > best.candidate().remark().weight();
    }

    private int firstStart(Candidate candidate) {
        Slot slot = candidate.figureId() == null ? null : slots.get(candidate.figureId());
        return slot == null
                ? Integer.MIN_VALUE
                : Window.of(candidate.remark(), 0, slot, request.rules()).first();
    }

    private boolean mayLie(Candidate candidate, int start, int end) {
        if (candidate.figureId() == null) {
            return true;
        }
        Slot slot = slots.get(candidate.figureId());
        if (slot == null) {
            return false;
        }
        Window window = Window.of(candidate.remark(), end - start, slot, request.rules());
        return window.first() <= start && start <= window.last();
    }

    private void put(Candidate candidate, RemarkForm form, int start, int end) {
        waiting.remove(candidate);
        filled.add(new Filled(candidate, form, start, end));
        gaps.take(start, end);
    }
}
