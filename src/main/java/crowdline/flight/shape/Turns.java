package crowdline.flight.shape;

import crowdline.flight.body.FlightState;
import crowdline.flight.leg.CannotFly;
import crowdline.measure.Units;
import crowdline.show.aircraft.Usual;
import crowdline.show.figure.Element;
import java.util.Objects;

/** How turns are drawn: how steeply, with how much power, and where the last one begins. */
final class Turns {
    /** How long a climbing turn through half a circle takes as people see it, seconds; common practice, no source. */
    private static final double CLIMBING_S = 20;
    /** The same of a wing-over. */
    private static final double WING_OVER_S = 14;
    /** Share of its speed that is left at the end of a climbing turn, at most; common practice, no source. */
    private static final double LEFT_AT_THE_TOP = 0.8;
    /** What is left of it where the engine leaves no more, and at least, in stalling speeds; common practice, no source. */
    private static final double LITTLE_LEFT = 0.5;

    private static final double LITTLE_LEFT_STALLS = 1.4;
    /** How hard it bends out of the climb at its end, m/s². */
    private static final double LEVELS_OFF_MPS2 = 5.5;

    private static final double GENTLEST_DEG = 8;
    private static final double STEEPEST_DEG = 40;
    /** From here on a turn is a circle that people see close. */
    private static final double CIRCLE_DEG = 300;

    private static final double STEADY = 0.997;
    private static final double LEAST_BANK_DEG = 25;
    /** No circle of a display takes longer, seconds; by judgement. */
    private static final double LONGEST_S = 42;

    private static final int HALVINGS = 10;
    private static final int CORRECTIONS = 4;

    private final Bends bends;
    private final Usual usual;
    private final Parts parts;

    /** @param parts flies what is only thought of */
    Turns(Bends bends, Usual usual, Parts parts) {
        this.bends = bends;
        this.usual = usual;
        this.parts = parts;
    }

    /** What is too much at the end of a turn: the more power, the more of it. */
    private interface Excess {
        double of(FlightState end);
    }

    /** @param power share of the power it asks for, 0 to 1 */
    Element.Turn drawn(Element.Turn turn, FlightState at, double power) throws CannotFly {
        Element.Turn banked = banked(turn, bends.bankDeg(at, usualBankDeg(turn, at)), turn.power() * power);
        if (turn.climbs()) {
            Element.Turn climbing = turn.bankDeg() == null ? climbing(banked, at) : banked;
            return powered(climbing, at, end -> end.speedMps() - LEFT_AT_THE_TOP * at.speedMps());
        } else if (turn.peakPathDeg() > 0) {
            // With more power it comes down steeper than it went up.
            return powered(banked, at, end -> at.place().z() - end.place().z());
        }
        return turn.degrees() < CIRCLE_DEG ? banked : steady(banked, at);
    }

    /** As steeply as leaves it little speed at the end, and hardly lifts the pilot out of the seat as it levels off. */
    private Element.Turn climbing(Element.Turn turn, FlightState at) throws CannotFly {
        double left = Math.max(LITTLE_LEFT * at.speedMps(), LITTLE_LEFT_STALLS * bends.stallMps(at));
        double steepest = Math.toDegrees(LEVELS_OFF_MPS2 * CLIMBING_S / (Math.PI * left));
        double least = GENTLEST_DEG;
        double most = Math.min(steepest, STEEPEST_DEG);
        for (int i = 0; i < HALVINGS; i++) {
            double tried = (least + most) / 2;
            if (endMps(peaking(turn, tried), at) > left) {
                least = tried;
            } else {
                most = tried;
            }
        }
        return peaking(turn, Math.rint(least));
    }

    /** The speed at the end, m/s; nothing if it does not come so far. */
    private double endMps(Element.Turn turn, FlightState at) {
        try {
            return parts.thought(turn, at).speedMps();
        } catch (CannotFly e) {
            return 0;
        }
    }

    private static Element.Turn peaking(Element.Turn turn, double peakPathDeg) {
        return turn.drawn(bank(turn), peakPathDeg, turn.power());
    }

    /** A circle closes at one speed: no steeper than the power carries it, if there is any. */
    private Element.Turn steady(Element.Turn turn, FlightState at) throws CannotFly {
        double usualDeg = bank(turn);
        double across = Math.toRadians(turn.degrees()) * at.speedMps() / LONGEST_S;
        double leastDeg = Math.max(LEAST_BANK_DEG, Math.toDegrees(Math.atan(across / Units.G_MPS2)));
        for (double bankDeg = usualDeg; bankDeg > leastDeg; bankDeg -= 2) {
            Element.Turn tried = banked(turn, bankDeg, turn.power());
            if (parts.thought(tried, at).speedMps() > STEADY * at.speedMps()) {
                return powered(tried, at, end -> end.speedMps() - at.speedMps());
            }
        }
        return turn;
    }

    private static double bank(Element.Turn turn) {
        return Objects.requireNonNull(turn.bankDeg());
    }

    private double usualBankDeg(Element.Turn turn, FlightState at) {
        Double given = turn.bankDeg();
        if (given != null) {
            return given;
        }
        if (turn.peakPathDeg() == 0) {
            // Rolling as it turns it is pushed as hard as it is pulled.
            return turn.rolls() == 0
                    ? usual.turnBankDeg(at.speedMps())
                    : Math.min(usual.turnBankDeg(), bends.pushedBankDeg());
        }
        double seconds = (turn.climbs() ? CLIMBING_S : WING_OVER_S) * turn.degrees() / 180;
        double across = Math.toRadians(turn.degrees()) * at.speedMps() / seconds;
        return Math.min(Math.toDegrees(Math.atan(across / Units.G_MPS2)), usual.turnBankDeg());
    }

    private static Element.Turn banked(Element.Turn turn, double bankDeg, double power) {
        return turn.drawn(bankDeg, turn.peakPathDeg(), power);
    }

    /** With the most power that is not too much. */
    private Element.Turn powered(Element.Turn turn, FlightState at, Excess excess) throws CannotFly {
        if (excess.of(parts.thought(turn, at)) <= 0) {
            return turn;
        }
        double least = 0;
        double most = turn.power();
        for (int i = 0; i < HALVINGS; i++) {
            double power = (least + most) / 2;
            if (excess.of(parts.thought(banked(turn, bank(turn), power), at)) > 0) {
                most = power;
            } else {
                least = power;
            }
        }
        return banked(turn, bank(turn), least);
    }

    /**
     * How long a line is after which a turn ends as far from the crowd as the figure began, metres.
     *
     * @param turn the turn that follows the line
     * @param awayM how far the figure began beyond the display line
     * @param power of the line, 0 to 1
     * @param turnPower share of the power the turn asks for
     */
    double backToTheLineM(Element.Turn turn, FlightState at, double awayM, double power, double turnPower)
            throws CannotFly {
        double towards = at.direction().y();
        if ((at.place().y() - awayM) * towards >= 0) {
            return 0;
        }
        double metres = 0;
        for (int i = 0; i < CORRECTIONS; i++) {
            FlightState on =
                    metres == 0 ? at : parts.thought(new Element.Line(Element.Until.METRES, metres, power), at);
            Element.Turn last = banked(turn, bends.bankDeg(on, usualBankDeg(turn, on)), turn.power() * turnPower);
            double over = awayM - parts.thought(last, on).place().y();
            metres = Math.min(Math.max(metres + over / towards, 0), Drawing.WIDEST_M);
        }
        return metres;
    }
}
