package crowdline.live.now;

import crowdline.live.state.Course;
import crowdline.live.state.Flown;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.plain.Hindsight;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What can be said of a figure only once it has been flown, and is said while the next one is. Every remark of a show is read
 * for that once, when this is made: it is asked at every look.
 */
public final class Afterwards {
    private final Set<String> waitingIds;

    public Afterwards(Show show) {
        waitingIds = show.everyRemark()
                .filter(Afterwards::tellsOfWhatWasFlown)
                .map(Remark::id)
                .collect(Collectors.toUnmodifiableSet());
    }

    private static boolean tellsOfWhatWasFlown(Remark remark) {
        boolean mayWait = remark.kind() != RemarkKind.CALL && remark.kind() != RemarkKind.DUTY;
        return mayWait
                && !remark.isTied()
                && remark.earliestS() == null
                && remark.latestS() == null
                && Hindsight.tellsOfTheFlight(remark.text());
    }

    /** True if a remark of a figure tells, in the past tense, of what was flown, and has no times of its own that say when. */
    public boolean waits(Remark remark) {
        return waitingIds.contains(remark.id());
    }

    /** What waited for the figure that was flown before the one being flown, or last if none is. */
    public List<Remark> ofJustFlown(@Nullable Act act, Course course) {
        List<Flown> flown = course.flown();
        int place = flown.size() - (course.figureId() == null ? 1 : 2);
        return act == null || place < 0
                ? List.of()
                : act.figure(flown.get(place).figureId()).map(Figure::remarks).orElse(List.of()).stream()
                        .filter(this::waits)
                        .toList();
    }
}
