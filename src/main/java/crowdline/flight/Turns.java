package crowdline.flight;

import crowdline.measure.Units;
import crowdline.show.Element;
import crowdline.show.Usual;

/** How turns are drawn: how steeply, with how much power, and where the last one begins. */
final class Turns {
    /** How long a climbing turn through half a circle takes as people see it, seconds; common practice, no source. */
    private static final double CLIMBING_S = 20;
    /** The same of a wing-over. */
    private static final double WING_OVER_S = 14;
    /** A wing-over comes back to the height it began at as near as this, metres. */
    private static final double SAME_M = 1;

    private static final int HALVINGS = 12;
    private static final int CORRECTIONS = 4;

    private final Bends bends;
    private final Usual usual;
    private final ElementFlyer quiet;

    /** @param quiet flies what is only thought of */
    Turns(Bends bends, Usual usual, ElementFlyer quiet) {
        this.bends = bends;
        this.usual = usual;
        this.quiet = quiet;
    }

    /** @param power share of the power it asks for, 0 to 1 */
    Element.Turn drawn(Element.Turn turn, FlightState at, double power) throws CannotFly {
        double bank = bends.bankDeg(at, usualBankDeg(turn, at));
        Element.Turn banked = banked(turn, bank, turn.power() * power);
        boolean comesDown = turn.peakPathDeg() > 0 && !turn.climbs();
        return comesDown ? banked(turn, bank, backAtItsHeight(banked, bank, at)) : banked;
    }

    private double usualBankDeg(Element.Turn turn, FlightState at) {
        Double given = turn.bankDeg();
        if (given != null) {
            return given;
        }
        if (turn.peakPathDeg() == 0) {
            return usual.turnBankDeg();
        }
        double seconds = (turn.climbs() ? CLIMBING_S : WING_OVER_S) * turn.degrees() / 180;
        double across = Math.toRadians(turn.degrees()) * at.speedMps() / seconds;
        return Math.min(Math.toDegrees(Math.atan(across / Units.G_MPS2)), usual.turnBankDeg());
    }

    private static Element.Turn banked(Element.Turn turn, double bankDeg, double power) {
        return new Element.Turn(
                turn.toward(), turn.degrees(), bankDeg, turn.peakPathDeg(), turn.climbs(), turn.rolls(), power);
    }

    /** The power with which a wing-over ends as high as it began: with more it comes down steeper than it went up. */
    private double backAtItsHeight(Element.Turn turn, double bankDeg, FlightState at) throws CannotFly {
        double least = 0;
        double most = turn.power();
        double power = most;
        for (int i = 0; i < HALVINGS; i++) {
            double higher = quiet.fly(banked(turn, bankDeg, power), at).place().z()
                    - at.place().z();
            if (Math.abs(higher) < SAME_M || (higher > 0 && power == turn.power())) {
                return power;
            }
            if (higher > 0) {
                least = power;
            } else {
                most = power;
            }
            power = (least + most) / 2;
        }
        return power;
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
        Element.Turn last = banked(turn, bends.bankDeg(at, usualBankDeg(turn, at)), turn.power() * turnPower);
        double metres = 0;
        for (int i = 0; i < CORRECTIONS; i++) {
            FlightState on = metres == 0 ? at : quiet.fly(new Element.Line(Element.Until.METRES, metres, power), at);
            double over = awayM - quiet.fly(last, on).place().y();
            metres = Math.min(Math.max(metres + over / towards, 0), Drawing.WIDEST_M);
        }
        return metres;
    }
}
