package crowdline.console.keys;

import java.awt.KeyEventDispatcher;
import java.awt.event.KeyEvent;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;

/**
 * Hears every key of the window before the component that has the focus does, so that a focused button cannot eat the
 * space bar. A key held down counts once: a foot resting on a pedal must not run through the act.
 */
public final class KeyDispatcher implements KeyEventDispatcher {
    private final CommandActions actions;
    private final Predicate<KeyEvent> ours;
    private final BooleanSupplier writing;
    private final Predicate<KeyEvent> first;
    private final HeldKeys held = new HeldKeys();
    private Map<String, Command> learned = Map.of();
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

    /** Hears these keys as well, before the commands' own; such as a remote types that was learned. */
    public void alsoHear(Map<String, Command> keys) {
        learned = Map.copyOf(keys);
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
        boolean again = !held.press(event);
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
        held.release(event);
        return false;
    }

    /** Forgets what is held down, as when the window loses the focus and will not hear the release. */
    public void forget() {
        held.forget();
    }

    private Optional<CommandAction> find(KeyEvent event) {
        return learned(event)
                .or(() -> actions.all().stream()
                        .filter(CommandAction::isEnabled)
                        .filter(a -> a.command().keys().stream().anyMatch(key -> Keys.matches(key, event)))
                        .findFirst());
    }

    private Optional<CommandAction> learned(KeyEvent event) {
        return learned.entrySet().stream()
                .filter(e -> Keys.matches(e.getKey(), event))
                .map(e -> actions.of(e.getValue()))
                .filter(CommandAction::isEnabled)
                .findFirst();
    }
}
