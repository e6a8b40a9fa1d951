package crowdline.show.figure;

import crowdline.show.bounds.Most;
import crowdline.show.bounds.Quantity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the aircraft does within a figure, spelled out in words. A figure is a list of these; each begins in the
 * direction and attitude in which the one before it ended.
 *
 * <p>Angles are degrees, always positive: the way (pull, push) and the side (left, right) say which way round. Power is
 * the share of full power, 0 to 1.
 */
public sealed interface Element {

    /** The share of full power used while this element is flown, 0 to 1. */
    double power();

    /** Whether it says what is flown but not how hard, how far or how fast: that is drawn for each aircraft. */
    default boolean isOpen() {
        return false;
    }

    /** What ends a straight line. */
    enum Until {
        /** Ends after a time, seconds. */
        SECONDS(Quantity.LINE_SECONDS),
        /** Ends after a length of path, metres. */
        METRES(Quantity.LINE_METRES),
        /** Ends on reaching a true airspeed, knots, from above or below. */
        KNOTS(Quantity.LINE_TO_KT),
        /** Ends on reaching a height, feet above the display datum. */
        FEET(Quantity.LINE_TO_FT),
        /** On passing this place on the A-axis, metres to the commentator's right of the datum. */
        ALONG_M(Quantity.LINE_TO_ALONG_M),
        /** Open: for so many times the radius this figure is usually drawn with. */
        RADII(Quantity.LINE_RADII),
        /** Open: until so many times the stalling speed, from above or below. */
        STALLS(Quantity.LINE_TO_STALLS),
        /** Open: until the arc that comes next has its lowest point at the height where the figure began. */
        ENTRY_HEIGHT(null),
        /** Open: until the turn that comes next ends as far from the crowd as the figure began. */
        ENTRY_LINE(null);

        private final @Nullable Quantity quantity;

        Until(@Nullable Quantity quantity) {
            this.quantity = quantity;
        }

        /** What its value is, or null if it has none. */
        @Nullable
        public Quantity quantity() {
            return quantity;
        }

        /** Whether it still has to be drawn for one aircraft and one speed before it can be flown. */
        public boolean isOpen() {
            return this == RADII || this == STALLS || this == ENTRY_HEIGHT || this == ENTRY_LINE;
        }
    }

    /** Which way an arc bends, as the pilot sees it. */
    enum Way {
        PULL,
        PUSH
    }

    /** How hard an arc is flown. */
    enum Size {
        /** Constant load factor felt, in g; negative for a push. The path is egg-shaped, as flown by feel. */
        LOAD_G(Quantity.ARC_LOAD_G),
        /** Constant radius in metres: a round arc. */
        RADIUS_M(Quantity.ARC_RADIUS_M),
        /** A round arc whose radius follows from this load factor in g at its first moment. */
        ROUND_FROM_G(Quantity.ARC_ROUND_FROM_G),
        /** As tight as the wing allows: the largest lift there is, within the airframe's load limit. */
        TIGHTEST(null),
        /** Open: as the displays of such an aircraft usually pull it from this speed, round as far as the speed lasts. */
        USUAL(null),
        /** Open: a short hard corner between two lines. */
        CORNER(null),
        /** Open: slowly over the top, as tight as the wing comfortably gives at that speed. */
        OVER(null);

        private final @Nullable Quantity quantity;

        Size(@Nullable Quantity quantity) {
            this.quantity = quantity;
        }

        /** What its value is, or null if it has none. */
        @Nullable
        public Quantity quantity() {
            return quantity;
        }

        /** Whether it still has to be drawn for one aircraft and one speed before it can be flown. */
        public boolean isOpen() {
            return this == USUAL || this == CORNER || this == OVER;
        }
    }

    /** A side: the pilot's left or right, or, for what the crowd must see, away from the crowd or towards it. */
    enum Side {
        LEFT,
        RIGHT,
        AWAY,
        CROWD
    }

    /** How a roll is flown. */
    enum RollStyle {
        /** At the airframe's own rate for the speed. */
        AILERON,
        /** Evenly in a given time. */
        SLOW,
        /** At the airframe's rate with pauses at points. */
        HESITATION,
        /** Round the inside of a barrel that lies along the way. */
        BARREL
    }

    /** Which lift a flick stalls: positive (pulled in) or negative (pushed in). */
    enum FlickKind {
        POSITIVE,
        NEGATIVE
    }

    /** Which way the nose falls out of a tail slide: through the wheels' side or through the canopy's side. */
    enum SlideKind {
        WHEELS_DOWN,
        WHEELS_UP
    }

