package crowdline.app.command;

import crowdline.show.DayAir;
import crowdline.show.weather.Metar;
import crowdline.show.weather.MetarAir;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Options that put other air in the place of the show's: a METAR first, then what is given one by one. */
final class AirOptions {
    @Option(names = "--metar", paramLabel = "\"TEXT\"", description = "Use the air in this METAR.")
    private @Nullable String metar;

    @Option(
            names = "--wind-from",
            paramLabel = "DEG",
            description = "True direction the wind at the ground comes from.")
    private @Nullable Double windFromDeg;

    @Option(names = "--wind-kt", paramLabel = "KT", description = "Speed of the wind at the ground in knots.")
    private @Nullable Double windKt;

    @Option(names = "--qnh", paramLabel = "HPA", description = "Pressure reduced to sea level in hectopascals.")
    private @Nullable Double qnhHpa;

    @Option(names = "--temp", paramLabel = "C", description = "Air temperature at the datum in degrees Celsius.")
    private @Nullable Double temperatureC;

    /** @throws IllegalArgumentException in one sentence, if a value cannot be used */
    MetarAir over(DayAir day) {
        List<String> read = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        DayAir air = day;
        String report = metar;
        if (report != null) {
            MetarAir taken = metar(report, day);
            air = taken.air();
            read.addAll(taken.read());
            notes.addAll(taken.notes());
        }
        if ((windFromDeg != null || windKt != null) && !day.windsAloft().isEmpty() && report == null) {
            notes.add(Metar.WINDS_STAY);
        }
        return new MetarAir(
                new DayAir(
                        within("--qnh", qnhHpa, 850, 1100, air.qnhHpa()),
                        within("--temp", temperatureC, -60, 60, air.temperatureC()),
                        within("--wind-from", windFromDeg, 0, 360, air.windFromDeg()),
                        within("--wind-kt", windKt, 0, 100, air.windKt()),
                        air.windsAloft(),
                        air.cloudBaseFt()),
                read,
                notes);
    }

    private static MetarAir metar(String report, DayAir day) {
        try {
            return Metar.read(report, day);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("--metar: " + e.getMessage(), e);
        }
    }

    private static double within(
            String option, @Nullable Double value, double least, double greatest, double otherwise) {
        if (value == null) {
            return otherwise;
        }
        if (!(value >= least && value <= greatest)) {
            throw new IllegalArgumentException(String.format(
                    Locale.UK, "%s is %s; it must be from %.0f to %.0f", option, plain(value), least, greatest));
        }
        return value;
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
