package crowdline.sight;

import crowdline.flight.Flight;
import crowdline.flight.Predictor;
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
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.sight.SideView.Craft;
import crowdline.sight.SideView.Spot;
import crowdline.sight.SideView.Stretch;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;

/**
 * Draws a catalogue's figures by flying each once, alone, in still air, with a strong aeroplane that never was. Only the
 * shape is shown, so heights are counted from the figure's lowest point.
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

    public FigureAlone(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** What the figure looks like from the crowd, the aeroplane at its beginning; nothing for one that is only timed. */
    public SideView of(CatalogueEntry entry) {
        if (entry.elements().isEmpty()) {
            return SideView.NONE;
        }
        double kt = entryKt(entry);
        Variant variant = new Variant("alone", null, List.of("f"));
        Act act = new Act(
                "a",
                entry.name(),
                "p",
                AEROPLANE.id(),
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
                List.of(AEROPLANE),
                List.of(),
                List.of(act),
                List.of(),
                List.of(),
                Map.of(),
                null);
        return drawn(new Predictor(show, catalogue, act, variant).predict());
    }

    private static double entryKt(CatalogueEntry entry) {
        EntrySpeed enters = entry.enters();
        Double usualKt = enters == null ? entry.minEntryKt() : enters.kt(AEROPLANE.usual(), AEROPLANE.stallKt());
        return usualKt == null ? ENTRY_KT : usualKt;
    }

    private static SideView drawn(Flight flight) {
        List<Spot> spots = flight.samples().stream()
                .map(s -> new Spot(s.place().x(), s.place().z()))
                .toList();
        if (spots.size() < 2) {
            return SideView.NONE;
        }
        double low = spots.stream().mapToDouble(Spot::heightM).min().orElse(0);
        double high = spots.stream().mapToDouble(Spot::heightM).max().orElse(0);
        double left = spots.stream().mapToDouble(Spot::alongM).min().orElse(0);
        double right = spots.stream().mapToDouble(Spot::alongM).max().orElse(0);
        double under = UNDER * Math.max(high - low, right - left);
        List<Spot> moved = spots.stream()
                .map(s -> new Spot(s.alongM() - (left + right) / 2, s.heightM() - low + under))
                .toList();
        Spot a = moved.get(0);
        Spot b = moved.get(1);
        double pathRad = Math.atan2(b.heightM() - a.heightM(), b.alongM() - a.alongM());
        return new SideView(List.of(new Stretch(moved)), 0, Craft.predicted(a, pathRad, 0));
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
