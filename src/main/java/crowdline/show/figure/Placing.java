package crowdline.show.figure;

import crowdline.show.bounds.Quantity;

/**
 * Where an aircraft is in the display frame, level and upright: the start of an act, or the end of a figure that is
 * timed but not simulated.
 *
 * @param alongM metres along the A-axis, to the commentator's right of the datum
 * @param awayM metres along the B-axis, beyond the display line as seen from the crowd
 * @param heightFt feet above the display datum
 * @param kt true airspeed, above 0
 * @param heading where it points
 */
public record Placing(double alongM, double awayM, double heightFt, double kt, Heading heading) {

    /** Where a level aircraft points, as the commentator sees it. */
    public enum Heading {
        RIGHT,
        LEFT,
        AWAY,
        CROWD
    }

    public Placing {
        Quantity.PLACE_ALONG_M.must(alongM);
        Quantity.PLACE_AWAY_M.must(awayM);
        Quantity.PLACE_HEIGHT_FT.must(heightFt);
        Quantity.PLACE_KT.must(kt);
    }
}
