package crowdline.app;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.command.CaughtTerminal;
import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Terminal;
import crowdline.app.shell.WindowOpener;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole program in process: what it prints and what it ends with. */
class MainTest {
    @TempDir
    Path folder;

    private final List<String> opened = new ArrayList<>();

    /** What a run ended with. */
    private record Ran(int code, String out, String err) {}

    private Ran run(String... args) {
        CaughtTerminal caught = new CaughtTerminal();
        int code = Main.run(args, caught.terminal(), (show, where) -> {
            opened.add(String.valueOf(show));
            return WindowOpener.STAYS_OPEN;
        });
        return new Ran(code, caught.out(), caught.err());
    }

    private static String sound() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(MainTest.class.getResourceAsStream("/crowdline/storage/show/full.json"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("day.json"), text).toString();
    }

    @Test
    void soundShowEndsWithZero() throws IOException {
        assertThat(run("check", file(sound()))).isEqualTo(new Ran(0, "nothing found" + System.lineSeparator(), ""));
    }

    @Test
    void wantOfMemoryIsOneSentence() {
        CaughtTerminal caught = new CaughtTerminal();
        int code = Commands.run(new String[] {}, caught.terminal(), (show, where) -> {
            throw new OutOfMemoryError("Java heap space");
        });
        assertThat(code).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err().strip())
                .isEqualTo(
                        "crowdline: this takes more memory than the program has; use a smaller file, or give it more with"
                                + " CROWDLINE_JAVA_OPTS=-Xmx1g");
    }

    @Test
    void errorsEndWithOneAndAreListed() throws IOException {
        String show = file(sound().replaceFirst("\"figure\": \"loop\"", "\"figure\": \"lop\""));
        Ran ran = run("check", show);
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out())
                .isEqualToNormalizingNewlines(show
                        + ":28:35: error: the figure \"lop\" is not in the catalogue; did you mean \"loop\"?\n"
                        + "1 error, 0 warnings, 0 notes\n");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void whatCannotBeUsedOfThePassesIsNamedWithItsLineAndWhatItMustBe() throws IOException {
        String show = file(sound());
        Path passes = Path.of(show + ".passes");
        Files.writeString(
                passes,
                "{\"crowdlinePass\":1,\"id\":\"b\",\"act\":\"x\",\"variant\":\"full\",\"how\":\"by ear\","
                        + "\"begunAt\":\"2027-06-12T14:00:00Z\",\"figures\":[]}\n");
        Ran ran = run("check", show);
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .startsWith(
                        "warning: " + passes + ", line 1, column 1: how it was timed is \"by ear\"; it must be one of")
                .contains("0 errors, 1 warning, 0 notes");
        assertThat(run("check", show, "--json").out()).contains("\"passes\"", "by ear");
    }

    @Test
    void notesAloneEndWithZero() throws IOException {
        Ran ran = run("check", file(sound().replace("\"title\": \"Ada's own\"", "\"titel\": \"é\"")));
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("0 errors, 0 warnings, 1 note");
    }

    @Test
    void jsonHasEveryKeyOfAFinding() throws IOException {
        String show = file(sound().replace("\"massKg\": 640", "\"massKg\": -640"));
        Ran ran = run("check", show, "--json");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out().replaceAll("\\s+", " "))
                .isEqualTo(
                        "{ \"findings\": [ { \"severity\": \"error\", \"code\": \"out-of-range\", \"message\":"
                                + " \"airframes[0].massKg is -640; it must be from 20 to 700000\", \"file\": \"" + show
                                + "\", \"line\": 12, \"column\": 50, \"path\": \"airframes[0].massKg\" } ], \"questions\": [] } ");
    }

    @Test
    void jsonOfASoundShowIsAnEmptyList() throws IOException {
        assertThat(run("check", "--json", file(sound())))
                .isEqualTo(new Ran(0, "{\"findings\": [], \"questions\": []}\n", ""));
    }

    @Test
    void wordsThatListenersMayNotFollowAreHintsAndBlockNothing() {
        String show = "src/test/resources/crowdline/shows/fenmarsh-air-day.json";
        Ran ran = run("check", "--words", show);
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("hint jackanapes-solo/stall-turn/stall-turn-name: \"stall\" is a trade word")
                .contains("Plain words: the air breaks away from the wing, and most of its lift is gone.")
                .contains("reads thistledown-glider: very easy");
        assertThat(run("check", "--words", "--json", show).out()).contains("\"trade-word\"", "\"reads\"");
    }

    @Test
    void missingFileEndsWithTwoAndPrintsNothingElse() {
        assertThat(run("check", "gone.json", "--json"))
                .isEqualTo(new Ran(
                        2,
                        "",
                        "crowdline: there is no file gone.json; check its name and folder" + System.lineSeparator()));
    }

    @Test
    void wrongUseEndsWithTwoAndSaysWhatToDo() {
        assertThat(run("check"))
                .isEqualTo(new Ran(
                        2,
                        "",
                        "crowdline: Missing required parameter: 'SHOW'; see crowdline check --help"
                                + System.lineSeparator()));
        assertThat(run("check", "--jsn", "x").err()).contains("did you mean --json?");
        assertThat(run("chekc", "x").err().strip())
                .isEqualTo("crowdline: there is no command chekc; did you mean \"check\"?");
        assertThat(run("chekc").err().strip())
                .isEqualTo("crowdline: there is no file or command chekc; did you mean \"check\"?");
        assertThat(run("chekc").code()).isEqualTo(2);
        assertThat(run("speak").err()).contains("there is nothing to time; give a text or --file");
    }

    @Test
    void theSecondWindowAloneNeedsTheShowThatRuns() throws IOException {
        String needs = "crowdline: --second needs the show that runs, such as: crowdline --second day.json";
        assertThat(run("--second").err().strip()).isEqualTo(needs);
        assertThat(run("--second", "gone.json").err().strip()).isEqualTo(needs);
        assertThat(run("--second").code()).isEqualTo(2);

        String day = file(sound());
        List<Path> watched = new ArrayList<>();
        int code = Main.run(new String[] {"--second", day}, new CaughtTerminal().terminal(), new WindowOpener() {
            @Override
            public int open(@Nullable Path show, Terminal terminal) {
                throw new AssertionError("the console is not opened");
            }

            @Override
            public int watch(Path show, Terminal terminal) {
                watched.add(show);
                return STAYS_OPEN;
            }
        });
        assertThat(code).isEqualTo(WindowOpener.STAYS_OPEN);
        assertThat(watched).containsExactly(Path.of(day));
    }

    @Test
    void helpListsTheCommandsAndEndsWithZero() {
        Ran ran = run("--help");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("check").contains("speak").contains("the display director and local rules");
    }

    @Test
    void windowOpensWithAndWithoutAShow() throws IOException {
        String show = file(sound());
        assertThat(run().code()).isEqualTo(WindowOpener.STAYS_OPEN);
        assertThat(run(show).code()).isEqualTo(WindowOpener.STAYS_OPEN);
        assertThat(opened).containsExactly("null", show);
    }

    @Test
    void speakTimesATextAndTheLinesOfAFile() throws IOException {
        Path lines = Files.writeString(folder.resolve("lines.txt"), "Pull 6 g.\n\n  A loop.  \n");
        Ran ran = run("speak", "--json", "--file", lines.toString(), "at", "150", "kt");
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("\"text\": \"at 150 kt\"")
                .contains("\"spoken\": \"at one hundred and fifty knots\"")
                .contains("\"text\": \"Pull 6 g.\"")
                .contains("\"text\": \"A loop.\"")
                .contains("\"seconds\": ")
                .contains("\"lowS\": ")
                .contains("\"highS\": ");
    }

    @Test
    void slowerPaceTakesLonger() throws IOException {
        Path pace = Files.writeString(
                folder.resolve("pace.json"),
                "{\"crowdlinePace\": 1, \"name\": \"slow\", \"fixedS\": 0, \"perLetterS\": 0.5, \"perCommaS\": 0,"
                        + " \"perStopS\": 0, \"relativeError\": 0}");
        assertThat(run("speak", "--pace", pace.toString(), "loop").out().strip())
                .isEqualTo("2.3 s (2.3 to 2.3)  loop");
    }

    @Test
    void brokenPaceEndsWithTwo() throws IOException {
        Path pace = Files.writeString(folder.resolve("pace.json"), "{}");
        Ran ran = run("speak", "--pace", pace.toString(), "loop");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("is not a pace file; one has \"crowdlinePace\": 1 in it");
    }
}
