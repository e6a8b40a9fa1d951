package crowdline.sight;

import crowdline.flight.Flight;
import crowdline.flight.FlightFinding;
import crowdline.flight.Predictor;
import crowdline.flight.body.Vec;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.catalogue.EntrySpeed;
import crowdline.show.check.Severity;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.sight.picture.Flown;
import crowdline.sight.sketch.Sketches;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;

/**
 * Draws a catalogue's figures by flying each once, alone, in still air. Only the shape is shown, so heights are counted from
 * the figure's lowest point.
 */
public final class FigureAlone {
    /** Where a figure begins, feet; tuned: so high that every figure of the catalogue ends above the ground. */
    private static final double START_FT = 2500;
    /** Of figures with no usual entry speed, knots. */
    private static final double ENTRY_KT = 110;
    /** Room under the drawing as a share of its size, so that no line lies on the ground. */
    private static final double UNDER = 0.12;

    private static final Airframe AEROPLANE = monoplane();

    private final Catalogue catalogue;
    private final Airframe airframe;

    /** With a strong aeroplane that never was. */
    public FigureAlone(Catalogue catalogue) {
        this(catalogue, AEROPLANE);
    }

    public FigureAlone(Catalogue catalogue, Airframe airframe) {
        this.catalogue = catalogue;
        this.airframe = airframe;
    }

    /** What flies them. */
    public Airframe airframe() {
        return airframe;
    }

    /**
     * How a figure is flown.
     *
     * @param flown in the middle before the crowd and just above the ground; sketched for one that is only timed, or nothing;
     *     nothing for one that this aircraft cannot fly
     * @param lack why it cannot, as a sentence; empty if it can
     */
    public record Outcome(Flown flown, String lack) {}

    /** Flies a figure. */
    public Outcome fly(CatalogueEntry entry) {
        if (entry.elements().isEmpty()) {
            return new Outcome(Sketches.of(entry.name()).orElse(Flown.NONE), "");
        }
        double kt = entryKt(entry);
        Variant variant = new Variant("alone", null, List.of("f"));
        Act act = new Act(
                "a",
                entry.name(),
                "p",
                airframe.id(),
                LocalTime.NOON,
                1,
                new Placing(0, 0, START_FT, kt, Placing.Heading.RIGHT),
                List.of(Figure.of("f", entry.name())),
                List.of(variant),
                List.of());
        Show show = new Show(
                "Glossary",
                LocalDate.EPOCH,
                new Venue("Nowhere", 0, 0, 0, 0, 1, ZoneOffset.UTC, Venue.Limits.NONE),
                DayAir.STANDARD,
                List.of(airframe),
                List.of(),
                List.of(act),
                List.of());
        Flight flight = new Predictor(show, catalogue, act, variant).predict();
        if (!flight.figures().get(0).completed()) {
            return new Outcome(
                    Flown.NONE,
                    flight.findings().stream()
                            .filter(f -> f.severity() == Severity.ERROR)
                            .map(FlightFinding::message)
                            .findFirst()
                            .orElse("It cannot be flown with this aircraft."));
        }
        Flown leader = low(Captions.flown(flight.figures().get(0), flight.samples()));
        return new Outcome(Sketches.inCompany(entry.name(), leader), "");
    }

    /** The same just above the ground and in the middle. */
    private static Flown low(Flown flown) {
        if (flown.isEmpty()) {
            return flown;
        }
        Flown.Reach reach = flown.reach();
        Vec size = reach.size();
        double under = UNDER * Math.max(size.z(), size.x());
        return flown.movedBy(
                -(reach.least().x() + reach.most().x()) / 2,
                0,
                under - reach.least().z());
    }

    private double entryKt(CatalogueEntry entry) {
        EntrySpeed enters = entry.enters();
        Double usualKt = enters == null ? entry.minEntryKt() : enters.kt(airframe.usual(), airframe.stallKt());
        return usualKt == null ? ENTRY_KT : usualKt;
    }

    /** A made-up strong aerobatic monoplane; judgement, no source, tuned to fly every entry. */
    private static Airframe monoplane() {
        return new Airframe(
                "m",
                "a strong monoplane",
                null,
                new Engine.Propeller(224, 2, 2700, Engine.Turns.CLOCKWISE, Engine.PropellerType.CONSTANT_SPEED),
                820,
                10.4,
                7.6,
                6.9,
                0.031,
                0.072,
                1.5,
                1.4,
                400,
                150,
                420,
                180,
                350,
                1.7,
                400,
                10,
                -10,
                220);
    }
}
