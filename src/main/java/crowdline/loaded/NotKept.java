package crowdline.loaded;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.loaded.ActOrigins.What;
import crowdline.measure.Units;
import crowdline.show.Act;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A number that was told of a figure and is not flown so: what stands before it, or comes behind it, leaves no room for it.
 *
 * @param what {@link What#ENTRY_SPEED}, {@link What#HEIGHT} where it begins, or {@link What#TIME}
 * @param told knots, feet or seconds
 * @param flown the same as predicted
 */
public record NotKept(Figure figure, What what, double told, double flown) {
    /** A smaller difference is one of prediction; by judgement, no source. */
    private static final double SHARE = 0.08;

    /** Nor is one so small seen from the ground; by judgement, no source. */
    private static final double LEAST_KT = 5;

    private static final double LEAST_FT = 50;
    private static final double LEAST_S = 2;

    /** Those of an act that is flown; none where it is only timed. */
    public static List<NotKept> of(Act act, Flight flight) {
        return flight.figures().stream()
                .flatMap(flown -> act.figure(flown.figureId()).stream())
                .flatMap(figure -> of(figure, flight).stream())
                .toList();
    }

    /** Those of one figure. */
    public static List<NotKept> of(Figure figure, Flight flight) {
        Asked asked = figure.asked();
        FigureFlight flown = flight.figure(figure.id()).orElse(null);
        if (asked == null || flown == null || !flown.simulated()) {
            return List.of();
        }
        List<NotKept> all = new ArrayList<>();
        add(all, figure, What.ENTRY_SPEED, asked.kt(), Units.ktFromMps(flown.entryMps()), LEAST_KT);
        beginsM(flown, flight)
                .ifPresent(m -> add(all, figure, What.HEIGHT, asked.heightFt(), Units.ftFromM(m), LEAST_FT));
        if (!asked.ownShape()) {
            add(all, figure, What.TIME, asked.seconds(), flown.durationS(), LEAST_S);
        }
        return all;
    }

    private static Optional<Double> beginsM(FigureFlight flown, Flight flight) {
        return flight.samples().stream()
                .filter(s -> s.tS() >= flown.startS())
                .findFirst()
                .map(s -> s.place().z());
    }

    private static void add(
            List<NotKept> all, Figure figure, What what, @Nullable Double told, double flown, double least) {
        if (told != null && Math.abs(told - flown) > Math.max(SHARE * Math.abs(told), least)) {
            all.add(new NotKept(figure, what, told, flown));
        }
    }

    /** What is flown, with its unit. */
    public String flownWords() {
        return words(flown);
    }

    /** What was told, with its unit. */
    public String toldWords() {
        return words(told);
    }

    private String words(double value) {
        return String.format(
                Locale.UK, what == What.ENTRY_SPEED ? "%.0f kt" : what == What.HEIGHT ? "%,.0f ft" : "%.0f s", value);
    }
}
