package crowdline.follow;

import crowdline.storage.file.ShowFileException;
import crowdline.telemetry.Reading;
import java.util.List;
import java.util.SplittableRandom;
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

/** What one reading costs the follower, 5 a second, over five minutes of a flight varied by 10 %. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
@SuppressWarnings("NullAway.Init") // JMH calls the set-up before anything else
public class FollowBench {
    private static final int READINGS = 1500;

    private FollowPlan plan;
    private List<Reading> log;

    @Setup
    public void fly() throws ShowFileException {
        Display display = FollowTrial.display("jackanapes-solo");
        plan = display.plan;
        Scenario scenario = Scenario.plain("", 0.10, 0, Radio.good(5));
        log = scenario.radio()
                .receive(scenario.fly(display, 5000), new SplittableRandom(1))
                .subList(0, READINGS);
    }

    @Benchmark
    @OperationsPerInvocation(READINGS)
    public FollowNow reading() {
        Follower follower = new Follower(plan);
        FollowNow now = follower.start(log.get(0).tS());
        for (Reading r : log) {
            now = follower.reading(r);
        }
        return now;
    }
}
