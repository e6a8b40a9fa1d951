package crowdline.paper;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.draft.Drafted;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.FirstDraft;
import crowdline.list.ListReader;
import crowdline.sheet.page.Counting;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import crowdline.speech.pace.Pace;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Paper that is carried and read outside has no card, no page and no word that says nothing. */
@Tag("slow")
class FewerPagesTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();

    private static Show show() throws CannotBe {
        return new AddAct(CATALOGUE, new FirstDraft(CATALOGUE, Pace.DEFAULT, 0.5))
                .fromList(
                        new ListReader(CATALOGUE)
                                .read("loop\nstall turn\nhalf Cuban eight\nslow roll\nspin 2 turns\nlow pass"),
                        new AddAct.Wanted(
                                KindsFile.shipped().named("light aerobatic biplane"),
                                null,
                                "The evening solo",
                                "Ada Quillan",
                                LocalTime.NOON))
                .of(Drafted.empty())
                .show();
    }

    private static boolean isWay(Act act, PaperAct paper, int i) {
        return act.figure(paper.times().get(i).figureId())
                .filter(Figure::transit)
                .isPresent();
    }

    @Test
    void aWayOnWhichNothingIsSaidHasNoCardAndIsNotNext() throws NothingOnPaper, CannotBe {
        Show words = show();
        // Nothing is said on the first way.
        Act act = words.acts().get(0);
        List<Figure> silent = act.figures().stream()
                .map(f -> f.transit() ? f.withRemarks(List.of()) : f)
                .toList();
        Wanted wanted = PaperShows.wanted(words.withAct(act.withFigures(silent, act.remarks())), false);
        PaperAct paper = PaperAct.of(wanted, Counting.UNHEARD).get(0);
        List<Card> cards = CueCards.of(paper, wanted.type(), Counting.UNHEARD);
        List<String> names = cards.stream().map(Card::name).toList();
        int ways = 0;
        for (int i = 0; i < paper.times().size(); i++) {
            boolean isSilentWay = isWay(act, paper, i) && paper.said(i).isEmpty();
            ways += isSilentWay ? 1 : 0;
            if (!isWay(act, paper, i)) {
                assertThat(names).contains(paper.name(i));
            }
        }
        assertThat(ways).isPositive();
        assertThat(cards.stream().filter(card -> !card.next().isEmpty()).map(Card::next))
                .allSatisfy(next -> assertThat(names).contains(next));
        boolean hasSpare = names.contains("In hand");
        assertThat(cards).hasSize(1 + paper.times().size() - ways + (hasSpare ? 1 : 0));
    }

    @Test
    void thatAllOfItIsADraftIsSaidOnce() throws NothingOnPaper, CannotBe {
        Wanted wanted = PaperShows.wanted(show(), false);
        var blocks = PaperTest.blocks(PaperTest.pages(SheetKind.RUNNING, wanted));
        assertThat(PaperTest.said(blocks, "about")).contains("Allthatissaidisafirstdraft.");
        assertThat(blocks.stream().filter(b -> b.name().startsWith("kind ")))
                .isNotEmpty()
                .allSatisfy(
                        b -> assertThat(PaperTest.said(List.of(b), b.name())).doesNotContain("draft"));
    }

    @Test
    void whatWasGoneOverIsMarkedAmongDrafts() throws NothingOnPaper, CannotBe {
        Show words = show();
        Act act = words.acts().get(0);
        Figure loop = act.figures().stream()
                .filter(f -> f.figure().equals("loop"))
                .findFirst()
                .orElseThrow();
        List<Figure> figures = act.figures().stream()
                .map(f -> f.equals(loop)
                        ? f.withRemarks(f.remarks().stream()
                                .map(r -> r.withDraft(false))
                                .toList())
                        : f)
                .toList();
        Wanted wanted = PaperShows.wanted(words.withAct(act.withFigures(figures, act.remarks())), false);
        var blocks = PaperTest.blocks(PaperTest.pages(SheetKind.RUNNING, wanted));
        assertThat(PaperTest.said(blocks, "about")).contains("notmarked“goneover”isafirstdraft");
        assertThat(blocks.stream()
                        .filter(b -> b.name().startsWith("kind "))
                        .map(b -> PaperTest.said(List.of(b), b.name())))
                .anyMatch(kind -> kind.endsWith("goneover"));
    }
}
