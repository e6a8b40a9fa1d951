package crowdline.flight;

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

    /** The air of a day at a venue. */
    public static Air of(DayAir day, Venue venue) {
        return new Air(
                new StandardAtmosphere(day.qnhHpa(), day.temperatureC(), Units.mFromFt(venue.elevationFt())),
                Wind.of(day, venue.axisBearingDeg()));
    }
}
