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
    public static final List<Command> ALL = List.of(
            Command.NEXT, Command.BACK, Command.SAID, Command.NOT_SAID, Command.HOLD, Command.OFF_PLAN, Command.FILLER);

    private PedalCommands() {}

    /** The command kept under an id; empty for one that a pedal may not give. */
    public static Optional<Command> of(String id) {
        return ALL.stream().filter(c -> c.id().equals(id)).findFirst();
    }

    /** The keys that were learned, as far as they are keys and may give their command. */
    public static Map<String, Command> keys(LearnedButtons learned) {
        Map<String, Command> keys = new LinkedHashMap<>();
        learned.keys()
                .forEach((key, id) ->
                        of(id).filter(c -> RemoteKey.isKey(key)).ifPresent(command -> keys.put(key, command)));
        return keys;
    }

    /** What was learned in one sentence, for the sheet of keys; empty if nothing was. */
    public static String inWords(LearnedButtons learned) {
        List<String> said = new ArrayList<>();
        for (Command command : ALL) {
            List<String> ways = Stream.concat(
                            learned.pedalsOf(command.id()).stream().map(ButtonSignal::words),
                            learned.keysOf(command.id()).stream()
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
