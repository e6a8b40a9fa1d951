package crowdline.console.glossary;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.glossary.drill.Memory;
import crowdline.glossary.drill.Session;
import crowdline.storage.show.CatalogueFile;
import java.lang.reflect.InvocationTargetException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

class DrillTest {
    private static final GlossaryView DRAWN = GlossaryView.drawn(CatalogueFile.shipped(), List.of());

    private static Drill drill(GlossaryView view) {
        return new Drill(new Session(view.questions(), Set.of(), Map.of(), 1, 7, (figure, memory) -> {}), "");
    }

    private static Drill at(String begin) {
        Drill drill = drill(DRAWN);
        for (int i = 0; i < 60 && !drill.view().asks().startsWith(begin); i++) {
            drill.next();
        }
        assertThat(drill.view().asks()).startsWith(begin);
        return drill;
    }

    /** Before anything is answered nothing is counted. */
    @Test
    void nothingIsCountedBeforeTheFirstAnswer() {
        Drill drill = drill(DRAWN);
        assertThat(drill.view().score()).startsWith("Due today: ");
        assertThat(at("Which of the two").view().keys()).startsWith("1 or 2 answer, ");
    }

    @Test
    void keyPressedAfterTheAnswerGoesOn() {
        Drill drill = at("Which of the two");
        assertThat(drill.view().text()).isEmpty();
        drill.choose(0);
        assertThat(drill.view().verdict()).isNotNull();
        assertThat(drill.view().text()).isNotBlank();
        assertThat(drill.view().score()).contains("of 1 right");
        drill.choose(0);
        assertThat(drill.view().verdict()).isNull();
    }

    @Test
    void oneExplainsAloudBeforeTheTextIsShownAndJudgesOneself() {
        Drill drill = at("Say aloud");
        assertThat(drill.view().choices()).isEmpty();
        assertThat(drill.view().text()).isEmpty();
        drill.choose(0);
        assertThat(drill.view().verdict()).isNull();
        drill.next();
        assertThat(drill.view().text()).isNotBlank();
        assertThat(drill.view().choices()).hasSize(3);
        drill.choose(0);
        assertThat(drill.view().verdict()).isNotNull();
        assertThat(drill.view().score()).startsWith("1 of 1 right");
    }

    @Test
    void aNameIsWrittenAndForgivenItsSpelling() {
        Drill drill = at("Which figure is this? Write");
        assertThat(drill.view().writes()).isTrue();
        assertThat(drill.view().choices()).as("nothing tells it").isEmpty();
        drill.choose(0);
        assertThat(drill.view().verdict()).as("a digit is no answer").isNull();

        drill.write("no such thing at all");
        String verdict = Objects.requireNonNull(drill.view().verdict()).word();
        String right = verdict.replace("The answer: ", "").replace(". It will come up again.", "");
        assertThat(drill.view().score()).startsWith("0 of 1 right");
        assertThat(drill.view().writes()).isFalse();

        Drill again = at("Which figure is this? Write");
        // Of "bow" or "tow" no letter can be missing: it would be another word.
        again.write(right.length() > 3 ? right.substring(0, 1) + right.substring(2) : right);
        assertThat(again.view().score()).as(right).startsWith("1 of 1 right");
    }

    @Test
    void withoutFiguresItSaysSo() {
        Drill none = drill(GlossaryView.EMPTY);
        assertThat(none.view().text()).contains("still being flown");
        none.choose(0);
        none.next();
    }

    @Test
    void whileNothingIsFlownYetFiguresAreOnlyExplained() {
        assertThat(drill(GlossaryView.of(CatalogueFile.shipped(), List.of()))
                        .view()
                        .asks())
                .startsWith("Say aloud");
    }

    @Test
    void answersAreGivenToWhoeverKeepsThem() throws InterruptedException, InvocationTargetException {
        Map<String, Memory> kept = new HashMap<>();
        GlossaryHost host = new GlossaryHost() {
            @Override
            public Map<String, Memory> remembered() {
                return Map.of("loop", new Memory(2, 2.5, 6, 10));
            }

            @Override
            public void remember(String figure, Memory memory) {
                kept.put(figure, memory);
            }

            @Override
            public long today() {
                return 16;
            }
        };
        SwingUtilities.invokeAndWait(() -> {
            GlossaryPanel panel =
                    new GlossaryPanel(new Appearance(Themes.all().get(0), new Zoom(100)), host, () -> 0, () -> {});
            panel.show(DRAWN);
            // Until it is asked with names to choose from.
            for (long seed = 4; panel.answers() == 0; seed++) {
                if (panel.drilling()) {
                    panel.drill(seed);
                }
                panel.drill(seed);
            }
            panel.answer(0);
        });
        // The loop is what was due.
        assertThat(kept).containsOnlyKeys("loop");
        assertThat(kept.get("loop")).extracting(Memory::lastDay).isEqualTo(16L);
    }
}
