package crowdline.console.keys;

import java.awt.event.ActionEvent;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.Action;

/** One command as the action that its menu item, its button and its keys share. */
public final class CommandAction extends AbstractAction {
    private final Command command;
    private final transient Consumer<Command> receiver;

    CommandAction(Command command, Consumer<Command> receiver) {
        super(command.label());
        this.command = command;
        this.receiver = receiver;
        putValue(Action.SHORT_DESCRIPTION, command.help());
        putValue(Action.ACTION_COMMAND_KEY, command.id());
    }

    public Command command() {
        return command;
    }

    /** The key shown for it. */
    public String keyInWords() {
        return Keys.inWords(command.keys().get(0));
    }

    /** Gives the command, if it can be given now. */
    public void give() {
        if (isEnabled()) {
            receiver.accept(command);
        }
    }

    @Override
    public void actionPerformed(ActionEvent event) {
        give();
    }
}
