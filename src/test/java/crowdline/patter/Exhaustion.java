package crowdline.patter;

import crowdline.flight.moment.Moment;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The greatest worth any plan can have, found by trying everything: every set, every order, every form. It shares the
 * table of worths with the planner and nothing else; the rules are read again from their description and looked at one
 * tenth of a second at a time.
 */
final class Exhaustion {
    private record Way(long worth, int length, BitSet allowed) {}

    private record Entry(int rank, List<Way> ways) {}

    private final PlanRequest request;
    private final int now;
    private final int end;
    private final List<Entry> entries = new ArrayList<>();
    private final Map<Long, Long> known = new HashMap<>();

    private Exhaustion(PlanRequest request) {
        this.request = request;
        now = (int) Math.ceil(request.nowS() * 10 - 1e-6);
        List<Slot> slots = request.slots();
        end = (int)
                Math.round((slots.get(slots.size() - 1).endS() + request.rules().runPastS()) * 10);
        int lag = lag();
        List<Candidate> said = new ArrayList<>();
        for (Candidate candidate : request.candidates()) {
            if (candidate.remark().kind() != RemarkKind.FILLER) {
                entries.add(new Entry(rank(candidate), ways(candidate, lag)));
                said.add(candidate);
            }
        }
        swapRanks(said, entries);
    }

    static long greatestWorth(PlanRequest request) {
        return new Exhaustion(request).from(0, -1, -1);
    }

    static boolean wasPlanned(PlanRequest request, String id, RemarkForm form) {
        return request.previous()
                .flatMap(p -> p.find(id))
                .filter(p -> p.form() == form)
                .isPresent();
    }

    private int lag() {
        int first = Integer.MAX_VALUE;
        for (Placed p : request.previous().map(Plan::placed).orElse(List.of())) {
            if (p.kind() != RemarkKind.FILLER) {
                first = Math.min(first, (int) Math.round(p.startS() * 10));
            }
        }
        return Math.max(0, now - first);
    }

    /** Remarks of figures come in rising rank; −1 is free. */
    private int rank(Candidate candidate) {
        if (candidate.figureId() == null) {
            return -1;
        }
        int figure = 0;
        while (!request.slots().get(figure).figureId().equals(candidate.figureId())) {
            figure++;
        }
        boolean callWritten = false;
        int written = 0;
        for (Candidate other : request.candidates()) {
            if (other.equals(candidate)) {
                break;
            }
            if (candidate.figureId().equals(other.figureId())) {
                written++;
                callWritten |= other.remark().kind() == RemarkKind.CALL;
            }
        }
        Double fromS = Own.of(candidate.remark(), request.slots().get(figure)).fromS();
        int part = 2;
        if (candidate.remark().kind() == RemarkKind.CALL) {
            part = 1;
        } else if (!callWritten && fromS != null && fromS < 0) {
            part = 0;
        }
        return figure * 10_000 + part * 1000 + written;
    }

    /** Those of one figure that are tied to moments swap their ranks until they come as the moments do. */
    private void swapRanks(List<Candidate> candidates, List<Entry> ranked) {
        for (int i = 0; i < ranked.size(); i++) {
            for (int j = 0; j < ranked.size(); j++) {
                Double a = momentS(candidates.get(i));
                Double b = momentS(candidates.get(j));
                String figure = candidates.get(i).figureId();
                boolean swap = a != null
                        && b != null
                        && figure != null
                        && figure.equals(candidates.get(j).figureId())
                        && a < b
                        && ranked.get(i).rank() > ranked.get(j).rank();
                if (swap) {
                    Entry first = ranked.get(i);
                    Entry second = ranked.get(j);
                    ranked.set(i, new Entry(second.rank(), first.ways()));
                    ranked.set(j, new Entry(first.rank(), second.ways()));
                    i = 0;
                    j = -1;
                }
            }
        }
    }

    private @Nullable Double momentS(Candidate candidate) {
        return candidate.figureId() == null
                ? null
                : Own.of(candidate.remark(), slot(candidate)).momentS();
    }

