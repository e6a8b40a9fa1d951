package crowdline.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.loaded.LoadedShow;
import crowdline.practice.Change.Kind;
import crowdline.show.Act;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** One thing is changed, one of the sentences says it, and none of the others is true. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WhatChangedTest {
    private final LoadedShow show;
    private final Act act;

    WhatChangedTest() throws ShowFileException {
        show = PracticeShows.loaded("wrackenholt-evening");
        act = show.show().act("quickthorn-solo").orElseThrow();
    }

    private WhatChanged of(long seed) throws CannotPractise {
        return WhatChanged.of(
                show.show(), CatalogueFile.shipped(), act, act.variants().get(0), seed);
    }

    @Test
    void whatIsRightIsWhatIsFlown() throws CannotPractise {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        for (long seed = 1; kinds.size() < 3 && seed <= 40; seed++) {
            WhatChanged asked = of(seed);
            List<Change> changes = asked.flight().changes().stream()
                    .filter(c -> c.kind().breaksThePlan())
                    .toList();
            assertThat(changes).hasSize(1);
            Change change = changes.get(0);
            kinds.add(change.kind());
            String right = asked.choices().get(asked.right());
            switch (change.kind()) {
                case DROPPED -> assertThat(right).endsWith(change.name() + " is left out");
                case SWAPPED -> assertThat(right).endsWith("change places").containsIgnoringCase(change.name());
                default -> assertThat(right).contains(change.name()).endsWith("not in the plan");
            }
            assertThat(asked.choices()).hasSize(4).doesNotHaveDuplicates();
            asked.choices().stream().filter(c -> !c.equals(right)).forEach(wrong -> isFalse(wrong, asked));
        }
        assertThat(kinds).containsExactlyInAnyOrder(Kind.DROPPED, Kind.SWAPPED, Kind.UNPLANNED);
    }

    private static void isFalse(String wrong, WhatChanged asked) {
        PracticeFlight flight = asked.flight();
        List<String> flown = flight.pieces().stream().map(Piece::name).toList();
        if (wrong.endsWith("is left out")) {
            assertThat(flown).anyMatch(name -> wrong.equalsIgnoreCase(PracticeWords.the(name) + " is left out"));
        } else if (wrong.endsWith("not in the plan")) {
            assertThat(flown)
                    .noneMatch(name ->
                            wrong.equalsIgnoreCase(PracticeWords.the(name) + " is flown, which is not in the plan"));
        } else {
            List<String> figures = flight.pieces().stream()
                    .filter(p -> p.kind() == Piece.Kind.FIGURE)
                    .map(p -> PracticeWords.the(p.name()))
                    .toList();
            assertThat(wrong).endsWith("change places");
            assertThat(figures.stream()
                            .skip(1)
                            .map(second ->
                                    figures.get(figures.indexOf(second) - 1) + " and " + second + " change places"))
                    .as("flown one after the other as planned")
                    .anyMatch(wrong::equalsIgnoreCase);
        }
    }

    @Test
    void theSameSeedAsksTheSame() throws CannotPractise {
        assertThat(of(3).choices()).isEqualTo(of(3).choices());
        assertThat(of(3).plan()).contains("tail slide").doesNotContain("running in");
    }

    @Test
    void whatIsOnlyTimedCannotBeAskedAbout() {
        Act timed = show.show().acts().stream()
                .filter(a -> !a.id().equals(act.id()))
                .findFirst()
                .orElseThrow();
        Act none = timed.flown(null, List.of(), timed.variants());
        assertThatThrownBy(() -> WhatChanged.of(
                        show.show(),
                        CatalogueFile.shipped(),
                        none,
                        none.variants().get(0),
                        1))
                .isInstanceOf(CannotPractise.class);
    }
}
