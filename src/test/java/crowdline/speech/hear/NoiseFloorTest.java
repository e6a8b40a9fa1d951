package crowdline.speech.hear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Decibels counted by hand. */
class NoiseFloorTest {
    private static final Offset<Double> EXACTLY = within(1e-9);

    private static NoiseFloor learned(double... levels) {
        NoiseFloor noise = NoiseFloor.UNKNOWN;
        for (double db : levels) {
            noise = noise.learn(db);
        }
        return noise;
    }

    @Test
    void firstLevelsAreAveraged() {
        assertThat(learned(-60)).isEqualTo(new NoiseFloor(-60, 0, 1));
        assertThat(learned(-60, -50).meanDb()).isCloseTo(-55, EXACTLY);
        assertThat(learned(-60, -50).waverDb()).isCloseTo(2.5, EXACTLY);
        assertThat(learned(-60, -50, -52).meanDb()).isCloseTo(-54, EXACTLY);
        assertThat(learned(-60, -50, -52).waverDb()).isCloseTo(2.5 + (2 - 2.5) / 3, EXACTLY);
    }

    @Test
    void laterLevelsMoveItByAHundredth() {
        assertThat(new NoiseFloor(-60, 1, 500).learn(-50).meanDb()).isCloseTo(-59.9, EXACTLY);
    }

    @Test
    void noMicrophoneIsQuieterThanSeventyDecibelsUnderFullScale() {
        assertThat(learned(-90).meanDb()).isEqualTo(-70);
        assertThat(new NoiseFloor(-60, 0, 9).at(-90).meanDb()).isEqualTo(-70);
        assertThat(new NoiseFloor(-60, 2, 9).at(-65)).isEqualTo(new NoiseFloor(-65, 2, 9));
    }

    /** Five standard deviations, of which one is 1.2533 times the mean distance; six to twelve decibels. */
    @Test
    void whatIsClearlyOverItIsBeyondChance() {
        isOver(0, 6.01, 5.99, true);
        isOver(1.5, 9.41, 9.39, true);
        isOver(9, 12.01, 11.99, true);
    }

    /** Three standard deviations; two and a half to six decibels. */
    @Test
    void whatIsBarelyOverItMayBelongToSpeech() {
        isOver(0, 2.51, 2.49, false);
        isOver(1.2, 4.52, 4.50, false);
        isOver(9, 6.01, 5.99, false);
    }

    private static void isOver(double waverDb, double overDb, double underDb, boolean clearly) {
        NoiseFloor noise = new NoiseFloor(-60, waverDb, 100);
        assertThat(clearly ? noise.isClearlyUnder(-60 + overDb) : noise.isBarelyUnder(-60 + overDb))
                .isTrue();
        assertThat(clearly ? noise.isClearlyUnder(-60 + underDb) : noise.isBarelyUnder(-60 + underDb))
                .isFalse();
    }

    @Test
    void itTurnsEvenlyIntoAnother() {
        assertThat(new NoiseFloor(-60, 1, 50).towards(new NoiseFloor(-40, 3, 90), 0.25))
                .isEqualTo(new NoiseFloor(-55, 3, 90));
    }

    @Test
    void quietestMomentIsAFifthOfASecondOfTheLastFour() {
        QuietestMoments moments = new QuietestMoments();
        for (int frame = 1; frame <= 100; frame++) {
            assertThat(moments.next(-60)).isEqualTo(SoundLevels.SILENT_DB);
        }
        assertThat(moments.nowDb()).isCloseTo(-60, EXACTLY);
        for (int frame = 101; frame < 400; frame++) {
            assertThat(moments.next(-40)).as("not yet four seconds").isEqualTo(SoundLevels.SILENT_DB);
        }
        assertThat(moments.nowDb()).isCloseTo(-40, EXACTLY);
        for (int frame = 400; frame < 500; frame++) {
            assertThat(moments.next(-40)).isCloseTo(-60, EXACTLY);
        }
        assertThat(moments.next(-40)).as("one of twenty was louder").isCloseTo(-59, EXACTLY);
        assertThat(moments.next(-40)).isCloseTo(-58, EXACTLY);
    }
}
