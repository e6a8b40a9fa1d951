package crowdline.show.aircraft;

import crowdline.measure.Units;
import crowdline.show.bounds.Most;
import crowdline.show.bounds.Quantity;
import crowdline.show.figure.Element;
import java.util.Collections;
import java.util.SortedSet;
import org.jspecify.annotations.Nullable;

/**
 * One aircraft as the prediction needs it.
 *
 * @param id stable name used by acts
 * @param name how it is called to the crowd
 * @param typical the kind its assumed numbers are typical of, or null if every number was told
 * @param engine what drives it
 * @param massKg mass as flown in the display, above 0
 * @param wingAreaM2 wing area
 * @param spanM wing span
 * @param lengthM fuselage length
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
        @Nullable Typical typical,
        Engine engine,
        double massKg,
        double wingAreaM2,
        double spanM,
        double lengthM,
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
        double neverExceedKt)
        implements Aircraft {

    private static final double SEA_LEVEL_KG_M3 = 1.225;

    public Airframe {
        Most.mustBeText("airframe id", id);
        Most.mustBeText("airframe name", name);
        Quantity.MASS_KG.must(massKg);
        Quantity.WING_AREA_M2.must(wingAreaM2);
        Quantity.SPAN_M.must(spanM);
        Quantity.LENGTH_M.must(lengthM);
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

    /** What shape it has: its kind's, or what is usual with its engine. */
    public Outline outline() {
        Outline told = typical == null ? null : typical.kind().outline();
        return told == null ? Outline.of(engine) : told;
    }

    /** The same, with where the numbers come from that nobody told. */
    public Airframe typicalOf(Typical where) {
        return copy(name, where);
    }

    /** The same called otherwise. */
    public Airframe named(String other) {
        return copy(other, typical);
    }

    private Airframe copy(String otherName, @Nullable Typical otherTypical) {
        return new Airframe(
                id,
                otherName,
                otherTypical,
                engine,
                massKg,
                wingAreaM2,
                spanM,
                lengthM,
                zeroLiftDrag,
                inducedDragFactor,
                maxLiftUpright,
                maxLiftInverted,
                rollRateDegPerS,
                rollRateKt,
                flickRateDegPerS,
                spinRateDegPerS,
                spinDescentFtPerTurn,
                pivotS,
                tumbleRateDegPerS,
                limitPositiveG,
                limitNegativeG,
                neverExceedKt);
    }

    /** Whether it flies without an engine. */
    public boolean glider() {
        return engine instanceof Engine.None;
    }

    /** The keys, as in the show file, of the numbers nobody told: they are typical of the kind. */
    public SortedSet<String> assumed() {
        return typical == null ? Collections.emptySortedSet() : typical.assumed();
    }

    /** Speed at which the wing just carries the weight at sea level in standard air (ISO 2533), knots. */
    public double stallKt() {
        double mps = Math.sqrt(2 * massKg * Units.G_MPS2 / (SEA_LEVEL_KG_M3 * wingAreaM2 * maxLiftUpright));
        return Units.ktFromMps(mps);
    }

    /** How displays of it are usually flown: by its kind, else by its own speeds and limits. */
    public Usual usual() {
        Usual usual = typical == null ? null : typical.kind().usual().orElse(null);
        return usual == null ? Usual.of(this) : usual.within(this);
    }

    /** Whether its displays ever show an element: a jet does not flick, a glider cannot hang on its propeller. */
    public boolean shows(Element element) {
        if (element instanceof Element.HoverRoll && !(engine instanceof Engine.Propeller)) {
            return false;
        }
        return typical == null || typical.kind().shows(element);
    }
}
