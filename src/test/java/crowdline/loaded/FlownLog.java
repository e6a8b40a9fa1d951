package crowdline.loaded;

import crowdline.flight.Flight;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.show.Venue;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/** A predicted flight as a receiver would have written it down: NMEA 0183, GGA and RMC, with noise. */
public final class FlownLog {
    /** Metres of latitude for one degree; a flat earth is enough for a display. */
    private static final double DEGREE_M = 111_200;

    private static final double MPS_PER_KT = 1852 / 3600.0;
    private static final int BEGIN_S = 12 * 3600;

    private FlownLog() {}

    /**
     * A log of a flight.
     *
     * @param every samples of a tenth of a second from one reading to the next
     */
    public static byte[] nmea(Flight flight, Venue venue, int every, double noiseM, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        StringBuilder log = new StringBuilder();
        for (int i = 0; i + 1 < flight.samples().size(); i += every) {
            Sample a = flight.samples().get(i);
            Sample b = flight.samples().get(i + 1);
            Vec read = new Vec(
                    a.place().x() + noiseM * random.nextGaussian(),
                    a.place().y() + noiseM * random.nextGaussian(),
                    a.place().z() + noiseM * random.nextGaussian());
            double dt = b.tS() - a.tS();
            double vx = (b.place().x() - a.place().x()) / dt;
            double vy = (b.place().y() - a.place().y()) / dt;
            instant(log, venue, a.tS(), read, vx, vy);
        }
        return log.toString().getBytes(StandardCharsets.US_ASCII);
    }

    /** What a receiver says at one instant, seconds after it was switched on. */
    public static byte[] instant(Venue venue, double tS, Vec read, double alongMps, double awayMps) {
        StringBuilder log = new StringBuilder();
        instant(log, venue, tS, read, alongMps, awayMps);
        return log.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private static double given(@Nullable Double number) {
        return Objects.requireNonNull(number);
    }

    private static void instant(StringBuilder log, Venue venue, double tS, Vec read, double vx, double vy) {
        double axis = Math.toRadians(given(venue.axisBearingDeg()));
        double east = read.x() * Math.sin(axis) - read.y() * Math.cos(axis);
        double north = read.x() * Math.cos(axis) + read.y() * Math.sin(axis);
        double lat = given(venue.latDeg()) + north / DEGREE_M;
        double lon = given(venue.lonDeg()) + east / DEGREE_M / Math.cos(Math.toRadians(given(venue.latDeg())));
        double height = read.z() + given(venue.elevationFt()) * 0.3048;
        double track = Math.toDegrees(axis + Math.atan2(-vy, vx));
        String place = String.format(Locale.ROOT, "%s,%s", degrees(lat, 2, "N", "S"), degrees(lon, 3, "E", "W"));
        String time = time(BEGIN_S + tS);
        sentence(log, String.format(Locale.ROOT, "GPGGA,%s,%s,1,09,0.9,%.1f,M,46.9,M,,", time, place, height));
        sentence(
                log,
                String.format(
                        Locale.ROOT,
                        "GPRMC,%s,A,%s,%.1f,%.1f,120627,,,A",
                        time,
                        place,
                        Math.hypot(vx, vy) / MPS_PER_KT,
                        (track % 360 + 360) % 360));
    }

    private static String degrees(double value, int digits, String positive, String negative) {
        double size = Math.abs(value);
        int whole = (int) size;
        return String.format(
                Locale.ROOT,
                "%0" + digits + "d%08.5f,%s",
                whole,
                (size - whole) * 60,
                value >= 0 ? positive : negative);
    }

    private static String time(double s) {
        int whole = (int) s;
        return String.format(Locale.ROOT, "%02d%02d%05.2f", whole / 3600, whole / 60 % 60, s - whole / 60 * 60);
    }

    private static void sentence(StringBuilder log, String body) {
        int sum = 0;
        for (int i = 0; i < body.length(); i++) {
            sum ^= body.charAt(i);
        }
        log.append('$').append(body).append(String.format(Locale.ROOT, "*%02X\r\n", sum));
    }
}
