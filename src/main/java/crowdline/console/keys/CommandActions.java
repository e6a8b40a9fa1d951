package crowdline.console.keys;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** The one action of every command. */
public final class CommandActions {
    private final Map<Command, CommandAction> actions = new EnumMap<>(Command.class);

    public CommandActions(Consumer<Command> receiver) {
        for (Command command : Command.values()) {
            actions.put(command, new CommandAction(command, receiver));
        }
    }

    public CommandAction of(Command command) {
        CommandAction action = actions.get(command);
        if (action == null) {
            throw new IllegalStateException("no action for " + command);
        }
        return action;
    }

    public List<CommandAction> all() {
        return List.copyOf(actions.values());
    }

    /** Makes exactly these commands possible, and those heard first always; the only place where that is decided. */
    public void allow(Set<Command> possible) {
        actions.forEach((command, action) ->
                action.setEnabled(command.scope() == Command.Scope.FIRST || possible.contains(command)));
    }
}
