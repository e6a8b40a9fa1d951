package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import crowdline.speech.pace.Pace;
import crowdline.storage.settings.PaceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PaceCommandTest {
    private static final String DEMO = "src/test/resources/crowdline/shows/fenmarsh-air-day.json";

    /**
     * Twelve remarks as a synthesiser says them (espeak-ng 1.51, -v en-gb -s 150, without the silence at the end), so
     * that what the program makes of them is not its own making.
     */
    private static final String TIMED = """
            seconds,text
            1.23,Here comes the loop.
            2.70,"Watch the top of the circle, where he is slow."
            3.75,"He pulls hard, and everything feels four times as heavy."
            2.70,Up he goes. Now listen to the engine.
            3.59,"A slow roll, with both hands and both feet at work."
            3.64,"That is the whole figure: up, over, and down again."
            3.78,"He will be at the rope in half an hour, so bring your questions."
            0.64,Look left.
            4.28,"The wings are made of wood and cloth, rather like a very strong kite."
            4.17,"She turns in to land. Give her a wave, and she will wave back."
            4.39,"The wind is blowing him towards you, so he leans a little the other way."
            3.59,"Straight up, slower and slower, until it hangs there."
            """;

    @TempDir
    private Path folder;

    private final CaughtTerminal caught = new CaughtTerminal();

    private int run(String... args) {
        caught.clear();
        return Main.run(args, caught.terminal(), (show, t) -> ExitCode.UNUSABLE);
    }

    private String timed(String text) throws IOException {
        return Files.writeString(folder.resolve("timed.csv"), text).toString();
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void twelveRemarksOfASynthesiserAreForetoldWithinTenPerCent() throws Exception {
        Path out = folder.resolve("ada.json");
        assertThat(run("pace", timed(TIMED), "--out", out.toString(), "--speaker", "Ada"))
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.out())
                .contains("Ada: 12 remarks timed", "each letter", "8 of 10 remarks will take", "Saved as " + out)
                .containsPattern("mean error [0-9]\\.[0-9]%, 1[0-2] of 12 within 10%");
        Pace pace = PaceFile.read(out);
        assertThat(pace.name()).isEqualTo("Ada");
        // The published fit of thirty other remarks by the same voice: 0.0694 s a letter.
        assertThat(pace.perLetterS()).isBetween(0.063, 0.076);
    }

    @Test
    void aPaceOfTheFileCanBeSpokenWith() throws IOException {
        Path out = folder.resolve("ada.json");
        run("pace", timed(TIMED), "--out", out.toString());
        assertThat(run("speak", "--pace", out.toString(), "Here comes the loop."))
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("Here comes the loop.");
    }

    @Test
    void fewRemarksGiveTheSimplerModelAndSaySo() throws IOException {
        assertThat(run("pace", timed("2.1,Here comes the loop.\n3,And now he rolls to the left.\n")))
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.out())
                .contains("timed: 2 of 10 remarks timed: the default pace is only sped up or slowed down");
        run("pace", timed("2.1,Here comes the loop.\n"), "--json");
        assertThat(squeezed(caught.out()))
                .contains("\"remarks\": 1, \"everyTermFitted\": false", "\"leftOutMeanError\": null");
    }

    @Test
    void unsoundRowsEndWithTwoAndTheirPlace() throws IOException {
        assertThat(run("pace", timed("2.1,Here comes the loop.\nx,Roll.\n"))).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("timed.csv, line 2, column 1: \"x\" is not a time");
        assertThat(run("pace", timed("2.1,Here comes the loop.\n90,And a roll.\n")))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("timed.csv, line 2, column 1: \"And a roll.\" is timed at 90.0 s");
        assertThat(run("pace", timed("3,!!!\n"))).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("line 1, column 1", "has no words");
        assertThat(run("pace", timed(""))).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("no timed remark").hasLineCount(1);
        assertThat(run("pace", "gone.csv")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("there is no file gone.csv");
    }

    @Test
    void namesAreSaidAsTheShowSays() throws IOException {
        run("speak", "--json", "Tarrowby");
        String plain = squeezed(caught.out());
        assertThat(run("speak", "--show", DEMO, "--json", "Tarrowby")).isEqualTo(ExitCode.FINE);
        assertThat(squeezed(caught.out())).isNotEqualTo(plain);
        assertThat(run("speak", "--show", "gone.json", "Loop")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("there is no file gone.json");
    }
}
