package crowdline.paper;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.sheet.ink.Ink;
import crowdline.sheet.page.Counting;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.figure.Remark;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every remark of the first figure is the second speaker's. */
class WhoSaysItTest {
    private static Show show(boolean away) {
        Show show = PaperShows.of(2);
        Act act = show.acts().get(0);
        List<Remark> bens = act.figures().get(0).remarks().stream()
                .map(r -> r.saidBy("Ben"))
                .toList();
        return show.withAct(act.withFigures(
                        List.of(
                                act.figures().get(0).withRemarks(bens),
                                act.figures().get(1)),
                        act.remarks()))
                .withSpeakers(new Speakers(List.of(new Speaker("Ann", false), new Speaker("Ben", away))));
    }

    private static long named(SheetKind kind, boolean away) throws NothingOnPaper {
        return Paper.of(kind, PaperShows.wanted(show(away), false), Counting.UNHEARD).pages().stream()
                .flatMap(page -> page.blocks().stream())
                .filter(block -> block.inks().stream()
                        .anyMatch(ink ->
                                ink instanceof Ink.Words words && words.text().contains("Ben")))
                .count();
    }

    @ParameterizedTest
    @EnumSource(names = {"CARDS", "RUNNING"})
    void paperNamesTheOtherAndNobodyWhoIsAway(SheetKind kind) throws NothingOnPaper {
        assertThat(named(kind, false)).isEqualTo(2);
        assertThat(named(kind, true)).isZero();
    }
}
