package crowdline.speech.plain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlainLanguageTest {

    private final PlainLanguage plain = new PlainLanguage();

    private List<String> codes(String text) {
        return plain.check(text, Set.of()).stream().map(SpeechFinding::code).toList();
    }

    /** "25 words is our limit", Inside GOV.UK, 4 August 2014. */
    @Test
    void sentenceOverTwentyFiveWordsIsFound() {
        String limit = "Up and ".repeat(12) + "down.";
        assertThat(codes(limit)).isEmpty();
        String over = "Up and ".repeat(12) + "down now.";
        assertThat(codes("Look. " + over)).containsExactly(PlainLanguage.LONG_SENTENCE);
        SpeechFinding finding = plain.check("Look. " + over, Set.of()).get(0);
        assertThat(finding.message()).contains("26 words");
        assertThat(finding.fromChar()).isEqualTo(6);
    }

    @Test
    void unexplainedTradeWordIsFoundWithAPlainWayToSayIt() {
        String text = "Watch the ailerons now.";
        assertThat(plain.check(text, Set.of())).singleElement().satisfies(f -> {
            assertThat(f.code()).isEqualTo(PlainLanguage.TRADE_WORD);
            assertThat(text.substring(f.fromChar(), f.toChar())).isEqualTo("ailerons");
            assertThat(f.suggestion()).contains("rolls the aeroplane");
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Now it is inverted, that is, upside down.",
                "It stalls. That means the wing stops lifting.",
                "The ailerons (the panels near the wing tips) go up.",
                "We call the turn of the nose yaw.",
                "The rudder, the upright flap on the tail, holds up the nose."
            })
    void explainedTradeWordIsNotFound(String text) {
        assertThat(codes(text)).isEmpty();
    }

    @Test
    void glossaryExplainsWordsAndTheWordsWithin() {
        assertThat(plain.check("Next, the Stall Turn.", Set.of("stall turn"))).isEmpty();
        assertThat(plain.check("Next, the rudder.", Set.of("Rudder"))).isEmpty();
        assertThat(plain.check("Next, a stall.", Set.of("stall turn"))).hasSize(1);
    }

    @Test
    void wordsWithinOtherWordsAreNotTradeWords() {
        assertThat(codes("The energetic pitcher ran to the stallholder.")).isEmpty();
    }

    @Test
    void inAnActATradeWordIsFoundOnceAtItsFirstUse() {
        List<String> act = List.of("Full rudder.", "More rudder.", "Yaw: a swing of the nose.", "Yaw again.");
        assertThat(IntStream.range(0, act.size())
                        .map(i -> plain.check(act.subList(0, i), act.get(i), Set.of())
                                .size()))
                .containsExactly(1, 0, 0, 0);
    }

    @Test
    void unusualAbbreviationIsFoundAndAUsualOneIsNot() {
        assertThat(codes("The pilot calls QNH now.")).containsExactly(PlainLanguage.ABBREVIATION);
        assertThat(codes("An RAF pilot in a Kestrel Mk IX, look NOW!")).isEmpty();
        assertThat(codes("LOOK UP AT THE QNH NOW")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "It has 300 hp.",
                "It weighs 580 kg today.",
                "The engine turns at 2,700 rpm.",
                "It flew 12,000 metres.",
                "It has 300 hp for a half roll and a double one."
            })
    void numberWithoutAPictureIsFound(String text) {
        assertThat(codes(text)).containsExactly(PlainLanguage.NUMBER_WITHOUT_PICTURE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "It has 300 hp, twice the power of a family car.",
                "It weighs 580 kg. That is about the weight of a horse.",
                "She built it in 1944.",
                "At 200 mph it comes back.",
                "Three turns in 4 seconds."
            })
    void numberWithAPictureIsNotFound(String text) {
        assertThat(codes(text)).isEmpty();
    }

    @Test
    void ownTradeWordsReplaceTheBuiltInOnes() {
        PlainLanguage own = new PlainLanguage(Map.of("Widget", "a thing"));
        assertThat(own.check("The widget and the rudder.", Set.of()))
                .singleElement()
                .extracting(SpeechFinding::suggestion)
                .isEqualTo("a thing");
        assertThat(new PlainLanguage(Map.of()).check("The rudder.", Set.of())).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "It has a perspicacious look.",
                "Watch this vertiginous drop.",
                "Its sesquipedalian name comes later."
            })
    void rareWordIsFound(String text) {
        assertThat(codes(text)).containsExactly(PlainLanguage.RARE_WORD);
    }

    @Test
    void whatStandsOnThePosterIsKnown() {
        assertThat(codes("It is an aerobatic aeroplane, and aerobatics are what it is for at an airshow."))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "It turns like a sycamore seed.",
                "The deckchairs by the henhouse are for first-aiders.",
                "A double-decker, and a humpback bridge.",
                "Barnaby Stoddlecombe's aeroplane is the flyers' favourite.",
                "She flies at 30 km above nothing."
            })
    void wordsThatFamiliesUseAndNamesAreNotRare(String text) {
        assertThat(codes(text)).isEmpty();
    }

    /** plainlanguage.gov and VOA Special English: one idea in each sentence. */
    @Test
    void sentenceOfManyIdeasIsFound() {
        assertThat(codes("He pulls hard, which squeezes him, because the wing lifts more, and then he rolls out."))
                .containsExactly(PlainLanguage.MANY_IDEAS);
        assertThat(codes("He pulls hard, and then he rolls out.")).isEmpty();
        assertThat(codes("He pulls hard. It squeezes him. The wing lifts more. Then he rolls out."))
                .isEmpty();
        assertThat(Ideas.in("Up; over, because he can, and she waits.")).isEqualTo(4);
        assertThat(Ideas.in("Up and down and round and out.")).isEqualTo(1);
    }

    @Test
    void wordsAreFoundOnlyWhereTheActSaysThemFirst() {
        List<String> before = List.of("Full rudder.", "A perspicacious look.");
        assertThat(plain.check(before, "More rudder, and as perspicacious.", Set.of()))
                .isEmpty();
        assertThat(plain.check(before, "Watch the elevators.", Set.of())).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "🛩️", "\u0000", "<b>&amp;</b>", "שלום"})
    void oddTextsGiveNoFinding(String text) {
        assertThat(codes(text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Look up. A perspicacious, vertiginous thing.  | perspicacious, vertiginous
            Look up. It calls QNH now.                    | QNH
            Look up. It has 300 hp and 2,700 rpm.         | 300 hp, 2,700 rpm
            Look up. Now rudder. Then ailerons.           | rudder, ailerons
            """)
    void everyFindingPointsAtItsOwnWords(String text, String words) {
        assertThat(plain.check(text, Set.of()).stream().map(f -> text.substring(f.fromChar(), f.toChar())))
                .isEqualTo(List.of(words.split("(?<=\\D), ")));
    }

    @Test
    void sentenceOfManyIdeasIsMarkedFromItsFirstLetterToItsStop() {
        String many = "He pulls hard, which squeezes him, because the wing lifts more, and then he rolls out.";
        assertThat(plain.check("Look. " + many + " Now.", Set.of()))
                .singleElement()
                .satisfies(f -> {
                    assertThat(("Look. " + many + " Now.").substring(f.fromChar(), f.toChar()))
                            .isEqualTo(many);
                    assertThat(f.message()).contains("about 4 ideas");
                });
    }

    @Test
    void wordStillBeingTypedIsNotRareYet() {
        assertThat(codes("What a perspicacious")).isEmpty();
        assertThat(codes("What a perspicacious ")).containsExactly(PlainLanguage.RARE_WORD);
    }

    @Test
    void findingsComeInTheOrderOfTheText() {
        assertThat(codes("A perspicacious rudder now calls QNH."))
                .containsExactly(PlainLanguage.RARE_WORD, PlainLanguage.TRADE_WORD, PlainLanguage.ABBREVIATION);
    }

    @Test
    void threeIdeasAreNotYetTooMany() {
        assertThat(codes("He pulls hard, which squeezes him, because the wing lifts more."))
                .isEmpty();
    }

    @Test
    void threeLettersAreNoRareWordAndFourAre() {
        assertThat(codes("What a zax it is.")).isEmpty();
        assertThat(codes("What a zarf it is.")).containsExactly(PlainLanguage.RARE_WORD);
    }

    @Test
    void wordsThatAreKnownMakeNoOtherKnown() {
        assertThat(plain.check("A perspicacious look.", Set.of("bird"))).hasSize(1);
        assertThat(plain.check("Next, a half rudder turn.", Set.of("half rudder turn")))
                .as("within what is known")
                .isEmpty();
        assertThat(plain.check("Next, a rudder turn.", Set.of("half rudder turn")))
                .as("not the whole of it")
                .hasSize(1);
    }

    @Test
    void rareWordInACompoundIsMarkedAlone() {
        String text = "Look. A well-perspicacious look.";
        assertThat(plain.check(text, Set.of()))
                .extracting(f -> text.substring(f.fromChar(), f.toChar()))
                .containsExactly("perspicacious");
    }

    @Test
    void tradeWordWrittenTwiceIsOne() {
        Map<String, String> twice = new LinkedHashMap<>();
        twice.put("widget", "a thing");
        twice.put("Widget", "a thingummy");
        assertThat(new PlainLanguage(twice).check("The widget.", Set.of()))
                .singleElement()
                .extracting(SpeechFinding::suggestion)
                .isEqualTo("a thingummy");
    }

    @Test
    void rareWordIsFoundOnceInARemark() {
        assertThat(codes("A perspicacious, perspicacious look.")).hasSize(1);
        assertThat(plain.check("A perspicacious look.", Set.of("Perspicacious bird")))
                .isEmpty();
    }

    @Test
    void abbreviationThatIsExplainedIsNotFound() {
        assertThat(plain.check("The pilot calls QNH now.", Set.of("QNH"))).isEmpty();
        assertThat(plain.said("Full rudder, and a perspicacious look.")).contains("rudder", "perspicacious");
    }
}
