package crowdline.patter;

import crowdline.flight.moment.FigureMoments;
import crowdline.flight.moment.Moment;
import crowdline.show.figure.MomentKind;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Made-up acts for tests: the same seed, the same act. All times are whole tenths of a second. */
final class Acts {
    private static final List<RemarkKind> ANY = List.of(RemarkKind.values());

    private Acts() {}

    static double tenths(Random random, double from, double to) {
        return Math.round((from + (to - from) * random.nextDouble()) * 10) / 10.0;
    }

    static Slot slot(String id, double startS, double endS, Quiet... quiets) {
        return new Slot(id, startS, endS, endS, endS, List.of(quiets));
    }

    static Candidate candidate(String id, RemarkKind kind, @Nullable String figureId, double seconds) {
        return new Candidate(Remark.of(id, kind, id), figureId, SpokenLength.of(seconds), null);
    }

    static Candidate candidate(
            String id, RemarkKind kind, @Nullable String figureId, double seconds, double shortSeconds) {
        Remark remark = new Remark(id, kind, id, id, null, null, 1, false);
        return new Candidate(remark, figureId, SpokenLength.of(seconds), SpokenLength.of(shortSeconds));
    }

    static PlanRequest request(double nowS, List<Slot> slots, Candidate... candidates) {
        return new PlanRequest(nowS, slots, List.of(candidates), Set.of(), Optional.empty(), null, PatterRules.DEFAULT);
    }

    static PlanRequest with(PlanRequest request, double nowS, List<Slot> slots, Plan previous) {
        return new PlanRequest(
                nowS,
                slots,
                request.candidates(),
                request.alreadySaid(),
                Optional.of(previous),
                request.speaking(),
                request.rules());
    }

    static List<Slot> drifted(List<Slot> slots, double byS) {
        return slots.stream()
                .map(s -> new Slot(
                        s.figureId(),
                        s.startS() + byS,
                        s.endS() + byS,
                        s.endLowS() + byS,
                        s.endHighS() + byS,
                        s.quiets(),
                        s.moments()))
                .toList();
    }

    /** The same with moments in its figures, some worth watching, and remarks tied to them, some to one that is not there. */
    static PlanRequest withMoments(Random random, PlanRequest request) {
        List<Slot> slots = request.slots().stream()
                .map(s -> new Slot(
                        s.figureId(),
                        s.startS(),
                        s.endS(),
                        s.endLowS(),
                        s.endHighS(),
                        s.quiets(),
                        moments(random, s.endS() - s.startS())))
                .toList();
        List<Candidate> candidates = new ArrayList<>();
        for (Candidate c : request.candidates()) {
            boolean tie = c.figureId() != null && random.nextInt(2) == 0;
            MomentName at = tie && random.nextInt(5) > 0 ? name(random) : null;
            MomentName until = tie && random.nextInt(3) == 0 ? name(random) : null;
            candidates.add(new Candidate(c.remark().tied(at, until), c.figureId(), c.full(), c.shortForm()));
        }
        return new PlanRequest(
                request.nowS(), slots, candidates, request.alreadySaid(), Optional.empty(), null, request.rules());
    }

    private static MomentName name(Random random) {
        MomentKind[] kinds = {
            MomentKind.BEGINS, MomentKind.OVER_THE_TOP, MomentKind.PIVOTS, MomentKind.PULLS_OUT, MomentKind.FLIES_OUT
        };
        return MomentName.first(kinds[random.nextInt(kinds.length)]);
    }

    private static FigureMoments moments(Random random, double lastsS) {
        List<Moment> moments = new ArrayList<>();
        moments.add(new Moment(MomentName.first(MomentKind.BEGINS), 0, false));
        double atS = 0;
        for (MomentKind kind : List.of(MomentKind.OVER_THE_TOP, MomentKind.PIVOTS, MomentKind.PULLS_OUT)) {
            atS = tenths(random, atS, lastsS);
            if (random.nextInt(3) > 0) {
                moments.add(new Moment(MomentName.first(kind), atS, random.nextBoolean()));
            }
        }
        moments.add(new Moment(MomentName.first(MomentKind.FLIES_OUT), Math.round(lastsS * 10) / 10.0, false));
        return new FigureMoments(moments);
    }

    /** A crowded act with odd times, weights, short forms and quiets. */
    static PlanRequest random(Random random, int figures, int boundPerFigure, int floating) {
        List<Slot> slots = new ArrayList<>();
        List<Candidate> candidates = new ArrayList<>();
        double atS = tenths(random, 0, 12);
        for (int f = 0; f < figures; f++) {
            double lastsS = tenths(random, 4, 16);
            List<Quiet> quiets = new ArrayList<>();
            if (random.nextInt(4) == 0) {
                double fromS = tenths(random, 0, lastsS - 1);
                quiets.add(new Quiet(fromS, random.nextBoolean() ? null : fromS + tenths(random, 0.5, 4), null));
            }
            slots.add(
                    new Slot("f" + f, atS, atS + lastsS, atS + lastsS * 0.9, atS + lastsS * 1.1, List.copyOf(quiets)));
            for (int b = 0; b < boundPerFigure; b++) {
                RemarkKind kind =
                        b == 0 && random.nextInt(5) > 0 ? RemarkKind.CALL : ANY.get(random.nextInt(ANY.size()));
                candidates.add(randomCandidate(random, "f" + f + "r" + b, kind, "f" + f));
            }
            atS = Math.round((atS + lastsS + (random.nextInt(3) == 0 ? tenths(random, 0, 3) : 0)) * 10) / 10.0;
        }
        for (int i = 0; i < floating; i++) {
            RemarkKind kind = i % 4 == 0 ? RemarkKind.DUTY : i % 4 == 3 ? RemarkKind.FILLER : RemarkKind.FACT;
            candidates.add(randomCandidate(random, "free" + i, kind, null));
        }
        return new PlanRequest(0, slots, candidates, Set.of(), Optional.empty(), null, PatterRules.DEFAULT);
    }

    private static Candidate randomCandidate(Random random, String id, RemarkKind kind, @Nullable String figureId) {
        double seconds = kind == RemarkKind.CALL ? tenths(random, 1, 4) : tenths(random, 2, 9);
        boolean hasShort = random.nextInt(3) == 0;
        @Nullable Double earliestS = null;
        @Nullable Double latestS = null;
        if (figureId != null && random.nextInt(4) == 0) {
            earliestS = tenths(random, -3, 4);
            latestS = random.nextBoolean() ? null : (Double) (earliestS + tenths(random, 2, 12));
        }
        double weight = random.nextInt(3) == 0 ? tenths(random, 0.5, 3) : 1;
        Remark remark = new Remark(id, kind, id, hasShort ? id : null, earliestS, latestS, weight, false);
        return new Candidate(
                remark,
                figureId,
                SpokenLength.of(seconds),
                hasShort ? SpokenLength.of(Math.max(0.5, Math.round(seconds * 6) / 10.0)) : null);
    }
}
