package crowdline.app.window.time;

import crowdline.speech.pace.Paces;
import java.util.function.Supplier;

/** The pace in use, and those of the others; read and set from any thread. */
public final class PaceInUse implements Supplier<Paces> {
    private volatile Paces paces;

    public PaceInUse(Paces first) {
        paces = first;
    }

    @Override
    public Paces get() {
        return paces;
    }

    void set(Paces next) {
        paces = next;
    }
}
