package crowdline.console.keys;

import java.awt.event.KeyEvent;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Tells a key pressed from a key still held down, which the system reports again and again. On the event thread. */
public final class HeldKeys {
    /** On X11 a held key is reported as release and press with the same time; anything this close is that. */
    private static final long SAME_MOMENT_MS = 2;

    private final Set<Integer> down = new HashSet<>();
    private final Map<Integer, Long> releasedMs = new HashMap<>();

    /** Takes a press; true if the key was not held down already. */
    public boolean press(KeyEvent event) {
        boolean held = !down.add(event.getKeyCode());
        Long released = releasedMs.get(event.getKeyCode());
        // Either way round, so that a clock that is put back leaves no key dead until it has caught up.
        return !held && (released == null || Math.abs(event.getWhen() - released) > SAME_MOMENT_MS);
    }

    /** Takes a release. */
    public void release(KeyEvent event) {
        down.remove(event.getKeyCode());
        releasedMs.put(event.getKeyCode(), event.getWhen());
    }

    /** Forgets what is held down, as when the window loses the focus and will not hear the release. */
    public void forget() {
        down.clear();
    }
}
