package crowdline.flight.body;

import crowdline.flight.Predictor;
import crowdline.flight.air.Atmosphere;
import crowdline.flight.air.Wind;
import crowdline.flight.leg.CannotFly;
import crowdline.flight.leg.ElementFlyer;
import crowdline.flight.leg.Forces;
import crowdline.flight.leg.Integrator;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.storage.show.KindsFile;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;

/** Flies single elements and legs for tests, in air and with bodies made for the purpose. */
public final class Rig {
    public static final Atmosphere SEA_LEVEL = z -> 1.225;
    public static final Atmosphere VACUUM = z -> 1e-12;

    private Rig() {}

    /** A body without power whose wing never stalls. */
    public static Body body(double massKg, double areaM2, double cd0, double k) {
        return body(massKg, areaM2, cd0, k, NoDrive.NONE);
    }

    public static Body body(double massKg, double areaM2, double cd0, double k, Drive drive) {
        return new Body(
                massKg,
                areaM2,
                8,
                6,
                drive,
                cd0,
                k,
                1e14,
                1e14,
                Math.toRadians(200),
                60,
                Math.toRadians(400),
                Math.toRadians(150),
                40,
                1.8,
                Math.toRadians(400),
                10,
                -10,
                200);
    }

    /** A body in no air at all: only gravity and the force across the path are left, as when thrust equals drag. */
    public static Forces dragFree() {
        return new Forces(body(500, 9, 0, 0), VACUUM, Wind.CALM);
    }

    public static FlightState level(double speedMps, double heightM) {
        return new FlightState(0, new Vec(0, 0, heightM), speedMps, new Vec(1, 0, 0), Vec.UP);
    }

    public static FlightState fly(Forces forces, FlightState from, Element... elements) {
        return fly(forces, unwatched(), from, elements);
    }

    /** As the prediction flies, with nobody looking on the way. */
    public static Integrator unwatched() {
        return new Integrator(Integrator.NO_GRID, Integrator.FINE, (leg, tS, legS, y) -> {});
    }

    /** As the prediction flies, looked at every hundredth of a second. */
    public static Integrator watched(Integrator.Watcher watcher) {
        return new Integrator(0.01, Integrator.FINE, watcher);
    }

    public static FlightState fly(Forces forces, Integrator integrator, FlightState from, Element... elements) {
        ElementFlyer flyer = new ElementFlyer(forces, integrator, Variation.NONE);
        FlightState at = from;
        try {
            for (Element element : elements) {
                at = flyer.fly(element, at);
            }
        } catch (CannotFly e) {
            throw new AssertionError(e.why(), e);
        }
        return at;
    }

    public static Element pullG(double degrees, double g) {
        return new Element.Arc(Element.Way.PULL, degrees, null, Element.Size.LOAD_G, g, 1);
    }

    public static Element pullRound(double degrees, double radiusM) {
        return new Element.Arc(Element.Way.PULL, degrees, null, Element.Size.RADIUS_M, radiusM, 1);
    }

    public static Element line(Element.Until until, double value) {
        return new Element.Line(until, value, 1);
    }

    /** An invented light biplane of 180 hp; plausible numbers for its class. */
    public static Airframe biplane() {
        return new Airframe(
                "biplane",
                "Invented biplane",
                null,
                new Engine.Propeller(134, 1.93, 2700, Engine.Turns.CLOCKWISE, Engine.PropellerType.CONSTANT_SPEED),
                475,
                9.15,
                5.28,
                4.8,
                0.045,
                0.11,
                1.3,
                1.1,
                200,
                120,
                420,
                200,
                250,
                1.8,
                400,
                6,
                -4,
                175);
    }

    /** An invented 300 hp monoplane; plausible numbers for its class. */
    public static Airframe monoplane() {
        return new Airframe(
                "monoplane",
                "Invented monoplane",
                null,
                new Engine.Propeller(223.7, 2.0, 2700, Engine.Turns.CLOCKWISE, Engine.PropellerType.CONSTANT_SPEED),
                869.6,
                10.44,
                7.5,
                6.9,
                0.030,
                0.075,
                1.5,
                1.4,
                400,
                150,
                500,
                200,
                300,
                1.6,
                450,
                10,
                -10,
                220);
    }

    /** An invented vintage trainer of 145 hp; plausible numbers for its class, spin as the handbook has it. */
    public static Airframe trainer() {
        return new Airframe(
                "trainer",
                "Invented trainer",
                null,
                new Engine.Propeller(108, 2.0, 2200, Engine.Turns.CLOCKWISE, Engine.PropellerType.CONSTANT_SPEED),
                850,
                16,
                10.46,
                7.75,
                0.033,
                0.06,
                1.6,
                1.1,
                75,
                110,
                200,
                120,
                500,
                2.2,
                250,
                6,
                -3,
                155);
    }

    /** An aircraft with the shipped numbers of a kind. */
    public static Airframe kind(String name) {
        return KindsFile.shipped().all().stream()
                .filter(kind -> kind.name().equals(name))
                .findFirst()
                .orElseThrow()
                .airframe("kind", name, Sliders.TYPICAL);
    }

    /** The speed at which an aircraft usually begins a figure, knots. */
    public static double entersKt(CatalogueEntry entry, Airframe airframe) {
        Double kt = Objects.requireNonNull(entry.enters()).kt(airframe.usual(), airframe.stallKt());
        return Objects.requireNonNull(kt);
    }

    public static Forces seaLevel(Airframe airframe) {
        return new Forces(Body.of(airframe, Variation.NONE), SEA_LEVEL, Wind.CALM);
    }

    /** The light biplane flying these figures one after another, level and to the right at first. */
    public static Predictor predictor(Catalogue catalogue, double heightFt, double kt, Figure... figures) {
        return predictor(catalogue, heightFt, kt, DayAir.STANDARD, figures);
    }

    /** The same in other air; the A-axis points east. */
    public static Predictor predictor(Catalogue catalogue, double heightFt, double kt, DayAir air, Figure... figures) {
        return predictor(biplane(), catalogue, heightFt, kt, air, figures);
    }

    /** Another airframe flying these figures one after another in any air, level and to the right at first. */
    public static Predictor predictor(
            Airframe airframe, Catalogue catalogue, double heightFt, double kt, DayAir air, Figure... figures) {
        List<Figure> order = List.of(figures);
        Act act = new Act(
                "act",
                "Test act",
                "pilot",
                airframe.id(),
                LocalTime.NOON,
                10,
                new Placing(0, 0, heightFt, kt, Placing.Heading.RIGHT),
                order,
                List.of(new Variant("full", null, order.stream().map(Figure::id).toList())),
                List.of());
        Venue venue = new Venue("Nowhere", 52, 0, 0, 90, 200, ZoneId.of("UTC"), Venue.Limits.NONE);
        Show show = new Show(
                "Test", LocalDate.of(2027, 6, 1), venue, air, List.of(airframe), List.of(), List.of(act), List.of());
        return new Predictor(show, catalogue, act, act.variants().get(0));
    }
}
