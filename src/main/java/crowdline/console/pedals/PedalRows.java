package crowdline.console.pedals;

import crowdline.console.keys.Command;
import crowdline.console.keys.RemoteKey;
import crowdline.storage.settings.LearnedButtons;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The rows of the list of commands: what gives each. */
final class PedalRows {
    private PedalRows() {}

    /** What was learned for a command, and which of its own keys are left. */
    static PedalsView.Row row(Command command, LearnedButtons learned) {
        Map<String, Command> keys = PedalCommands.keys(learned);
        Stream<String> learnedKeys =
                keys.entrySet().stream().filter(e -> e.getValue() == command).map(e -> RemoteKey.inWords(e.getKey()));
        List<String> pedals = new ArrayList<>();
        learned.pedalsOf(PedalCommands.name(command)).forEach(signal -> pedals.add(signal.words()));
        return new PedalsView.Row(
                command,
                words(pedals.stream()),
                words(learnedKeys),
                words(RemoteKey.left(command, keys).stream().map(RemoteKey::inWords)));
    }

    private static String words(Stream<String> all) {
        String words = String.join(", ", all.toList());
        return words.isEmpty() ? "–" : words;
    }
}
