package crowdline.telemetry.serial;

import java.util.Map;
import java.util.Optional;

/**
 * Learns the button for one command by having it pressed twice: "press the pedal you want for the next figure". A signal
 * that comes only once, or not the same way again, is not learned, nor is one that already has another command.
 */
public final class ButtonLearner {
    /** Let go within this time, a line that turned on turns off, which is the same press. Tuned: a firm long press. */
    private static final double LET_GO_S = 1.5;

    private final String command;
    private final Map<ButtonSignal, String> taken;
    private final Bounce bounce;
    private Learning state;

    /** How far it is. */
    public sealed interface Learning {
        /** Nothing pressed yet. */
        record Waiting() implements Learning {}

        /** Pressed once; to be pressed again. */
        record Once(ButtonSignal signal, double atS) implements Learning {}

        /** Pressed twice the same. */
        record Learned(ButtonSignal signal) implements Learning {}

        /** That button already does something else; another may be pressed. */
        record Taken(ButtonSignal signal, String command) implements Learning {}

        /** The second press was another one; to begin again. */
        record Differed(ButtonSignal first, ButtonSignal second) implements Learning {}
    }

    /**
     * Waits for the first press.
     *
     * @param command to learn a button for
     * @param taken what was learned so far; a button of the same command may be learned again
     * @param quietS as for {@link Buttons}
     */
    public ButtonLearner(String command, Map<ButtonSignal, String> taken, double quietS) {
        this.command = command;
        this.taken = Map.copyOf(taken);
        bounce = new Bounce(quietS);
        state = new Learning.Waiting();
    }

    /** How far it is now. */
    public Learning state() {
        return state;
    }

    /** The button, once it is learned. */
    public Optional<ButtonSignal> learned() {
        return state instanceof Learning.Learned done ? Optional.of(done.signal()) : Optional.empty();
    }

    /** Takes a signal; gives how far it is then. */
    public Learning hear(HeardSignal heard) {
        boolean press = bounce.isPress(heard);
        if (press && !(state instanceof Learning.Learned)) {
            state = after(heard);
        }
        return state;
    }

    private Learning after(HeardSignal heard) {
        ButtonSignal signal = heard.signal();
        if (state instanceof Learning.Once once) {
            if (signal.equals(once.signal())) {
                return new Learning.Learned(signal);
            }
            return isLettingGo(once, heard) || isRestOfPress(once, heard)
                    ? once
                    : new Learning.Differed(once.signal(), signal);
        }
        String other = taken.get(signal);
        if (other != null && !other.equals(command)) {
            return new Learning.Taken(signal, other);
        }
        return new Learning.Once(signal, heard.atS());
    }

    private static boolean isLettingGo(Learning.Once once, HeardSignal heard) {
        return once.signal() instanceof ButtonSignal.Turned down
                && heard.signal() instanceof ButtonSignal.Turned up
                && down.line() == up.line()
                && heard.atS() - once.atS() <= LET_GO_S;
    }

    /** Some remotes send a line end after their byte. */
    private static boolean isRestOfPress(Learning.Once once, HeardSignal heard) {
        return heard.signal() instanceof ButtonSignal.Sent && heard.atS() - once.atS() < Buttons.QUIET_S;
    }
}
