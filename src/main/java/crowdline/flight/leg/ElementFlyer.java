package crowdline.flight.leg;

import crowdline.flight.body.Attitude;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Variation;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.figure.Element;
import crowdline.show.figure.ReversalWay;
import java.util.Objects;

/** Flies one element after another: turns each into legs, and says when one cannot be flown. */
public final class ElementFlyer {
    /** An act of a display lasts minutes; beyond this its samples would fill the memory. */
    static final double LONGEST_FLIGHT_S = 7200;
    /** As good as standing still, m/s. */
    private static final double STOPPED_MPS = 0.2;

    private final Forces forces;
    private final Integrator integrator;
    private final Variation variation;
    /** Less than this is no bank, degrees. */
    private static final double LEAST_BANK_DEG = 1;

    private double lastLegS;

    public ElementFlyer(Forces forces, Integrator integrator, Variation variation) {
        this.forces = forces;
        this.integrator = integrator;
        this.variation = variation;
    }

    /**
     * Flies an element.
     *
     * @throws CannotFly when it has no way of being flown from there
     */
    public FlightState fly(Element element, FlightState from) throws CannotFly {
        lastLegS = from.tS();
        if (element instanceof Element.Line line) {
            return line(line, from);
        } else if (element instanceof Element.Arc arc) {
            return arc(arc, from);
        } else if (element instanceof Element.Roll roll) {
            return roll(roll, from);
        } else if (element instanceof Element.Reversal reversal) {
            return reversal(reversal, from);
        } else if (element instanceof Element.Flick flick) {
            return flick(flick, from);
        } else if (element instanceof Element.Spin spin) {
            return spin(spin, from);
        } else if (element instanceof Element.Pivot pivot) {
            return pivot(pivot, from);
        } else if (element instanceof Element.Slide slide) {
            return slide(slide, from);
        } else if (element instanceof Element.HoverRoll hover) {
            return hoverRoll(hover, from);
        } else if (element instanceof Element.Tumble tumble) {
            return tumble(tumble, from);
        } else if (element instanceof Element.Turn turn) {
            return turn(turn, from);
        } else if (element instanceof Element.Run run) {
            return ahead(run, from);
        } else {
            return reposition((Element.Reposition) element, from);
        }
    }

    /** When the last leg of what was flown last began, seconds since the act began. */
    public double lastLegS() {
        return lastLegS;
    }

    private FlightState run(Leg leg, FlightState from, String what) throws CannotFly {
        if (from.tS() > LONGEST_FLIGHT_S) {
            throw new CannotFly(
                    "begins after " + Math.round(LONGEST_FLIGHT_S / 60) + " minutes, which is as long as an act is"
                            + " predicted for",
                    from);
        }
        lastLegS = from.tS();
        Integrator.Result result = integrator.fly(leg, from.tS());
        return switch (result.outcome()) {
            case FLOWN -> result.moment();
            case OUT_OF_SPEED ->
                throw new CannotFly(
                        "runs out of speed in the " + what + ", at " + knots(result.moment()), result.moment());
            case NOT_COMPUTED ->
                throw new CannotFly(
                        "cannot be computed in the " + what
                                + ", as its numbers are out of all proportion; crowdline check says which",
                        result.moment());
            case NEVER_ENDS ->
                throw new CannotFly(
                        "the " + what + " never reaches its end; after " + Math.round(leg.longestS()) + " s it is at "
                                + knots(result.moment()) + " and " + feet(result.moment()),
                        result.moment());
        };
    }

    private static String knots(FlightState m) {
        return Math.round(Units.ktFromMps(m.speedMps())) + " kt";
    }

    private static String feet(FlightState m) {
        return Math.round(Units.ftFromM(m.place().z())) + " ft";
    }

    private static IllegalStateException notDrawn() {
        return new IllegalStateException("an open element has to be drawn for this aircraft before it is flown");
    }

    private FlightState line(Element.Line line, FlightState from) throws CannotFly {
        Leg leg = line.until() == Element.Until.SECONDS
                ? StraightLeg.line(forces, from, line.power(), line.value() * variation.pause())
                : StraightLeg.line(forces, from, line.power(), LineEnd.of(line, forces, from));
        return run(leg, from, "line");
    }

