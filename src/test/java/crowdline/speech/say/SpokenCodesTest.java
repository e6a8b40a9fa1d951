package crowdline.speech.say;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Codes, names and short words as commentators write them. Common practice, no source. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SpokenCodesTest {

    /** Made once for the class and anew in each run, so that a rule that is lost is missed. */
    private final Spoken plain = new Spoken(Map.of());

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            On stage at 1430. | On stage at fourteen thirty.
            Gates close at 1800. | Gates close at eighteen hundred.
            Mk II | Mark two
            the Mk III is here | the Mark three is here
            Mk.III | Mark three
            MkII | Mark two
            the Swift Mk 2 | the Swift Mark two
            8 – 10 metres | eight to ten metres
            No. 2 to land | number two to land
            at 10.30 | at ten thirty
            1h 30 | one hour thirty
            XQ 403 | X Q four oh three
            XQ403 | X Q four oh three
            QNH 1013 | Q N H one zero one three
            RWY 27 | runway two seven
            runway 9 | runway nine
            FL65 | flight level six five
            FL 065 | flight level zero six five
            3 000 ft | three thousand feet
            0.75 of a second | zero point seven five of a second
            High St. is closed | High Street is closed
            St. Anne's Church | Saint Anne's Church
            Kestrel vs Swift | Kestrel versus Swift
            Kestrel vs. Swift | Kestrel versus Swift
            Tom & Ada | Tom and Ada
            @ 300 ft | at three hundred feet
            meet @ the gate | meet at the gate
            four-point roll | four-point roll
            8 pt roll | eight point roll
            a V8 engine | a V eight engine
            1.8 secs | one point eight seconds
            1 000 000 people | one million people
            10,000+ hours | ten thousand plus hours
            50+ displays | fifty plus displays
            WW2 | World War two
            WWII | World War two
            Flt. Lt. Quillan | Flight Lieutenant Quillan
            Sqn Ldr Quillan | Squadron Leader Quillan
            Maj. Gen. Quillan | Major General Quillan
            ATC says | A T C says
            4g | four g
            Q&A | Q and A
            R&D | R and D
            A&E | A and E
            twin-engined | twin-engined
            3D | three D
            4WD | four W D
            '99 | ninety-nine
            summer of '69 | summer of sixty-nine
            `#1` | number one
            race #7 | race number seven
            № 7 | number seven
            p. 7 | page seven
            tel. 01632 960123 | telephone zero one six three two nine six zero one two three
            call 01632 960 123 | call zero one six three two nine six zero one two three
            999 | nine hundred and ninety-nine
            Dial 999 | Dial nine nine nine
            call 112 | call one one two
            channel 7 | channel seven
            3, 2, 1 | three, two, one
            www.fenmarsh.example | w w w dot fenmarsh dot example
            `#fenmarsh` | hashtag fenmarsh
            see #fenmarsh | see hashtag fenmarsh
            2 x 4 | two by four
            14 m2 | fourteen square metres
            24 hrs | twenty-four hours
            Act 1 | Act one
            Act II | Act two
            King Otto IV | King Otto the fourth
            Part IV | Part four
            min. 300 ft | minimum three hundred feet
            300 ft AGL | three hundred feet A G L
            300ft agl | three hundred feet A G L
            G-ABCD | G A B C D
            G–ABCD | G A B C D
            D-EXYZ | D E X Y Z
            N12QX | N one two Q X
            half past 2 | half past two
            100LL | one hundred L L
            E10 | E ten
            A4 sheet | A four sheet
            B&W | B and W
            2.5 turns | two point five turns
            1,430 local people | one thousand four hundred and thirty local people
            call 300 people | call three hundred people
            half a mile | half a mile
            p 7 | page seven
            B&B | B and B
            fenmarsh.example | fenmarsh dot example
            info@fenmarsh.example | info at fenmarsh dot example
            the ADF 700 | the A D F seven hundred
            the Sqn flies | the Squadron flies
            the p.m. slot | the p m slot
            runway 27R | runway two seven right
            runway 18C | runway one eight centre
            Rwy 09L/27R | Runway zero nine left two seven right
            Part I | Part one
            Type XI | Type eleven
            Lt Cdr Quillan | Lieutenant Commander Quillan
            the 12-in propeller | the twelve inch propeller
            www.act2.example | w w w dot act two dot example
            the loop (a big one) is up | the loop (a big one) is up
            a – b | a – b
            200,300 people | two hundred thousand, three hundred people
            RAF 100 years | R A F one hundred years
            """)
    void codesNamesAndShortWords(String written, String spoken) {
        assertThat(plain.expand(written).spoken()).isEqualTo(spoken);
    }
}
