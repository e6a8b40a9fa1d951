package crowdline.edit.day;

import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The numbers of an airframe by their keys in the show file, in the order in which they are asked for. */
public final class AirframeNumbers {
    private AirframeNumbers() {}

    public static Map<String, Double> of(Airframe a) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        numbers.put("massKg", a.massKg());
        if (a.engine() instanceof Engine.Propeller p) {
            numbers.put("powerKw", p.powerKw());
            numbers.put("propellerDiameterM", p.diameterM());
            numbers.put("propellerRpm", p.rpm());
        } else if (a.engine() instanceof Engine.Jet jet) {
            numbers.put("thrustKn", jet.thrustKn());
            Double reheat = jet.reheatKn();
            if (reheat != null) {
                numbers.put("reheatKn", reheat);
            }
        }
        numbers.put("wingAreaM2", a.wingAreaM2());
        numbers.put("spanM", a.spanM());
        numbers.put("lengthM", a.lengthM());
        numbers.put("neverExceedKt", a.neverExceedKt());
        numbers.put("limitPositiveG", a.limitPositiveG());
        numbers.put("limitNegativeG", a.limitNegativeG());
        numbers.put("rollRateDegPerS", a.rollRateDegPerS());
        numbers.put("rollRateKt", a.rollRateKt());
        numbers.put("flickRateDegPerS", a.flickRateDegPerS());
        numbers.put("spinRateDegPerS", a.spinRateDegPerS());
        numbers.put("spinDescentFtPerTurn", a.spinDescentFtPerTurn());
        numbers.put("pivotS", a.pivotS());
        numbers.put("tumbleRateDegPerS", a.tumbleRateDegPerS());
        numbers.put("zeroLiftDrag", a.zeroLiftDrag());
        numbers.put("inducedDragFactor", a.inducedDragFactor());
        numbers.put("maxLiftUpright", a.maxLiftUpright());
        numbers.put("maxLiftInverted", a.maxLiftInverted());
        return Collections.unmodifiableMap(numbers);
    }
}
