package crowdline.flight.shape;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.BarrelCurve;
import crowdline.flight.leg.Forces;
import crowdline.flight.leg.LoopShape;
import crowdline.measure.Units;
import crowdline.show.figure.Element;
import java.util.List;

/**
 * How wide the bends of one figure are drawn. What begins at the bottom of a loop sets the width for the whole figure, so
 * that it closes; elsewhere the width follows from the speed there will be at the bottom.
 */
final class Bends {
    /** Share of the wing's lift used in what is drawn: the rest is for gusts and hands. */
    private static final double SHARE_OF_WING = 0.85;
    /** Share of what the airframe takes upside down that a turn is pushed with in calm air; by judgement. */
    private static final double SHARE_OF_PUSH = 0.72;
    /** Share of a drop that becomes speed: drag takes the rest. */
    private static final double KEPT = 0.9;
    /** Load over a push-over, g: lightly out of the seat. */
    private static final double PUSHED_OVER_G = -0.2;
    /** The hardest a line up is turned over, g. */
    private static final double OVER_G = 2.5;
    /** A line up is pulled over tighter and tighter, as the speed goes, so that the pilot stays in the seat. */
    private static final double PULLED_OVER = 0.4;
    /** Bending at the top corners of a figure where the wing gives it, g: there is still some load at the end of it. */
    private static final double TOP_CORNER_G = 3.2;
    /** No loop is slower over its top, stalling speeds; nor tighter there, as a share of its bottom. */
    private static final double LEAST_OVER_STALLS = 1.1;

    private static final double LEAST_TOP_SHARE = 0.1;

    /** Through more than this an arc is a part of a loop; degrees. */
    private static final double LOOP_DEG = 100;
    /** Load at the bottom of a barrel roll, g; published handbooks ask for 2.5 to 3 at most. */
    private static final double BARREL_G = 2.7;

    private final Forces forces;
    private final Attempt attempt;
    private final LoopShape shape;
    private double figureM = Double.NaN;
    /** The airspeed at the bottom of what set it. */
    private double figureMps = Double.NaN;

    /** Of the next arc alone, where there is no room for the figure's own. */
    private double nextM = Double.NaN;

    private double cornerM = Double.NaN;
    private double topCornerM = Double.NaN;

    Bends(Forces forces, Attempt attempt) {
        this.forces = forces;
        this.attempt = attempt;
        shape = LoopShape.ofTop(attempt.topShare());
    }

    /** Radius at the bottom for an open arc from here, metres; NaN if there is none. */
    double radiusM(Element.Arc arc, FlightState at) {
        return tenths(
                switch (arc.size()) {
                    case CORNER -> corner(at);
                    case OVER -> over(arc, at);
                    default -> usual(arc, at);
                });
    }

    private double usual(Element.Arc arc, FlightState at) {
        int sign = sign(arc);
        double upwards = sign * at.up().z();
        if (sign < 0 && upwards < -0.3 && !isLoop(arc)) {
            return square(at) / (Units.G_MPS2 * (at.up().z() - PUSHED_OVER_G));
        }
        if (!Double.isNaN(nextM)) {
            double tighter = nextM;
            nextM = Double.NaN;
            return tighter;
        }
        if (!Double.isNaN(figureM)) {
            return figureM;
        }
        double radius = fromHere(sign, upwards, shape(arc, at), at);
        if (upwards > 0.7) {
            figureM = tenths(radius);
            figureMps = at.speedMps();
        }
        return radius;
    }

