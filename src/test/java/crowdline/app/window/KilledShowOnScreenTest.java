package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.Main;
import crowdline.app.command.CaughtTerminal;
import crowdline.app.shell.ExitCode;
import crowdline.paper.SheetKind;
import crowdline.show.Show;
import crowdline.storage.show.ShowFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledIf;
import org.junit.jupiter.api.io.TempDir;

/** An evening's work survives the program: made from nothing by keys in a process that is killed, found again and printed. */
@Tag("window")
@Timeout(300)
@DisabledIf("java.awt.GraphicsEnvironment#isHeadless")
class KilledShowOnScreenTest {
    private static final List<SheetKind> KINDS = List.of(
            SheetKind.CARDS,
            SheetKind.RUNNING,
            SheetKind.PILOT,
            SheetKind.GLOSSARY,
            SheetKind.INCIDENT,
            SheetKind.DEBRIEF);

    @TempDir
    Path folder;

    @Test
    void aShowMadeFromNothingIsFoundAfterAKillAndPrinted() throws Exception {
        assertThat(KilledChild.after(ShowMadeChild.READY, ShowMadeChild.class, folder))
                .isEqualTo(ShowMadeChild.READY);
        Path file = ShowMadeChild.file(folder);
        Show saved = Objects.requireNonNull(new ShowFile().read(file).show());
        assertThat(saved.acts()).hasSize(3);
        assertThat(ActsByKeys.flown(saved.acts().get(2))).doesNotContain("inverted pass");

        try (ConsoleOnScreen screen = new ConsoleOnScreen(folder, ShowMadeChild.HOUR)) {
            screen.await("what was not saved is offered", () -> screen.says("You had unsaved changes in"));
            screen.await("the answer has the keys", () -> screen.focusIs("Bring them back"));
            screen.give("ENTER");
            screen.awaitAlone();
            screen.await(
                    "everything is there",
                    () -> screen.acts() == 3
                            && ActsByKeys.flown(screen.edited().acts().get(2)).contains("inverted pass"));
            screen.give("ctrl S");
            screen.await(
                    "it is saved",
                    () -> screen.edited().equals(new ShowFile().read(file).show()));
            screen.give("F5");
            screen.await("an act can be flown", () -> screen.shows("Flying now"));
            screen.give("SPACE");
            screen.await("it is flown", () -> isInTheAir(screen));
            screen.give("E");
            screen.await("it is over", () -> !isInTheAir(screen));
            screen.give("F2");
            screen.give("ctrl P");
            screen.await("the preview is open", () -> screen.focusIs("Kind of paper"));
            for (SheetKind kind : KINDS) {
                print(screen, kind);
            }
            screen.give("ESCAPE");
            screen.awaitAlone();
        }
        for (SheetKind kind : KINDS) {
            check(kind, pdf("seen", kind));
            if (kind != SheetKind.DEBRIEF) {
                CaughtTerminal terminal = new CaughtTerminal();
                Path out = pdf("told", kind);
                int exit = Main.run(
                        new String[] {"sheet", file.toString(), "--kind", kind.word(), "--out", out.toString()},
                        terminal.terminal(),
                        (show, t) -> ExitCode.UNUSABLE);
                assertThat(exit).as(terminal.err()).isEqualTo(ExitCode.FINE);
                check(kind, out);
            }
        }
    }

    private static boolean isInTheAir(ConsoleOnScreen screen) {
        return screen.running().desk().snapshot().state().course().inTheAir();
    }

    private Path pdf(String by, SheetKind kind) {
        return folder.resolve(by + "-" + kind.word() + ".pdf");
    }

    private void print(ConsoleOnScreen screen, SheetKind kind) throws Exception {
        screen.give("HOME");
        for (int i = 0; i < List.of(SheetKind.values()).indexOf(kind); i++) {
            screen.give("DOWN");
        }
        screen.await(kind.title() + " can be saved", () -> screen.canPress("Save as PDF"));
        screen.give("ctrl S");
        screen.await("a file is asked for", () -> screen.focusIs("File Name"));
        screen.give("ctrl A");
        screen.type(pdf("seen", kind).toString());
        screen.give("ENTER");
        screen.awaitOpen(2);
        screen.await("it is saved", () -> screen.says("seen-" + kind.word() + ".pdf"));
        screen.await("the kinds have the keys again", () -> screen.focusIs("Kind of paper"));
    }

    private void check(SheetKind kind, Path pdf) throws IOException {
        assertThat(Files.size(pdf)).as(pdf.toString()).isPositive();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text)
                    .as(kind.title())
                    .contains(
                            switch (kind) {
                                case CARDS, INTERPRETER, RUNNING, PILOT, GLOSSARY, QUESTIONS -> "stall turn";
                                case INCIDENT -> "Ladies and gentlemen";
                                case DEBRIEF -> "Duties and thanks";
                            });
        }
    }
}
