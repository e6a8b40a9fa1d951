package crowdline.app.shell;

import org.jspecify.annotations.Nullable;

/**
 * Where a pedal is plugged in, as it is written on the command line.
 *
 * @param path the serial port
 * @param baud its speed, or null if that was not said
 */
public record PedalPort(String path, @Nullable Integer baud) {
    /** Faster ports are not made for pedals; slower ones would take over 0.1 s a byte. Judgement, no source. */
    private static final int LEAST_BAUD = 110;

    private static final int MOST_BAUD = 1_000_000;

    /**
     * Reads {@code PORT} or {@code PORT@BAUD}.
     *
     * @throws IllegalArgumentException with what is wrong and what is allowed
     */
    public static PedalPort of(String text) {
        int at = text.lastIndexOf('@');
        if (at < 0) {
            return new PedalPort(text, null);
        }
        String path = text.substring(0, at);
        String speed = text.substring(at + 1);
        int baud = speed.matches("\\d{1,7}") ? Integer.parseInt(speed) : 0;
        if (path.isBlank() || baud < LEAST_BAUD || baud > MOST_BAUD) {
            throw new IllegalArgumentException(
                    "the pedal's port is \"" + text + "\"; after the @ must stand its speed, " + LEAST_BAUD + " to "
                            + MOST_BAUD + " baud, as in /dev/ttyUSB0@19200");
        }
        return new PedalPort(path, baud);
    }
}
