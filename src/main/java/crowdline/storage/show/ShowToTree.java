package crowdline.storage.show;

import crowdline.show.Act;
import crowdline.show.Announcement;
import crowdline.show.CrowdUnits;
import crowdline.show.DayAir;
import crowdline.show.Gaps;
import crowdline.show.Incident;
import crowdline.show.Interpreting;
import crowdline.show.Performer;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.Term;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.WindAt;
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
import crowdline.storage.json.ObjectKeys;
import java.time.LocalTime;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** A show as the tree of its file, with the default values marked. */
final class ShowToTree {
    static final int VERSION = 1;

    private final IdentityHashMap<ObjectNode, Set<String>> implied = new IdentityHashMap<>();

    /** A show as a file, and the keys of its objects that only say the default. */
    record Fresh(ObjectNode root, IdentityHashMap<ObjectNode, Set<String>> implied) {}

    static Fresh fresh(Show show) {
        ShowToTree made = new ShowToTree();
        return new Fresh(made.show(show), made.implied);
    }

    private ObjectKeys keys() {
        return new ObjectKeys(implied);
    }

    private ObjectNode show(Show show) {
        ObjectKeys keys = keys().number("crowdline", (double) VERSION)
                .text("title", show.title())
                .text("date", show.date().toString())
                .group("venue", venue(show.venue()), false)
                .group("air", air(show.air()), show.air().equals(DayAir.STANDARD))
                .list("airframes", show.airframes(), true, airframe -> AirframeToTree.node(airframe, keys()))
                .list("performers", show.performers(), true, this::performer)
                .list("acts", show.acts(), true, this::act)
                .list("remarks", show.remarks(), false, this::remark)
                .list("figures", show.figures(), false, this::entry)
                .list("terms", show.terms(), false, this::term);
        ObjectKeys sayAs = keys();
        new TreeMap<>(show.sayAs()).forEach(sayAs::text);
        keys.group("sayAs", sayAs.node(), show.sayAs().isEmpty());
        Incident incident = show.incident();
        if (incident != null) {
            keys.group("incident", incident(incident), false);
        }
        keys.list("announcements", show.announcements(), false, this::announcement)
                .group("gaps", gaps(show.gaps()), show.gaps().equals(Gaps.NONE))
                .list(
                        "speakers",
                        show.speakers().all(),
                        false,
                        speaker -> keys().text("name", speaker.name())
                                .flag("away", speaker.away())
                                .node());
        if (show.speakers().interpreting() != Interpreting.AFTER) {
            keys.choice("interpreting", ShowNames.INTERPRETING, show.speakers().interpreting());
        }
        return keys.node();
    }

    private JsonNode gaps(Gaps gaps) {
        return keys().number("talkPercent", gaps.talkPercent(), Gaps.USUAL_TALK_PERCENT)
                .list("pieces", gaps.pieces(), false, this::piece)
                .node();
    }

    private JsonNode piece(Piece piece) {
        return keys().text("id", piece.id())
                .text("title", piece.title())
                .text("beforeAct", piece.beforeAct())
                .text("speaker", piece.speaker())
                .list("parts", piece.parts(), true, this::part)
                .node();
    }

    private JsonNode part(Piece.Part part) {
        ObjectKeys keys = keys().text("text", part.text())
                .number("answerS", part.answerS(), 0)
                .text("speaker", part.speaker());
        translation(keys, part.translation());
        return keys.node();
    }

    private void translation(ObjectKeys keys, @Nullable Translation other) {
        if (other != null) {
            keys.group(
                    "otherLanguage",
                    keys().text("language", other.language())
                            .text("text", other.text())
                            .text("shortText", other.shortText())
                            .text("speaker", other.speaker())
                            .flag("older", other.older())
                            .node(),
                    false);
        }
    }

    private JsonNode announcement(Announcement announcement) {
        return keys().text("id", announcement.id())
                .text("occasion", announcement.occasion())
                .texts("words", announcement.words(), true)
                .text("agreedWith", announcement.agreedWith())
                .node();
    }

