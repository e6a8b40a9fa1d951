package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import org.junit.jupiter.api.Test;

class PracticeCommandTest {
    private static final String SHOW = "demo-shows/wrackenholt-evening.json";

    private final CaughtTerminal caught = new CaughtTerminal();

    private int run(String... args) {
        caught.clear();
        return Main.run(args, caught.terminal(), (show, t) -> ExitCode.UNUSABLE);
    }

    @Test
    void whatIsFlownWhenIsPrintedWithWhatIsChangedAndTheSameAgain() {
        assertThat(run("practice", SHOW, "--level", "3", "--seed", "5"))
                .as(caught.err())
                .isEqualTo(ExitCode.FINE);
        String first = caught.out();
        assertThat(first).contains("level 3, seed 5").containsPattern("(?m)^ *\\d+:\\d\\d  over$");
        // Gusty, late or early, and two things that are not as planned.
        assertThat(first.lines().filter(line -> line.startsWith("Can be seen at ")))
                .hasSizeGreaterThanOrEqualTo(3);
        run("practice", SHOW, "--level", "3", "--seed", "5");
        assertThat(caught.out()).isEqualTo(first);
        run("practice", SHOW, "--level", "3", "--seed", "6");
        assertThat(caught.out()).isNotEqualTo(first);
    }

    @Test
    void aLevelThatIsNotThereAndAnActThatIsNotThereAreRefused() {
        assertThat(run("practice", SHOW, "--level", "5")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("the level is 5; it must be 1 to 4");
        assertThat(run("practice", SHOW, "--act", "nobody")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("there is no act nobody");
    }
}
