package crowdline.storage.show;

import crowdline.show.Act;
import crowdline.show.Announcement;
import crowdline.show.DayAir;
import crowdline.show.Gaps;
import crowdline.show.Incident;
import crowdline.show.Interpreting;
import crowdline.show.Performer;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.Term;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Asked;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.Placing;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.Translation;
import crowdline.storage.json.Fields;
import crowdline.storage.json.Quoted;
import crowdline.storage.json.Refusals;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** A show from the tree of its file, whose form was checked before. */
final class ShowFromTree {
    static final double ORDINARY_WEIGHT = 1;
    static final int ONCE = 1;

    private ShowFromTree() {}

    /** The show; empty if some part of it was refused, which is then noted in {@code refusals}. */
    static Optional<Show> show(JsonNode root, Refusals refusals) {
        Fields f = new Fields(root, "", refusals);
        Optional<Show> show = refusals.attempt("", () -> show(f));
        return refusals.findings().isEmpty() ? show : Optional.empty();
    }

    private static Show show(Fields f) {
        Optional<LocalDate> date = f.refusals().attempt("date", () -> date(f.text("date")));
        Optional<Venue> venue = f.refusals().attempt("venue", () -> VenueFromTree.venue(f.group("venue")));
        Optional<DayAir> air = f.refusals().attempt("air", () -> VenueFromTree.air(f.group("air")));
        List<Aircraft> airframes = f.list("airframes", AirframeFromTree::aircraft);
        List<Performer> performers = f.list("performers", ShowFromTree::performer);
        List<Act> acts = f.list("acts", ShowFromTree::act);
        List<Remark> remarks = f.list("remarks", ShowFromTree::remark);
        List<CatalogueEntry> figures = f.list("figures", ShowFromTree::entry);
        List<Term> terms = f.list("terms", ShowFromTree::term);
        Optional<Incident> incident = f.has("incident")
                ? f.refusals().attempt("incident", () -> incident(f.group("incident")))
                : Optional.empty();
        Optional<Gaps> gaps =
                f.has("gaps") ? f.refusals().attempt("gaps", () -> gaps(f.group("gaps"))) : Optional.of(Gaps.NONE);
        return new Show(
                f.text("title"),
                date.orElseThrow(Refusals.Noted::new),
                venue.orElseThrow(Refusals.Noted::new),
                air.orElseThrow(Refusals.Noted::new),
                airframes,
                performers,
                acts,
                remarks,
                figures,
                terms,
                f.textByKey("sayAs"),
                incident.orElse(null),
                f.list("announcements", ShowFromTree::announcement),
                gaps.orElseThrow(Refusals.Noted::new),
                new Speakers(
                        f.list("speakers", s -> new Speaker(s.text("name"), s.flag("away"))),
                        f.has("interpreting") ? f.choice("interpreting", ShowNames.INTERPRETING) : Interpreting.AFTER));
    }

    private static Gaps gaps(Fields f) {
        return new Gaps(f.number("talkPercent", Gaps.USUAL_TALK_PERCENT), f.list("pieces", ShowFromTree::piece));
    }

    private static Piece piece(Fields f) {
        List<Piece.Part> parts = f.list("parts", ShowFromTree::part);
        if (parts.isEmpty()) {
            throw new Refusals.Noted(); // the form asks for a part, so one was refused
        }
        return new Piece(f.text("id"), f.text("title"), f.textOrNull("beforeAct"), f.textOrNull("speaker"), parts);
    }

