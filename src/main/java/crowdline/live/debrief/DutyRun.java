package crowdline.live.debrief;

import crowdline.live.now.Duties;
import crowdline.live.now.DutyNow.Told;
import crowdline.live.now.ToldDuty;
import crowdline.live.state.LiveState;
import crowdline.show.Show;
import crowdline.show.figure.DutyTimes;
import java.util.List;

/**
 * A duty of the day and when it was done, for whoever asked for it.
 *
 * @param text its words
 * @param asked how often and when it was asked for
 * @param told each time it was said or shown, oldest first
 */
public record DutyRun(String remarkId, String text, DutyTimes asked, List<Told> told) implements ToldDuty {
    public DutyRun {
        told = List.copyOf(told);
    }

    /** Every duty of the day, in the order of the show. */
    static List<DutyRun> all(Show show, LiveState state) {
        return Duties.in(show)
                .map(r -> new DutyRun(
                        r.id(),
                        r.text(),
                        r.dutyTimes(),
                        Duties.told(r.id(), state.talk().entries())))
                .toList();
    }

    /** How often it was on the screen in its time, and no key said that it was said. */
    public int shownCount() {
        return told.size() - saidCount();
    }
}
