package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class DoubtTest {
    private final Order order = new Order(Small.plan(5, 5, 5, 5, 5, 5, 5, 5, 5).bins);
    private final Doubt doubt = new Doubt(order);

    private double nowS;

    /** Each is seen for ten seconds. */
    private boolean after(int... figures) {
        for (int f : figures) {
            doubt.sees(f, nowS);
            nowS += 10;
        }
        return doubt.said(1, nowS) < 1;
    }

    @Test
    void thereIsNoneAsLongAsThePlanComesTrue() {
        assertThat(after(0, 0, 1, 1, 2, 3)).isFalse();
    }

    @Test
    void boundaryNotQuitePassedIsNone() {
        assertThat(after(0, 1, 0, 1, 2)).isFalse();
    }

    /** A figure flown again begins as a step back, and was then called sure. */
    @Test
    void stepBackThatLastsBringsIt() {
        assertThat(after(0, 1, 2, 1)).isFalse();
        doubt.sees(1, nowS);
        assertThat(after(1)).isTrue();
        assertThat(after(2, 3)).isFalse();
    }

    /** The start is put right by the first figure that is sure. */
    @Test
    void firstFigureIsSureOnceItHasShownItself() {
        assertThat(after(0)).isFalse();
    }

    /** A turn back that any flight would have fitted says nothing of what follows it. */
    @Test
    void whatAnyFlightWouldFitDoesNotEndIt() {
        assertThat(after(0, 1, -1, 3)).isTrue();
        doubt.looksLike(3, nowS);
        assertThat(after(4)).isTrue();
        assertThat(after(5)).isTrue();
        assertThat(after(6)).isFalse();
    }

    @Test
    void figurePassedOverBringsItUntilTwoFollowAsPlanned() {
        assertThat(after(0, 1, 3)).isTrue();
        assertThat(after(4)).isTrue();
        assertThat(after(5)).isFalse();
    }

    @Test
    void whatIsOffThePlanBringsItToo() {
        assertThat(after(0, 1, -1, 2)).isTrue();
        assertThat(after(3)).isFalse();
    }

    @Test
    void handEndsIt() {
        assertThat(after(0, 4)).isTrue();
        doubt.told(2);
        assertThat(doubt.said(1, nowS)).isEqualTo(1);
        assertThat(after(2, 3)).isFalse();
    }

    @Test
    void whatIsOnlyLikelyIsNotSure() {
        after(0, 1, 2);
        assertThat(doubt.said(0.96, nowS)).isEqualTo(FollowNow.SURE);
        assertThat(doubt.said(0.98, nowS)).isEqualTo(0.98);
        assertThat(doubt.said(0.6, nowS)).isEqualTo(0.6);
    }

    @Test
    void figureIsNotSureBeforeItHasShownItselfUnlessTheHandSaysIt() {
        after(0, 1);
        doubt.sees(2, nowS);
        assertThat(doubt.said(1, nowS + 1)).isEqualTo(FollowNow.SURE);
        assertThat(doubt.said(1, nowS + 5)).isEqualTo(1);
        doubt.told(3);
        assertThat(doubt.said(1, nowS + 5.1)).isEqualTo(1);
    }

    @Test
    void flightTakenUpInTheMiddleIsBelieved() {
        assertThat(after(7, 8)).isFalse();
    }

    @Test
    void changeThatWasToldIsNone() {
        order.told(List.of(0, 2, 1, 3, 4, 6));
        assertThat(after(0, 2, 1, 3, 4, 6)).isFalse();
    }
}
