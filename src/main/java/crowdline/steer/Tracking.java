package crowdline.steer;

import crowdline.sight.SideView.Craft;
import org.jspecify.annotations.Nullable;

/**
 * What is known of the position beyond the state: from readings, if there are any.
 *
 * @param sureness chance that the figure shown is the one being flown, 0 to 1; null without readings
 * @param readingAgeS seconds since the last reading; null if there never was one
 * @param otherName the figure it may be instead, or null
 * @param craft where the aircraft was last read to be, or null
 * @param begins true if the aircraft is seen to wait, and will begin the act
 */
public record Tracking(
        @Nullable Double sureness,
        @Nullable Double readingAgeS,
        @Nullable String otherName,
        @Nullable Craft craft,
        boolean begins) {
    /** No readings. */
    public static final Tracking NONE = new Tracking(null, null, null, null, false);
}
