package crowdline.flight.shape;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.CannotFly;
import crowdline.flight.leg.Extremes;
import crowdline.flight.leg.Forces;
import crowdline.measure.Units;
import crowdline.show.aircraft.Usual;
import crowdline.show.figure.Element;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One try at drawing a figure: goes through its elements, gives each open one its numbers from where the aircraft is by
 * then, flies it, and stops at the first fault. Used once.
 */
final class Drawing {
    /** The least load over the top of a loop, g: the pilot hangs lightly in the seat, never in the straps. */
    private static final double LIGHTEST_G = 0.05;
    /** No bend and no line of a figure is as long, metres. */
    static final double WIDEST_M = 50_000;

    private static final double MOST_KT = 2_000;
    private final Forces forces;
    private final Attempt attempt;
    private final Parts parts;
    private final double entryM;
    private final double entryAwayM;
    private final Bends bends;
    private final Turns turns;
    private final List<Element> drawn = new ArrayList<>();
    private final Extremes all = new Extremes();
    private Extremes part = new Extremes();
    private FlightState at;
    private boolean flyingOver;
    private double shortM;

    /** Why a try failed. */
    static final class Failed extends Exception {
        private static final long serialVersionUID = 1;
        final Fault fault;
        /** How far it came, elements: of many tries the one that came furthest says most. */
        final int flown;

        Failed(Fault fault, int flown) {
            super(null, null, false, false);
            this.fault = fault;
            this.flown = flown;
        }
    }

    Drawing(Forces forces, Usual usual, Attempt attempt, Parts parts, FlightState from) {
        this.forces = forces;
        this.attempt = attempt;
        this.parts = parts;
        this.at = from;
        entryM = from.place().z();
        entryAwayM = from.place().y();
        bends = new Bends(forces, attempt);
        turns = new Turns(bends, usual, parts);
    }

    /** @throws Failed when the aircraft cannot fly it with these numbers */
    Shaped draw(List<Element> elements) throws Failed {
        for (int i = 0; i < elements.size(); i++) {
            Element next = i + 1 < elements.size() ? elements.get(i + 1) : null;
            draw(elements.get(i), next);
        }
        return new Shaped(drawn, at, all, attempt.topShare(), shortM);
    }

    private void draw(Element element, @Nullable Element next) throws Failed {
        if (element instanceof Element.Arc arc && arc.isOpen()) {
            arc(arc);
        } else if (element instanceof Element.Line line && line.isOpen()) {
            line(line, next);
        } else if (element instanceof Element.Roll roll && roll.isOpen()) {
            double seconds = Math.min(sane(bends.barrelS(at, roll.degrees()), 0.1), Parts.LONGEST_S);
            fly(
                    new Element.Roll(
                            roll.style(), roll.toward(), roll.degrees(), seconds, 0, 0, roll.power() * powerHere()),
                    null);
        } else if (element instanceof Element.HoverRoll hover) {
            hover(hover);
        } else if (element instanceof Element.Turn turn) {
            turn(turn);
        } else {
            fly(Powers.scaled(element, powerHere()), null);
        }
    }

    private void arc(Element.Arc arc) throws Failed {
        if (bends.isPullOut(arc, at)) {
            pullOut(arc);
            return;
        }
        double radius = bends.radiusM(arc, at);
        if (!(radius > 1 && radius < WIDEST_M)) {
            throw tooWide(arc);
        }
        double share = bends.topShare(arc, at);
        for (Element.Arc piece : bends.pieces(arc, at)) {
            fly(
                    new Element.Arc(
                            piece.way(),
                            piece.degrees(),
                            piece.toPathDeg(),
                            Element.Size.RADIUS_M,
                            radius,
                            share,
                            piece.power() * powerHere(piece)),
                    arc);
        }
    }

