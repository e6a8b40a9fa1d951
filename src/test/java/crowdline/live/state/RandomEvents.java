package crowdline.live.state;

import crowdline.live.event.AnnouncementEvent;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.HeardEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.SlotTime;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent;
import crowdline.show.figure.RemarkForm;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Seeded sequences of every kind of event, possible or not. */
public final class RandomEvents {
    private static final List<String> ACTS = List.of("first", "second", "third", "nowhere");
    private static final List<String> FIGURES =
            List.of("loop", "roll", "spin", "pass", "turn", "Kuban\u2014\u00bd\"\\");

    private static final List<Source> SOURCES = List.of(Source.HAND, Source.CLOCK, Source.AIRCRAFT);

    private static final SlotTime.OnClock SLOT =
            new SlotTime.OnClock(LocalDateTime.of(2026, 6, 12, 14, 30), ZoneId.of("Europe/London"));

    private final Random random;
    private double atS;

    public RandomEvents(long seed) {
        random = new Random(seed);
    }

    /** So many events, beginning with an open show. */
    public List<LiveEvent> next(int count) {
        List<LiveEvent> events = new ArrayList<>();
        events.add(new ShowEvent.ShowOpened(0, "Harbour Day", ACTS.subList(0, 3)));
        events.add(new FlightEvent.ActChosen(0, "first", "full", FIGURES, 60.0));
        events.add(new FlightEvent.ActStarted(0.1));
        while (events.size() < count) {
            events.add(next());
        }
        return events;
    }

    private LiveEvent next() {
        // Keys and clock cross now and then, so time may run a little backwards between events.
        atS = Math.max(0, atS + random.nextDouble() * 4 - 0.2);
        int index = random.nextInt(7);
        String remark = "r" + random.nextInt(8);
        RemarkForm form = random.nextBoolean() ? RemarkForm.FULL : RemarkForm.SHORT;
        return switch (random.nextInt(53)) {
            case 52 -> new LiveEvent.HandedOver(atS, random.nextBoolean());
            case 50 -> new AnnouncementEvent.AnnouncementShown(atS, "n" + random.nextInt(3), "Lost child");
            case 51 ->
                random.nextBoolean()
                        ? new AnnouncementEvent.BlankFilled(atS, "n" + random.nextInt(3), "where", "\u00fcber [there]")
                        : new AnnouncementEvent.AnnouncementRead(
                                atS, "n" + random.nextInt(3), "Lost child", List.of("A child", "waits"));
            case 0 -> new ShowEvent.ShowOpened(atS, "Harbour Day, again", ACTS.subList(0, 3));
            case 3 -> new ShowEvent.ShowEnded(atS);
            case 1 -> new ShowEvent.ActsMoved(atS, List.of(act(), act()), random.nextInt(-600, 600));
            case 2 -> new ShowEvent.ActsSwapped(atS, act(), act(), 600, -300);
            case 5 -> new ShowEvent.ActCancelled(atS, act());
            case 19 -> new ShowEvent.ActRestored(atS, act());
            case 37 ->
                new ShowEvent.ActAdded(atS, "in" + random.nextInt(4), "Put in", 5, random.nextBoolean() ? null : act());
            case 4 ->
                random.nextBoolean()
                        ? new FlightEvent.ActChosen(atS, act(), "full", order(), ways(), null, SLOT)
                        : new FlightEvent.ActChosen(atS, act(), "full", order(), random.nextBoolean() ? null : atS + 9);
            case 6 -> new FlightEvent.VariantChosen(atS, "flat", order(), ways());
            case 7, 8, 9 -> new FlightEvent.SourceChosen(atS, SOURCES.get(random.nextInt(3)));
            case 10, 11 -> new FlightEvent.ActStarted(atS);
            case 12 -> new FlightEvent.SteppedBack(atS, random.nextBoolean() ? List.of() : List.of(remark, "r0"));
            case 13 -> new FlightEvent.Held(atS);
            case 14 -> new FlightEvent.Released(atS);
            case 15 -> new FlightEvent.NextDropped(atS);
            case 16 -> new FlightEvent.DropUndone(atS);
            case 17 -> new FlightEvent.WentOffPlan(atS);
            case 18 -> new FlightEvent.CameBack(atS, index);
            case 20, 21, 22 -> new FlightEvent.ClockAdvanced(atS, index);
            case 23, 24 ->
                random.nextInt(4) == 0
                        ? new FlightEvent.AircraftStrayed(atS)
                        : new FlightEvent.AircraftSeen(atS, index);
            case 25 -> new FlightEvent.ActEnded(atS);
            case 26 -> new TalkEvent.RemarkStarted(atS, remark, form);
            case 27 -> new TalkEvent.RemarkSaid(atS, remark, form);
            case 28 -> new TalkEvent.RemarkSkipped(atS, remark);
            case 29 -> new TalkEvent.FillerTaken(atS, remark, form);
            case 43 -> new TalkEvent.RemarkLeft(atS, "r" + random.nextInt(8), random.nextBoolean());
            case 44 -> new TalkEvent.RemarkShown(atS, "r" + random.nextInt(8), form, atS - 4);
            case 30 -> new IncidentEvent.IncidentOpened(atS);
            case 31, 32 -> new IncidentEvent.IncidentClosed(atS, random.nextBoolean());
            case 33 ->
                random.nextBoolean()
                        ? new LiveEvent.NoteMade(
                                atS, random.nextBoolean() ? "" : "wind from the left, \u00fc\n2nd line")
                        : new LiveEvent.NoteWritten(atS, "late");
            case 34, 35 -> new LiveEvent.Undone(atS);
            case 38, 39 -> new FlightEvent.AircraftLost(atS, Math.max(0, atS - 5 * random.nextDouble()));
            case 41, 42 -> new FlightEvent.AircraftBegan(atS, Math.max(0, atS - 4 * random.nextDouble()));
            case 40 -> new FlightEvent.AircraftFound(atS);
            case 36 -> new FlightEvent.NextSwapped(atS);
            case 49 -> heard();
            default -> new FlightEvent.Stepped(atS);
        };
    }

    private LiveEvent heard() {
        double fromS = Math.max(0, atS - 3 * random.nextDouble());
        return switch (random.nextInt(3)) {
            case 0 -> new HeardEvent.ListeningBegan(atS);
            case 1 -> new HeardEvent.ListeningEnded(atS);
            default -> new HeardEvent.TalkHeard(atS, fromS, fromS + random.nextDouble());
        };
    }

    private String act() {
        return ACTS.get(random.nextInt(ACTS.size()));
    }

    private List<String> ways() {
        return random.nextBoolean() ? List.of() : order();
    }

    private List<String> order() {
        List<String> ids = new ArrayList<>(FIGURES);
        Collections.shuffle(ids, random);
        return ids.subList(0, random.nextInt(ids.size() + 1));
    }
}
