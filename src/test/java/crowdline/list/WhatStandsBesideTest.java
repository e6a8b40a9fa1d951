package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.about.AboutAct;
import crowdline.list.line.ListLine;
import crowdline.list.line.Side;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said beside a figure and is none itself: where it comes out, what the aircraft has hanging out, what another does. */
class WhatStandsBesideTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    private static List<ListLine> read(String told) {
        return READER.read(told.replace('~', '\n')).lines();
    }

    /** @param flown figures with a hyphen for each space, parted by spaces */
    private static void assertFlown(String told, String flown) {
        Flown.assertFlown(read(told).stream().map(ListLine::figure).toList(), flown);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "spin, three turns, recovering by 1000 ft",
                "spin 3 turns (recovered at 1,000 ft)",
                "spin, 3 turns, out at about 300 metres",
                "split S (exit 500')"
            })
    void whereAFigureComesOutIsNotWhereItBegins(String told) {
        ListLine line = read("loop~" + told + "~low pass").get(1);

        assertThat(line.heightFt()).isNull();
        assertThat(line.note()).containsPattern("\\d");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "spin at 3000 ft, out at 1500 ft | 3000",
                "spin from 3000 ft, recover by 1500 ft | 3000",
                "low pass out to the right at 200 ft | 200"
            })
    void whereItBeginsIsStillHeard(String told, double ft) {
        assertThat(read("loop~" + told + "~low pass").get(1).heightFt()).isEqualTo(ft);
    }

    @Test
    void aColumnHoldsWhatItsWholeHeadSays() {
        List<ListLine> lines = read(
                "SEQUENCE\tENTRY SPEED\tENTRY HEIGHT\tEXIT HEIGHT\tREMARKS~Derry turn\t380\t800\t900\tto crowd right~"
                        + "Loop\t400\t500\t1000~Half Cuban\t350\t600\t700~Barrel roll\t410\t510\t520~High speed pass\t540\t300\t310\tfrom right");

        assertThat(lines).extracting(ListLine::entryKt).containsExactly(380.0, 400.0, 350.0, 410.0, 540.0);
        assertThat(lines).extracting(ListLine::heightFt).containsExactly(800.0, 500.0, 600.0, 510.0, 300.0);
        assertThat(lines).allMatch(ListLine::sure);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pull up 500', turn, gear down, airbrakes, land | pull-to-vertical steep-turn landing",
                "nose down, accelerate, pedal turn, quick stop | pedal-turn quick-stop",
                "stay low, pull to the vertical, roll | vertical-roll-up",
                "low pass, flaps out, slow right down, gear down, loop | low-pass loop"
            })
    void whatIsSetInTheCockpitIsNoFigure(String told, String flown) {
        assertFlown(told, flown);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "stall turn, quarter roll up, three-quarter roll down | stall-turn",
                "stall turn~quarter roll down~spin | stall-turn spin",
                "quarter roll, level off at 1500 | level-out",
                "4. Loop + snap on top~5. Spin~6. Loop | avalanche spin loop",
                "loop, flick at the top, spin | avalanche spin",
                "loop, flick, spin | loop flick-roll spin",
                "45 up line, 1.5 snap, spin | 45-degree-up-line-with-roll spin",
                "pull to 45, 2 x 4 point, push level | 45-degree-up-line-with-roll push-over",
                "hesitation roll, 8pt | eight-point-roll",
                "4 x 1/4 roll, spin | four-point-roll spin"
            })
    void rollsBelongToTheLinesTheyAreFlownOn(String told, String flown) {
        assertFlown(told, flown);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "She takes off and then returns along the line with a gentle loop, followed by a spin | take-off reposition loop spin",
                "We come in from the right~loop~spin | run-in loop spin",
                "I come over the top of the trees from the left, going flat out, and pull straight up | run-in pull-to-vertical",
                "Then I come in from the right, sort of diving, and it's a loop | dive loop",
                "I come in from the left, low, loop | run-in loop",
                "loop~spin~Min height flypast: 100 ft    Min height aeros: 500 ft | loop spin",
                "1. Min height pass~2. Loop~3. Spin | low-pass loop spin"
            })
    void arrivingIsFlownAndLimitsAreNot(String told, String flown) {
        assertFlown(told, flown);
    }

    @ParameterizedTest
    @CsvSource({
        "falling leaf, falling leaf",
        "auto-rotation to land, helicopter autorotation",
        "tailchase, tail chase",
        "goldfish, goldfish"
    })
    void whatPeopleCallItIsAFigureOfTheCatalogue(String told, String figure) {
        assertThat(read("loop~" + told + "~low pass").get(1).figure()).isEqualTo(figure);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 x loop~2 x aileron roll~1 x stall turn~3 x spin~1 x low pass | loop*1 aileron-roll*2 stall-turn*1 spin*3 low-pass*1",
                "1. Spin~2. Loop, loop, loop~3. Stall turn~4. Lazy eight~5. Low pass | spin loop*3 stall-turn lazy-eight low-pass",
                "loop~the spin, it's a three turner~low pass | loop spin*3 low-pass",
                "loop~spin~landing~Approx 9' | loop spin landing"
            })
    void howOftenIsHeardHoweverItIsWritten(String told, String flown) {
        assertThat(read(told))
                .extracting(line -> (line.figure() + (line.count() == null ? "" : "*" + Math.round(line.count())))
                        .replace(' ', '-'))
                .containsExactly(flown.split(" "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Tug takes me to 3500. I release and fly a slow roll, then a loop | tow tow-release slow-roll loop",
                "loop, inverted 10 secs, half roll out, spin | loop inverted-pass half-roll spin",
                "I take off, pull vertical with a roll on the way up then wing over, loop | take-off vertical-roll-up wing-over loop",
                "Parachute team, 6 jumpers~~14:00 run in~14:05 exit~14:09 freefall~14:15 canopy landing | run-in jump freefall canopy-landing"
            })
    void whatIsSaidInOneBreathIsReadApart(String told, String flown) {
        assertFlown(told, flown);
    }

    @ParameterizedTest
    @ValueSource(strings = {"toilet roll cutting", "ribbon cutting, 3 cuts", "drum roll"})
    void whatOnlySoundsLikeAFigureIsTimed(String told) {
        assertThat(read("loop~- " + told + "~low pass").get(1).figure()).isNull();
    }

    @Test
    void theTopOfAFigureIsNotWhereItBegins() {
        assertThat(read("low pass~Loop, entry 240 mph, top approx. 3,000 ft")
                        .get(1)
                        .heightFt())
                .isNull();
    }

    @Test
    void aLetterAheadOfAStrokeCountsItsLine() {
        assertFlown(
                "a / high speed pass R-L / 280 kts~b / vertical roll / x2~c / stall turn / left~d / tumble~e / low pass",
                "low-pass vertical-roll-up stall-turn lomcovak low-pass");
    }

    @Test
    void whoFliesIsFoundBetweenStrokes() {
        assertThat(AboutAct.of(READER.read(
                                "Sat 14.30 / Jules Amankwah / biplane / 6 min~~loop~spin~low pass".replace('~', '\n')))
                        .pilot())
                .isEqualTo("Jules Amankwah");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "A/ pair, from the right, close formation, 400 kt, run-in | run-in",
                "B/ lead: slow roll R-L | slow-roll",
                "SOLO from the left, 4pt roll at 200 ft | four-point-roll",
                "pair loop | formation-loop",
                "#1 and #4 crossover at centre | opposition-pass",
                "Line astern, quarter clover | quarter-clover",
                "number 2: Immelmann | half-loop-with-roll-out-on-top"
            })
    void whoFliesStandsAheadOfIt(String told, String flown) {
        assertFlown("loop~" + told + "~low pass", "loop " + flown + " low-pass");
        assertThat(read("loop~" + told + "~low pass").get(1).count()).isNull();
    }

    @ParameterizedTest
    @ValueSource(strings = {"pass 2: right to left, 300 ft", "PASS 3 - from the right, 300 ft"})
    void theNumberOfAPassCountsNone(String told) {
        ListLine pass = read("loop~" + told + "~stall turn").get(1);

        assertThat(pass.figure()).isEqualTo("low pass");
        assertThat(pass.count()).isNull();
        assertThat(pass.note()).isNull();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "360 orbit to the left, 45 deg bank, over the field | steep-turn",
                "snap roll x2 on the 45 up | flick-roll",
                "4pt roll, alternating | four-point-roll",
                "break, two go left, one right (not yet landing) | break",
                "release over the centre (tug breaks off to the right) | tow-release",
                "take-off, AB | take-off",
                "torque roll <-- we'd like your drum roll | torque-roll",
                "spin, flat, 5 turns or so | flat-spin",
                "pull up, 1.5 rolls | vertical-roll-up",
                "vertical pull with 2 aileron rolls | vertical-roll-up",
                "eight-sided loop | loop",
                "tight 270 right | steep-turn"
            })
    void whatIsSaidOfAFigureIsNoOther(String told, String flown) {
        assertFlown("barrel roll~" + told + "~low pass", "barrel-roll " + flown + " low-pass");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Heights are entry heights.",
                "I did 214 loops once in one go.",
                "Roll rate 300 degrees a second.",
                "We dropped the heart.",
                "A axis = along the crowd, B axis = across.",
                "PILOT NEV CARDLE"
            })
    void whatIsOnlyToldIsNotFlown(String told) {
        assertFlown(
                "loop~stall turn~barrel roll~spin~low pass~landing~~" + told,
                "loop stall-turn barrel-roll spin low-pass landing");
    }

    @Test
    void aNameIsNoMisspeltFigure() {
        assertFlown("hi its Cass from the yellow biplane, loop, spin, low pass", "loop spin low-pass");
        assertFlown("loop, spin, low pass.~I fly a Merrow Kestrine 330.", "loop spin low-pass");
        assertThat(read("We are happy to come, four of us, leader Bo Stell, wingman Ivo Lope.~~loop, spin, low pass"))
                .extracting(ListLine::figure)
                .doesNotContain("stall turn");
        assertThat(read("He flies the J-6, a single engine, 78 kN dry, 110 with burner.~~loop, spin, low pass"))
                .extracting(ListLine::figure)
                .doesNotContain("Derry turn");
    }

    @Test
    void whatTheSameFigureIsCalledInBracketsHidesNothing() {
        ListLine turn = read("loop~Turn (= stall turn / hammerhead) to the left, 270 km/h~low pass")
                .get(1);

        assertThat(turn.side()).isEqualTo(Side.LEFT);
        assertThat(turn.entryKt()).isEqualTo(146);
    }

    @Test
    void whoWillLandLands() {
        assertFlown(
                "loop, and then last thing is a torque roll in the middle and I'll land.", "loop torque-roll landing");
    }

    @Test
    void anEverydayWordIsNoMisspeltNumber() {
        assertThat(read("loop~wing-over with no fire~low pass").get(1).count()).isNull();
    }

    @Test
    void aHelicopterTurnsWhereItStands() {
        assertFlown(
                "take-off~hover at centre~turn 360 to the left~sideways flight~hover~turn to face the crowd~bow~landing",
                "take-off hover pedal-turn sideways-flight hover pedal-turn bow landing");
        assertFlown("hover~pirouette left, 360 deg, on the spot~bow~landing", "hover pedal-turn bow landing");
    }

    @Test
    void speedsWithDotsAreSpeeds() {
        assertThat(read("loop~run-in at 280 m.p.h. from the left~low pass")
                        .get(1)
                        .entryKt())
                .isEqualTo(243);
    }

    @Test
    void aFigureThatChangedPlacesTakesTheTimeOfItsPlace() {
        List<ListLine> lines = read("0:10 loop~0:40 slow roll~1:10 stall turn~1:40 spin~2:10 barrel roll~2:40 low pass"
                + "~~I have swapped the stall turn and the spin.");

        assertThat(lines.get(2).figure()).isEqualTo("spin");
        assertThat(lines).extracting(ListLine::beginsS).containsExactly(10.0, 40.0, 70.0, 100.0, 130.0, 160.0);
    }
}