    /** No radius is small enough for the load it may be bent with. */
    private Failed tooWide(Element.Arc arc) {
        if (arc.size() == Element.Size.OVER) {
            return failed(
                    Fault.Kind.OVER,
                    "is down to %.0f kt where it goes over, and the wing cannot bend it there",
                    Math.max(Math.rint(Units.ktFromMps(at.speedMps())), 0));
        }
        boolean pull = arc.way() == Element.Way.PULL;
        if (!pull && Double.isNaN(attempt.pushG())) {
            return failed(Fault.Kind.NEVER, "is pushed round, and displays of such an aircraft show no pushing");
        }
        return failed(
                Fault.Kind.LOAD,
                "needs a harder %s than the %.1f g such an aircraft is flown with",
                pull ? "pull" : "push",
                pull ? attempt.pullG() : attempt.pushG());
    }

    /** Gently while it is slow and steep, and then as usual. */
    private void pullOut(Element.Arc arc) throws Failed {
        boolean steep = at.direction().z() < -0.85 && arc.degrees() == null;
        if (steep) {
            fly(pull(arc, -45.0), arc);
        }
        fly(pull(arc, arc.toPathDeg()), arc);
    }

    private Element.Arc pull(Element.Arc arc, @Nullable Double toPathDeg) throws Failed {
        double g = Bends.tenths(bends.pullOutG(at));
        if (g < 1.3) {
            throw failed(
                    Fault.Kind.ENERGY,
                    "comes down too slowly to be pulled out: at %.0f kt the wing gives %.1f g",
                    Units.ktFromMps(at.speedMps()),
                    g);
        }
        return new Element.Arc(
                arc.way(), arc.degrees(), toPathDeg, Element.Size.LOAD_G, g, arc.power() * powerHere(arc));
    }

    private double powerHere(Element.Arc arc) {
        return bends.isAtTop(arc, at) ? attempt.throttle().down() : powerHere();
    }

    private double powerHere() {
        return at.direction().z() < -0.3
                ? attempt.throttle().down()
                : attempt.throttle().up();
    }

    private void line(Element.Line line, @Nullable Element next) throws Failed {
        double power = line.power() * powerHere();
        if (line.middle().isEmpty()) {
            fly(closed(line, next, power, at, 0), null);
            return;
        }
        FlightState before = at;
        double rolledM = lengthOf(line.middle());
        double leastM = Math.max(before.speedMps(), 1) * 0.25;
        if (line.until() == Element.Until.SECONDS) {
            fly(new Element.Line(Element.Until.SECONDS, line.value() / 2, power), null);
            rolls(line.middle());
            fly(new Element.Line(Element.Until.SECONDS, line.value() / 2, power), null);
            return;
        }
        // What comes next begins the way up that the rolls leave it.
        FlightState rolled = before.facing(before.direction(), upAfter(line.middle()));
        Element.Line whole = closed(line, next, power, rolled, rolledM + 2 * leastM);
        double wholeM = switch (whole.until()) {
            case FEET ->
                (Units.mFromFt(whole.value()) - before.place().z())
                        / before.direction().z();
            case METRES -> whole.value();
            default -> lengthOf(List.of(whole));
        };
        double eachM = Math.max((wholeM - rolledM) / 2, leastM);
        fly(new Element.Line(Element.Until.METRES, Bends.tenths(eachM), power), null);
        rolls(line.middle());
        fly(new Element.Line(Element.Until.METRES, Bends.tenths(eachM), power), null);
    }

    private void rolls(List<Element> middle) throws Failed {
        for (Element turned : middle) {
            fly(Powers.scaled(turned, powerHere()), null);
        }
    }

    /** How long the path of some rolls is from here, metres. */
    private double lengthOf(List<Element> middle) throws Failed {
        FlightState end = at;
        try {
            for (Element turned : middle) {
                end = parts.thought(turned, end);
            }
        } catch (CannotFly e) {
            throw failed(Fault.Kind.ENERGY, "%s", e.why());
        }
        return end.place().minus(at.place()).length();
    }

    private Vec upAfter(List<Element> middle) {
        double degrees = 0;
        for (Element turned : middle) {
            degrees += turned instanceof Element.Roll roll ? roll.degrees() : ((Element.Flick) turned).degrees();
        }
        return at.rolledUp(Math.toRadians(degrees));
    }

