package crowdline.telemetry.serial;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributes;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The serial ports of this machine. */
public final class SerialPorts {
    /**
     * Speeds of receivers, likeliest first: most makers' default, then what 5 to 10 readings a second need, then the
     * standard's own 4,800. Common practice, no source.
     */
    public static final List<Integer> USUAL_BAUD =
            List.of(9600, 38_400, 115_200, 4800, 57_600, 230_400, 19_200, 460_800);

    private static final int LONGEST_NAME = 60;
    /** What the library calls a port it did not find but was told of; whoever told it knows it by its path. */
    private static final String OPENED_BY_NAME = "User-Specified Port";

    private final SerialLibrary library;

    /** @param folder of this program and this user, where the native part of the serial library is unpacked; may not exist */
    public SerialPorts(Path folder) {
        library = new SerialLibrary(folder);
    }

    /**
     * Lists the ports there are now, mostly none.
     *
     * @throws LinkException where this machine lets nobody use serial ports
     */
    public List<PortName> list() throws LinkException {
        library.load();
        return Arrays.stream(SerialPort.getCommPorts())
                .filter(port -> !port.getPortDescription().equals(OPENED_BY_NAME))
                .map(SerialPorts::named)
                .toList();
    }

    /**
     * A port by its path.
     *
     * @param speedsBaud to try in turn, at least one; {@link #USUAL_BAUD} where it is not known
     */
    public LinkOpener at(String path, List<Integer> speedsBaud) {
        if (speedsBaud.isEmpty()) {
            throw new IllegalArgumentException("speedsBaud is empty; a serial port needs at least one speed");
        }
        List<Integer> speeds = List.copyOf(speedsBaud);
        return new LinkOpener() {
            @Override
            public String name() {
                return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
            }

            @Override
            public List<Integer> speedsBaud() {
                return speeds;
            }

            @Override
            public Link open(int baud) throws LinkException {
                library.load();
                return SerialPorts.open(path, baud);
            }
        };
    }

    private static Link open(String path, int baud) throws LinkException {
        try {
            SerialPort port = SerialPort.getCommPort(path);
            port.setComPortParameters(baud, 8, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
            port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
            if (!port.openPort(0)) {
                int code = port.getLastErrorCode();
                throw new LinkException(
                        OpenRefusal.sentence(path, code, System.getProperty("os.name", ""), groupOf(path)), false);
            }
            port.setDTR();
            port.setRTS();
            return new PortLink(port);
        } catch (SerialPortInvalidPortException e) {
            throw new LinkException(path + " is not there; plug it in", false);
        }
    }

    private static @Nullable String groupOf(String path) {
        try {
            return Files.readAttributes(Path.of(path), PosixFileAttributes.class)
                    .group()
                    .getName();
        } catch (IOException | UnsupportedOperationException | IllegalArgumentException e) {
            return null;
        }
    }

    private static PortName named(SerialPort port) {
        String said = port.getPortDescription().replaceAll("\\p{Cntrl}", " ").strip();
        String brief = said.length() <= LONGEST_NAME ? said : said.substring(0, LONGEST_NAME) + "…";
        String path = port.getSystemPortPath();
        return new PortName(path, brief + " (" + port.getSystemPortName() + ")");
    }
}
