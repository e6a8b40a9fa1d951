package crowdline.console.words;

import crowdline.console.paint.FitMark;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.console.words.PlannedRemark.Standing;
import crowdline.console.words.WordsView.PlaceView;
import crowdline.console.words.WordsView.RemarkPage;
import crowdline.console.words.WordsView.RemarkRow;
import crowdline.flight.moment.Moment;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Fit;
import crowdline.patter.PatterRules;
import crowdline.patter.Room;
import crowdline.show.Act;
import crowdline.show.Interpreting;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.figure.Figure;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.Translation;
import crowdline.speech.pace.Interpreted;
import crowdline.speech.pace.SpokenTime;
import crowdline.speech.plain.RemarkHints;
import crowdline.timing.FigureTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Puts remarks being written into the words of the Words place. Hints only: nothing here stands in the way. */
final class WordsPresenter {
    private static final Mark DRAFT = new Mark(Form.RING, Tone.CALM, "Draft");
    private static final Mark OLDER = new Mark(Form.DIAMOND, Tone.CAUTION, "Older");
    private static final Mark UNREAD =
            new Mark(Form.RING, Tone.CALM, "First draft: edit it, or press Ctrl+Enter to accept it");

    private final WordsBasis basis;
    private final RemarkHints hints;

    WordsPresenter(WordsBasis basis) {
        this.basis = basis;
        hints = new RemarkHints(basis.tradeWords(), basis.called());
    }

    List<PlaceView> places(Show show) {
        return RemarkPlace.all(show).stream()
                .map(place -> new PlaceView(
                        number(show, place),
                        name(show, place),
                        place.actId() == null ? 0 : place.figureId() == null ? 1 : 2,
                        place.in(show).size()))
                .toList();
    }

    List<RemarkRow> rows(Show show, RemarkPlace place, WordsPlan plan) {
        return place.in(show).stream()
                .map(r -> new RemarkRow(
                        ShowLookup.word(r.kind()),
                        basis.voices().other(r).map(name -> name + ": ").orElse("") + r.text(),
                        brief(r, place, plan),
                        r.draft() ? DRAFT : r.isOlderInTranslation() ? OLDER : null))
                .toList();
    }

    /** How long a remark takes against the time there is for it, and what the plan makes of it, as a list has room for it. */
    Mark brief(Remark remark, RemarkPlace place, WordsPlan plan) {
        SpokenTime time = basis.voices().time(remark, false);
        String takes = String.format(Locale.UK, "%.1f s", time.seconds());
        return verdict(
                time, takes, room(remark, place), plan.remark(remark.id()).standing());
    }

    /** The same with how much quicker or slower it may be read. */
    private Mark verdict(Remark remark, boolean shortForm, Optional<Room> room, Standing standing) {
        SpokenTime time = basis.voices().time(remark, shortForm);
        String takes = String.format(Locale.UK, "%.1f s (%.1f to %.1f)", time.seconds(), time.lowS(), time.highS());
        return verdict(time, takes, room, standing);
    }

    RemarkPage page(
            Show show, Remark remark, RemarkPlace place, RemarkDraft draft, List<String> problems, WordsPlan plan) {
        Optional<Room> room = room(remark, place);
        return new RemarkPage(
                draft,
                remark.draft() ? UNREAD : null,
                draft.text().isBlank() ? "" : basis.said().apply(draft.text()).spoken(),
                verdict(remark, false, room, plan.remark(remark.id()).standing()),
                remark.shortText() == null ? null : verdict(remark, true, room, Standing.UNKNOWN),
                aboutRoom(remark, place),
                plan.remark(remark.id()).words(),
                problems,
                hints.of(show, place, remark, draft.text()),
                plan.reads(place.actId()),
                place.figureId() != null,
                lasts(place)
                        .map(time -> time.moments().moments().stream()
                                .map(m -> m.name().words())
                                .toList())
                        .orElse(List.of()),
                show.speakers().all().stream().map(Speaker::name).toList(),
                notes(show),
                other(remark),
                WordsModel.isToAccept(remark));
    }

    /** What is to be known of a speaker before anything is given to them. */
    private Map<String, String> notes(Show show) {
        Map<String, String> notes = new HashMap<>();
        show.speakers()
                .all()
                .forEach(s -> notes.put(s.name(), s.note(basis.voices().isTimed(s))));
        return notes;
    }

    private @Nullable Mark other(Remark remark) {
        Translation words = remark.translation();
        if (words == null) {
            return null;
        }
        String language = words.languageName();
        Interpreted said = basis.voices().interpreted(remark, false).orElse(null);
        if (said == null) {
            return new Mark(Form.DIAMOND, Tone.CAUTION, "There is nobody to say the " + language);
        }
        return words.older()
                ? new Mark(
                        Form.DIAMOND,
                        Tone.CAUTION,
                        language + " is " + Translation.OLDER + ": edit it, or Ctrl+Enter if it still fits")
                : new Mark(
                        Form.RING,
                        Tone.CALM,
                        String.format(
                                Locale.UK,
                                "%s: %.1f s (%.1f to %.1f)%s, %s",
                                language,
                                said.time().seconds(),
                                said.time().lowS(),
                                said.time().highS(),
                                inShort(remark),
                                basis.voices().interpreting() == Interpreting.AFTER
                                        ? "after the remark"
                                        : "at the same time"));
    }

