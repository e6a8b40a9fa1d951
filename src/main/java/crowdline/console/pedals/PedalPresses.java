package crowdline.console.pedals;

import crowdline.console.keys.CommandActions;
import crowdline.console.keys.KeyDispatcher;
import crowdline.console.theme.Appearance;
import crowdline.console.window.OwnWindow;
import crowdline.storage.settings.LearnedButtons;
import crowdline.telemetry.serial.Buttons;
import crowdline.telemetry.serial.HeardSignal;
import java.awt.Frame;
import java.util.function.Consumer;
import javax.swing.JDialog;
import org.jspecify.annotations.Nullable;

/**
 * What pedals and remotes do in the window: a press gives its command by the action a key would take, or goes to the
 * window in which buttons are learned while that is open. On the event thread.
 */
public final class PedalPresses {
    private final CommandActions actions;
    private final KeyDispatcher keys;
    private final Consumer<LearnedButtons> shown;
    private Buttons buttons = new Buttons(LearnedButtons.NONE.pedals(), Buttons.QUIET_S);
    private @Nullable PedalsPanel learning;

    /** @param shown told what was learned, to show it on the sheet of keys */
    public PedalPresses(CommandActions actions, KeyDispatcher keys, Consumer<LearnedButtons> shown) {
        this.actions = actions;
        this.keys = keys;
        this.shown = shown;
    }

    /** Goes by these buttons from now on. */
    public void use(LearnedButtons learned) {
        buttons = new Buttons(learned.pedals(), Buttons.QUIET_S);
        keys.alsoHear(PedalCommands.keys(learned));
        shown.accept(learned);
    }

    /** A pedal was worked. */
    public void hear(HeardSignal signal) {
        PedalsPanel open = learning;
        if (open != null) {
            open.hear(signal);
        } else {
            buttons.hear(signal)
                    .flatMap(PedalCommands::of)
                    .ifPresent(command -> actions.of(command).give());
        }
    }

    /** Opens the window in which buttons are learned, and uses what was learned in it. */
    public void ask(Frame owner, Appearance appearance, PedalHost host) {
        JDialog dialog = OwnWindow.over(owner, "Pedals and remotes");
        PedalsPanel panel = new PedalsPanel(appearance, host, dialog::dispose);
        learning = panel;
        try {
            OwnWindow.show(dialog, panel, OwnWindow.size(appearance, 860, 620, owner.getSize()));
        } finally {
            learning = null;
            use(host.learned());
        }
    }
}
