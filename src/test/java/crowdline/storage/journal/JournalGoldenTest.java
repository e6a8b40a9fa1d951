package crowdline.storage.journal;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.AnnouncementEvent.AnnouncementRead;
import crowdline.live.event.AnnouncementEvent.AnnouncementShown;
import crowdline.live.event.AnnouncementEvent.BlankFilled;
import crowdline.live.event.FlightEvent.ActChosen;
import crowdline.live.event.FlightEvent.ActEnded;
import crowdline.live.event.FlightEvent.ActStarted;
import crowdline.live.event.FlightEvent.AircraftBegan;
import crowdline.live.event.FlightEvent.AircraftFound;
import crowdline.live.event.FlightEvent.AircraftLost;
import crowdline.live.event.FlightEvent.AircraftSeen;
import crowdline.live.event.FlightEvent.AircraftStrayed;
import crowdline.live.event.FlightEvent.CameBack;
import crowdline.live.event.FlightEvent.ClockAdvanced;
import crowdline.live.event.FlightEvent.DropUndone;
import crowdline.live.event.FlightEvent.Held;
import crowdline.live.event.FlightEvent.NextDropped;
import crowdline.live.event.FlightEvent.NextSwapped;
import crowdline.live.event.FlightEvent.Released;
import crowdline.live.event.FlightEvent.SourceChosen;
import crowdline.live.event.FlightEvent.Stepped;
import crowdline.live.event.FlightEvent.SteppedBack;
import crowdline.live.event.FlightEvent.VariantChosen;
import crowdline.live.event.FlightEvent.WentOffPlan;
import crowdline.live.event.HeardEvent.ListeningBegan;
import crowdline.live.event.HeardEvent.ListeningEnded;
import crowdline.live.event.HeardEvent.TalkHeard;
import crowdline.live.event.IncidentEvent.IncidentClosed;
import crowdline.live.event.IncidentEvent.IncidentOpened;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.LiveEvent.HandedOver;
import crowdline.live.event.LiveEvent.NoteMade;
import crowdline.live.event.LiveEvent.NoteWritten;
import crowdline.live.event.LiveEvent.Undone;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.ShowEvent.ShowEnded;
import crowdline.live.event.ShowEvent.ShowOpened;
import crowdline.live.event.SlotTime.OnClock;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent.FillerTaken;
import crowdline.live.event.TalkEvent.RemarkLeft;
import crowdline.live.event.TalkEvent.RemarkSaid;
import crowdline.live.event.TalkEvent.RemarkShown;
import crowdline.live.event.TalkEvent.RemarkSkipped;
import crowdline.live.event.TalkEvent.RemarkStarted;
import crowdline.live.state.Note;
import crowdline.show.figure.RemarkForm;
import crowdline.storage.Golden;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Journals as they lie on disks, and what they say. What is expected is written here by hand. */
class JournalGoldenTest {
    private static final Instant WALL = Instant.parse("2026-11-28T13:30:00Z");
    private static final JournalLine HEADER = new JournalLine.Header(
            1,
            new JournalShow(
                    "/shows/harbour \u201cday\u201d.json",
                    "5891b5b522d5df086d0ff0b110fbd9d21bb4fc7163af34d08286a2e846f6be03"),
            new JournalLine.Base("boot-1", -7_000_000_000_001L, WALL, 0));

