package crowdline.console.keys;

import java.awt.KeyEventDispatcher;
import java.awt.event.KeyEvent;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;

/**
 * Hears every key of the window before the component that has the focus does, so that a focused button cannot eat the
 * space bar. A key held down counts once: a foot resting on a pedal must not run through the act.
 */
public final class KeyDispatcher implements KeyEventDispatcher {
    /** On X11 a held key is reported as release and press with the same time; anything this close is that. */
    private static final long SAME_MOMENT_MS = 2;

    private final CommandActions actions;
    private final Predicate<KeyEvent> ours;
    private final BooleanSupplier writing;
    private final Predicate<KeyEvent> first;
    private final Set<Integer> down = new HashSet<>();
    private final Map<Integer, Long> releasedMs = new HashMap<>();
    private boolean eatTyped;

    /**
     * @param ours whether an event belongs to the window
     * @param writing whether the focus is in a field that takes letters; then only function keys and Ctrl keys are heard
     * @param first sees every press before the commands do and returns true if it took it, as the incident page does
     */
    public KeyDispatcher(
            CommandActions actions, Predicate<KeyEvent> ours, BooleanSupplier writing, Predicate<KeyEvent> first) {
        this.actions = actions;
        this.ours = ours;
        this.writing = writing;
        this.first = first;
    }

    @Override
    public boolean dispatchKeyEvent(KeyEvent event) {
        if (!ours.test(event)) {
            return false;
        }
        return switch (event.getID()) {
            case KeyEvent.KEY_PRESSED -> pressed(event);
            case KeyEvent.KEY_RELEASED -> released(event);
            case KeyEvent.KEY_TYPED -> eatTyped;
            default -> false;
        };
    }

    private boolean pressed(KeyEvent event) {
        boolean again = isAgain(event);
        down.add(event.getKeyCode());
        eatTyped = false;
        if (first.test(event)) {
            eatTyped = true;
            return true;
        }
        if (writing.getAsBoolean() && Keys.writes(event)) {
            return false;
        }
        Optional<CommandAction> action = find(event);
        if (action.isEmpty()) {
            return false;
        }
        eatTyped = true;
        if (!again) {
            action.get().give();
        }
        return true;
    }

    private boolean released(KeyEvent event) {
        down.remove(event.getKeyCode());
        releasedMs.put(event.getKeyCode(), event.getWhen());
        return false;
    }

    private boolean isAgain(KeyEvent event) {
        if (down.contains(event.getKeyCode())) {
            return true;
        }
        Long released = releasedMs.get(event.getKeyCode());
        return released != null && event.getWhen() - released <= SAME_MOMENT_MS;
    }

    /** Forgets what is held down, as when the window loses the focus and will not hear the release. */
    public void forget() {
        down.clear();
    }

    private Optional<CommandAction> find(KeyEvent event) {
        return actions.all().stream()
                .filter(CommandAction::isEnabled)
                .filter(a -> a.command().keys().stream().anyMatch(key -> Keys.matches(key, event)))
                .findFirst();
    }
}
