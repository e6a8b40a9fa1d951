package crowdline.show;

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
        ALONG_M(Quantity.LINE_TO_ALONG_M);

        private final Quantity quantity;

        Until(Quantity quantity) {
            this.quantity = quantity;
        }

        Quantity quantity() {
            return quantity;
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
        TIGHTEST(null);

        private final @Nullable Quantity quantity;

        Size(@Nullable Quantity quantity) {
            this.quantity = quantity;
        }

        /** What its value is, or null if it has none. */
        @Nullable
        Quantity quantity() {
            return quantity;
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
        /** Round the outside of a barrel. */
        BARREL
    }

    /** Which lift a flick stalls: positive (pulled in) or negative (pushed in). */
    enum FlickKind {
        POSITIVE,
        NEGATIVE
    }

    /** How a spin sits. */
    enum SpinKind {
        UPRIGHT,
        INVERTED,
        FLAT
    }

    /** Which way the nose falls out of a tail slide: through the wheels' side or through the canopy's side. */
    enum SlideKind {
        WHEELS_DOWN,
        WHEELS_UP
    }

    /** A straight line in the direction the aircraft already points, until something is reached. */
    record Line(Until until, double value, double power) implements Element {
        public Line {
            until.quantity().must(value);
            Quantity.POWER.must(power);
        }
    }

    /**
     * A bend in the plane of the path and the pilot's up direction: through an angle, or until the path points so many
     * degrees above the horizon. Exactly one of {@code degrees} and {@code toPathDeg} is given.
     */
    record Arc(Way way, @Nullable Double degrees, @Nullable Double toPathDeg, Size size, double value, double power)
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
            Quantity.POWER.must(power);
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
     * A turn across the ground at a bank angle. {@code peakPathDeg} above zero makes it climb in its first half and
     * descend in its second, as a wing-over does. {@code rolls} above zero makes it a rolling turn with so many full
     * rolls, to the inside of the turn when positive and to the outside when negative.
     */
    record Turn(Side toward, double degrees, double bankDeg, double peakPathDeg, double rolls, double power)
            implements Element {
        public Turn {
            Quantity.TURN_DEGREES.must(degrees);
            Quantity.TURN_BANK_DEG.must(bankDeg);
            Quantity.TURN_PEAK_PATH_DEG.must(peakPathDeg);
            Quantity.TURN_ROLLS.must(rolls);
            Quantity.POWER.must(power);
        }
    }

    /**
     * Out, round and back on to the display line, flying the other way along it: at a place on the A-axis, a height and
     * a speed. The bank is the steepest used.
     */
    record Reposition(double alongM, double heightFt, double kt, double bankDeg, double power) implements Element {
        public Reposition {
            Quantity.PLACE_ALONG_M.must(alongM);
            Quantity.PLACE_HEIGHT_FT.must(heightFt);
            Quantity.PLACE_KT.must(kt);
            Quantity.REPOSITION_BANK_DEG.must(bankDeg);
            Quantity.POWER.must(power);
        }
    }
}
