package crowdline.list;

import static crowdline.list.Flown.assertFlown;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.show.figure.Placing.Heading;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said above the take-off and below the landing: talk, second thoughts, and what was forgotten. */
class AroundTheFlightTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    private static List<ListLine> read(String... lines) {
        return listed(lines).lines();
    }

    private static FigureList listed(String... lines) {
        return READER.read(String.join("\n", lines));
    }

    @Test
    void nothingIsFlownInATalkAboveTheTakeOff() {
        FigureList list = listed(
                "It's the grey single-seater. I'll run in from your side after the gyroplane has cleared.",
                "",
                "Take-off",
                "Loop",
                "Stall turn",
                "Slow roll",
                "Landing");

        assertFlown(list.lines(), "take-off loop stall-turn slow-roll landing");
        assertThat(list.notes().toString()).contains("I'll run in from your side");
    }

    @Test
    void noRemarkBelowTheLandingIsFlown() {
        List<ListLine> lines = read(
                "Take-off, barrel roll, loop, stall turn, spin, low pass, land. Rolls up to the fence and hands over a rose.",
                "",
                "Please keep quiet until the fast pass.");

        assertFlown(lines, "take-off barrel-roll loop stall-turn spin low-pass landing");
    }

    /** Somebody who only tells may have landed in the middle. */
    @Test
    void whatIsListedBelowALandingIsFlown() {
        List<ListLine> lines =
                read("Take-off", "Loop", "Stall turn", "Spin", "Landing", "Take-off", "Slow roll", "Low pass");

        assertFlown(lines, "take-off loop stall-turn spin landing take-off slow-roll low-pass");
    }

    @Test
    void whatWasForgottenStandsBesideWhatItIsFlownBeside() {
        List<ListLine> lines = read(
                "1. Take off",
                "2. Loop",
                "3. Half Cuban",
                "4. Inverted spin, 2 turns",
                "5. Knife edge",
                "6. Land",
                "",
                "After the inverted spin there's a stall turn or I end up in the next county.",
                "P.S. Yes: a bunt straight after the half Cuban. Sorry.");

        assertFlown(lines, "take-off loop half-Cuban bunt inverted-spin stall-turn knife-edge-pass landing");
    }

    @Test
    void aLineIsLeftOutByItsRank() {
        List<ListLine> lines = read(
                "1. Take off", "2. Loop", "3. Tail slide", "4. Spin", "5. Land", "", "Scrap the 3rd, it worries me.");

        assertFlown(lines, "take-off loop spin landing");
    }

    /** The lines of an answered letter end in the middle of a phrase. */
    @Test
    void oneOfTwoIsExchangedByItsRank() {
        List<ListLine> lines = read(
                "> I have put an avalanche in where the",
                "> second loop was. The rest stands.",
                ">",
                ">> 1 Take-off",
                ">> 2 Loop, 130 kts",
                ">> 3 Slow roll, 120 kts",
                ">> 4 Loop, 110 kts",
                ">> 5 Steep turn towards",
                ">>    the tower and round",
                ">> 6 Land");

        assertFlown(
                lines.stream().filter(line -> line.figure() != null).toList(),
                "take-off loop slow-roll avalanche steep-turn landing");
        assertThat(lines.get(1).count()).isNull();
        assertThat(lines.get(1).entryKt()).isEqualTo(130);
    }

    /** Two times that stand in a sentence below are no reason to take each for a figure. */
    @Test
    void timesOfDayAreNoFiguresWhateverIsSaidOfThemBelow() {
        List<ListLine> lines = read(
                "15:35     Start (take-off) together, Ada leads",
                "15:37     fly past in pair, 100 m",
                "15:40     Ada: loop",
                "15:40     Ada: stall turn",
                "15:43     Ada: wing-over",
                "15:51     Landing",
                "",
                "In case of rain only 15:37, 15:35 and landing.");

        assertFlown(lines, "take-off formation-pass loop stall-turn wing-over landing");
    }

    @Test
    void aColumnOfLoadsMakesNoOtherFigure() {
        List<ListLine> lines = read(
                "Figure          | Speed | Height | max g",
                "Wing-over right |       |        | 2",
                "Loop            | 120   | 200    | 3",
                "Steep turn      | 100   | 400    | 4",
                "Slow roll       | 120   | 400    | 1");

        assertFlown(lines, "wing-over loop steep-turn slow-roll");
    }

    @Test
    void passesThatAreCountedAreToldOneByOne() {
        List<ListLine> lines = read("Three passes: first from crowd left at 300 ft, second with the doors open from the"
                + " right, third gear down from the left. Then a wing-over.");

        assertFlown(lines, "low-pass low-pass low-pass wing-over");
        assertThat(lines.subList(0, 3))
                .extracting(ListLine::heading)
                .containsExactly(Heading.RIGHT, Heading.LEFT, Heading.RIGHT);
        assertThat(lines).extracting(ListLine::count).containsOnlyNulls();
    }

    @Test
    void ofThreePassesTwoMayBeLeft() {
        List<ListLine> lines = read("Take-off", "Three passes, first from the left, second from the right", "Land");

        assertThat(lines.get(2).count()).isEqualTo(2);
    }

    /** The turns of a spin are not flown one by one. */
    @Test
    void aSecondTurnIsNoSecondSpin() {
        assertFlown(read("Loop", "Spin, two turns, the second faster", "Land"), "loop spin landing");
    }

    @Test
    void sheMakesAClimbingTurn() {
        List<ListLine> lines = read(
                "She hovers and does a pedal turn all the way around so everybody gets a look.",
                "Next she departs into forward flight and makes a climbing left turn out over the lake.",
                "Quick stop in front of the crowd.");

        assertFlown(lines, "hover pedal-turn chandelle quick-stop");
    }

    /** A line of a hurried list may be as long as those that a program broke, but they are not all so. */
    @Test
    void oneLongLineOfAHurriedListWasNotBroken() {
        List<ListLine> lines = read(
                "hey its cody, sorry this is late, phones at 4 pct and im under the wing changing a tire",
                "",
                "ok so sat seq same airplane the orange one",
                "t/o straight to vertical",
                "pull hammerhead R",
                "knife edge pass l to r",
                "then double hammer w/ 2 pt roll up, oh wait thats the old one we dropped that",
                "tumble (call it lomcovak if ur crowd likes fancy words)",
                "torque roll",
                "split s");

        assertThat(lines).extracting(ListLine::figure).contains("lomcovak", "torque roll", "split S");
    }

    @Test
    void goingUpToAHeightIsAClimb() {
        List<ListLine> lines = read(
                "take off, then I go up behind the crowd to 1500 ft",
                "dive in from the right",
                "slow roll. well its meant to be slow",
                "loop");

        assertFlown(lines, "take-off climb dive slow-roll loop");
        assertThat(lines.get(1).heightFt()).isEqualTo(1500);
    }

    @Test
    void whatIsCancelledBesideItIsNotFlown() {
        List<ListLine> lines = read(
                "1) Loop",
                "2) here was a chandelle, now it is a half Cuban",
                "3) Spin 2 turns   (deleted, the tower does not like it)",
                "4) Lazy eight (cancelled, fuel)",
                "5) Slow roll",
                "6) Landing");

        assertFlown(lines, "loop half-Cuban slow-roll landing");
    }

    @Test
    void whatATelephoneWritesIsNotFlown() {
        List<ListLine> lines = read("loop", "half cuban out of taht", "*that", "<Media omitted>", "stall turn", "spin");

        assertFlown(lines, "loop half-Cuban stall-turn spin");
    }

    @Test
    void oneIsMadeBeforeAnotherByTheirNumbers() {
        List<ListLine> lines = read(
                "1) take off",
                "2) loop",
                "3) steep turn",
                "4) Derry turn",
                "5) landing",
                "",
                "PS: he called just now. Number 4 he will make before number 3, because of the sun.");

        assertFlown(lines, "take-off loop Derry-turn steep-turn landing");
    }

    /** "Merrow" is near to "mirror". */
    @Test
    void aDeskThatSignsAndARadioAreNotFlown() {
        List<ListLine> lines = read(
                "Low pass from the right, left orbit, second pass from the left, rocks wings and goes home.",
                "No landing, crew on 118.650.",
                "Regards, Ops desk, Merrow Air Transport Flight");

        assertFlown(lines, "low-pass steep-turn low-pass wing-rock");
    }
}
