package crowdline.show.aircraft;

import crowdline.measure.Must;
import crowdline.measure.Units;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How displays of an aircraft are usually flown. What the numbers of a kind rest on stands with them; those made from an
 * airframe alone are common practice, no source.
 *
 * @param loopKt entry speed of looping figures, knots
 * @param verticalKt entry speed of figures that go straight up
 * @param rollKt entry speed of rolls along a level line
 * @param passKt speed of a level pass
 * @param flickKt entry speed of flicks, or null if its displays show none
 * @param pullG load of a pull
 * @param pushG load of a push, below 0, or null if its displays fly no negative figures
 * @param turnBankDeg bank of a level turn
 */
public record Usual(
        double loopKt,
        double verticalKt,
        double rollKt,
        double passKt,
        @Nullable Double flickKt,
        double pullG,
        @Nullable Double pushG,
        double turnBankDeg) {

    /** How near the never-exceed speed a figure is usually begun at most; common practice. */
    private static final double SHARE_OF_NEVER_EXCEED = 0.92;
    /** How near the limits a figure is usually flown at most; common practice. */
    private static final double SHARE_OF_LIMIT = 0.9;
    /** Half a circle takes no longer at a display, seconds; common practice, no source. */
    private static final double HALF_CIRCLE_S = 14;
    /** An aircraft with less negative limit is not displayed upside down for long. */
    private static final double LEAST_NEGATIVE_LIMIT_G = -3;

    public Usual {
        Must.bePositive("loopKt", loopKt);
        Must.bePositive("verticalKt", verticalKt);
        Must.bePositive("rollKt", rollKt);
        Must.bePositive("passKt", passKt);
        if (flickKt != null) {
            Must.bePositive("flickKt", flickKt);
        }
        Must.beAtLeast("pullG", pullG, 1);
        if (pushG != null && !(pushG < 0)) {
            throw new IllegalArgumentException("pushG is " + pushG + "; it must be below 0");
        }
        Must.beWithin("turnBankDeg", turnBankDeg, 1, 89);
    }

    /**
     * Those of an airframe of no known kind, from its own stalling speed and limits: the shares are about what the kinds
     * have.
     */
    static Usual of(Airframe a) {
        double stall = a.stallKt();
        double pushG = 0.5 * a.limitNegativeG();
        Usual usual = new Usual(
                2.7 * stall,
                2.9 * stall,
                2.4 * stall,
                2.7 * stall,
                a.engine() instanceof Engine.Jet ? null : Double.valueOf(1.7 * stall),
                Math.max(2, 0.65 * a.limitPositiveG()),
                a.limitNegativeG() > LEAST_NEGATIVE_LIMIT_G ? null : pushG,
                60);
        return usual.within(a);
    }

    /**
     * Bank of a level turn at a speed: a fast aircraft banks more steeply, so that the crowd does not wait for it, but pulls
     * no harder than usual.
     *
     * @param mps airspeed, m/s
     * @return degrees, {@link #turnBankDeg} at least
     */
    public double turnBankDeg(double mps) {
        double soon = Math.PI * mps / (HALF_CIRCLE_S * Units.G_MPS2);
        return Math.max(turnBankDeg, Math.toDegrees(Math.atan(Math.min(soon, Math.sqrt(pullG * pullG - 1)))));
    }

    /** Those of a kind. */
    static Usual of(Map<String, KindNumber> numbers) {
        return new Usual(
                value(numbers, "loopKt"),
                value(numbers, "verticalKt"),
                value(numbers, "rollKt"),
                value(numbers, "passKt"),
                valueOrNull(numbers, "flickKt"),
                value(numbers, "pullG"),
                valueOrNull(numbers, "pushG"),
                value(numbers, "turnBankDeg"));
    }

    private static double value(Map<String, KindNumber> numbers, String name) {
        KindNumber number = numbers.get(name);
        if (number == null) {
            throw new IllegalArgumentException(name + " is missing; a kind that flies figures needs it");
        }
        return number.value();
    }

    private static @Nullable Double valueOrNull(Map<String, KindNumber> numbers, String name) {
        return numbers.containsKey(name) ? Double.valueOf(value(numbers, name)) : null;
    }

    /** The same, no faster and no harder than an airframe allows: what the pilot told wins over the kind. */
    Usual within(Airframe a) {
        double most = SHARE_OF_NEVER_EXCEED * a.neverExceedKt();
        Double push = pushG == null ? null : Double.valueOf(Math.max(pushG, SHARE_OF_LIMIT * a.limitNegativeG()));
        return new Usual(
                Math.min(loopKt, most),
                Math.min(verticalKt, most),
                Math.min(rollKt, most),
                Math.min(passKt, most),
                flickKt == null ? null : Double.valueOf(Math.min(flickKt, most)),
                Math.max(1, Math.min(pullG, SHARE_OF_LIMIT * a.limitPositiveG())),
                push == null || push >= 0 ? null : push,
                turnBankDeg);
    }
}
