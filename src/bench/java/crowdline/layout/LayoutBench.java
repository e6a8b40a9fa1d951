package crowdline.layout;

import crowdline.show.aircraft.Kind;
import java.util.List;
import java.util.Objects;
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

/** Laying out an act of 20 figures, from wishes to what is flown. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class LayoutBench {
    @Param({"strong aerobatic monoplane", "light aerobatic biplane", "old trainer", "jet trainer", "aerobatic glider"})
    public String kind = "";

    private RandomLists.@Nullable Case list;

    @Setup
    public void list() {
        RandomLists lists = new RandomLists(7);
        Kind flying = RandomLists.kinds().stream()
                .filter(k -> k.name().equals(kind))
                .findFirst()
                .orElseThrow();
        RandomLists.Case found = lists.next(flying);
        while (found.wishes().size() != 20) {
            found = lists.next(flying);
        }
        list = found;
    }

    @Benchmark
    public List<Piece> laidOut() {
        return Objects.requireNonNull(list).laid().pieces();
    }
}
