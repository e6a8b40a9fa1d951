package crowdline.console.prepare.glance;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.prepare.field.Numbers;
import crowdline.console.prepare.glance.PrepareView.Curves;
import crowdline.console.prepare.glance.PrepareView.FigureEdit;
import crowdline.console.prepare.glance.PrepareView.PinView;
import crowdline.console.prepare.glance.PrepareView.PlaceNow;
import crowdline.console.prepare.glance.PrepareView.ShapeView;
import crowdline.console.prepare.glance.PrepareView.WrittenView;
import crowdline.console.theme.Tone;
import crowdline.edit.shape.Shape;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.leg.Sample;
import crowdline.loaded.ActOrigins.What;
import crowdline.loaded.NotKept;
import crowdline.loaded.Undrawn;
import crowdline.measure.Units;
import crowdline.show.Act;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What can be told of a figure, what is told and what is assumed, and how its flight goes from moment to moment. */
final class FigureEdits {
    private static final Mark TOLD = new Mark(Form.DISC, Tone.GOOD, "told");
    private static final Mark ASSUMED = new Mark(Form.RING, Tone.CALM, "assumed");
    private static final Mark TIMED = new Mark(Form.CLOCK, Tone.GOOD, "timed");
    /** As many as can be told apart in a picture some hundred pixels wide. */
    private static final int MOST_POINTS = 80;

    private static final String TRANSIT = "Flown between two figures, so its shape follows from them.";
    private static final String ONLY_TIMED = "What flies this act is only timed, so its figures have no shape.";

    private FigureEdits() {}

    /**
     * How a figure is edited.
     *
     * @param timedS how long it took in passes, or null if it was never timed
     */
    static FigureEdit of(Catalogue all, Act act, Figure figure, Optional<Flight> flight, @Nullable Double timedS) {
        Asked asked = figure.asked();
        ShapeView shape = shape(all, figure, flight.isPresent());
        if (asked == null || figure.transit()) {
            return new FigureEdit(figure.id(), figure.transit(), List.of(), null, shape, WrittenView.NONE);
        }
        List<NotKept> notKept = flight.map(f -> NotKept.of(figure, f)).orElse(List.of());
        boolean flown = act.entry() != null;
        List<PinView> pins = new ArrayList<>();
        for (PinField field : PinField.values()) {
            if (field == PinField.BEGINS
                    ? asked.beginsS() == null
                    : flown ? asked.ownShape() && field.isOfCatalogue() : field != PinField.SECONDS) {
                continue;
            }
            String told = field.told(asked);
            String value = told.isEmpty() ? value(field, figure, flight, timedS) : told;
            boolean byWatch = field == PinField.SECONDS && told.isEmpty() && timedS != null;
            Mark mark = told.isEmpty() ? (byWatch ? TIMED : ASSUMED) : told(field, notKept);
            pins.add(new PinView(field, told, value, mark));
        }
        return new FigureEdit(
                figure.id(),
                false,
                pins,
                flown ? place(flight, figure.id()) : null,
                shape,
                written(asked, flight.flatMap(f -> f.figure(figure.id()))));
    }

    /** Told and flown so, or how it is flown instead. */
    private static Mark told(PinField field, List<NotKept> notKept) {
        return notKept.stream()
                .filter(not -> field == of(not.what()))
                .findFirst()
                .map(not -> new Mark(Form.DIAMOND, Tone.CAUTION, "flown: " + not.flownWords()))
                .orElse(TOLD);
    }

    private static PinField of(What what) {
        return what == What.ENTRY_SPEED ? PinField.SPEED : what == What.HEIGHT ? PinField.HEIGHT : PinField.SECONDS;
    }

    private static WrittenView written(Asked asked, Optional<FigureFlight> flown) {
        if (asked.isOfLog()) {
            return WrittenView.NONE;
        }
        return new WrittenView(
                asked.written(),
                Undrawn.quoted(flown.map(f -> Undrawn.of(asked, f)).orElse(List.of())));
    }

    /** As it is drawn for the aircraft; as the catalogue has it where it is drawn only when it is flown. */
    private static ShapeView shape(Catalogue all, Figure figure, boolean isFlown) {
        List<Element> elements = figure.elements();
        List<Element> shown = elements != null
                ? elements
                : figure.durationS() != null
                        ? List.of()
                        : all.find(figure.figure())
                                .map(CatalogueEntry::elements)
                                .orElse(List.of());
        String why = figure.transit() ? TRANSIT : isFlown ? "" : ONLY_TIMED;
        return new ShapeView(figure.hasOwnShape(), new Shape(shown), why);
    }

    private static String value(PinField field, Figure figure, Optional<Flight> flight, @Nullable Double timedS) {
        if (field == PinField.SECONDS && timedS != null) {
            return Numbers.text((double) Math.round(timedS));
        }
        Optional<FigureFlight> flown = flight.flatMap(f -> f.figure(figure.id()));
        Optional<Sample> first = flight.flatMap(f -> flown.flatMap(
                g -> f.samples().stream().filter(s -> s.tS() >= g.startS()).findFirst()));
        return switch (field) {
            case HEIGHT -> first.map(s -> whole(Units.ftFromM(s.place().z()))).orElse("");
            case SPEED -> first.map(s -> whole(Units.ktFromMps(s.speedMps()))).orElse("");
            case SECONDS -> flown.map(f -> whole(f.durationS())).orElse("");
            case WAY -> first.map(s -> s.nose().x() < 0 ? "left" : "right").orElse("");
            case PLACE -> {
                PlaceNow now = place(flight, figure.id());
                yield now == null ? "" : PinField.along(Math.round(now.alongM() / 10) * 10.0);
            }
            case SIDE, TIMES, BEGINS -> "";
        };
    }

    private static @Nullable PlaceNow place(Optional<Flight> flight, String figureId) {
        FigureFlight flown = flight.flatMap(f -> f.figure(figureId)).orElse(null);
        List<Sample> samples = flown == null || !flown.simulated() ? List.of() : samples(flight.orElseThrow(), flown);
        if (flown == null || samples.isEmpty()) {
            return null;
        }
        var along = samples.stream().mapToDouble(s -> s.place().x()).summaryStatistics();
        return new PlaceNow(
                (along.getMin() + along.getMax()) / 2,
                Units.ftFromM(samples.get(0).place().z()),
                flown.durationS());
    }

    private static String whole(double value) {
        return String.format(Locale.UK, "%.0f", value);
    }

    private static List<Sample> samples(Flight flight, FigureFlight figure) {
        return flight.samples().stream()
                .filter(s -> s.tS() >= figure.startS() && s.tS() <= figure.endS())
                .toList();
    }

    /** Speed, height and load over a figure, at so many moments as can be seen. */
    static Curves curves(Optional<Flight> flight, String figureId) {
        FigureFlight figure = flight.flatMap(f -> f.figure(figureId)).orElse(null);
        if (figure == null || !figure.simulated()) {
            return Curves.NONE;
        }
        List<Sample> samples = samples(flight.orElseThrow(), figure);
        List<Double> seconds = new ArrayList<>();
        List<Double> kt = new ArrayList<>();
        List<Double> ft = new ArrayList<>();
        List<Double> g = new ArrayList<>();
        int step = Math.max(1, samples.size() / MOST_POINTS);
        for (int i = 0; i < samples.size(); i += step) {
            Sample s = samples.get(i);
            seconds.add(s.tS() - figure.startS());
            kt.add(Units.ktFromMps(s.speedMps()));
            ft.add(Units.ftFromM(s.place().z()));
            g.add(s.g());
        }
        return new Curves(seconds, kt, ft, g);
    }
}
