package crowdline.app.command;

import crowdline.flight.Drift;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.FlightFinding;
import crowdline.flight.Spread;
import crowdline.measure.Units;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.WindAt;
import crowdline.storage.json.JsonOut;
import crowdline.timing.LearnedFigure;
import crowdline.timing.LearnedTimes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A prediction as the stable keys and values of its JSON. */
final class PredictRows {
    private PredictRows() {}

    static Map<String, Object> finding(Act act, FlightFinding f) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("severity", f.severity());
        row.put("code", f.code());
        row.put("act", act.id());
        row.put("figure", f.figureId());
        row.put("message", f.message());
        return row;
    }

    static Map<String, Object> act(
            Act act, Flight flight, List<Spread.Band> bands, List<Drift> drifts, LearnedTimes learned) {
        List<Object> figures = new ArrayList<>();
        for (int i = 0; i < flight.figures().size(); i++) {
            figures.add(figure(
                    flight.figures().get(i),
                    bands.get(i),
                    drifts.get(i),
                    learned.figures().get(i)));
        }
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", act.id());
        row.put("variant", flight.variant());
        row.put("passes", learned.passes());
        row.put("figures", figures);
        return row;
    }

    static Map<String, @Nullable Object> air(DayAir air) {
        List<Object> aloft = new ArrayList<>();
        for (WindAt at : air.windsAloft()) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("heightFt", JsonOut.thousandths(at.heightFt()));
            row.put("fromDeg", JsonOut.thousandths(at.fromDeg()));
            row.put("kt", JsonOut.thousandths(at.kt()));
            aloft.add(row);
        }
        Double cloudBaseFt = air.cloudBaseFt();
        Map<String, @Nullable Object> row = new LinkedHashMap<>();
        row.put("qnhHpa", JsonOut.thousandths(air.qnhHpa()));
        row.put("temperatureC", JsonOut.thousandths(air.temperatureC()));
        row.put("windFromDeg", JsonOut.thousandths(air.windFromDeg()));
        row.put("windKt", JsonOut.thousandths(air.windKt()));
        row.put("windsAloft", aloft);
        row.put("cloudBaseFt", cloudBaseFt == null ? null : JsonOut.thousandths(cloudBaseFt));
        return row;
    }

    private static Map<String, @Nullable Object> figure(
            FigureFlight f, Spread.Band band, Drift drift, LearnedFigure learned) {
        boolean banded = Double.isFinite(band.lowS());
        Map<String, @Nullable Object> row = new LinkedHashMap<>();
        row.put("id", f.figureId());
        row.put("name", f.name());
        row.put("startS", JsonOut.thousandths(f.startS()));
        row.put("endS", JsonOut.thousandths(f.endS()));
        row.put("durationS", JsonOut.thousandths(f.durationS()));
        row.put("bandLowS", JsonOut.thousandths(banded ? band.lowS() : f.durationS()));
        row.put("bandHighS", JsonOut.thousandths(banded ? band.highS() : f.durationS()));
        row.put("passes", learned.passes());
        row.put("learnedStartS", JsonOut.thousandths(learned.learned().startS()));
        row.put("learnedS", JsonOut.thousandths(learned.learned().durationS()));
        row.put("learnedLowS", JsonOut.thousandths(learned.learned().lowS()));
        row.put("learnedHighS", JsonOut.thousandths(learned.learned().highS()));
        row.put("entryKt", known(Units.ktFromMps(f.entryMps())));
        row.put("exitKt", known(Units.ktFromMps(f.exitMps())));
        row.put("minKt", known(Units.ktFromMps(f.leastMps())));
        row.put("maxKt", known(Units.ktFromMps(f.greatestMps())));
        row.put("lowestFt", known(Units.ftFromM(f.lowestM())));
        row.put("highestFt", known(Units.ftFromM(f.highestM())));
        row.put("maxG", known(f.greatestG()));
        row.put("minG", known(f.leastG()));
        row.put("energyInFt", known(Units.ftFromM(f.energyInM())));
        row.put("energyOutFt", known(Units.ftFromM(f.energyOutM())));
        row.put("alongAM", known(f.exitAlongM()));
        row.put("alongBM", known(f.exitAwayM()));
        row.put("driftAM", drift.isKnown() ? JsonOut.thousandths(drift.alongM()) : null);
        row.put("driftBM", drift.isKnown() ? JsonOut.thousandths(drift.awayM()) : null);
        return row;
    }

    /** What nobody knows is null. */
    private static @Nullable Double known(double value) {
        return Double.isNaN(value) ? null : Double.valueOf(JsonOut.thousandths(value));
    }
}
