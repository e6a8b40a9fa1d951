package crowdline.speech.say;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SpokenTest {

    /** Made once for the class and anew in each run, so that a rule that is lost is missed. */
    private final Spoken plain = new Spoken(Map.of());

    private String say(String written) {
        return plain.expand(written).spoken();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            180 hp                 | one hundred and eighty horsepower
            300 ft                 | three hundred feet
            200 mph                | two hundred miles an hour
            1944                   | nineteen forty-four
            Mk IX                  | Mark nine
            No. 3                  | number three
            RAF                    | R A F
            1,250 kg               | one thousand two hundred and fifty kilograms
            10 m/s                 | ten metres a second
            """)
    void whatSynthesisersMisreadIsSaidAsMeant(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            101 | one hundred and one
            180 | one hundred and eighty
            315 | three hundred and fifteen
            1,010 | one thousand and ten
            1,100 | one thousand one hundred
            1,250 | one thousand two hundred and fifty
            180,000 | one hundred and eighty thousand
            180000 | one hundred and eighty thousand
            1.5 | one point five
            0.5 | zero point five
            .5 | point five
            -3 | minus three
            -.5 | minus point five
            + 6 and - 3 | plus six and – three
            −3 | minus three
            3.14159 | three point one four one five nine
            1.50 | one point five zero
            007 | zero zero seven
            Smoke 3, then 4. | Smoke three, then four.
            10,20 and 30 | ten,twenty and thirty
            the 2:1 odds | the two to one odds
            24/7 | twenty-four seven
            x3 times | x three times
            3D | three D
            """)
    void numbersAreBritishWords(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            built in 1944 | built in nineteen forty-four
            In 2005 she flew again. | In two thousand and five she flew again.
            since 2024, | since twenty twenty-four,
            in 1903 | in nineteen oh-three
            in 1900 | in nineteen hundred
            in 1850 | in eighteen fifty
            1850 | one thousand eight hundred and fifty
            the 1940s | the nineteen forties
            the 1900s | the nineteen hundreds
            the '40s | the forties
            the 40s | the forties
            in her 20s | in her twenties
            the 2010s | the twenty tens
            1939–1945 | nineteen thirty-nine to nineteen forty-five
            1939-45 | nineteen thirty-nine to forty-five
            1950 horsepower | one thousand nine hundred and fifty horsepower
            1950 hp | one thousand nine hundred and fifty horsepower
            1,944 | one thousand nine hundred and forty-four
            2000 feet | two thousand feet
            1944's best | nineteen forty-four's best
            """)
    void fourDigitsAreAYearUnlessTheyMeasure(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            12 June 1944 | the twelfth of June nineteen forty-four
            on 12 June | on the twelfth of June
            the 12th of June | the twelfth of June
            the 1st May, 2026 | the first of May twenty twenty-six
            June 12 | June the twelfth
            June 12, 1944 | June the twelfth, nineteen forty-four
            June 1944 | June nineteen forty-four
            3 Sept 1939 | the third of September nineteen thirty-nine
            2026-06-12 | the twelfth of June twenty twenty-six
            12/6/2026 | twelve six twenty twenty-six
            12.6.26 | twelve six twenty-six
            May 2026 | May twenty twenty-six
            """)
    void datesAreSaidWithoutGuessingTheMonth(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            14:30 | fourteen thirty
            14:05 | fourteen oh five
            14:00 | fourteen hundred
            14:10 | fourteen ten
            14:09 | fourteen oh nine
            13:00 | thirteen hundred
            12:00 | twelve o'clock
            1:00 | one o'clock
            00:00 | zero hundred
            00:01 | oh oh oh one
            at 3 p.m. today | at three p m today
            She flies at 3 p.m. The crowd waits. | She flies at three p m. The crowd waits.
            Ends at 3 p.m. | Ends at three p m.
            3:30 pm | three thirty p m
            3.30 p.m. | three thirty p m.
            11am | eleven a m
            """)
    void timesOfDay(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1st | first
            2nd | second
            21st | twenty-first
            101st | one hundred and first
            the 3rd turn | the third turn
            """)
    void ordinals(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            3-4 seconds | three to four seconds
            3–4 s | three to four seconds
            3 – 4 seconds | three to four seconds
            30-45° | thirty to forty-five degrees
            300 ft-400 ft | three hundred to four hundred feet
            2½ turns | two and a half turns
            2 ½ turns | two and a half turns
            1 1/2 rolls | one and a half rolls
            ½ roll | half roll
            1/2 | a half
            ½ | a half
            1/4 roll | a quarter roll
            ¾ of a loop | three quarters of a loop
            2/3 | two thirds
            1⅓ turns | one and a third turns
            2½ m | two and a half metres
            ¾ mi | three quarters of a mile
            3 x 4 m | three by four metres
            2× | two times
            """)
    void rangesAndFractions(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            +10/-8 g | plus ten, minus eight g
            +6/−3 g | plus six, minus three g
            ±6 g | plus or minus six g
            6 g | six g
            6.5g | six point five g
            +6 g and −3 g | plus six g and minus three g
            21 °C | twenty-one degrees Celsius
            21°C | twenty-one degrees Celsius
            21 ℃ | twenty-one degrees Celsius
            1 ft | one foot
            1 m | one metre
            1.5 m | one point five metres
            5 km | five kilometres
            120 kt | one hundred and twenty knots
            120 kts. | one hundred and twenty knots.
            300 km/h | three hundred kilometres an hour
            9.81 m/s² | nine point eight one metres a second squared
            224 kW | two hundred and twenty-four kilowatts
            2,700 rpm | two thousand seven hundred revolutions a minute
            400°/s | four hundred degrees a second
            45° | forty-five degrees
            a 45° line | a forty-five degree line
            90 % | ninety per cent
            90% | ninety per cent
            £20 | twenty pounds
            £1 | one pound
            £3.50 | three pounds fifty
            £2.5 million | two point five million pounds
            £2m | two million pounds
            £.50 | point five zero pounds
            £0.05 | five pence
            $0.50 | zero dollars fifty
            $1,000 | one thousand dollars
            a 300-ft pole | a three hundred foot pole
            a 180-hp engine | a one hundred and eighty horsepower engine
            200 m.p.h. at the bottom | two hundred miles an hour at the bottom
            300 ft. above us | three hundred feet above us
            10 s | ten seconds
            5 min | five minutes
            12 m² | twelve square metres
            """)
    void unitsAreSaidInFull(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Mk. 9 | Mark nine
            Mark IV | Mark four
            Mk IXc | Mark nine C
            World War II | World War two
            Kestrel III | Kestrel three
            G-ABCD | G A B C D
            Registered G-ABCD, | Registered G A B C D,
            N123AB | N one two three A B
            F-16 | F sixteen
            B17 | B seventeen
            P-51D | P fifty-one D
            A320 | A three twenty
            F-104 | F one oh four
            the RAF's best | the R A F's best
            R.A.F. crews | R A F crews
            the U.K. | the U K.
            617 Squadron | six one seven Squadron
            No. 3 Squadron | number three Squadron
            Nos 3 and 4 | numbers three and four
            runway 27L | runway two seven left
            """)
    void marksRegistrationsAndInitialisms(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Mr. Quillan | Mister Quillan
            Dr Quillan | Doctor Quillan
            Mrs Quillan | Missus Quillan
            Flt Lt Quillan | Flight Lieutenant Quillan
            the float, e.g. this one | the float, for example this one
            smoke, flags, etc. | smoke, flags, and so on.
            Approx. 200 m | Approximately two hundred metres
            salt & pepper | salt and pepper
            No smoke today | No smoke today
            """)
    void abbreviationsAreSaidInFull(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            And NOW the loop | And NOW the loop
            LADIES AND GENTLEMEN, LOOK UP AT IAN | LADIES AND GENTLEMEN, LOOK UP AT IAN
            four-point roll | four-point roll
            a 4-point roll | a four-point roll
            an 8-second wait | an eight-second wait
            don’t blink | don't blink
            “Look up!” she says | Look up! she says
            up — and over | up — and over
            up - and over | up – and over
            She waits... and rolls | She waits... and rolls
            She pulls 6.5 g... and holds it. | She pulls six point five g... and holds it.
            <b>Loop</b> & more | b Loop b and more
            I am a pilot | I am a pilot
            """)
    void plainWordsAndPausesStay(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }

    @Test
    void namesAreSaidAsTheShowSays() {
        Spoken spoken = new Spoken(Map.of("Quillan", "Kwil-an", "Mk 2", "the second one", "O’Dee", "Oh Dee"));
        assertThat(spoken.expand("Ada Quillan's Mk 2, with Quillans and O'Dee").spoken())
                .isEqualTo("Ada Kwil-an's the second one, with Quillans and Oh Dee");
    }

    @Test
    void nameOfItsOwnSayingLeavesTheRestAsItIs() {
        Spoken spoken = new Spoken(Map.of("Quillan", "Kwil-an"));
        assertThat(spoken.expand("At 14:30 the RAF's Dr Quillan rolls 3 times").spoken())
                .isEqualTo("At fourteen thirty the R A F's Doctor Kwil-an rolls three times");
    }

    @Test
    void nameWrittenWithEitherApostropheIsOneName() {
        Map<String, String> twice = new LinkedHashMap<>();
        twice.put("O'Dee", "Owe Dee");
        twice.put("O’Dee", "Oh Dee");
        assertThat(new Spoken(twice).expand("O'Dee and O’Dee").spoken()).isEqualTo("Oh Dee and Oh Dee");
    }

    /** From twelve letters on, and more than six capitals in ten: then they are no initialisms, nor numerals. */
    @Test
    void capitalsSayNothingInATextThatShouts() {
        assertThat(say("WATCH THE RAF")).as("11 letters").isEqualTo("WATCH THE R A F");
        assertThat(say("LOOK AT THE RAF")).as("12 letters").isEqualTo("LOOK AT THE RAF");
        assertThat(say("LOOK AT THE RAF pass now")).as("12 of 19").isEqualTo("LOOK AT THE RAF pass now");
        assertThat(say("LOOK AT THE RAF pass over")).as("12 of 20").isEqualTo("LOOK AT THE R A F pass over");
        assertThat(say("HERE COMES KING OTTO IV NOW")).isEqualTo("HERE COMES KING OTTO IV NOW");
        assertThat(say("HERE COMES THE BBC NOW"))
                .as("nobody can say it as a word")
                .isEqualTo("HERE COMES THE B B C NOW");
    }

    @Test
    void longerNamesComeFirst() {
        Spoken spoken = new Spoken(Map.of("Ada", "Ay-da", "Ada Quillan", "Miss Quill"));
        assertThat(spoken.expand("Ada Quillan and Ada").spoken()).isEqualTo("Miss Quill and Ay-da");
    }

    @Test
    void blankNameIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Spoken(Map.of("Quillan", " ")))
                .withMessageContaining("Quillan")
                .withMessageContaining("correct or remove");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " ", "\n\n", "🛩️🔥", "...", "-", "+", "£", "½", "'", "<>", "\u0000\u0007", "\uD83D", "%"})
    void oddTextsDoNotThrow(String written) {
        SpokenText text = plain.expand(written);
        assertThat(text.letters()).isGreaterThanOrEqualTo(0);
        assertThat(text.written()).isEqualTo(written);
    }

    @Test
    void aThinSpaceGroupsThousands() {
        assertThat(say("1\u202F250 kg")).isEqualTo("one thousand two hundred and fifty kilograms");
    }

    @Test
    void emojiAndControlCharactersAreSilent() {
        assertThat(say("Look 🛩️ up\u0007 now\u200B!")).isEqualTo("Look up now!");
    }

    @Test
    void rightToLeftLettersPassAndTheirDigitsAreSaid() {
        assertThat(say("שלום ١٢")).isEqualTo("שלום twelve");
    }

    @Test
    void aBlankLineEndsASentence() {
        assertThat(say("The loop\n\nWatch the top")).isEqualTo("The loop. Watch the top");
        assertThat(say("wrapped\nby hand")).isEqualTo("wrapped by hand");
    }

    @Test
    void noDigitIsEverLeft() {
        Random random = new Random(20260612);
        String alphabet = "0123456789 ,.:-–/+½°%£$xXIVMkaGgmst'hp&()№\n…<>~≈#\"CFin";
        for (int i = 0; i < 20_000; i++) {
            StringBuilder written = new StringBuilder();
            int length = 1 + random.nextInt(14);
            for (int j = 0; j < length; j++) {
                written.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            SpokenText text = plain.expand(written.toString());
            assertThat(text.spoken()).as("%s", written).doesNotContainPattern("\\p{N}");
            assertThat(text.commas() + text.innerStops() + text.letters()).isGreaterThanOrEqualTo(0);
        }
    }

    @Tag("slow")
    @Test
    void aTextOfHundredsOfPagesIsSaidWithoutHarm() {
        assertThat(plain.expand("The 180 hp loop, e.g. in 1944. ".repeat(2_000)).innerStops())
                .isEqualTo(1_999);
        for (String part : new String[] {"1", "1,000,", "a", "A.", "1/2 ", "-"}) {
            SpokenText text = plain.expand(part.repeat(40_000 / part.length()));
            assertThat(text.letters()).isGreaterThanOrEqualTo(0);
        }
    }
}
