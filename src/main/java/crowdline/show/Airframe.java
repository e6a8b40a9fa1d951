package crowdline.show;

import crowdline.measure.Must;

/**
 * One aircraft as the prediction needs it.
 *
 * @param id stable name used by acts
 * @param name how it is called to the crowd
 * @param glider true if it has no engine; power must then be 0
 * @param massKg mass as flown in the display, above 0
 * @param wingAreaM2 wing area
 * @param spanM wing span
 * @param lengthM fuselage length
 * @param powerKw shaft power at full throttle at sea level, 0 for a glider
 * @param propellerDiameterM propeller diameter, 0 for a glider
 * @param propellerRpm propeller speed at full throttle, 0 for a glider
 * @param propellerTurns which way the propeller turns seen from the cockpit
 * @param zeroLiftDrag drag coefficient without lift, referred to the wing area
 * @param inducedDragFactor k in CD = CD0 + k CL²
 * @param maxLiftUpright largest lift coefficient
 * @param maxLiftInverted size of the largest lift coefficient upside down, above 0
 * @param rollRateDegPerS greatest aileron roll rate at {@code rollRateKt}; it grows in proportion to speed below that and
 *     stays constant above
 * @param rollRateKt speed at which the roll rate was given
 * @param flickRateDegPerS rotation rate in a flick roll
 * @param spinRateDegPerS rotation rate in a settled upright spin
 * @param spinDescentFtPerTurn height lost for each turn of a settled spin
 * @param pivotS time for the half turn at the top of a stall turn
 * @param tumbleRateDegPerS rotation rate in a tumble
 * @param limitPositiveG load limit upright, above 1
 * @param limitNegativeG load limit upside down, below 0
 * @param neverExceedKt never-exceed speed
 */
public record Airframe(
        String id,
        String name,
        boolean glider,
        double massKg,
        double wingAreaM2,
        double spanM,
        double lengthM,
        double powerKw,
        double propellerDiameterM,
        double propellerRpm,
        PropellerTurns propellerTurns,
        double zeroLiftDrag,
        double inducedDragFactor,
        double maxLiftUpright,
        double maxLiftInverted,
        double rollRateDegPerS,
        double rollRateKt,
        double flickRateDegPerS,
        double spinRateDegPerS,
        double spinDescentFtPerTurn,
        double pivotS,
        double tumbleRateDegPerS,
        double limitPositiveG,
        double limitNegativeG,
        double neverExceedKt) {

    /** Which way a propeller turns, seen from the cockpit. */
    public enum PropellerTurns {
        CLOCKWISE,
        ANTICLOCKWISE
    }

    public Airframe {
        Most.mustBeText("airframe id", id);
        Most.mustBeText("airframe name", name);
        Quantity.MASS_KG.must(massKg);
        Quantity.WING_AREA_M2.must(wingAreaM2);
        Quantity.SPAN_M.must(spanM);
        Quantity.LENGTH_M.must(lengthM);
        Quantity.POWER_KW.must(powerKw);
        Quantity.PROPELLER_DIAMETER_M.must(propellerDiameterM);
        Quantity.PROPELLER_RPM.must(propellerRpm);
        if (glider) {
            if (powerKw != 0) {
                throw new IllegalArgumentException("powerKw is " + powerKw + "; a glider has none, so it must be 0");
            }
        } else {
            Must.bePositive("powerKw", powerKw);
            Must.bePositive("propellerDiameterM", propellerDiameterM);
            Must.bePositive("propellerRpm", propellerRpm);
        }
        Quantity.ZERO_LIFT_DRAG.must(zeroLiftDrag);
        Quantity.INDUCED_DRAG_FACTOR.must(inducedDragFactor);
        Quantity.MAX_LIFT_UPRIGHT.must(maxLiftUpright);
        Quantity.MAX_LIFT_INVERTED.must(maxLiftInverted);
        Quantity.ROLL_RATE_DEG_PER_S.must(rollRateDegPerS);
        Quantity.ROLL_RATE_KT.must(rollRateKt);
        Quantity.FLICK_RATE_DEG_PER_S.must(flickRateDegPerS);
        Quantity.SPIN_RATE_DEG_PER_S.must(spinRateDegPerS);
        Quantity.SPIN_DESCENT_FT_PER_TURN.must(spinDescentFtPerTurn);
        Quantity.PIVOT_S.must(pivotS);
        Quantity.TUMBLE_RATE_DEG_PER_S.must(tumbleRateDegPerS);
        Quantity.LIMIT_POSITIVE_G.must(limitPositiveG);
        Quantity.LIMIT_NEGATIVE_G.must(limitNegativeG);
        Quantity.NEVER_EXCEED_KT.must(neverExceedKt);
    }
}
