package crowdline.console.prepare.glance;

import crowdline.console.paint.FitMark;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Seconds;
import crowdline.console.passes.PassesView;
import crowdline.console.path.SkyView;
import crowdline.console.prepare.field.Numbers;
import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.Curves;
import crowdline.console.prepare.glance.PrepareView.FigureEdit;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.console.prepare.glance.PrepareView.FindingView;
import crowdline.console.prepare.glance.PrepareView.RemarkView;
import crowdline.console.prepare.glance.PrepareView.VariantView;
import crowdline.console.theme.Tone;
import crowdline.flight.FigureFlight;
import crowdline.flight.FigureNames;
import crowdline.flight.Flight;
import crowdline.loaded.ShowLookup;
import crowdline.measure.Units;
import crowdline.patter.Fit;
import crowdline.patter.PatterRules;
import crowdline.patter.Room;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.check.LocatedFinding;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.sight.ActSheet;
import crowdline.speech.pace.SpokenTime;
import crowdline.speech.pace.Voices;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Puts a show, its prediction, its times and its findings into the words of the Prepare place. */
public final class PreparePresenter {
    /** As the command line has it; in the window all else stands between the marks of print. */
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");

    private static final String UNKNOWN = "–";
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.UK);

    /** What is predicted for a variant of an act. */
    public interface Predictions {
        Optional<Flight> flight(Act act, Variant variant);

        Optional<ActTimes> times(Act act, Variant variant);

        /** How a figure that is only timed usually looks; empty where nobody knows. */
        default SkyView sketch(Act act, String figureId) {
            return SkyView.NONE;
        }

        /** Its passes and what was learned from them. */
        default PassesView passes(Act act, Variant variant) {
            return PassesView.NONE;
        }
    }

    private static final Comparator<LocatedFinding> WORST_FIRST =
            Comparator.comparing(LocatedFinding::severity).thenComparing(LocatedFinding::line);

    private final Catalogue catalogue;
    private final Voices voices;
    private final Predictions predictions;

    public PreparePresenter(Catalogue catalogue, Voices voices, Predictions predictions) {
        this.catalogue = catalogue;
        this.voices = voices;
        this.predictions = predictions;
    }

    public PrepareView view(Show show, List<LocatedFinding> findings) {
        Catalogue all = catalogue.with(show.figures());
        return new PrepareView(
                show.title(),
                // The day stands first: a long place is cut.
                DAY.format(show.date()) + ", " + show.venue().name(),
                air(show.air()),
                show.acts().stream().map(a -> act(show, all, a)).toList(),
                findings.stream()
                        .sorted(WORST_FIRST)
                        .map(found ->
                                finding(found, FileKeys.inWords(found.message()), FindingPlace.of(found, show, all)))
                        .toList());
    }

    /** A file that is no usable show: only what was found in it, by its keys, as it must be mended there. */
    public static PrepareView unusable(String name, List<LocatedFinding> findings) {
        return new PrepareView(
                name,
                "cannot be used until the errors listed are fixed",
                "",
                List.of(),
                findings.stream()
                        .sorted(WORST_FIRST)
                        .map(found -> finding(found, found.message(), found.line() > 0 ? "line " + found.line() : ""))
                        .toList());
    }

    private static String air(DayAir air) {
        Double cloudBaseFt = air.cloudBaseFt();
        String wind = air.windKt() == 0
                ? "no wind"
                : String.format(Locale.UK, "wind %.0f° %.0f kt", air.windFromDeg(), air.windKt());
        String aloft = air.windsAloft().isEmpty() ? "" : ", other winds higher up";
        String cloud = cloudBaseFt == null
                ? "no cloud base given"
                : String.format(Locale.UK, "cloud base %,.0f ft", cloudBaseFt);
        return String.format(Locale.UK, "%.0f hPa, %.0f °C, ", air.qnhHpa(), air.temperatureC()) + wind + aloft + ", "
                + cloud;
    }

    private static FindingView finding(LocatedFinding found, String words, String where) {
        Mark mark = switch (found.severity()) {
            case ERROR -> new Mark(Form.STOP, Tone.ALARM, "Must fix");
            case WARNING -> new Mark(Form.DIAMOND, Tone.CAUTION, "Should fix");
            case NOTE -> new Mark(Form.RING, Tone.CALM, "Note");
        };
        return new FindingView(mark, QUOTED.matcher(Written.begun(words)).replaceAll("“$1”"), where);
    }

    private ActView act(Show show, Catalogue all, Act act) {
        return new ActView(
                act.id(),
                act.title(),
                show.performer(act.performer()).map(p -> p.name()).orElse(act.performer()),
                show.aircraft(act.airframe()).map(a -> a.name()).orElse(act.airframe()),
                act.slotStart() + ", " + Numbers.text(act.slotMinutes()) + " min",
                act.variants().stream().map(v -> variant(show, all, act, v)).toList(),
                act.variantUnder(show.air().cloudBaseFt()).name());
    }

    private VariantView variant(Show show, Catalogue all, Act act, Variant variant) {
        Optional<Flight> flight = predictions.flight(act, variant);
        Optional<ActTimes> times = predictions.times(act, variant);
        PassesView passes = predictions.passes(act, variant);
        Map<String, String> unplaced = FigureNames.unplaced(all, act.inOrder(variant));
        List<FigureView> figures = new ArrayList<>();
        for (Figure figure : act.inOrder(variant)) {
            figures.add(figure(
                    all,
                    figure,
                    FigureEdits.of(all, act, figure, flight, timed(passes, figures.size(), figure, times)),
                    FigureEdits.curves(flight, figure.id()),
                    flight.flatMap(f -> f.figure(figure.id()))
                                    .filter(FigureFlight::simulated)
                                    .isPresent()
                            ? SkyView.NONE
                            : predictions.sketch(act, figure.id()),
                    flight.flatMap(f -> f.figure(figure.id()))
                            .map(FigureFlight::name)
                            .orElseGet(() -> unplaced.getOrDefault(figure.id(), all.nameOf(figure))),
                    flight.flatMap(f -> f.figure(figure.id())),
                    times.flatMap(t -> t.figures().stream()
                            .filter(x -> x.figureId().equals(figure.id()))
                            .findFirst())));
        }
        Double baseFt = variant.minCloudBaseFt();
        String total = figures.size()
                + (figures.size() == 1 ? " figure" : " figures")
                + times.map(t -> ", " + Seconds.planned(t.totalS()) + " min").orElse("");
        return new VariantView(
                variant.name(),
                baseFt,
                baseFt == null ? "any cloud base" : String.format(Locale.UK, "from %,.0f ft", baseFt),
                total,
                figures,
                flight.map(f -> ActSheet.of(f, show.venue().crowdToLineM(), show.outline(act)))
                        .orElse(ActSheet.NONE)
                        .path(-1),
                passes);
    }

    /** How long passes say that a figure takes, seconds; null if none taught it. */
    private static @Nullable Double timed(PassesView passes, int index, Figure figure, Optional<ActTimes> times) {
        boolean taught = index < passes.figures().size()
                && !passes.figures().get(index).passes().isEmpty();
        return !taught
                ? null
                : times.flatMap(t -> t.figures().stream()
                                .filter(x -> x.figureId().equals(figure.id()))
                                .findFirst())
                        .map(FigureTime::durationS)
                        .orElse(null);
    }

    private FigureView figure(
            Catalogue all,
            Figure figure,
            FigureEdit edit,
            Curves curves,
            SkyView sketch,
            String name,
            Optional<FigureFlight> flight,
            Optional<FigureTime> time) {
        Optional<CatalogueEntry> entry = all.find(figure.figure());
        String look = figure.look();
        Optional<FigureFlight> flown = flight.filter(FigureFlight::simulated);
        return new FigureView(
                edit,
                curves,
                sketch,
                name,
                look != null ? look : entry.map(CatalogueEntry::lookFor).orElse(""),
                time.map(t -> Seconds.planned(t.startS())).orElse(UNKNOWN),
                time.map(t -> String.format(Locale.UK, "%.0f s", t.durationS())).orElse(UNKNOWN),
                time.map(t -> between("%.0f", t.lowS(), t.highS()) + " s").orElse(UNKNOWN),
                flown.map(f -> String.format(Locale.UK, "%.0f", Units.ktFromMps(f.entryMps())))
                        .or(() -> told(figure, Asked::kt, "%.0f"))
                        .orElse(UNKNOWN),
                flown.map(f -> between("%,.0f", Units.ftFromM(f.lowestM()), Units.ftFromM(f.highestM())))
                        .or(() -> told(figure, Asked::heightFt, "%,.0f"))
                        .orElse(UNKNOWN),
                flown.map(f -> range(signed(f.leastG()), signed(f.greatestG()))).orElse(UNKNOWN),
                figure.remarks().stream().map(r -> remark(r, time)).toList());
    }

    /** What was told of a figure that is only timed. */
    private static Optional<String> told(Figure figure, Function<Asked, @Nullable Double> number, String form) {
        Asked asked = figure.asked();
        Double told = asked == null ? null : number.apply(asked);
        return told == null ? Optional.empty() : Optional.of(String.format(Locale.UK, form, told));
    }

    /** "12–14", or "12" where both read the same. */
    private static String between(String form, double low, double high) {
        String from = String.format(Locale.UK, form, low);
        String to = String.format(Locale.UK, form, high);
        return from.equals(to) ? from : from + "–" + to;
    }

    private static String range(String from, String to) {
        return from.equals(to) ? from : from + " to " + to;
    }

    public static String signed(double g) {
        // Without the sum a load just below nothing would read as minus nothing.
        return String.format(Locale.UK, "%+.1f", Math.round(g * 10) / 10.0 + 0.0)
                .replace('-', '−');
    }

    private RemarkView remark(Remark remark, Optional<FigureTime> lasts) {
        SpokenTime time = voices.time(remark, false);
        String takes = String.format(Locale.UK, "%.1f s", time.seconds());
        Optional<Room> room = lasts.map(l -> Room.of(remark, l, PatterRules.DEFAULT));
        return new RemarkView(
                ShowLookup.word(remark.kind()),
                remark.text(),
                time.seconds(),
                time.highS(),
                room.map(Room::likelyS).orElse(0.0),
                room.map(there -> FitMark.of(
                                Fit.of(time, there),
                                String.format(Locale.UK, ": %s of %.1f s", takes, there.likelyS())))
                        .orElseGet(() -> new Mark(Form.RING, Tone.CALM, takes)));
    }
}