    /** So that the load at the bottom is the one tried, whatever height is lost on the way to it, and no greater here. */
    private double fromHere(int sign, double upwards, LoopShape drawn, FlightState at) {
        double asked = sign > 0 ? attempt.pullG() : -attempt.pushG();
        double carried = carried(at, atBottom(sign, at));
        double square = carried * at.speedMps() * at.speedMps();
        double gained = 2 * Units.G_MPS2 * drawn.fall(upwards) * KEPT;
        double bend = Units.G_MPS2 * (asked - 1) - carried * gained;
        if (bend < 0.2 * Units.G_MPS2) {
            return Double.NaN;
        }
        double here =
                square(at) / (Units.G_MPS2 * (Math.min(asked, wingG(sign, at)) - upwards) * drawn.radius(upwards));
        return Math.max(Math.max(square / bend, here), asWingGives(sign, carried, gained, at));
    }

    /**
     * The least radius whose load at the bottom the wing gives at the speed there: with v² = square + gained r, the load
     * 1 + c v² / (g r) is w v², where c is what the wind makes of the square of the speed.
     */
    private double asWingGives(int sign, double carried, double gained, FlightState at) {
        double square = at.speedMps() * at.speedMps();
        double perSquare = wingG(sign, at) / square;
        double g = Units.G_MPS2;
        double a = perSquare * gained * g;
        double b = perSquare * square * g - g - carried * gained;
        double root = Math.sqrt(b * b + 4 * a * carried * square);
        if (a < 1e-9) {
            return b > 0 ? carried * square / b : Double.NaN;
        }
        return (root - b) / (2 * a);
    }

    private double corner(FlightState at) {
        if (Double.isNaN(cornerM)) {
            cornerM = tenths(square(at) / (Units.G_MPS2 * Math.max(Math.min(attempt.pullG() + 1, wingG(at)) - 1, 0.3)));
            figureM = Double.isNaN(figureM) ? cornerM : figureM;
            return cornerM;
        }
        if (!isTopCorner(at)) {
            return cornerM;
        }
        if (Double.isNaN(topCornerM)) {
            double drawn = square(at) / (Units.G_MPS2 * Math.min(TOP_CORNER_G, wingG(at)));
            topCornerM = tenths(Math.min(cornerM, drawn) / shape.radius(at.up().z()));
        }
        return topCornerM;
    }

    /** Whether a corner from here is one of the two at the top of a square. */
    private static boolean isTopCorner(FlightState at) {
        return at.up().z() < 0.5 && at.direction().z() > -0.3;
    }

    /** How much longer the line over the top of a square is than the one below, so that it ends where it began, metres. */
    double overTopM(FlightState at) {
        boolean between = at.up().z() < -0.9 && !Double.isNaN(topCornerM);
        return between ? 2 * (cornerM - topCornerM * shape.topQuarter()) : 0;
    }

    private double over(Element.Arc arc, FlightState at) {
        double g = Math.min(wingG(at), OVER_G);
        double here =
                LoopShape.ofTop(topShare(arc, at)).radius(sign(arc) * at.up().z());
        double before = carried(at, at.direction());
        double over = carried(at, atBottom(-sign(arc), at));
        // Wide enough for the ground speed over the top; where no such way is flown, as tight as the other side of it
        // lets it.
        double carried = attempt.inTheAir() ? Math.min(before, over) : Math.max(before, over);
        double square = carried * at.speedMps() * at.speedMps();
        return g > 0.5 ? square / (Units.G_MPS2 * g) / here : Double.NaN;
    }

    /** How wide an open arc is at the top of a loop as a share of the bottom. */
    double topShare(Element.Arc arc, FlightState at) {
        return switch (arc.size()) {
            case CORNER -> isTopCorner(at) ? attempt.topShare() : 1;
            case USUAL -> attempt.inTheAir() && isLoop(arc) ? overTheGround(arc, at) : attempt.topShare();
            case OVER -> isLoop(arc) && arc.way() == Element.Way.PULL ? PULLED_OVER : 1;
            default -> 1;
        };
    }

    private LoopShape shape(Element.Arc arc, FlightState at) {
        return LoopShape.ofTop(topShare(arc, at));
    }

