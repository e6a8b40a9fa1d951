package crowdline.sight;

import crowdline.show.Venue;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import org.jspecify.annotations.Nullable;
import org.shredzone.commons.suncalc.SunTimes;

/**
 * The daylight of one day at a venue, by its clock, to a minute; null for what does not happen that day. Over a level
 * horizon: sunrise and sunset when the upper edge is on it with usual refraction, civil twilight to 6° below.
 *
 * @param dawn when civil twilight begins
 * @param dusk when civil twilight ends
 */
public record Daylight(
        @Nullable ZonedDateTime dawn,
        @Nullable ZonedDateTime sunrise,
        @Nullable ZonedDateTime sunset,
        @Nullable ZonedDateTime dusk) {

    /** Nothing is known of it. */
    public static final Daylight UNKNOWN = new Daylight(null, null, null, null);

    /** {@link #UNKNOWN} if nobody knows where the venue is. */
    public static Daylight of(Venue venue, LocalDate day) {
        Double latDeg = venue.latDeg();
        Double lonDeg = venue.lonDeg();
        if (latDeg == null || lonDeg == null) {
            return UNKNOWN;
        }
        SunTimes sun = times(venue, latDeg, lonDeg, day, SunTimes.Twilight.VISUAL);
        SunTimes civil = times(venue, latDeg, lonDeg, day, SunTimes.Twilight.CIVIL);
        return new Daylight(civil.getRise(), sun.getRise(), sun.getSet(), civil.getSet());
    }

    private static SunTimes times(
            Venue venue, double latDeg, double lonDeg, LocalDate day, SunTimes.Twilight twilight) {
        return SunTimes.compute()
                .on(day)
                .timezone(venue.timeZone())
                .at(latDeg, lonDeg)
                .twilight(twilight)
                .oneDay()
                .execute();
    }
}
