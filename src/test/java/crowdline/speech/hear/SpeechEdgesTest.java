package crowdline.speech.hear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.speech.hear.Hearing.NotSpeech;
import crowdline.speech.hear.Hearing.State;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every edge is known, because the sound is made here. */
class SpeechEdgesTest {
    private static final int RATE_HZ = 16_000;
    private static final double FIELD = 0.01;

    private record Heard(List<Utterance> utterances, List<NotSpeech> not, Set<State> states, Hearing last) {}

    private static Heard hear(Sounds sounds) {
        SoundLevels levels = new SoundLevels(sounds.rateHz);
        SpeechEdges edges = new SpeechEdges();
        byte[] pcm = sounds.pcm();
        List<Hearing> all =
                levels.hear(pcm, pcm.length).stream().map(edges::hear).toList();
        Set<State> states = EnumSet.noneOf(State.class);
        all.forEach(h -> states.add(h.state()));
        return new Heard(
                all.stream().map(Hearing::utterance).filter(Objects::nonNull).toList(),
                all.stream().map(Hearing::notSpeech).filter(Objects::nonNull).toList(),
                states,
                all.get(all.size() - 1));
    }

    private static double atDb(double db) {
        return FIELD * Math.pow(10, db / 20);
    }

    private static void assertFound(Heard heard, double startS, double endS, double withinS) {
        assertThat(heard.utterances()).as("heard %s", heard).hasSize(1);
        assertThat(heard.utterances().get(0).startS()).as("start").isCloseTo(startS, within(withinS));
        assertThat(heard.utterances().get(0).endS()).as("end").isCloseTo(endS, within(withinS));
    }

    @ParameterizedTest(name = "{0}, {1} dB over the noise")
    @CsvSource({
        "voiced, 30, 0.03",
        "voiced, 20, 0.03",
        "voiced, 10, 0.03",
        "voiced, 6, 0.05",
        "whispered, 30, 0.03",
        "whispered, 20, 0.03",
        "whispered, 10, 0.03",
        "whispered, 6, 0.05"
    })
    void edgesAreFoundOverAField(String kind, double db, double withinS) {
        for (long seed = 1; seed <= 5; seed++) {
            double startS = 2 + seed * 0.137;
            double endS = startS + 1 + seed * 0.783;
            Sounds sounds = new Sounds(RATE_HZ, 10, seed).field(FIELD);
            boolean voiced = kind.equals("voiced");
            assertFound(
                    hear(voiced ? sounds.voiced(atDb(db), startS, endS) : sounds.whispered(atDb(db), startS, endS)),
                    startS,
                    endS,
                    withinS);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {8000, 16_000, 22_050, 44_100, 48_000})
    void everyRateGivesTheSameTimes(int rateHz) {
        assertFound(hear(new Sounds(rateHz, 8, 3).field(FIELD).voiced(0.1, 2.3, 5.1)), 2.3, 5.1, 0.03);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.4, 0.6, 0.8, 1.1})
    void pausesWithinARemarkAreBridged(double pauseS) {
        assertFound(
                hear(new Sounds(RATE_HZ, 10, 5).field(FIELD).voiced(0.1, 2, 3.5).voiced(0.1, 3.5 + pauseS, 5 + pauseS)),
                2,
                5 + pauseS,
                0.03);
    }

    @Test
    void aLongSilenceEndsARemarkAndTheNextIsAnother() {
        Heard heard =
                hear(new Sounds(RATE_HZ, 10, 5).field(FIELD).voiced(0.1, 2, 3.5).voiced(0.1, 5.5, 7));
        assertThat(heard.utterances()).hasSize(2);
        assertThat(heard.utterances().get(0).seconds()).isCloseTo(1.5, within(0.05));
        assertThat(heard.utterances().get(1).startS()).isCloseTo(5.5, within(0.03));
    }

    @Test
    void clicksKnocksAndACoughAreNoSpeech() {
        Heard heard = hear(new Sounds(RATE_HZ, 14, 7)
                .field(FIELD)
                .click(1.5)
                .click(1.7)
                .knock(3)
                .knock(3.4)
                .click(5)
                .cough(7)
                .knock(11));
        assertThat(heard.utterances()).isEmpty();
        assertThat(heard.not()).containsOnly(NotSpeech.SHORT);
        assertThat(hear(new Sounds(RATE_HZ, 5, 7).field(FIELD).click(2).knock(3))
                        .states())
                .doesNotContain(State.SPEECH);
    }

    @Test
    void clicksAndKnocksAroundARemarkMoveNoEdge() {
        assertFound(
                hear(new Sounds(RATE_HZ, 10, 7)
                        .field(FIELD)
                        .click(1.6)
                        .knock(1.2)
                        .voiced(0.1, 2, 4)
                        .click(4.3)
                        .knock(4.9)),
                2,
                4,
                0.03);
    }

    @Test
    void aThroatClearedBeforehandDoesNotCount() {
        assertFound(hear(new Sounds(RATE_HZ, 10, 9).field(FIELD).cough(1.5).voiced(0.1, 2.6, 5)), 2.6, 5, 0.03);
    }

    @ParameterizedTest(name = "noise from {0} to {1}")
    @CsvSource({"0.003, 0.03", "0.03, 0.003", "0.01, 0.02"})
    void noiseThatChangesSlowlyIsFollowed(double first, double last) {
        Sounds sounds = new Sounds(RATE_HZ, 40, 11).field(first, last, 0, 40);
        for (int i = 0; i < 5; i++) {
            sounds.voiced(0.15, 3 + 7 * i, 6 + 7 * i);
        }
        Heard heard = hear(sounds);
        assertThat(heard.utterances()).hasSize(5);
        for (int i = 0; i < 5; i++) {
            assertThat(heard.utterances().get(i).startS()).isCloseTo(3 + 7 * i, within(0.05));
            assertThat(heard.utterances().get(i).endS()).isCloseTo(6 + 7 * i, within(0.05));
        }
    }