    private JsonNode venue(Venue venue) {
        Venue.Limits limits = venue.limits();
        JsonNode given = keys().number("baseFt", limits.baseFt())
                .number("ceilingFt", limits.ceilingFt())
                .number("halfLengthM", limits.halfLengthM())
                .number("depthM", limits.depthM())
                .node();
        return keys().text("name", venue.name())
                .number("latDeg", venue.latDeg())
                .number("lonDeg", venue.lonDeg())
                .number("elevationFt", venue.elevationFt())
                .number("axisBearingDeg", venue.axisBearingDeg())
                .number("crowdToLineM", venue.crowdToLineM())
                .text("timeZone", venue.timeZone().getId())
                .choice("crowdUnits", ShowNames.CROWD_UNITS, venue.crowdUnits(), CrowdUnits.MILES)
                .group("limits", given, limits.equals(Venue.Limits.NONE))
                .node();
    }

    private JsonNode air(DayAir air) {
        return keys().number("qnhHpa", air.qnhHpa(), DayAir.STANDARD.qnhHpa())
                .number("temperatureC", air.temperatureC(), DayAir.STANDARD.temperatureC())
                .number("windFromDeg", air.windFromDeg(), 0)
                .number("windKt", air.windKt(), 0)
                .list("windsAloft", air.windsAloft(), false, this::windAt)
                .number("cloudBaseFt", air.cloudBaseFt())
                .node();
    }

    private JsonNode windAt(WindAt at) {
        return keys().number("heightFt", at.heightFt())
                .number("fromDeg", at.fromDeg())
                .number("kt", at.kt())
                .node();
    }

    private JsonNode performer(Performer performer) {
        return keys().text("id", performer.id())
                .text("name", performer.name())
                .text("sayAs", performer.sayAs())
                .list(
                        "facts",
                        performer.facts(),
                        false,
                        fact -> keys().text("text", fact.text())
                                .text("source", fact.source())
                                .node())
                .node();
    }

    private JsonNode act(Act act) {
        ObjectKeys keys = keys().text("id", act.id())
                .text("title", act.title())
                .text("performer", act.performer())
                .text("airframe", act.airframe())
                .text("slotStart", act.slotStart().toString())
                .number("slotMinutes", act.slotMinutes());
        Placing entry = act.entry();
        if (entry != null) {
            keys.group("entry", placing(entry), false);
        }
        return keys.list("figures", act.figures(), true, this::figure)
                .list("variants", act.variants(), true, this::variant)
                .list("remarks", act.remarks(), false, this::remark)
                .node();
    }

    private JsonNode variant(Variant variant) {
        ObjectKeys keys = keys().text("name", variant.name()).number("minCloudBaseFt", variant.minCloudBaseFt());
        Placing entry = variant.entry();
        if (entry != null) {
            keys.group("entry", placing(entry), false);
        }
        return keys.texts("order", variant.order(), true).node();
    }

    private JsonNode figure(Figure figure) {
        ObjectKeys keys = keys().text("id", figure.id())
                .text("figure", figure.figure())
                .text("title", figure.title())
                .text("look", figure.look());
        List<Element> elements = figure.elements();
        if (elements != null) {
            keys.list("elements", elements, true, e -> ElementToTree.node(e, this::keys));
        }
        keys.number("durationS", figure.durationS());
        Placing exit = figure.exit();
        if (exit != null) {
            keys.group("exit", placing(exit), false);
        }
        keys.number("minEntryKt", figure.minEntryKt());
        Asked asked = figure.asked();
        if (asked != null) {
            keys.group("asked", asked(asked), false);
        }
        return keys.flag("transit", figure.transit())
                .list("quiets", figure.quiets(), false, this::quiet)
                .list("remarks", figure.remarks(), false, this::remark)
                .node();
    }

