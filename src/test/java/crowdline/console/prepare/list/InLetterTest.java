package crowdline.console.prepare.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.ListReader;
import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class InLetterTest {
    private static FigureList read(String letter) {
        return new ListReader(CatalogueFile.shipped()).read(letter);
    }

    private static InLetter.Span span(InLetter in, int key) {
        return Objects.requireNonNull(in.spans().get(key));
    }

    private static String found(String letter, InLetter in, int key) {
        InLetter.Span span = span(in, key);
        return letter.substring(span.from(), span.to());
    }

    @Test
    void eachPieceStandsWhereItIsWrittenAndASecondOneBehindTheFirst() {
        String letter = "Hi Bob, no loop was ever rounder.\n\n1. Loop at\n   600 ft\n2. slow roll\n3. Loop\n";
        FigureList list = read(letter);
        assertThat(list.lines()).hasSize(3);
        InLetter in = InLetter.of(letter, list);
        assertThat(found(letter, in, 0)).contains("Loop at").doesNotContain("slow");
        assertThat(found(letter, in, 1)).contains("slow roll");
        assertThat(found(letter, in, 2)).endsWith("Loop");
        assertThat(span(in, 2).to()).isEqualTo(letter.length() - 1);
        assertThat(found(letter, in, -1)).startsWith("Hi Bob");
    }

    /** The order in which they are flown is another than the order in which they are written. */
    @Test
    void aSecondThoughtIsFoundBelow() {
        String letter = "loop\nslow roll\nspin\n\nPS: insert a tail slide between the loop and the slow roll.";
        FigureList list = read(letter);
        assertThat(list.lines())
                .extracting(ListLine::figure)
                .containsExactly("loop", "tail slide", "slow roll", "spin");
        InLetter in = InLetter.of(letter, list);
        assertThat(span(in, 1).from()).isGreaterThan(letter.indexOf("PS"));
        assertThat(span(in, 0).from()).isZero();
        assertThat(span(in, 2).from()).isEqualTo(letter.indexOf("slow roll"));
    }

    /** "A spin, two turns" and what is said of it elsewhere may be read as one. */
    @Test
    void ofAPieceThatStandsInTwoPlacesOneIsFound() {
        String letter = "First a spin, two turns, perhaps more. After the spin a pause.";
        FigureList list = new FigureList(
                List.of(ListLine.of("a spin, two turns After the spin a pause", "spin", "spin", null, true, List.of())),
                List.of(),
                List.of());
        assertThat(found(letter, InLetter.of(letter, list), 0)).isEqualTo("a spin, two turns");
    }

    @Test
    void noPieceIsFoundInsideAWord() {
        InLetter in = InLetter.of("inlooped, loop", read("loop"));
        assertThat(in.spans().get(0)).isEqualTo(new InLetter.Span(10, 14));
    }

    @Test
    void thePieceAtALetterIsTheShortestThere() {
        InLetter in = new InLetter(
                Map.of(0, new InLetter.Span(0, 20), 1, new InLetter.Span(5, 9), -1, new InLetter.Span(30, 33)));
        assertThat(in.at(6)).hasValue(1);
        assertThat(in.at(12)).hasValue(0);
        assertThat(in.at(31)).hasValue(-1);
        assertThat(in.at(25)).isEmpty();
    }

    @Test
    void whatStandsNowhereHasNoPlace() {
        assertThat(InLetter.of("", read("loop, spin")).spans()).isEmpty();
        assertThat(InLetter.of("loop", new FigureList(List.of(), List.of(), List.of()))
                        .spans())
                .isEmpty();
    }
}
