package crowdline.flight;

import crowdline.flight.air.Air;
import crowdline.flight.air.DensityTable;
import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Variation;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.CannotFly;
import crowdline.flight.leg.ElementFlyer;
import crowdline.flight.leg.Forces;
import crowdline.flight.leg.Integrator;
import crowdline.flight.leg.Leg;
import crowdline.measure.Units;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Predicting the demo act and a 40-figure act made from it, and the same equations on a general adaptive integrator. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
@SuppressWarnings("NullAway.Init") // JMH calls the set-up before anything else
public class PredictBench {
    private static final int FIGURES = 40;
    /** A leg that is over before it began has nothing to integrate. */
    private static final double SHORTEST_S = 1e-6;

    /** Every way a flight may vary, at once, well inside what {@link Spread} draws. */
    private static final Variation VARIED = new Variation(1.02, 0.97, 1.05, 1.05, 0.95, 1.1, 2, 1.5, -1.5);
    /** Both integrators must come to the same place, or their times say nothing: metres and m/s. */
    private static final double SAME = 0.01;

    private Predictor demo;
    private Predictor forty;
    private final Map<Leg, Double> legs = new LinkedHashMap<>();

    @Setup
    public void read() throws ShowFileException, CannotFly {
        Show show = Objects.requireNonNull(new ShowFile()
                .read(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"))
                .show());
        Catalogue catalogue = CatalogueFile.shipped();
        Act act = show.acts().get(0);
        Variant variant = act.variants().get(0);
        demo = new Predictor(show, catalogue, act, variant);
        Act longer = longer(act, variant);
        forty = new Predictor(show, catalogue, longer, longer.variants().get(0));
        collectLegs(show, act, variant);
        checkThatAllIsFlown();
        checkThatBothAgree();
    }

    /** A flight that breaks off early would be quick for the wrong reason. */
    private void checkThatAllIsFlown() {
        double[] durations = forty.durations(VARIED);
        if (durations.length != FIGURES || Arrays.stream(durations).anyMatch(Double::isNaN)) {
            throw new IllegalStateException("the varied flight breaks off: " + Arrays.toString(durations));
        }
        List<FigureFlight> flown = forty.predict().figures();
        if (flown.size() != FIGURES || !flown.stream().allMatch(FigureFlight::completed)) {
            throw new IllegalStateException("the flight of " + FIGURES + " figures breaks off");
        }
    }

    private void checkThatBothAgree() {
        double most = 0;
        String where = "";
        for (Map.Entry<Leg, Double> entry : legs.entrySet()) {
            if (entry.getValue() > SHORTEST_S) {
                double[] ours = new double[8];
                integrator((leg, tS, inLegS, y) -> System.arraycopy(y, 0, ours, 0, y.length))
                        .fly(entry.getKey(), 0);
                double[] theirs = integrated(entry.getKey(), entry.getValue());
                for (int i = 0; i < theirs.length; i++) {
                    double apart = Math.abs(ours[i] - theirs[i]);
                    if (apart > most) {
                        most = apart;
                        where = entry.getKey().getClass().getSimpleName() + " coordinate " + i + " after "
                                + entry.getValue() + " s";
                    }
                }
            }
        }
        System.out.printf(Locale.ROOT, "%n%d legs; largest difference at an end %.2e: %s%n", legs.size(), most, where);
        if (!(most < SAME)) {
            throw new IllegalStateException("the integrators differ by " + most);
        }
    }

    /** The act's simulated figures over and over, each time from a given place again. */
    private static Act longer(Act act, Variant variant) {
        List<Figure> all = new ArrayList<>();
        List<Figure> order = act.inOrder(variant);
        Placing again = Objects.requireNonNull(order.get(0).exit());
        for (int i = 0; all.size() < FIGURES; i++) {
            Figure f = order.get(i % order.size());
            String id = f.id() + "-" + i;
            Double given = f.durationS();
            all.add(new Figure(
                    id,
                    f.figure(),
                    f.title(),
                    f.look(),
                    f.elements(),
                    given,
                    given == null ? null : again,
                    f.minEntryKt(),
                    List.of(),
                    List.of()));
        }
        Variant whole = new Variant("forty", null, all.stream().map(Figure::id).toList());
        return new Act(
                "forty",
                act.title(),
                act.performer(),
                act.airframe(),
                act.slotStart(),
                act.slotMinutes(),
                act.entry(),
                all,
                List.of(whole),
                List.of());
    }

    private void collectLegs(Show show, Act act, Variant variant) throws CannotFly {
        Air air = Air.of(show.air(), show.venue());
        Body body = Body.of(show.airframe(act.airframe()).orElseThrow(), Variation.NONE);
        Forces forces = new Forces(body, new DensityTable(air.atmosphere()), air.wind());
        Integrator integrator = integrator((leg, tS, inLegS, y) -> legs.merge(leg, inLegS, Math::max));
        ElementFlyer flyer = new ElementFlyer(forces, integrator, Variation.NONE);
        Placing start = Objects.requireNonNull(act.inOrder(variant).get(0).exit());
        FlightState at = new FlightState(
                0,
                new Vec(start.alongM(), start.awayM(), Units.mFromFt(start.heightFt())),
                Units.mpsFromKt(start.kt()),
                new Vec(-1, 0, 0),
                Vec.UP);
        for (List<Element> elements : demo.elements()) {
            for (Element element : elements) {
                at = flyer.fly(element, at);
            }
        }
    }

    @Benchmark
    public Flight demoAct() {
        return demo.predict();
    }

    @Benchmark
    public Flight fortyFigures() {
        return forty.predict();
    }

    @Benchmark
    public double[] oneVariedFlightOfFortyFigures() {
        return forty.durations(VARIED);
    }

    @Benchmark
    public Spread.Bands thousandFlightsOfFortyFigures() {
        return new Spread(forty, 1, Workers.ALONE).fly(1000, share -> {});
    }

    /** Every leg of the demo act with our integrator, ends found. */
    @Benchmark
    public double legsOurs() {
        double sum = 0;
        Integrator integrator = integrator((leg, tS, inLegS, y) -> {});
        for (Leg leg : legs.keySet()) {
            sum += integrator.fly(leg, 0).moment().tS();
        }
        return sum;
    }

    /** The same legs for the same times on Dormand–Prince 8(5,3) at 1e-8; it is given the ends and need not find them. */
    @Benchmark
    public double legsHipparchus() {
        double sum = 0;
        for (Map.Entry<Leg, Double> entry : legs.entrySet()) {
            if (entry.getValue() > SHORTEST_S) {
                sum += integrated(entry.getKey(), entry.getValue())[2];
            }
        }
        return sum;
    }

    private static Integrator integrator(Integrator.Watcher watcher) {
        return new Integrator(Integrator.NO_GRID, Integrator.FINE, watcher);
    }

    private static double[] integrated(Leg leg, double seconds) {
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-9, 10, 1e-8, 1e-8);
        return integrator
                .integrate(equations(leg), new ODEState(0, leg.start()), seconds)
                .getPrimaryState();
    }

    private static OrdinaryDifferentialEquation equations(Leg leg) {
        int dimension = leg.start().length;
        return new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return dimension;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                double[] dy = new double[dimension];
                leg.rates(t, y, dy);
                return dy;
            }
        };
    }
}
