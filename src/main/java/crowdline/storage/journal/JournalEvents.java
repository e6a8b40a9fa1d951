package crowdline.storage.journal;

import static crowdline.storage.journal.EventKind.clock;
import static crowdline.storage.journal.EventKind.texts;
import static crowdline.storage.journal.EventKind.textsIfAny;

import crowdline.live.event.AnnouncementEvent;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.HeardEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent;
import crowdline.show.figure.RemarkForm;
import crowdline.storage.json.DiskNames;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What events and their values are called in a journal. These names stay for ever, whatever the classes come to be called:
 * journals of every earlier version are read by them. A name is never given to anything else.
 */
final class JournalEvents {
    private static final DiskNames<Source> SOURCE = new DiskNames<>(Source.class, source -> switch (source) {
        case HAND -> "HAND";
        case CLOCK -> "CLOCK";
        case AIRCRAFT -> "AIRCRAFT";
    });

    private static final DiskNames<RemarkForm> FORM = new DiskNames<>(RemarkForm.class, form -> switch (form) {
        case FULL -> "FULL";
        case SHORT -> "SHORT";
    });

    private final Map<String, EventKind<?>> byName = new LinkedHashMap<>();
    private final Map<Class<?>, EventKind<?>> byType = new LinkedHashMap<>();

    JournalEvents() {
        show();
        choice();
        flight();
        aircraft();
        talk();
        announcements();
        heard();
        rest();
    }

    private void show() {
        add(EventKind.of(
                "ShowOpened",
                ShowEvent.ShowOpened.class,
                (e, of) -> texts(of.put("title", e.title()), "actIds", e.actIds()),
                (atS, of) -> new ShowEvent.ShowOpened(atS, of.text("title"), of.texts("actIds"))));
        add(EventKind.of(
                "ActsMoved",
                ShowEvent.ActsMoved.class,
                (e, of) -> texts(of, "actIds", e.actIds()).put("byS", e.byS()),
                (atS, of) -> new ShowEvent.ActsMoved(atS, of.texts("actIds"), of.seconds("byS"))));
        add(EventKind.of(
                "ActsSwapped",
                ShowEvent.ActsSwapped.class,
                (e, of) -> of.put("firstId", e.firstId())
                        .put("secondId", e.secondId())
                        .put("firstByS", e.firstByS())
                        .put("secondByS", e.secondByS()),
                (atS, of) -> new ShowEvent.ActsSwapped(
                        atS,
                        of.text("firstId"),
                        of.text("secondId"),
                        of.seconds("firstByS"),
                        of.seconds("secondByS"))));
        add(EventKind.of(
                "ActCancelled",
                ShowEvent.ActCancelled.class,
                (e, of) -> of.put("actId", e.actId()),
                (atS, of) -> new ShowEvent.ActCancelled(atS, of.text("actId"))));
        add(EventKind.of(
                "ActRestored",
                ShowEvent.ActRestored.class,
                (e, of) -> of.put("actId", e.actId()),
                (atS, of) -> new ShowEvent.ActRestored(atS, of.text("actId"))));
        add(EventKind.of(
                "ActAdded",
                ShowEvent.ActAdded.class,
                (e, of) -> of.put("actId", e.actId())
                        .put("title", e.title())
                        .put("minutes", e.minutes())
                        .put("afterId", e.afterId()),
                (atS, of) -> new ShowEvent.ActAdded(
                        atS, of.text("actId"), of.text("title"), of.seconds("minutes"), of.textOrNull("afterId"))));
        add(EventKind.bare("ShowEnded", ShowEvent.ShowEnded.class, ShowEvent.ShowEnded::new));
    }

    private void choice() {
        add(EventKind.of(
                "ActChosen",
                FlightEvent.ActChosen.class,
                (e, of) -> {
                    of.put("actId", e.actId()).put("variant", e.variant());
                    textsIfAny(texts(of, "figureIds", e.figureIds()), "transitIds", e.transitIds())
                            .put("slotStartS", e.slotStartS())
                            .set("slot", clock(e.slot()));
                },
                (atS, of) -> new FlightEvent.ActChosen(
                        atS,
                        of.text("actId"),
                        of.text("variant"),
                        of.texts("figureIds"),
                        of.textsIfAny("transitIds"),
                        of.secondsOrNull("slotStartS"),
                        of.clockOrNull("slot"))));
        add(EventKind.of(
                "VariantChosen",
                FlightEvent.VariantChosen.class,
                (e, of) -> textsIfAny(
                        texts(of.put("variant", e.variant()), "figureIds", e.figureIds()),
                        "transitIds",
                        e.transitIds()),
                (atS, of) -> new FlightEvent.VariantChosen(
                        atS, of.text("variant"), of.texts("figureIds"), of.textsIfAny("transitIds"))));
        add(EventKind.of(
                "SourceChosen",
                FlightEvent.SourceChosen.class,
                (e, of) -> of.put("source", SOURCE.of(e.source())),
                (atS, of) -> new FlightEvent.SourceChosen(atS, of.choice("source", SOURCE))));
    }

