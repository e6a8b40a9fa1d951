package crowdline.app;

import crowdline.flight.Drift;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.FlightFinding;
import crowdline.flight.Spread;
import crowdline.flight.Units;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.WindAt;
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

    static Map<String, Object> act(Act act, Flight flight, List<Spread.Band> bands, List<Drift> drifts) {
        List<Object> figures = new ArrayList<>();
        for (int i = 0; i < flight.figures().size(); i++) {
            figures.add(figure(flight.figures().get(i), bands.get(i), drifts.get(i)));
        }
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", act.id());
        row.put("variant", flight.variant());
        row.put("figures", figures);
        return row;
    }

    static Map<String, @Nullable Object> air(DayAir air) {
        List<Object> aloft = new ArrayList<>();
        for (WindAt at : air.windsAloft()) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("heightFt", tidy(at.heightFt()));
            row.put("fromDeg", tidy(at.fromDeg()));
            row.put("kt", tidy(at.kt()));
            aloft.add(row);
        }
        Double cloudBaseFt = air.cloudBaseFt();
        Map<String, @Nullable Object> row = new LinkedHashMap<>();
        row.put("qnhHpa", tidy(air.qnhHpa()));
        row.put("temperatureC", tidy(air.temperatureC()));
        row.put("windFromDeg", tidy(air.windFromDeg()));
        row.put("windKt", tidy(air.windKt()));
        row.put("windsAloft", aloft);
        row.put("cloudBaseFt", cloudBaseFt == null ? null : tidy(cloudBaseFt));
        return row;
    }

    private static Map<String, @Nullable Object> figure(FigureFlight f, Spread.Band band, Drift drift) {
        boolean banded = Double.isFinite(band.lowS());
        Map<String, @Nullable Object> row = new LinkedHashMap<>();
        row.put("id", f.figureId());
        row.put("name", f.name());
        row.put("startS", tidy(f.startS()));
        row.put("endS", tidy(f.endS()));
        row.put("durationS", tidy(f.durationS()));
        row.put("bandLowS", tidy(banded ? band.lowS() : f.durationS()));
        row.put("bandHighS", tidy(banded ? band.highS() : f.durationS()));
        row.put("entryKt", tidy(Units.ktFromMps(f.entryMps())));
        row.put("exitKt", tidy(Units.ktFromMps(f.exitMps())));
        row.put("minKt", tidy(Units.ktFromMps(f.leastMps())));
        row.put("maxKt", tidy(Units.ktFromMps(f.greatestMps())));
        row.put("lowestFt", tidy(Units.ftFromM(f.lowestM())));
        row.put("highestFt", tidy(Units.ftFromM(f.highestM())));
        row.put("maxG", tidy(f.greatestG()));
        row.put("minG", tidy(f.leastG()));
        row.put("energyInFt", tidy(Units.ftFromM(f.energyInM())));
        row.put("energyOutFt", tidy(Units.ftFromM(f.energyOutM())));
        row.put("alongAM", tidy(f.exitAlongM()));
        row.put("alongBM", tidy(f.exitAwayM()));
        row.put("driftAM", drift.isKnown() ? tidy(drift.alongM()) : null);
        row.put("driftBM", drift.isKnown() ? tidy(drift.awayM()) : null);
        return row;
    }

    private static double tidy(double value) {
        return Math.rint(value * 1000) / 1000 + 0.0;
    }
}
