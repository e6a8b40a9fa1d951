package crowdline.sight.fact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.ReadBack;
import crowdline.speech.plain.PlainLanguage;
import crowdline.speech.plain.SpeechFinding;
import crowdline.speech.plain.WholeAct;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What holds for the words of every fact of every demo act, and of every figure of the catalogue flown alone. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FactWordsTest {
    /** A number in the short form or the text comes after one of these, or says once or twice. */
    private static final Pattern SAID =
            Pattern.compile("\\b(?:about|for about|in about|nearly|more than) (.*)|\\b(once|twice)\\b");

    private final List<CrowdFact> facts = new ArrayList<>();

    @BeforeAll
    void computeThem() throws ShowFileException {
        ToldActs.ofBothShows().forEach(told -> facts.addAll(told.facts()));
        Catalogue catalogue = CatalogueFile.shipped();
        for (CatalogueEntry entry : catalogue.entries()) {
            for (double kt : new double[] {70, 110, 145}) {
                facts.addAll(Flown.catalogued(catalogue, entry.name(), Flown.biplane(), 2500, kt));
                facts.addAll(Flown.catalogued(catalogue, entry.name(), Flown.glider(), 1500, kt));
            }
        }
    }

    @Test
    void everyKindOfFactIsAmongThem() {
        assertThat(facts.stream().map(CrowdFact::kind)).contains(CrowdFact.Kind.values());
    }

    @Test
    void numberInTheWordsIsTheRoundedOne() {
        int checked = 0;
        for (CrowdFact fact : facts) {
            if (fact.rounded() == 0 || fact.kind() == CrowdFact.Kind.LIGHTEST) {
                continue;
            }
            Matcher said = SAID.matcher(fact.text());
            assertThat(said.find()).as(fact.text()).isTrue();
            String number = said.group(1) == null ? said.group(2) : said.group(1);
            assertThat(ReadBack.number(firstPhrase(number))).as(fact.text()).isCloseTo(fact.rounded(), within(1e-9));
            checked++;
        }
        assertThat(checked).isGreaterThan(200);
    }

    /** Up to the unit, so that "a mile and a half" and "a mile from you" are told apart. */
    private static String firstPhrase(String words) {
        Matcher unit = Pattern.compile(
                        "^.*?\\b(?:seconds?|minutes?|miles?|feet|metres|times|kilograms|horsepower|fists)\\b"
                                + "(?: and a half)?")
                .matcher(words);
        return unit.find() ? unit.group() : words;
    }

    @Test
    void roundingNeverMovesANumberByMoreThanAQuarter() {
        for (CrowdFact fact : facts) {
            if (fact.rounded() > 0) {
                assertThat(fact.rounded() / fact.number()).as(fact.text()).isBetween(0.75, 1.25);
            }
        }
    }

    @Test
    void sentencesAreShortAndTextsFitARemark() {
        for (CrowdFact fact : facts) {
            assertThat(fact.text()).hasSizeLessThanOrEqualTo(160).endsWith(".");
            assertThat(fact.shortText())
                    .endsWith(".")
                    .hasSizeLessThan(fact.text().length() + 1);
            for (String sentence : fact.text().split("(?<=\\.) ", -1)) {
                assertThat(sentence.split(" ", -1).length).as(sentence).isLessThanOrEqualTo(20);
                assertThat(sentence).matches("[A-Z][^.]*\\.");
            }
        }
    }

    @Test
    void textsAreSpelledOutAndTidy() {
        for (CrowdFact fact : facts) {
            assertThat(fact.text() + " " + fact.shortText())
                    .doesNotMatch(".*\\d.*")
                    .doesNotContain("  ", " ,", "null", "NaN", "about about", "one seconds", "about once");
        }
    }

    @Test
    void nothingIsLeftForThePlainLanguageCheckToFind() {
        PlainLanguage plain = new PlainLanguage();
        for (CrowdFact fact : facts) {
            List<SpeechFinding> found = plain.check(fact.text(), Set.of("flick"));
            assertThat(found).as(fact.text()).isEmpty();
        }
    }

    /** Live goes by the words: what counts a figure that was dropped is not said. */
    @Test
    void whatIsToldOfAWholeActIsKnownByItsWords() {
        Set<CrowdFact.Kind> ofAircraft = Set.of(
                CrowdFact.Kind.POWER,
                CrowdFact.Kind.TIP_SPEED,
                CrowdFact.Kind.PROPELLER,
                CrowdFact.Kind.MASS,
                CrowdFact.Kind.SPAN);
        for (CrowdFact fact : facts) {
            boolean ofAct = fact.figureId() == null && !ofAircraft.contains(fact.kind());
            assertThat(WholeAct.isToldOf(fact.text())).as(fact.text()).isEqualTo(ofAct);
        }
    }

    @Test
    void idsAreTheirOwnWithinAnAct() throws ShowFileException {
        for (ToldActs.Told told : ToldActs.ofBothShows()) {
            Set<String> ids = new HashSet<>();
            assertThat(told.facts()).allMatch(fact -> ids.add(fact.id()));
        }
    }

    @Test
    void mostTellingFactsOfAFigureComeFirst() throws ShowFileException {
        for (ToldActs.Told told : ToldActs.ofBothShows()) {
            for (int i = 1; i < told.facts().size(); i++) {
                CrowdFact before = told.facts().get(i - 1);
                CrowdFact here = told.facts().get(i);
                if (Objects.equals(before.figureId(), here.figureId())) {
                    assertThat(here.telling()).isLessThanOrEqualTo(before.telling());
                }
            }
        }
    }

    @Test
    void nothingSaysThatAFlightIsSafeOrAPilotWell() {
        for (CrowdFact fact : facts) {
            assertThat(fact.text().toLowerCase(Locale.ROOT))
                    .doesNotContain("safe", "danger", "risk", "faint", "black out", "blood", "health");
        }
    }

    /** A jet's seven thousand feet would be twenty-two and a half of them. */
    @Test
    void noMoreFootballPitchesAreStoodOnEndThanAnybodyPictures() {
        assertThat(HeightFacts.pitches(550)).contains("about five football pitches, stood on end");
        assertThat(HeightFacts.pitches(2_290)).isEmpty();
    }
}
