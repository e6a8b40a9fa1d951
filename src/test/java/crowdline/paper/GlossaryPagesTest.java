package crowdline.paper;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.sheet.ink.Ink;
import crowdline.sheet.page.Counting;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class GlossaryPagesTest {
    /** Its label and its words would be torn apart. */
    @Test
    void noSectionIsSplitBetweenTwoPages() throws NothingOnPaper {
        Wanted wanted = PaperShows.wanted(PaperShows.demo(), false);
        Set<String> labels = Paper.of(SheetKind.GLOSSARY, wanted, Counting.UNHEARD).pages().stream()
                .flatMap(page -> page.blocks().stream())
                .filter(block -> block.name().equals("label"))
                .map(block -> block.inks().stream()
                        .filter(Ink.Words.class::isInstance)
                        .map(ink -> ((Ink.Words) ink).text())
                        .collect(Collectors.joining(" ")))
                .collect(Collectors.toSet());
        assertThat(labels)
                .containsExactlyInAnyOrder(
                        "Why it is hard", "Hands and feet", "What the pilot feels", "Easily mixed up with");
    }
}
