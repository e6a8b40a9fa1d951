package crowdline.patter;

import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Fills a gap around what must be said in it. What leads up to the next act stands at its end; a piece that was begun goes on,
 * as far as there is room; then come pieces that fit whole, in their order; then the longest of what else there is that fits.
 * After a stretch of talk comes as much quiet as the share of talk asks for: what is begun here begins no sooner, whatever the
 * screen showed before. So the same gap gives the same plan from one second to the next, and after a restart.
 */
final class GapTalk {
    private final PlanRequest request;
    private final Gap gap;
    private final Gaps free;
    private final int breath;
    private final int end;
    /** Every stretch of talk there is, in no order. */
    private final List<Starts.Stretch> talk = new ArrayList<>();

    private final List<Fillers.Filled> filled = new ArrayList<>();
    private final Set<String> done;

    private GapTalk(PlanRequest request, Gap gap, Gaps free, List<Starts.Stretch> placed) {
        this.request = request;
        this.gap = gap;
        this.free = free;
        breath = Tick.up(request.rules().breathS());
        end = Tick.at(gap.endS());
        talk.addAll(placed);
        Gap.Stretch last = gap.lastTalk();
        if (last != null) {
            talk.add(new Starts.Stretch(Tick.at(last.fromS()), Tick.at(last.toS())));
        }
        done = new HashSet<>(request.alreadySaid());
    }

    /**
     * What is said in the gap besides what is placed.
     *
     * @param free what is left of the plan's time; it is taken from
     * @param placed what is placed already, and what is being said
     */
    static List<Fillers.Filled> into(PlanRequest request, Gap gap, Gaps free, List<Starts.Stretch> placed) {
        GapTalk talk = new GapTalk(request, gap, free, placed);
        talk.fill();
        return List.copyOf(talk.filled);
    }

    private void fill() {
        List<Gap.Piece> waiting = new ArrayList<>();
        for (Gap.Piece piece : gap.pieces()) {
            List<Candidate> left = left(piece);
            if (left.isEmpty()) {
                continue;
            }
            boolean begun = left.size() < piece.parts().size();
            if (begun) {
                goOn(left);
            } else if (piece.last()) {
                atTheEnd(left);
            } else {
                waiting.add(piece);
            }
        }
        boolean found = gap.talkShare() > 0;
        while (found) {
            found = false;
            for (Starts.Stretch stretch : stretches()) {
                if (fill(stretch, waiting)) {
                    found = true;
                    break;
                }
            }
        }
    }

    private List<Starts.Stretch> stretches() {
        return free.within(Integer.MIN_VALUE, end);
    }

    private List<Candidate> left(Gap.Piece piece) {
        Speaking speaking = request.speaking();
        return piece.parts().stream()
                .filter(part -> !done.contains(part.remark().id()))
                .filter(part -> speaking == null
                        || !speaking.remarkId().equals(part.remark().id()))
                .toList();
    }

    /** As many of the parts as there is room for, one after the other, from now on. */
    private void goOn(List<Candidate> parts) {
        for (Candidate part : parts) {
            int length = length(part);
            Starts.Stretch room = stretches().stream()
                    .filter(s -> s.to() - s.from() >= length)
                    .findFirst()
                    .orElse(null);
            if (room == null) {
                return;
            }
            put(part, RemarkForm.FULL, room.from(), room.from() + length);
        }
    }

    private void atTheEnd(List<Candidate> parts) {
        List<Starts.Stretch> all = stretches();
        if (all.isEmpty()) {
            return;
        }
        Starts.Stretch last = all.get(all.size() - 1);
        int start = last.to() - Tick.up(request.rules().spareS()) - length(parts);
        if (last.to() == end && start >= last.from()) {
            putAll(parts, start);
        }
    }

    private boolean fill(Starts.Stretch stretch, List<Gap.Piece> waiting) {
        int start = Math.max(stretch.from(), quietUntil(stretch.from()));
        int room = stretch.to() - Tick.up(request.rules().spareS()) - start;
        for (Gap.Piece piece : waiting) {
            if (length(piece.parts()) <= room) {
                putAll(piece.parts(), start);
                waiting.remove(piece);
                return true;
            }
        }
        if (stretch.to() - start < Tick.up(request.rules().leastFillerGapS())) {
            return false;
        }
        Fillers.Filled best = loose(start, room);
        if (best == null) {
            return false;
        }
        put(best.candidate(), best.form(), best.start(), best.end());
        return true;
    }

    /** The longest that fits. */
    private Fillers.@Nullable Filled loose(int start, int room) {
        Speaking speaking = request.speaking();
        return Stream.concat(
                        gap.loose().stream(),
                        request.candidates().stream()
                                .filter(c -> c.remark().kind() == RemarkKind.FILLER && c.figureId() == null))
                .filter(c -> !done.contains(c.remark().id()))
                .filter(c -> speaking == null
                        || !speaking.remarkId().equals(c.remark().id()))
                .flatMap(c -> Stream.of(RemarkForm.values())
                        .filter(form -> c.length(form) != null)
                        .map(form -> filled(c, form, start)))
                .filter(f -> f.end() - f.start() <= room)
                .max(Comparator.<Fillers.Filled>comparingInt(f -> f.end() - f.start())
                        .thenComparingDouble(f -> f.candidate().remark().weight()))
                .orElse(null);
    }

    private static Fillers.Filled filled(Candidate candidate, RemarkForm form, int start) {
        SpokenLength length = candidate.length(form);
        return new Fillers.Filled(candidate, form, start, start + Tick.up(length == null ? 0 : length.seconds()));
    }

    /** Until when it is quiet after the last stretch of talk that begins before {@code at}. */
    private int quietUntil(int at) {
        int join = Tick.at(Gap.ONE_STRETCH_S);
        List<Starts.Stretch> before = talk.stream()
                .filter(s -> s.from() < at)
                .sorted(Comparator.comparingInt(Starts.Stretch::from))
                .toList();
        if (before.isEmpty()) {
            return at;
        }
        int from = before.get(0).from();
        int to = before.get(0).to();
        for (Starts.Stretch next : before) {
            if (next.from() - to > join) {
                from = next.from();
            }
            to = Math.max(to, next.to());
        }
        return to + (int) Math.ceil((to - from) * (1 - gap.talkShare()) / gap.talkShare());
    }

    private void putAll(List<Candidate> parts, int from) {
        int start = from;
        for (Candidate part : parts) {
            put(part, RemarkForm.FULL, start, start + length(part));
            start += length(part) + breath;
        }
    }

    private void put(Candidate candidate, RemarkForm form, int start, int to) {
        done.add(candidate.remark().id());
        filled.add(new Fillers.Filled(candidate, form, start, to));
        talk.add(new Starts.Stretch(start, to));
        free.take(start, to);
    }

    private static int length(Candidate part) {
        return Tick.up(part.full().seconds());
    }

    private int length(List<Candidate> parts) {
        return parts.stream().mapToInt(GapTalk::length).sum() + (parts.size() - 1) * breath;
    }
}
