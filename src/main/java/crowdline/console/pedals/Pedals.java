package crowdline.console.pedals;

import crowdline.console.keys.Command;
import crowdline.console.keys.RemoteKey;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.storage.settings.LearnedButtons;
import crowdline.telemetry.serial.ButtonLearner;
import crowdline.telemetry.serial.ButtonLearner.Learning;
import crowdline.telemetry.serial.ButtonSignal;
import crowdline.telemetry.serial.Buttons;
import crowdline.telemetry.serial.HeardSignal;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Learns which pedal and which key of a remote gives which command, and otherwise says what a press would give. A button
 * is learned by pressing it twice; one that does something already is moved only when told to. Not thread-safe.
 */
final class Pedals {
    private final Consumer<LearnedButtons> changed;
    private LearnedButtons learned;
    private Buttons buttons;
    private @Nullable Lesson lesson;
    private Mark said;
    private double lastS = Double.NEGATIVE_INFINITY;

    /** What is being learned. */
    private static final class Lesson {
        private final Command command;
        private final ButtonLearner learner;
        private @Nullable RemoteKey once;
        private @Nullable ButtonSignal asksPedal;
        private @Nullable RemoteKey asksKey;

        Lesson(Command command, LearnedButtons learned) {
            this.command = command;
            learner = new ButtonLearner(PedalCommands.name(command), learned.pedals(), Buttons.QUIET_S);
        }
    }

    /** @param changed told whenever something else is learned */
    Pedals(LearnedButtons learned, Consumer<LearnedButtons> changed) {
        this.learned = learned;
        this.changed = changed;
        buttons = new Buttons(learned.pedals(), Buttons.QUIET_S);
        said = PedalWords.resting();
    }

    LearnedButtons learned() {
        return learned;
    }

    PedalsView view() {
        Lesson now = lesson;
        return new PedalsView(
                PedalCommands.ALL.stream()
                        .map(command -> PedalRows.row(command, learned))
                        .toList(),
                said,
                now == null ? null : now.command,
                now != null && (now.asksPedal != null || now.asksKey != null));
    }

    /** Listens to another port from now on; null for none. */
    void usePort(@Nullable String path) {
        stop();
        keep(learned.withPort(path));
    }

    /** Listens at another speed from now on. */
    void useBaud(int baud) {
        stop();
        keep(learned.withBaud(baud));
    }

    /** Begins to learn a button for a command. */
    void learn(Command command) {
        lesson = new Lesson(command, learned);
        said = new Mark(
                Form.RING,
                Tone.CALM,
                "Press the pedal for " + command.label() + " twice, or a key on the remote twice. Tab stops.");
    }

    /** Stops learning; what was learned before stays. */
    void stop() {
        lesson = null;
        said = PedalWords.resting();
    }

    /** Forgets what was learned for a command. */
    void forget(Command command) {
        lesson = null;
        LearnedButtons less = learned.without(PedalCommands.name(command));
        boolean some = !less.equals(learned);
        keep(less);
        said = new Mark(
                Form.RING,
                Tone.CALM,
                some
                        ? "Forgotten: " + command.label() + " has only its own keys again"
                        : "Nothing was learned for " + command.label());
    }

    /** Takes the button that was asked for from what it did. */
    void move() {
        Lesson now = lesson;
        if (now != null && now.asksPedal != null) {
            done(learned.with(now.asksPedal, PedalCommands.name(now.command)), now.asksPedal.words(), now.command);
        } else if (now != null && now.asksKey != null) {
            done(learned.with(now.asksKey.code(), PedalCommands.name(now.command)), now.asksKey.words(), now.command);
        }
    }

    /** A pedal was heard. */
    void hear(HeardSignal heard) {
        Lesson now = lesson;
        if (now == null) {
            tryOut(heard);
        } else if (now.asksPedal == null && now.asksKey == null) {
            learn(now, heard);
        } else if (now.asksPedal == null || !sameButton(now.asksPedal, heard.signal())) {
            // Another pedal than the one in question: it is learned instead.
            Lesson again = new Lesson(now.command, learned);
            lesson = again;
            learn(again, heard);
        }
        lastS = heard.atS();
    }

