package crowdline.live.now;

import crowdline.live.state.Course;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.plain.WholeAct;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What is not true of an act any more once a figure of it was dropped: what adds up all of it, or tells its most. Every remark of
 * a show is read for that once, when this is made.
 */
public final class Shortened {
    private final Set<String> ofWholeActs;

    public Shortened(Show show) {
        ofWholeActs = show.acts().stream()
                .flatMap(act -> show.everyRemarkOf(act.id()))
                .filter(r -> r.kind() != RemarkKind.CALL && r.kind() != RemarkKind.DUTY)
                .filter(r -> WholeAct.isToldOf(r.text()))
                .map(Remark::id)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Ids of remarks not to be said of an act as it is flown; none as long as all of it is, in whatever order. */
    public Set<String> untrue(@Nullable Act act, Course course) {
        boolean shorter = act != null
                && course.droppedIds().stream()
                        .flatMap(id -> act.figure(id).stream())
                        .anyMatch(figure -> !figure.transit());
        return shorter ? ofWholeActs : Set.of();
    }
}
