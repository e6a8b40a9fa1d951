package crowdline.arrange;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.flight.body.FlightState;
import crowdline.layout.Area;
import crowdline.layout.LaidOut;
import crowdline.layout.Layout;
import crowdline.layout.Piece;
import crowdline.layout.Transit;
import crowdline.layout.Wish;
import crowdline.list.line.FigureList;
import crowdline.measure.Units;
import crowdline.show.Venue;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.bounds.Most;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.show.figure.Placing.Heading;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Makes the figures of an act from what was asked for: drawn for the aircraft, joined by transits, timed. */
public final class Arranger {
    /** Where it could be, for something that nothing is known of. */
    private static final String TRANSIT = "reposition";

    private static final double SECONDS = 60;

    private final Catalogue catalogue;

    public Arranger(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The lines of a list as figures, still without elements or times. */
    public List<Figure> figures(FigureList list) {
        return new AskedFigures(catalogue).of(list);
    }

    /**
     * Figures of something that is only timed: a helicopter, a formation, parachutists.
     *
     * @param minutes how long all of them take, which those share whose time nobody told; null if nobody said
     */
    public Arranged timed(List<Figure> asked, @Nullable Double minutes) {
        List<Double> times = UsualTimes.of(asked, minutes == null ? null : minutes * SECONDS);
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            figures.add(with(asked.get(i), null, times.get(i), null));
        }
        return new Arranged(null, figures, times, List.of());
    }

    /**
     * Figures flown by an airframe.
     *
     * @param asked each with what was asked of it; transits among them are left out and found anew
     */
    public Arranged flown(List<Figure> asked, Airframe airframe, Venue.Limits limits, Air air) {
        return flown(asked, Set.of(), airframe, limits, air);
    }

    /**
     * Figures flown by an airframe, some of which are drawn already: another variant flies them.
     *
     * @param drawn ids of those that keep the elements they have
     */
    public Arranged flown(List<Figure> asked, Set<String> drawn, Airframe airframe, Venue.Limits limits, Air air) {
        FigureTrial trial = new FigureTrial(airframe, air);
        Area area = Area.of(limits, Units.mpsFromKt(airframe.usual().passKt()), trial.stallMps(0));
        Map<String, Figure> byId = new HashMap<>();
        List<Wish> wishes = new ArrayList<>();
        Stretching stretching = new Stretching(trial, area.baseM());
        List<LaidOut.Finding> findings = new ArrayList<>();
        Possible possible = new Possible(airframe, findings);
        for (Figure figure : asked) {
            if (!figure.transit()) {
                byId.put(figure.id(), figure);
                Asked told = figure.asked();
                boolean own = told == null || told.ownShape() || drawn.contains(figure.id());
                Asked asking = possible.of(figure.id(), catalogue.nameOf(figure), told == null ? typed(figure) : told);
                if (!own) {
                    tooOften(figure, asking, findings);
                }
                Wish wish = Wishes.of(figure, asking, own ? own(figure) : null, catalogue);
                Double seconds = wish.seconds();
                wishes.add(
                        own || seconds == null || !wish.isFlown()
                                ? wish
                                : lasting(seconds, wish, figure, asking, stretching, findings));
            }
        }
        HandedOn handedOn = new HandedOn(names(asked), trial, findings);
        LaidOut laid = laid(handedOn.wishes(wishes), trial, area);
        Written written = new Written(byId, !(airframe.engine() instanceof Engine.None));
        written.write(handedOn.pieces(laid.pieces()));
        findings.addAll(laid.findings());
        return new Arranged(placing(laid.entry()), written.figures, written.times, findings);
    }

    /** What each figure is in the catalogue, by their ids. */
    private Map<String, String> names(List<Figure> asked) {
        Map<String, String> names = new HashMap<>();
        for (Figure figure : asked) {
            catalogue.find(figure.figure()).ifPresent(entry -> names.put(figure.id(), entry.name()));
        }
        return names;
    }

    private static LaidOut laid(List<Wish> wishes, FigureTrial trial, Area area) {
        HalfRolls rolls = HalfRolls.of(wishes);
        LaidOut laid = new Layout(trial, area).of(rolls.wishes());
        return rolls.apart(laid.pieces(), trial)
                .map(pieces -> new LaidOut(laid.entry(), pieces, laid.findings()))
                .orElseGet(() -> new Layout(trial, area).of(wishes));
    }

    /** What is asked for more often than one figure of a show can hold is drawn as often as it can, which is found. */
    private void tooOften(Figure figure, Asked told, List<LaidOut.Finding> findings) {
        List<Element> usual =
                catalogue.find(figure.figure()).map(CatalogueEntry::elements).orElse(List.of());
        int drawn = Counted.cutTo(usual, told.count());
        if (drawn > 0 && !usual.isEmpty()) {
            findings.add(new LaidOut.Finding(
                    figure.id(),
                    String.format(
                            Locale.UK,
                            "%s is asked for %.0f times and drawn %d times, as often as one figure can hold; write the rest as"
                                    + " figures of their own",
                            catalogue.nameOf(figure),
                            told.count(),
                            drawn)));
        }
    }

