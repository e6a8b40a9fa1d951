package crowdline.console.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.console.keys.Command;
import crowdline.console.path.SkyView;
import crowdline.console.walk.WalkView.ScoreLine;
import crowdline.console.walk.WalkView.Value;
import crowdline.measure.Measures;
import crowdline.show.Act;
import crowdline.show.aircraft.Outline;
import crowdline.storage.show.CatalogueFile;
import crowdline.timing.Pass;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WalkTest {
    private final SmallTour tour = new SmallTour();
    private final Walk walk = tour.walk();

    /** The walk begins eight seconds before the first figure, for its call. */
    private static final double LEAD_S = 8;

    private WalkView at(double nowS) {
        return walk.view(nowS);
    }

    private static String value(WalkView view, String label) {
        return view.flying().values().stream()
                .filter(v -> v.label().equals(label))
                .map(Value::value)
                .findFirst()
                .orElseThrow();
    }

    private static List<String> score(WalkView view) {
        return view.saying().score().stream().flatMap(l -> Stream.of(line(l))).toList();
    }

    private static String line(ScoreLine line) {
        var mark = line.mark();
        return mark == null ? line.text() : mark.word();
    }

    @ParameterizedTest
    @EnumSource(Command.class)
    void everyKeyOfTheWalkDoesSomethingAndNoOther(Command command) {
        // The place itself opens the note.
        if (command.scope() == Command.Scope.WALK && command != Command.NOTE) {
            assertThatCode(() -> walk.command(command, 1)).doesNotThrowAnyException();
        } else {
            assertThatThrownBy(() -> walk.command(command, 1)).hasMessageContaining("no command of the walk");
        }
    }

    @Test
    void anotherActIsBegunWithUnlessAPassIsBeingTimed() {
        Act one = walk.tour().act();
        Act two = new Act(
                "a2",
                "Another",
                one.performer(),
                one.airframe(),
                one.slotStart(),
                one.slotMinutes(),
                one.entry(),
                one.figures(),
                one.variants(),
                one.remarks());
        Walk both = tour.walk(one, two);
        both.command(Command.TIME_PASS, 0);
        both.chooseAct("a2");
        assertThat(both.tour().act()).isEqualTo(one);
        both.command(Command.TIME_PASS, 1);
        both.chooseAct("a2");
        assertThat(both.tour().act()).isEqualTo(two);
        assertThat(both.view(2).top().clock()).isEqualTo("\u22120:08 of 0:30");
    }

    @Test
    void whereThereIsNothingElseTheWalkStaysWhereItIsAndSaysWhy() {
        walk.command(Command.WALK_NEXT, 0);
        walk.command(Command.SECOND_ON, 0);
        String before = at(0).top().clock();
        walk.command(Command.WALK_ACT, 0);
        assertThat(at(0).hint()).isEqualTo("This show has no other act");
        walk.command(Command.WALK_TIMES, 0);
        assertThat(at(0).hint()).startsWith("There is no pass of this variant yet");
        assertThat(at(0).top().clock()).isEqualTo(before).isNotEqualTo("\u22120:08 of 0:30");
    }

    /** The show of this walk has one act, "a1". */
    @Test
    void anActThatIsNotThereOrChosenAlreadyChangesNothing() {
        walk.command(Command.WALK_NEXT, 0);
        String before = at(0).top().clock();
        walk.chooseAct("another");
        walk.chooseAct("a1");
        assertThat(at(0).top().clock()).isEqualTo(before);
        assertThat(walk.tour().act().id()).isEqualTo("a1");
    }

    @Test
    void playedAsFlownTheFigureAndItsNumbersAreThoseOfThatSecond() {
        walk.command(Command.PLAY, 100);
        WalkView view = at(100 + LEAD_S + 12);

        assertThat(view.flying().name()).isEqualTo("Stall turn");
        assertThat(view.flying().place()).isEqualTo("2 of 3");
        assertThat(view.flying().element()).isEqualTo("pull");
        // 50 m/s in knots and miles an hour (111.8, said to five), and 120 m in feet: 1 kt = 0.514444 m/s, 1 ft =
        // 0.3048 m.
        assertThat(value(view, "Speed: 110 mph")).isEqualTo("97 kt");
        assertThat(value(view, "Height")).isEqualTo("390 ft");
        assertThat(value(view, "Load")).isEqualTo("+1.0 g");
        assertThat(value(view, "Where")).isEqualTo("100 m right, 100 m out");
        assertThat(view.top().clock()).isEqualTo("0:12 of 0:30");
    }

    @Test
    void numbersAreInTheUnitsOfTheCommentatorWithTheCrowdsBesideWhereTheyDiffer() {
        walk.command(Command.PLAY, 100);
        WalkView metric = walk.view(100 + LEAD_S + 12, Measures.of("km/h,m"));
        assertThat(value(metric, "Speed: 110 mph")).isEqualTo("180 km/h");
        assertThat(value(metric, "Height: 390 feet")).isEqualTo("120 m");
        assertThat(value(walk.view(100 + LEAD_S + 12, Measures.of("mph")), "Speed"))
                .isEqualTo("112 mph");
    }

    @Test
    void figureIsSeenFromTheCrowdLineWholeBeforeItAndAtItsMomentInIt() {
        SkyView before = at(0).flying().sky();
        assertThat(before.flown().fromS()).isZero();
        assertThat(before.atS()).isEmpty();
        walk.command(Command.PLAY, 100);
        SkyView inIt = at(100 + LEAD_S + 12).flying().sky();
        assertThat(inIt.atS()).hasValue(12);
        assertThat(inIt.flown().fromS()).isEqualTo(10);
        assertThat(inIt.flown().at(12).place().x()).isCloseTo(100, within(1e-6));
        assertThat(inIt.eye().crowdM()).isEqualTo(150);
        assertThat(inIt.outline()).isEqualTo(Outline.BIPLANE);
    }

    @Test
    void aFigureThatIsOnlyTimedStandsStillAsASketch() {
        Walk timed = tour.timed(CatalogueFile.shipped());
        timed.command(Command.PLAY, 100);
        SkyView sketch = timed.view(100 + LEAD_S + 2).flying().sky();
        assertThat(sketch.isEmpty()).isFalse();
        assertThat(sketch.atS()).isEmpty();
    }

    @Test
    void atFourTimesTheSpeedFiveSecondsAreTwenty() {
        walk.command(Command.FASTER, 0);
        walk.command(Command.FASTER, 0);
        walk.command(Command.FASTER, 0);
        walk.command(Command.PLAY, 0);

        assertThat(at(5).top().speed()).isEqualTo("4×");
        assertThat(at(5).top().clock()).startsWith("0:12");
    }

    @Test
    void speedChangedWhilePlayingLosesNoTime() {
        walk.command(Command.PLAY, 0);
        walk.command(Command.SLOWER, 10);

        assertThat(at(14).top().clock()).startsWith("0:04");
        assertThat(at(14).top().speed()).isEqualTo("½×");
    }

    @Test
    void stepsGoToStartsOfFiguresAndBack() {
        walk.command(Command.WALK_NEXT, 0);
        walk.command(Command.WALK_NEXT, 0);
        assertThat(at(0).top().clock()).startsWith("0:10");
        walk.command(Command.WALK_BACK, 0);
        assertThat(at(0).top().clock()).startsWith("0:00");
        walk.command(Command.SECOND_ON, 0);
        walk.command(Command.SECOND_ON, 0);
        walk.command(Command.WALK_BACK, 0);
        assertThat(at(0).top().clock()).startsWith("0:00");
        walk.command(Command.WALK_BACK, 0);
        assertThat(at(0).flying().name()).isEqualTo("First: Loop");
    }

    @Test
    void itStopsAtTheEndAndBeginsAgainFromThere() {
        walk.command(Command.PLAY, 0);
        assertThat(at(500).top().state().word()).isEqualTo("At the end");
        walk.command(Command.PLAY, 500);
        assertThat(at(501).top().state().word()).isEqualTo("Playing");
        assertThat(at(501).flying().name()).isEqualTo("First: Loop");
    }

    @Test
    void remarkOfThePlanStandsThereAtItsMoment() {
        walk.command(Command.PLAY, 0);

        WalkView.Words now = at(LEAD_S + 6).saying().now();
        assertThat(now).isNotNull();
        assertThat(now.text()).isEqualTo("And now it stops.");
        assertThat(at(LEAD_S + 20).saying().now()).isNull();
    }

    @Test
    void walkedPassIsKeptWithTheSecondsBetweenPresses() {
        walk.command(Command.TIME_PASS, 0);
        walk.command(Command.PLAY, 10);
        walk.command(Command.PLAY, 22);
        walk.command(Command.PLAY, 30);
        assertThat(tour.passes).isEmpty();
        walk.command(Command.PLAY, 41);

        assertThat(tour.passes).hasSize(1);
        Pass pass = tour.passes.get(0);
        assertThat(pass.how()).isEqualTo(Pass.How.WALKED);
        assertThat(pass.teaches()).isFalse();
        assertThat(pass.figures())
                .containsExactly(
                        new Pass.TimedFigure("f1", 0, 12),
                        new Pass.TimedFigure("f2", 12, 20),
                        new Pass.TimedFigure("f3", 20, 31));
        assertThat(at(41).hint()).startsWith("Kept as a pass: 3 figures, 0:31");
    }

    @Test
    void pressTakenBackAndPressTwiceMakeNoFigure() {
        walk.command(Command.TIME_PASS, 0);
        walk.command(Command.PLAY, 10);
        walk.command(Command.PLAY, 10.05);
        walk.command(Command.PLAY, 15);
        walk.command(Command.WALK_BACK, 16);
        walk.command(Command.PLAY, 20);
        walk.command(Command.TIME_PASS, 25);

        assertThat(tour.passes.get(0).figures()).containsExactly(new Pass.TimedFigure("f1", 0, 10));
    }

    @Test
    void passStopsWithNothingIfNoFigureEnded() {
        walk.command(Command.TIME_PASS, 0);
        walk.command(Command.PLAY, 10);
        walk.command(Command.TIME_PASS, 15);

        assertThat(tour.passes).isEmpty();
        assertThat(at(15).hint()).contains("nothing was kept");
    }

    @Test
    void timesThatPassesTaughtAreNotCalledThePrediction() {
        tour.taught = 2;
        assertThat(tour.walk().view(0).top().times()).isEqualTo("learned from 2 passes");
    }

    @Test
    void theLineShowsTheFigureThatIsWalked() {
        walk.command(Command.WALK_NEXT, 0);
        walk.command(Command.TIME_PASS, 0);
        walk.command(Command.PLAY, 10);
        walk.command(Command.PLAY, 12);
        assertThat(at(13).bar().figures().stream().map(WalkView.Segment::current))
                .containsExactly(false, true, false);
        walk.command(Command.WALK_BACK, 14);
        assertThat(at(14).bar().figures().stream().map(WalkView.Segment::current))
                .containsExactly(true, false, false);
    }

    @Test
    void whatWasNotDueIsNotPraised() {
        walk.command(Command.PRACTISE, 0);
        walk.command(Command.PRACTISE, 1);
        assertThat(score(at(1))).contains("No call was due", "No duty was due");
    }

    @Test
    void timesOfAPassStretchThePrediction() {
        walkedPassIsKeptWithTheSecondsBetweenPresses();
        walk.command(Command.WALK_TIMES, 50);
        walk.command(Command.PLAY, 50);

        // Halfway through the second figure of the pass, at 16 s, the prediction is at 15 s: 250 m right.
        WalkView view = at(50 + LEAD_S + 16);
        assertThat(view.flying().name()).isEqualTo("Stall turn");
        assertThat(value(view, "Where")).startsWith("250 m right");
        assertThat(view.top().times()).isEqualTo("Pass 1, walked, 6 Jun 2026, 12:00");
        walk.command(Command.WALK_TIMES, 90);
        assertThat(at(90).top().times()).isEqualTo("the prediction");
    }

    @Test
    void noteBelongsToTheFigureShownAndAnEmptyOneGoes() {
        walk.command(Command.WALK_NEXT, 0);
        walk.command(Command.WALK_NEXT, 0);
        walk.write("  wait for the sun  ", 0);

        assertThat(at(0).saying().note()).isEqualTo("wait for the sun");
        assertThat(at(0).bar().figures()).extracting(WalkView.Segment::noted).containsExactly(false, true, false);
        walk.command(Command.WALK_BACK, 0);
        assertThat(at(0).saying().note()).isEmpty();
        walk.command(Command.WALK_NEXT, 0);
        walk.write(" ", 0);
        assertThat(tour.all()).isEmpty();
    }

    @Test
    void practiceSaysWhatWasOnTimeAndWhatWasNotSaid() {
        walk.command(Command.PRACTISE, 0);
        walk.command(Command.READ_ALOUD, LEAD_S + 5);
        walk.command(Command.READ_ALOUD, LEAD_S + 8.5);

        List<String> lines = score(at(100));
        assertThat(lines).contains("1 of 1 call on time, 1 to 2 s before the figure");
        assertThat(lines).contains("0 remarks ran into the next call");
        assertThat(lines).anyMatch(l -> l.startsWith("Talking 9%"));
    }

    @Test
    void callSaidWithOneKeyEndsAtThatKey() {
        walk.command(Command.PRACTISE, 0);
        walk.command(Command.READ_DONE, LEAD_S + 11);
        walk.command(Command.PRACTISE, LEAD_S + 19);

        assertThat(score(at(LEAD_S + 19))).contains("Stall turn: late, ended 1.0 s into it");
    }

    @Test
    void factReadThroughTheQuietIsTold() {
        walk.command(Command.PRACTISE, 0);
        walk.command(Command.READ_ALOUD, LEAD_S + 5);
        walk.command(Command.READ_ALOUD, LEAD_S + 8.5);
        walk.command(Command.READ_ALOUD, LEAD_S + 11);
        walk.command(Command.READ_ALOUD, LEAD_S + 15);
        walk.command(Command.PRACTISE, LEAD_S + 25);

        // The quiet of the second figure is from 12 to 18 s.
        assertThat(score(at(LEAD_S + 25))).contains("1 quiet talked over", "Stall turn, for 3.0 s");
    }

    @Test
    void nothingMovesTheActWhileAPassOrAPracticeRunIsOn() {
        walk.command(Command.PRACTISE, 0);
        walk.command(Command.TO_END, 1);
        walk.goTo(1, 1);
        assertThat(at(1).top().clock()).startsWith("−0:07");
        walk.command(Command.PRACTISE, 2);
        walk.command(Command.TIME_PASS, 3);
        walk.command(Command.WALK_VARIANT, 4);
        assertThat(at(4).top().variant()).isEqualTo("full");
        assertThat(at(4).hint()).isEqualTo("Press P to end the pass first");
    }

    /** As when passes or words have changed, and everything is predicted anew. */
    @Test
    void anotherWalkBeginsWhereTheOneBeforeWas() {
        walk.command(Command.WALK_VARIANT, 0);
        String variant = at(0).top().variant();
        Walk anew = tour.walk();
        assertThat(anew.view(0).top().variant()).isNotEqualTo(variant);
        anew.beginWith(walk.tour());
        assertThat(anew.view(0).top().variant()).isEqualTo(variant);
    }

    @Test
    void variantsGoRound() {
        walk.command(Command.WALK_VARIANT, 0);
        assertThat(at(0).top().variant()).isEqualTo("flat");
        walk.command(Command.WALK_VARIANT, 0);
        assertThat(at(0).top().variant()).isEqualTo("full");
    }

    @Test
    void theMouseGoesToAShareOfTheLine() {
        // From −8 to 33 s: a half is 12.5 s.
        walk.goTo(0.5, 0);
        assertThat(at(0).top().clock()).startsWith("0:12");
    }

    /** Wherever the act was played to before. */
    @Test
    void whileAPassIsTimedTheLineStandsInTheFigureThatIsWalked() {
        walk.command(Command.WALK_NEXT, 1);
        walk.command(Command.WALK_NEXT, 1);
        walk.command(Command.TIME_PASS, 2);
        assertThat(at(2).bar().at()).as("before its first figure").isZero();
        walk.command(Command.PLAY, 3);
        WalkView.Bar walked = at(4).bar();
        WalkView.Segment first = walked.figures().get(0);
        assertThat(first.current()).isTrue();
        assertThat(walked.at()).isBetween(first.from(), first.to());
        assertThat(at(400).bar().at()).as("however long it takes").isLessThanOrEqualTo(first.to() + 0.001);
    }
}
