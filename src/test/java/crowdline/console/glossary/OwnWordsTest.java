package crowdline.console.glossary;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.edit.Editing;
import crowdline.console.keys.Command;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.show.Show;
import crowdline.show.Term;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.clue.WhatIsThat;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import crowdline.storage.show.TermsFile;
import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a show explains in its own words, written in the Glossary by its commands. */
class OwnWordsTest {
    private final Editing editing = new Editing();
    private final GlossaryPlace place = new GlossaryPlace(new Appearance(Themes.DAY, Zoom.NONE), editing, () -> {});
    private final List<Mark> said = new ArrayList<>();

    @BeforeEach
    void open() throws Exception {
        Show show = Objects.requireNonNull(new ShowFile()
                        .read(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"))
                        .show())
                .withGlossary(List.of(), List.of());
        place.serve(() -> 0, GlossaryHost.NONE, said::add);
        place.component().setSize(1000, 700);
        place.component().setVisible(true);
        editing.open("fenmarsh.json", show);
        place.show(GlossaryView.of(CatalogueFile.shipped(), TermsFile.shipped()));
        place.ifMade(g -> {});
    }

    private void give(Command command) {
        assertThat(place.possible()).contains(command);
        place.commands().carryOut(command);
    }

    private void write(String label, String text) {
        place.ifMade(g -> box(g, label).setText(text));
    }

    private static JTextArea box(Container in, String label) {
        return Objects.requireNonNull(found(in, label), label);
    }

    private static @Nullable JTextArea found(Container in, String label) {
        for (Component each : in.getComponents()) {
            if (each instanceof JTextArea area
                    && label.equals(area.getAccessibleContext().getAccessibleName())
                    && area.isEditable()) {
                return area;
            }
            JTextArea inner = each instanceof Container container ? found(container, label) : null;
            if (inner != null) {
                return inner;
            }
        }
        return null;
    }

    private String page() {
        String[] name = {""};
        place.ifMade(g -> name[0] = Objects.requireNonNull(g.shown()).name());
        return name[0];
    }

    private boolean isWriting() {
        boolean[] writing = {false};
        place.ifMade(g -> writing[0] = g.isWriting());
        return writing[0];
    }

    @Test
    void newWordIsKeptFoundAndTakenBackByItsName() {
        give(Command.NEW_WORD);
        assertThat(isWriting()).isTrue();
        write("What it is called", "crash gate");
        write("What it is", "A gate kept free\nfor fire engines.");
        give(Command.KEEP_WORDS);
        assertThat(isWriting()).isFalse();
        assertThat(editing.now().terms()).containsExactly(Term.own("crash gate", "A gate kept free for fire engines."));
        assertThat(page()).isEqualTo("crash gate");
        assertThat(editing.undoName()).contains("Explain crash gate");
        editing.undo();
        assertThat(editing.now().terms()).isEmpty();
    }

    @Test
    void whatIsMissingIsSaidAndNothingIsLost() {
        give(Command.NEW_WORD);
        write("What it is called", "crash gate");
        give(Command.KEEP_WORDS);
        assertThat(isWriting()).isTrue();
        assertThat(editing.now().terms()).isEmpty();
        place.ifMade(g -> assertThat(box(g, "What it is called").getText()).isEqualTo("crash gate"));
    }

    @Test
    void figureIsExplainedInOwnWordsAndFlownAsBefore() {
        place.ifMade(g -> g.choose("stall turn"));
        give(Command.OWN_WORDS);
        write("Look for", "Count how long it stands still.");
        give(Command.KEEP_WORDS);
        CatalogueEntry own = editing.now().figures().get(0);
        CatalogueEntry shipped = CatalogueFile.shipped().find("stall turn").orElseThrow();
        assertThat(own.lookFor()).isEqualTo("Count how long it stands still.");
        assertThat(own.whatItIs()).isEqualTo(shipped.whatItIs());
        assertThat(own.elements()).isEqualTo(shipped.elements());
        place.ifMade(g -> assertThat(Objects.requireNonNull(g.shown()).lead()).isEqualTo(own.lookFor()));
    }

    @Test
    void ownWordsOverTheProgramsAreTakenAwayAgain() {
        place.ifMade(g -> g.choose("aileron"));
        assertThat(place.possible()).doesNotContain(Command.NOT_OWN);
        give(Command.OWN_WORDS);
        write("What it is", "A flap at the end of the wing.");
        give(Command.KEEP_WORDS);
        assertThat(editing.now().terms()).extracting(Term::whatItIs).containsExactly("A flap at the end of the wing.");
        give(Command.NOT_OWN);
        assertThat(editing.now().terms()).isEmpty();
        assertThat(page()).isEqualTo("aileron");
    }

    @Test
    void wordOfARemarkOpensItsPageOrTheFormForIt() {
        int[] back = {0};
        place.write("stall turns", () -> back[0]++);
        assertThat(isWriting()).isTrue();
        place.ifMade(g -> assertThat(box(g, "What it is called").getText()).isEqualTo("stall turns"));
        assertThat(back[0]).isZero();
        place.ifMade(GlossaryPanel::leaveForm);
        assertThat(back[0]).as("goes on writing the remark").isEqualTo(1);
        give(Command.OWN_WORDS);
        place.ifMade(GlossaryPanel::leaveForm);
        assertThat(back[0]).as("came from nowhere else this time").isEqualTo(1);
        place.write("Loop", () -> {});
        assertThat(isWriting()).isFalse();
        assertThat(page()).isEqualTo("loop");
    }

    @Test
    void whoeverAsksIsToldThatOtherThingsCanBeDone() {
        int[] told = {0};
        place.onChange(() -> told[0]++);
        place.ifMade(g -> g.choose("loop"));
        assertThat(told[0]).isEqualTo(1);
        give(Command.NEW_WORD);
        assertThat(told[0]).isEqualTo(2);
        place.ifMade(GlossaryPanel::leaveForm);
        assertThat(told[0]).isEqualTo(3);
    }

    @Test
    void whileOneWritesNoOtherPageIsOpenedAndWithoutAShowNothingIsWritten() {
        give(Command.NEW_WORD);
        assertThat(place.possible())
                .contains(Command.KEEP_WORDS)
                .doesNotContain(Command.DRILL, Command.OWN_WORDS, Command.PAGE_1, Command.FLY);
        place.ifMade(GlossaryPanel::leaveForm);
        editing.close();
        assertThat(place.possible()).doesNotContain(Command.NEW_WORD, Command.OWN_WORDS, Command.NOT_OWN);
    }

    @Test
    void whatWasSeenIsAskedForAndItsPageOpens() {
        CatalogueEntry loop = CatalogueFile.shipped().find("loop").orElseThrow();
        CatalogueEntry hover = CatalogueFile.shipped().find("hover").orElseThrow();
        CatalogueEntry jump = CatalogueFile.shipped().find("jump").orElseThrow();
        place.serve(
                () -> 0,
                new GlossaryHost() {
                    @Override
                    public void ask(Consumer<WhatIsThat> done) {
                        done.accept(WhatIsThat.of(List.of(loop, hover, jump), entry -> List.of()));
                    }
                },
                said::add);
        // A panel made from now on asks this one.
        give(Command.ASK);
        assertThat(place.possible())
                .contains(Command.DRILL_1, Command.DRILL_3, Command.NOT_SURE, Command.ASK_BACK, Command.ASK)
                .doesNotContain(Command.DRILL_4, Command.DRILL, Command.OWN_WORDS, Command.FLY);
        give(Command.NOT_SURE);
        give(Command.ASK_BACK);
        give(Command.DRILL_2);
        assertThat(place.possible()).contains(Command.DRILL_1).doesNotContain(Command.DRILL_2);
        give(Command.DRILL_1);
        assertThat(page()).isEqualTo("hover");
        assertThat(place.possible()).doesNotContain(Command.DRILL_1, Command.NOT_SURE);
    }
}
