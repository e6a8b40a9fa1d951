package crowdline.show.check;

import crowdline.measure.Units;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.bounds.Quantity;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * What the numbers of an airframe make together, where each by itself may be sound. What is plausible is common practice
 * and memory, no source, from an ultralight to a fast jet; it looks for slips of the hand and judges no aircraft.
 *
 * @param unit what the number counts, as a sentence goes on after it
 * @param low the least that is plausible
 * @param high the most that is plausible
 * @param keys what it is made of
 * @param where the key a finding stands at
 * @param applies for which airframes it means anything
 * @param value the number
 */
record Proportion(
        String unit,
        double low,
        double high,
        String keys,
        String where,
        Predicate<Airframe> applies,
        ToDoubleFunction<Airframe> value) {

    static final List<Proportion> ALL = List.of(
            wingLoading(450, a -> !isJet(a)),
            wingLoading(700, Proportion::isJet),
            stall(120, a -> !isJet(a)),
            stall(170, Proportion::isJet),
            new Proportion(
                    "times the stalling speed as never-exceed speed",
                    1.8,
                    6,
                    "neverExceedKt, massKg, wingAreaM2, maxLiftUpright",
                    "neverExceedKt",
                    a -> true,
                    a -> a.neverExceedKt() / a.stallKt()),
            new Proportion(
                    "kW for each kg",
                    0.04,
                    1,
                    "powerKw, massKg",
                    "powerKw",
                    a -> a.engine() instanceof Engine.Propeller,
                    a -> propeller(a).powerKw() / a.massKg()),
            new Proportion(
                    "times the weight for the thrust",
                    0.08,
                    1.6,
                    "thrustKn, reheatKn, massKg",
                    "thrustKn",
                    Proportion::isJet,
                    a -> thrustN(a) / (a.massKg() * Units.G_MPS2)),
            new Proportion(
                    "kW for each m² of propeller disc",
                    8,
                    250,
                    "powerKw, propellerDiameterM",
                    "propellerDiameterM",
                    a -> a.engine() instanceof Engine.Propeller,
                    a -> propeller(a).powerKw()
                            / (Math.PI * Math.pow(propeller(a).diameterM() / 2, 2))),
            new Proportion(
                    "m/s at the propeller's tips",
                    110,
                    330,
                    "propellerRpm, propellerDiameterM",
                    "propellerRpm",
                    a -> a.engine() instanceof Engine.Propeller,
                    a -> Math.PI * propeller(a).diameterM() * propeller(a).rpm() / 60),
            new Proportion(
                    "for span² by wing area",
                    2.2,
                    45,
                    "spanM, wingAreaM2",
                    "spanM",
                    a -> true,
                    a -> a.spanM() * a.spanM() / a.wingAreaM2()),
            new Proportion(
                    "for length by span",
                    0.25,
                    1.9,
                    "lengthM, spanM",
                    "lengthM",
                    a -> true,
                    a -> a.lengthM() / a.spanM()),
            new Proportion(
                    "times the induced drag of a perfect wing",
                    0.85,
                    3.5,
                    "inducedDragFactor, spanM, wingAreaM2",
                    "inducedDragFactor",
                    a -> true,
                    a -> a.inducedDragFactor() * Math.PI * a.spanM() * a.spanM() / a.wingAreaM2()),
            new Proportion(
                    "for the best glide ratio",
                    5,
                    25,
                    "zeroLiftDrag, inducedDragFactor",
                    "zeroLiftDrag",
                    a -> !a.glider(),
                    Proportion::glide),
            new Proportion(
                    "for the best glide ratio",
                    12,
                    75,
                    "zeroLiftDrag, inducedDragFactor",
                    "zeroLiftDrag",
                    Airframe::glider,
                    Proportion::glide),
            new Proportion(
                    "times the lift upright when upside down",
                    0.4,
                    1.15,
                    "maxLiftInverted, maxLiftUpright",
                    "maxLiftInverted",
                    a -> true,
                    a -> a.maxLiftInverted() / a.maxLiftUpright()),
            new Proportion(
                    "times the limit upright when upside down",
                    0.15,
                    1.2,
                    "limitNegativeG, limitPositiveG",
                    "limitNegativeG",
                    a -> true,
                    a -> -a.limitNegativeG() / a.limitPositiveG()),
            new Proportion(
                    "times the never-exceed speed for rollRateKt",
                    0.3,
                    1.05,
                    "rollRateKt, neverExceedKt",
                    "rollRateKt",
                    a -> true,
                    a -> a.rollRateKt() / a.neverExceedKt()),
            new Proportion(
                    "times the speed for the way of a wing tip in a roll",
                    0.02,
                    0.6,
                    "rollRateDegPerS, spanM, rollRateKt",
                    "rollRateDegPerS",
                    a -> true,
                    a -> Math.toRadians(a.rollRateDegPerS()) * a.spanM() / 2 / Units.mpsFromKt(a.rollRateKt())),
            new Proportion(
                    "ft a second of sink in a spin",
                    25,
                    420,
                    "spinDescentFtPerTurn, spinRateDegPerS",
                    "spinDescentFtPerTurn",
                    a -> true,
                    a -> a.spinDescentFtPerTurn() * a.spinRateDegPerS() / 360));

    private static Proportion wingLoading(double most, Predicate<Airframe> of) {
        return new Proportion(
                "kg for each m² of wing",
                12,
                most,
                "massKg, wingAreaM2",
                "wingAreaM2",
                of,
                a -> a.massKg() / a.wingAreaM2());
    }

    private static Proportion stall(double mostKt, Predicate<Airframe> of) {
        return new Proportion(
                "kt of stalling speed",
                18,
                mostKt,
                "massKg, wingAreaM2, maxLiftUpright",
                "maxLiftUpright",
                of,
                Airframe::stallKt);
    }

    private static boolean isJet(Airframe a) {
        return a.engine() instanceof Engine.Jet;
    }

    private static Engine.Propeller propeller(Airframe a) {
        return (Engine.Propeller) a.engine();
    }

    private static double thrustN(Airframe a) {
        return 1000 * ((Engine.Jet) a.engine()).mostKn();
    }

    /** Lift by drag where it is greatest: 1 / (2 √(CD0 k)). */
    private static double glide(Airframe a) {
        return 1 / (2 * Math.sqrt(a.zeroLiftDrag() * a.inducedDragFactor()));
    }

    boolean isPlausible(Airframe a) {
        if (!applies.test(a)) {
            return true;
        }
        double is = value.applyAsDouble(a);
        return is >= low && is <= high;
    }

    String sentence(Airframe a) {
        return keys + " together make " + Quantity.written(rounded(value.applyAsDouble(a))) + " " + unit + "; "
                + Quantity.written(low) + " to " + Quantity.written(high) + " is plausible; check them";
    }

    /** Three digits are enough to see what is wrong. */
    private static double rounded(double value) {
        double unit = Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - 2);
        return Math.rint(value / unit) * unit;
    }
}
