package crowdline.paper;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.draft.Drafted;
import crowdline.sheet.ink.Ink;
import crowdline.sheet.page.Area;
import crowdline.sheet.page.Block;
import crowdline.sheet.page.Counting;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each card of a figure has its drawing beside the name: as it is flown, or as it usually looks where it is only timed. */
class CardSketchTest {
    /** Edges and shapes at the end of a line may reach so far out of a drawing, points. */
    private static final double EDGE_PT = 6;

    private static List<Block> blocks(boolean large) throws NothingOnPaper {
        Wanted wanted = PaperShows.wanted(
                Drafted.arranged(
                                Drafted.empty(),
                                "aerobatic glider",
                                "Ada Quillan",
                                "tow\nrelease\nloop\nstall turn\nslow roll\nlanding")
                        .show(),
                large);
        return Paper.of(SheetKind.CARDS, wanted, Counting.UNHEARD).pages().stream()
                .flatMap(page -> page.blocks().stream())
                .toList();
    }

    private static Stream<Ink.Point> points(Ink ink) {
        if (ink instanceof Ink.Stroke stroke) {
            return stroke.points().stream();
        }
        if (ink instanceof Ink.Fill fill) {
            return fill.corners().stream();
        }
        return ink instanceof Ink.Disc disc ? Stream.of(new Ink.Point(disc.x(), disc.y())) : Stream.empty();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void whatIsOnlyTimedHasASketchAsWhatIsFlownHasItsWay(boolean large) throws NothingOnPaper {
        List<Block> blocks = blocks(large);
        List<Block> drawings =
                blocks.stream().filter(b -> b.name().equals("drawing")).toList();
        for (String name : List.of("tow", "loop", "stall turn", "landing")) {
            Block title = blocks.stream()
                    .filter(b -> b.name().equals("name") && words(b).equals(name))
                    .findFirst()
                    .orElseThrow();
            assertThat(drawings).as(name).anySatisfy(drawing -> {
                assertThat(drawing.area().y()).isEqualTo(title.area().y());
                assertThat(drawing.area().x())
                        .isBetween(
                                title.area().x() + title.area().width(),
                                title.area().x() + title.area().width() + 20);
                assertThat(drawing.inks()).hasSizeGreaterThan(10);
            });
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void noDrawingLeavesItsPlace(boolean large) throws NothingOnPaper {
        for (Block drawing : blocks(large)) {
            Area room = drawing.area().inset(-EDGE_PT);
            if (drawing.name().equals("drawing")) {
                assertThat(drawing.inks().stream().flatMap(CardSketchTest::points))
                        .isNotEmpty()
                        .allMatch(p -> p.x() >= room.x()
                                && p.x() <= room.x() + room.width()
                                && p.y() >= room.y()
                                && p.y() <= room.y() + room.height());
            }
        }
    }

    private static String words(Block block) {
        return String.join(
                " ",
                block.inks().stream()
                        .filter(Ink.Words.class::isInstance)
                        .map(ink -> ((Ink.Words) ink).text())
                        .toList());
    }
}
