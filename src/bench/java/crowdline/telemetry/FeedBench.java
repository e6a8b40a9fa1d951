package crowdline.telemetry;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What one sentence of a receiver costs from its bytes to its share of a position: an hour, GGA and RMC each second. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class FeedBench {
    private static final int SECONDS = 3600;

    private final byte[] hour = hour();

    @Benchmark
    @OperationsPerInvocation(2 * SECONDS)
    public List<Fix> sentence() {
        List<Fix> fixes = new ReceiverFeed().accept(hour, hour.length);
        if (fixes.size() != SECONDS) {
            throw new IllegalStateException(fixes.size() + " fixes of " + SECONDS);
        }
        return fixes;
    }

    private static byte[] hour() {
        StringBuilder text = new StringBuilder();
        for (int s = 0; s < SECONDS; s++) {
            String time = String.format(Locale.ROOT, "12%02d%02d.00", s / 60, s % 60);
            append(text, "GNGGA," + time + ",4807.03801,N,01131.00012,E,1,08,0.9,545.4,M,46.9,M,,");
            append(text, "GNRMC," + time + ",A,4807.03801,N,01131.00012,E,122.40,084.4,230324,,,A,V");
        }
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private static void append(StringBuilder text, String body) {
        int sum = body.chars().reduce(0, (a, b) -> a ^ b);
        text.append(String.format(Locale.ROOT, "$%s*%02X\r\n", body, sum));
    }
}
