package crowdline.paper;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.sheet.page.Block;
import crowdline.sheet.page.Counting;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A card says nothing twice. */
class CueCardsTest {
    private static final String LOOK = "Watch the gap of daylight appear between the wheels and the grass.";

    private static List<String> blocks(Show show) throws NothingOnPaper {
        return Paper.of(SheetKind.CARDS, PaperShows.wanted(show, false), Counting.UNHEARD).pages().stream()
                .flatMap(page -> page.blocks().stream())
                .map(Block::name)
                .toList();
    }

    private static Show explained(String words) {
        Show show = PaperShows.of(1);
        Act act = show.acts().get(0);
        Figure f = act.figures().get(0);
        Figure looked = new Figure(
                f.id(),
                f.figure(),
                f.title(),
                LOOK,
                f.elements(),
                f.durationS(),
                f.exit(),
                f.minEntryKt(),
                f.asked(),
                f.transit(),
                f.quiets(),
                List.of(Remark.of("told", RemarkKind.EXPLANATION, words)));
        return show.withAct(act.withFigures(List.of(looked), List.of()));
    }

    @Test
    void whatToLookForIsLeftOutWhereARemarkSaysItInNearlyTheSameWords() throws NothingOnPaper {
        assertThat(blocks(explained("Watch the gap of daylight appear between the wheels and the ground.")))
                .contains("remark told")
                .doesNotContain("look");
        assertThat(blocks(explained("The wheels leave the grass first at the tail.")))
                .contains("remark told", "look");
    }

    @Test
    void whoFliesWhatIsNotNamedAgainUnderATitleThatNamesThem() throws NothingOnPaper {
        Show show = PaperShows.of(1);
        Act act = show.acts().get(0);
        String performer = show.performer(act.performer()).orElseThrow().name();
        String aircraft = show.aircraft(act.airframe()).orElseThrow().name();
        long other = abouts(show.withAct(act.withTitle("The opening")));
        long named = abouts(show.withAct(act.withTitle(performer + ", " + aircraft)));
        assertThat(other - named).isEqualTo(2);
    }

    private static long abouts(Show show) throws NothingOnPaper {
        return blocks(show).stream().filter("about"::equals).count();
    }
}
