package crowdline.sheet;

import crowdline.flight.leg.Sample;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A predicted flight as comma-separated values, one row for each sample. */
public final class TraceTable {
    private static final String HEAD = "tS,xM,yM,zM,speedMps,pathAngleDeg,rollDeg,g,thrustN,dragN";

    private TraceTable() {}

    /** The head and one line for each sample. */
    public static List<String> lines(List<Sample> samples) {
        return Stream.concat(Stream.of(HEAD), samples.stream().map(TraceTable::row))
                .toList();
    }

    private static String row(Sample s) {
        return String.format(
                Locale.ROOT,
                "%.1f,%.3f,%.3f,%.3f,%.4f,%.3f,%.3f,%.4f,%.2f,%.2f",
                s.tS(),
                s.place().x(),
                s.place().y(),
                s.place().z(),
                s.speedMps(),
                s.pathAngleDeg(),
                s.rollDeg(),
                s.g(),
                s.thrustN(),
                s.dragN());
    }
}
