package crowdline.follow;

import crowdline.show.figure.Element;
import java.util.List;
import java.util.SplittableRandom;

/** Draws the elements of figures with a {@link PlainAircraft} aircraft: round, as a judge would have them, and never as planned. */
final class PlainFigures {
    private static final double FT = 0.3048;
    private static final double KT = 1852.0 / 3600;
    private static final double MOST_S = 25;
    /** Square of the speed against radius and gravity, from which an aircraft comes over the top of a loop with some to spare. */
    private static final double WHOLE_LOOP = 4.2;
    /** Share of a circle's radius that is left where the aircraft is slow. */
    private static final double TIGHTEST_SHARE = 0.5;

    private final PlainAircraft a;
    private final double share;
    private final SplittableRandom random;
    private final double placeM;
    private final double heightM;
    /** The height at which the figure is to end, metres. */
    double endM;

    boolean mirrored;
    private double load;

    /** @param share standard deviation of loads, times and rates */
    PlainFigures(PlainAircraft aircraft, double share, double placeM, double heightM, SplittableRandom random) {
        a = aircraft;
        this.share = share;
        this.placeM = placeM;
        this.heightM = heightM;
        this.random = random;
    }

    private double more() {
        return Math.max(0.5, 1 + share * Variety.bell(random));
    }

    void fly(List<Element> elements) {
        load = more();
        elements.forEach(this::fly);
    }

    private void fly(Element e) {
        if (e instanceof Element.Line line) {
            line(line);
        } else if (e instanceof Element.Arc arc) {
            arc(arc);
        } else if (e instanceof Element.Roll roll) {
            roll(roll);
        } else if (e instanceof Element.Flick flick) {
            straight(flick.degrees() / (0.8 * a.airframe.flickRateDegPerS()) * more());
            turnUp(flick.degrees());
            a.mps *= 0.93;
        } else if (e instanceof Element.Spin spin) {
            spin(spin);
        } else if (e instanceof Element.Pivot || e instanceof Element.Slide || e instanceof Element.Tumble) {
            fallOver(e);
        } else if (e instanceof Element.Turn turn) {
            turn(turn);
        } else if (e instanceof Element.HoverRoll hover) {
            straight(hover.seconds() * more());
        } else {
            straight(1);
        }
    }

    private void straight(double seconds) {
        for (double end = a.tS + seconds; a.tS < end && !a.mustPullOut(); ) {
            a.step(a.up, 0);
        }
    }

    private interface Until {
        boolean reached();
    }

    private void line(Element.Line line) {
        double begins = a.tS;
        double lasts = line.value() * more();
        V3 from = a.place;
        double along = (mirrored ? -1 : 1) * line.value() + placeM * Variety.bell(random);
        double high = line.value() * FT + heightM * Variety.bell(random);
        Until until = switch (line.until()) {
            case SECONDS -> () -> a.tS - begins >= lasts;
            case METRES -> () -> a.place.minus(from).length() >= lasts;
            case KNOTS ->
                a.mps < line.value() * KT ? () -> a.mps >= line.value() * KT : () -> a.mps <= line.value() * KT;
            case FEET -> () -> Math.abs(a.way.z()) < 0.02 || (a.place.z() - high) * Math.signum(a.way.z()) >= 0;
            case ALONG_M -> () -> Math.abs(a.way.x()) < 0.05 || (a.place.x() - along) * Math.signum(a.way.x()) >= 0;
            case RADII, STALLS, ENTRY_HEIGHT, ENTRY_LINE -> throw new IllegalArgumentException("not drawn");
        };
        while (!until.reached() && a.tS < begins + MOST_S && !a.mustPullOut() && !(a.way.z() > 0.3 && a.mps < 10)) {
            if (Math.abs(a.way.z()) < 0.2 && Math.abs(a.way.x()) > 0.8) {
                back();
            }
            a.step(a.up, 0);
        }
    }