    private static final List<LiveEvent> EVENTS = List.of(
            new ShowOpened(0.25, "Harbour Day", List.of("first", "second")),
            new ActChosen(
                    1.25,
                    "first",
                    "full",
                    List.of("loop", "roll", "spin"),
                    List.of(),
                    null,
                    new OnClock(LocalDateTime.of(2026, 11, 28, 14, 30), ZoneId.of("Europe/London"))),
            new ActChosen(2.25, "second", "low", List.of(), -61.5),
            new ActChosen(
                    3.25,
                    "first",
                    "full",
                    List.of("loop"),
                    List.of(),
                    null,
                    new OnClock(LocalDateTime.of(2026, 11, 28, 14, 30, 15, 250_000_000), ZoneId.of("Asia/Kathmandu"))),
            new VariantChosen(6.25, "flat \u2014 \u00bd\"\\", List.of("roll", "loop")),
            new SourceChosen(7.25, Source.HAND),
            new SourceChosen(8.25, Source.CLOCK),
            new SourceChosen(9.25, Source.AIRCRAFT),
            new ActStarted(10.25),
            new Stepped(11.25),
            new SteppedBack(12.25, List.of("call-roll", "fact-wing")),
            new SteppedBack(13.25, List.of()),
            new Held(14.25),
            new Released(15.25),
            new NextDropped(16.25),
            new DropUndone(17.25),
            new NextSwapped(18.25),
            new WentOffPlan(19.25),
            new CameBack(20.25, 2),
            new ClockAdvanced(22.25, 1),
            new AircraftSeen(23.25, 3),
            new AircraftLost(24.25, 20.125),
            new AircraftFound(25.25),
            new AircraftBegan(26.25, 24.125),
            new ActEnded(27.25),
            new RemarkStarted(28.25, "call-loop", RemarkForm.FULL),
            new RemarkSaid(29.25, "call-loop", RemarkForm.SHORT),
            new RemarkLeft(30.25, "call-roll", true),
            new RemarkSkipped(31.25, "fact-wing"),
            new FillerTaken(32.25, "fact-crew", RemarkForm.SHORT),
            new IncidentOpened(33.25),
            new IncidentClosed(34.25, true),
            new NoteMade(35.25, "Ask about the smoke"),
            new Undone(36.25));

    /** Each written a quarter of a second after it happened. */
    private static JournalLine written(LiveEvent event) {
        double writtenAtS = event.atS() + 0.25;
        return new JournalLine.Event(WALL.plusMillis(Math.round(writtenAtS * 1000)), writtenAtS, event);
    }

    private static List<JournalLine> ofVersion1() {
        List<JournalLine> lines = new ArrayList<>(List.of(HEADER));
        EVENTS.forEach(event -> lines.add(written(event)));
        lines.add(new JournalLine.Resumed(
                new JournalLine.Base(null, 30_000_000_000L, Instant.parse("2026-11-28T14:30:00Z"), 3600.5)));
        lines.add(new JournalLine.Event(WALL, 5.5e-6, new RemarkLeft(3601.25, "call-spin", false)));
        lines.add(written(new IncidentClosed(3602.25, false)));
        lines.add(written(new ShowEnded(3603.25)));
        return lines;
    }

    /** What came with notes on the fly; the journal from before has none of it. */
    private static List<JournalLine> ofNotes() {
        return List.of(
                HEADER,
                written(new NoteMade(1.25, "")),
                written(new NoteWritten(2.25, "Ask about the \u201csmoke\u201d")),
                written(new Undone(3.25)));
    }

    /** What came with the ways between figures. */
    private static List<JournalLine> ofTransits() {
        OnClock slot = new OnClock(LocalDateTime.of(2026, 11, 28, 14, 30), ZoneId.of("Europe/London"));
        return List.of(
                HEADER,
                written(new ActChosen(
                        1.25,
                        "first",
                        "full",
                        List.of("in", "loop", "back", "roll"),
                        List.of("in", "back"),
                        null,
                        slot)),
                written(new VariantChosen(2.25, "low", List.of("in", "roll"), List.of("in"))));
    }

    /** What came with the duties of the day. */
    private static List<JournalLine> ofDuties() {
        return List.of(
                HEADER,
                written(new RemarkShown(61.25, "sponsor", RemarkForm.FULL, 55.125)),
                written(new RemarkShown(62.25, "joke \u201cone\u201d", RemarkForm.SHORT, -1.5)));
    }

    /** What came with an aircraft that says that it is off the plan. */
    private static List<JournalLine> ofStraying() {
        return List.of(HEADER, written(new AircraftStrayed(1.25)));
    }

    /** What came with the running order of the day. */
    private static List<JournalLine> ofTwoSpeakers() {
        return List.of(HEADER, written(new HandedOver(1.25, true)), written(new HandedOver(2.25, false)));
    }

    private static List<JournalLine> ofListening() {
        return List.of(
                HEADER,
                written(new ListeningBegan(1.25)),
                written(new TalkHeard(6.5, 2.25, 5)),
                written(new ListeningEnded(9.5)));
    }

    private static List<JournalLine> ofAnnouncements() {
        return List.of(
                HEADER,
                written(new AnnouncementShown(1.25, "lost-child", "Lost child, \u201cagain\u201d")),
                written(new BlankFilled(2.25, "lost-child", "age and sex", "a girl of six, red coat")),
                written(new AnnouncementRead(
                        3.25,
                        "lost-child",
                        "Lost child, \u201cagain\u201d",
                        List.of("A girl of six, red coat, is waiting.", "Please go there."))));
    }

