package crowdline.follow;

import crowdline.flight.Drawn;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.Spread;
import crowdline.flight.Workers;
import crowdline.flight.leg.Sample;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Airframe;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.timing.PredictedTimes;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** An act of the trials: its plan, and flights of it that differ. */
final class Display {
    private static final double FT = 0.3048;
    private static final double KT = 1852.0 / 3600;
    /** Where an act is broken off to that does not end with a landing, and the seconds it would take. */
    private static final Placing HOME = new Placing(0, 60, 0, 60, Placing.Heading.RIGHT);

    private static final double HOME_S = 60;

    final FollowPlan plan;
    final Flight flight;
    private final Act act;
    private final Airframe airframe;
    private final List<Figure> figures;
    private final List<List<Element>> elements;
    private final V3 toldWind;

    Display(Show show, Catalogue catalogue, Act act, String variant) {
        this.act = act;
        airframe = show.airframe(act.airframe()).orElseThrow();
        figures = act.inOrder(act.variants().stream()
                .filter(v -> v.name().equals(variant))
                .findFirst()
                .orElseThrow());
        Predictor predictor = new Predictor(
                show,
                catalogue,
                act,
                act.variants().stream()
                        .filter(v -> v.name().equals(variant))
                        .findFirst()
                        .orElseThrow());
        elements = Drawn.elements(predictor);
        flight = predictor.predict();
        plan = FollowPlan.of(
                flight,
                PredictedTimes.of(
                        flight,
                        new Spread(predictor, 5, Workers.ALONE)
                                .fly(100, s -> {})
                                .bands()));
        double towards = Math.toRadians(show.air().windFromDeg()
                + 180
                - Objects.requireNonNull(show.venue().axisBearingDeg()));
        double mps = show.air().windKt() * KT;
        toldWind = new V3(mps * Math.cos(towards), -mps * Math.sin(towards), 0);
    }

    int size() {
        return figures.size();
    }

    /** The figures that are only the way to the next. */
    Set<Integer> transits() {
        return IntStream.range(0, size())
                .filter(f -> figures.get(f).transit())
                .boxed()
                .collect(Collectors.toSet());
    }

    /** The figures that the follower takes for one, however they are called. */
    Set<Integer> ways() {
        return IntStream.range(0, size())
                .filter(f -> plan.bins.isWay(f))
                .boxed()
                .collect(Collectors.toSet());
    }

    boolean timed(int f) {
        return elements.get(f).isEmpty();
    }

