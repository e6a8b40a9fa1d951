package crowdline.list.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class CorrectedTest {
    private static final FigureList LIST = new FigureList(
            List.of(line("loop"), line("spin"), line("loop")),
            List.of(new Aside("Hello", 0, List.of()), new Aside("the rolly one", 2, List.of("barrel roll"))),
            List.of());

    private static ListLine line(String figure) {
        return new ListLine(
                figure + " at 900 ft",
                figure,
                figure,
                2.0,
                null,
                null,
                null,
                900.0,
                null,
                null,
                null,
                null,
                null,
                false,
                List.of(figure));
    }

    private static List<String> flown(Corrected list) {
        return list.list().lines().stream().map(ListLine::title).toList();
    }

    @Test
    void aListNobodyCorrectedIsAsItWasRead() {
        Corrected read = Corrected.of(LIST);
        assertThat(read.keys()).containsExactly(-1, 0, 1, -2, 2);
        assertThat(read.list()).isEqualTo(LIST);
        assertThat(read.line(-1)).isNull();
        assertThat(read.text(-2)).isEqualTo("the rolly one");
    }

    /** What the line says of the figure is said of the other one as well. */
    @Test
    void aLineMeansWhatWasSaidAndKeepsWhatElseItTells() {
        ListLine now = Corrected.of(LIST)
                .with(1, new Meaning.Named("flat spin"))
                .list()
                .lines()
                .get(1);
        assertThat(now.figure()).isEqualTo("flat spin");
        assertThat(now.sure()).isTrue();
        assertThat(now.choices()).isEmpty();
        assertThat(now.count()).isEqualTo(2);
        assertThat(now.heightFt()).isEqualTo(900);
    }

    @Test
    void whatNoCatalogueHasIsTimedUnderItsWords() {
        Corrected own =
                Corrected.of(LIST).with(0, new Meaning.Own("the wobble")).with(-2, new Meaning.Own("the wave"));
        ListLine wobble = own.list().lines().get(0);
        assertThat(wobble.figure()).isNull();
        assertThat(wobble.heightFt()).isEqualTo(900);
        assertThat(flown(own)).containsExactly("the wobble", "spin", "the wave", "loop");
        assertThat(own.list().notes()).containsExactly("Hello");
    }

    @Test
    void aPieceIsLeftOutAndTakenInAgain() {
        Corrected out = Corrected.of(LIST).without(1);
        assertThat(out.isOut(1)).isTrue();
        assertThat(flown(out)).containsExactly("loop", "loop");
        assertThat(out.asRead(1).list()).isEqualTo(LIST);

        Corrected in = Corrected.of(LIST).with(-2, new Meaning.Named("barrel roll"));
        assertThat(flown(in)).containsExactly("loop", "spin", "barrel roll", "loop");
        assertThat(in.list().lines().get(2).sure()).isTrue();
        assertThat(in.without(-2).list()).isEqualTo(LIST);
    }

    @Test
    void aPieceIsMovedPastAnotherWithWhatIsLeftOutWhereItStood() {
        Corrected moved = Corrected.of(LIST).moved(1, 0);
        assertThat(flown(moved)).containsExactly("spin", "loop", "loop");
        assertThat(moved.list().asides()).extracting(Aside::before).containsExactly(0, 2);
        assertThat(moved.moved(1, 0).list()).isEqualTo(LIST);
        assertThat(flown(Corrected.of(LIST).moved(0, 2))).containsExactly("spin", "loop", "loop");
        assertThatThrownBy(() -> moved.moved(7, 0)).hasMessageContaining("no piece 7");
        assertThatThrownBy(() -> moved.moved(0, -9)).hasMessageContaining("no piece -9");
    }

    /** Whoever types a line ahead of the others has not taken back what was said of them. */
    @Test
    void correctionsGoWithTheirWordsWhereTheListIsReadAnew() {
        Corrected corrected =
                Corrected.of(LIST).with(2, new Meaning.Named("square loop")).without(1);
        FigureList anew = new FigureList(
                List.of(line("take-off"), line("loop"), line("spin"), line("loop")), LIST.asides(), List.of());
        assertThat(flown(corrected.carriedTo(anew))).containsExactly("take-off", "loop", "square loop");

        FigureList other = new FigureList(List.of(line("loop"), line("tail slide")), List.of(), List.of());
        assertThat(corrected.carriedTo(other).list()).isEqualTo(other);
    }

    @Test
    void whatWasMovedStaysMovedAndWhatIsNewStandsBehindWhatIsWrittenAheadOfIt() {
        Corrected moved = Corrected.of(LIST).moved(1, 0);
        FigureList anew = new FigureList(
                List.of(line("take-off"), line("loop"), line("spin"), line("tail slide"), line("loop")),
                List.of(),
                List.of());
        assertThat(flown(moved.carriedTo(anew))).containsExactly("take-off", "spin", "tail slide", "loop", "loop");
    }
}
