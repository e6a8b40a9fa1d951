package crowdline.storage.json;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The names that the constants of an enum have in files. They stay for ever, whatever the constants come to be called. */
public final class DiskNames<E extends Enum<E>> {
    private final Map<E, String> names;
    private final Map<String, E> constants = new LinkedHashMap<>();

    /**
     * @param name the name of every constant: a switch, so that a constant without a name does not compile
     * @throws IllegalArgumentException if two constants have the same name
     */
    public DiskNames(Class<E> type, Function<E, String> name) {
        names = new EnumMap<>(type);
        for (E constant : type.getEnumConstants()) {
            String given = name.apply(constant);
            names.put(constant, given);
            if (constants.put(given, constant) != null) {
                throw new IllegalArgumentException("two constants of " + type.getSimpleName() + " are called " + given
                        + "; each needs its own name");
            }
        }
    }

    public String of(E constant) {
        return names.getOrDefault(constant, "");
    }

    /**
     * The constant of a name.
     *
     * @throws IllegalArgumentException if none has it, with what is allowed
     */
    public E constant(String name) {
        E constant = constants.get(name);
        if (constant == null) {
            throw new IllegalArgumentException(Quoted.text(name) + " is none of " + String.join(", ", all()));
        }
        return constant;
    }

    /** Every name, in the order of the constants. */
    public List<String> all() {
        return List.copyOf(constants.keySet());
    }
}
