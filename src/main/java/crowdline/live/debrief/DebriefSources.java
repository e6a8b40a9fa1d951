package crowdline.live.debrief;

import crowdline.patter.Plan;
import crowdline.timing.ActTimes;
import crowdline.timing.Pass;
import java.util.List;
import java.util.Optional;

/** What a debrief compares the show with. */
public interface DebriefSources {

    /** The times an act was planned with; empty for an act or variant nobody predicted. */
    Optional<ActTimes> times(String actId, String variant);

    /** What was planned to be said in the whole act, as on paper. */
    Optional<Plan> plan(String actId, String variant);

    /** How a figure is called in a variant of an act. */
    String name(String actId, String variant, String figureId);

    /** How long a text takes this speaker, seconds; 0 where nobody knows. */
    double spokenS(String text);

    /** Earlier timed runs of the same act and variant. */
    List<Pass> passes(String actId, String variant);
}
