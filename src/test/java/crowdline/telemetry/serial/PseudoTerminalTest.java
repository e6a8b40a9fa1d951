package crowdline.telemetry.serial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import crowdline.telemetry.Fix;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The port library on a real terminal device, whose other end socat holds. The only test that waits for the system. */
@Tag("terminal")
@Timeout(60)
class PseudoTerminalTest {
    /** The clock of a pedal's port goes so much faster: it first listens for seconds whether a receiver is there. */
    private static final int FASTER = 8;

    private static final String TEXTBOOK = """
            $GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47
            $GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A
            """;

    private @TempDir Path folder;
    private @Nullable Process socat;

    @AfterEach
    void stop() throws InterruptedException {
        if (socat != null) {
            socat.destroy();
            socat.waitFor();
        }
    }

    @Test
    void receiverOnTerminalIsReadLostAndFoundAgain() throws IOException, InterruptedException {
        assumeTrue(isThere("socat"), "skipped: socat is not installed, so there is no terminal to read from");
        Path port = folder.resolve("receiver");
        OutputStream device = plug(port);
        BlockingQueue<Fix> fixes = new LinkedBlockingQueue<>();
        Receiver receiver = Receiver.start(
                new SerialPorts(folder.resolve("library")).at(port.toString(), List.of(115_200)),
                System::nanoTime,
                fixes::add);
        try {
            assertThat(heard(device, fixes).heightM()).isEqualTo(545.4);
            until(() -> Integer.valueOf(115_200).equals(receiver.status().baud())); // told after the position itself

            Objects.requireNonNull(socat).destroy();
            until(() -> receiver.status().state() == ReceiverStatus.State.GONE
                    || receiver.status().state() == ReceiverStatus.State.REFUSED);

            device = plug(port);
            assertThat(heard(device, fixes).heightM()).isEqualTo(545.4);
        } finally {
            receiver.close();
            receiver.close();
        }
        assertThat(receiver.isReading()).isFalse();
    }

    @Test
    void pedalOnTerminalIsHeardLostAndFoundAgain() throws IOException, InterruptedException {
        assumeTrue(isThere("socat"), "skipped: socat is not installed, so there is no terminal to read from");
        Path port = folder.resolve("pedal");
        OutputStream device = plug(port);
        BlockingQueue<HeardSignal> heard = new LinkedBlockingQueue<>();
        ButtonPort buttons = ButtonPort.start(
                new SerialPorts(folder.resolve("library")).at(port.toString(), List.of(19_200)),
                () -> FASTER * System.nanoTime(),
                heard::add);
        try {
            until(() -> buttons.status().state() == ButtonStatus.State.READY);
            assertThat(speedOf(port)).isEqualTo("19200");
            assertThat(press(device, heard)).isEqualTo(new ButtonSignal.Sent('1'));

            Objects.requireNonNull(socat).destroy();
            until(() -> buttons.status().state() == ButtonStatus.State.GONE);

            device = plug(port);
            until(() -> buttons.status().state() == ButtonStatus.State.READY);
            assertThat(press(device, heard)).isEqualTo(new ButtonSignal.Sent('1'));
        } finally {
            buttons.close();
        }
    }

    /** What the system says of a terminal's speed; a pseudo-terminal keeps it and passes bytes at any. */
    private static String speedOf(Path port) throws IOException {
        Process stty = new ProcessBuilder("stty", "-F", port.toString(), "speed").start();
        return new String(stty.getInputStream().readAllBytes(), StandardCharsets.US_ASCII).strip();
    }

    private static ButtonSignal press(OutputStream device, BlockingQueue<HeardSignal> heard)
            throws IOException, InterruptedException {
        device.write('1');
        device.flush();
        HeardSignal signal = heard.poll(10, TimeUnit.SECONDS);
        assertThat(signal).as("the press was heard").isNotNull();
        return signal.signal();
    }

    @Test
    void portThatIsNotThereIsRefusedInOneSentence() throws InterruptedException {
        Path port = folder.resolve("nothing");
        try (Receiver receiver = Receiver.start(
                new SerialPorts(folder.resolve("library")).at(port.toString(), List.of(9600)),
                System::nanoTime,
                fix -> {})) {
            until(() -> receiver.status().state() == ReceiverStatus.State.REFUSED);

            assertThat(receiver.status().text()).isEqualTo(port + " is not there; plug it in");
        }
    }

    private OutputStream plug(Path port) throws IOException, InterruptedException {
        Process process = new ProcessBuilder("socat", "-u", "STDIN", "PTY,raw,echo=0,link=" + port)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        socat = process;
        until(() -> Files.exists(port));
        return process.getOutputStream();
    }

    /** Sends until it is heard: what arrives before the port is open is lost, as from any receiver. */
    private static Fix heard(OutputStream device, BlockingQueue<Fix> fixes) throws IOException, InterruptedException {
        for (int i = 0; i < 100; i++) {
            device.write(TEXTBOOK.getBytes(StandardCharsets.US_ASCII));
            device.flush();
            Fix fix = fixes.poll(200, TimeUnit.MILLISECONDS);
            if (fix != null) {
                return fix;
            }
        }
        throw new AssertionError("nothing was heard from the terminal");
    }

    private static void until(BooleanSupplier reached) throws InterruptedException {
        for (int i = 0; i < 2000 && !reached.getAsBoolean(); i++) {
            TimeUnit.MILLISECONDS.sleep(10);
        }
        assertThat(reached.getAsBoolean()).isTrue();
    }

    private static boolean isThere(String program) {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(":"))
                .anyMatch(place -> Files.isExecutable(Path.of(place, program)));
    }
}
