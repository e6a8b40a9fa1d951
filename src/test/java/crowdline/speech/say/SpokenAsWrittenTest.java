package crowdline.speech.say;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What commentators write and what a British reader says. Common practice, no source, but for the number words (ICU). */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SpokenAsWrittenTest {

    /** Made once for the class and anew in each run, so that a rule that is lost is missed. */
    private final Spoken plain = new Spoken(Map.of());

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            1430 local | fourteen thirty local
            1430 hours | fourteen thirty hours
            at 1430 hrs | at fourteen thirty hours
            at 1400 local | at fourteen hundred local
            Lunch is from 1230 to 1315. | Lunch is from twelve thirty to thirteen fifteen.
            slot 1430–1445 | slot fourteen thirty to fourteen forty-five
            from 1939 to 1945 | from nineteen thirty-nine to nineteen forty-five
            at 1500 feet | at one thousand five hundred feet
            at 1500 ft | at one thousand five hundred feet
            at 1430 kg | at one thousand four hundred and thirty kilograms
            since 1943 | since nineteen forty-three
            by 1943 | by nineteen forty-three
            1430Z | fourteen thirty zulu
            1430 UTC | fourteen thirty U T C
            over 1000 hours | over one thousand hours
            2026/27 | twenty twenty-six to twenty-seven
            0800 | oh eight hundred
            0930 | oh nine thirty
            She has 1430 hours | She has one thousand four hundred and thirty hours
            over 1200 hours on type | over one thousand two hundred hours on type
            1200 hours of flying | one thousand two hundred hours of flying
            at 1400 to 1500 feet | at one thousand four hundred to one thousand five hundred feet
            from 1000 to 2000 feet | from one thousand to two thousand feet
            from 1200 to 1500 people | from one thousand two hundred to one thousand five hundred people
            1200-1500 ft | one thousand two hundred to one thousand five hundred feet
            1430 people | one thousand four hundred and thirty people
            in 1944 | in nineteen forty-four
            until 2005 | until two thousand and five
            at 2005 | at twenty oh five
            from 1939 until 1945 | from nineteen thirty-nine until nineteen forty-five
            at 1430-1500 | at fourteen thirty to fifteen hundred
            at 1430–1500. | at fourteen thirty to fifteen hundred.
            between 1100 and 1130 | between eleven hundred and eleven thirty
            between 1100 and 1130 rpm | between one thousand one hundred and one thousand one hundred and thirty revolutions a minute
            1430 local people came | one thousand four hundred and thirty local people came
            before 1800 the town | before eighteen hundred the town
            at 1430, or 1500 if it rains | at fourteen thirty, or one thousand five hundred if it rains
            """)
    void fourDigitsAreATimeWhereTheWordsAroundThemSaySo(String written, String spoken) {
        assertThat(plain.expand(written).spoken()).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            The display starts at 1944. | The display starts at nineteen forty-four.
            10:30am | ten thirty a m
            10.30am | ten thirty a m
            the 20th | the twentieth
            May 4th | May the fourth
            4th May | the fourth of May
            a 1:72 model | a one to seventy-two model
            Est. 1987 | Established nineteen eighty-seven
            est. 1987 | established nineteen eighty-seven
            b. 1944 | born nineteen forty-four
            c. 1944 | circa nineteen forty-four
            Sat 2 May | Saturday the second of May
            Sat. 2 May | Saturday the second of May
            Sunday, 14 June | Sunday, the fourteenth of June
            14 Jun 2026 | the fourteenth of June twenty twenty-six
            2nd Lt Quillan | Second Lieutenant Quillan
            50:50 | fifty fifty
            2nd-hand | second-hand
            class of 2010 | class of twenty ten
            00:30 | oh oh thirty
            24:00 | twenty-four hundred
            noon–3pm | noon to three p m
            10–11am | ten to eleven a m
            10am–4pm | ten a m to four p m
            5th/6th | fifth and sixth
            2 pm | two p m
            2PM | two p m
            2 P.M. | two p m.
            3:00 pm | three p m
            the 12th/13th | the twelfth and thirteenth
            """)
    void datesAndTimesAsPeopleWriteThem(String written, String spoken) {
        assertThat(plain.expand(written).spoken()).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            12 in wide | twelve inches wide
            12 in | twelve inches
            a 12 in propeller | a twelve inch propeller
            12" wheels | twelve inch wheels
            The wheels are 12". | The wheels are twelve inches.
            6' tall | six feet tall
            She stands 6' 2" tall | She stands six feet two inches tall
            6'2" | six feet two inches
            6′ 2″ | six feet two inches
            5ft 10in | five feet ten inches
            12 in the air | twelve in the air
            3 in a row | three in a row
            0-60 in 4 s | zero to sixty in four seconds
            1980's | nineteen eighties
            540 cu in | five hundred and forty cubic inches
            540 cu. in. | five hundred and forty cubic inches
            1 in 4 | one in four
            one in 10 | one in ten
            5' | five feet
            5'10 | five feet ten
            "Look up at 300" he says | Look up at three hundred he says
            "Smoke on at 300" | Smoke on at three hundred
            'Turn at 90' is the call | Turn at ninety is the call
            12" and 14" wheels | twelve inches and fourteen inch wheels
            came 12 in a row | came twelve in a row
            3 in 4 | three in four
            6' and 7' | six feet and seven feet
            1990's style | nineteen nineties style
            in 5 min | in five minutes
            1 in 10 | one in ten
            and 1 in. of rain | and one inch of rain
            """)
    void feetAndInchesAreToldFromWordsAndQuotations(String written, String spoken) {
        assertThat(plain.expand(written).spoken()).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            12 litres/hour | twelve litres an hour
            300 km/hour | three hundred kilometres an hour
            miles/hour | miles an hour
            200 miles/hour | two hundred miles an hour
            2,000 ft/min | two thousand feet a minute
            2,000 feet/min | two thousand feet a minute
            90 l/h | ninety litres an hour
            60 kg/m2 | sixty kilograms a square metre
            12 gal/h | twelve gallons an hour
            15 gal/hr | fifteen gallons an hour
            2,700 rev/min | two thousand seven hundred revolutions a minute
            400 degrees/second | four hundred degrees a second
            400 deg/s | four hundred degrees a second
            9.8 m/s^2 | nine point eight metres a second squared
            18 lb/ft2 | eighteen pounds a square foot
            2 kg/hp | two kilograms a horsepower
            300 hp/tonne | three hundred horsepower a tonne
            £5/person | five pounds a person
            3 times/day | three times a day
            0–100 km/h | zero to one hundred kilometres an hour
            +/- 5 m | plus or minus five metres
            +/-5 g | plus or minus five g
            -8/+10 g | minus eight, plus ten g
            and/or | and or
            his/her | his or her
            AC/DC | A C D C
            3 lbs/hp | three pounds a horsepower
            £5/head | five pounds a head
            2 hp/kg | two horsepower a kilogram
            20 l/min | twenty litres a minute
            """)
    void ratesAreSaidForEach(String written, String spoken) {
        assertThat(plain.expand(written).spoken()).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            3/4 roll | three-quarter roll
            1/2 loop | half loop
            a 1/2 loop | a half loop
            a 3/4 roll | a three-quarter roll
            2 1/2 turns | two and a half turns
            1 ¾ | one and three quarters
            1 ¾ rolls | one and three-quarter rolls
            1 3/4 rolls | one and three-quarter rolls
            3/4 of a roll | three quarters of a roll
            ¾ roll | three-quarter roll
            wind 240/15 | wind two four zero at fifteen
            1944/45 | nineteen forty-four to forty-five
            14/6 | fourteen six
            24/7 | twenty-four seven
            50/50 | fifty fifty
            10/10 | ten out of ten
            1/3 | a third
            1/10 of a second | a tenth of a second
            1/100th of a second | a hundredth of a second
            1/72 scale | one seventy-second scale
            ½-loop | half loop
            1½-turn spin | one and a half turn spin
            2½-turn | two and a half turn
            1/2-roll | half-roll
            3/4-loop | three-quarter-loop
            wind 270/8 kt | wind two seven zero at eight knots
            ½ mile | half mile
            """)
    void partsOfRollsAndLoops(String written, String spoken) {
        assertThat(plain.expand(written).spoken()).isEqualTo(spoken);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            8-10 seconds | eight to ten seconds
            8–10 s | eight to ten seconds
            £2m engine | two million pounds engine
            a £2m engine | a two million pound engine
            1,200 hp | one thousand two hundred horsepower
            300hp | three hundred horsepower
            a 300hp engine | a three hundred horsepower engine
            the late '40s | the late forties
            the mid-1950s | the mid nineteen fifties
            25 °C | twenty-five degrees Celsius
            -5 °C | minus five degrees Celsius
            −5° | minus five degrees
            4x | four times
            4x champion | four times champion
            4x4 | four by four
            100% | one hundred per cent
            3 min 20 s | three minutes twenty seconds
            3m 20s | three minutes twenty seconds
            3m20s | three minutes twenty seconds
            3:20 min | three minutes twenty
            Rwy 09L | Runway zero nine left
            3 000 m | three thousand metres
            -3 g | minus three g
            from +10 to -8 g | from plus ten to minus eight g
            .5 s | point five seconds
            8-point roll | eight-point roll
            90° | ninety degrees
            a 90° turn | a ninety degree turn
            90-degree turn | ninety-degree turn
            a 45-degree line | a forty-five-degree line
            2 x 180 hp | two times one hundred and eighty horsepower
            2×180 hp | two times one hundred and eighty horsepower
            6-cyl engine | six cylinder engine
            a 6-cylinder engine | a six-cylinder engine
            a V-8 | a V eight
            9.5L engine | nine point five litre engine
            a 9.5-litre engine | a nine point five-litre engine
            5 kts | five knots
            15kt | fifteen knots
            240° at 15 kt | two hundred and forty degrees at fifteen knots
            20k people | twenty thousand people
            1st–3rd May | the first to the third of May
            1-3 May | the first to the third of May
            the 21st century | the twenty-first century
            5 to 6 g | five to six g
            a 4-g pull | a four g pull
            3-ship | three-ship
            a 9-ship formation | a nine-ship formation
            4-blade prop | four-blade prop
            2-seater | two-seater
            4-stroke | four-stroke
            pp 7-9 | pages seven to nine
            123.45 MHz | one hundred and twenty-three point four five megahertz
            $3.5bn | three point five billion dollars
            €20 | twenty euros
            £5.99 | five pounds ninety-nine
            50p | fifty pence
            99p | ninety-nine pence
            £1.2M | one point two million pounds
            2-4-6-8 | two four six eight
            1-2-3 | one, two, three
            5-4-3-2-1 | five, four, three, two, one
            ±0.5 s | plus or minus zero point five seconds
            1.5x | one point five times
            x2 | times two
            5 cu ft | five cubic feet
            5000 cc | five thousand c c
            a 1300cc engine | a one thousand three hundred c c engine
            24-hour | twenty-four-hour
            30-sec wait | thirty second wait
            30 sec. | thirty seconds.
            3,5 m | three point five metres
            T+5 | T plus five
            T-10 s | T minus ten seconds
            approx 300m | approximately three hundred metres
            ca. 300 m | circa three hundred metres
            max. 6 g | maximum six g
            Max 250 kts | Maximum two hundred and fifty knots
            Vne 250 kt | V N E two hundred and fifty knots
            3rd-4th | third to fourth
            1° | one degree
            0.1 g | zero point one g
            the '30s and '40s | the thirties and forties
            1 lb 3 oz | one pound three ounces
            12 st | twelve stone
            8 oz | eight ounces
            1,5 t | one point five tonnes
            1.5t | one point five tonnes
            600 lb. | six hundred pounds.
            600 lb. of thrust | six hundred pounds of thrust
            ≥ 300 ft | at least three hundred feet
            ≤ 6 g | at most six g
            T-6 | T six
            5 st 6 lb | five stone six pounds
            3-2-1 smoke on | three, two, one smoke on
            a 5 min break | a five minute break
            it does 0-60 | it does zero to sixty
            the 60s | the sixties
            6 g's | six gees
            an 8-ft banner | an eight foot banner
            for 20 min. | for twenty minutes.
            """)
    void measuresMoneyAndSigns(String written, String spoken) {
        assertThat(plain.expand(written).spoken()).isEqualTo(spoken);
    }
}