    private void flight() {
        add(EventKind.bare("ActStarted", FlightEvent.ActStarted.class, FlightEvent.ActStarted::new));
        add(EventKind.bare("Stepped", FlightEvent.Stepped.class, FlightEvent.Stepped::new));
        add(EventKind.of(
                "SteppedBack",
                FlightEvent.SteppedBack.class,
                (e, of) -> texts(of, "remarkIds", e.remarkIds()),
                (atS, of) -> new FlightEvent.SteppedBack(atS, of.textsIfAny("remarkIds"))));
        add(EventKind.bare("Held", FlightEvent.Held.class, FlightEvent.Held::new));
        add(EventKind.bare("Released", FlightEvent.Released.class, FlightEvent.Released::new));
        add(EventKind.bare("NextDropped", FlightEvent.NextDropped.class, FlightEvent.NextDropped::new));
        add(EventKind.bare("DropUndone", FlightEvent.DropUndone.class, FlightEvent.DropUndone::new));
        add(EventKind.bare("NextSwapped", FlightEvent.NextSwapped.class, FlightEvent.NextSwapped::new));
        add(EventKind.bare("WentOffPlan", FlightEvent.WentOffPlan.class, FlightEvent.WentOffPlan::new));
        add(EventKind.bare("ActEnded", FlightEvent.ActEnded.class, FlightEvent.ActEnded::new));
        add(EventKind.of(
                "CameBack",
                FlightEvent.CameBack.class,
                (e, of) -> of.put("index", e.index()),
                (atS, of) -> new FlightEvent.CameBack(atS, of.index("index"))));
        add(EventKind.of(
                "ClockAdvanced",
                FlightEvent.ClockAdvanced.class,
                (e, of) -> of.put("index", e.index()),
                (atS, of) -> new FlightEvent.ClockAdvanced(atS, of.index("index"))));
    }

    private void aircraft() {
        add(EventKind.of(
                "AircraftLost",
                FlightEvent.AircraftLost.class,
                (e, of) -> of.put("seenS", e.seenS()),
                (atS, of) -> new FlightEvent.AircraftLost(atS, of.seconds("seenS"))));
        add(EventKind.bare("AircraftFound", FlightEvent.AircraftFound.class, FlightEvent.AircraftFound::new));
        add(EventKind.of(
                "AircraftBegan",
                FlightEvent.AircraftBegan.class,
                (e, of) -> of.put("sinceS", e.sinceS()),
                (atS, of) -> new FlightEvent.AircraftBegan(atS, of.seconds("sinceS"))));
        add(EventKind.of(
                "AircraftSeen",
                FlightEvent.AircraftSeen.class,
                (e, of) -> of.put("index", e.index()),
                (atS, of) -> new FlightEvent.AircraftSeen(atS, of.index("index"))));
        add(EventKind.bare("AircraftStrayed", FlightEvent.AircraftStrayed.class, FlightEvent.AircraftStrayed::new));
    }

    private void talk() {
        add(EventKind.of(
                "RemarkStarted",
                TalkEvent.RemarkStarted.class,
                (e, of) -> of.put("remarkId", e.remarkId()).put("form", FORM.of(e.form())),
                (atS, of) -> new TalkEvent.RemarkStarted(atS, of.text("remarkId"), of.choice("form", FORM))));
        add(EventKind.of(
                "RemarkSaid",
                TalkEvent.RemarkSaid.class,
                (e, of) -> of.put("remarkId", e.remarkId()).put("form", FORM.of(e.form())),
                (atS, of) -> new TalkEvent.RemarkSaid(atS, of.text("remarkId"), of.choice("form", FORM))));
        add(EventKind.of(
                "RemarkLeft",
                TalkEvent.RemarkLeft.class,
                (e, of) -> of.put("remarkId", e.remarkId()).put("cutShort", e.cutShort()),
                (atS, of) -> new TalkEvent.RemarkLeft(atS, of.text("remarkId"), of.flag("cutShort"))));
        add(EventKind.of(
                "RemarkShown",
                TalkEvent.RemarkShown.class,
                (e, of) -> of.put("remarkId", e.remarkId())
                        .put("form", FORM.of(e.form()))
                        .put("sinceS", e.sinceS()),
                (atS, of) -> new TalkEvent.RemarkShown(
                        atS, of.text("remarkId"), of.choice("form", FORM), of.seconds("sinceS"))));
        add(EventKind.of(
                "RemarkSkipped",
                TalkEvent.RemarkSkipped.class,
                (e, of) -> of.put("remarkId", e.remarkId()),
                (atS, of) -> new TalkEvent.RemarkSkipped(atS, of.text("remarkId"))));
        add(EventKind.of(
                "FillerTaken",
                TalkEvent.FillerTaken.class,
                (e, of) -> of.put("remarkId", e.remarkId()).put("form", FORM.of(e.form())),
                (atS, of) -> new TalkEvent.FillerTaken(atS, of.text("remarkId"), of.choice("form", FORM))));
    }

