package crowdline.console.glossary;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.glossary.GlossaryView.EntryView;
import crowdline.storage.show.CatalogueFile;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class DrillTest {
    private static final List<EntryView> ENTRIES =
            GlossaryView.drawn(CatalogueFile.shipped(), List.of()).entries();

    private final Drill drill = new Drill(ENTRIES, 7);

    /** The one name among the four whose figure is drawn so. */
    private String answer() {
        List<String> fitting = ENTRIES.stream()
                .filter(e -> e.flown().equals(drill.view().flown()))
                .map(EntryView::name)
                .filter(drill.view().names()::contains)
                .toList();
        assertThat(fitting).hasSize(1);
        return fitting.get(0);
    }

    private void answer(boolean rightly) {
        List<String> names = drill.view().names();
        int right = names.indexOf(answer());
        drill.choose(rightly ? right : (right + 1) % names.size());
    }

    @Test
    void fourNamesStandThereAndTheRightOneIsAmongThem() {
        for (int i = 0; i < 60; i++) {
            assertThat(drill.view().names()).hasSize(4).doesNotHaveDuplicates().contains(answer());
            drill.next();
        }
    }

    @Test
    void sameSeedAsksTheSameQuestions() {
        Drill again = new Drill(ENTRIES, 7);
        for (int i = 0; i < 10; i++) {
            assertThat(again.view()).isEqualTo(drill.view());
            again.next();
            drill.next();
        }
    }

    @Test
    void figureMissedComesBackAfterThreeOthersAndOneKnownDoesNot() {
        String missed = answer();
        answer(false);
        List<String> after = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            drill.next();
            after.add(answer());
            answer(true);
        }
        assertThat(after.subList(0, 3)).doesNotContain(missed);
        assertThat(after.get(3)).isEqualTo(missed);
        assertThat(drill.view().score()).isEqualTo("4 of 5 right");
    }

    @Test
    void nothingIsAskedTwiceBeforeEverythingWasAskedOnce() {
        List<String> asked = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            asked.add(answer());
            answer(true);
            drill.next();
        }
        assertThat(new HashSet<>(asked)).hasSize(20);
    }

    @Test
    void figuresWithTheSameDrawingAreNeverSetAgainstEachOther() {
        // From the side a loop and one with a flick at its top are one circle.
        for (int i = 0; i < 200; i++) {
            if (answer().equals("loop")) {
                assertThat(drill.view().names()).doesNotContain("avalanche", "loop with a roll on top");
            }
            drill.next();
        }
    }

    @Test
    void levelRollsAreNotAskedAboutForTheyAreLines() {
        for (int i = 0; i < 100; i++) {
            assertThat(answer()).isNotIn("slow roll", "aileron roll", "low pass");
            drill.next();
        }
    }

    @Test
    void keyPressedAfterTheAnswerGoesOn() {
        answer(true);
        assertThat(drill.view().verdict()).isNotNull();
        drill.choose(0);
        assertThat(drill.view().verdict()).isNull();
    }

    @Test
    void withoutDrawingsItSaysSo() {
        Drill none =
                new Drill(GlossaryView.of(CatalogueFile.shipped(), List.of()).entries(), 1);
        assertThat(none.possible()).isFalse();
        assertThat(none.view().score()).contains("still being drawn");
    }
}
