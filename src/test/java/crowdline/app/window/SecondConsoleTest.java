package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Two real processes with one folder of journals. */
@Timeout(120)
@Tag("slow")
class SecondConsoleTest {
    private static final String ELSEWHERE =
            "This show is running in another window; this one keeps a journal of its own.";

    @TempDir
    Path folder;

    private static void play(ChildProcess child, String... words) throws IOException {
        for (String word : words) {
            child.send(word);
            child.ack();
        }
    }

    private List<Path> journals() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(p -> p.toString().endsWith(".journal")).sorted().toList();
        }
    }

    private void areWhole(List<Path> journals) throws IOException {
        for (Path journal : journals) {
            String text = Files.readString(journal);
            assertThat(text).as("%s", journal).doesNotContain("\0").endsWith("}\n");
            assertThat(text.lines())
                    .as("%s", journal)
                    .allSatisfy(line -> assertThat(line).matches("\\{\".*,\"crc32\":\"[0-9a-f]{8}\"}"));
        }
    }

    @Test
    void ofTwoStartedAfterAKillExactlyOneGoesOnWithTheJournal() throws Exception {
        try (ChildProcess first = new ChildProcess(folder, 10)) {
            first.ready();
            play(first, "open", "choose", "start", "step");
            first.kill();
        }
        try (ChildProcess second = new ChildProcess(folder, 10);
                ChildProcess third = new ChildProcess(folder, 10)) {
            List<ChildProcess> both = List.of(second, third);
            List<Integer> events = new ArrayList<>();
            List<String> notices = new ArrayList<>();
            ChildProcess goesOn = second;
            for (ChildProcess child : both) {
                ChildProcess.Ready ready = child.ready();
                events.add(ready.events());
                notices.addAll(ready.notices());
                goesOn = ready.events() > 0 ? child : goesOn;
            }
            assertThat(events).containsExactlyInAnyOrder(4, 0);
            assertThat(notices).containsExactly(ELSEWHERE);

            ChildProcess other = goesOn == second ? third : second;
            play(other, "open", "choose");
            for (int i = 0; i < 20; i++) {
                play(goesOn, "step");
                play(other, "remark-" + i);
            }
            goesOn.kill();
            other.kill();
        }
        assertThat(journals()).hasSize(2);
        areWhole(journals());
        try (ChildProcess again = new ChildProcess(folder, 10)) {
            ChildProcess.Ready ready = again.ready();
            assertThat(ready.notices()).isEmpty();
            assertThat(ready.events()).isEqualTo(24);
            assertThat(ready.where().index()).isEqualTo(21);
        }
    }
}