    private FlightState arc(Element.Arc arc, FlightState from) throws CannotFly {
        int sign = arc.way() == Element.Way.PULL ? 1 : -1;
        double angle = ArcAngle.rad(arc, from, sign);
        Leg leg = switch (arc.size()) {
            case LOAD_G -> ArcLeg.byLoad(forces, from, angle, sign, pulled(arc.value(), from), arc.power());
            case RADIUS_M ->
                ArcLeg.byRadius(forces, from, angle, sign, arc.value() / variation.pull(), arc.topShare(), arc.power());
            case ROUND_FROM_G -> {
                double g = pulled(arc.value(), from);
                double bend = sign * (g - from.up().z()) * Units.G_MPS2;
                if (bend <= 0) {
                    throw new CannotFly(
                            "a load of " + arc.value() + " g does not bend the path that way from here", from);
                }
                double over = forces.overGroundMps(
                        from.place().z(),
                        from.speedMps(),
                        from.direction().x(),
                        from.direction().y());
                yield ArcLeg.byRadius(forces, from, angle, sign, over * over / bend, arc.topShare(), arc.power());
            }
            case TIGHTEST -> ArcLeg.tightest(forces, from, angle, sign, arc.power());
            case USUAL, CORNER, OVER -> throw notDrawn();
        };
        return run(leg, from, arc.way() == Element.Way.PULL ? "pull" : "push");
    }

    /** The load this pilot pulls where the plan says {@code g}. */
    private double pulled(double g, FlightState from) {
        double still = from.up().z();
        return still + (g - still) * variation.pull();
    }

    private FlightState roll(Element.Roll roll, FlightState from) throws CannotFly {
        int side = Sides.of(roll.toward(), from);
        double angle = side * Math.toRadians(roll.degrees());
        return switch (roll.style()) {
            case AILERON -> aileron(from, angle, roll.power());
            case SLOW -> {
                double rate = angle / (Objects.requireNonNull(roll.seconds()) / variation.rollRate());
                yield run(StraightLeg.roll(forces, from, roll.power(), angle, rate), from, "slow roll");
            }
            case HESITATION -> hesitation(roll, from, side);
            case BARREL -> barrel(roll, from, side);
        };
    }

    private FlightState aileron(FlightState from, double angle, double power) throws CannotFly {
        double sign = Math.signum(angle);
        StraightLeg.RollLaw law = v -> sign * forces.body.rollRateAt(v);
        return run(StraightLeg.roll(forces, from, power, angle, law), from, "roll");
    }

    private FlightState reversal(Element.Reversal reversal, FlightState from) throws CannotFly {
        double bank = Attitude.of(from).bankDeg();
        double size = Math.abs(bank);
        if (size < LEAST_BANK_DEG || size > 180 - LEAST_BANK_DEG) {
            throw new CannotFly(
                    "rolls from one bank to the other, and begins in none; the turn before it has to end banked", from);
        }
        boolean under = reversal.way() == ReversalWay.UNDER;
        double angle = Math.copySign(under ? 360 - 2 * size : 2 * size, under ? bank : -bank);
        return aileron(from, Math.toRadians(angle), reversal.power());
    }

    private FlightState hesitation(Element.Roll roll, FlightState from, int side) throws CannotFly {
        double part = 360.0 / roll.pointsPerTurn();
        FlightState at = from;
        double left = roll.degrees();
        while (left > 1e-9) {
            double now = Math.min(part, left);
            at = aileron(at, side * Math.toRadians(now), roll.power());
            left -= now;
            if (left > 1e-9) {
                double pause = roll.pauseS() * variation.pause();
                at = run(StraightLeg.line(forces, at, roll.power(), pause), at, "pause");
            }
        }
        return at;
    }

    private FlightState barrel(Element.Roll roll, FlightState from, int side) throws CannotFly {
        Double given = roll.seconds();
        double seconds = given == null ? BarrelCurve.USUAL_S : given;
        double rate = 2 * Math.PI / seconds * variation.rollRate();
        Leg leg = new SteeredLeg(
                forces, from, new BarrelCurve(from, side, rate), Math.toRadians(roll.degrees()), 0, roll.power());
        return run(leg, from, "barrel roll");
    }

    private FlightState flick(Element.Flick flick, FlightState from) throws CannotFly {
        double angle = Sides.of(flick.toward(), from) * Math.toRadians(flick.degrees());
        int sign = flick.kind() == Element.FlickKind.POSITIVE ? 1 : -1;
        return run(StraightLeg.flick(forces, from, flick.power(), angle, sign), from, "flick");
    }