    private static List<JournalLine> ofTheDay() {
        return List.of(
                HEADER,
                written(new ShowEvent.ActsMoved(1.25, List.of("second", "third"), 720)),
                written(new ShowEvent.ActsSwapped(2.25, "second", "third", 900, -900)),
                written(new ShowEvent.ActCancelled(3.25, "third")),
                written(new ShowEvent.ActRestored(4.25, "third")),
                written(new ShowEvent.ActAdded(5.25, "put-in-1", "A fly-past \u201cfor Kim\u201d", 4.5, "second")),
                written(new ShowEvent.ActAdded(6.25, "put-in-2", "Engine run", 3, null)));
    }

    private static List<String> texts(String name) {
        return new String(Golden.bytes(name), StandardCharsets.UTF_8).lines().toList();
    }

    private static List<JournalLine> read(String name) throws IOException {
        List<JournalLine> read = new ArrayList<>();
        JournalLines.Form form = JournalLines.read(
                new ByteArrayInputStream(Golden.bytes(name)), new JournalCodec(), new JournalLines.Sink() {
                    @Override
                    public boolean good(int number, JournalLine line, String text) {
                        return read.add(line);
                    }

                    @Override
                    public void bad(int number) {
                        throw new AssertionError(name + ", line " + number + ", cannot be read");
                    }
                });
        assertThat(form).isEqualTo(JournalLines.Form.CLEAN);
        return read;
    }

    @Test
    void journalOfVersion1IsReadAsItWasMeant() throws IOException {
        assertThat(read("journal-1.jsonl")).containsExactlyElementsOf(ofVersion1());
    }

    @Test
    void journalWithNotesIsReadAndWrittenAsItWasMeant() throws IOException {
        assertThat(read("journal-1-notes.jsonl")).containsExactlyElementsOf(ofNotes());
        JournalCodec codec = new JournalCodec();
        assertThat(ofNotes().stream().map(codec::write)).containsExactlyElementsOf(texts("journal-1-notes.jsonl"));
    }

    @Test
    void journalWithTransitsIsReadAndWrittenAsItWasMeant() throws IOException {
        assertThat(read("journal-1-transits.jsonl")).containsExactlyElementsOf(ofTransits());
        JournalCodec codec = new JournalCodec();
        assertThat(ofTransits().stream().map(codec::write))
                .containsExactlyElementsOf(texts("journal-1-transits.jsonl"));
    }

    @Test
    void journalWithDutiesIsReadAndWrittenAsItWasMeant() throws IOException {
        assertThat(read("journal-1-duties.jsonl")).containsExactlyElementsOf(ofDuties());
        JournalCodec codec = new JournalCodec();
        assertThat(ofDuties().stream().map(codec::write)).containsExactlyElementsOf(texts("journal-1-duties.jsonl"));
    }

    @Test
    void journalWithAnAircraftThatStraysIsReadAndWritten() throws IOException {
        assertThat(read("journal-1-strayed.jsonl")).containsExactlyElementsOf(ofStraying());
        JournalCodec codec = new JournalCodec();
        assertThat(ofStraying().stream().map(codec::write)).containsExactlyElementsOf(texts("journal-1-strayed.jsonl"));
    }

    @Test
    void journalOfADayIsReadAndWrittenAsItWasMeant() throws IOException {
        assertThat(read("journal-1-day.jsonl")).containsExactlyElementsOf(ofTheDay());
        JournalCodec codec = new JournalCodec();
        assertThat(ofTheDay().stream().map(codec::write)).containsExactlyElementsOf(texts("journal-1-day.jsonl"));
    }

    @Test
    void journalWithAnnouncementsIsReadAndWrittenAsItWasMeant() throws IOException {
        assertThat(read("journal-1-announcements.jsonl")).containsExactlyElementsOf(ofAnnouncements());
        JournalCodec codec = new JournalCodec();
        assertThat(ofAnnouncements().stream().map(codec::write))
                .containsExactlyElementsOf(texts("journal-1-announcements.jsonl"));
    }

    @Test
    void journalOfTwoSpeakersIsReadAndWrittenAsItWasMeant() throws IOException {
        assertThat(read("journal-1-second.jsonl")).containsExactlyElementsOf(ofTwoSpeakers());
        JournalCodec codec = new JournalCodec();
        assertThat(ofTwoSpeakers().stream().map(codec::write))
                .containsExactlyElementsOf(texts("journal-1-second.jsonl"));
    }

