package crowdline.arrange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.draft.Drafted;
import crowdline.flight.FigureFlight;
import crowdline.flight.Predictor;
import crowdline.layout.LaidOut;
import crowdline.measure.Units;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A figure begins as high and as fast as what leads to it is told, unless the list says otherwise of it. */
class HandedOnTest {
    private static List<FigureFlight> flown(String list) {
        return flownBy("strong aerobatic monoplane", list);
    }

    private static FigureFlight figure(List<FigureFlight> act, String name) {
        return act.stream().filter(f -> f.name().equals(name)).findFirst().orElseThrow();
    }

    private static List<FigureFlight> flownBy(String kind, String list) {
        ShowArranging.Made made = Drafted.arranged(Drafted.empty(), kind, "Ada Quillan", list);
        return new Predictor(
                        made.show(),
                        CatalogueFile.shipped(),
                        made.act(),
                        made.act().variants().get(0))
                .predict()
                .figures();
    }

    private static FigureFlight flown(String list, String figure) {
        return flown(list).stream()
                .filter(f -> f.figureId().equals(figure))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void itBeginsWhereTheRunInEnds() {
        FigureFlight loop = flown("run in from the left at 170 kt, 1500 ft\nloop\nslow roll", "loop");

        assertThat(Units.ftFromM(loop.lowestM())).isCloseTo(1500, within(100.0));
        assertThat(Units.ktFromMps(loop.entryMps())).isCloseTo(170, within(3.0));
    }

    @Test
    void itsOwnHeightWins() {
        FigureFlight loop = flown("run in from the left at 1500 ft\nloop at 800 ft\nslow roll", "loop");

        assertThat(Units.ftFromM(loop.lowestM())).isCloseTo(800, within(100.0));
    }

    @Test
    void aSecondRunInIsNoReasonToClimb() {
        FigureFlight roll = flown("loop\nrun in from the left at 2500 ft\nslow roll\nlow pass", "slow-roll");

        assertThat(Units.ftFromM(roll.lowestM())).isLessThan(1000);
    }

    @Test
    void whatComesAfterThatIsFree() {
        FigureFlight pass = flown("run in from the left at 1500 ft\nloop\nlow pass", "low-pass");

        assertThat(Units.ftFromM(pass.lowestM())).isLessThan(1000);
    }

    /** A climb took 15 s on the spot, half a minute of turning back climbed after it, and the spin was flown at 1,300 ft. */
    @Test
    void aClimbIsTheWayToTheHeightItIsTold() {
        String list = "low pass\nclimb to 2500 ft\nspin\nloop";
        FigureFlight climb = flown(list, "climb");

        assertThat(Units.ftFromM(climb.highestM())).isCloseTo(2500, within(150.0));
        assertThat(flown(list, "spin").highestM()).isCloseTo(climb.highestM(), within(60.0));
        assertThat(figures(list)).startsWith("running in", "low pass", "climb", "spin");
    }

    @Test
    void aClimbToSomethingLowTakesItsTimeAsItIsTold() {
        assertThat(figures("low pass from the left\nclimb\nlow pass from the right"))
                .contains("climb");
        assertThat(seconds(flown("low pass\nclimb (20 s)\nspin", "climb"))).isCloseTo(20, within(0.01));
    }

    /** It was given 140 kt at its start, and what it leads to came round for less. */
    @Test
    void aDiveLeadsToTheSpeedItIsTold() {
        String list = "low pass\ndive to 170 kt\nloop\nslow roll";

        assertThat(Units.ktFromMps(flown(list, "loop").entryMps())).isCloseTo(170, within(6.0));
        assertThat(Units.ktFromMps(flown(list, "dive").entryMps())).isLessThan(150);
    }

    /** It was flown in the middle, ended past it, and came round for half a minute for the loop it was to lead to. */
    @ParameterizedTest
    @CsvSource({
        "light aerobatic biplane, 160",
        "light aerobatic biplane, 135",
        "strong aerobatic monoplane, 200",
        "jet trainer, 300",
        "piston fighter, 260",
        "aerobatic glider, 115"
    })
    void aDiveEndsWhereItsLoopBegins(String kind, double kt) {
        List<FigureFlight> act =
                flownBy(kind, "take-off\ndive in from the left, %.0f kt\nloop\nstall turn right end".formatted(kt));
        FigureFlight dive = figure(act, "dive in");
        FigureFlight loop = figure(act, "loop");

        assertThat(loop.startS() - dive.endS()).as("between them").isLessThan(15);
        assertThat(Units.ktFromMps(loop.entryMps())).isCloseTo(kt, within(0.06 * kt));
        assertThat(loop.exitAlongM()).as("off the middle").isBetween(-250.0, 250.0);
    }

    /** From the speed it was told the loop is not flown, or does not close: it was handed that, and only given a time. */
    @ParameterizedTest
    @CsvSource({"jet trainer, 280", "piston fighter, 205", "fast jet, 345"})
    void aDiveIsNoSlowerThanWhatItLeadsToTakes(String kind, double takesKt) {
        ShowArranging.Made made = Drafted.arranged(
                Drafted.empty(), kind, "Ada Quillan", "take-off\ndive in from the left, 160 kt\nloop\nlow pass");
        List<FigureFlight> act = flownBy(kind, "take-off\ndive in from the left, 160 kt\nloop\nlow pass");

        assertThat(made.arranged().findings())
                .extracting(LaidOut.Finding::message)
                .containsExactly("dive in is told 160 kt, and loop after it takes %.0f kt: it dives on to that"
                        .formatted(takesKt));
        assertThat(Units.ktFromMps(figure(act, "loop").entryMps())).isCloseTo(takesKt, within(0.06 * takesKt));
    }

    @Test
    void aSpeedThatTheLoopItselfIsToldIsLeftAlone() {
        ShowArranging.Made made = Drafted.arranged(
                Drafted.empty(), "jet trainer", "Ada Quillan", "low pass\ndive in, 160 kt\nloop at 300 kt\nlow pass");

        assertThat(made.arranged().findings())
                .extracting(LaidOut.Finding::message)
                .noneMatch(said -> said.contains("dives on"));
    }

    /** A dive from where the climb went to comes down as far as it does, and the way on to the loop is straight. */
    @Test
    void aDiveFromAHeightLeadsStraightToItsLoop() {
        List<FigureFlight> act =
                flownBy("aerobatic two-seater", "take-off\nclimb to 2000 ft\ndive in\nloop\nslow roll");
        FigureFlight dive = figure(act, "dive in");

        assertThat(Units.ftFromM(dive.highestM())).isCloseTo(2000, within(60.0));
        assertThat(figure(act, "loop").startS() - dive.endS()).isLessThan(20);
    }

    /** It climbed 700 ft straight on, and turned back for the room that took. */
    @Test
    void aTurnBehindALowPassBeginsAsLow() {
        FigureFlight wingOver =
                flown("low pass at 150 ft from the right\nwing-over\nlow pass from the left", "wing-over");

        assertThat(Units.ftFromM(wingOver.lowestM())).isBetween(100.0, 250.0);
    }

    /** Nobody pulls into a loop at 150 ft because a pass was told so. */
    @Test
    void aLoopBehindALowPassDoesNot() {
        assertThat(Units.ftFromM(flown("low pass at 150 ft\nloop", "loop").lowestM()))
                .isGreaterThan(400);
    }

    private static double seconds(FigureFlight figure) {
        return figure.endS() - figure.startS();
    }

    private static List<String> figures(String list) {
        return flown(list).stream()
                .map(FigureFlight::name)
                .filter(name -> !name.startsWith("flying on"))
                .toList();
    }
}
