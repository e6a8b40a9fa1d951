package crowdline.glossary;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Term;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.TermsFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Everything is found by the words that people type, in the shipped figures and terms. */
class GlossarySearchTest {
    private static final Glossary GLOSSARY =
            Glossary.of(CatalogueFile.shipped(), TermsFile.shipped(), List.of(Term.own("The Elm", "A tall tree.")));

    private static List<String> found(String words) {
        return GLOSSARY.search(words).stream().map(Explained::name).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "loop, loop",
        "A Loop, loop",
        "lopp, loop",
        "the cuban 8, Cuban eight",
        "kuban eight, Cuban eight",
        "hammer-head, stall turn",
        "hamerhead, stall turn",
        "stal turn, stall turn",
        "shandelle, chandelle",
        "lomkovak, lomcovak",
        "barel rol, barrel roll",
        "tale slide, tail slide",
        "qban eight, Cuban eight",
        "torc roll, torque roll",
        "square lupe, square loop",
        "dairy turn, Derry turn",
        "loop the loop, loop",
        "luup, loop",
        "opposition, opposition pass",
        "cloverleaf, quarter clover",
        "mirror, mirror pass"
    })
    void aFigureIsCalledByAnyNameItHasAndForgivenTheSpelling(String written, String name) {
        assertThat(GLOSSARY.figureCalled(written).orElseThrow().name()).isEqualTo(name);
    }

    @ParameterizedTest
    @CsvSource({
        "tale slide, tail slide",
        "qban eight, Cuban eight",
        "torc roll, torque roll",
        "square lupe, square loop",
        "dairy turn, Derry turn",
        "shandel, chandelle",
        "nife edge, knife edge pass"
    })
    void whatIsWrittenByEarIsFoundFirstAndFloodsNothing(String words, String name) {
        assertThat(found(words)).startsWith(name).hasSizeLessThanOrEqualTo(4);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "x", "half", "rudder", "smoke", "it goes up and comes down", "the", "!"})
    void whatNamesNoFigureIsNone(String written) {
        assertThat(GLOSSARY.figureCalled(written)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "rudder, rudder",
        "ruder, rudder",
        "RUDER, rudder",
        "rud, rudder",
        "rudders, rudder",
        "smoke, smoke",
        "smok, smoke",
        "kuban, Cuban eight",
        "cuban 8, Cuban eight",
        "hammer head, stall turn",
        "hamerhead, stall turn",
        "stallturn, stall turn",
        "tail slid, tail slide",
        "tailwheel, tail wheel",
        "tail-wheel, tail wheel",
        "shandelle, chandelle",
        "lomkovak, lomcovak",
        "gforce, load factor",
        "g force, load factor",
        "g, load factor",
        "echolon, echelon",
        "who is the air boss, air boss",
        "fdd, flying display director",
        "elm, The Elm"
    })
    void theRightPageIsTheFirst(String typed, String name) {
        assertThat(found(typed)).first().isEqualTo(name);
    }

    @ParameterizedTest
    @CsvSource({
        "sycamore, spin",
        "cup of tea, barrel roll",
        "somersault, tail slide wheels up",
        "bicycle, dive",
        "blood head, negative g",
        "exhaust vapour, smoke"
    })
    void wordsOfTheTextsAreFoundToo(String typed, String name) {
        assertThat(found(typed)).contains(name).hasSizeLessThan(12);
    }

    @Test
    void whatIsCalledSoStandsBeforeWhatMentionsIt() {
        assertThat(found("loop")).startsWith("loop");
        assertThat(found("loop").indexOf("square loop"))
                .isLessThan(found("loop").indexOf("half Cuban"));
        assertThat(found("loop")).contains("entry speed");
    }

    @Test
    void spellingIsForgivenOnlyWhereNothingIsWrittenSo() {
        assertThat(found("roll")).doesNotContain("collective");
        assertThat(found("vic")).doesNotContain("air boss");
    }

    @Test
    void everyWordHasToBeFound() {
        assertThat(found("rudder sycamore zebra")).isEmpty();
        assertThat(found("qqqq")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "-", "?!"})
    void allOfItIsFoundForNoWords(String typed) {
        assertThat(found(typed)).hasSize(GLOSSARY.items().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"the", "is", "of the"})
    void commonWordsAloneAreLookedForAsTheyAre(String typed) {
        assertThat(found(typed)).isNotEmpty();
    }

    /** Of every name and alias with one letter left out, swapped or changed, the page is among the first five. */
    @Test
    @Timeout(60)
    void oneWrongLetterInAnyNameIsForgiven() {
        int wrong = 0;
        int tried = 0;
        StringBuilder missed = new StringBuilder();
        for (Explained item : GLOSSARY.items()) {
            String name = item.name();
            if (name.length() < 5) {
                continue;
            }
            int at = 1 + Math.floorMod(name.hashCode(), name.length() - 3);
            for (String typed : List.of(
                    name.substring(0, at) + name.substring(at + 1),
                    name.substring(0, at) + name.charAt(at + 1) + name.charAt(at) + name.substring(at + 2),
                    name.substring(0, at) + "x" + name.substring(at + 1))) {
                tried++;
                if (!found(typed).stream().limit(5).toList().contains(name)) {
                    wrong++;
                    missed.append(typed).append(" (").append(name).append("); ");
                }
            }
        }
        assertThat(wrong).as("%d of %d: %s", wrong, tried, missed).isLessThan(tried / 20);
    }

    @Test
    void aLongQuestionTakesNoLongTime() {
        assertThat(found("zxqv ".repeat(200))).isEmpty();
    }
}
