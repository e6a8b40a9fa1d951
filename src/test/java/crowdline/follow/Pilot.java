package crowdline.follow;

import crowdline.show.figure.Element;
import java.util.SplittableRandom;

/** Flies elements with an {@link Aircraft}, never quite as planned, and brings it back to the display line. */
final class Pilot {
    private static final double FT = 0.3048;
    private static final double KT = 1852.0 / 3600;
    /** Share of the power with which an aircraft that is too fast slows down. */
    private static final double HOLDING = 0.3;

    private final Aircraft a;
    private final SplittableRandom random;
    private final Habit pull;
    private final Habit rolls;
    private final Habit pauses;
    private final Habit speeds;
    private final Sky sky;
    private final Circles circles;
    /** The height to which level lines are flown back, metres, where they are. */
    double heightM;
    /** A speed that is not exceeded in turns, metres a second: nobody turns round for a minute at full power. */
    double holdsMps = Double.POSITIVE_INFINITY;
    /** Whether the figure is flown the other way along the A-axis than planned. */
    boolean mirrored;

    Pilot(Aircraft aircraft, double share, Sky sky, Manner manner, SplittableRandom random) {
        a = aircraft;
        this.random = random;
        this.sky = sky;
        pull = new Habit(share, manner.pull(), random);
        circles = new Circles(a, pull, manner.otherCircles());
        rolls = new Habit(share, manner.rolls(), random);
        pauses = new Habit(1.5 * share, manner.pauses(), random);
        speeds = new Habit(0.5 * share, 1, random);
    }

    void nextFigure() {
        pull.nextFigure();
        rolls.nextFigure();
        pauses.nextFigure();
        speeds.nextFigure();
    }

    void fly(Element e) {
        if (e instanceof Element.Line line) {
            line(line);
        } else if (e instanceof Element.Arc arc) {
            circles.fly(arc);
        } else if (e instanceof Element.Roll roll) {
            roll(roll);
        } else if (e instanceof Element.Flick flick) {
            rollThrough(
                    flick.degrees(),
                    flick.toward(),
                    Math.toRadians(a.airframe.flickRateDegPerS()) * rolls.factor(),
                    flick.power(),
                    0.4);
        } else if (e instanceof Element.Spin spin) {
            spin(spin);
        } else if (e instanceof Element.Pivot pivot) {
            pivot(pivot);
        } else if (e instanceof Element.Slide slide) {
            slide(slide);
        } else if (e instanceof Element.Tumble tumble) {
            tumble(tumble);
        } else if (e instanceof Element.Turn turn) {
            turn(turn);
        } else if (e instanceof Element.Reversal over) { // turns here end with level wings
            rollThrough(360, Element.Side.LEFT, Math.toRadians(a.airframe.rollRateDegPerS()), over.power(), 0);
        } else if (e instanceof Element.HoverRoll hover) {
            wait(hover.seconds() * pauses.factor(), hover.power());
        } else {
            reposition((Element.Reposition) e);
        }
    }

    private interface Until {
        boolean reached(double t);
    }

    private void line(Element.Line line) {
        double t0 = a.tS;
        V3 from = a.place;
        Until end = switch (line.until()) {
            case SECONDS -> {
                double s = line.value() * pauses.factor();
                yield t -> t - t0 >= s;
            }
            case METRES -> {
                double m = line.value() * pauses.factor();
                yield t -> a.place.minus(from).length() >= m;
            }
            case KNOTS -> {
                double v = line.value() * KT * speeds.factor();
                double z = a.direction.z();
                boolean gaining = z < -0.05 || (z < 0.05 && a.speedMps < v);
                yield t -> gaining ? a.speedMps >= v : a.speedMps <= v;
            }
            case FEET -> {
                double z = line.value() * FT + sky.heightM() * Variety.bell(random);
                double way = Math.signum(a.direction.z());
                yield t -> Math.abs(a.direction.z()) < 0.02 || way * (a.place.z() - z) >= 0;
            }
            case RADII, STALLS, ENTRY_HEIGHT, ENTRY_LINE -> throw new IllegalArgumentException("not drawn");
            case ALONG_M -> {
                double x = (mirrored ? -1 : 1) * line.value() + sky.placeM() * Variety.bell(random);
                double way = Math.signum(a.direction.x());
                yield t -> Math.abs(a.direction.x()) < 0.05 || way * (a.place.x() - x) >= 0;
            }
        };
        double longest = t0 + 60;
        boolean level = Math.abs(a.direction.z()) < 0.1;
        boolean speedsUp = line.until() == Element.Until.KNOTS;
        while (!end.reached(a.tS) && a.tS < longest && !a.mustPullOut() && !a.outOfSpeed()) {
            if (level && !speedsUp && a.mustLand()) {
                return;
            }
            if (level || (!speedsUp && a.mustLowerNose())) {
                home(!speedsUp);
            }
            a.straight(line.power(), 0);
        }
    }

