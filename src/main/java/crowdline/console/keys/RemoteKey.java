package crowdline.console.keys;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;

/**
 * A key that a remote types.
 *
 * @param code the key as {@link Command} writes keys, to keep it by
 * @param words to show it
 * @param meaning what it does in Live by itself, or null if nothing
 */
public record RemoteKey(String code, String words, @Nullable Command meaning) {

    /** The key of a press; empty for one that has no name and so cannot be told from others. */
    public static Optional<RemoteKey> of(KeyEvent press) {
        if (press.getKeyCode() == KeyEvent.VK_UNDEFINED) {
            return Optional.empty();
        }
        String code = KeyStroke.getKeyStroke(press.getKeyCode(), press.getModifiersEx())
                .toString()
                .replace("pressed ", "");
        return KeyStroke.getKeyStroke(code) == null
                ? Optional.empty()
                : Optional.of(new RemoteKey(code, inWords(code), meaning(press)));
    }

    /** Whether a code kept earlier names a key that may be heard for something else than its own. */
    public static boolean isKey(String code) {
        KeyStroke stroke = KeyStroke.getKeyStroke(code);
        return stroke != null
                && Stream.of(Command.values())
                        .filter(RemoteKey::isForNothingElse)
                        .flatMap(c -> c.keys().stream())
                        .map(KeyStroke::getKeyStroke)
                        .noneMatch(kept -> kept.getKeyCode() == stroke.getKeyCode());
    }

    private static boolean isForNothingElse(Command command) {
        return command.scope() == Command.Scope.FIRST || command == Command.INCIDENT_IN_LIVE;
    }

    /** A key in words, for a sentence. */
    public static String inWords(String code) {
        return switch (code) {
            case "PERIOD" -> "full stop";
            case "COMMA" -> "comma";
            default -> Keys.inWords(code);
        };
    }

    /** The keys of a command that are still its own when some are learned for others. */
    public static List<String> left(Command command, Map<String, Command> learned) {
        return command.keys().stream()
                .filter(key -> learned.getOrDefault(key, command) == command)
                .toList();
    }

    private static @Nullable Command meaning(KeyEvent press) {
        return Stream.of(Command.values())
                .filter(c -> switch (c.scope()) {
                    case FIRST -> c.isHeardFirst(press);
                    case LIVE, WINDOW -> c.keys().stream().anyMatch(key -> Keys.matches(key, press));
                    default -> false;
                })
                .findFirst()
                .orElse(null);
    }
}
