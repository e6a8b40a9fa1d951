package crowdline.flight.shape;

import crowdline.flight.air.Wind;
import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Variation;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.CannotFly;
import crowdline.flight.leg.Forces;
import crowdline.measure.Units;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Drawing every figure of the catalogue for every kind that flies: those that can be flown, and those that cannot. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class ShaperBench {
    /** So many pairs are drawn in one go; each result is the time of one. */
    private static final int PAIRS = 100;

    private record Pair(Shaper shaper, CatalogueEntry entry, FlightState from) {
        boolean draw() {
            try {
                return shaper.shape(entry.elements(), from).end().tS() > 0;
            } catch (CannotFly e) {
                return false;
            }
        }
    }

    private final List<Pair> flown = new ArrayList<>();
    private final List<Pair> lacking = new ArrayList<>();

    @Setup
    public void pairs() {
        for (Kind kind : KindsFile.shipped().all()) {
            if (kind.flies()) {
                Airframe airframe = kind.airframe("it", kind.name(), Sliders.TYPICAL);
                Forces forces = new Forces(Body.of(airframe, Variation.NONE), z -> 1.225, Wind.CALM);
                for (CatalogueEntry entry : CatalogueFile.shipped().entries()) {
                    Double kt = entry.enters() == null ? null : entry.enters().kt(airframe.usual(), airframe.stallKt());
                    if (kt != null && !entry.elements().isEmpty()) {
                        FlightState from =
                                new FlightState(0, new Vec(0, 0, 300), Units.mpsFromKt(kt), new Vec(1, 0, 0), Vec.UP);
                        Pair pair = new Pair(new Shaper(forces, airframe), entry, from);
                        (pair.draw() ? flown : lacking).add(pair);
                    }
                }
            }
        }
    }

    private static int drawn(List<Pair> pairs) {
        int count = 0;
        for (int i = 0; i < PAIRS; i++) {
            count += pairs.get(i % pairs.size()).draw() ? 1 : 0;
        }
        return count;
    }

    @Benchmark
    @OperationsPerInvocation(PAIRS)
    public int figureThatCanBeFlown() {
        return drawn(flown);
    }

    @Benchmark
    @OperationsPerInvocation(PAIRS)
    public int figureThatCannotBeFlown() {
        return drawn(lacking);
    }
}
