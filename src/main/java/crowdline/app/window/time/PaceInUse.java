package crowdline.app.window.time;

import crowdline.speech.pace.Pace;
import java.util.function.Supplier;

/** The pace in use; read and set from any thread. */
public final class PaceInUse implements Supplier<Pace> {
    private volatile Pace pace;

    public PaceInUse(Pace first) {
        pace = first;
    }

    @Override
    public Pace get() {
        return pace;
    }

    void set(Pace next) {
        pace = next;
    }
}
