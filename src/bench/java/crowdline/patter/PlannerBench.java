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
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long a plan of 40 figures and 120 remarks takes, four in ten of them floating: afresh, and after a drift. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PlannerBench {
    private static final int FIGURES = 40;
    private static final int REMARKS = 120;
    private static final MomentName TOP = MomentName.first(MomentKind.OVER_THE_TOP);

    /** Whether half the figures have something worth watching, and a third of their explanations are tied to it. */
    @Param({"false", "true"})
    public boolean moments;

    private final Planner planner = new Planner();
    private PlanRequest fresh = request(List.of(), 0, List.of(), Optional.empty());
    private PlanRequest drifted = fresh;

    @Setup
    public void make() {
        Random random = new Random(3);
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < REMARKS * 6 / 10; i++) {
            String figure = "f" + i % FIGURES;
            RemarkKind kind = i < FIGURES ? RemarkKind.CALL : RemarkKind.EXPLANATION;
            double seconds = kind == RemarkKind.CALL ? 1.5 + 2 * random.nextDouble() : 3 + 5 * random.nextDouble();
            Candidate written = candidate("r" + i, kind, figure, seconds, random);
            boolean tied = moments && kind == RemarkKind.EXPLANATION && i % 3 == 0;
            Remark remark = tied ? written.remark().tied(TOP, null) : written.remark();
            candidates.add(new Candidate(remark, figure, written.full(), written.shortForm()));
        }
        for (int i = 0; candidates.size() < REMARKS; i++) {
            RemarkKind kind = i % 12 == 0 ? RemarkKind.DUTY : i % 3 == 2 ? RemarkKind.FILLER : RemarkKind.FACT;
            double seconds = 3 + 5 * random.nextDouble();
            String id = "free" + i;
            candidates.add(candidate(id, kind, null, seconds, random));
        }
        fresh = request(slots(0), 0, candidates, Optional.empty());
        drifted = request(slots(1.3), 2, candidates, Optional.of(planner.plan(fresh)));
    }

    private static Candidate candidate(
            String id, RemarkKind kind, @Nullable String figure, double seconds, Random random) {
        boolean hasShort = random.nextInt(3) == 0;
        Remark remark = new Remark(id, kind, id, hasShort ? id : null, null, null, 1, false);
        SpokenLength shortForm = hasShort ? SpokenLength.of(seconds * 0.6) : null;
        return new Candidate(remark, figure, SpokenLength.of(seconds), shortForm);
    }

    private List<Slot> slots(double atS) {
        Random random = new Random(4);
        List<Slot> slots = new ArrayList<>();
        for (int i = 0; i < FIGURES; i++) {
            double lastsS = 7 + 9 * random.nextDouble();
            List<Quiet> quiets = i % 8 == 3 ? List.of(new Quiet(2, 5.0, null)) : List.of();
            FigureMoments seen = moments && i % 2 == 0 ? seen(lastsS) : FigureMoments.timed(lastsS);
            slots.add(new Slot("f" + i, atS, atS + lastsS, atS + lastsS * 0.9, atS + lastsS * 1.1, quiets, seen));
            atS += lastsS;
        }
        return slots;
    }

    private static FigureMoments seen(double lastsS) {
        return new FigureMoments(List.of(
                new Moment(MomentName.first(MomentKind.BEGINS), 0, false),
                new Moment(TOP, lastsS * 0.5, true),
                new Moment(MomentName.first(MomentKind.SPIN_STOPS), lastsS * 0.8, true),
                new Moment(MomentName.first(MomentKind.FLIES_OUT), lastsS, false)));
    }

    private static PlanRequest request(
            List<Slot> slots, double nowS, List<Candidate> candidates, Optional<Plan> previous) {
        return new PlanRequest(nowS, slots, candidates, Set.of(), previous, null, PatterRules.DEFAULT);
    }

    @Benchmark
    public Plan planAfresh() {
        return planner.plan(fresh);
    }

    @Benchmark
    public Plan planAgainAfterADrift() {
        return planner.plan(drifted);
    }
}
