package crowdline.flight.air;

import crowdline.measure.Units;
import crowdline.show.DayAir;
import crowdline.show.Venue;

/** The air an act is flown in. */
public record Air(Atmosphere atmosphere, Wind wind) {
    /** Sea level on a standard day without wind. */
    public static final Air STANDARD = new Air(new StandardAtmosphere(), Wind.CALM);

    /** The same air standing still. */
    public Air still() {
        return new Air(atmosphere, Wind.CALM);
    }

    /** Whether it is known which way the wind of a day blows over a venue: there is none, or the venue says how it lies. */
    public static boolean isWindPlaced(DayAir day, Venue venue) {
        return venue.axisBearingDeg() != null
                || (day.windKt() == 0 && day.windsAloft().isEmpty());
    }

    /** The air of a day at a venue: as at sea level where no elevation is given, and calm where nobody knows which way it lies. */
    public static Air of(DayAir day, Venue venue) {
        Double elevationFt = venue.elevationFt();
        Double axisDeg = venue.axisBearingDeg();
        return new Air(
                new StandardAtmosphere(
                        day.qnhHpa(), day.temperatureC(), elevationFt == null ? 0 : Units.mFromFt(elevationFt)),
                axisDeg == null ? Wind.CALM : Wind.of(day, axisDeg));
    }
}
