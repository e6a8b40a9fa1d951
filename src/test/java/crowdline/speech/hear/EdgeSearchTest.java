package crowdline.speech.hear;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.speech.hear.Hearing.NotSpeech;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Levels by the frame over an even noise of -60 dB: 3 dB over it are barely loud, 7 dB and more clearly. */
class EdgeSearchTest {
    private static final NoiseFloor NOISE = new NoiseFloor(-60, 0, 100);
    private static final double QUIET_DB = -60;
    private static final double BARELY_DB = -57;
    private static final double LOUD_DB = -40;

    private final List<SoundLevel> levels = new ArrayList<>();

    private EdgeSearchTest then(int frames, double db) {
        for (int i = 0; i < frames; i++) {
            levels.add(new SoundLevel(db, db, 0.1));
        }
        return this;
    }

    private EdgeSearch search() {
        then(SpeechEdges.HOLD, QUIET_DB);
        return new EdgeSearch(levels, NOISE, NOISE);
    }

    private void isFrom(int first, int last) {
        EdgeSearch search = search();
        assertThat(search.first()).isEqualTo(first);
        assertThat(search.last()).isEqualTo(last);
    }

    @Test
    void edgesAreWhereItIsBarelyLoud() {
        then(40, QUIET_DB)
                .then(10, BARELY_DB)
                .then(70, LOUD_DB)
                .then(12, BARELY_DB)
                .isFrom(40, 131);
    }

    @Test
    void edgesAreNoFurtherThanAQuarterOfASecondFromWhatIsLoud() {
        then(10, QUIET_DB)
                .then(26, BARELY_DB)
                .then(70, LOUD_DB)
                .then(40, BARELY_DB)
                .isFrom(11, 130);
    }

    @Test
    void edgeMayBeTheFirstThatIsKept() {
        then(3, BARELY_DB).then(70, LOUD_DB).isFrom(0, 72);
    }

    @Test
    void twoQuietLevelsAreSteppedOverOnTheWayAndThreeAreNot() {
        then(40, QUIET_DB)
                .then(1, BARELY_DB)
                .then(2, QUIET_DB)
                .then(70, LOUD_DB)
                .then(3, QUIET_DB)
                .then(1, BARELY_DB)
                .isFrom(40, 112);
    }

    @Test
    void missesAreCountedAnewAfterEachHit() {
        then(40, QUIET_DB)
                .then(1, BARELY_DB)
                .then(2, QUIET_DB)
                .then(1, BARELY_DB)
                .then(2, QUIET_DB)
                .then(70, LOUD_DB)
                .isFrom(40, 115);
    }

    @Test
    void shorterThanSixTenthsOfASecondIsACough() {
        assertThat(then(40, QUIET_DB).then(60, LOUD_DB).search().notSpeech()).isEqualTo(NotSpeech.SHORT);
        assertThat(new EdgeSearchTest()
                        .then(40, QUIET_DB)
                        .then(61, LOUD_DB)
                        .search()
                        .notSpeech())
                .as("long enough, and as steady as a tone")
                .isEqualTo(NotSpeech.STEADY);
        assertThat(new EdgeSearchTest().then(40, QUIET_DB).search().notSpeech())
                .as("nothing at all")
                .isEqualTo(NotSpeech.SHORT);
    }

    /** Seven loud levels are a knock, eight a syllable, with gaps of up to fifteen in it. */
    @Test
    void knockIsNoSyllable() {
        then(40, QUIET_DB).then(7, LOUD_DB).then(30, QUIET_DB).then(70, LOUD_DB).isFrom(77, 146);
        new EdgeSearchTest()
                .then(40, QUIET_DB)
                .then(4, LOUD_DB)
                .then(15, QUIET_DB)
                .then(4, LOUD_DB)
                .then(30, QUIET_DB)
                .then(70, LOUD_DB)
                .isFrom(40, 162);
        new EdgeSearchTest()
                .then(40, QUIET_DB)
                .then(4, LOUD_DB)
                .then(16, QUIET_DB)
                .then(4, LOUD_DB)
                .then(30, QUIET_DB)
                .then(70, LOUD_DB)
                .isFrom(94, 163);
    }

    /** Shorter than 0.45 s and more than 0.6 s before the rest. */
    @Test
    void throatClearedBeforehandDoesNotCount() {
        then(40, QUIET_DB)
                .then(44, LOUD_DB)
                .then(60, QUIET_DB)
                .then(70, LOUD_DB)
                .isFrom(144, 213);
        new EdgeSearchTest()
                .then(40, QUIET_DB)
                .then(45, LOUD_DB)
                .then(60, QUIET_DB)
                .then(70, LOUD_DB)
                .isFrom(40, 214);
        new EdgeSearchTest()
                .then(40, QUIET_DB)
                .then(44, LOUD_DB)
                .then(59, QUIET_DB)
                .then(70, LOUD_DB)
                .isFrom(40, 212);
    }

    private EdgeSearchTest wavering(int times, double byDb) {
        for (int i = 0; i < times; i++) {
            then(10, LOUD_DB + byDb).then(10, LOUD_DB - byDb);
        }
        return this;
    }

    @Test
    void speechWaversAsSyllablesDo() {
        assertThat(then(40, QUIET_DB).wavering(10, 1.2).search().notSpeech()).isEqualTo(NotSpeech.STEADY);
        assertThat(new EdgeSearchTest()
                        .then(40, QUIET_DB)
                        .wavering(10, 2)
                        .search()
                        .notSpeech())
                .isNull();
    }

    /** Twenty decibels in two seconds. */
    @Test
    void engineThatRunsUpIsSteadyHoweverFarItGoes() {
        then(40, QUIET_DB);
        for (int i = 0; i < 200; i++) {
            then(1, -50 + 0.1 * i);
        }
        assertThat(search().notSpeech()).isEqualTo(NotSpeech.STEADY);
    }

    @Test
    void noiseTakenFromTheSilenceAfterItIsThatAtTheEnd() {
        then(40, QUIET_DB).then(70, LOUD_DB);
        for (int i = 0; i < SpeechEdges.HOLD; i++) {
            then(1, -52);
        }
        EdgeSearch search = new EdgeSearch(levels, NOISE, NOISE);
        assertThat(search.last())
                .as("what is 8 dB over the noise before is noise")
                .isLessThan(140);
    }
}