    /** What is said in the other language where the short form is. */
    private String inShort(Remark remark) {
        return remark.shortText() == null
                ? ""
                : basis.voices()
                        .interpreted(remark, true)
                        .map(said -> said.isAllOfIt()
                                ? ", all of it for the short form too"
                                : String.format(
                                        Locale.UK,
                                        ", in short %.1f s",
                                        said.time().seconds()))
                        .orElse("");
    }

    /** What fits its figure alone is called fitting only if it fits beside everything else that is planned, too. */
    private static Mark verdict(SpokenTime time, String takes, Optional<Room> room, Standing standing) {
        String of = room.map(there -> String.format(Locale.UK, "%s of %.1f s", takes, there.likelyS()))
                .orElse(takes);
        Optional<Fit> alone = room.map(there -> Fit.of(time, there));
        if (alone.isPresent() && !alone.get().hasRoom()) {
            return FitMark.of(alone.get(), ": " + of);
        }
        return switch (standing) {
            case NO_PLACE -> new Mark(Form.DIAMOND, Tone.CAUTION, "No place: " + of);
            case SHORT -> new Mark(Form.DIAMOND, Tone.CAUTION, "Short form: " + of);
            case NOT_NEEDED -> new Mark(Form.RING, Tone.CALM, "No gap to fill: " + of);
            case TIGHT -> FitMark.of(alone.orElse(Fit.FITS).atBest(Fit.JUST_FITS), ": " + of);
            case UNKNOWN, SAID ->
                alone.map(fit -> FitMark.of(fit, ": " + of)).orElseGet(() -> new Mark(Form.RING, Tone.CALM, of));
        };
    }

    /** The time there is by a remark's kind, its figure and its own limits; empty if none of them says anything. */
    private Optional<Room> room(Remark remark, RemarkPlace place) {
        if (place.actId() == null || place.figureId() == null) {
            return Optional.empty();
        }
        if (remark.kind() == RemarkKind.CALL) {
            return Optional.of(Room.ofCall(remark, PatterRules.DEFAULT));
        }
        return lasts(place).map(time -> Room.of(remark, time, PatterRules.DEFAULT));
    }

    private Optional<FigureTime> lasts(RemarkPlace place) {
        String actId = place.actId();
        String figureId = place.figureId();
        return actId == null || figureId == null
                ? Optional.empty()
                : basis.lasts().apply(actId, figureId);
    }

    private String aboutRoom(Remark remark, RemarkPlace place) {
        if (place.figureId() != null && remark.kind() == RemarkKind.CALL) {
            return String.format(
                    Locale.UK,
                    "A call is spoken before its figure, from %.0f s to %.0f s ahead.",
                    Math.max(0, -Room.callFromS(remark, PatterRules.DEFAULT)),
                    Math.max(0, -Room.callToS(remark, PatterRules.DEFAULT)));
        }
        if (remark.isTied()) {
            return lasts(place).map(time -> tied(remark, time)).orElse("How long its figure lasts is not known.");
        }
        String own = remark.earliestS() == null && remark.latestS() == null
                ? ""
                : " Its earliest and latest times leave it less.";
        return lasts(place)
                .map(time -> String.format(
                                Locale.UK,
                                "The figure lasts %.1f s, most often %.1f to %.1f s.",
                                time.durationS(),
                                time.lowS(),
                                time.highS())
                        + own)
                .orElse(
                        place.figureId() == null
                                ? "It belongs to no figure, so any gap will do."
                                : "How long its figure lasts is not known.");
    }

    /** When the moments come that a remark is tied to, or which of them its figure does not have. */
    private static String tied(Remark remark, FigureTime time) {
        List<String> told = new ArrayList<>();
        for (MomentName name : Arrays.asList(remark.at(), remark.until())) {
            if (name != null) {
                Optional<Moment> moment = time.moments().find(name);
                if (moment.isEmpty()) {
                    return String.format(
                            Locale.UK, "This figure has no \u201c%s\u201d, so the remark is not tied.", name.words());
                }
                told.add(String.format(
                        Locale.UK,
                        "\u201c%s\u201d after %.1f s",
                        name.words(),
                        moment.get().afterS()));
            }
        }
        return String.format(
                Locale.UK,
                "The figure lasts %.1f s: %s. Times count from there.",
                time.durationS(),
                String.join(", ", told));
    }

    /** Figures of one name are told apart by it. */
    private static String number(Show show, RemarkPlace place) {
        String actId = place.actId();
        String figureId = place.figureId();
        if (actId == null || figureId == null) {
            return "";
        }
        int at = show.act(actId).stream()
                .flatMap(act -> act.variants().stream())
                .findFirst()
                .map(variant -> variant.order().indexOf(figureId))
                .orElse(-1);
        return at < 0 ? "" : Integer.toString(at + 1);
    }

    /** What a place is called. */
    String name(Show show, RemarkPlace place) {
        String actId = place.actId();
        if (actId == null) {
            return "The whole show";
        }
        Act act = show.act(actId).orElseThrow();
        String figureId = place.figureId();
        return figureId == null
                ? act.title()
                : act.figure(figureId).map(this::figureName).orElse(figureId);
    }

    private String figureName(Figure figure) {
        return basis.names().apply(figure);
    }
}