    /** On a level line back to the display line and to the height planned. */
    private void back() {
        double climb = Math.max(-0.12, Math.min(a.mps > 1.4 * a.stallMps() ? 0.1 : 0, (endM - a.place.z()) / 400));
        double in = Math.max(-0.15, Math.min(0.15, -a.place.y() / 500));
        V3 wanted = new V3(Math.signum(a.way.x()), in, climb).unit();
        a.point(a.way.plus(wanted.minus(a.way).times(PlainAircraft.DT / 2)), a.up);
    }

    private void arc(Element.Arc arc) {
        int side = arc.way() == Element.Way.PULL ? 1 : -1;
        double g = Math.abs(arc.value()) * load;
        double radius = switch (arc.size()) {
            case LOAD_G, ROUND_FROM_G ->
                side > 0
                        ? Math.min(a.radiusM(Math.min(g, 7)), a.mps * a.mps / (WHOLE_LOOP * PlainAircraft.G))
                        : a.radiusM(2 + g);
            case RADIUS_M -> arc.value() * load;
            case TIGHTEST -> a.radiusM(0.7 * a.airframe.limitPositiveG());
            case USUAL, CORNER, OVER -> throw new IllegalArgumentException("not drawn");
        };
        if (side > 0 && a.up.z() < -0.5 && a.way.z() < 0.2 && a.place.z() < 2 * a.radiusM(6) + 50) {
            // Too low to pull through: rolled upright and left out.
            turnUp(180);
            return;
        }
        Double degrees = arc.degrees();
        Double path = arc.toPathDeg();
        double turned = 0;
        double before = Math.asin(a.way.z());
        double fast = a.mps;
        for (double end = a.tS + 40; a.tS < end; ) {
            // Slower, over the top, a pilot pulls tighter.
            double tight = radius * Math.max(TIGHTEST_SHARE, Math.min(1, a.mps / fast));
            double low = side > 0 && (a.way.z() < 0 || a.up.z() < 0) ? lowestRadius(tight) : tight;
            V3 was = a.way;
            a.step(a.up.times(side), low);
            turned += Math.acos(Math.min(1, was.dot(a.way)));
            double now = Math.asin(Math.max(-1, Math.min(1, a.way.z())));
            if (degrees != null && turned >= Math.toRadians(degrees)) {
                return;
            }
            if (path != null) {
                double to = Math.toRadians(path);
                boolean passes = (before - to) * (now - to) <= 0 && turned > 0.03;
                boolean over = Math.abs(path) > 85 && Math.abs(now - to) < 0.06;
                if (passes || over) {
                    V3 level = a.level();
                    a.point(
                            over
                                    ? new V3(0, 0, Math.signum(to))
                                    : level.times(Math.cos(to)).plus(V3.UP.times(Math.sin(to))),
                            a.up);
                    return;
                }
            }
            before = now;
        }
    }

    /** A pull-out is as tight as the height left asks for. */
    private double lowestRadius(double radius) {
        double level = Math.sqrt(Math.max(0, 1 - a.way.z() * a.way.z()));
        double deep = a.up.z() < 0 ? 1 + level : 1 - level;
        return Math.min(radius, Math.max(a.radiusM(7), (a.place.z() - 45) / Math.max(deep, 0.02)));
    }

    private void turnUp(double degrees) {
        a.up = a.up.turned(a.way, Math.toRadians(degrees)).across(a.way).unit();
    }

