package crowdline.console.live.say;

import crowdline.console.live.row.LiveMoment;
import crowdline.console.paint.Seconds;
import crowdline.live.now.FigureNow;
import crowdline.live.now.LiveNow;
import crowdline.live.now.Upcoming;
import crowdline.live.state.RemarkEntry;
import crowdline.loaded.ShowLookup;
import crowdline.show.Act;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;

/**
 * When a remark ahead is due: no seconds are told towards a figure that may begin at any time, nor to what comes after it.
 * While the act is on hold nothing is due of the figure that was left, nor what was broken off there.
 */
enum SayWhen {
    IN_SECONDS,
    AS_IT_CARRIES_ON,
    AS_THE_NEXT_BEGINS,
    AFTER_THE_NEXT_BEGAN;

    static SayWhen of(LiveMoment moment, ShowLookup words, Remark remark) {
        LiveNow now = moment.now();
        FigureNow figure = now.figure();
        boolean held = figure != null && figure.held();
        if (figure != null
                && held
                && remark.kind() != RemarkKind.DUTY
                && isBrokenOff(moment, words, remark, figure.figureId())) {
            return AS_IT_CARRIES_ON;
        }
        if (now.upcoming().isEmpty()) {
            return IN_SECONDS;
        }
        Upcoming next = now.upcoming().get(0);
        boolean overdue = next.inS() != null && next.inS() <= 0;
        if (!held && !overdue) {
            return IN_SECONDS;
        }
        Act act = words.act(moment.state().actId()).orElse(null);
        for (Upcoming ahead : now.upcoming()) {
            boolean own = words.figure(act, ahead.figureId())
                    .map(f -> f.remarks().contains(remark))
                    .orElse(false);
            if (own) {
                return ahead.equals(next) ? AS_THE_NEXT_BEGINS : AFTER_THE_NEXT_BEGAN;
            }
        }
        return IN_SECONDS;
    }

    private static boolean isBrokenOff(LiveMoment moment, ShowLookup words, Remark remark, String figureId) {
        Act act = words.act(moment.state().actId()).orElse(null);
        return words.figure(act, figureId).stream().anyMatch(f -> f.remarks().contains(remark))
                || moment.state().talkHere().entries().stream()
                        .anyMatch(e -> e.outcome() == RemarkEntry.Outcome.CUT_SHORT
                                && e.remarkId().equals(remark.id()));
    }

    /** True if it may have been said already: a call is said before its figure, nobody knows how long. */
    boolean mayBeSaid(Remark remark) {
        return this == AS_THE_NEXT_BEGINS && remark.kind() == RemarkKind.CALL;
    }

    String words(Remark remark, double waitS) {
        return switch (this) {
            case IN_SECONDS -> "Say in " + Seconds.left(waitS);
            case AS_IT_CARRIES_ON -> "Say when it carries on";
            case AS_THE_NEXT_BEGINS ->
                remark.kind() == RemarkKind.CALL ? "Say just before it begins" : "Say when it begins";
            case AFTER_THE_NEXT_BEGAN -> "Say once the next has begun";
        };
    }
}
