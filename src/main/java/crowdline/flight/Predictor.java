package crowdline.flight;

import crowdline.flight.air.Air;
import crowdline.flight.air.Atmosphere;
import crowdline.flight.air.DensityTable;
import crowdline.flight.air.Wind;
import crowdline.flight.body.Attitude;
import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Variation;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.CannotFly;
import crowdline.flight.leg.ElementFlyer;
import crowdline.flight.leg.Extremes;
import crowdline.flight.leg.Forces;
import crowdline.flight.leg.Integrator;
import crowdline.flight.leg.Recorder;
import crowdline.flight.leg.Sample;
import crowdline.flight.shape.Shaper;
import crowdline.measure.Units;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Predicts a variant of an act by integrating every element of every figure. One instance serves any number of flights
 * and may be used from several threads at once.
 */
public final class Predictor {
    /** Time between samples, seconds. */
    public static final double SAMPLE_S = 0.1;

    /** Null if nothing is computed: then every figure is only timed, and nothing is known of where it is. */
    private final @Nullable Airframe airframe;

    private final @Nullable Placing entry;
    private final Atmosphere atmosphere;
    private final Wind wind;
    private final Venue.Limits limits;
    private final @Nullable Double cloudBaseFt;
    private final List<PlannedFigure> plan;
    private final @Nullable Double crowdToLineM;
    private final Act act;
    private final Variant variant;

    /**
     * A figure with everything the catalogue adds to it, drawn for this aircraft.
     *
     * @param lack why this aircraft cannot fly it from where it is by then; null if it can
     */
    private record PlannedFigure(
            Figure figure,
            String name,
            List<Element> elements,
            double minEntryKt,
            @Nullable String lack) {
        TimedFlight.Timed timed() {
            return new TimedFlight.Timed(figure, name);
        }

        boolean isOpen() {
            return elements.stream().anyMatch(Element::isOpen);
        }

        PlannedFigure drawn(List<Element> closed) {
            return new PlannedFigure(figure, name, closed, minEntryKt, lack);
        }

        PlannedFigure lacking(String why) {
            return new PlannedFigure(figure, name, elements, minEntryKt, why);
        }
    }

    /**
     * @throws IllegalArgumentException if the act names an aircraft the show does not have, or does not say where it begins
     *     and has figures to compute
     */
    public Predictor(Show show, Catalogue catalogue, Act act, Variant variant) {
        this(show, catalogue, act, variant, Air.of(show.air(), show.venue()));
    }

    /** With other air than the show's own; the cloud base stays the show's. */
    public Predictor(Show show, Catalogue catalogue, Act act, Variant variant, Air air) {
        Aircraft aircraft = show.aircraft(act.airframe())
                .orElseThrow(() -> new IllegalArgumentException("act " + act.id() + " names the airframe "
                        + act.airframe() + ", which the show does not have"));
        this.entry = act.entry(variant);
        boolean flown = act.figures().stream().anyMatch(figure -> figure.durationS() == null);
        if (entry == null && flown && aircraft instanceof Airframe) {
            throw new IllegalArgumentException("act " + act.id() + " does not say where it begins");
        }
        this.airframe = aircraft instanceof Airframe computed ? computed : null;
        this.atmosphere = new DensityTable(air.atmosphere());
        this.wind = air.wind();
        this.limits = show.venue().limits();
        this.crowdToLineM = show.venue().crowdToLineM();
        this.cloudBaseFt = show.air().cloudBaseFt();
        this.act = act;
        this.variant = variant;
        Catalogue all = catalogue.with(show.figures());
        this.plan =
                drawn(act.inOrder(variant).stream().map(f -> planned(f, all)).toList());
    }

    private static PlannedFigure planned(Figure figure, Catalogue catalogue) {
        CatalogueEntry entry = catalogue.find(figure.figure()).orElse(null);
        List<Element> own = figure.elements();
        List<Element> elements = own != null ? own : entry == null ? List.of() : entry.elements();
        Double ownEntry = figure.minEntryKt();
        Double usual = entry == null ? null : entry.minEntryKt();
        double minEntry = ownEntry != null ? ownEntry : own != null || usual == null ? 0 : usual;
        return new PlannedFigure(
                figure, catalogue.nameOf(figure), figure.durationS() != null ? List.of() : elements, minEntry, null);
    }

