package crowdline.loaded;

import crowdline.flight.FigureNames;
import crowdline.flight.moment.FigureMoments;
import crowdline.live.now.Afterwards;
import crowdline.live.now.Shortened;
import crowdline.show.Act;
import crowdline.show.Performer;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.sight.ActSheet;
import crowdline.sight.picture.Flown;
import crowdline.speech.pace.Interpreted;
import crowdline.speech.pace.SpokenTime;
import crowdline.speech.pace.Voices;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The words of a show as the Live screen looks them up: names, sentences, remarks and how long they take. */
public final class ShowLookup {
    private final Show show;
    private final Catalogue catalogue;
    private final Map<String, Remark> remarks;
    private final Map<String, PieceOf> parts = new HashMap<>();
    private final Afterwards afterwards;
    private final Shortened shortened;
    private final Voices voices;
    private final BiFunction<Act, Variant, ActSheet> flights;
    private final Sights sights;
    private final Seen seen;
    private final Sketched sketched;

    /** A part of a longer piece: how it is called, and how long its answer takes, seconds. */
    private record PieceOf(String named, double answerS) {}

    /** What there is to see in a figure of a flight, in the time it is expected to last. */
    public interface Seen {
        /** Where nothing is known. */
        Seen NOTHING = (actId, variant, figureId) -> FigureMoments.timed(0);

        FigureMoments moments(String actId, String variant, String figureId);
    }

    /** Where the crowd looks as a figure of a flight begins; empty where that is not known. */
    public interface Sights {
        String where(String actId, String variant, String figureId);
    }

    /**
     * @param voices how long remarks take and who says them; asked at every look, so it should know the answer by then
     * @param flights the predicted path of an act in a variant; likewise
     */
    public ShowLookup(Show show, Catalogue catalogue, Voices voices, BiFunction<Act, Variant, ActSheet> flights) {
        this(show, catalogue, voices, flights, (act, variant, figure) -> "", Seen.NOTHING);
    }

    /** The same, with where to look and what there is to see. */
    public ShowLookup(
            Show show,
            Catalogue catalogue,
            Voices voices,
            BiFunction<Act, Variant, ActSheet> flights,
            Sights sights,
            Seen seen) {
        this(show, catalogue, voices, flights, sights, seen, new Sketched());
    }

    /** The same, with sketches that were drawn before. */
    ShowLookup(
            Show show,
            Catalogue catalogue,
            Voices voices,
            BiFunction<Act, Variant, ActSheet> flights,
            Sights sights,
            Seen seen,
            Sketched sketched) {
        this.sketched = sketched;
        this.sights = sights;
        this.seen = seen;
        this.show = show;
        this.catalogue = catalogue.with(show.figures());
        this.voices = voices;
        this.flights = flights;
        remarks = show.remarksById();
        show.gaps().pieces().forEach(this::piece);
        afterwards = new Afterwards(show);
        shortened = new Shortened(show);
    }

    private void piece(Piece piece) {
        int count = piece.parts().size();
        for (int i = 0; i < count; i++) {
            String place = count == 1 ? "" : ", " + (i + 1) + " of " + count;
            parts.put(
                    piece.remarkId(i),
                    new PieceOf(piece.title() + place, piece.parts().get(i).answerS()));
        }
    }

    public Show show() {
        return show;
    }

    /** Which of its remarks can be said only once their figure was flown. */
    public Afterwards afterwards() {
        return afterwards;
    }

    /** Which of its remarks are not true once a figure was dropped. */
    public Shortened shortened() {
        return shortened;
    }

    /** Whose hour the clocks of the venue show. */
    public ZoneId zone() {
        return show.venue().timeZone();
    }

    public Optional<Act> act(@Nullable String id) {
        return id == null ? Optional.empty() : show.act(id);
    }

    /** "Rosa Vent, Calder 200": who flies what. */
    public String who(Act act) {
        String performer = performer(act);
        String airframe = airframe(act);
        return performer.equals(airframe) ? performer : performer + ", " + airframe;
    }

    /** What of that the title of the act does not say already: "Rosa Vent", "Calder 200", both or nothing. */
    public String whoElse(Act act) {
        String title = act.title().toLowerCase(Locale.ROOT);
        return Stream.of(performer(act), airframe(act))
                .distinct()
                .filter(name -> !title.contains(name.toLowerCase(Locale.ROOT)))
                .collect(Collectors.joining(", "));
    }

    private String performer(Act act) {
        return show.performer(act.performer()).map(Performer::name).orElse(act.performer());
    }

    private String airframe(Act act) {
        return show.aircraft(act.airframe()).map(a -> a.name()).orElse(act.airframe());
    }

    /**
     * How a figure is called in a variant: its own title, else the catalogue's name, and which it is if the variant has two
     * of that name.
     */
    public String name(@Nullable Act act, @Nullable String variant, String figureId) {
        if (act == null) {
            return figureId;
        }
        return sheet(act.id(), variant)
                .name(figureId)
                .or(() -> Optional.ofNullable(variant)
                        .flatMap(act::variant)
                        .map(v ->
                                FigureNames.unplaced(catalogue, act.inOrder(v)).get(figureId)))
                .orElseGet(() -> figure(act, figureId).map(catalogue::nameOf).orElse(figureId));
    }

