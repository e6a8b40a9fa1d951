package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.window.ChildProcess.Ready;
import crowdline.app.window.ChildProcess.Where;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * A real process, killed at seeded random moments and started again: on the same figure, its clock right within 0.1 s, and
 * everything it had said was done is there. {@code -Dcrowdline.kills=200} kills it 200 times.
 */
@Timeout(600)
@Tag("slow")
class KillTest {
    private static final long TENTH_NANOS = 100_000_000L;

    @TempDir
    Path folder;

    /** One word sent to the child; when, and what it answered if it did. */
    private record Sent(
            String word,
            long sentNanos,
            long answeredNanos,
            @Nullable Where answer) {}

    /** A figure the model is in, begun between two moments of this process's clock. */
    private record Begun(
            int index,
            long notBeforeNanos,
            long notAfterNanos,
            @Nullable Long toldNanos) {}

    @Test
    void killedAtAnyMomentItStartsAgainOnTheSameFigure() throws Exception {
        int kills = Integer.getInteger("crowdline.kills", 7);
        Random random = new Random(20260502);
        List<Sent> history = new ArrayList<>();
        List<Long> cpuMillis = new ArrayList<>();
        int lostUnanswered = 0;
        for (int kill = 0; kill <= kills; kill++) {
            try (ChildProcess child = new ChildProcess(folder, 10)) {
                Ready ready = child.ready();
                cpuMillis.add(ready.cpuMillis());
                lostUnanswered += history.size() - ready.events();
                checkResumed(kill, ready, history);
                if (kill < kills) {
                    history.addAll(playAndKill(child, random, history));
                }
            }
        }
        System.getLogger(KillTest.class.getName())
                .log(
                        System.Logger.Level.INFO,
                        "{0} kills, {1} events kept, {2} unanswered ones lost, ready after {3} ms of processor time",
                        kills,
                        history.size(),
                        lostUnanswered,
                        cpuMillis);
        // Processor time, and the middle one, because other tests may keep the machine busy.
        assertThat(cpuMillis.stream().sorted().skip(kills / 2).findFirst().orElseThrow())
                .isLessThan(2000L);
        assertThat(history.size()).isGreaterThan(kills);
    }

    private static void checkResumed(int kill, Ready ready, List<Sent> history) {
        long answered = history.stream().filter(s -> s.answer() != null).count();
        assertThat((long) ready.events()).as("events after kill %d", kill).isBetween(answered, (long) history.size());
        assertThat(ready.notices()).as("notices after kill %d", kill).isEmpty();
        history.subList(ready.events(), history.size()).clear();

        Deque<Begun> figures = new ArrayDeque<>();
        int remarks = 0;
        for (Sent sent : history) {
            Long told = sent.answer() == null ? null : sent.answer().startNanos();
            switch (sent.word()) {
                case "start" -> figures.push(new Begun(0, sent.sentNanos(), sent.answeredNanos(), told));
                case "step" ->
                    figures.push(
                            new Begun(figures.element().index() + 1, sent.sentNanos(), sent.answeredNanos(), told));
                case "back" -> figures.pop();
                case "open", "choose" -> {}
                default -> remarks++;
            }
        }
        assertThat(ready.where().remarks()).as("remarks after kill %d", kill).isEqualTo(remarks);
        if (figures.isEmpty()) {
            assertThat(ready.where().index()).isEqualTo(-1);
            return;
        }
        Begun now = figures.element();
        assertThat(ready.where().actId()).isEqualTo("first");
        assertThat(ready.where().index()).as("figure after kill %d", kill).isEqualTo(now.index());
        assertThat(ready.where().startNanos())
                .as("start of the figure after kill %d", kill)
                .isBetween(now.notBeforeNanos() - TENTH_NANOS, now.notAfterNanos() + TENTH_NANOS);
        if (now.toldNanos() != null) {
            assertThat(Math.abs(ready.where().startNanos() - now.toldNanos())).isLessThan(TENTH_NANOS);
        }
    }

    private static List<Sent> playAndKill(ChildProcess child, Random random, List<Sent> history) throws Exception {
        List<String> words = words(random, history);
        int answersAwaited = random.nextInt(words.size() + 1);
        List<Sent> sent = new ArrayList<>();
        for (String word : words) {
            sent.add(new Sent(word, System.nanoTime(), 0, null));
            child.send(word);
        }
        List<Where> answers = new ArrayList<>();
        List<Long> answeredNanos = new ArrayList<>();
        while (answers.size() < answersAwaited) {
            answers.add(child.ack());
            answeredNanos.add(System.nanoTime());
        }
        long until = System.nanoTime() + random.nextInt(8_000_000);
        // To the microsecond, as a kill comes between any two of them.
        while (System.nanoTime() < until) {
            Thread.onSpinWait();
        }
        answers.addAll(child.kill());
        long deadNanos = System.nanoTime();
        List<Sent> done = new ArrayList<>();
        for (int i = 0; i < sent.size(); i++) {
            done.add(new Sent(
                    sent.get(i).word(),
                    sent.get(i).sentNanos(),
                    i < answeredNanos.size() ? answeredNanos.get(i) : deadNanos,
                    i < answers.size() ? answers.get(i) : null));
        }
        return done;
    }

    /** Words that are all possible, wherever the child is cut off. */
    private static List<String> words(Random random, List<Sent> history) {
        List<String> words = new ArrayList<>();
        List<String> before = history.stream().map(Sent::word).toList();
        for (String first : List.of("open", "choose", "start")) {
            if (!before.contains(first)) {
                words.add(first);
            }
        }
        int depth = 0;
        int count = 2 + random.nextInt(12);
        for (int i = 0; i < count; i++) {
            int kind = random.nextInt(4);
            if (kind == 0) {
                words.add("remark-" + random.nextLong());
            } else if (kind == 1 && depth > 0) {
                words.add("back");
                depth--;
            } else {
                words.add("step");
                depth++;
            }
        }
        return words;
    }

    @Test
    void killedWhileTheClockMovesTheActItIsWhereTheClockIsByNow() throws Exception {
        double figureS = 0.5;
        Random random = new Random(7);
        long actNanos;
        try (ChildProcess child = new ChildProcess(folder, figureS)) {
            assertThat(child.ready().events()).isZero();
            for (String word : List.of("open", "choose", "clock")) {
                child.send(word);
                assertThat(child.ack().index()).isEqualTo(-1);
            }
            child.send("start");
            Where started = child.ack();
            assertThat(started.index()).isZero();
            actNanos = started.startNanos();
            child.kill();
        }
        for (int kill = 0; kill < 4; kill++) {
            try (ChildProcess child = new ChildProcess(folder, figureS)) {
                Where where = child.ready().where();
                double figures = (where.nowNanos() - actNanos) / (figureS * 1e9);
                // The reading is taken a moment after the snapshot, longer on a busy machine.
                assertThat((double) where.index()).as("kill %d", kill).isBetween(figures - 2, figures + 0.01);
                assertThat((double) where.startNanos() - actNanos)
                        .isCloseTo(
                                where.index() * figureS * 1e9,
                                org.assertj.core.data.Offset.offset((double) TENTH_NANOS / 10));
                long until = System.nanoTime() + random.nextInt(600_000_000);
                while (System.nanoTime() < until) {
                    LockSupport.parkNanos(until - System.nanoTime());
                }
                child.kill();
            }
        }
    }
}
