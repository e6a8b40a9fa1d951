package crowdline.patter;

import crowdline.show.figure.RemarkKind;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Says why a remark found no place. */
final class Reasons {
    private final PlanRequest request;
    private final Horizon horizon;
    private final Gaps open;
    private final Gaps beside;

    /** @param placed what found a place */
    Reasons(PlanRequest request, Horizon horizon, List<Placed> placed) {
        this.request = request;
        this.horizon = horizon;
        open = left(horizon.quiets(), placed);
        beside = left(horizon.closed(), placed);
    }

    private Gaps left(List<Starts.Stretch> closed, List<Placed> placed) {
        Gaps gaps = new Gaps(horizon, closed, Tick.up(request.rules().breathS()));
        placed.forEach(p -> gaps.take(Tick.at(p.startS()), Tick.at(p.endS())));
        return gaps;
    }

    Unplaced of(Candidate candidate) {
        String id = candidate.remark().id();
        SpokenLength shortForm = candidate.shortForm();
        int full = Tick.up(candidate.full().seconds());
        int needed = shortForm == null ? full : Math.min(full, Tick.up(shortForm.seconds()));
        String length = length(candidate);
        @Nullable Window window = null;
        if (candidate.figureId() != null) {
            Slot slot = slot(candidate.figureId());
            if (slot == null) {
                return unplaced(id, Unplaced.Why.FIGURE_NOT_AHEAD, "its figure is not still to come", needed, 0);
            }
            boolean filler = candidate.remark().kind() == RemarkKind.FILLER;
            if (!filler && Workload.isPassed(request, slot)) {
                return unplaced(
                        id, Unplaced.Why.PASSED_OVER, "a later figure has already been talked about", needed, 0);
            }
            window = Window.of(candidate.remark(), needed, slot, request.rules());
        }
        int from = window == null ? horizon.freeFrom() : window.first();
        int to = window == null ? horizon.end() : window.last() + needed;
        if (window != null && window.last() < window.first()) {
            int there = Math.max(0, to - from);
            return unplaced(
                    id,
                    Unplaced.Why.TOO_LONG,
                    length + "its own time is " + said(there) + spare(candidate, there),
                    needed,
                    there);
        }
        if (Math.max(from, horizon.freeFrom()) + needed > to) {
            int there = Math.max(0, to - Math.max(from, horizon.freeFrom()));
            String reason = there == 0
                    ? "its time has passed"
                    : length + said(there) + " of its time left" + spare(candidate, there);
            return unplaced(id, Unplaced.Why.TOO_LATE, reason, needed, there);
        }
        List<Starts.Stretch> closed = horizon.closedTo(candidate.remark());
        int withoutOthers = new Gaps(horizon, closed, 0).longest(from, to);
        if (withoutOthers < needed) {
            boolean quiet = new Gaps(horizon, horizon.quiets(), 0).longest(from, to) < needed;
            return unplaced(
                    id,
                    Unplaced.Why.QUIET,
                    length
                            + said(withoutOthers)
                            + (quiet ? " outside the quiet" : " beside what is worth watching")
                            + spare(candidate, withoutOthers),
                    needed,
                    withoutOthers);
        }
        int there = (Horizon.isKeptFromWatching(candidate.remark()) ? beside : open).longest(from, to);
        Unplaced.Why why =
                candidate.remark().kind() == RemarkKind.FILLER ? Unplaced.Why.NO_GAP : Unplaced.Why.CROWDED_OUT;
        String reason = length + said(there) + " there";
        reason += why == Unplaced.Why.NO_GAP && there >= needed ? ", too short a gap to fill" : spare(candidate, there);
        return unplaced(id, why, reason, needed, there);
    }

    private @Nullable Slot slot(String figureId) {
        return request.slots().stream()
                .filter(s -> s.figureId().equals(figureId))
                .findFirst()
                .orElse(null);
    }

    private static Unplaced unplaced(String id, Unplaced.Why why, String reason, int needed, int there) {
        return new Unplaced(id, why, reason, Tick.seconds(needed), Tick.seconds(there));
    }

    /** Told as long as everywhere else, though the plan counts in ticks that begin. */
    private static String length(Candidate candidate) {
        double fullS = candidate.full().seconds();
        double shortestS = shortest(candidate);
        return shortestS < fullS
                ? said(fullS) + " needed, " + said(shortestS) + " in the short form, "
                : said(fullS) + " needed, ";
    }

    /** Said where the numbers as told would leave one wondering. */
    private static String spare(Candidate candidate, int there) {
        double shortestS = shortest(candidate);
        boolean wonder = there >= Tick.up(shortestS) || said(there).equals(said(shortestS));
        return wonder ? ", with nothing to spare" : "";
    }

    private static double shortest(Candidate candidate) {
        SpokenLength shortForm = candidate.shortForm();
        double fullS = candidate.full().seconds();
        return shortForm == null ? fullS : Math.min(fullS, shortForm.seconds());
    }

    private static String said(int ticks) {
        return said(Tick.seconds(ticks));
    }

    private static String said(double seconds) {
        return String.format(Locale.ROOT, "%.1f s", seconds);
    }
}