    private void announcements() {
        add(EventKind.of(
                "AnnouncementShown",
                AnnouncementEvent.AnnouncementShown.class,
                (e, of) -> of.put("announcementId", e.announcementId()).put("occasion", e.occasion()),
                (atS, of) ->
                        new AnnouncementEvent.AnnouncementShown(atS, of.text("announcementId"), of.text("occasion"))));
        add(EventKind.of(
                "BlankFilled",
                AnnouncementEvent.BlankFilled.class,
                (e, of) -> of.put("announcementId", e.announcementId())
                        .put("blank", e.blank())
                        .put("said", e.said()),
                (atS, of) -> new AnnouncementEvent.BlankFilled(
                        atS, of.text("announcementId"), of.text("blank"), of.text("said"))));
        add(EventKind.of(
                "AnnouncementRead",
                AnnouncementEvent.AnnouncementRead.class,
                (e, of) -> texts(
                        of.put("announcementId", e.announcementId()).put("occasion", e.occasion()), "words", e.words()),
                (atS, of) -> new AnnouncementEvent.AnnouncementRead(
                        atS, of.text("announcementId"), of.text("occasion"), of.texts("words"))));
    }

    private void heard() {
        add(EventKind.bare("ListeningBegan", HeardEvent.ListeningBegan.class, HeardEvent.ListeningBegan::new));
        add(EventKind.bare("ListeningEnded", HeardEvent.ListeningEnded.class, HeardEvent.ListeningEnded::new));
        add(EventKind.of(
                "TalkHeard",
                HeardEvent.TalkHeard.class,
                (e, of) -> of.put("fromS", e.fromS()).put("toS", e.toS()),
                (atS, of) -> new HeardEvent.TalkHeard(atS, of.seconds("fromS"), of.seconds("toS"))));
    }

    private void rest() {
        add(EventKind.bare("IncidentOpened", IncidentEvent.IncidentOpened.class, IncidentEvent.IncidentOpened::new));
        add(EventKind.of(
                "IncidentClosed",
                IncidentEvent.IncidentClosed.class,
                (e, of) -> of.put("confirmed", e.confirmed()),
                (atS, of) -> new IncidentEvent.IncidentClosed(atS, of.flag("confirmed"))));
        add(EventKind.of(
                "NoteMade",
                LiveEvent.NoteMade.class,
                (e, of) -> of.put("text", e.text()),
                (atS, of) -> new LiveEvent.NoteMade(atS, of.text("text"))));
        add(EventKind.of(
                "NoteWritten",
                LiveEvent.NoteWritten.class,
                (e, of) -> of.put("text", e.text()),
                (atS, of) -> new LiveEvent.NoteWritten(atS, of.text("text"))));
        add(EventKind.of(
                "HandedOver",
                LiveEvent.HandedOver.class,
                (e, of) -> of.put("toOther", e.toOther()),
                (atS, of) -> new LiveEvent.HandedOver(atS, of.flag("toOther"))));
        add(EventKind.bare("Undone", LiveEvent.Undone.class, LiveEvent.Undone::new));
    }

    private void add(EventKind<?> kind) {
        byName.put(kind.name(), kind);
        byType.put(kind.type(), kind);
    }

    /** Every kind of event that has a name. */
    Set<Class<?>> types() {
        return Set.copyOf(byType.keySet());
    }

    String name(LiveEvent event) {
        return kind(event).name();
    }

    /** What a journal says of an event besides its name. */
    ObjectNode values(LiveEvent event) {
        return kind(event).values(event);
    }

    private EventKind<?> kind(LiveEvent event) {
        EventKind<?> kind = byType.get(event.getClass());
        if (kind == null) {
            throw new IllegalArgumentException(event.getClass().getName() + " has no name in journals; give it one");
        }
        return kind;
    }

    /**
     * An event of that name, or null if none is called so.
     *
     * @throws IllegalArgumentException if a value is not there or not what it should be
     * @throws java.time.DateTimeException if a time is none
     */
    @Nullable
    LiveEvent read(String name, JsonNode values) {
        EventKind<?> kind = byName.get(name);
        return kind == null ? null : kind.event(new EventFields(values));
    }
}
