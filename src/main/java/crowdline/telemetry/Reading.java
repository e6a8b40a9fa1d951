package crowdline.telemetry;

import crowdline.measure.Must;
import org.jspecify.annotations.Nullable;

/**
 * Where the aircraft was at one instant, in the display frame. Where the datum lies at (0, 0, 0) and the A-axis bears
 * 090°, an aircraft 200 m east of the datum, 300 m north of it and 1,000 ft above it is at (200, 300, 304.8).
 *
 * @param tS seconds on the receiver's own scale, which only goes forward; where it begins means nothing
 * @param alongM along the A-axis, to the commentator's right, metres
 * @param awayM away from the crowd, metres; the display line lies at 0
 * @param heightM above the datum, metres
 * @param alongMps speed over the ground along the A-axis, m/s, or null where the receiver does not tell speed
 * @param awayMps speed over the ground away from the crowd, m/s, or null together with {@code alongMps}
 */
public record Reading(
        double tS,
        double alongM,
        double awayM,
        double heightM,
        @Nullable Double alongMps,
        @Nullable Double awayMps) {

    public Reading {
        Must.beFinite("tS", tS);
        Must.beFinite("alongM", alongM);
        Must.beFinite("awayM", awayM);
        Must.beFinite("heightM", heightM);
        if ((alongMps == null) != (awayMps == null)) {
            throw new IllegalArgumentException(
                    "alongMps is " + alongMps + " and awayMps is " + awayMps + "; give both, or neither");
        }
        if (alongMps != null && awayMps != null) {
            Must.beFinite("alongMps", alongMps);
            Must.beFinite("awayMps", awayMps);
        }
    }
}