    private static Piece.Part part(Fields f) {
        return new Piece.Part(f.text("text"), f.number("answerS", 0), f.textOrNull("speaker"), translation(f));
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(Quoted.text(text) + " is not a real date", e);
        }
    }

    private static Performer performer(Fields f) {
        return new Performer(
                f.text("id"),
                f.text("name"),
                f.textOrNull("sayAs"),
                f.list("facts", fact -> new Performer.SourcedFact(fact.text("text"), fact.text("source"))));
    }

    private static Act act(Fields f) {
        @Nullable Placing entry = null;
        boolean entryRefused = false;
        if (f.has("entry")) {
            entry = f.refusals()
                    .attempt(f.path() + ".entry", () -> placing(f.group("entry")))
                    .orElse(null);
            entryRefused = entry == null;
        }
        List<Figure> figures = f.list("figures", ShowFromTree::figure);
        List<Variant> variants = f.list("variants", ShowFromTree::variant);
        List<Remark> remarks = f.list("remarks", ShowFromTree::remark);
        if (variants.isEmpty() || entryRefused) {
            throw new Refusals.Noted(); // the form asks for a variant, so one was refused
        }
        return new Act(
                f.text("id"),
                f.text("title"),
                f.text("performer"),
                f.text("airframe"),
                LocalTime.parse(f.text("slotStart")),
                f.number("slotMinutes"),
                entry,
                figures,
                variants,
                remarks);
    }

    private static Variant variant(Fields f) {
        return new Variant(
                f.text("name"),
                f.numberOrNull("minCloudBaseFt"),
                f.has("entry") ? placing(f.group("entry")) : null,
                f.texts("order"));
    }

    private static Figure figure(Fields f) {
        @Nullable List<Element> elements = f.has("elements") ? f.list("elements", ElementFromTree::element) : null;
        List<Quiet> quiets = f.list("quiets", ShowFromTree::quiet);
        List<Remark> remarks = f.list("remarks", ShowFromTree::remark);
        return new Figure(
                f.text("id"),
                f.text("figure"),
                f.textOrNull("title"),
                f.textOrNull("look"),
                elements,
                f.numberOrNull("durationS"),
                f.has("exit") ? placing(f.group("exit")) : null,
                f.numberOrNull("minEntryKt"),
                f.has("asked") ? asked(f.group("asked")) : null,
                f.flag("transit"),
                quiets,
                remarks);
    }

    private static Asked asked(Fields f) {
        return new Asked(
                f.text("text"),
                f.numberOrNull("count"),
                f.has("place") ? f.choice("place", ShowNames.PLACE) : null,
                f.numberOrNull("alongM"),
                f.has("side") ? f.choice("side", ShowNames.HAND) : null,
                f.has("heading") ? f.choice("heading", ShowNames.HEADING) : null,
                f.numberOrNull("heightFt"),
                f.numberOrNull("kt"),
                f.numberOrNull("seconds"),
                f.numberOrNull("beginsS"),
                f.textOrNull("note"),
                !f.has("sure") || f.flag("sure"),
                f.texts("choices"),
                f.flag("ownShape"));
    }

    private static Quiet quiet(Fields f) {
        return new Quiet(f.number("fromS"), f.numberOrNull("toS"), f.textOrNull("why"));
    }

    private static Placing placing(Fields f) {
        return new Placing(
                f.number("alongM"),
                f.number("awayM"),
                f.number("heightFt"),
                f.number("kt"),
                f.choice("heading", ShowNames.HEADING));
    }

    private static Remark remark(Fields f) {
        return new Remark(
                f.text("id"),
                f.choice("kind", ShowNames.REMARK_KIND),
                f.text("text"),
                f.textOrNull("shortText"),
                moment(f.textOrNull("at")),
                moment(f.textOrNull("until")),
                f.numberOrNull("earliestS"),
                f.numberOrNull("latestS"),
                f.number("weight", ORDINARY_WEIGHT),
                f.flag("once"),
                f.flag("draft"),
                f.has("duty") ? duty(f.group("duty")) : null,
                f.textOrNull("speaker"),
                translation(f));
    }

    private static @Nullable Translation translation(Fields of) {
        if (!of.has("otherLanguage")) {
            return null;
        }
        Fields f = of.group("otherLanguage");
        return new Translation(
                f.text("language"),
                f.text("text"),
                f.textOrNull("shortText"),
                f.textOrNull("speaker"),
                f.flag("older"));
    }

    private static DutyTimes duty(Fields f) {
        String by = f.textOrNull("by");
        return new DutyTimes(
                f.whole("times", ONCE),
                f.numberOrNull("apartMinutes"),
                by == null ? null : LocalTime.parse(by),
                f.textOrNull("afterAct"),
                f.textOrNull("beforeAct"),
                f.flag("inActs"));
    }

    private static @Nullable MomentName moment(@Nullable String words) {
        return words == null ? null : MomentName.of(words).orElse(null);
    }

    /** An entry of the catalogue, shipped or the show's own. */
    static CatalogueEntry entry(Fields f) {
        return new CatalogueEntry(
                f.text("name"),
                f.texts("aliases"),
                f.text("family"),
                f.text("whatItIs"),
                f.text("lookFor"),
                f.text("whyHard"),
                f.text("handsAndFeet"),
                f.text("pilotFeels"),
                f.text("mixUps"),
                f.text("sayIt"),
                f.textOrNull("source"),
                f.numberOrNull("minEntryKt"),
                f.has("enters") ? f.choice("enters", ShowNames.ENTRY_SPEED) : null,
                f.list("elements", ElementFromTree::element));
    }

    static Term term(Fields f) {
        return new Term(
                f.text("name"),
                f.texts("aliases"),
                f.has("group") ? f.text("group") : Term.OWN_GROUP,
                f.text("whatItIs"),
                f.text("atTheShow"),
                f.text("sayIt"),
                f.texts("see"),
                f.textOrNull("source"));
    }

    /** An announcement, of a show or of the template. */
    static Announcement announcement(Fields f) {
        return new Announcement(f.text("id"), f.text("occasion"), f.texts("words"), f.textOrNull("agreedWith"));
    }

    /** The incident page, of a show or of the template. */
    static Incident incident(Fields f) {
        return new Incident(
                f.textOrNull("agreedWith"),
                f.texts("firstSteps"),
                f.texts("words"),
                f.list("contacts", c -> new Incident.Contact(c.text("role"), c.text("how"))));
    }
}
