package crowdline.console.prepare.figure;

import crowdline.console.prepare.glance.PrepareView.PlaceNow;
import crowdline.edit.act.Pin;
import crowdline.show.figure.Asked;
import org.jspecify.annotations.Nullable;

/** What a figure is moved in: from where it was pinned, or else from where it is flown now. */
public enum Nudge {
    /** Along the display line, metres to the right. */
    ALONG,
    /** Up, feet. */
    HEIGHT,
    /** Longer, seconds. */
    LENGTH;

    Pin pin(@Nullable Asked asked, PlaceNow now, double by) {
        return switch (this) {
            case ALONG -> new Pin.Along(from(asked == null ? null : asked.alongM(), now.alongM(), 10) + by);
            case HEIGHT -> new Pin.Height(from(asked == null ? null : asked.heightFt(), now.beginsFt(), 10) + by);
            case LENGTH -> new Pin.Length(from(asked == null ? null : asked.seconds(), now.seconds(), 0.5) + by);
        };
    }

    private static double from(@Nullable Double pinned, double now, double step) {
        return pinned == null ? Math.rint(now / step) * step : pinned;
    }
}