    /** A key of a remote was pressed. */
    void press(RemoteKey key) {
        Lesson now = lesson;
        if (now == null) {
            Command given = PedalCommands.keys(learned).getOrDefault(key.code(), key.meaning());
            said = given == null
                    ? PedalWords.nothing("The key " + key.words())
                    : PedalWords.gives("The key " + key.words(), given);
        } else {
            learn(now, key);
        }
    }

    /** A key was pressed that has no name here, as some remotes type. */
    void nameless() {
        said = new Mark(
                Form.CROSS, Tone.CAUTION, "That button types a key without a name, which cannot be told from others.");
    }

    private void tryOut(HeardSignal heard) {
        Optional<Command> given = buttons.hear(heard).flatMap(PedalCommands::of);
        if (given.isPresent()) {
            said = PedalWords.gives(heard.signal().words(), given.get());
        } else if (!isRest(heard)) {
            said = PedalWords.nothing(heard.signal().words());
        }
    }

    /** Bouncing, letting go, and the line end some remotes send after their byte. */
    private boolean isRest(HeardSignal heard) {
        ButtonSignal signal = heard.signal();
        boolean soon = heard.atS() - lastS < Buttons.QUIET_S;
        return soon || learned.pedals().keySet().stream().anyMatch(known -> sameButton(known, signal));
    }

    private static boolean sameButton(ButtonSignal one, ButtonSignal other) {
        return one.equals(other)
                || (one instanceof ButtonSignal.Turned a
                        && other instanceof ButtonSignal.Turned b
                        && a.line() == b.line());
    }

    private void learn(Lesson now, HeardSignal heard) {
        Learning state = now.learner.hear(heard);
        String command = now.command.label();
        if (state instanceof Learning.Once once) {
            now.once = null;
            said = PedalWords.once(once.signal().words());
        } else if (state instanceof Learning.Learned done) {
            done(
                    learned.with(done.signal(), PedalCommands.name(now.command)),
                    done.signal().words(),
                    now.command);
        } else if (state instanceof Learning.Differed differed) {
            said = new Mark(
                    Form.DIAMOND,
                    Tone.CAUTION,
                    "First " + differed.first().words() + ", then "
                            + differed.second().words() + ". Begin again: press the one pedal for " + command
                            + " twice. If every press looks different, try another speed.");
        } else if (state instanceof Learning.Taken taken) {
            now.asksPedal = taken.signal();
            String other = PedalCommands.of(taken.command()).map(Command::label).orElse(taken.command());
            said = PedalWords.ask(taken.signal().words() + " already gives " + other, command);
        }
    }

    private void learn(Lesson now, RemoteKey key) {
        Command command = now.command;
        Command other = PedalCommands.keys(learned).getOrDefault(key.code(), key.meaning());
        now.asksPedal = null;
        now.asksKey = null;
        if (other == command) {
            now.once = null;
            said = new Mark(
                    Form.DISC,
                    Tone.GOOD,
                    "The key " + key.words() + " gives " + command.label() + " already. Tab stops.");
        } else if (key.meaning() != null && !mayBeTaken(key.meaning())) {
            now.once = null;
            said = new Mark(
                    Form.CROSS,
                    Tone.CAUTION,
                    "The key " + key.words() + " is always for " + key.meaning().label() + "; choose another.");
        } else if (other != null) {
            now.asksKey = key;
            said = PedalWords.ask("The key " + key.words() + " already gives " + other.label(), command.label());
        } else if (now.once != null && now.once.code().equals(key.code())) {
            done(learned.with(key.code(), PedalCommands.name(command)), "the key " + key.words(), command);
        } else {
            now.once = key;
            said = PedalWords.once("The key " + key.words());
        }
    }

    /** Only keys of commands that a pedal may give go to others: nobody loses the way to the incident page. */
    private static boolean mayBeTaken(Command command) {
        return PedalCommands.ALL.contains(command);
    }

    private void done(LearnedButtons next, String button, Command command) {
        lesson = null;
        keep(next);
        said = new Mark(
                Form.DISC, Tone.GOOD, "Learned: " + button + " gives " + command.label() + ". Press it to try it.");
    }

    private void keep(LearnedButtons next) {
        if (!next.equals(learned)) {
            learned = next;
            buttons = new Buttons(next.pedals(), Buttons.QUIET_S);
            changed.accept(next);
        }
    }
}
