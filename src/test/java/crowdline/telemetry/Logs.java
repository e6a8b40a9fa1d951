package crowdline.telemetry;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;

/** The flight logs among the test resources; where they are from is in their README. */
final class Logs {
    static final List<String> ALL = List.of(
            "ublox-neo-m9n-nmea.log",
            "sirfstarv.log",
            "lad_lod_extensions.igc",
            "20241007TZN.igc",
            "new_date_format.igc",
            "no_time_increment.igc",
            "track-with-empty-segment.gpx",
            "track-with-less-sec-time.gpx",
            "unicode_with_bom.gpx",
            "track-partly-without-times.gpx");

    private Logs() {}

    static byte[] bytes(String name) {
        try (InputStream in = Objects.requireNonNull(Logs.class.getResourceAsStream(name), name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static FlightLog read(String name) throws FlightLogException {
        return FlightLog.read(bytes(name), name, IgcHeight.GNSS);
    }

    static FlightLog text(String text) throws FlightLogException {
        return FlightLog.read(Nmea.bytes(text), "x", IgcHeight.GNSS);
    }

    static String refusal(byte[] bytes, String name, IgcHeight height) {
        FlightLogException e =
                catchThrowableOfType(FlightLogException.class, () -> FlightLog.read(bytes, name, height));
        return Objects.requireNonNull(Objects.requireNonNull(e, "was read").getMessage());
    }

    static List<String> notes(FlightLog log) {
        return log.notes().stream().map(LogNote::text).toList();
    }
}