    /**
     * What the wind makes of how wide it is at the top, so that the load goes with the speed as it does in calm air: into the
     * wind at its bottom and with it at its top it is wider there, the other way round it is tighter.
     */
    private double overTheGround(Element.Arc arc, FlightState at) {
        double g = Units.G_MPS2;
        int sign = sign(arc);
        double square = at.speedMps() * at.speedMps();
        double radius = Double.isNaN(figureM) ? square / (g * Math.max(attempt.pullG() - 1, 1)) : figureM;
        double bottom = Double.isNaN(figureMps)
                ? square + 2 * g * radius * shape.fall(sign * at.up().z())
                : figureMps * figureMps;
        double least = LEAST_OVER_STALLS * stallMps(at);
        double top = Math.max(bottom - 2 * g * radius * shape.fall(-1), least * least);
        Vec way = atBottom(sign, at);
        double below = carried(at.withSpeed(Math.sqrt(bottom)), way);
        double above = carried(at.withSpeed(Math.sqrt(top)), way.times(-1));
        return Math.min(Math.max(attempt.topShare() * above / below, LEAST_TOP_SHARE), 1);
    }

    /** Load of a pull out of a line down that nothing before it has set the width for: as usual, as the wing gives, g. */
    double pullOutG(FlightState at) {
        return Math.min(attempt.pullG(), wingG(at));
    }

    /** Whether an arc is a pull out of a line down in a figure that did not begin at the bottom of a loop. */
    boolean isPullOut(Element.Arc arc, FlightState at) {
        return arc.size() == Element.Size.USUAL
                && arc.way() == Element.Way.PULL
                && Double.isNaN(figureM)
                && at.direction().z() < -0.3
                && !isLoop(arc);
    }

    /**
     * Height from the end of a line to the lowest point of the arc that follows, metres, at least 0.
     *
     * @param upright where the line begins, the way up it ends
     * @param bottomM height the arc is to bottom out at
     * @param lineM how much height the line itself has to have, metres: where there is no room left for an arc as wide as
     *     the others it is drawn tighter, down to what is pulled at the speed there
     */
    double dropM(Element.Arc next, FlightState upright, double bottomM, double lineM) {
        int sign = sign(next);
        double upwards = sign * upright.up().z();
        if (next.size() == Element.Size.CORNER) {
            return Double.isNaN(cornerM) ? 0 : (1 - upwards) * cornerM;
        }
        double drop = Math.max(upright.place().z() - bottomM, 0);
        if (Double.isNaN(figureM)) {
            double radius = tightestM(sign, upright, drop);
            figureM = tenths(radius);
            return radius * shape(next, upright).fall(upwards);
        }
        double fall = shape(next, upright).fall(upwards);
        double room = drop - lineM;
        if (upright.direction().z() >= 0) {
            return figureM * fall;
        }
        double tightest = tightestM(sign, upright, drop);
        double widest = carried(upright, atBottom(sign, upright)) > 1 ? Double.POSITIVE_INFINITY : figureM;
        nextM = tenths(Math.min(Math.max(Math.min(figureM, room / fall), tightest), widest));
        return nextM * fall;
    }

    /** Radius of the hardest that is pulled at the bottom of a drop, the way it flies there, metres. */
    private double tightestM(int sign, FlightState upright, double drop) {
        double here = upright.speedMps() * upright.speedMps();
        double square = here + 2 * Units.G_MPS2 * drop * KEPT;
        double wing = wingG(sign, upright) * square / Math.max(here, 1);
        double asked = Math.min(sign > 0 ? attempt.pullG() : -attempt.pushG(), wing);
        FlightState there = upright.withSpeed(Math.sqrt(square));
        double over = Math.max(square(upright), carried(there, atBottom(sign, upright)) * square);
        return over / (Units.G_MPS2 * Math.max(asked - 1, 0.2));
    }

    /** The radius the figure is drawn with, metres. */
    double figureRadiusM(FlightState at) {
        return Double.isNaN(figureM) ? fromHere(1, 1, shape, at) : figureM;
    }