    private FlightState spin(Element.Spin spin, FlightState from) throws CannotFly {
        double stall = forces.body.stallMps(forces.rho(from.place().z()));
        double slow = spin.kind().isInverted()
                ? stall * Math.sqrt(forces.body.clMaxUpright() / forces.body.clMaxInverted())
                : stall;
        FlightState slowed = run(
                StraightLeg.line(forces, from, spin.power(), (t, y) -> slow - y[3]), from, "line down to the stall");
        int side = Sides.of(spin.toward(), slowed);
        return run(new SpinLeg(forces, slowed, spin.kind(), side, spin.turns()), slowed, "spin");
    }

    /** Up until half the time of the half turn takes the rest of the speed away, then round. */
    private FlightState pivot(Element.Pivot pivot, FlightState from) throws CannotFly {
        double slow = Units.G_MPS2 * forces.body.pivotS() / 2;
        FlightState top =
                run(StraightLeg.line(forces, from, pivot.power(), (t, y) -> slow - y[3]), from, "line up to the pivot");
        int side = Sides.of(pivot.toward(), top);
        FlightState after = run(FallLeg.pivot(forces, top, side, pivot.power()), top, "pivot");
        return pointing(after, Vec.DOWN);
    }

    private FlightState slide(Element.Slide slide, FlightState from) throws CannotFly {
        FlightState top = from.speedMps() < STOPPED_MPS
                ? from
                : run(
                        StraightLeg.line(forces, from, slide.power(), (t, y) -> STOPPED_MPS - y[3]),
                        from,
                        "line up to the slide");
        int wheelsDown = slide.kind() == Element.SlideKind.WHEELS_DOWN ? 1 : -1;
        FlightState after = run(FallLeg.slide(forces, top, wheelsDown, slide.power()), top, "slide");
        return pointing(after, Vec.DOWN);
    }

    private FlightState hoverRoll(Element.HoverRoll hover, FlightState from) throws CannotFly {
        return run(new HoverLeg(forces, from, hover.seconds(), hover.power()), from, "hover roll");
    }

    private FlightState tumble(Element.Tumble tumble, FlightState from) throws CannotFly {
        int side = Sides.of(tumble.toward(), from);
        return run(FallLeg.tumble(forces, from, side, tumble.turns(), tumble.power()), from, "tumble");
    }

    /** Settles small leftovers of a direction that is meant exactly. */
    private static FlightState pointing(FlightState m, Vec direction) {
        FlightState turned = m.facing(direction, m.up());
        return new FlightState(m.tS(), m.place(), Math.max(m.speedMps(), 0), turned.direction(), turned.up());
    }

    private FlightState turn(Element.Turn turn, FlightState from) throws CannotFly {
        int side = Sides.of(turn.toward(), from);
        Double bankDeg = turn.bankDeg();
        if (bankDeg == null) {
            throw notDrawn();
        }
        double bank = Math.toRadians(bankDeg);
        double through = Math.toRadians(turn.degrees());
        FlightState level =
                from.up().z() < 0 ? from.facing(from.direction(), Vec.DOWN) : from.facing(from.direction(), Vec.UP);
        TurnCurve curve = new TurnCurve(
                level.headingRad(), side, bank, through, Math.toRadians(turn.peakPathDeg()), turn.climbs());
        double rolls = 2 * Math.PI * turn.rolls() / through * side;
        double speed = Math.max(from.speedMps(), 1);
        double perRollRad = curve.rateRadPerS(speed) / forces.body.rollRateAt(speed);
        SteeredLeg.Banking banking =
                SteeredLeg.Banking.of(level.rollTo(from.up()), side * bank, turn.endsBanked(), perRollRad, through);
        return run(new SteeredLeg(forces, level, curve, through, rolls, banking, turn.power()), level, "turn");
    }

    private FlightState ahead(Element.Run run, FlightState from) throws CannotFly {
        GuidedLeg.Aim aim = new GuidedLeg.Aim(
                Units.mFromFt(run.heightFt()), Units.mpsFromKt(run.kt()), 0, run.power(), true, run.awayM());
        double sign = Math.signum(from.direction().x());
        StraightLeg.EndLaw there = (t, y) -> sign * (y[0] - run.alongM());
        return run(new GuidedLeg(forces, from, aim, there, true), from, "run ahead");
    }

    private FlightState reposition(Element.Reposition r, FlightState from) throws CannotFly {
        ElementFlyer planning = new ElementFlyer(forces, integrator.unwatched(), variation);
        return new Repositioning(forces, r).fly(from, this::run, planning::run);
    }

    /** Runs a leg for somebody else. */
    interface Runner {
        FlightState run(Leg leg, FlightState from, String what) throws CannotFly;
    }
}