    /** The one sentence of what to look for, or empty. */
    public String look(@Nullable Act act, String figureId) {
        return figure(act, figureId)
                .map(f -> {
                    String look = f.look();
                    return look != null
                            ? look
                            : catalogue
                                    .find(f.figure())
                                    .map(CatalogueEntry::lookFor)
                                    .orElse("");
                })
                .orElse("");
    }

    /**
     * How a figure that is only timed usually looks, drawn and not computed for whoever flies it; nothing where nobody knows.
     * Not where it is, nor how large.
     */
    public Flown sketch(Act act, String figureId) {
        boolean isAeroplane =
                switch (sheet(act.id(), act.variants().get(0).name()).outline()) {
                    case MONOPLANE, BIPLANE, JET, GLIDER -> true;
                    case HELICOPTER, CANOPY, JUMPER -> false;
                };
        return figure(act, figureId)
                .flatMap(f -> catalogue.find(f.figure()))
                .filter(entry -> isAeroplane || entry.elements().isEmpty())
                .map(entry -> sketched.of(catalogue, entry))
                .map(flown -> isToTheLeft(act, figureId) ? flown.mirrored() : flown)
                .orElse(Flown.NONE);
    }

    /** A sketch flies to the right; what was told to fly to the left, or leads to where the act goes left, does not. */
    private boolean isToTheLeft(Act act, String figureId) {
        Figure figure = act.figure(figureId).orElseThrow();
        Asked asked = figure.asked();
        if (asked != null && asked.heading() != null) {
            return asked.heading() == Placing.Heading.LEFT;
        }
        Placing entry = act.entry();
        return entry != null
                && entry.heading() == Placing.Heading.LEFT
                && act.variants().stream().anyMatch(v -> v.order().get(0).equals(figureId));
    }

    public Optional<Figure> figure(@Nullable Act act, String figureId) {
        return act == null ? Optional.empty() : act.figure(figureId);
    }

    /** The remark with this id anywhere in the show. */
    public Optional<Remark> remark(String id) {
        return Optional.ofNullable(remarks.get(id));
    }

    /** How long a form of a remark takes its speaker, with the answer that is waited for. */
    public SpokenTime time(Remark remark, boolean shortForm) {
        SpokenTime said = voices.time(remark, shortForm);
        PieceOf part = parts.get(remark.id());
        return part == null || part.answerS() == 0
                ? said
                : said.plus(new SpokenTime(part.answerS(), part.answerS(), part.answerS()));
    }

    /** The name of who says a remark, if it is not whoever is at the console. */
    public Optional<String> other(Remark remark) {
        return voices.other(remark);
    }

    /** What is said in the other language where a remark is said in a form, if it is said today. */
    public Optional<Interpreted> interpreted(Remark remark, boolean shortForm) {
        return voices.interpreted(remark, shortForm);
    }

    /** Who speaks, and when one of them interprets. */
    public Voices voices() {
        return voices;
    }

    /** What sort of remark it is, in a word; of a part of a piece, which. */
    public String sort(Remark remark) {
        PieceOf part = parts.get(remark.id());
        return part == null ? word(remark.kind()) : part.named();
    }

    /** How long a form of the remark with this id takes this speaker; empty if there is no such remark. */
    public Optional<SpokenTime> time(String remarkId, RemarkForm form) {
        return remark(remarkId).map(r -> time(r, form == RemarkForm.SHORT));
    }

    /** The ids of what is said of a figure, its call among them. */
    public List<String> remarkIds(@Nullable String actId, @Nullable String figureId) {
        return figureId == null
                ? List.of()
                : figure(act(actId).orElse(null), figureId).stream()
                        .flatMap(f -> f.remarks().stream())
                        .map(Remark::id)
                        .toList();
    }

    /** The path of an act in a variant, or {@link ActSheet#NONE}. */
    public ActSheet sheet(@Nullable String actId, @Nullable String variant) {
        return variant == null
                ? ActSheet.NONE
                : act(actId)
                        .flatMap(act -> act.variant(variant).map(v -> flights.apply(act, v)))
                        .orElse(ActSheet.NONE);
    }

    /** Where the crowd looks as a figure begins, or empty. */
    public String where(@Nullable String actId, @Nullable String variant, String figureId) {
        return actId == null || variant == null ? "" : sights.where(actId, variant, figureId);
    }

    /** What there is to see in a figure, in the time it is expected to last. */
    public FigureMoments moments(@Nullable String actId, @Nullable String variant, String figureId) {
        return actId == null || variant == null ? FigureMoments.timed(0) : seen.moments(actId, variant, figureId);
    }

    /** A kind of remark in a word. */
    public static String word(RemarkKind kind) {
        return switch (kind) {
            case DUTY -> "Duty";
            case CALL -> "Call";
            case EXPLANATION -> "Explanation";
            case FACT -> "Fact";
            case FILLER -> "Filler";
        };
    }
}
