package crowdline.live.now;

import crowdline.live.event.Source;
import crowdline.live.state.LiveState;
import java.util.List;

/**
 * When the plan may expect the next figure where no clock moves the act on. A figure over its time, a hold and an act whose
 * slot has come can last any time; without a bound their next figure would be expected at this very moment, again and
 * again, and what belongs into it would be said before it begins.
 */
final class NextStart {
    /** Sooner than this nothing is expected by itself, seconds. Tuned: the screen's second before a remark, a second from
     * one plan to the next, and half a second for making it. */
    static final double SOON_S = 2.5;
    /** Over its time by this a figure has time for a call of the next that was missed, seconds. Tuned: a hand is no later. */
    static final double REALLY_OVER_S = 2;
    /** What a hold, or an act that has not come, is expected to last on, seconds. Tuned: a filler and the call after it. */
    static final double OPEN_S = 20;

    private NextStart() {}

    /**
     * How much later than the clock says the plan expects the next figure and all after it, seconds, 0 or more.
     *
     * @param callRoomS what the calls of the next figure that are still to be said need before it, 0 if there are none
     */
    static double shiftS(LiveState state, LiveNow now, double callRoomS) {
        List<Upcoming> ahead = now.upcoming();
        Double inS = ahead.isEmpty() ? null : ahead.get(0).inS();
        return inS == null ? 0 : Math.max(0, leastS(state, now, callRoomS) - inS);
    }

    private static double leastS(LiveState state, LiveNow now, double callRoomS) {
        FigureNow figure = now.figure();
        if (figure == null) {
            Double toSlotS = now.toSlotS();
            if (toSlotS == null) {
                return SOON_S;
            }
            // Until the act has begun its first call comes first, however near the slot is.
            return toSlotS <= 0 ? OPEN_S : Math.max(SOON_S, callRoomS);
        }
        if (figure.held()) {
            return OPEN_S;
        }
        if (state.source() == Source.CLOCK && !figure.waitsForHand()) {
            return 0;
        }
        return figure.overS() >= REALLY_OVER_S ? Math.max(SOON_S, callRoomS) : SOON_S;
    }
}
