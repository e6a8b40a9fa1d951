package crowdline.show.aircraft;

import crowdline.show.bounds.Most;
import org.jspecify.annotations.Nullable;

/**
 * A helicopter, a formation, parachutists or whatever else has a name and times and nothing that could be computed.
 *
 * @param id stable name used by acts
 * @param name how it is called to the crowd
 * @param kind one whose figures are only timed
 * @param number how many they are, or null if that was not said
 */
public record TimedAircraft(
        String id, String name, Kind kind, @Nullable Integer number) implements Aircraft {
    public TimedAircraft {
        Most.mustBeText("airframe id", id);
        Most.mustBeText("airframe name", name);
        if (kind.flies()) {
            throw new IllegalArgumentException(kind.name() + " is a kind that flies figures; it needs an airframe");
        }
        if (number != null && (number < 1 || number > Kinds.MOST_TOGETHER)) {
            throw new IllegalArgumentException(
                    "the number of " + kind.name() + " is " + number + "; it must be from 1 to " + Kinds.MOST_TOGETHER);
        }
    }

    /** What it is, such as "formation of 4". */
    public String what() {
        return number == null ? kind.name() : kind.name() + " of " + number;
    }
}
