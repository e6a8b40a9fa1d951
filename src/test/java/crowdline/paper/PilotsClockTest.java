package crowdline.paper;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.draft.Drafted;
import crowdline.sheet.ink.Ink;
import crowdline.sheet.page.Counting;
import crowdline.sheet.page.Pages;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The run-in and the clock of a list stand on the pilot's sheet as they were told, and nobody asks for them again. */
class PilotsClockTest {
    private static final String LIST =
            "0:00 run in from the right, 300 ft, 150 kts\n0:15 half Cuban\n0:40 loop\n1:05 stall turn\n1:40 slow roll";

    private static Pages pages(SheetKind kind) throws NothingOnPaper {
        Wanted wanted = PaperShows.wanted(
                Drafted.arranged(Drafted.empty(), "aerobatic two-seater", "Ada Quillan", LIST)
                        .show(),
                false);
        return Paper.of(kind, wanted, Counting.UNHEARD);
    }

    /** What stands in the rows of the figures and their numbers, in order. */
    private static List<String> said(SheetKind kind) throws NothingOnPaper {
        return pages(kind).pages().stream()
                .flatMap(page -> page.blocks().stream())
                .map(block -> String.join(
                        " ",
                        block.inks().stream()
                                .filter(Ink.Words.class::isInstance)
                                .map(ink -> Objects.requireNonNull(((Ink.Words) ink).text()))
                                .toList()))
                .toList();
    }

    private static String between(List<String> all, String from, String to) {
        int at = all.indexOf(from);
        assertThat(at).as(from + " in " + all).isNotNegative();
        List<String> after = all.subList(at + 1, all.size());
        return String.join(" | ", after.subList(0, after.indexOf(to)));
    }

    @Test
    void theRunInHasItsHeightAndItsSpeed() throws Exception {
        assertThat(between(said(SheetKind.PILOT), "run-in", "half Cuban"))
                .contains("begins at 300 ft, told", "begins at 150 kt, told", "begins at 0:00, told");
    }

    @Test
    void theFigureItLeadsToBeginsAsTold() throws Exception {
        assertThat(between(said(SheetKind.PILOT), "half Cuban", "loop"))
                .contains("begins at 0:15, told", "begins at 150 kt, told");
        assertThat(said(SheetKind.QUESTIONS)).noneMatch(s -> s.contains("How fast do you begin the half Cuban"));
        assertThat(said(SheetKind.QUESTIONS)).anyMatch(s -> s.contains("How fast do you begin the loop"));
    }

    @Test
    void howLongItTakesIsNotToldByWhenItBegins() throws Exception {
        assertThat(between(said(SheetKind.PILOT), "loop", "stall turn"))
                .contains("begins at 0:40, told", " s, assumed");
    }
}
