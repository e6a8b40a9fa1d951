package crowdline.glossary;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Term;
import crowdline.show.bounds.Written;
import crowdline.speech.plain.PlainLanguage;
import crowdline.speech.plain.Readability;
import crowdline.speech.plain.Sentences;
import crowdline.speech.say.Spoken;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.TermsFile;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A twelve-year-old follows every page: the words that ship, measured. */
class GlossaryWordsTest {
    /**
     * The grade in which children turn twelve, by Kincaid and others 1975; its worked examples are in the test of
     * {@link Readability}.
     */
    private static final double GRADE_OF_TWELVE = 7;

    private static final Glossary GLOSSARY = Glossary.of(CatalogueFile.shipped(), TermsFile.shipped(), List.of());
    private static final PlainLanguage PLAIN = new PlainLanguage();

    static Stream<Explained> items() {
        return GLOSSARY.items().stream();
    }

    static Stream<Term> terms() {
        return GLOSSARY.terms().stream();
    }

    private static Readability read(String text) {
        return Readability.of(new Spoken(Map.of()).expand(text), new Sentences());
    }

    private static String all(Explained item) {
        return String.join(" ", item.texts());
    }

    @Test
    void sixtyTermsAndMoreStandBesideTheFigures() {
        assertThat(TermsFile.shipped()).hasSizeGreaterThanOrEqualTo(60);
        assertThat(GLOSSARY.terms()).hasSameSizeAs(TermsFile.shipped());
    }

    static Stream<Map.Entry<String, List<Explained>>> groups() {
        return GLOSSARY.items().stream().collect(Collectors.groupingBy(Explained::group)).entrySet().stream();
    }

    /** A score of fewer than a hundred words says little, so texts are measured by the group. */
    @ParameterizedTest
    @MethodSource("groups")
    void aTwelveYearOldFollowsEveryGroup(Map.Entry<String, List<Explained>> group) {
        Readability all =
                read(group.getValue().stream().map(GlossaryWordsTest::all).collect(Collectors.joining(" ")));
        assertThat(all.isMeaningful()).isTrue();
        assertThat(all.gradeLevel()).isLessThan(GRADE_OF_TWELVE);
        assertThat(all.readingEase()).isGreaterThan(70);
    }

    /** One page may have a long word in it, its own name perhaps, but not be hard altogether. */
    @ParameterizedTest
    @MethodSource("items")
    void noPageIsHardToRead(Explained item) {
        assertThat(read(all(item)).gradeLevel()).as(all(item)).isLessThan(GRADE_OF_TWELVE + 3);
    }

    @ParameterizedTest
    @MethodSource("items")
    void noSentenceIsLongOrFull(Explained item) {
        for (String text : item.texts()) {
            assertThat(PLAIN.check(text, Set.of()))
                    .as(text)
                    .noneMatch(found -> found.code().equals(PlainLanguage.LONG_SENTENCE)
                            || found.code().equals(PlainLanguage.MANY_IDEAS));
        }
    }

    @ParameterizedTest
    @MethodSource("terms")
    void everyTermSaysWhatToMakeOfItAndWhereItComesFrom(Term term) {
        assertThat(term.atTheShow()).isNotBlank();
        assertThat(term.source()).isNotBlank();
        assertThat(term.whatItIs()).matches("(?s)[A-Z“].*[.]");
        assertThat(term.atTheShow()).matches("(?s)[A-Z“].*[.]");
    }

    @ParameterizedTest
    @MethodSource("terms")
    void whatATermSendsToIsThere(Term term) {
        assertThat(term.see())
                .allSatisfy(name -> assertThat(GLOSSARY.find(name)).isPresent());
    }

    @Test
    void noNameIsClaimedTwice() {
        List<String> names = items().flatMap(item -> Stream.concat(Stream.of(item.name()), item.aliases().stream())
                        .map(Written::key)
                        .distinct())
                .toList();
        assertThat(names).doesNotHaveDuplicates();
    }

    /** No authority's distance or height is a number in here. */
    @ParameterizedTest
    @MethodSource("terms")
    void noTermHasARuleWithANumber(Term term) {
        assertThat(all(new Explained.OfTerm(term)).toLowerCase(Locale.UK))
                .doesNotContainPattern("\\d+ ?(ft|feet|m|metres|miles)\\b")
                .doesNotContainPattern("\\bsafe");
    }

    @Test
    void allThatPilotsDoBelongsToSomeTermOrFigure() {
        assertThat(GLOSSARY.names())
                .contains(
                        "load factor",
                        "negative g",
                        "stall",
                        "autorotation",
                        "energy",
                        "pitch",
                        "yaw",
                        "roll axis",
                        "aileron",
                        "elevator",
                        "rudder",
                        "second effects of the controls",
                        "adverse yaw",
                        "gyroscopic effect",
                        "torque",
                        "slipstream",
                        "display line",
                        "crowd line",
                        "datum",
                        "box",
                        "smoke",
                        "flying display director",
                        "flying control committee",
                        "air boss",
                        "opposition pass",
                        "quick stop");
    }
}