    /** The figures in the order planned. */
    List<Integer> asPlanned() {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < size(); i++) {
            order.add(i);
        }
        return order;
    }

    /**
     * Flies figures in an order; {@link Truth#UNKNOWN} in it is something that is not in the plan, and a landing where it comes
     * last.
     *
     * @param strange the elements of what is not in the plan
     * @param beforeS seconds on the ground, or holding, before the act
     * @param fork from where on it is flown otherwise
     */
    Truth fly(
            List<Integer> order,
            List<Element> strange,
            double share,
            double untoldWindMps,
            double beforeS,
            Scenario.World world,
            Fork fork,
            long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Sky sky = switch (world) {
            case GENTLE, ELSEWHERE -> Sky.gentle(share);
            case HARD -> Sky.hard(new SplittableRandom(seed + 7));
            case OTHER -> Sky.other(new SplittableRandom(seed + 7));
        };
        Manner manner =
                world == Scenario.World.OTHER ? Manner.drawn(new SplittableRandom(seed + 17)) : Manner.AS_PLANNED;
        Truth truth = new Truth();
        Variety variety = Variety.drawn(share, random);
        V3 wind = toldWind.plus(new V3(untoldWindMps * Variety.bell(random), untoldWindMps * Variety.bell(random), 0));
        Aircraft a = new Aircraft(airframe, variety, wind, sky, truth, random);
        Pilot pilot = new Pilot(a, share, sky, manner, random);
        enter(a, share, random);
        wait(a, truth, beforeS, random);
        WayBack wayBack = new WayBack(a, wind, sky, random);
        for (int i = 0; i < order.size(); i++) {
            int f = order.get(i);
            if (fork.passes(i, random)) {
                pilot = new Pilot(a, share, sky, manner, random);
            }
            pilot.nextFigure();
            if (i > 0 && order.get(i - 1) == Truth.UNKNOWN && sky.real() && isShown(f) && wayBack.isNeeded(begin(f))) {
                double from = a.tS;
                wayBack.fly(begin(f));
                truth.unplanned(from, a.tS);
            }
            double start = a.tS;
            if (f == Truth.UNKNOWN && i == order.size() - 1) {
                new Circuit(a, wind, sky.placeM(), random).fly(HOME, heading(HOME), HOME_S, random);
            } else if (f == Truth.UNKNOWN) {
                pilot.holdsMps = sky.real() ? a.speedMps : Double.POSITIVE_INFINITY;
                strange.forEach(pilot::fly);
                pilot.holdsMps = Double.POSITIVE_INFINITY;
            } else if (timed(f)) {
                if (sky.real() || lands(f)) {
                    really(a, wind, f, share, sky, random);
                } else {
                    circuit(a, truth, f, share, random);
                }
            } else {
                pilot.mirrored = Math.abs(a.direction.x()) > 0.5 && planned(f) * a.direction.x() < 0;
                pilot.heightM = heightAtEndM(f);
                if (sky.real() && joins(f)) {
                    new WayBetween(a, wind, sky, share, random)
                            .fly(planned(flight.figures().get(f)), pilot.mirrored);
                } else {
                    elements.get(f).forEach(pilot::fly);
                }
            }
            if (f == Truth.UNKNOWN) {
                truth.unplanned(start, a.tS);
            } else {
                truth.flown.add(new Truth.Flown(f, start, a.tS));
            }
        }
        return truth;
    }

    /** Whether it is flown to be looked at. */
    private boolean isShown(int f) {
        return f >= 0 && !timed(f) && !joins(f);
    }

    /** The same by somebody else, see {@link Elsewhere}. */
    Truth flyElsewhere(List<Integer> order, List<Element> strange, long seed) {
        Truth truth = new Truth();
        Elsewhere other = new Elsewhere(airframe, toldWind, truth, seed);
        Placing entry = Objects.requireNonNull(act.entry());
        other.enter(new V3(entry.alongM(), entry.awayM(), entry.heightFt() * FT), heading(entry), entry.kt() * KT);
        for (int i = 0; i < order.size(); i++) {
            int f = order.get(i);
            double start = other.nowS();
            boolean mirrored = f >= 0
                    && Math.abs(other.way().x()) > 0.5
                    && planned(f) * other.way().x() < 0;
            if (f == Truth.UNKNOWN && i == order.size() - 1) {
                other.timed(HOME, heading(HOME), HOME_S);
            } else if (f == Truth.UNKNOWN) {
                other.fly(strange, 200, false);
            } else if (timed(f)) {
                Placing exit = figures.get(f).exit();
                other.timed(
                        exit,
                        exit == null ? other.way() : heading(exit),
                        flight.figures().get(f).durationS());
            } else if (joins(f)) {
                List<Sample> way = planned(flight.figures().get(f));
                other.between(way.get(way.size() - 1), mirrored);
            } else {
                other.fly(elements.get(f), heightAtEndM(f), mirrored);
            }
            truth.flown.add(new Truth.Flown(f, start, other.nowS()));
        }
        return truth;
    }

    /** Which way along the A-axis the plan goes at a figure's start. */
    private double planned(int f) {
        return begin(f).nose().x();
    }

    /** Where a figure is planned to begin. */
    private Sample begin(int f) {
        double start = flight.figures().get(f).startS();
        List<Sample> samples = flight.samples();
        return samples.stream().filter(s -> s.tS() >= start).findFirst().orElse(samples.get(samples.size() - 1));
    }

    private boolean lands(int f) {
        Placing exit = figures.get(f).exit();
        return exit != null && exit.heightFt() == 0;
    }

    private boolean joins(int f) {
        return elements.get(f).stream().anyMatch(e -> e instanceof Element.Run || e instanceof Element.Reposition);
    }

    private List<Sample> planned(FigureFlight figure) {
        return flight.samples().stream()
                .filter(s -> s.tS() >= figure.startS() && s.tS() <= figure.endS())
                .toList();
    }

    private double heightAtEndM(int f) {
        double end = flight.figures().get(f).endS();
        return flight.samples().stream()
                .filter(s -> s.tS() >= end - 0.2)
                .findFirst()
                .map(s -> s.place().z())
                .orElse(150.0);
    }

    private void really(Aircraft a, V3 wind, int f, double share, Sky sky, SplittableRandom random) {
        FigureFlight planned = flight.figures().get(f);
        Placing exit = figures.get(f).exit();
        double duration = planned.durationS() * (1 + share * Variety.bell(random));
        if (exit == null) {
            double end = a.tS + duration;
            while (a.tS < end) {
                a.straight(0.6, 0);
            }
            return;
        }
        new Circuit(a, wind, sky.placeM(), random).fly(exit, heading(exit), duration, random);
    }

    private void enter(Aircraft a, double share, SplittableRandom random) {
        Placing p = Objects.requireNonNull(act.entry());
        a.place = new V3(
                p.alongM() + share * 300 * random.nextGaussian(),
                p.awayM() + share * 100 * random.nextGaussian(),
                p.heightFt() * FT * (1 + share * 0.3 * random.nextGaussian()));
        a.direction = heading(p);
        a.speedMps = p.kt() * KT * (1 + share * 0.3 * random.nextGaussian());
    }

    private static V3 heading(Placing p) {
        return switch (p.heading()) {
            case RIGHT -> new V3(1, 0, 0);
            case LEFT -> new V3(-1, 0, 0);
            case AWAY -> new V3(0, 1, 0);
            case CROWD -> new V3(0, -1, 0);
        };
    }

    /** Before the act: on the ground it stands; in the air it comes straight towards its entry. */
    private void wait(Aircraft a, Truth truth, double seconds, SplittableRandom random) {
        boolean ground = a.place.z() < 20;
        V3 from = ground ? a.place : a.place.minus(a.direction.times(a.speedMps * seconds));
        V3 to = a.place;
        for (double t = 0; t < seconds; t += 0.05) {
            V3 at = from.plus(to.minus(from).times(t / seconds));
            truth.instants.add(new Truth.Instant(t, at, to.minus(from).times(1 / seconds)));
        }
        a.tS = seconds;
        random.nextInt();
    }

    /** A figure of which only the time is planned: take-off, landing, by way of a circuit. */
    private void circuit(Aircraft a, Truth truth, int f, double share, SplittableRandom random) {
        FigureFlight planned = flight.figures().get(f);
        Placing exit = figures.get(f).exit();
        double duration = planned.durationS() * (1 + share * Variety.bell(random));
        V3 from = a.place;
        V3 heading = new V3(a.direction.x(), a.direction.y(), 0).unit();
        V3 to = from.plus(heading.times(a.speedMps * duration));
        V3 out = heading;
        if (exit != null) {
            to = new V3(
                    exit.alongM() + share * 250 * Variety.bell(random),
                    exit.awayM(),
                    exit.heightFt() == 0 ? 0 : exit.heightFt() * FT + share * 100 * Variety.bell(random));
            out = heading(exit);
        }
        List<V3> way = new ArrayList<>();
        way.add(from);
        double climb = (to.z() - from.z()) / 5;
        way.add(from.plus(heading.times(350)).plus(V3.UP.times(0.3 * climb)));
        way.add(from.plus(heading.times(900)).plus(new V3(0, 150, climb)));
        way.add(from.plus(heading.times(1000)).plus(new V3(0, 600, 2 * climb)));
        way.add(to.minus(out.times(1100)).plus(new V3(0, 600, -1.5 * climb)));
        way.add(to.minus(out.times(800)).plus(new V3(0, 100, -0.7 * climb)));
        way.add(to.minus(out.times(300)).plus(V3.UP.times(-0.2 * climb)));
        way.add(to);
        new Wayfaring(way, a.speedMps, exit == null ? a.speedMps : exit.kt() * KT).fly(a.tS, duration, truth);
        Truth.Instant end = truth.instants.get(truth.instants.size() - 1);
        a.tS += duration;
        a.place = end.place();
        a.speedMps = exit == null ? a.speedMps : exit.kt() * KT;
        a.point(out, V3.UP);
        a.load = 1;
    }

    /** The samples of the prediction, to look at beside a flight. */
    List<Sample> samples() {
        return flight.samples();
    }
}
