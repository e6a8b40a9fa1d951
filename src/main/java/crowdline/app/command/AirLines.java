package crowdline.app.command;

import crowdline.measure.Measures;
import crowdline.sheet.Columns;
import crowdline.show.DayAir;
import crowdline.show.WindAt;
import crowdline.show.weather.MetarAir;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The air a prediction was made in, as lines of text. */
final class AirLines {
    private AirLines() {}

    static List<String> of(MetarAir given, Measures measures) {
        DayAir air = given.air();
        List<String> lines = new ArrayList<>();
        StringBuilder words = new StringBuilder(
                String.format(Locale.UK, "Air: QNH %.0f hPa, %.0f C, %s", air.qnhHpa(), air.temperatureC(), wind(air)));
        for (WindAt at : air.windsAloft()) {
            words.append(String.format(
                    Locale.UK, ", at %.0f ft from %03.0f at %.0f kt", at.heightFt(), at.fromDeg(), at.kt()));
        }
        Double cloud = air.cloudBaseFt();
        words.append(cloud == null ? ", no cloud base" : String.format(Locale.UK, ", cloud base %.0f ft", cloud));
        lines.addAll(Columns.hanging("", 2, measures.told(words.append('.').toString())));
        given.notes().forEach(note -> lines.addAll(Columns.hanging("  ", measures.told(note) + ".")));
        return lines;
    }

    private static String wind(DayAir air) {
        return air.windKt() == 0
                ? "calm at the ground"
                : String.format(Locale.UK, "wind from %03.0f true at %.0f kt", air.windFromDeg(), air.windKt());
    }
}
