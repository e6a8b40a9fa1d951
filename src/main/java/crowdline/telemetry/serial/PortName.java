package crowdline.telemetry.serial;

/**
 * A serial port of this machine.
 *
 * @param path to open it by, such as {@code /dev/ttyUSB0} or {@code COM3}
 * @param words for people, such as "GNSS receiver (ttyUSB0)"
 */
public record PortName(String path, String words) {}
