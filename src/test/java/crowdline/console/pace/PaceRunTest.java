package crowdline.console.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.speech.pace.Pace;
import crowdline.speech.pace.PaceFit;
import crowdline.speech.say.Spoken;
import crowdline.speech.say.SpokenText;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PaceRunTest {
    private static final Spoken SPOKEN = new Spoken(Map.of());
    private static final List<SpokenText> REMARKS = RemarksToTime.of(List.of(), SPOKEN);
    private static final Pace SLOW = new Pace("slow", 0.2, 0.09, 0.3, 0.8, 0.05);

    /** Says so many remarks at a pace. */
    private static PaceRun spoken(int remarks, Pace pace) {
        PaceRun run = PaceRun.of("Anna", REMARKS);
        double nowS = 1000;
        for (int i = 0; i < remarks; i++) {
            run = run.startOrStop(nowS);
            nowS += pace.time(REMARKS.get(i)).seconds();
            run = run.startOrStop(nowS);
            nowS += 2;
        }
        return run;
    }

    @Test
    void startAndStopTimeTheRemarkShown() {
        PaceRun run = PaceRun.of("Anna", REMARKS);
        assertThat(run.count()).isEqualTo("Remark 1 of 10");
        assertThat(run.text()).isEqualTo(REMARKS.get(0).written());
        PaceRun running = run.startOrStop(50);
        assertThat(running.isRunning()).isTrue();
        assertThat(running.text()).isEqualTo(run.text());
        PaceRun next = running.startOrStop(52.504);
        assertThat(next.timed()).singleElement().satisfies(t -> {
            assertThat(t.seconds()).isEqualTo(2.5);
            assertThat(t.text()).isEqualTo(REMARKS.get(0));
        });
        assertThat(next.said()).isEqualTo("That took 2.5 s.");
        assertThat(next.count()).isEqualTo("Remark 2 of 10");
        assertThat(next.text()).isEqualTo(REMARKS.get(1).written());
    }

    @Test
    void aSlipOfTheThumbDoesNotCountAndIsSaid() {
        PaceRun run = PaceRun.of("Anna", REMARKS).startOrStop(50).startOrStop(50.1);
        assertThat(run.timed()).isEmpty();
        assertThat(run.isRunning()).isFalse();
        assertThat(run.said()).contains("nobody says it that fast").endsWith("time it again or leave it out.");
    }

    @Test
    void aClockSetBackDuringARemarkDoesNotCount() {
        PaceRun run = PaceRun.of("Anna", REMARKS).startOrStop(50).startOrStop(40);
        assertThat(run.timed()).isEmpty();
        assertThat(run.said()).contains("time it again");
    }

    @Test
    void againForgetsTheRunningWatchFirstAndThenTheLastTiming() {
        PaceRun running = spoken(2, SLOW).startOrStop(5000);
        PaceRun stopped = running.again();
        assertThat(stopped.isRunning()).isFalse();
        assertThat(stopped.timed()).hasSize(2);
        PaceRun one = stopped.again();
        assertThat(one.timed()).hasSize(1);
        assertThat(one.text()).isEqualTo(REMARKS.get(1).written());
        assertThat(one.again().again().timed()).isEmpty();
    }

    @Test
    void afterTheLastRemarkTheWatchDoesNothingMore() {
        PaceRun run = spoken(10, SLOW);
        assertThat(run.isDone()).isTrue();
        assertThat(run.startOrStop(9000)).isEqualTo(run);
        assertThat(run.again().isDone()).isFalse();
    }

    @Test
    void nothingIsEnoughOnlyBeforeTheFirstTimingAndWhileTheWatchRuns() {
        assertThat(PaceRun.of("Anna", REMARKS).isEnough()).isFalse();
        assertThat(spoken(1, SLOW).isEnough()).isTrue();
        assertThat(spoken(1, SLOW).startOrStop(9000).isEnough()).isFalse();
    }

    /** The speaker is simulated, so what is to be found is known exactly. */
    @Test
    void tenRemarksFindTheSpeakerBehindThem() {
        PaceOutcome outcome = PaceOutcome.of("Anna", spoken(10, SLOW).timed());
        Pace found = outcome.pace();
        assertThat(found).isNotNull();
        assertThat(found.name()).isEqualTo("Anna");
        assertThat(found.perLetterS()).isCloseTo(SLOW.perLetterS(), within(0.003));
        assertThat(outcome.lines().get(0)).isEqualTo(PaceFit.explanation(10));
        assertThat(outcome.lines().get(1)).containsPattern("2\\d% longer than at the default pace");
        assertThat(outcome.lines().get(3))
                .startsWith("Each predicted from the others: mean error ")
                .endsWith("10 of 10 within 10%.");
    }

    @Test
    void fewerTakeTheSimplerModelAndSaySo() {
        PaceOutcome outcome = PaceOutcome.of("Anna", spoken(3, SLOW).timed());
        assertThat(outcome.lines().get(0))
                .isEqualTo(
                        "3 of 10 remarks timed: the default pace is only sped up or slowed down; 7 more and pauses are learned too.");
        Pace found = outcome.pace();
        assertThat(found).isNotNull();
        assertThat(found.perCommaS() / found.perLetterS())
                .isCloseTo(Pace.DEFAULT.perCommaS() / Pace.DEFAULT.perLetterS(), within(1e-9));
    }

    @Test
    void oneRemarkGivesAPaceWhoseWorthIsNotKnown() {
        assertThat(PaceOutcome.of("Anna", spoken(1, SLOW).timed()).lines().get(3))
                .startsWith("There are too few to say how good it is");
    }

    @Test
    void nothingTimedGivesNoPaceAndAReason() {
        PaceOutcome outcome = PaceOutcome.of("Anna", List.of());
        assertThat(outcome.pace()).isNull();
        assertThat(outcome.lines()).singleElement().asString().startsWith("No pace could be learned: no timed remark");
    }

    @Test
    void theRemarksGoFromShortToLongInTurns() {
        List<Integer> letters = REMARKS.stream().map(SpokenText::letters).toList();
        assertThat(REMARKS).hasSize(PaceFit.ENOUGH).doesNotHaveDuplicates();
        assertThat(letters.stream().mapToInt(i -> i).max().orElse(0))
                .isGreaterThan(4 * letters.stream().mapToInt(i -> i).min().orElse(0));
        assertThat(REMARKS).anySatisfy(r -> assertThat(r.commas()).isGreaterThan(1));
        assertThat(REMARKS).anySatisfy(r -> assertThat(r.innerStops()).isPositive());
    }

    @Test
    void aShowWithRemarksOfManyLengthsGivesItsOwn() {
        List<String> own = IntStream.rangeClosed(1, 25)
                .mapToObj(i -> "Now he turns" + " and turns again".repeat(i / 2) + " for field " + i)
                .toList();
        List<SpokenText> chosen = RemarksToTime.of(own, SPOKEN);
        assertThat(chosen).hasSize(10).doesNotHaveDuplicates();
        assertThat(own).containsAll(chosen.stream().map(SpokenText::written).toList());
    }

    @Test
    void aShowWhoseRemarksAreAllOfOneLengthGivesTheNeutralOnes() {
        List<String> alike = IntStream.rangeClosed(100, 130)
                .mapToObj(i -> "Now he turns at field number " + i)
                .toList();
        assertThat(RemarksToTime.of(alike, SPOKEN)).isEqualTo(REMARKS);
        assertThat(RemarksToTime.of(List.of("…", "Up.", "<html>"), SPOKEN)).isEqualTo(REMARKS);
    }

    @Test
    void whatTheMicrophoneHeardCountsUnlessTheKeysWatchRuns() {
        PaceRun run = PaceRun.of("Anna", REMARKS);
        assertThat(run.heard(2.504).timed())
                .singleElement()
                .satisfies(t -> assertThat(t.seconds()).isEqualTo(2.5));
        assertThat(run.startOrStop(50).heard(2.5)).isEqualTo(run.startOrStop(50));
        assertThat(spoken(10, SLOW).heard(2.5)).isEqualTo(spoken(10, SLOW));
        assertThat(run.heard(0.2).timed()).isEmpty();
        assertThat(run.heard(0.2).said()).contains("time it again");
    }

    @Test
    void theKeyEndsWhatIsHeardOrGoesOnFromItsBeginning() {
        PaceRun run = PaceRun.of("Anna", REMARKS);
        assertThat(run.taken(2.5, 100).timed()).hasSize(1);
        PaceRun running = run.taken(0.1, 100);
        assertThat(running.startedAtS()).isEqualTo(99.9);
        assertThat(running.startOrStop(102.4).timed().get(0).seconds()).isEqualTo(2.5);
    }
}