    private void roll(Element.Roll r) {
        double rate = 0.75 * a.airframe.rollRateDegPerS() / more();
        Double given = r.seconds();
        switch (r.style()) {
            case AILERON -> straight(r.degrees() / rate);
            case SLOW -> straight((given == null ? 8 : given) * more());
            case HESITATION ->
                straight(r.degrees() / rate + r.degrees() / 360 * r.pointsPerTurn() * r.pauseS() * more());
            case BARREL -> {
                double seconds = (given == null ? 6 : given) * more();
                V3 d0 = a.way;
                V3 across = d0.cross(V3.UP).unit().times(sign(r.toward()));
                for (double t = 0; t < seconds; t += PlainAircraft.DT) {
                    double phi = 2 * Math.PI * t / seconds;
                    a.way = d0.plus(V3.UP.times(0.6 * Math.sin(phi)))
                            .plus(across.times(0.25 * (1 - Math.cos(phi))))
                            .unit();
                    a.step(a.up, 0);
                }
                a.point(d0, V3.UP);
            }
        }
        turnUp(r.style() == Element.RollStyle.BARREL ? 0 : r.degrees());
    }

    private double sign(Element.Side side) {
        double right = a.way.x() >= 0 ? -1 : 1;
        return switch (side) {
            case RIGHT -> mirrored ? -1 : 1;
            case LEFT -> mirrored ? 1 : -1;
            case AWAY -> right;
            case CROWD -> -right;
        };
    }

    private void turn(Element.Turn turn) {
        Double bank = turn.bankDeg();
        double tan = Math.tan(Math.toRadians(Math.min(75, (bank == null ? 60 : bank) * (1 + 0.3 * (load - 1)))));
        double side = sign(turn.toward());
        V3 heading = a.level();
        double through = Math.toRadians(turn.degrees());
        for (double done = 0; done < through; ) {
            done += PlainAircraft.G * tan / a.mps * PlainAircraft.DT;
            double slope = Math.toRadians(turn.peakPathDeg())
                    * Math.sin((turn.climbs() ? Math.PI : 2 * Math.PI) * Math.min(1, done / through));
            V3 now = heading.turned(V3.UP, -side * done);
            a.point(now.times(Math.cos(slope)).plus(V3.UP.times(Math.sin(slope))), V3.UP);
            a.step(a.up, 0);
        }
        a.point(heading.turned(V3.UP, -side * through), V3.UP);
    }

    private void spin(Element.Spin spin) {
        for (double end = a.tS + 15; a.mps > 1.05 * a.stallMps() && a.tS < end; ) {
            a.mps -= 2.5 * PlainAircraft.DT;
            a.move(a.way.times(a.mps));
        }
        double seconds = 360 * spin.turns() / a.airframe.spinRateDegPerS() * more() + 1.5;
        double sink = a.airframe.spinDescentFtPerTurn() * FT * a.airframe.spinRateDegPerS() / 360;
        V3 heading = a.level();
        for (double end = a.tS + seconds; a.tS < end && a.place.z() > 140; ) {
            a.move(new V3(0, 0, -sink));
        }
        a.mps = Math.max(sink, 20);
        a.point(new V3(0, 0, -1), heading.times(spin.turns() % 1 > 0.25 ? -1 : 1));
    }

    /** Pivots, slides and tumbles: up until it stands, there for a while, and then straight down. */
    private void fallOver(Element e) {
        boolean tumbles = e instanceof Element.Tumble;
        for (double end = a.tS + 15; !tumbles && a.mps > 11 && a.way.z() > 0.5 && a.tS < end; ) {
            a.step(a.up, 0);
        }
        V3 up = a.up;
        V3 heading = a.level();
        double hangs = (tumbles ? 3.5 : e instanceof Element.Slide ? 2.2 : 1.8) * more();
        V3 velocity = a.way.times(tumbles ? 0.5 * a.mps : 4);
        for (double t = 0; t < hangs && a.place.z() > 120; t += PlainAircraft.DT) {
            velocity = velocity.plus(new V3(-0.5 * velocity.x(), -0.5 * velocity.y(), -5).times(PlainAircraft.DT));
            a.move(velocity);
        }
        a.mps = 12;
        a.point(new V3(0, 0, -1), tumbles ? heading : e instanceof Element.Slide ? up.times(-1) : up);
    }
}
