package crowdline.running;

import crowdline.loaded.LogFile;
import crowdline.storage.file.ShowFileException;
import crowdline.telemetry.Fix;
import crowdline.telemetry.FlightLog;
import crowdline.telemetry.FlightLogException;
import crowdline.telemetry.IgcHeight;
import crowdline.telemetry.Replay;
import crowdline.telemetry.serial.LinkOpener;
import crowdline.telemetry.serial.Receiver;
import crowdline.telemetry.serial.ReceiverStatus;
import crowdline.telemetry.serial.SerialPorts;
import crowdline.telemetry.serial.StreamOpener;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** Where the aircraft's positions come from: one port, stream or flight log at a time, or nowhere. From any thread. */
public final class AircraftSource implements AutoCloseable {
    private static final double NANOS_PER_S = 1e9;
    /** A name with an ending is a file's, unless it is a device's. */
    private static final Pattern FILE = Pattern.compile("^(?!/dev/).*\\.[A-Za-z]{2,4}$");

    private final LongSupplier nanos;
    private final SerialPorts ports;
    private volatile Consumer<Fix> taker = fix -> {};
    private volatile Supplier<String> useless = () -> "";
    private final AtomicReference<Open> open = new AtomicReference<>(Open.NOTHING);

    /** What is open now and from where, how it stands, and what is wrong with it if anything. */
    private record Open(String where, String name, Supplier<String> text, Supplier<String> trouble, Runnable close) {
        static final Open NOTHING = new Open("", "", () -> "", () -> "", () -> {});

        boolean isNothing() {
            return name.isEmpty();
        }
    }

    /** @param nanos the machine's monotonic clock */
    public AircraftSource(LongSupplier nanos, SerialPorts ports) {
        this.nanos = nanos;
        this.ports = ports;
    }

    /**
     * Who gets the positions from now on.
     *
     * @param why nothing can be made of them, in a sentence; empty where something can; asked from any thread
     */
    public void to(Consumer<Fix> next, Supplier<String> why) {
        taker = next;
        useless = why;
    }

    /** How it stands, in one phrase; empty where nothing is open. */
    public String text() {
        return open().text().get();
    }

    /** What is wrong with it, in one phrase; empty where nothing is, or nothing is open. */
    public String trouble() {
        String own = open().trouble().get();
        return own.isEmpty() && isOpen() ? useless.get() : own;
    }

    /** What is open: a port's or a file's name; empty where nothing is. */
    public String name() {
        return open().name();
    }

    /** What is open, as {@link #open} was told of it; empty where nothing is. */
    public String where() {
        return open().where();
    }

    /** True if positions may come. */
    public boolean isOpen() {
        return !open().isNothing();
    }

    /**
     * Opens what a user named; what cannot be used stands as the trouble where nothing else is open.
     *
     * @param where a serial port's path, a flight log, {@code -} for standard input, or nothing for none
     * @param factor how much faster than flown a flight log is played, above 0
     * @throws ShowFileException if it cannot be used, with what to do
     */
    public void open(String where, double factor, InputStream standardInput) throws ShowFileException {
        try {
            Path file = Path.of(where);
            if (where.isEmpty()) {
                none();
            } else if (where.equals("-")) {
                stream("standard input", standardInput);
            } else if (Files.isRegularFile(file) || Files.isDirectory(file)) {
                replay(file, factor);
            } else if (!Files.exists(file) && FILE.matcher(where).find()) {
                throw new ShowFileException("there is no flight log and no port " + where + "; check its name");
            } else {
                port(where);
            }
        } catch (InvalidPathException e) {
            throw refused(new ShowFileException(where + " names no port and no flight log; check its name"));
        } catch (ShowFileException e) {
            throw refused(e);
        }
    }

    private ShowFileException refused(ShowFileException why) {
        Open nothing = new Open("", "", () -> "", () -> String.valueOf(why.getMessage()), () -> {});
        open.updateAndGet(before -> before.isNothing() ? nothing : before);
        return why;
    }

    private Open open() {
        return Objects.requireNonNull(open.get());
    }

    /** A serial port, by its path; its speed is found. */
    void port(String path) {
        receiver(path, ports.at(path, SerialPorts.USUAL_BAUD));
    }

    /** A stream of a receiver's bytes, such as standard input. */
    public void stream(String name, InputStream in) {
        receiver("-", new StreamOpener(name, in));
    }

    private void receiver(String where, LinkOpener opener) {
        Receiver receiver = Receiver.start(opener, nanos, fix -> taker.accept(fix));
        use(new Open(
                where,
                opener.name(),
                () -> receiver.status().text(),
                () -> trouble(receiver.status()),
                receiver::close));
    }

    private static String trouble(ReceiverStatus status) {
        return status.state() == ReceiverStatus.State.RECEIVING
                ? ""
                : "Receiver " + status.name() + ": " + status.text();
    }

    /**
     * A flight log, as if it were flown now.
     *
     * @param factor how much faster than flown, above 0
     * @throws ShowFileException if it cannot be read, with what to do
     */
    void replay(Path file, double factor) throws ShowFileException {
        String name = String.valueOf(file.getFileName());
        Replay replay;
        try {
            byte[] bytes = LogFile.bytes(file, text -> {});
            replay = new Replay(FlightLog.read(bytes, name, IgcHeight.GNSS), factor);
        } catch (FlightLogException e) {
            throw new ShowFileException(String.valueOf(e.getMessage()));
        }
        ScheduledExecutorService thread = NamedThread.scheduled("replay");
        String playing = "playing " + name
                + (factor == 1
                        ? ""
                        : " " + BigDecimal.valueOf(factor).stripTrailingZeros().toPlainString() + " times as fast");
        long began = nanos.getAsLong();
        play(replay, began, thread);
        use(new Open(
                file.toString(),
                name,
                () -> replay.nextDueS().isPresent() ? playing : name + " is over",
                () -> replay.nextDueS().isPresent() ? "" : "The flight log " + name + " is over",
                thread::shutdownNow));
    }

    private void play(Replay replay, long began, ScheduledExecutorService thread) {
        double elapsedS = (nanos.getAsLong() - began) / NANOS_PER_S;
        replay.upTo(elapsedS).forEach(fix -> taker.accept(fix));
        replay.nextDueS()
                .ifPresentOrElse(
                        dueS -> {
                            var unused = thread.schedule(
                                    () -> play(replay, began, thread),
                                    Math.max(1, Math.round((dueS - elapsedS) * 1000)),
                                    TimeUnit.MILLISECONDS);
                        },
                        thread::shutdown);
    }

    /** No positions any more. */
    void none() {
        use(Open.NOTHING);
    }

    private void use(Open next) {
        Objects.requireNonNull(open.getAndSet(next)).close().run();
    }

    @Override
    public void close() {
        none();
    }
}
