package crowdline.app.window.device;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.receiver.ReceiverChoice;
import crowdline.console.receiver.Receivers;
import crowdline.console.theme.Tone;
import crowdline.running.AircraftSource;
import crowdline.storage.file.ShowFileException;
import crowdline.telemetry.serial.LinkException;
import crowdline.telemetry.serial.SerialPorts;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Finds where the aircraft's position can come from, and uses it. Whatever takes time runs on the io thread. */
public final class ReceiverFinder {
    private final AircraftSource aircraft;
    private final SerialPorts ports;
    private final Consumer<Mark> say;
    private final Executor io;

    public ReceiverFinder(AircraftSource aircraft, SerialPorts ports, Consumer<Mark> say, Executor io) {
        this.aircraft = aircraft;
        this.ports = ports;
        this.say = say;
        this.io = io;
    }

    /** Looks what there is and what is in use, and answers on the event thread. */
    public void find(Consumer<Receivers> found) {
        io.execute(() -> {
            List<ReceiverChoice> choices = new ArrayList<>();
            try {
                ports.list().forEach(port -> choices.add(new ReceiverChoice(port.words(), port.path())));
            } catch (LinkException e) {
                alarm(e);
            }
            Receivers all = new Receivers(choices, aircraft.where(), aircraft.text());
            SwingUtilities.invokeLater(() -> found.accept(all));
        });
    }

    /** Takes positions from there; what cannot be used is said. */
    public void use(String where, double faster) {
        io.execute(() -> {
            try {
                aircraft.open(where, faster, System.in);
            } catch (ShowFileException e) {
                alarm(e);
            }
        });
    }

    private void alarm(Exception why) {
        say.accept(new Mark(Form.STOP, Tone.ALARM, String.valueOf(why.getMessage())));
    }
}
