package crowdline.flight.shape;

import crowdline.flight.body.FlightState;
import crowdline.flight.leg.CannotFly;
import crowdline.flight.leg.Forces;
import crowdline.flight.leg.LoopShape;
import crowdline.flight.leg.Steps;
import crowdline.flight.shape.Attempt.Throttle;
import crowdline.measure.Units;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Usual;
import crowdline.show.figure.Element;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * Draws figures for one aircraft: finds the pull, the roundness, the speed over the top and the power with which what
 * the catalogue says can be flown from where the aircraft is.
 *
 * <p>As round as it can be with a load near the usual one; where the speed does not last for that, tighter over the top.
 */
public final class Shaper {
    private static final double[] ROUND = {1, 0.95, 0.9};
    private static final double[] NEARLY_ROUND = {LoopShape.ROUND_DOWN_TO, LoopShape.CLOSES_DOWN_TO};
    /** Of a loop that is to end where it began. */
    private static final double[] CLOSING = {0.95, 0.92, 0.89, 0.87, LoopShape.ROUND_DOWN_TO};

    private static final double[] LESS_ROUND = {0.7, 0.6, 0.5, 0.4, 0.3};
    private static final double[] FEW_LESS_ROUND = {0.6, 0.4};
    private static final double[] HARDER_G = {0, 0.5};
    private static final double[] MUCH_HARDER_G = {0, 0.5, 1};
    private static final double[] HARDEST_G = {1, 1.5};
    /** Of a loop that does not close anyway. */
    private static final double[] ANY_HARDER_G = {1.5, 2, 2.5};
    /** Enough to see whether more speed would close it. */
    private static final double[] FEW_CLOSING = {0.92, LoopShape.ROUND_DOWN_TO};

    private static final double[] OVER_STALLS = {1.4, 1.6, 1.8, 2.1, 2.5};
    /** How hard a loop is pulled beyond what is usual so that it closes, g, step by step. */
    private static final double MOST_CLOSING_G = 2.5;

    private static final double CLOSING_STEP_G = 0.25;

    private static final List<Throttle> THROTTLES = List.of(
            new Throttle(1, 1),
            new Throttle(1, 0.4),
            new Throttle(1, 0),
            new Throttle(0.7, 0.7),
            new Throttle(0.5, 0.5),
            new Throttle(0.35, 0.35),
            new Throttle(0.25, 0.25),
            new Throttle(0.15, 0.15));
    /** A figure that ends this much faster than it began at the same height was flown with too much power. */
    private static final double TOO_FAST = 1.1;
    /** Heights are the same within this, metres. */
    private static final double SAME_M = 30;
    /** What is never pushed does not hang upside down for longer at a stretch, seconds. */
    private static final double LONGEST_HANGING_S = 6;

    private static final Fault HANGS =
            Fault.of(Fault.Kind.NEVER, "hangs upside down for longer than such an aircraft is flown");

    /** More thrust than this for its weight no figure is flown with: it would not slow down on the way up. */
    private static final double MOST_THRUST = 0.55;
    /** The same of a figure that turns, as a turn is carried round by it. */
    private static final double MOST_THRUST_TURNING = 0.8;

    private static final double SHARE_OF_LIMIT = 0.85;
    /** The same for a loop that is to end where it began: no shape of it takes much less than 5 g. */
    private static final double SHARE_TO_CLOSE = 0.92;

    private static final double MORE_KT = 5;
    /** Of these steps, what is looked at first: that none helps takes long to find out; by judgement. */
    private static final int[] LOOKED_AT = {1, 2, 5, 8};

    /** With more than this asked for it is another figure of another aircraft. */
    private static final double MOST_MORE_KT = 40;

    private final Forces forces;
    private final Airframe airframe;
    private final Usual usual;
    private final Parts parts;
    private final Steps steps;
    private long hurriesFrom = Long.MAX_VALUE;
    /** Share of the power that counts as all of it from where a figure is tried. */
    private double full = 1;