    /** On a level line the heading is kept along the display line, and gently back on to it. */
    private void home(boolean keepsHeight) {
        if (Math.abs(a.direction.x()) < 0.8) {
            return;
        }
        double way = Math.signum(a.direction.x());
        double drift = Math.max(-0.2, Math.min(0.2, -a.place.y() / 400));
        double climb = Math.max(0, Math.min(0.1, (Aircraft.LOWEST_M - a.place.z()) / 300));
        if (keepsHeight && (sky.real() || a.mustLowerNose())) {
            climb = towardsHeight(climb);
        }
        V3 wanted = new V3(way, drift, climb).unit();
        V3 now = a.direction
                .plus(wanted.minus(a.direction).times(Aircraft.DT / 1.5))
                .unit();
        a.point(now, a.up);
    }

    /** The climb, as a slope, of a pilot who goes back to the height planned as far as speed allows. */
    private double towardsHeight(double climb) {
        double fast = a.speedMps / a.stallMps();
        return a.isSlow()
                ? Aircraft.SLOW_SLOPE
                : Math.max(climb, Math.max(-0.12, Math.min(fast < 1.4 ? 0 : 0.12, (heightM - a.place.z()) / 300)));
    }

    private void wait(double seconds, double power) {
        double end = a.tS + seconds;
        while (a.tS < end && !a.mustPullOut()) {
            a.straight(power, 0);
        }
    }

    private void rollThrough(double degrees, Element.Side side, double rate, double power, double extraCd) {
        double way = side == Element.Side.LEFT ? -1 : 1;
        double left = Math.toRadians(degrees);
        while (left > 0) {
            double now = rate * Math.min(1, Math.max(a.speedMps, 12) / (a.airframe.rollRateKt() * KT));
            double step = Math.min(left, now * Aircraft.DT);
            a.roll(way * step);
            left -= step;
            a.straight(power, extraCd);
        }
    }

    private void roll(Element.Roll r) {
        double rate = Math.toRadians(a.airframe.rollRateDegPerS()) * rolls.factor();
        switch (r.style()) {
            case AILERON -> rollThrough(r.degrees(), r.toward(), rate, r.power(), 0);
            case SLOW -> {
                Double given = r.seconds();
                double seconds = given == null ? 8 : given;
                double end = a.tS + seconds / rolls.factor();
                double turned = Math.toRadians(r.degrees()) * Aircraft.DT / (end - a.tS);
                while (a.tS < end) {
                    a.roll(turned);
                    a.straight(r.power(), 0);
                }
            }
            case HESITATION -> {
                double part = 360.0 / r.pointsPerTurn();
                for (double done = 0; done < r.degrees() - 1e-6; done += part) {
                    rollThrough(Math.min(part, r.degrees() - done), r.toward(), rate, r.power(), 0);
                    if (done + part < r.degrees() - 1e-6) {
                        wait(r.pauseS() * pauses.factor(), r.power());
                    }
                }
            }
            case BARREL -> barrel(r);
        }
    }

    private void barrel(Element.Roll r) {
        Double given = r.seconds();
        double seconds = (given == null ? 6 : given) / rolls.factor() * r.degrees() / 360;
        V3 d0 = a.direction;
        V3 side = d0.cross(V3.UP).unit().times(away(r.toward()));
        double start = a.tS;
        while (a.tS < start + seconds) {
            double phi = 2 * Math.PI * (a.tS - start) / seconds * r.degrees() / 360;
            V3 d = d0.plus(V3.UP.times(0.5 * Math.sin(phi)))
                    .plus(side.times(0.3 * (1 - Math.cos(phi))))
                    .unit();
            a.point(d, V3.UP.turned(d0, phi));
            a.straight(r.power(), 0);
        }
        a.point(d0, V3.UP);
    }

    /** +1 to the pilot's right, −1 to the left. */
    private double away(Element.Side side) {
        V3 right = a.direction.cross(V3.UP);
        return switch (side) {
            case RIGHT -> mirrored ? -1 : 1;
            case LEFT -> mirrored ? 1 : -1;
            case AWAY -> right.y() >= 0 ? 1 : -1;
            case CROWD -> right.y() >= 0 ? -1 : 1;
        };
    }

    private void spin(Element.Spin spin) {
        double slowest = a.stallMps();
        double end = a.tS + 20;
        while (a.speedMps > slowest && a.tS < end) {
            a.straight(spin.power(), 0);
        }
        double rate = Math.toRadians(a.airframe.spinRateDegPerS()) * rolls.factor();
        double sink = a.airframe.spinDescentFtPerTurn() * FT * rate / (2 * Math.PI);
        V3 heading = a.direction;
        V3 v = a.direction.times(a.speedMps);
        double left = 2 * Math.PI * spin.turns();
        double t = 0;
        while (left > 0 && a.place.z() > Aircraft.LOWEST_M + 60) {
            t += Aircraft.DT;
            left -= rate * Math.min(1, t / 1.2) * Aircraft.DT;
            v = v.plus(new V3(-v.x(), -v.y(), -sink - v.z()).times(Aircraft.DT / 1.3));
            a.move(v);
        }
        double turns = spin.turns() - Math.rint(spin.turns());
        fallOut(-v.z(), heading.times(Math.abs(turns) > 0.25 ? -1 : 1));
    }

