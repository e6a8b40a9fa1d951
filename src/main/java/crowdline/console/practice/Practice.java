package crowdline.console.practice;

import crowdline.console.live.OnAir;
import crowdline.console.path.CrowdView;

/** A practice that runs. On the event thread; nothing here waits. */
public interface Practice {
    /** The show it runs in, of which nothing reaches the day's. */
    OnAir onAir();

    /** The sky as it is now. */
    CrowdView sky();

    /** Whether there is nothing more to see. */
    boolean isOver();

    /** Leaves it and says how it went; the answer comes on the event thread. */
    void end(PracticeHost.Told told);

    /** Leaves it without a word. */
    void drop();
}
