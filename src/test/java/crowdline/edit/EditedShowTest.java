package crowdline.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.arrange.ShowArranging;
import crowdline.show.Show;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class EditedShowTest {
    private static final Show FIRST =
            ShowArranging.empty("Day 0", LocalDate.of(2026, 5, 2), ZoneId.of("Europe/London"), null);

    private static Show day(int number) {
        return FIRST.called("Day " + number, FIRST.date());
    }

    private static Change to(int number) {
        return Change.of("Go to " + number, day(number));
    }

    @Test
    void everyStepGoesByTheNameOfItsChangeBackAndForth() {
        EditedShow edited = EditedShow.opened(FIRST).changed(to(1)).changed(to(2));
        assertThat(edited.undoName()).contains("Go to 2");
        assertThat(edited.redoName()).isEmpty();
        edited = edited.undone();
        assertThat(edited.now()).isEqualTo(day(1));
        assertThat(edited.undoName()).contains("Go to 1");
        assertThat(edited.redoName()).contains("Go to 2");
        edited = edited.undone();
        assertThat(edited.undoName()).isEmpty();
        assertThat(edited.redoName()).contains("Go to 1");
        assertThat(edited.undone()).isSameAs(edited);
        edited = edited.redone().redone();
        assertThat(edited.now()).isEqualTo(day(2));
        assertThat(edited.undoName()).contains("Go to 2");
        assertThat(edited.redone()).isSameAs(edited);
    }

    @Test
    void whatChangesNothingIsNoStep() {
        EditedShow edited = EditedShow.opened(FIRST);
        assertThat(edited.changed(to(0))).isSameAs(edited);
        assertThat(edited.isUnsaved()).isFalse();
    }

    @Test
    void changesAboutTheSameThingAreOneStepUntilSomethingElseHappens() {
        EditedShow edited = EditedShow.opened(FIRST)
                .changed(new Change("Type", day(1), "title"))
                .changed(new Change("Type", day(2), "title"));
        assertThat(edited.past()).hasSize(1);
        assertThat(edited.undone().now()).isEqualTo(FIRST);
        EditedShow more = edited.saved(edited.now()).changed(new Change("Type", day(3), "title"));
        assertThat(more.past()).hasSize(2);
        assertThat(edited.undone()
                        .redone()
                        .changed(new Change("Type", day(3), "title"))
                        .past())
                .hasSize(2);
        assertThat(edited.changed(new Change("Date", day(3), "date")).past()).hasSize(2);
        assertThat(edited.changed(Change.of("Type", day(3)))
                        .changed(Change.of("Type", day(4)))
                        .past())
                .hasSize(3);
    }

    @Test
    void aChangeAfterAStepBackLeavesNothingToMakeAgain() {
        EditedShow edited = EditedShow.opened(FIRST).changed(to(1)).undone().changed(to(2));
        assertThat(edited.redoName()).isEmpty();
        assertThat(edited.undone().now()).isEqualTo(FIRST);
    }

    @Test
    void aSaveKeepsTheStepsAndWhatWasDoneMeanwhile() {
        EditedShow edited =
                EditedShow.opened(FIRST).changed(to(1)).changed(to(2)).saved(day(1));
        assertThat(edited.isUnsaved()).isTrue();
        assertThat(edited.undone().isUnsaved()).isFalse();
        assertThat(edited.undone().undone().isUnsaved()).isTrue();
    }

    @Test
    void stepsAreKeptUpToALimit() {
        EditedShow edited = EditedShow.opened(FIRST);
        for (int i = 1; i <= EditedShow.MOST_STEPS + 20; i++) {
            edited = edited.changed(to(i));
        }
        assertThat(edited.past()).hasSize(EditedShow.MOST_STEPS);
        for (int i = 0; i < EditedShow.MOST_STEPS + 20; i++) {
            edited = edited.undone();
        }
        assertThat(edited.now()).isEqualTo(day(20));
    }

    @Test
    void anyWalkBackAndForthShowsWhatAListOfShowsWould() {
        Random random = new Random(5);
        for (int round = 0; round < 50; round++) {
            List<Integer> line = new ArrayList<>(List.of(0));
            int at = 0;
            EditedShow edited = EditedShow.opened(FIRST);
            for (int i = 1; i < 80; i++) {
                int what = random.nextInt(4);
                if (what == 0 && at > 0) {
                    at--;
                    edited = edited.undone();
                } else if (what == 1 && at < line.size() - 1) {
                    at++;
                    edited = edited.redone();
                } else {
                    line.subList(at + 1, line.size()).clear();
                    line.add(i);
                    at++;
                    edited = edited.changed(to(i));
                }
                assertThat(edited.now()).as("round %s", round).isEqualTo(day(line.get(at)));
                assertThat(edited.undoName().isPresent()).isEqualTo(at > 0);
                if (at > 0) {
                    assertThat(edited.undoName()).contains("Go to " + line.get(at));
                }
            }
        }
    }

    @Test
    void aChangeWithoutANameIsRefused() {
        assertThatThrownBy(() -> Change.of(" ", FIRST)).hasMessageContaining("needs a name");
    }
}
