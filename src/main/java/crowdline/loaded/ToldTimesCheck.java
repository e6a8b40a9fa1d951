package crowdline.loaded;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Spread;
import crowdline.show.Act;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import crowdline.timing.ActTimes;
import crowdline.timing.PredictedTimes;
import crowdline.timing.ToldTimes;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether the clock of a pilot's list leaves about as much time as is predicted. */
final class ToldTimesCheck {
    static final String CODE = "other-times-told";

    /** A difference smaller than both is none; by judgement, no source. */
    private static final double DIFFERENCE_S = 12;

    private static final double SHARE = 0.3;

    private ToldTimesCheck() {}

    /** From a figure on, until the next that the list has a time for. */
    private record Stretch(FigureFlight first, double toldS, double predictedS) {
        double differenceS() {
            return Math.abs(toldS - predictedS);
        }

        boolean isOther() {
            return differenceS() > Math.max(DIFFERENCE_S, SHARE * predictedS);
        }
    }

    /** @param path where the act stands in the show */
    static Optional<Finding> of(Act act, Flight flight, String path) {
        ToldTimes told = ToldTimes.of(act);
        if (told.isEmpty()) {
            return Optional.empty();
        }
        List<Spread.Band> none = flight.figures().stream()
                .map(f -> new Spread.Band(Double.NaN, Double.NaN, Double.NaN))
                .toList();
        ActTimes predicted = PredictedTimes.of(flight, none);
        return told.stretches(predicted).stream()
                .map(s -> new Stretch(flight.figure(s.figureId()).orElseThrow(), s.toldS(), s.predictedS()))
                .filter(Stretch::isOther)
                .max(Comparator.comparingDouble(Stretch::differenceS))
                .map(most -> new Finding(
                        Severity.NOTE,
                        CODE,
                        String.format(
                                Locale.UK,
                                "\"%s\": the list has times of its own, and they are used; most otherwise is the time from %s"
                                        + " to the next it has one for, %.0f s where %.0f s are predicted, so ask the pilot which is right",
                                act.title(),
                                most.first().name(),
                                most.toldS(),
                                most.predictedS()),
                        path));
    }
}
