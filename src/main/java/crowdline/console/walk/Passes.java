package crowdline.console.walk;

import crowdline.timing.Pass;
import java.util.List;

/** The timed runs of the open show. Called on the event thread; must return at once. */
public interface Passes {

    /** Those of one variant of an act, the oldest first. */
    List<Pass> of(String actId, String variant);

    /** Keeps another. */
    void add(Pass pass);
}
