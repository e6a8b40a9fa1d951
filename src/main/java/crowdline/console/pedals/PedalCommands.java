package crowdline.console.pedals;

import crowdline.console.keys.Command;
import crowdline.console.keys.RemoteKey;
import crowdline.storage.settings.LearnedButtons;
import crowdline.telemetry.serial.ButtonSignal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a pedal or remote may give: only what one press takes back or what does no harm by accident. The incident page, the
 * end of an act and another variant are not among it.
 */
public final class PedalCommands {
    /** By their names in the settings, which stay for ever, whatever the commands come to be called. */
    private static final List<Named> NAMED = List.of(
            new Named(Command.NEXT, "next"),
            new Named(Command.BACK, "back"),
            new Named(Command.SAID, "said"),
            new Named(Command.NOT_SAID, "not-said"),
            new Named(Command.HOLD, "hold"),
            new Named(Command.OFF_PLAN, "off-plan"),
            new Named(Command.FILLER, "filler"));

    public static final List<Command> ALL = NAMED.stream().map(Named::command).toList();

    private record Named(Command command, String name) {}

    private PedalCommands() {}

    /** The command kept under a name; empty for one that a pedal may not give. */
    public static Optional<Command> of(String name) {
        return NAMED.stream()
                .filter(n -> n.name().equals(name))
                .map(Named::command)
                .findFirst();
    }

    /**
     * The name under which a command is kept in the settings.
     *
     * @throws IllegalArgumentException if no pedal may give it
     */
    public static String name(Command command) {
        return NAMED.stream()
                .filter(n -> n.command() == command)
                .map(Named::name)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no pedal may give " + command));
    }

    /** The keys that were learned, as far as they are keys and may give their command. */
    public static Map<String, Command> keys(LearnedButtons learned) {
        Map<String, Command> keys = new LinkedHashMap<>();
        learned.keys()
                .forEach((key, name) ->
                        of(name).filter(c -> RemoteKey.isKey(key)).ifPresent(command -> keys.put(key, command)));
        return keys;
    }

    /** What was learned in one sentence, for the sheet of keys; empty if nothing was. */
    public static String inWords(LearnedButtons learned) {
        List<String> said = new ArrayList<>();
        for (Command command : ALL) {
            List<String> ways = Stream.concat(
                            learned.pedalsOf(name(command)).stream().map(ButtonSignal::words),
                            learned.keysOf(name(command)).stream()
                                    .filter(RemoteKey::isKey)
                                    .map(RemoteKey::inWords))
                    .toList();
            if (!ways.isEmpty()) {
                said.add(command.label() + ": " + String.join(", ", ways));
            }
        }
        return said.stream().collect(Collectors.joining(". ", said.isEmpty() ? "" : "Pedals and remotes: ", ""));
    }
}
