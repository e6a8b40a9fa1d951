package crowdline.console.walk;

import crowdline.console.walk.WalkView.Value;
import crowdline.measure.LengthUnit;
import crowdline.measure.Measures;
import crowdline.measure.SpeedUnit;
import crowdline.measure.Units;
import crowdline.show.CrowdUnits;
import crowdline.sight.InCrowdUnits;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What the aircraft does at a moment, in the words and units of the screen. */
final class TrackValues {
    private static final String UNKNOWN = "–";

    private TrackValues() {}

    /** Speed, height, load and place, with what the crowd would say in the label; dashes where nothing was predicted. */
    static List<Value> of(@Nullable FlownTrack track, CrowdUnits units, Measures measures) {
        if (track == null) {
            return List.of(
                    new Value("Speed", UNKNOWN),
                    new Value("Height", UNKNOWN),
                    new Value("Load", UNKNOWN),
                    new Value("Where", UNKNOWN));
        }
        boolean miles = units == CrowdUnits.MILES;
        return List.of(
                new Value(
                        beside(
                                "Speed",
                                InCrowdUnits.speed(track.speedMps(), units),
                                measures.speeds() == (miles ? SpeedUnit.MPH : SpeedUnit.KMH)),
                        measures.speed(Units.ktFromMps(track.speedMps()))),
                new Value(
                        beside(
                                "Height",
                                InCrowdUnits.height(track.heightM(), units),
                                measures.heights() == (miles ? LengthUnit.FEET : LengthUnit.METRES)),
                        measures.roughly(Units.ftFromM(track.heightM()))),
                new Value("Load", load(track.g())),
                new Value("Where", where(track)));
    }

    /** What the crowd would say, where that is another number. */
    private static String beside(String label, String crowds, boolean isSame) {
        return isSame ? label : label + ": " + crowds;
    }

    private static String load(double g) {
        double tenths = Math.round(g * 10) / 10.0;
        return (String.format(Locale.UK, "%+.1f", tenths + 0.0) + " g").replace('-', '−');
    }

    private static String where(FlownTrack track) {
        long along = Math.round(track.alongM() / 10) * 10;
        long away = Math.round(track.awayM() / 10) * 10;
        String side = Math.abs(along) < 20 ? "centre" : Math.abs(along) + " m " + (along > 0 ? "right" : "left");
        return Math.abs(away) < 20 ? side : side + ", " + Math.abs(away) + " m " + (away > 0 ? "out" : "in");
    }
}
