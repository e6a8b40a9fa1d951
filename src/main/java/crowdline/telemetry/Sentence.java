package crowdline.telemetry;

import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/** What a frame says, as far as it matters here. */
sealed interface Sentence {

    /** Degrees north and east, WGS 84. */
    record Place(double latDeg, double lonDeg) {}

    /**
     * GGA: position and height.
     *
     * @param utc time of day, or null while the receiver does not know it
     * @param place null without a fix
     * @param heightM above mean sea level, or null
     * @param geoidM sea level above the ellipsoid, or null
     * @param quality null without a fix
     */
    record Gga(
            @Nullable LocalTime utc,
            @Nullable Place place,
            @Nullable Double heightM,
            @Nullable Double geoidM,
            @Nullable FixQuality quality)
            implements Sentence {}

    /**
     * RMC: position, speed, track and date.
     *
     * @param valid whether the receiver stands by it
     * @param guessed whether it was carried on from earlier positions or typed in
     */
    record Rmc(
            @Nullable LocalTime utc,
            @Nullable LocalDate date,
            boolean valid,
            boolean guessed,
            @Nullable Place place,
            @Nullable Double speedMps,
            @Nullable Double trackDeg)
            implements Sentence {}

    /** VTG: track and speed, without a time. */
    record Vtg(@Nullable Double speedMps, @Nullable Double trackDeg) implements Sentence {}

    /** A good sentence of another kind, such as {@code GNGSA}. */
    record Other(String address) implements Sentence {}

    /** Not to be used; the reason is a whole clause, such as "the checksum is 64, but the text gives 43". */
    record Refused(String reason) implements Sentence {}
}