    private JsonNode asked(Asked asked) {
        ObjectKeys keys = keys().text("text", asked.text()).number("count", asked.count());
        Asked.Place place = asked.place();
        if (place != null) {
            keys.choice("place", ShowNames.PLACE, place);
        }
        keys.number("alongM", asked.alongM());
        Asked.Hand side = asked.side();
        if (side != null) {
            keys.choice("side", ShowNames.HAND, side);
        }
        Placing.Heading heading = asked.heading();
        if (heading != null) {
            keys.choice("heading", ShowNames.HEADING, heading);
        }
        keys.number("heightFt", asked.heightFt())
                .number("kt", asked.kt())
                .number("seconds", asked.seconds())
                .number("beginsS", asked.beginsS())
                .text("note", asked.note());
        if (!asked.sure()) {
            keys.node().put("sure", false);
        }
        if (asked.ownShape()) {
            keys.flag("ownShape", true);
        }
        return keys.texts("choices", asked.choices(), false).node();
    }

    private JsonNode quiet(Quiet quiet) {
        return keys().number("fromS", quiet.fromS())
                .number("toS", quiet.toS())
                .text("why", quiet.why())
                .node();
    }

    private JsonNode placing(Placing placing) {
        return keys().number("alongM", placing.alongM())
                .number("awayM", placing.awayM())
                .number("heightFt", placing.heightFt())
                .number("kt", placing.kt())
                .choice("heading", ShowNames.HEADING, placing.heading())
                .node();
    }

    private static @Nullable String words(@Nullable MomentName moment) {
        return moment == null ? null : moment.words();
    }

    private JsonNode remark(Remark remark) {
        ObjectKeys keys = keys().text("id", remark.id())
                .choice("kind", ShowNames.REMARK_KIND, remark.kind())
                .text("text", remark.text())
                .text("shortText", remark.shortText())
                .text("at", words(remark.at()))
                .text("until", words(remark.until()))
                .number("earliestS", remark.earliestS())
                .number("latestS", remark.latestS())
                .number("weight", remark.weight(), ShowFromTree.ORDINARY_WEIGHT)
                .flag("once", remark.once())
                .flag("draft", remark.draft());
        DutyTimes duty = remark.duty();
        if (duty != null) {
            keys.group("duty", duty(duty), false);
        }
        keys.text("speaker", remark.speaker());
        translation(keys, remark.translation());
        return keys.node();
    }

    private JsonNode duty(DutyTimes duty) {
        LocalTime by = duty.by();
        return keys().number("times", duty.times(), ShowFromTree.ONCE)
                .number("apartMinutes", duty.apartMinutes())
                .text("by", by == null ? null : by.toString())
                .text("afterAct", duty.afterAct())
                .text("beforeAct", duty.beforeAct())
                .flag("inActs", duty.inActs())
                .node();
    }

    JsonNode entry(CatalogueEntry entry) {
        return keys().text("name", entry.name())
                .texts("aliases", entry.aliases(), false)
                .text("family", entry.family())
                .text("whatItIs", entry.whatItIs())
                .text("lookFor", entry.lookFor())
                .text("whyHard", entry.whyHard())
                .text("handsAndFeet", entry.handsAndFeet())
                .text("pilotFeels", entry.pilotFeels())
                .text("mixUps", entry.mixUps())
                .text("sayIt", entry.sayIt())
                .text("source", entry.source())
                .number("minEntryKt", entry.minEntryKt())
                .text("enters", entry.enters() == null ? null : ShowNames.ENTRY_SPEED.of(entry.enters()))
                .list("elements", entry.elements(), false, e -> ElementToTree.node(e, this::keys))
                .node();
    }

    JsonNode term(Term term) {
        return keys().text("name", term.name())
                .texts("aliases", term.aliases(), false)
                .text("group", term.group(), Term.OWN_GROUP)
                .text("whatItIs", term.whatItIs())
                .text("atTheShow", term.atTheShow(), "")
                .text("sayIt", term.sayIt(), "")
                .texts("see", term.see(), false)
                .text("source", term.source())
                .node();
    }

    private JsonNode incident(Incident incident) {
        return keys().text("agreedWith", incident.agreedWith())
                .texts("firstSteps", incident.firstSteps(), false)
                .texts("words", incident.words(), true)
                .list(
                        "contacts",
                        incident.contacts(),
                        false,
                        contact -> keys().text("role", contact.role())
                                .text("how", contact.how())
                                .node())
                .node();
    }
}
