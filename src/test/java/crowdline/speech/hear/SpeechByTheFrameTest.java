package crowdline.speech.hear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import crowdline.speech.hear.Hearing.NotSpeech;
import crowdline.speech.hear.Hearing.State;
import org.junit.jupiter.api.Test;

/** Levels counted by the hundredth of a second: noise at -60 dB in both bands, syllables 30 dB over it. */
class SpeechByTheFrameTest {
    private static final double NOISE_DB = -60;
    private static final double LOUD_DB = -30;

    private final SpeechEdges edges = new SpeechEdges();

    private Hearing hear(int frames, double db) {
        Hearing last = edges.hear(new SoundLevel(db, db, 0.1));
        for (int i = 1; i < frames; i++) {
            last = edges.hear(new SoundLevel(db, db, 0.1));
        }
        return last;
    }

    private Hearing hear(double db, double peak) {
        return edges.hear(new SoundLevel(db, db, peak));
    }

    /** Syllables of 30 frames that waver, a quarter of a second apart, so that the noise is heard between them. */
    private Hearing syllables(int count) {
        Hearing last = syllable();
        for (int i = 1; i < count; i++) {
            hear(24, NOISE_DB);
            last = syllable();
        }
        return last;
    }

    private Hearing syllable() {
        hear(6, LOUD_DB);
        hear(9, LOUD_DB - 12);
        hear(6, LOUD_DB);
        hear(5, LOUD_DB - 12);
        return hear(4, LOUD_DB);
    }

    @Test
    void noiseIsLearnedForHalfASecond() {
        assertThat(hear(49, NOISE_DB).state()).isEqualTo(State.LEARNING);
        assertThat(hear(1, LOUD_DB).state()).as("nothing counts yet").isEqualTo(State.LEARNING);
        assertThat(hear(1, NOISE_DB).state()).isEqualTo(State.QUIET);
    }

    @Test
    void microphoneOfNothingButZerosIsDead() {
        assertThat(hear(NOISE_DB, 0).state()).isEqualTo(State.DEAD);
        assertThat(hear(NOISE_DB, 0.0001).state()).isEqualTo(State.LEARNING);
        assertThat(hear(NOISE_DB, 0).state()).as("once it was heard").isEqualTo(State.LEARNING);
    }

    @Test
    void overdrivenMicrophoneIsSaidForASecond() {
        hear(60, NOISE_DB);
        assertThat(hear(NOISE_DB, 0.9849).tooLoud()).isFalse();
        assertThat(hear(NOISE_DB, 0.985).tooLoud()).isTrue();
        assertThat(hear(99, NOISE_DB).tooLoud()).isTrue();
        assertThat(hear(1, NOISE_DB).tooLoud()).isFalse();
    }

    @Test
    void eightLoudHundredthsAreTheLeastThatIsSpeech() {
        hear(100, NOISE_DB);
        assertThat(hear(7, LOUD_DB).state()).isEqualTo(State.QUIET);
        assertThat(hear(1, LOUD_DB).state()).isEqualTo(State.SPEECH);
    }

    /** A stop consonant is silent for up to fifteen; after sixteen the count begins again. */
    @Test
    void gapOfAStopConsonantIsPartOfItsSyllable() {
        hear(100, NOISE_DB);
        hear(4, LOUD_DB);
        hear(15, NOISE_DB);
        assertThat(hear(4, LOUD_DB).state()).isEqualTo(State.SPEECH);

        SpeechByTheFrameTest longer = new SpeechByTheFrameTest();
        longer.hear(100, NOISE_DB);
        longer.hear(4, LOUD_DB);
        longer.hear(16, NOISE_DB);
        assertThat(longer.hear(7, LOUD_DB).state()).isEqualTo(State.QUIET);
        assertThat(longer.hear(1, LOUD_DB).state()).isEqualTo(State.SPEECH);
    }

    @Test
    void remarkIsTimedFromItsFirstLoudLevelToItsLastAndOverAfterASecondAndAHalf() {
        hear(100, NOISE_DB);
        assertThat(syllables(4).soFarS()).isCloseTo(1.92, within(0.005));
        assertThat(hear(15, NOISE_DB).state()).isEqualTo(State.SPEECH);
        assertThat(hear(1, NOISE_DB).state()).isEqualTo(State.PAUSE);
        Hearing pause = hear(133, NOISE_DB);
        assertThat(pause.soFarS()).as("the silence is not counted").isCloseTo(1.92, within(0.005));
        assertThat(pause.utterance()).isNull();
        Hearing over = hear(1, NOISE_DB);
        assertThat(over.utterance()).isNotNull();
        assertThat(over.utterance().startS()).isCloseTo(1, within(1e-9));
        assertThat(over.utterance().endS()).isCloseTo(2.92, within(1e-9));
        assertThat(over.notSpeech()).isNull();
        assertThat(over.soFarS()).isZero();
        assertThat(hear(1, NOISE_DB).utterance()).as("told once").isNull();
    }