    /**
     * The line with a number to end it.
     *
     * @param leastM how long it has to be for what is flown on it, metres
     */
    private Element.Line closed(
            Element.Line line, @Nullable Element next, double power, FlightState upright, double leastM) throws Failed {
        return switch (line.until()) {
            case RADII ->
                new Element.Line(
                        Element.Until.METRES,
                        sane(line.value() * bends.figureRadiusM(at) + bends.overTopM(at), 0),
                        power);
            case STALLS -> {
                boolean overNext = next instanceof Element.Arc arc && arc.size() == Element.Size.OVER;
                double stalls = overNext ? Math.max(attempt.overStalls(), line.value()) : line.value();
                double kt = Units.ktFromMps(
                        stalls * forces.body.stallMps(forces.rho(at.place().z())));
                yield new Element.Line(Element.Until.KNOTS, Math.min(sane(kt, 0), MOST_KT), power);
            }
            case ENTRY_HEIGHT -> {
                double downM = leastM * Math.max(-at.direction().z(), 0);
                double dropM = next instanceof Element.Arc arc ? bends.dropM(arc, upright, entryM, downM) : 0;
                if (at.direction().z() < 0) {
                    shortM =
                            Math.max(shortM, entryM + dropM + downM - at.place().z());
                }
                yield new Element.Line(Element.Until.FEET, sane(Units.ftFromM(entryM + dropM), -1000), power);
            }
            case ENTRY_LINE -> new Element.Line(Element.Until.METRES, backToTheLineM(next, power), power);
            case SECONDS, METRES, KNOTS, FEET, ALONG_M -> new Element.Line(line.until(), line.value(), power);
        };
    }

    private double backToTheLineM(@Nullable Element next, double power) throws Failed {
        if (!(next instanceof Element.Turn turn)) {
            return 0;
        }
        try {
            return sane(turns.backToTheLineM(turn, at, entryAwayM, power, powerHere()), 0);
        } catch (CannotFly e) {
            throw failed(Fault.Kind.ENERGY, "%s", e.why());
        }
    }

    private void hover(Element.HoverRoll hover) throws Failed {
        try {
            fly(Hovers.drawn(forces, hover, at, parts.steps()), null);
        } catch (CannotFly e) {
            throw failed(Fault.Kind.ENERGY, "%s", e.why());
        }
    }

    private void turn(Element.Turn turn) throws Failed {
        try {
            fly(turns.drawn(turn, at, powerHere()), null);
        } catch (CannotFly e) {
            throw failed(Fault.Kind.ENERGY, "%s", e.why());
        }
    }

    private void fly(Element element, Element.@Nullable Arc open) throws Failed {
        flyingOver = open != null && open.size() == Element.Size.OVER;
        try {
            Parts.Part flown = parts.flown(element, at, flyingOver);
            at = flown.end();
            part = flown.seen();
            all.goOn(part);
        } catch (Parts.Stop e) {
            throw new Failed(e.fault, drawn.size());
        } catch (CannotFly e) {
            throw failed(flyingOver ? Fault.Kind.OVER : Fault.Kind.ENERGY, "%s", e.why());
        }
        drawn.add(element);
        if (open == null) {
            return;
        }
        boolean corner = open.size() == Element.Size.CORNER;
        boolean pushedOver = flyingOver && open.way() == Element.Way.PUSH;
        if ((corner || bends.isLoop(open)) && !pushedOver) {
            mustBePressedIn(open);
        }
    }

    private void mustBePressedIn(Element.Arc loop) throws Failed {
        boolean pressed =
                loop.way() == Element.Way.PULL ? part.leastG() >= LIGHTEST_G : part.greatestG() <= -LIGHTEST_G;
        if (!pressed) {
            throw failed(
                    flyingOver ? Fault.Kind.OVER : Fault.Kind.ENERGY,
                    "is down to %.0f kt over its top, too slow to bend on",
                    Units.ktFromMps(part.leastMps()));
        }
    }

    private Failed failed(Fault.Kind kind, String words, Object... values) {
        return new Failed(Fault.of(kind, words, values), drawn.size());
    }

    /** To a tenth; an aircraft whose numbers are out of all proportion has no line there. */
    private double sane(double value, double least) throws Failed {
        if (!(value >= least && value < WIDEST_M)) {
            throw failed(Fault.Kind.NEVER, "cannot be drawn, as its lines come out of all proportion");
        }
        return Bends.tenths(value);
    }
}