    /** The figure drawn so that it takes the time told; as usual where it cannot, which is found. */
    private Wish lasting(
            double seconds,
            Wish wish,
            Figure figure,
            Asked told,
            Stretching stretching,
            List<LaidOut.Finding> findings) {
        List<Element> drawn = stretching.of(wish.elements(), seconds, told, wish.enters());
        if (drawn == null) {
            findings.add(new LaidOut.Finding(
                    wish.id(),
                    String.format(
                            Locale.UK,
                            "%s cannot be flown in %.0f s: only its straight lines and its slow rolls can be longer or"
                                    + " shorter, so it takes its usual time",
                            wish.name(),
                            seconds)));
            return wish;
        }
        return Wishes.of(figure, told, drawn, catalogue);
    }

    /** What is asked of a figure that somebody typed: nothing but its time, if it has one. */
    private static Asked typed(Figure figure) {
        Asked plain = Asked.plainly(figure.figure());
        return figure.durationS() == null ? plain : plain.withSeconds(figure.durationS());
    }

    /** What is flown in it as it stands; nothing if it only takes its time, null for what the catalogue has. */
    private static @Nullable List<Element> own(Figure figure) {
        return figure.durationS() == null ? figure.elements() : List.of();
    }

    /** The pieces of a layout as figures of a show. */
    private static final class Written {
        private final Map<String, Figure> asked;
        private final boolean engine;
        private final Set<String> taken;
        private final List<Figure> figures = new ArrayList<>();
        private final List<Double> times = new ArrayList<>();

        Written(Map<String, Figure> asked, boolean engine) {
            this.asked = asked;
            this.engine = engine;
            taken = new HashSet<>(asked.keySet());
        }

        void write(List<Piece> pieces) {
            for (int i = 0; i < pieces.size(); ) {
                int next = i + 1;
                if (pieces.get(i).isTransit()) {
                    int elements = pieces.get(i).elements().size();
                    while (next < pieces.size()
                            && isSame(pieces.get(i), pieces.get(next))
                            && elements + pieces.get(next).elements().size() <= Most.ELEMENTS.entries()) {
                        elements += pieces.get(next).elements().size();
                        next++;
                    }
                    transit(
                            pieces.subList(i, next),
                            next < pieces.size() ? pieces.get(next).wish() : null);
                } else {
                    figure(pieces.get(i));
                }
                i = next;
            }
        }

        /** Round once and round again is one coming round, whether it climbs in it or not. */
        private static boolean isSame(Piece first, Piece next) {
            return first.turns() && next.turns();
        }

        /** @param to the figure it leads to, or null if another transit or nothing follows */
        private void transit(List<Piece> pieces, @Nullable Wish to) {
            times.add(pieces.stream().mapToDouble(Piece::seconds).sum());
            Piece first = pieces.get(0);
            Piece last = pieces.get(pieces.size() - 1);
            Figure figure = to == null ? null : asked.get(to.id());
            TransitWords words = TransitWords.of(
                    first.equals(last) ? Objects.requireNonNull(first.transit()) : Transit.TURNS_BACK,
                    first,
                    last,
                    engine,
                    figure == null ? "" : figure.figure());
            List<Element> elements =
                    pieces.stream().flatMap(piece -> piece.elements().stream()).toList();
            figures.add(new Figure(
                    FreshId.of(to == null ? words.title() : "to " + to.id(), taken),
                    TRANSIT,
                    words.title(),
                    words.look(),
                    elements,
                    null,
                    null,
                    null,
                    null,
                    true,
                    List.of(),
                    List.of()));
        }

        private void figure(Piece piece) {
            times.add(piece.seconds());
            Figure figure = Objects.requireNonNull(
                    asked.get(Objects.requireNonNull(piece.wish()).id()));
            if (piece.elements().isEmpty()) {
                Placing exit = piece.to().equals(piece.from()) ? null : placing(piece.to());
                figures.add(with(figure, null, piece.seconds(), exit));
            } else {
                figures.add(with(figure, piece.elements(), null, null));
            }
        }
    }

    private static Figure with(
            Figure figure, @Nullable List<Element> elements, @Nullable Double seconds, @Nullable Placing exit) {
        return new Figure(
                figure.id(),
                figure.figure(),
                figure.title(),
                figure.look(),
                elements,
                seconds,
                exit,
                null,
                figure.asked(),
                figure.transit(),
                figure.quiets(),
                figure.remarks());
    }

    private static Placing placing(FlightState state) {
        return new Placing(
                Math.rint(state.place().x()),
                Math.rint(state.place().y()),
                Math.rint(Units.ftFromM(state.place().z())),
                Math.max(Math.rint(Units.ktFromMps(state.speedMps()) * 10) / 10, 1),
                state.toRight() ? Heading.RIGHT : Heading.LEFT);
    }
}