    public Shaper(Forces forces, Airframe airframe) {
        this(forces, airframe, new Steps());
    }

    /** The same, with the steps counted that are flown for it. */
    public Shaper(Forces forces, Airframe airframe, Steps steps) {
        this.forces = forces;
        this.airframe = airframe;
        usual = airframe.usual();
        this.steps = steps;
        parts = new Parts(forces, steps);
    }

    /** Forgets what was flown before, but for how much it was. */
    public void forget() {
        parts.forget();
        hurriesFrom = Long.MAX_VALUE;
    }

    /** From so many steps on figures are drawn with fewer tries: not quite as round, and some not at all. */
    public void hurriesFrom(long taken) {
        hurriesFrom = taken;
    }

    /**
     * Draws a figure.
     *
     * @throws CannotFly when this aircraft cannot fly it from there; it says what is missing
     */
    public Shaped shape(List<Element> elements, FlightState from) throws CannotFly {
        return shape(elements, from, true);
    }

    /**
     * The same for somebody who does not ask how much more speed would do, which takes as long again to find.
     *
     * @throws CannotFly when this aircraft cannot fly it from there
     */
    public Shaped shapeIfItCan(List<Element> elements, FlightState from) throws CannotFly {
        return shape(elements, from, false);
    }

    private Shaped shape(List<Element> elements, FlightState from, boolean saysWhatWouldDo) throws CannotFly {
        if (!elements.stream().allMatch(airframe::shows)) {
            throw new CannotFly("is not flown at displays by such an aircraft", from);
        }
        Tries tries = tried(elements, from);
        Shaped shaped = tries.shaped != null ? tries.shaped : tries.low;
        if (shaped != null) {
            return shaped;
        }
        Fault fault = Objects.requireNonNull(tries.fault, "nothing was tried");
        throw new CannotFly(saysWhatWouldDo ? lack(fault, elements, from) : fault.why(), from);
    }

    /**
     * What a figure lacks that comes out lower than it began, in words that follow its name.
     *
     * @param low one that {@link Shaped#isLow() is}
     * @param saysWhatWouldDo whether it says how much more speed would do, which takes long to find
     */
    public String low(Shaped low, List<Element> elements, FlightState from, boolean saysWhatWouldDo) {
        double feet = Units.ftFromM(from.place().z() - low.extremes().lowestM());
        String comes = String.format(Locale.UK, "comes out %,.0f ft lower than it began", Math.rint(feet / 10) * 10);
        if (!saysWhatWouldDo) {
            return comes;
        }
        int steps = stepsThatHelp(elements, from, low.missingM());
        return steps == 0
                ? comes + ", and more speed at its start would not help"
                : comes + ", and needs " + Math.round(steps * MORE_KT) + " kt more to come out as high";
    }

    /** What came of all tries from one place. */
    private static final class Tries {
        @org.jspecify.annotations.Nullable
        Shaped shaped;

        /** The best of those that come out lower than they began though they should not. */
        @org.jspecify.annotations.Nullable
        Shaped low;

        @org.jspecify.annotations.Nullable
        Fault fault;

        int furthest = -1;

        void found(Shaped found) {
            if (!found.isLow()) {
                shaped = found;
            } else if (low == null || found.shortM() < low.shortM()) {
                low = found;
            }
        }

        void failed(Fault why, int flown) {
            if (flown > furthest) {
                furthest = flown;
                fault = why;
            }
        }
    }

