package crowdline.paper;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.draft.Drafted;
import crowdline.measure.LengthUnit;
import crowdline.measure.Measures;
import crowdline.measure.SpeedUnit;
import crowdline.sheet.ink.Ink;
import crowdline.sheet.page.Counting;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PaperInUnitsTest {
    private static final String USUAL = "(?s).*\\d (kt|ft)\\b.*";

    private static List<String> words(SheetKind kind, Measures measures) throws NothingOnPaper {
        Wanted wanted = PaperShows.wanted(
                kind == SheetKind.QUESTIONS
                        ? Drafted.arranged(
                                        Drafted.empty(),
                                        "light aerobatic biplane",
                                        "Ada Quillan",
                                        "loop, spin 2 turns, slow roll")
                                .show()
                        : PaperShows.withATransit(),
                false);
        Wanted read = new Wanted(
                wanted.loaded(), wanted.acts(), wanted.chosen(), wanted.one(), wanted.large(), null, measures);
        return Paper.of(kind, read, Counting.UNHEARD).pages().stream()
                .flatMap(page -> page.blocks().stream())
                .map(block -> String.join(
                        " ",
                        block.inks().stream()
                                .filter(Ink.Words.class::isInstance)
                                .map(ink -> ((Ink.Words) ink).text())
                                .toList()))
                .toList();
    }

    @ParameterizedTest
    @EnumSource(names = {"RUNNING", "PILOT", "QUESTIONS"})
    void paperIsInTheUnitsItIsReadIn(SheetKind kind) throws NothingOnPaper {
        assertThat(words(kind, Measures.USUAL)).anyMatch(w -> w.matches(USUAL));
        assertThat(words(kind, new Measures(SpeedUnit.KMH, LengthUnit.METRES)))
                .anyMatch(w -> w.matches("(?s).*\\d (km/h|m)\\b.*"))
                .filteredOn(w -> w.matches(USUAL))
                .isEmpty();
    }
}
