package crowdline.console.keys;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * What the commands of one scope do, and when they can be given. A table in which a command of its scope is missing cannot be
 * made, so that no key is ever listed that does nothing. On the event thread.
 */
public final class CommandTable {
    private record Entry(Runnable action, BooleanSupplier possible) {}

    private final Map<Command, Entry> entries;

    private CommandTable(Map<Command, Entry> entries) {
        this.entries = entries;
    }

    /** A table being filled. */
    public static final class Filling {
        private final Command.Scope scope;
        private final Map<Command, Entry> entries = new EnumMap<>(Command.class);

        private Filling(Command.Scope scope) {
            this.scope = scope;
        }

        /**
         * A command does this whenever it can be given.
         *
         * @throws IllegalArgumentException if it is in another scope, or in the table already
         */
        public Filling on(Command command, BooleanSupplier possible, Runnable action) {
            if (command.scope() != scope || entries.containsKey(command)) {
                throw new IllegalArgumentException(
                        command + " is a command of " + command.scope() + "; here each of " + scope + " is said once");
            }
            entries.put(command, new Entry(action, possible));
            return this;
        }

        /** A command that can always be given does this. */
        public Filling on(Command command, Runnable action) {
            return on(command, () -> true, action);
        }

        /** Every command of the scope that is not in the table yet is carried out by one who knows them all. */
        public Filling rest(BooleanSupplier possible, Consumer<Command> action) {
            return rest(command -> true, possible, action);
        }

        /** The same with those commands alone of which something is so. */
        public Filling rest(Predicate<Command> which, BooleanSupplier possible, Consumer<Command> action) {
            for (Command command : Command.values()) {
                if (command.scope() == scope && which.test(command) && !entries.containsKey(command)) {
                    on(command, possible, () -> action.accept(command));
                }
            }
            return this;
        }

        /**
         * The table.
         *
         * @throws IllegalStateException if a command of the scope is missing
         */
        public CommandTable filled() {
            List<Command> missing = new ArrayList<>();
            for (Command command : Command.values()) {
                if (command.scope() == scope && !entries.containsKey(command)) {
                    missing.add(command);
                }
            }
            if (!missing.isEmpty()) {
                throw new IllegalStateException("nobody carries out " + missing + "; say what they do");
            }
            return new CommandTable(new EnumMap<>(entries));
        }
    }

    /** A table of a scope, to be filled. */
    public static Filling of(Command.Scope scope) {
        return new Filling(scope);
    }

    /** The commands that can be given now. */
    public Set<Command> possible() {
        Set<Command> possible = EnumSet.noneOf(Command.class);
        entries.forEach((command, entry) -> {
            if (entry.possible().getAsBoolean()) {
                possible.add(command);
            }
        });
        return possible;
    }

    /**
     * Carries out a command.
     *
     * @throws IllegalArgumentException if it is in another scope
     */
    public void carryOut(Command command) {
        Entry entry = entries.get(command);
        if (entry == null) {
            throw new IllegalArgumentException(command + " belongs to " + command.scope());
        }
        entry.action().run();
    }
}
