package crowdline.paper;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a pilot wrote, on the pilot's own sheet. */
class PilotsLineTest {
    @Test
    void thePilotReadsTheOwnLineBesideOursAndWhatOfItIsNotDrawn() throws NothingOnPaper {
        Show demo = PaperShows.demo();
        Act act = demo.acts().get(0);
        List<Figure> figures = new ArrayList<>(act.figures());
        Figure figure = figures.get(1);
        figures.set(1, figure.asking(Asked.plainly("3. my favourite,  upside down twice over")));
        Show told = demo.withAct(act.withFigures(figures, act.remarks()));
        String written = PaperTest.said(
                PaperTest.blocks(PaperTest.pages(SheetKind.PILOT, PaperShows.wanted(told, false))), "written");
        assertThat(written).isEqualTo("Youwrote:“3.myfavourite,upsidedowntwiceover”Wedrawitwithout“upsidedown”.");
    }

    @Test
    void aNumberThatIsNotKeptStandsBesideWhatIsFlown() throws NothingOnPaper {
        Show demo = PaperShows.demo();
        Act act = demo.acts().get(0);
        List<Figure> figures = new ArrayList<>(act.figures());
        figures.set(1, figures.get(1).asking(Asked.plainly("as I like it").withKt(23.0)));
        Show told = demo.withAct(act.withFigures(figures, act.remarks()));
        assertThat(PaperTest.said(
                        PaperTest.blocks(PaperTest.pages(SheetKind.PILOT, PaperShows.wanted(told, false))), "value"))
                .containsPattern("beginsat23kt,told;ours\\d+kt");
    }
}