    private Tries tried(List<Element> elements, FlightState from) {
        boolean hurries = steps.taken() >= hurriesFrom;
        double thrust = forces.body
                .drive()
                .thrustN(from.speedMps(), forces.rho(from.place().z()), 1);
        boolean turns = elements.stream().anyMatch(e -> e instanceof Element.Turn);
        double most = turns ? MOST_THRUST_TURNING : MOST_THRUST;
        full = Math.min(1, most * forces.body.weightN() / Math.max(thrust, 1));
        Tries tries = new Tries();
        if (elements.stream().noneMatch(Element::isOpen)) {
            attempt(elements, from, attempt(0, 1, false, SHARE_OF_LIMIT), tries);
            return tries;
        }
        if (closes(elements)) {
            tried(elements, from, ROUND, HARDER_G, tries);
            closed(elements, from, hurries ? FEW_CLOSING : CLOSING, (hurries ? 3 : 1) * CLOSING_STEP_G, tries);
            double[] lessRound = hurries ? FEW_LESS_ROUND : LESS_ROUND;
            tried(elements, from, lessRound, MUCH_HARDER_G, tries);
            tried(elements, from, lessRound, ANY_HARDER_G, tries);
        } else {
            tried(elements, from, ROUND, HARDER_G, tries);
            tried(elements, from, NEARLY_ROUND, HARDER_G, tries);
            double[] lessRound = hurries ? FEW_LESS_ROUND : LESS_ROUND;
            tried(elements, from, lessRound, HARDER_G, tries);
            tried(elements, from, lessRound, HARDEST_G, tries);
        }
        return tries;
    }

    private void tried(List<Element> elements, FlightState from, double[] topShares, double[] harderG, Tries tries) {
        boolean inTheAir = topShares == LESS_ROUND || topShares == FEW_LESS_ROUND;
        for (double topShare : topShares) {
            for (double harder : harderG) {
                if (tries.shaped == null) {
                    attempt(elements, from, attempt(harder, topShare, inTheAir, SHARE_OF_LIMIT), tries);
                }
            }
        }
    }

    /** As little beyond the usual pull as closes it. */
    private void closed(List<Element> elements, FlightState from, double[] topShares, double stepG, Tries tries) {
        double most = Math.min(MOST_CLOSING_G, SHARE_TO_CLOSE * forces.body.limitPositiveG() - usual.pullG() + stepG);
        for (double harder = 0; harder <= most; harder += stepG) {
            for (double topShare : topShares) {
                if (tries.shaped == null) {
                    attempt(elements, from, attempt(harder, topShare, false, SHARE_TO_CLOSE), tries);
                }
            }
        }
    }

    private Throttle throttle(int i) {
        Throttle share = THROTTLES.get(i);
        return new Throttle(full * share.up(), full * share.down());
    }

    /** Whether it is one loop and nothing on top of it, so that people see whether it ends where it began. */
    public static boolean isOneLoop(List<Element> elements) {
        return closes(elements) && elements.stream().filter(Element::isOpen).count() == 1;
    }

    /** Whether it is all one loop, which is to end where it began. */
    private static boolean closes(List<Element> elements) {
        double degrees = 0;
        for (Element element : elements) {
            if (element instanceof Element.Line line && line.isOpen()) {
                return false;
            }
            if (element instanceof Element.Arc arc && arc.size() == Element.Size.USUAL && arc.degrees() != null) {
                degrees += arc.degrees();
            }
        }
        return degrees >= 359;
    }

    private Attempt attempt(double harderG, double topShare, boolean inTheAir, double shareOfLimit) {
        double pull = Math.min(usual.pullG() + harderG, shareOfLimit * forces.body.limitPositiveG());
        Double push = usual.pushG();
        double pushed =
                push == null ? Double.NaN : Math.max(push - harderG, shareOfLimit * forces.body.limitNegativeG());
        return new Attempt(Math.max(pull, usual.pullG()), pushed, topShare, inTheAir, OVER_STALLS[0], throttle(0));
    }