    /** Degrees from here to the top of the loop an arc is part of; negative or large where it does not pass it. */
    double degreesToTop(Element.Arc arc, FlightState at) {
        double angle = Math.toDegrees(
                Math.atan2(at.direction().z(), sign(arc) * at.up().z()));
        return 180 - (angle < 0 ? angle + 360 : angle);
    }

    boolean isAtTop(Element.Arc arc, FlightState at) {
        return sign(arc) * at.up().z() < -0.99;
    }

    boolean isLoop(Element.Arc arc) {
        Double degrees = arc.degrees();
        return degrees != null && degrees > LOOP_DEG;
    }

    /** Seconds of a barrel roll that keep its load as usual. */
    double barrelS(FlightState at, double degrees) {
        double bend = Math.max(Math.min(BARREL_G, Math.min(attempt.pullG(), wingG(at))) - 1, 0.5);
        double rate = bend * Units.G_MPS2 / (Math.max(at.speedMps(), 1) * BarrelCurve.SIN_OFF);
        return tenths(Math.toRadians(degrees) / rate);
    }

    /** Speed at which the wing just carries it here, m/s. */
    double stallMps(FlightState at) {
        return forces.body.stallMps(forces.rho(at.place().z()));
    }

    /** Bank of a level turn: as usual, as far as the wing carries it. */
    double bankDeg(FlightState at, double usualDeg) {
        double most = wingG(at) > 1.1 ? Math.toDegrees(Math.acos(1 / wingG(at))) : 20;
        return Math.rint(Math.min(usualDeg, most));
    }

    /** The steepest bank of a turn that is pushed for half of it, degrees: the wind asks for more than calm air. */
    double pushedBankDeg() {
        return Math.toDegrees(Math.atan(-SHARE_OF_PUSH * forces.body.limitNegativeG()));
    }

    private double wingG(FlightState at) {
        return wingG(1, at);
    }

    /** What the wing comfortably gives here, g; as a size, upside down too. */
    private double wingG(int sign, FlightState at) {
        return SHARE_OF_WING * Math.abs(forces.capG(forces.rho(at.place().z()), at.speedMps(), sign * 99));
    }

    /** The way a loop through here flies where its middle is straight above it, for a sign of −1 straight below. */
    private static Vec atBottom(int sign, FlightState at) {
        Vec level = at.direction()
                .times(at.up().z())
                .minus(at.up().times(at.direction().z()));
        return level.length() < 1e-6 ? Vec.ZERO : level.unit().times(sign);
    }

    /** What the wind makes of the square of the speed where it flies that way. */
    private double carried(FlightState at, Vec way) {
        double mps = Math.max(at.speedMps(), 1);
        double over = forces.overGroundMps(at.place().z(), mps, way.x(), way.y());
        return over * over / (mps * mps);
    }

    /** Square of the speed over the ground, m²/s². */
    private double square(FlightState at) {
        double over = forces.overGroundMps(
                at.place().z(),
                at.speedMps(),
                at.direction().x(),
                at.direction().y());
        return over * over;
    }

    private static int sign(Element.Arc arc) {
        return arc.way() == Element.Way.PULL ? 1 : -1;
    }

    static double tenths(double value) {
        return Math.rint(value * 10) / 10;
    }

    /** A loop whose power comes off on its way down is flown in two pieces, up and down. */
    List<Element.Arc> pieces(Element.Arc arc, FlightState at) {
        Double degrees = arc.degrees();
        double toTop = degreesToTop(arc, at);
        if (attempt.throttle().down() == attempt.throttle().up()
                || degrees == null
                || !(toTop > 1)
                || toTop > degrees - 1) {
            return List.of(arc);
        }
        return List.of(
                new Element.Arc(arc.way(), toTop, null, arc.size(), 0, arc.power()),
                new Element.Arc(arc.way(), degrees - toTop, null, arc.size(), 0, arc.power()));
    }
}
