package crowdline.telemetry.serial;

import java.util.Map;
import java.util.Optional;

/** From signals to commands: what was learned, without the bouncing of contacts. Time comes with the signals. */
public final class Buttons {
    /**
     * Seconds of quiet before a press. Contacts bounce for some 20 ms and a foot takes over 100 ms to press again (both
     * from memory); tuned to lie between.
     */
    public static final double QUIET_S = 0.06;

    private final Map<ButtonSignal, String> commands;
    private final Bounce bounce;

    /**
     * Buttons that were learned.
     *
     * @param commands by the signal of the button; what a command means is not known here
     * @param quietS seconds of quiet before a press, 0 or more; {@link #QUIET_S} unless a button needs another
     */
    public Buttons(Map<ButtonSignal, String> commands, double quietS) {
        this.commands = Map.copyOf(commands);
        bounce = new Bounce(quietS);
    }

    /** The command to carry out, if the signal is a press of a button that was learned. */
    public Optional<String> hear(HeardSignal heard) {
        boolean press = bounce.isPress(heard);
        return press ? Optional.ofNullable(commands.get(heard.signal())) : Optional.empty();
    }
}