    /** Tries one pull and roundness with what speed over the top and what power it needs. */
    private void attempt(List<Element> elements, FlightState from, Attempt first, Tries tries) {
        Attempt now = first;
        int over = 0;
        int throttle = 0;
        boolean flown = false;
        while (true) {
            try {
                Shaped shaped = new Drawing(forces, usual, now, parts, from).draw(elements);
                flown = true;
                if (hangsTooLong(shaped)) {
                    tries.failed(HANGS, elements.size());
                    return;
                }
                tries.found(shaped);
                throttle = isTooFast(shaped, from) ? throttle + 1 : THROTTLES.size();
                if (throttle >= THROTTLES.size()) {
                    return;
                }
                now = now.with(throttle(throttle));
            } catch (Drawing.Failed e) {
                if (flown) {
                    return;
                }
                tries.failed(e.fault, e.flown);
                if (e.fault.kind() == Fault.Kind.OVER && over + 1 < OVER_STALLS.length) {
                    over++;
                    now = now.withOver(OVER_STALLS[over]);
                } else if (e.fault.kind() == Fault.Kind.NEVER_EXCEED && throttle + 1 < THROTTLES.size()) {
                    throttle++;
                    now = now.with(throttle(throttle));
                } else {
                    return;
                }
            }
        }
    }

    /** What is never pushed is not flown upside down for long: a harder pull, and a smaller figure, hangs for less. */
    private boolean hangsTooLong(Shaped shaped) {
        return usual.pushG() == null && shaped.extremes().hangingS() > LONGEST_HANGING_S;
    }

    /** Ends with more speed and height together than it had, though no higher, and was not to gain that speed. */
    private static boolean isTooFast(Shaped shaped, FlightState from) {
        if (shaped.elements().stream().anyMatch(element -> gains(element, from))) {
            return false;
        }
        double higher = shaped.end().place().z() - from.place().z();
        double speed = shaped.end().speedMps();
        double square = speed * speed + 2 * Units.G_MPS2 * higher;
        double most = TOO_FAST * from.speedMps();
        return higher < SAME_M && square > most * most;
    }

    private static boolean gains(Element element, FlightState from) {
        return element instanceof Element.Line line
                && line.until() == Element.Until.KNOTS
                && Units.mpsFromKt(line.value()) > from.speedMps();
    }

    private String lack(Fault fault, List<Element> elements, FlightState from) {
        if (fault.kind() == Fault.Kind.NEVER) {
            return fault.why();
        }
        int steps = stepsThatHelp(elements, from, 0);
        if (steps == 0) {
            boolean slow = fault.kind() == Fault.Kind.ENERGY || fault.kind() == Fault.Kind.OVER;
            return slow ? fault.why() + ", and more speed at its start would not help" : fault.why();
        }
        return "needs " + Math.round(steps * MORE_KT) + " kt more than it has here: as it is, it " + fault.why();
    }

    /**
     * How many steps of more speed would do; 0 if none.
     *
     * @param missingM height that it has to win at least, as speed is height, metres
     */
    private int stepsThatHelp(List<Element> elements, FlightState from, double missingM) {
        double spareKt = Units.ktFromMps(0.95 * forces.body.neverExceedMps() - from.speedMps());
        int most = (int) Math.floor(Math.min(MOST_MORE_KT, spareKt) / MORE_KT);
        int failed = stepsTooFew(from.speedMps(), missingM);
        for (int looked : LOOKED_AT) {
            int steps = Math.min(looked, most);
            if (steps > failed && helps(steps, elements, from)) {
                while (++failed < steps) {
                    if (helps(failed, elements, from)) {
                        return failed;
                    }
                }
                return steps;
            }
            failed = Math.max(steps, failed);
        }
        return 0;
    }

    /** How many steps of more speed do not win as much height. */
    private static int stepsTooFew(double mps, double missingM) {
        double enoughMps = Math.sqrt(mps * mps + 2 * Units.G_MPS2 * Math.max(missingM, 0));
        return (int) Math.floor(Units.ktFromMps(enoughMps - mps) / MORE_KT);
    }

    /** Whether so many steps of more speed would do. */
    private boolean helps(int steps, List<Element> elements, FlightState from) {
        double speed = from.speedMps() + Units.mpsFromKt(steps * MORE_KT);
        FlightState faster = new FlightState(from.tS(), from.place(), speed, from.direction(), from.up());
        Tries tries = new Tries();
        if (closes(elements)) {
            closed(elements, faster, FEW_CLOSING, 2 * CLOSING_STEP_G, tries);
        } else {
            tries = tried(elements, faster);
        }
        return tries.shaped != null;
    }
}