    /** A remark's own times in its figure, read from their description again. */
    record Own(
            @Nullable Double momentS,
            @Nullable Double fromS,
            @Nullable Double untilS,
            @Nullable Double beginS) {
        static Own of(Remark remark, Slot slot) {
            boolean tied = remark.kind() != RemarkKind.CALL && (remark.at() != null || remark.until() != null);
            if (!tied) {
                return new Own(null, remark.earliestS(), remark.latestS(), null);
            }
            Double at = null;
            Double until = null;
            for (Moment moment : slot.moments().moments()) {
                at = moment.name().equals(remark.at()) ? Double.valueOf(moment.afterS()) : at;
                until = moment.name().equals(remark.until()) ? Double.valueOf(moment.afterS()) : until;
            }
            if ((remark.at() != null && at == null) || (remark.until() != null && until == null)) {
                return new Own(null, null, null, null);
            }
            Double fromS = null;
            if (remark.earliestS() != null) {
                fromS = (at == null ? 0 : at) + remark.earliestS();
            } else if (at != null) {
                fromS = at - PatterRules.DEFAULT.spareS();
            }
            if (until != null) {
                return new Own(at, fromS, until + (remark.latestS() == null ? 0 : remark.latestS()), null);
            }
            double atS = at == null ? 0 : at;
            if (remark.latestS() != null) {
                return new Own(at, fromS, atS + remark.latestS(), null);
            }
            double late = Math.max(atS, fromS == null ? atS : fromS) + PatterRules.DEFAULT.pastMomentS();
            return new Own(at, fromS, null, late);
        }
    }

    private List<Way> ways(Candidate candidate, int lag) {
        List<Way> ways = new ArrayList<>();
        for (RemarkForm form : RemarkForm.values()) {
            SpokenLength spoken = candidate.length(form);
            if (spoken == null) {
                continue;
            }
            int length = (int) Math.ceil(spoken.seconds() * 10 - 1e-6);
            BitSet anywhere = new BitSet();
            BitSet inside = new BitSet();
            for (int start = now; start <= end; start++) {
                anywhere.set(start, isAllowed(candidate, start, length, 0));
                inside.set(
                        start,
                        isAllowed(candidate, start, length, request.rules().spareS()));
            }
            BitSet allowed = inside.isEmpty() && insists(candidate) ? anywhere : inside;
            boolean kept = wasPlanned(request, candidate.remark().id(), form);
            if (kept) {
                allowPlaces(candidate, lag, anywhere, allowed);
            }
            Remark remark = candidate.remark();
            ways.add(new Way(Worth.of(remark.kind(), remark.weight(), form, kept), length, allowed));
        }
        return ways;
    }

    private void allowPlaces(Candidate candidate, int lag, BitSet anywhere, BitSet allowed) {
        Placed before =
                request.previous().flatMap(p -> p.find(candidate.remark().id())).orElseThrow();
        int place = (int) Math.round(before.startS() * 10);
        int nearest = anywhere.nextSetBit(Math.max(0, place));
        if (nearest < 0) {
            nearest = anywhere.length() - 1;
        }
        if (nearest >= 0) {
            allowed.set(nearest);
        }
        if (place + lag >= 0 && anywhere.get(place + lag)) {
            allowed.set(place + lag);
        }
    }

    private boolean insists(Candidate candidate) {
        Remark remark = candidate.remark();
        if (remark.kind() == RemarkKind.DUTY) {
            return true;
        }
        if (candidate.figureId() == null) {
            return false;
        }
        Slot slot = slot(candidate);
        double lastS = slot.endS() - slot.startS() + request.rules().runPastS();
        Own own = Own.of(remark, slot);
        return remark.kind() == RemarkKind.CALL
                || own.beginS() != null
                || (own.untilS() != null && own.untilS() <= lastS + 1e-6);
    }

    private Slot slot(Candidate candidate) {
        return request.slots().stream()
                .filter(s -> s.figureId().equals(candidate.figureId()))
                .findFirst()
                .orElseThrow();
    }