    /**
     * A straight line in the direction the aircraft already points, until something is reached.
     *
     * @param value how much of it; 0 where {@code until} needs none
     * @param middle rolls and flicks flown about its middle, the same length of line before and after; mostly none
     */
    record Line(Until until, double value, List<Element> middle, double power) implements Element {
        public Line {
            Quantity quantity = until.quantity();
            if (quantity != null) {
                quantity.must(value);
            }
            Most.MIDDLE.must(middle);
            middle = List.copyOf(middle);
            for (Element turned : middle) {
                if (!(turned instanceof Roll || turned instanceof Flick)) {
                    throw new IllegalArgumentException("the middle of a line may hold rolls and flicks only");
                }
            }
            Quantity.POWER.must(power);
        }

        public Line(Until until, double value, double power) {
            this(until, value, List.of(), power);
        }

        @Override
        public boolean isOpen() {
            return until.isOpen() || !middle.isEmpty();
        }
    }

    /**
     * A bend in the plane of the path and the pilot's up direction: through an angle, or until the path points so many
     * degrees above the horizon. Exactly one of {@code degrees} and {@code toPathDeg} is given.
     *
     * @param topShare for a radius: how wide it is at the top of a loop as a share of how wide at the bottom, 0.1 to 1;
     *     1 is a circle
     */
    record Arc(
            Way way,
            @Nullable Double degrees,
            @Nullable Double toPathDeg,
            Size size,
            double value,
            double topShare,
            double power)
            implements Element {
        public Arc {
            if ((degrees == null) == (toPathDeg == null)) {
                throw new IllegalArgumentException(
                        "an arc needs either degrees or toPathDeg, not both and not neither");
            }
            if (degrees != null) {
                Quantity.ARC_DEGREES.must(degrees);
            }
            if (toPathDeg != null) {
                Quantity.ARC_TO_PATH_DEG.must(toPathDeg);
            }
            Quantity sized = size.quantity();
            if (sized != null) {
                sized.must(value);
            }
            Quantity.ARC_TOP_SHARE.must(topShare);
            Quantity.POWER.must(power);
        }

        public Arc(
                Way way, @Nullable Double degrees, @Nullable Double toPathDeg, Size size, double value, double power) {
            this(way, degrees, toPathDeg, size, value, 1, power);
        }

        @Override
        public boolean isOpen() {
            return size.isOpen();
        }
    }

    /** A roll about the line being flown, or a barrel roll round it. */
    record Roll(
            RollStyle style,
            Side toward,
            double degrees,
            @Nullable Double seconds,
            int pointsPerTurn,
            double pauseS,
            double power)
            implements Element {
        public Roll {
            Quantity.ROLL_DEGREES.must(degrees);
            if (seconds != null) {
                Quantity.ROLL_SECONDS.must(seconds);
            }
            if (style == RollStyle.SLOW && seconds == null) {
                throw new IllegalArgumentException("a slow roll needs its seconds");
            }
            if (style == RollStyle.HESITATION && pointsPerTurn < 2) {
                throw new IllegalArgumentException("a hesitation roll needs 2 or more points, not " + pointsPerTurn);
            }
            Quantity.POINTS_PER_TURN.must(pointsPerTurn);
            Quantity.PAUSE_S.must(pauseS);
            Quantity.POWER.must(power);
        }

        /** A barrel roll without its seconds takes what its speed asks for. */
        @Override
        public boolean isOpen() {
            return style == RollStyle.BARREL && seconds == null;
        }
    }

    /** A roll at the airframe's own rate from the bank it is in, that of a turn that ends banked, to the other bank. */
    record Reversal(ReversalWay way, double power) implements Element {
        public Reversal {
            Quantity.POWER.must(power);
        }
    }

    /** A flick (snap) roll: one wing stalled, rotating by itself. */
    record Flick(FlickKind kind, Side toward, double degrees, double power) implements Element {
        public Flick {
            Quantity.FLICK_DEGREES.must(degrees);
            Quantity.POWER.must(power);
        }
    }

    /** A spin from the stall to the end of its rotation; it ends pointing straight down. */
    record Spin(SpinKind kind, Side toward, double turns, double power) implements Element {
        public Spin {
            Quantity.SPIN_TURNS.must(turns);
            Quantity.POWER.must(power);
        }
    }

    /** Half a turn in yaw at the top of an up-line, as in a stall turn. */
    record Pivot(Side toward, double power) implements Element {
        public Pivot {
            Quantity.POWER.must(power);
        }
    }

