package crowdline.console.keys;

import java.awt.KeyEventDispatcher;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;

/**
 * Hears every key of the program before the component that has the focus does, so that a focused button cannot eat the
 * space bar. Commands of the scope {@link Command.Scope#FIRST} are given whatever window is in front; all others only by
 * presses that are the window's own. A key held down counts once: a foot resting on a pedal must not run through the act.
 */
public final class KeyDispatcher implements KeyEventDispatcher {

    /** The window whose commands are given. */
    public interface Room {
        /** Whether a press is the window's own: made in it, with no menu, popup or dialog in front of it. */
        boolean owns(KeyEvent press);

        /** Whether the focus takes letters; then only function keys and Ctrl keys are heard. */
        boolean isWriting();

        /** Whether the focus is where a letter finds a row that begins with it; then letters and digits are no commands. */
        boolean isFinding();

        /**
         * Sees a press before the commands do.
         *
         * @param held whether the key was down already
         * @return whether it took the press, as the incident page does
         */
        boolean take(KeyEvent press, boolean held);
    }

    /** How often, and after how long, it is looked whether what was kept can be done: for two seconds in all. */
    private static final int MOST_LOOKS = 40;

    private static final int LOOK_AGAIN_MS = 50;

    private final CommandActions actions;
    private final Room room;
    private final HeldKeys held = new HeldKeys();
    private Map<String, Command> learned = Map.of();
    private boolean eatTyped;
    /** What was pressed for what is not there yet, each with all that its key can mean; null while nothing is waited for. */
    private @Nullable List<List<CommandAction>> kept;

    public KeyDispatcher(CommandActions actions, Room room) {
        this.actions = actions;
        this.room = room;
    }

    /** Hears these keys as well, before the commands' own; such as a remote types that was learned. */
    public void alsoHear(Map<String, Command> keys) {
        learned = Map.copyOf(keys);
    }

    @Override
    public boolean dispatchKeyEvent(KeyEvent event) {
        return switch (event.getID()) {
            case KeyEvent.KEY_PRESSED -> {
                // Presses in menus and other windows are remembered too: Enter held down there must not go on here.
                eatTyped = pressed(event, !held.press(event));
                yield eatTyped;
            }
            case KeyEvent.KEY_RELEASED -> {
                held.release(event);
                yield false;
            }
            case KeyEvent.KEY_TYPED -> eatTyped;
            default -> false;
        };
    }

    private boolean pressed(KeyEvent event, boolean again) {
        Optional<CommandAction> first = actions.all().stream()
                .filter(a -> a.command().isHeardFirst(event))
                .findFirst();
        if (first.isPresent()) {
            // Given again if held: its release may have gone to a window that is no more.
            first.get().give();
            return true;
        }
        if (!room.owns(event)) {
            return false;
        }
        if (room.take(event, again)) {
            return true;
        }
        if ((room.isWriting() && Keys.writes(event)) || (room.isFinding() && Keys.finds(event))) {
            return false;
        }
        if (!again && keeps(event)) {
            return true;
        }
        Optional<CommandAction> action = find(event);
        if (!again) {
            action.ifPresent(CommandAction::give);
        }
        return action.isPresent();
    }

    /** Forgets what is held down, as when the window loses the focus and will not hear the release. */
    public void forget() {
        held.forget();
    }

    /** From now on what is pressed is kept until {@link #ready}, as while a show is begun: it is meant for that one. */
    public void await() {
        kept = new ArrayList<>();
    }

    /** Does what was kept, each as soon as it can be done; what cannot be after a while is forgotten. */
    public void ready() {
        give(MOST_LOOKS);
    }

    private void give(int looks) {
        List<List<CommandAction>> pressed = Objects.requireNonNullElse(kept, List.of());
        while (!pressed.isEmpty()) {
            Optional<CommandAction> meant =
                    pressed.get(0).stream().filter(CommandAction::isEnabled).findFirst();
            if (meant.isEmpty() && looks > 0) {
                // What was begun is there, and the place that shows it may be made a moment later.
                Timer again = new Timer(LOOK_AGAIN_MS, e -> give(looks - 1));
                again.setRepeats(false);
                again.start();
                return;
            }
            pressed.remove(0);
            meant.ifPresent(CommandAction::give);
        }
        kept = null;
    }

    private boolean keeps(KeyEvent event) {
        List<List<CommandAction>> now = kept;
        if (now == null) {
            return false;
        }
        List<CommandAction> meant =
                actions.all().stream().filter(a -> isKeyOf(a, event)).toList();
        if (!meant.isEmpty()) {
            now.add(meant);
        }
        return !meant.isEmpty();
    }

    private static boolean isKeyOf(CommandAction action, KeyEvent event) {
        return action.command().keys().stream().anyMatch(key -> Keys.matches(key, event));
    }

    private Optional<CommandAction> find(KeyEvent event) {
        return learned(event)
                .or(() -> actions.all().stream()
                        .filter(CommandAction::isEnabled)
                        .filter(a -> isKeyOf(a, event))
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
