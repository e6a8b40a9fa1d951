package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Folders;
import crowdline.flight.Workers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class SheetCommandTest {
    private static final String DEMO =
            Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json").toString();

    @TempDir
    private Path folder;

    private final CaughtTerminal caught = new CaughtTerminal();

    private int run(String... args) {
        caught.clear();
        return Main.run(args, caught.terminal(), (show, t) -> ExitCode.UNUSABLE);
    }

    private String out(String name) {
        return folder.resolve(name).toString();
    }

    private static String text(String file) throws IOException {
        try (PDDocument document = Loader.loadPDF(Path.of(file).toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(strings = {"cards", "running", "pilot", "glossary", "incident"})
    void everyKindIsWrittenForTheDemo(String kind) throws IOException {
        assertThat(run("sheet", DEMO, "--kind", kind, "--out", out("a.pdf")))
                .as(caught.err())
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("a.pdf").containsPattern("\\d+ pages?");
        assertThat(text(out("a.pdf"))).contains(kind.equals("incident") ? "Ladies and gentlemen" : "loop");
    }

    @Test
    void oneActInOneVariantIsOnThePagesAlone() throws IOException {
        assertThat(run(
                        "sheet",
                        DEMO,
                        "--kind",
                        "running",
                        "--act",
                        "jackanapes-solo",
                        "--variant",
                        "flat",
                        "--large",
                        "--out",
                        out("a.pdf")))
                .as(caught.err())
                .isEqualTo(ExitCode.FINE);
        assertThat(text(out("a.pdf")))
                .contains("Variant “flat”", "Predicted for commentary only")
                .doesNotContain("Hettie");
    }

    @Test
    void whatIsAskedForWronglyIsSaid() {
        assertThat(run("sheet", DEMO, "--kind", "card", "--out", out("a.pdf"))).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err())
                .contains(
                        "no paper of the kind card; there are cards, interpreter, running,", "did you mean \"cards\"?");
        assertThat(run("sheet", DEMO, "--kind", "cards", "--act", "jackanapes", "--out", out("a.pdf")))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("no act jackanapes", "jackanapes-solo");
        assertThat(run("sheet", DEMO, "--kind", "cards", "--variant", "flot", "--out", out("a.pdf")))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("variant flot", "did you mean \"flat\"?");
        assertThat(run("sheet", DEMO, "--kind", "cards", "--out", out("a.txt"))).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("must end in .pdf");
        assertThat(run("sheet", DEMO, "--kind", "cards", "--out", out("none/a.pdf")))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("there is no folder");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aFileThatCannotBeWrittenIsSaidAndLeftAsItWas() throws IOException {
        Files.createDirectory(folder.resolve("a.pdf"));
        assertThat(run("sheet", DEMO, "--kind", "incident", "--out", out("a.pdf")))
                .isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("a.pdf").doesNotContain("inside the program");
        assertThat(folder.resolve("a.pdf")).isEmptyDirectory();
    }

    @Test
    void whatCannotBeOnPaperEndsWithOne() {
        assertThat(run("sheet", DEMO, "--kind", "questions", "--out", out("a.pdf")))
                .isEqualTo(ExitCode.BLOCKED);
        assertThat(caught.err()).contains("nothing is assumed");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aShowThatWasNeverRunHasNothingToDebrief() {
        Folders folders = new Folders(folder.resolve("config"), folder.resolve("journals"), Path.of(DEMO));
        int code = new CommandLine(new SheetCommand(caught.terminal(), folders, Workers.ALONE))
                .execute(DEMO, "--kind", "debrief", "--out", out("a.pdf"));
        assertThat(code).isEqualTo(ExitCode.UNUSABLE);
        assertThat(caught.err()).contains("there is no journal of", "run the show in Live first");
    }

    @Test
    void lettersThatNoFontHasAreSaid() throws IOException {
        String show = Files.readString(Path.of(DEMO)).replace("\"name\": \"Quillan Tarrowby\"", "\"name\": \"山田\"");
        Path file = Files.writeString(folder.resolve("day.json"), show);
        assertThat(run("sheet", file.toString(), "--kind", "running", "--out", out("a.pdf")))
                .isEqualTo(ExitCode.FINE);
        assertThat(caught.out()).contains("Warning: the fonts for paper lack", "山 (U+5C71)");
    }
}