    private boolean isAllowed(Candidate candidate, int start, int length, double spareS) {
        double startS = start / 10.0;
        double endS = (start + length) / 10.0;
        double e = 1e-6;
        for (Slot slot : request.slots()) {
            for (Quiet quiet : slot.quiets()) {
                double toS = quiet.toS() == null ? slot.endS() : Math.min(slot.endS(), slot.startS() + quiet.toS());
                double fromS = slot.startS() + quiet.fromS();
                if (fromS < toS - e && endS > fromS - spareS + e && startS < toS + spareS - e) {
                    return false;
                }
            }
        }
        if (covers(candidate.remark(), startS, endS, spareS)) {
            return false;
        }
        if (candidate.figureId() == null) {
            return endS + spareS <= end / 10.0 + e;
        }
        Slot slot = slot(candidate);
        Remark remark = candidate.remark();
        PatterRules rules = request.rules();
        double fromS = slot.startS();
        double untilS = slot.endS() + rules.runPastS();
        double clear = spareS;
        if (remark.kind() == RemarkKind.CALL) {
            untilS = slot.startS() - rules.callEndsAtLeastBeforeS();
            fromS = Math.max(
                    slot.startS() - rules.callStartsAtMostBeforeS(),
                    slot.startS() - rules.callEndsAtMostBeforeS() - length / 10.0);
            clear = Math.min(spareS, (rules.callEndsAtMostBeforeS() - rules.callEndsAtLeastBeforeS()) / 2);
            if (remark.earliestS() != null) {
                fromS = Math.max(fromS, slot.startS() + remark.earliestS());
            }
        }
        Own own = Own.of(remark, slot);
        if (remark.kind() != RemarkKind.CALL && own.fromS() != null) {
            fromS = slot.startS() + own.fromS();
        }
        if (own.untilS() != null) {
            untilS = Math.min(untilS, slot.startS() + own.untilS());
        } else if (own.beginS() == null && remark.kind() != RemarkKind.CALL) {
            double half = Math.floor(length / 2.0) / 10;
            untilS = Math.min(untilS, Math.max(slot.endS() + half, fromS + length / 10.0 + 2 * rules.spareS()));
        }
        if (own.beginS() != null) {
            untilS = Math.min(untilS, slot.startS() + own.beginS() + length / 10.0);
        }
        return startS >= fromS + clear - e && endS <= untilS - clear + e;
    }

    /** Whether it would be said over what is worth watching, and may not be. */
    private boolean covers(Remark remark, double startS, double endS, double spareS) {
        boolean tied = remark.at() != null || remark.until() != null;
        if (remark.kind() == RemarkKind.CALL || remark.kind() == RemarkKind.EXPLANATION || tied) {
            return false;
        }
        for (Slot slot : request.slots()) {
            for (Moment moment : slot.moments().moments()) {
                double atS = slot.startS() + moment.afterS();
                if (moment.worthWatching() && endS > atS - 0.5 - spareS + 1e-6 && startS < atS + 1.5 + spareS - 1e-6) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The most that can be added after a moment (−1 for now), the entries of a mask used and a rank passed. */
    private long from(long mask, int rank, int moment) {
        int free = Math.max(moment, now);
        long key = (mask * 100_000 + rank + 1) * 10_000 + free;
        Long before = known.get(key);
        if (before != null) {
            return before;
        }
        long best = 0;
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            boolean mayFollow = entry.rank() < 0 || entry.rank() > rank;
            if ((mask >> i & 1) != 0 || !mayFollow) {
                continue;
            }
            for (Way way : entry.ways()) {
                int start = way.allowed().nextSetBit(free);
                if (start >= 0) {
                    int then = start
                            + way.length()
                            + (int) Math.ceil(request.rules().breathS() * 10 - 1e-6);
                    // Bound remarks that were passed can never follow: leaving them out of the mask saves states.
                    long used = entry.rank() < 0 ? mask | 1L << i : mask;
                    best = Math.max(best, way.worth() + from(used, Math.max(rank, entry.rank()), then));
                }
            }
        }
        known.put(key, best);
        return best;
    }
}