    @Test
    void nextRemarkIsTimedByItself() {
        hear(100, NOISE_DB);
        syllables(3);
        hear(200, NOISE_DB);
        syllables(3);
        Hearing over = hear(150, NOISE_DB);
        assertThat(over.utterance()).isNotNull();
        assertThat(over.utterance().startS()).isCloseTo(1 + 1.38 + 2, within(1e-9));
        assertThat(over.utterance().endS()).isCloseTo(1 + 1.38 + 2 + 1.38, within(1e-9));
    }

    @Test
    void whatIsForgottenIsIgnoredUntilHalfASecondAfterIt() {
        hear(100, NOISE_DB);
        edges.forget();
        assertThat(hear(1, NOISE_DB).state()).as("there was nothing to forget").isEqualTo(State.QUIET);
        hear(5, LOUD_DB);
        edges.forget();
        assertThat(hear(40, LOUD_DB).state()).isEqualTo(State.IGNORING);
        assertThat(hear(49, NOISE_DB).state()).isEqualTo(State.IGNORING);
        assertThat(hear(1, NOISE_DB).state()).isEqualTo(State.QUIET);
        assertThat(hear(8, LOUD_DB).state()).as("the next counts").isEqualTo(State.SPEECH);
    }

    @Test
    void oneMinuteWithoutAnEndIsNoRemarkAndIsIgnoredToItsEnd() {
        hear(100, NOISE_DB);
        Hearing hearing = syllables(110);
        while (hearing.notSpeech() == null) {
            hearing = hear(1, LOUD_DB);
        }
        assertThat(hearing.notSpeech()).isEqualTo(NotSpeech.ENDLESS);
        assertThat(hear(1, LOUD_DB).state()).isEqualTo(State.IGNORING);
        assertThat(hear(50, NOISE_DB).state()).isEqualTo(State.QUIET);
    }

    @Test
    void noiseThatFallsByMoreThanThreeDecibelsIsFollowedAtOnce() {
        hear(100, -50);
        hear(20, NOISE_DB);
        assertThat(hear(8, -45).state())
                .as("fifteen over the noise now, and five over what it was")
                .isEqualTo(State.SPEECH);

        SpeechByTheFrameTest little = new SpeechByTheFrameTest();
        little.hear(100, -50);
        little.hear(20, -52);
        assertThat(little.hear(8, -45.5).state())
                .as("four and a half over what was learned")
                .isEqualTo(State.QUIET);
    }

    @Test
    void loudnessIsToldOverTheNoiseOfTheBandThatStandsOut() {
        hear(100, NOISE_DB);
        assertThat(edges.hear(new SoundLevel(-50, -40, 0.1)).overNoiseDb()).isCloseTo(20, within(0.5));
        assertThat(edges.hear(new SoundLevel(-45, -58, 0.1)).overNoiseDb()).isCloseTo(15, within(0.5));
        assertThat(edges.hear(new SoundLevel(-69, -69, 0.1)).overNoiseDb())
                .as("never under it")
                .isZero();
    }

    @Test
    void hissAloneIsHeardToo() {
        hear(100, NOISE_DB);
        for (int i = 0; i < 8; i++) {
            edges.hear(new SoundLevel(NOISE_DB, LOUD_DB, 0.1));
        }
        assertThat(hear(1, NOISE_DB).state()).isEqualTo(State.SPEECH);
    }

    @Test
    void remarkBeginsAtNoughtAtTheEarliestAndEndsAfterItsBegin() {
        assertThat(new Utterance(0, 0.1).seconds()).isEqualTo(0.1);
        assertThatIllegalArgumentException().isThrownBy(() -> new Utterance(-0.1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Utterance(1, Double.POSITIVE_INFINITY));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Utterance(1, 1))
                .withMessage("speech from 1.0 s to 1.0 s; it must begin at 0 or later and end after it began");
    }

    @Test
    void soundComesAtEightThousandSamplesASecondOrMore() {
        assertThat(new SoundLevels(8000).hear(new byte[160], 160)).hasSize(1);
        assertThat(new SoundLevels(192_000).hear(new byte[3840], 3840)).hasSize(1);
        for (int none : new int[] {7999, 192_001}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new SoundLevels(none))
                    .withMessageContaining(none + " samples a second, allowed is 8000 to 192000");
        }
    }
}
