package crowdline.patter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.SpokenTime;
import crowdline.timing.FigureTime;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FitTest {
    private static final FigureTime TEN = new FigureTime("f", 0, 10, 7, 14);

    /** A figure of 10 s, 7 to 14 s, that may be run past by 3 s: each limit, and just beyond it. */
    @ParameterizedTest
    @CsvSource({
        "8, 10, FITS",
        "8, 10.01, JUST_FITS",
        "10, 10, FITS",
        "10, 12, JUST_FITS",
        "10.01, 12, RUNS_OVER",
        "13, 15, RUNS_OVER",
        "13.01, 15, ON_A_GOOD_DAY",
        "17, 20, ON_A_GOOD_DAY",
        "17.01, 20, TOO_LONG"
    })
    void fitsByItsOwnBandAndThatOfItsFigure(double seconds, double highS, Fit fit) {
        assertThat(Fit.of(new SpokenTime(seconds, seconds, highS), new Room(10, 7, 14, 3)))
                .isEqualTo(fit);
    }

    @ParameterizedTest
    @CsvSource({"6, 3, FITS", "6.01, 3, JUST_FITS", "3, 0, FITS", "3.01, 0, JUST_FITS"})
    void aShortFigureMakesItJustFit(double seconds, double pastS, Fit fit) {
        assertThat(Fit.of(new SpokenTime(seconds, seconds, seconds), new Room(10, 3, 14, pastS)))
                .isEqualTo(fit);
    }

    @Test
    void whatThePlanThinksLessOfIsNoBetterThanThat() {
        assertThat(Fit.FITS.atBest(Fit.JUST_FITS)).isEqualTo(Fit.JUST_FITS);
        assertThat(Fit.TOO_LONG.atBest(Fit.JUST_FITS)).isEqualTo(Fit.TOO_LONG);
        assertThat(Fit.RUNS_OVER.hasRoom()).isTrue();
        assertThat(Fit.ON_A_GOOD_DAY.hasRoom()).isFalse();
    }

    @Test
    void eachFitHasOneWordForEveryScreen() {
        assertThat(Fit.values())
                .extracting(Fit::word)
                .containsExactly("Fits", "Just fits", "Runs over", "On a good day", "Too long");
    }

    @Test
    void roomIsNeverLessThanNothing() {
        assertThat(new Room(0, 0, 0, 0)).isEqualTo(Room.fixed(0));
        assertThatThrownBy(() -> new Room(-1, 0, 0, 0)).hasMessage("likelyS is -1.0; it must be 0.0 or more");
        assertThatThrownBy(() -> new Room(0, -1, 0, 0)).hasMessage("lowS is -1.0; it must be 0.0 or more");
        assertThatThrownBy(() -> new Room(0, 0, -1, 0)).hasMessage("highS is -1.0; it must be 0.0 or more");
        assertThatThrownBy(() -> new Room(0, 0, 0, -1)).hasMessage("pastS is -1.0; it must be 0.0 or more");
    }

    @Test
    void aRemarkHasItsFigureAndALittleMore() {
        assertThat(room(RemarkKind.FACT, null, null)).isEqualTo(new Room(10, 7, 14, 3));
    }

    @Test
    void itsOwnLimitsLeaveItLess() {
        assertThat(room(RemarkKind.FACT, 2.0, null)).isEqualTo(new Room(8, 5, 12, 3));
        assertThat(room(RemarkKind.FACT, null, 11.0)).isEqualTo(new Room(10, 7, 11, 1));
        assertThat(room(RemarkKind.FACT, 2.0, 5.0)).isEqualTo(new Room(3, 3, 3, 0));
        assertThat(room(RemarkKind.FACT, 9.0, null)).isEqualTo(new Room(1, 0, 5, 3));
        assertThat(room(RemarkKind.FACT, 12.0, null)).isEqualTo(new Room(0, 0, 2, 1));
        assertThat(room(RemarkKind.FACT, -4.0, null)).isEqualTo(new Room(14, 11, 18, 3));
    }

    @Test
    void aCallHasTheTimeBeforeItsFigure() {
        assertThat(room(RemarkKind.CALL, null, null)).isEqualTo(Room.fixed(7));
        assertThat(room(RemarkKind.CALL, -5.0, -2.0)).isEqualTo(Room.fixed(3));
        assertThat(room(RemarkKind.CALL, -1.0, null).likelyS()).isCloseTo(0, within(1e-12));
    }

    private static Room room(RemarkKind kind, @Nullable Double earliestS, @Nullable Double latestS) {
        Remark remark = new Remark("r", kind, "Look.", null, earliestS, latestS, 1, false);
        return Room.of(remark, TEN, PatterRules.DEFAULT);
    }
}