    @Test
    void whatTheMicrophoneHeardIsReadAndWrittenAsItWasMeant() throws IOException {
        assertThat(read("journal-1-heard.jsonl")).containsExactlyElementsOf(ofListening());
        JournalCodec codec = new JournalCodec();
        assertThat(ofListening().stream().map(codec::write)).containsExactlyElementsOf(texts("journal-1-heard.jsonl"));
    }

    @Test
    void journalFromBeforeSlotsWentByTheClockIsReadAsItWasMeant() throws IOException {
        assertThat(read("journal-1-before-clock-slots.jsonl"))
                .containsExactly(
                        HEADER,
                        written(new ActChosen(1.25, "first", "full", List.of("loop", "roll"), -61.5)),
                        written(new ActChosen(2.25, "second", "low", List.of(), null)),
                        written(new SteppedBack(3.25, List.of())));
    }

    @Test
    void journalIsFoundUnderTheNameItHas(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("0007-2026-11-28.journal");
        Files.write(file, Golden.bytes("journal-1.jsonl"));
        JournalMachine machine = new JournalMachine(() -> 0, () -> WALL, "boot-2");

        JournalReading reading = new JournalShelf(folder, machine, 0)
                .last(new JournalShow(
                        "/moved/harbour.json", "5891b5b522d5df086d0ff0b110fbd9d21bb4fc7163af34d08286a2e846f6be03"))
                .orElseThrow();

        assertThat(reading.path()).isEqualTo(file);
        assertThat(reading.damagedLines()).isZero();
        assertThat(reading.state().notes()).extracting(Note::text).containsExactly("Ask about the smoke");
    }

    @Test
    void journalIsWrittenAsItAlwaysWas() {
        JournalCodec codec = new JournalCodec();
        assertThat(ofVersion1().stream().map(codec::write)).containsExactlyElementsOf(texts("journal-1.jsonl"));
    }

    @Test
    void everyEventHasANameAndALineWithAllItsValues() {
        JsonMapper mapper = new JsonMapper();
        List<String> texts = new ArrayList<>(texts("journal-1.jsonl"));
        texts.addAll(texts("journal-1-notes.jsonl"));
        texts.addAll(texts("journal-1-transits.jsonl"));
        texts.addAll(texts("journal-1-day.jsonl"));
        texts.addAll(texts("journal-1-announcements.jsonl"));
        texts.addAll(texts("journal-1-second.jsonl"));
        texts.addAll(texts("journal-1-heard.jsonl"));
        texts.addAll(texts("journal-1-duties.jsonl"));
        texts.addAll(texts("journal-1-strayed.jsonl"));
        List<JournalLine> lines = new ArrayList<>(ofVersion1());
        lines.addAll(ofNotes());
        lines.addAll(ofTransits());
        lines.addAll(ofTheDay());
        lines.addAll(ofAnnouncements());
        lines.addAll(ofTwoSpeakers());
        lines.addAll(ofListening());
        lines.addAll(ofDuties());
        lines.addAll(ofStraying());
        Map<Class<?>, Set<String>> values = new HashMap<>();
        for (int i = 0; i < texts.size(); i++) {
            if (lines.get(i) instanceof JournalLine.Event line) {
                Class<?> type = line.event().getClass();
                JsonNode of = mapper.readTree(texts.get(i)).path("of");
                values.computeIfAbsent(type, t -> new HashSet<>()).addAll(of.propertyNames());
            }
        }
        values.forEach((type, names) -> assertThat(names)
                .as("what a journal says of %s", type.getSimpleName())
                .hasSameSizeAs(type.getRecordComponents()));
        Set<Class<?>> all = new HashSet<>();
        kinds(LiveEvent.class).forEach(all::add);
        assertThat(new JournalEvents().types()).containsExactlyInAnyOrderElementsOf(all);
        assertThat(values.keySet()).as("events in the golden journal").containsExactlyInAnyOrderElementsOf(all);
    }

    private static Stream<Class<?>> kinds(Class<?> type) {
        return type.isSealed()
                ? Stream.of(type.getPermittedSubclasses()).flatMap(JournalGoldenTest::kinds)
                : Stream.of(type);
    }
}
