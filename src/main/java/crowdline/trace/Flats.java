package crowdline.trace;

/**
 * Which flat figures were flown to be seen. What leads from one figure to the next turns, climbs and dives as they do, but turns
 * as far as it must, and is as steep as it must.
 */
final class Flats {
    /** Degrees: none is steeper, however it is flown. */
    private static final double STEEPEST_DEG = 50;
    /** Difference: what is further off is none. Tuned, as all below. */
    private static final double FAR = 0.08;
    /** Degrees by which the headings before and after it may lie otherwise to each other than in the figure. */
    private static final double NET_DEG = 35;
    /** By how much less it costs than a way, at least. */
    private static final double LESS = 0.7;

    /** It climbs as it turns back, as many a way does. */
    private static final String CLIMBING = "chandelle";
    /** By how much less that costs, unless it is as near as no way is. */
    private static final double CLIMBING_LESS = 1.3;

    private static final double NEAR = 0.035;

    /** It turns to one side and back, as ways do, but they less far, less steeply or not as level. */
    private static final String SWING = "Derry turn";
    /** Degrees to either side, and by how much more or less. */
    private static final double SWING_DEG = 60;

    private static final double SWING_OFF_DEG = 12;
    /** Degrees of bank, at least, and of climb, at most. */
    private static final double SWING_BANK_DEG = 61;

    private static final double SWING_CLIMB_DEG = 12;

    private final Path path;

    Flats(Path path) {
        this.path = path;
    }

    /** Whether a shape is flat enough for one. */
    static boolean canBe(Shape shape) {
        return shape.isFlatterThan(STEEPEST_DEG);
    }

    /**
     * Whether a piece is such a figure.
     *
     * @param near the flat figure nearest to it
     * @param less by how much less it costs than a way
     */
    boolean isShown(int from, int to, KnownShapes.Near near, double less) {
        double left = 0;
        double right = 0;
        for (int i = from; i <= to; i++) {
            double deg = path.turnDegPerS(i) * Path.STEP_S;
            left += Math.max(0, deg);
            right += Math.max(0, -deg);
        }
        if (near.difference() > FAR
                || Math.abs(Math.abs(left - right) - near.known().netDeg()) > NET_DEG) {
            return false;
        }
        return switch (near.known().entry().name()) {
            case SWING -> isSwing(left) && isSwing(right) && isSteepAndLevel(from, to);
            case CLIMBING -> less >= (near.difference() < NEAR ? LESS : CLIMBING_LESS);
            default -> less >= LESS;
        };
    }

    private static boolean isSwing(double deg) {
        return Math.abs(deg - SWING_DEG) <= SWING_OFF_DEG;
    }

    private boolean isSteepAndLevel(int from, int to) {
        double bank = 0;
        double climb = 0;
        for (int i = from; i <= to; i++) {
            bank = Math.max(bank, Math.abs(path.bankDeg(i)));
            climb = Math.max(climb, Math.abs(path.climbDeg(i)));
        }
        return bank >= SWING_BANK_DEG && climb <= SWING_CLIMB_DEG;
    }
}
