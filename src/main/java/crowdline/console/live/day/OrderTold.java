package crowdline.console.live.day;

import crowdline.live.event.ShowEvent;
import crowdline.live.state.Day.AddedAct;
import crowdline.live.state.LiveState;
import crowdline.loaded.ShowLookup;
import crowdline.show.Act;
import crowdline.show.bounds.Written;

/** Says what became of the running order. */
final class OrderTold {
    /** As much of a name as is read at a glance, in letters. */
    private static final int GLANCE = 48;

    private OrderTold() {}

    /** What an event did, without a capital, from the state after it. */
    static String what(ShowEvent event, LiveState after, ShowLookup words) {
        if (event instanceof ShowEvent.ActsMoved moved) {
            return moved(moved, after, words);
        }
        if (event instanceof ShowEvent.ActsSwapped swapped) {
            return named(swapped.secondId(), after, words) + " now comes before "
                    + named(swapped.firstId(), after, words);
        }
        if (event instanceof ShowEvent.ActCancelled cancelled) {
            return named(cancelled.actId(), after, words) + " is cancelled";
        }
        if (event instanceof ShowEvent.ActRestored restored) {
            return named(restored.actId(), after, words) + " will be flown after all";
        }
        if (event instanceof ShowEvent.ActAdded added) {
            return "\"" + Written.brief(added.title(), GLANCE) + "\" is put in";
        }
        return "the show over";
    }

    private static String moved(ShowEvent.ActsMoved event, LiveState after, ShowLookup words) {
        String first = event.actIds().get(0);
        String by = OrderPresenter.moved(after.day().laterS(first));
        boolean alone = event.actIds().size() == 1;
        String which = alone ? named(first, after, words) : "all acts from " + named(first, after, words) + " on";
        return which + (alone ? " is " : " are ") + (by.isEmpty() ? "on time again" : by);
    }

    private static String named(String actId, LiveState state, ShowLookup words) {
        return "\""
                + Written.brief(
                        words.act(actId)
                                .map(Act::title)
                                .or(() -> state.day().added().stream()
                                        .filter(act -> act.id().equals(actId))
                                        .map(AddedAct::title)
                                        .findFirst())
                                .orElse(actId),
                        GLANCE)
                + "\"";
    }
}
