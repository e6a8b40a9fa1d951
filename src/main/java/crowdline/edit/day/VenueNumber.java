package crowdline.edit.day;

import crowdline.show.Venue;
import crowdline.show.Venue.Limits;
import org.jspecify.annotations.Nullable;

/** A number that the place of a show has, if it was told. */
public enum VenueNumber {
    ELEVATION_FT("the elevation"),
    BEARING_DEG("the bearing of the crowd line"),
    CROWD_M("the distance from the crowd to the line"),
    BASE_FT("the lowest height"),
    CEILING_FT("the greatest height"),
    HALF_LENGTH_M("how far to each side"),
    DEPTH_M("how far beyond the line");

    private final String words;

    VenueNumber(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** Whether it is a limit of the director's: acts are laid out within it. */
    boolean isLimit() {
        return compareTo(BASE_FT) >= 0;
    }

    /** The number as told; null if it was not. */
    public @Nullable Double of(Venue venue) {
        return switch (this) {
            case ELEVATION_FT -> venue.elevationFt();
            case BEARING_DEG -> venue.axisBearingDeg();
            case CROWD_M -> venue.crowdToLineM();
            case BASE_FT -> venue.limits().baseFt();
            case CEILING_FT -> venue.limits().ceilingFt();
            case HALF_LENGTH_M -> venue.limits().halfLengthM();
            case DEPTH_M -> venue.limits().depthM();
        };
    }

    /** The venue with it told, or with it not known if that is null. */
    Venue in(Venue v, @Nullable Double told) {
        Limits l = v.limits();
        Limits limits = new Limits(
                this == BASE_FT ? told : l.baseFt(),
                this == CEILING_FT ? told : l.ceilingFt(),
                this == HALF_LENGTH_M ? told : l.halfLengthM(),
                this == DEPTH_M ? told : l.depthM());
        return new Venue(
                v.name(),
                v.latDeg(),
                v.lonDeg(),
                this == ELEVATION_FT ? told : v.elevationFt(),
                this == BEARING_DEG ? told : v.axisBearingDeg(),
                this == CROWD_M ? told : v.crowdToLineM(),
                v.timeZone(),
                v.crowdUnits(),
                limits);
    }
}