    /** Every open figure drawn from where the aircraft is when it begins. */
    private List<PlannedFigure> drawn(List<PlannedFigure> figures) {
        Airframe computed = airframe;
        Placing from = entry;
        if (computed == null || from == null || figures.stream().noneMatch(PlannedFigure::isOpen)) {
            return figures;
        }
        Forces forces = forces(computed, Variation.NONE);
        Shaper shaper = new Shaper(forces, computed);
        Integrator integrator = new Integrator(Integrator.NO_GRID, Integrator.FINE, (leg, tS, legS, y) -> {});
        ElementFlyer flyer = new ElementFlyer(forces, integrator, Variation.NONE);
        List<PlannedFigure> closed = new ArrayList<>();
        FlightState at = entry(from, Variation.NONE);
        for (PlannedFigure figure : figures) {
            PlannedFigure now = figure;
            try {
                now = figure.isOpen()
                        ? figure.drawn(shaper.shape(figure.elements(), at).elements())
                        : figure;
                at = flyFigure(now, at, flyer);
            } catch (CannotFly e) {
                now = figure.isOpen() ? figure.lacking(e.why()) : figure;
            }
            closed.add(now);
        }
        return List.copyOf(closed);
    }

    /** What is flown in each figure, drawn for this aircraft. */
    List<List<Element>> elements() {
        return plan.stream().map(PlannedFigure::elements).toList();
    }

    /** The flight as planned, with samples and findings. */
    public Flight predict() {
        return predict(Variation.NONE);
    }

    /** A flight that departs from the plan, with samples and findings. */
    public Flight predict(Variation variation) {
        Airframe computed = airframe;
        Placing from = entry;
        if (computed == null || from == null) {
            return TimedFlight.of(
                    act, variant, plan.stream().map(PlannedFigure::timed).toList());
        }
        Recorder recorder = new Recorder(SAMPLE_S);
        return fly(computed, from, variation, recorder, new Integrator(SAMPLE_S, Integrator.FINE, recorder));
    }

    /**
     * When each figure of a varied flight begins and ends, without samples: the durations in seconds, NaN from the first
     * figure on that could not be flown.
     */
    public double[] durations(Variation variation) {
        Airframe computed = airframe;
        Placing from = entry;
        if (computed == null || from == null) {
            return plan.stream()
                    .mapToDouble(planned -> planned.timed().durationS())
                    .toArray();
        }
        Integrator integrator = new Integrator(Integrator.NO_GRID, Integrator.COARSE, (leg, tS, legS, y) -> {});
        Forces forces = forces(computed, variation);
        ElementFlyer flyer = new ElementFlyer(forces, integrator, variation);
        double[] durations = new double[plan.size()];
        FlightState at = entry(from, variation);
        boolean broken = false;
        for (int i = 0; i < durations.length; i++) {
            PlannedFigure planned = plan.get(i);
            double start = at.tS();
            try {
                at = broken ? at : flyFigure(planned, at, flyer);
                durations[i] = broken ? Double.NaN : at.tS() - start;
            } catch (CannotFly e) {
                broken = true;
                durations[i] = Double.NaN;
            }
        }
        return durations;
    }

    private Forces forces(Airframe airframe, Variation v) {
        return new Forces(Body.of(airframe, v), atmosphere, wind.plus(v.windAlongMps(), v.windAwayMps()));
    }

    private static FlightState entry(Placing entry, Variation v) {
        FlightState m = placed(entry, 0);
        return new FlightState(0, m.place(), Math.max(m.speedMps() + v.entryMps(), 1), m.direction(), m.up());
    }

    private static FlightState placed(Placing p, double tS) {
        Vec direction = switch (p.heading()) {
            case RIGHT -> new Vec(1, 0, 0);
            case LEFT -> new Vec(-1, 0, 0);
            case AWAY -> new Vec(0, 1, 0);
            case CROWD -> new Vec(0, -1, 0);
        };
        Vec place = new Vec(p.alongM(), p.awayM(), Units.mFromFt(p.heightFt()));
        return new FlightState(tS, place, Units.mpsFromKt(p.kt()), direction, Vec.UP);
    }