    private void fallOut(double speed, V3 newUp) {
        a.point(new V3(0, 0, -1), newUp);
        a.speedMps = Math.max(speed, 5);
        a.load = 0;
    }

    private void pivot(Element.Pivot pivot) {
        double time = a.airframe.pivotS() * rolls.factor();
        double end = a.tS + 15;
        while (a.speedMps > Aircraft.G * time / 2 && a.tS < end) {
            a.straight(pivot.power(), 0);
        }
        V3 up = a.up;
        V3 v = ballistic(a.direction.times(a.speedMps), time, 0.4);
        fallOut(-v.z(), up);
    }

    private void slide(Element.Slide slide) {
        double end = a.tS + 15;
        while (a.speedMps > 0.5 && a.tS < end) {
            a.straight(slide.power(), 0);
        }
        V3 up = a.up;
        V3 v = ballistic(a.direction.times(a.speedMps), 2.4 * pauses.factor(), 0.8);
        fallOut(-v.z(), up.times(-1));
    }

    private void tumble(Element.Tumble tumble) {
        double time = tumble.turns() * 360 / a.airframe.tumbleRateDegPerS() / rolls.factor();
        V3 heading = new V3(a.direction.x(), a.direction.y(), 0).unit();
        V3 v = ballistic(a.direction.times(a.speedMps), time, 0.55);
        while (v.z() > -3 && !tooLowToFall(v)) {
            v = ballistic(v, 0.1, 0.55);
        }
        fallOut(-v.z(), heading);
    }

    /** A fall has to end while there is still height for a pull-out from straight down. */
    private boolean tooLowToFall(V3 v) {
        return v.z() < -5 && a.place.z() < Aircraft.LOWEST_M + 1.5 * v.z() * v.z() / (2.6 * Aircraft.G);
    }

    private V3 ballistic(V3 from, double seconds, double cd) {
        V3 v = from;
        double end = a.tS + seconds;
        while (a.tS < end && !tooLowToFall(v)) {
            double drag = 0.6 * a.airframe.wingAreaM2() * cd / a.airframe.massKg() * v.length();
            v = v.plus(new V3(-drag * v.x(), -drag * v.y(), -drag * v.z() - Aircraft.G).times(Aircraft.DT));
            a.move(v);
        }
        return v;
    }

    private void turn(Element.Turn turn) {
        double side = away(turn.toward());
        Double given = turn.bankDeg();
        double bankDeg = given == null ? a.airframe.usual().turnBankDeg() : given;
        double bank = Math.toRadians(bankDeg) * (1 + 0.4 * (pull.factor() - 1));
        bank = Math.min(bank, Math.toRadians(80));
        double through = Math.toRadians(turn.degrees());
        V3 d0 = new V3(a.direction.x(), a.direction.y(), 0).unit();
        double done = 0;
        double held = 0;
        while (done < through) {
            double left = through - done;
            double wanted = Math.min(bank, Math.max(0.5, left * 6));
            held += Math.max(-2 * Aircraft.DT, Math.min(2 * Aircraft.DT, wanted - held));
            done += Aircraft.G * Math.tan(held) / Math.max(a.speedMps, 15) * Aircraft.DT;
            V3 d = d0.turned(V3.UP, -side * done);
            double climb = Math.toRadians(turn.peakPathDeg()) * Math.sin(2 * Math.PI * done / through);
            if (sky.real() && turn.peakPathDeg() == 0) {
                climb = towardsHeight(climb);
            }
            d = d.times(Math.cos(climb)).plus(V3.UP.times(Math.sin(climb)));
            a.point(d, V3.UP);
            double power = a.speedMps > holdsMps ? HOLDING * turn.power() : turn.power();
            a.straight(power, 0.5 * a.airframe.inducedDragFactor() * Math.pow(Math.tan(held), 2) * 0.1);
        }
        a.point(d0.turned(V3.UP, -side * through), V3.UP);
    }

    private void reposition(Element.Reposition r) {
        Element.Side away = Element.Side.AWAY;
        turn(new Element.Turn(away, 215, r.bankDeg(), 0, 0, r.power()));
        double end = a.tS + 30;
        while (Math.abs(a.place.y()) > 60 && a.tS < end) {
            a.straight(r.power(), 0);
        }
        V3 along = new V3(Math.signum(a.direction.x()), 0, 0);
        a.point(along, V3.UP);
        line(new Element.Line(Element.Until.ALONG_M, r.alongM(), r.power()));
    }
}