    @Test
    void anEngineStartedIsNoSpeechAndTheRemarkAfterItIsFound() {
        Heard heard = hear(new Sounds(RATE_HZ, 20, 13)
                .field(0.003)
                .field(0.02, 0.02, 3, 20)
                .voiced(0.2, 12, 15));
        assertThat(heard.not()).containsOnly(NotSpeech.STEADY);
        assertFound(heard, 12, 15, 0.05);
    }

    @Test
    void aSteadyToneOrHissIsNoSpeech() {
        Heard heard =
                hear(new Sounds(RATE_HZ, 14, 15).field(FIELD).tone(0.1, 2, 4).white(0.1, 8, 10));
        assertThat(heard.utterances()).isEmpty();
        assertThat(heard.not()).containsExactly(NotSpeech.STEADY, NotSpeech.STEADY);
    }

    @Test
    void anOverdrivenMicrophoneIsSaidAndTimedAllTheSame() {
        Sounds loud = new Sounds(RATE_HZ, 8, 17).field(FIELD).voiced(1.5, 2, 4.5);
        assertFound(hear(loud), 2, 4.5, 0.03);
        SoundLevels levels = new SoundLevels(RATE_HZ);
        SpeechEdges edges = new SpeechEdges();
        byte[] pcm = loud.pcm();
        List<Hearing> all =
                levels.hear(pcm, pcm.length).stream().map(edges::hear).toList();
        assertThat(all.get(150).tooLoud()).isFalse();
        assertThat(all.get(300).tooLoud()).isTrue();
        assertThat(all.get(700).tooLoud()).isFalse();
    }

    @Test
    void silenceAloneHoldsNoSpeechAndSaysSo() {
        Heard field = hear(new Sounds(RATE_HZ, 30, 19).field(FIELD));
        assertThat(field.utterances()).isEmpty();
        assertThat(field.not()).isEmpty();
        assertThat(field.states()).containsExactlyInAnyOrder(State.LEARNING, State.QUIET);
        Heard dead = hear(new Sounds(RATE_HZ, 5, 19));
        assertThat(dead.states()).containsExactly(State.DEAD);
    }

    @Test
    void aRemarkInAQuietRoomIsFound() {
        assertFound(hear(new Sounds(RATE_HZ, 8, 21).field(0.0002).voiced(0.1, 2, 5)), 2, 5, 0.03);
    }

    @Test
    void whatIsForgottenDoesNotCountAndTheNextRemarkDoes() {
        SoundLevels levels = new SoundLevels(RATE_HZ);
        SpeechEdges edges = new SpeechEdges();
        byte[] pcm = new Sounds(RATE_HZ, 10, 23)
                .field(FIELD)
                .voiced(0.1, 2, 4)
                .voiced(0.1, 5, 7)
                .pcm();
        List<Utterance> found = new ArrayList<>();
        List<State> states = new ArrayList<>();
        for (SoundLevel level : levels.hear(pcm, pcm.length)) {
            Hearing hearing = edges.hear(level);
            states.add(hearing.state());
            if (states.size() == 300) {
                assertThat(hearing.soFarS()).isCloseTo(1, within(0.1));
                edges.forget();
            }
            if (hearing.utterance() != null) {
                found.add(hearing.utterance());
            }
        }
        assertThat(states.get(310)).isEqualTo(State.IGNORING);
        assertThat(found).singleElement().satisfies(u -> {
            assertThat(u.startS()).isCloseTo(5, within(0.03));
            assertThat(u.endS()).isCloseTo(7, within(0.03));
        });
    }

    @Test
    void speechWithoutAnEndIsGivenUp() {
        Heard heard = hear(new Sounds(8000, 66, 25).field(FIELD).voiced(0.1, 2, 66));
        assertThat(heard.not()).contains(NotSpeech.ENDLESS);
        assertThat(heard.utterances()).isEmpty();
    }

    @Test
    void samplesMayComeInPiecesOfAnySize() {
        byte[] pcm = new Sounds(RATE_HZ, 1, 27).field(FIELD).pcm();
        List<SoundLevel> whole = new SoundLevels(RATE_HZ).hear(pcm, pcm.length);
        assertThat(whole).hasSize(100);
        for (int size : new int[] {1, 3, 333, 7001}) {
            SoundLevels levels = new SoundLevels(RATE_HZ);
            List<SoundLevel> pieces = new ArrayList<>();
            for (int from = 0; from < pcm.length; from += size) {
                byte[] piece = java.util.Arrays.copyOfRange(pcm, from, Math.min(pcm.length, from + size));
                pieces.addAll(levels.hear(piece, piece.length));
            }
            assertThat(pieces).isEqualTo(whole);
        }
    }

    /** A sine of full scale has a power of one half: 3.01 dB under full scale. */
    @Test
    void aToneInTheVoicesBandIsMeasuredAtItsPower() {
        byte[] pcm = new Sounds(48_000, 1, 29).tone(0.5, 0, 1).pcm();
        SoundLevel level = new SoundLevels(48_000).hear(pcm, pcm.length).get(50);
        assertThat(level.voiceDb()).isCloseTo(20 * Math.log10(0.5), within(0.15));
        assertThat(level.hissDb()).isLessThan(level.voiceDb() - 30);
        assertThat(level.peak()).isCloseTo(Math.sqrt(0.5), within(0.001));
    }
}
