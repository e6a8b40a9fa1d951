package crowdline.live.now;

import crowdline.live.now.DutyNow.Told;
import crowdline.show.figure.DutyTimes;
import java.util.List;

/** A duty of the day with each time it was told. */
public interface ToldDuty {
    /** How often and when it was asked for. */
    DutyTimes asked();

    /** Each time it was said or shown, oldest first. */
    List<Told> told();

    /** How often it was neither said nor shown and is asked for, 0 or more. */
    default int missing() {
        return Math.max(0, asked().times() - told().size());
    }

    /** How often a key said that it was said. */
    default int saidCount() {
        return (int) told().stream().filter(Told::said).count();
    }
}
