package crowdline.storage.settings;

import crowdline.telemetry.serial.ButtonSignal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which pedals and which keys of a remote give which commands. What a command or a key means is not known here.
 *
 * @param port the serial port of the pedals, by its path; null for none
 * @param baud the speed of that port, above 0; control lines have none
 * @param pedals commands, by the signal of a button
 * @param keys commands, by the key
 */
public record LearnedButtons(
        @Nullable String port, int baud, Map<ButtonSignal, String> pedals, Map<String, String> keys) {
    /** The speed of most boards that send a byte a press; common practice, no source. */
    public static final int USUAL_BAUD = 9600;

    public static final LearnedButtons NONE = new LearnedButtons(null, USUAL_BAUD, Map.of(), Map.of());

    public LearnedButtons {
        if (port != null && port.isBlank()) {
            throw new IllegalArgumentException("the port of the pedals is empty; it must be the name of one");
        }
        if (baud <= 0) {
            throw new IllegalArgumentException(speed(baud + " baud") + "; it must be above 0");
        }
        pedals = Collections.unmodifiableMap(new LinkedHashMap<>(pedals));
        keys = Collections.unmodifiableMap(new LinkedHashMap<>(keys));
    }

    public LearnedButtons withPort(@Nullable String newPort) {
        return new LearnedButtons(newPort, baud, pedals, keys);
    }

    public LearnedButtons withBaud(int newBaud) {
        return new LearnedButtons(port, newBaud, pedals, keys);
    }

    /** With a pedal for a command; what it did before it does no more. */
    public LearnedButtons with(ButtonSignal signal, String command) {
        Map<ButtonSignal, String> next = new LinkedHashMap<>(pedals);
        next.put(signal, command);
        return new LearnedButtons(port, baud, next, keys);
    }

    /** With a key for a command; what was learned for it before is gone. */
    public LearnedButtons with(String key, String command) {
        Map<String, String> next = new LinkedHashMap<>(keys);
        next.put(key, command);
        return new LearnedButtons(port, baud, pedals, next);
    }

    /** Without anything that was learned for a command. */
    public LearnedButtons without(String command) {
        Map<ButtonSignal, String> lessPedals = new LinkedHashMap<>(pedals);
        lessPedals.values().removeIf(command::equals);
        Map<String, String> lessKeys = new LinkedHashMap<>(keys);
        lessKeys.values().removeIf(command::equals);
        return new LearnedButtons(port, baud, lessPedals, lessKeys);
    }

    /** The pedals of a command, as they were learned. */
    public List<ButtonSignal> pedalsOf(String command) {
        return pedals.entrySet().stream()
                .filter(e -> e.getValue().equals(command))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The keys learned for a command. */
    public List<String> keysOf(String command) {
        return keys.entrySet().stream()
                .filter(e -> e.getValue().equals(command))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Says what the speed was given as. */
    static String speed(String given) {
        return "the speed of the pedals' port is " + given;
    }
}
