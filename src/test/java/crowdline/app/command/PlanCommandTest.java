package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Folders;
import crowdline.flight.Workers;
import crowdline.speech.pace.Pace;
import crowdline.storage.settings.PaceShelf;
import crowdline.storage.settings.Settings;
import crowdline.storage.settings.SettingsFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class PlanCommandTest {
    @TempDir
    private Path folder;

    private final CaughtTerminal caught = new CaughtTerminal();

    private int run(String... args) {
        caught.clear();
        return Main.run(args, caught.terminal(), (show, t) -> ExitCode.UNUSABLE);
    }

    private String squeezed() {
        return caught.out().replaceAll("\\s+", " ");
    }

    private static String sound() throws IOException {
        try (InputStream in = Objects.requireNonNull(
                PlanCommandTest.class.getResourceAsStream("/crowdline/storage/show/full.json"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("day.json"), text).toString();
    }

    @Test
    void planSaysWhatComesWhen() throws IOException {
        assertThat(run("plan", file(sound()))).isEqualTo(ExitCode.FINE);
        assertThat(caught.out())
                .contains("Ada Quillan in the Wren", "Variant \"full\"", "Here comes the loop.", "And down she comes.");
    }

    @Test
    void jsonHasItsStableKeys() throws IOException {
        assertThat(run("plan", file(sound()), "--json")).isEqualTo(ExitCode.FINE);
        assertThat(squeezed())
                .startsWith("{ \"acts\": [ { \"id\": \"ada-solo\", \"variant\": \"full\", \"placed\": [")
                .containsPattern("\"remark\": \"loop-call\", \"figure\": \"loop-1\", \"kind\": \"call\","
                        + " \"form\": \"full\", \"startS\": -?[0-9.]+, \"endS\": -?[0-9.]+, \"goodDay\": (true|false)")
                .containsPattern("\"remark\": \"thanks\", \"figure\": null, \"kind\": \"duty\"")
                .contains("\"unplaced\": [")
                .containsPattern("\"quietS\": [0-9.]+, \"talkS\": [0-9.]+");
    }

    @Test
    void anotherVariantIsPlannedOnRequest() throws IOException {
        assertThat(run("plan", file(sound()), "--variant", "flat", "--json")).isEqualTo(ExitCode.FINE);
        assertThat(squeezed()).contains("\"variant\": \"flat\"").doesNotContain("loop-call");
    }

    @Test
    void dutyWithoutAPlaceEndsWithOneAndSaysWhy() throws IOException {
        String longThanks = "Thank the stewards, one by one. ".repeat(80).strip();
        String show = file(sound().replace("Thank the stewards.", longThanks));
        assertThat(run("plan", show)).isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.out()).containsPattern("duty thanks: [0-9.]+ s needed, [0-9.]+ s");
        assertThat(run("plan", show, "--json")).isEqualTo(ExitCode.BLOCKED);
        assertThat(squeezed())
                .containsPattern("\"remark\": \"thanks\", \"why\": \"[a-z-]+\", \"reason\": \"[0-9.]+ s needed");
    }

    @Test
    void whatIsSaidOnceIsNotPlannedInALaterActAgain() throws IOException {
        String text = sound();
        String act = text.substring(text.indexOf("{\"id\": \"ada-solo\""), text.indexOf("\n  ],\n  \"remarks\""));
        String second = act.replace("ada-solo", "ada-again")
                .replace("\"id\": \"loop-call\"", "\"id\": \"loop-call-2\"")
                .replace("\"id\": \"mine-call\"", "\"id\": \"mine-call-2\"")
                .replace("\"id\": \"home-call\"", "\"id\": \"home-call-2\"")
                .replace("\"id\": \"wren-built\"", "\"id\": \"wren-built-2\"");
        assertThat(run("plan", file(text.replace(act, act + ",\n" + second)), "--json"))
                .isEqualTo(ExitCode.FINE);
        assertThat(squeezed()).contains("\"id\": \"ada-again\"").containsOnlyOnce("\"remark\": \"thanks\"");
    }

    @Test
    void slowSpeakerTalksLonger() throws IOException {
        String show = file(sound());
        run("plan", show, "--json");
        double usual = talkS();
        Path pace = Files.writeString(
                folder.resolve("pace.json"),
                "{\"crowdlinePace\": 1, \"name\": \"slow\", \"fixedS\": 0.15, \"perLetterS\": 0.1, \"perCommaS\": 0.3,"
                        + " \"perStopS\": 0.7, \"relativeError\": 0.1}");
        run("plan", show, "--json", "--pace", pace.toString());
        assertThat(talkS()).isGreaterThan(usual);
    }

    @Test
    void withoutAFileTheSpeakerOfTheConsoleIsGoneBy() throws Exception {
        String show = file(sound());
        run("plan", show, "--json");
        double usual = talkS();
        Path home = Files.createDirectory(folder.resolve("home"));
        Folders folders = Folders.of(Map.of("XDG_CONFIG_HOME", home.toString()), home, home);
        new PaceShelf(folders.paces()).write(new Pace("Bryony Tull", 0.15, 0.12, 0.3, 0.7, 0.1));
        assertThat(plan(folders, show, "--json", "--speaker", "Bryony Tull")).isEqualTo(ExitCode.FINE);
        assertThat(talkS()).isGreaterThan(usual * 1.2);
        assertThat(squeezed()).endsWith("\"pace\": \"Bryony Tull\" } ");
        assertThat(plan(folders, show, "--speaker", "Briony Tull")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err())
                .contains("there is no speaker Briony Tull; there are Bryony Tull", "did you mean \"Bryony Tull\"?");
        assertThat(plan(folders, show)).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).startsWith("Remarks are timed at 160 words a minute, as no speaker was chosen.");
        new SettingsFile(folders.settings()).write(Settings.DEFAULT.withSpeaker("Bryony Tull"));
        assertThat(plan(folders, show)).isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).startsWith("Remarks are timed at the pace of Bryony Tull.");
    }

    private int plan(Folders folders, String... args) {
        caught.clear();
        CommandLine line = new CommandLine(new PlanCommand(caught.terminal(), folders, Workers.ALONE));
        line.setExecutionExceptionHandler((e, command, parsed) -> {
            caught.terminal().complain(String.valueOf(e.getMessage()));
            return ExitCode.UNUSABLE;
        });
        return line.execute(args);
    }

    private double talkS() {
        String out = squeezed();
        int at = out.indexOf("\"talkS\": ") + "\"talkS\": ".length();
        return Double.parseDouble(out.substring(at, out.indexOf(' ', at)));
    }

    /** It used to go wrong inside the program. */
    @Test
    void aVariantThatFliesAFigureTwiceIsToldAndNotPlanned() throws IOException {
        String file = file(sound().replace("[\"loop-1\", \"mine\"", "[\"loop-1\", \"loop-1\", \"mine\""));

        assertThat(run("check", file)).isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.out()).contains("the variant \"full\" flies \"loop-1\" twice");
        assertThat(run("plan", file)).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("cannot be predicted").doesNotContain("went wrong inside the program");
        assertThat(run("facts", file)).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("a variant that flies the same figure twice; crowdline check says which");
    }

    @Test
    void wrongUseEndsWithTwoInOneSentence() throws IOException {
        String show = file(sound());
        assertThat(run("plan", show, "--act", "ada-sola")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("there is no act ada-sola in this show; it has ada-solo");
        assertThat(run("plan", show, "--variant", "ful")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("did you mean \"full\"?");
        assertThat(run("plan", "gone.json")).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("there is no file gone.json");
        assertThat(run("plan", file("{}"))).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err().lines())
                .as("what stands in the way, a line each, and then what to do")
                .hasSizeGreaterThan(1)
                .last()
                .asString()
                .contains("has errors and cannot be used until they are fixed; crowdline check");
    }
}