    private FlightState flyFigure(PlannedFigure planned, FlightState from, ElementFlyer flyer) throws CannotFly {
        if (planned.elements().isEmpty()) {
            return timed(planned, from);
        }
        FlightState at = from;
        String lack = planned.lack();
        if (lack != null) {
            throw new CannotFly(lack, from);
        }
        for (Element element : planned.elements()) {
            at = flyer.fly(element, at);
        }
        return at;
    }

    private static FlightState timed(PlannedFigure planned, FlightState from) {
        Double given = planned.figure().durationS();
        double end = from.tS() + (given == null ? 0 : given);
        Placing exit = planned.figure().exit();
        return exit != null
                ? placed(exit, end)
                : new FlightState(end, from.place(), from.speedMps(), from.direction(), from.up());
    }

    private Flight fly(Airframe computed, Placing from, Variation variation, Recorder recorder, Integrator integrator) {
        Forces forces = forces(computed, variation);
        ElementFlyer flyer = new ElementFlyer(forces, integrator, variation);
        FindingRules rules = new FindingRules(forces.body, limits, cloudBaseFt);
        List<FigureFlight> figures = new ArrayList<>();
        List<FlightFinding> findings = new ArrayList<>();
        FlightState at = entry(from, variation);
        boolean airborne = false;
        for (PlannedFigure planned : plan) {
            if (planned.elements().isEmpty()) {
                FlightState to = timed(planned, at);
                recorder.coast(at, to);
                figures.add(summary(planned, at, to, Extremes.between(at, to), true, List.of()));
                at = to;
                airborne = true;
                continue;
            }
            List<ElementFlight> elements = new ArrayList<>();
            FlightState now = at;
            boolean completed = true;
            try {
                String lack = planned.lack();
                if (lack != null) {
                    throw new CannotFly(lack, at);
                }
                for (int i = 0; i < planned.elements().size(); i++) {
                    Element element = planned.elements().get(i);
                    FlightState then = flyer.fly(element, now);
                    elements.add(new ElementFlight(
                            i, element, now.tS(), flyer.lastLegS(), then.tS(), Attitude.of(now), Attitude.of(then)));
                    now = then;
                }
            } catch (CannotFly e) {
                completed = false;
                now = new FlightState(e.where().tS(), at.place(), at.speedMps(), at.direction(), at.up());
                findings.add(
                        planned.lack() == null
                                ? rules.cannotFly(planned.figure().id(), planned.name(), e.why())
                                : rules.lacks(planned.figure().id(), planned.name(), e.why()));
            }
            Extremes extremes = planned.lack() == null ? recorder.next() : Extremes.between(at, now);
            FigureFlight flown = summary(planned, at, now, extremes, completed, elements);
            figures.add(flown);
            boolean climbsOut = airborne && rules.climbsOut(flown, at, now);
            findings.addAll(rules.check(flown, extremes, planned.minEntryKt(), climbsOut));
            airborne = false;
            if (completed && !planned.figure().transit()) {
                int last = planned.elements().size() - 1;
                findings.addAll(rules.place(flown, planned.elements().get(last), now));
            }
            at = now;
        }
        List<Sample> samples = recorder.samples();
        return new Flight(
                act.id(),
                variant.name(),
                FigureNames.told(figures, transits(), samples, crowdToLineM),
                samples,
                findings);
    }

    private Set<String> transits() {
        return plan.stream()
                .map(PlannedFigure::figure)
                .filter(Figure::transit)
                .map(Figure::id)
                .collect(Collectors.toSet());
    }

    private static FigureFlight summary(
            PlannedFigure planned,
            FlightState from,
            FlightState to,
            Extremes e,
            boolean completed,
            List<ElementFlight> elements) {
        return new FigureFlight(
                planned.figure().id(),
                planned.name(),
                !planned.elements().isEmpty(),
                completed,
                from.tS(),
                to.tS(),
                from.speedMps(),
                to.speedMps(),
                e.leastMps(),
                e.greatestMps(),
                e.lowestM(),
                e.highestM(),
                e.greatestG(),
                e.leastG(),
                from.energyHeightM(),
                to.energyHeightM(),
                to.place().x(),
                to.place().y(),
                e.upsideDownS(),
                elements);
    }
}
