package crowdline.speech.say;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What commentators' notes hold, and what a person reads out; from memory. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SpokenNotesTest {
    /** Made once for the class and anew in each run, so that a rule that is lost is missed. */
    private final Spoken plain = new Spoken(Map.of());

    private String say(String written) {
        return plain.expand(written).spoken();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            150kt                    | one hundred and fifty knots
            386 km/hr                | three hundred and eighty-six kilometres an hour
            M0.8                     | Mach zero point eight
            Mach 2                   | Mach two
            500 feet agl             | five hundred feet A G L
            300 b.h.p.               | three hundred brake horsepower
            1,500 shp                | one thousand five hundred shaft horsepower
            9,900 lbf of thrust      | nine thousand nine hundred pounds of thrust
            +6g/-3g                  | plus six, minus three g
            9 Gs                     | nine gees
            90 deg                   | ninety degrees
            a 4-cyl engine           | a four cylinder engine
            5 ft 6 in                | five feet six inches
            6'2"                     | six feet two inches
            5 ft 6                   | five feet six
            1 ft 1 in                | one foot one inch
            12 in the air            | twelve in the air
            -5C                      | minus five degrees Celsius
            77F                      | seventy-seven degrees Fahrenheit
            20º                      | twenty degrees
            29.92 inHg               | twenty-nine point nine two inches of mercury
            5m x 3m                  | five by three metres
            2 x 180 hp               | two times one hundred and eighty horsepower
            30 mpg                   | thirty miles to the gallon
            """)
    void measuresAsTheyAreWrittenInNotes(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            09:30                    | nine thirty
            09:00                    | nine o'clock
            14:30 hrs                | fourteen thirty hours
            0930                     | oh nine thirty
            at 1430 hours            | at fourteen thirty hours
            has 1500 hours on type   | has one thousand five hundred hours on type
            at 14.30                 | at fourteen thirty
            at 2.5 g                 | at two point five g
            at 2.50 m                | at two point five zero metres
            10am-4pm                 | ten a m to four p m
            2:30-3:30pm              | two thirty to three thirty p m
            14:30–15:00              | fourteen thirty to fifteen hundred
            1h 20m                   | one hour twenty minutes
            7-8 June                 | the seventh to the eighth of June
            7/8 June                 | the seventh and the eighth of June
            Sat 12 June              | Saturday the twelfth of June
            the sun                  | the sun
            1939/45                  | nineteen thirty-nine to forty-five
            c. 1935                  | circa nineteen thirty-five
            in '44                   | in forty-four
            at 1430h                 | at fourteen thirty hours
            at 1430 hrs on Sunday    | at fourteen thirty hours on Sunday
            Jan 2026                 | January twenty twenty-six
            in Sept 1944             | in September nineteen forty-four
            4/4 time                 | four four time
            a 12/12 scale            | a twelve twelve scale
            """)
    void timesAndDatesAsTheyAreWrittenInNotes(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            12 000                   | twelve thousand
            1 250 kg                 | one thousand two hundred and fifty kilograms
            01632 960 001            | zero one six three two nine six zero zero zero one
            In 1944 617 Squadron     | In nineteen forty-four six one seven Squadron
            1.5m people              | one point five million people
            3 bn                     | three billion
            £3-4 million             | three to four million pounds
            a £5 note                | a five pound note
            £0.50                    | fifty pence
            100s of people           | hundreds of people
            1000s of people          | thousands of people
            ~200                     | about two hundred
            >300                     | more than three hundred
            <50 kt                   | less than fifty knots
            a < b                    | a b
            `#1`                     | number one
            Nº 1                     | number one
            x2                       | times two
            2x                       | two times
            a ¼ roll                 | a quarter roll
            an 1/8 turn              | an eighth turn
            two 360s                 | two three sixties
            a 180.                   | a one eighty.
            8-pt roll                | eight point roll
            """)
    void numbersAsTheyAreWrittenInNotes(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            WWII                     | World War two
            in WW1                   | in World War one
            SE5a                     | S E five A
            T.6                      | T six
            two P-51s                | two P fifty-one's
            Flt. Lt. Quillan         | Flight Lieutenant Quillan
            Air Cdre Quillan         | Air Commodore Quillan
            Mr & Mrs Quillan         | Mister and Missus Quillan
            High St                  | High Street
            Old St Mary's            | Old Saint Mary's
            Station Rd.              | Station Road.
            w/ smoke                 | with smoke
            w/o smoke                | without smoke
            Quillan & Sons Ltd       | Quillan and Sons Limited
            rwy 27                   | runway two seven
            Rwy 09/27                | Runway zero nine two seven
            QNH 1013                 | Q N H one zero one three
            a.k.a. the barrel        | also known as the barrel
            """)
    void namesAndShortWordsAsTheyAreWrittenInNotes(String written, String spoken) {
        assertThat(say(written)).isEqualTo(spoken);
    }
}
