package crowdline.app.window.device;

import crowdline.app.shell.PedalPort;
import crowdline.console.pedals.PedalHost;
import crowdline.storage.settings.LearnedButtons;
import crowdline.telemetry.serial.ButtonPort;
import crowdline.telemetry.serial.ButtonStatus;
import crowdline.telemetry.serial.HeardSignal;
import crowdline.telemetry.serial.Link;
import crowdline.telemetry.serial.LinkException;
import crowdline.telemetry.serial.LinkOpener;
import crowdline.telemetry.serial.SerialPorts;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Listens to the pedals' port and keeps what was learned. Ports are opened and listed on the {@code io} thread. */
public final class PedalListener implements PedalHost, AutoCloseable {
    private static final ButtonStatus NO_PORT = new ButtonStatus(ButtonStatus.State.LOOKING, "");

    private final SerialPorts ports;
    private final LongSupplier nanos;
    private final Consumer<HeardSignal> heard;
    private final Consumer<LearnedButtons> kept;
    private final Supplier<String> receiver;
    private final Executor io;
    private final AtomicBoolean looking = new AtomicBoolean();
    private volatile LearnedButtons learned;
    private volatile @Nullable ButtonPort port;

    /**
     * @param nanos the machine's monotonic clock
     * @param heard takes every signal, in the reader's thread; must not block
     * @param kept told what to keep for the next start
     * @param receiver name of the port the receiver is at, empty if none
     */
    public PedalListener(
            LearnedButtons learned,
            SerialPorts ports,
            LongSupplier nanos,
            Consumer<HeardSignal> heard,
            Consumer<LearnedButtons> kept,
            Supplier<String> receiver,
            Executor io) {
        this.learned = learned;
        this.ports = ports;
        this.nanos = nanos;
        this.heard = heard;
        this.kept = kept;
        this.receiver = receiver;
        this.io = io;
    }

    /** Begins to listen to the port that was chosen, if any; from any thread, at once. */
    public void listen() {
        io.execute(this::open);
    }

    /** Listens to this port from now on; from any thread, at once. Where no speed is told, the same port keeps its own. */
    public void use(PedalPort at) {
        Integer baud = at.baud();
        int otherwise = at.path().equals(learned.port()) ? learned.baud() : LearnedButtons.USUAL_BAUD;
        learned = learned.withPort(at.path()).withBaud(baud == null ? otherwise : baud);
        kept.accept(learned);
        listen();
    }

    /** What is wrong with the pedals, in one sentence; empty if nothing is, or none are used. */
    public String trouble() {
        ButtonPort open = port;
        if (open == null) {
            return "";
        }
        ButtonStatus status = open.status();
        return switch (status.state()) {
            case LOOKING, READY -> "";
            case SENDING -> status.text();
            case GONE -> "Pedal not connected, the keys work: " + status.text();
        };
    }

    /** True if pedals are to be heard. */
    public boolean isOpen() {
        return port != null;
    }

    @Override
    public void findPorts(Consumer<Found> found) {
        if (!looking.compareAndSet(false, true)) {
            return;
        }
        io.execute(() -> {
            Found now;
            try {
                now = new Found(ports.list(), null);
            } catch (LinkException e) {
                now = new Found(List.of(), e.getMessage());
            } finally {
                looking.set(false);
            }
            Found answer = now;
            SwingUtilities.invokeLater(() -> found.accept(answer));
        });
    }

    @Override
    public LearnedButtons learned() {
        return learned;
    }

    @Override
    public void keep(LearnedButtons next) {
        boolean same = Objects.equals(learned.port(), next.port()) && learned.baud() == next.baud();
        learned = next;
        kept.accept(next);
        if (!same) {
            listen();
        }
    }

    @Override
    public ButtonStatus status() {
        ButtonPort open = port;
        return open == null ? NO_PORT : open.status();
    }

    private void open() {
        close();
        LearnedButtons now = learned;
        String path = now.port();
        if (path != null) {
            port = ButtonPort.start(besideReceiver(ports.at(path, List.of(now.baud()))), nanos, heard);
        }
    }

    /** The same port, unless the receiver is at it: of two readers each would get half the bytes. */
    private LinkOpener besideReceiver(LinkOpener opener) {
        return new LinkOpener() {
            @Override
            public String name() {
                return opener.name();
            }

            @Override
            public List<Integer> speedsBaud() {
                return opener.speedsBaud();
            }

            @Override
            public Link open(int baud) throws LinkException {
                if (receiver.get().equals(name())) {
                    throw new LinkException(
                            "the receiver is at " + name() + "; choose another port for the pedals with Ctrl+B", false);
                }
                return opener.open(baud);
            }
        };
    }

    @Override
    public void close() {
        ButtonPort open = port;
        port = null;
        if (open != null) {
            open.close();
        }
    }
}
