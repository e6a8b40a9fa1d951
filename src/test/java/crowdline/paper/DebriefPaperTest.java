package crowdline.paper;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.debrief.Debrief;
import crowdline.measure.Measures;
import crowdline.sheet.day.DayBeside;
import crowdline.sheet.day.OtherDay;
import crowdline.sheet.page.Pages;
import crowdline.show.Show;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class DebriefPaperTest {
    /** Last year's day, of which two lines were damaged, and which knew one of the acts. */
    @Test
    void anotherDayStandsBesideTheDebriefWithWhatCannotBeCompared() throws NothingOnPaper {
        Debrief debrief = PaperShows.debrief();
        String lacks = "2 lines of its journal cannot be read. " + PaperShows.LONG_WORD;
        Debrief then = new Debrief(
                debrief.showTitle(),
                debrief.runs().subList(0, 1),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                debrief.day());
        OtherDay other = new OtherDay("12 June 2026", then, second -> LocalTime.of(11, 0), List.of(lacks));
        Show show = PaperShows.withATransit();
        Pages alone = PaperTest.pages(SheetKind.DEBRIEF, debrief(show, debrief, null));
        Pages both = PaperTest.pages(SheetKind.DEBRIEF, debrief(show, debrief, other));
        assertThat(PaperTest.wrongOn(SheetKind.DEBRIEF, both)).isEmpty();
        assertThat(PaperTest.said(PaperTest.blocks(alone), "beside")).isEmpty();
        assertThat(PaperTest.said(PaperTest.blocks(both), "beside"))
                .startsWith(lacks.replaceAll("\\s", "") + "Inbrackets:12June2026.")
                .contains("12June2026:began11:00,");
        long compared = debrief.runs().stream()
                .filter(run -> DayBeside.isFlown(run, other))
                .count();
        assertThat(compared).isPositive();
        assertThat(charts(both) - charts(alone))
                .as("a chart for each act that both days have")
                .isEqualTo(compared);
    }

    private static long charts(Pages pages) {
        return PaperTest.blocks(pages).stream()
                .filter(b -> b.name().equals("chart"))
                .count();
    }

    private static Wanted debrief(Show show, Debrief debrief, @Nullable OtherDay other) {
        return new Wanted(
                PaperShows.loaded(show),
                show.acts(),
                act -> act.variants().get(0),
                false,
                false,
                new Wanted.Flown(debrief, second -> LocalTime.NOON, other),
                Measures.USUAL);
    }
}
