package crowdline.console.pedals;

import crowdline.storage.settings.LearnedButtons;
import crowdline.telemetry.serial.ButtonStatus;
import crowdline.telemetry.serial.PortName;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** What pedals and remotes ask of the rest of the program; on the event thread, at once. */
public interface PedalHost {
    /** Has no ports and keeps nothing. */
    PedalHost NONE = new PedalHost() {
        @Override
        public void findPorts(Consumer<Found> found) {}

        @Override
        public LearnedButtons learned() {
            return LearnedButtons.NONE;
        }

        @Override
        public void keep(LearnedButtons learned) {}

        @Override
        public ButtonStatus status() {
            return new ButtonStatus(ButtonStatus.State.LOOKING, "");
        }
    };

    /**
     * The serial ports there are.
     *
     * @param wrong why none can be used, one sentence; null if nothing is wrong
     */
    record Found(List<PortName> ports, @Nullable String wrong) {
        public Found {
            ports = List.copyOf(ports);
        }
    }

    /** Looks which ports there are, and answers on the event thread. */
    void findPorts(Consumer<Found> found);

    /** What was learned so far. */
    LearnedButtons learned();

    /** Keeps what was learned, and listens to its port from now on. */
    void keep(LearnedButtons learned);

    /** How the port of the pedals stands; the text is empty where none was chosen. */
    ButtonStatus status();
}