    /** Up to rest, backwards under gravity, then the nose falls through until it points straight down. */
    record Slide(SlideKind kind, double power) implements Element {
        public Slide {
            Quantity.POWER.must(power);
        }
    }

    /** Hanging on the propeller on an up-line for a time, rolled by its torque. */
    record HoverRoll(double seconds, double power) implements Element {
        public HoverRoll {
            Quantity.HOVER_SECONDS.must(seconds);
            Quantity.POWER.must(power);
        }
    }

    /** End over end and sideways at once, from a negative flick; ends falling. Predicted roughly. */
    record Tumble(Side toward, double turns, double power) implements Element {
        public Tumble {
            Quantity.TUMBLE_TURNS.must(turns);
            Quantity.POWER.must(power);
        }
    }

    /**
     * A turn across the ground at a bank angle, which begins in whatever bank it finds. {@code peakPathDeg} above zero makes it climb in its first half and
     * descend in its second, as a wing-over does. {@code rolls} above zero makes it a rolling turn with so many full
     * rolls, to the inside of the turn when positive and to the outside when negative.
     *
     * @param bankDeg 1 to 89, or null for what such an aircraft usually shows
     * @param climbs true to climb all the way and end level, as a chandelle does, instead of coming down again
     * @param endsBanked true to stay in the bank at its end instead of levelling the wings; a rolling turn has none
     */
    record Turn(
            Side toward,
            double degrees,
            @Nullable Double bankDeg,
            double peakPathDeg,
            boolean climbs,
            double rolls,
            boolean endsBanked,
            double power)
            implements Element {
        public Turn {
            Quantity.TURN_DEGREES.must(degrees);
            if (bankDeg != null) {
                Quantity.TURN_BANK_DEG.must(bankDeg);
            }
            Quantity.TURN_PEAK_PATH_DEG.must(peakPathDeg);
            Quantity.TURN_ROLLS.must(rolls);
            Quantity.POWER.must(power);
        }

        public Turn(Side toward, double degrees, double bankDeg, double peakPathDeg, double rolls, double power) {
            this(toward, degrees, bankDeg, peakPathDeg, false, rolls, false, power);
        }

        /** The same turn with these numbers. */
        public Turn drawn(@Nullable Double bankDeg, double peakPathDeg, double power) {
            return new Turn(toward, degrees, bankDeg, peakPathDeg, climbs, rolls, endsBanked, power);
        }

        @Override
        public boolean isOpen() {
            return bankDeg == null;
        }
    }

    /**
     * Straight ahead to a place on the A-axis, on the way to a height and a speed: how two figures are joined.
     * @param alongM where it ends, metres to the commentator's right
     * @param awayM how far beyond the display line, metres
     * @param heightFt height to come to, feet above the datum
     * @param kt speed to come to, knots
     */
    record Run(double alongM, double awayM, double heightFt, double kt, double power) implements Element {
        public Run {
            Quantity.PLACE_ALONG_M.must(alongM);
            Quantity.PLACE_AWAY_M.must(awayM);
            Quantity.PLACE_HEIGHT_FT.must(heightFt);
            Quantity.PLACE_KT.must(kt);
            Quantity.POWER.must(power);
        }

        /** On the display line itself. */
        public Run(double alongM, double heightFt, double kt, double power) {
            this(alongM, 0, heightFt, kt, power);
        }
    }

    /**
     * Out, round and back on to the display line, or a line along it further away, flying the other way: at a place on
     * the A-axis, a height and a speed.
     *
     * @param alongM where it ends, metres to the commentator's right
     * @param awayM how far beyond the display line, metres
     * @param heightFt height to come to, feet above the datum
     * @param kt speed to come to, knots
     * @param bankDeg the steepest used
     */
    record Reposition(double alongM, double awayM, double heightFt, double kt, double bankDeg, double power)
            implements Element {
        public Reposition {
            Quantity.PLACE_ALONG_M.must(alongM);
            Quantity.PLACE_AWAY_M.must(awayM);
            Quantity.PLACE_HEIGHT_FT.must(heightFt);
            Quantity.PLACE_KT.must(kt);
            Quantity.REPOSITION_BANK_DEG.must(bankDeg);
            Quantity.POWER.must(power);
        }

        /** On the display line itself. */
        public Reposition(double alongM, double heightFt, double kt, double bankDeg, double power) {
            this(alongM, 0, heightFt, kt, bankDeg, power);
        }
    }
}
