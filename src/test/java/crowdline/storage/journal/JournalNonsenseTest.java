package crowdline.storage.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import crowdline.console.live.SmallShow;
import crowdline.live.debrief.Debrief;
import crowdline.live.debrief.DebriefSources;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.now.LiveNow;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.RandomEvents;
import crowdline.live.state.Step;
import crowdline.patter.Plan;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import crowdline.timing.Pass;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Lines whose checksums fit and which make no sense, or are of a version to come. */
@Timeout(120)
class JournalNonsenseTest {
    private static final JournalCodec CODEC = new JournalCodec();
    private static final List<String> VALUES = List.of(
            "1e308",
            "-1e308",
            "1e400",
            "NaN",
            "\"NaN\"",
            "-1",
            "0",
            "1",
            "2.5",
            "3",
            "99",
            "2147483647",
            "2147483648",
            "1e7",
            "null",
            "true",
            "\"\"",
            "\" \"",
            "\"first\"",
            "\"loop\"",
            "\"second\"",
            "\"FULL\"",
            "\"CLOCK\"",
            "\"\\u0000\\uD800\"",
            "[]",
            "[null]",
            "[\"loop\",\"loop\"]",
            "[\"loop\",\"roll\"]",
            "{}",
            "[[[[[[[[]]]]]]]]");

    @TempDir
    Path folder;

    private static String line(String json) {
        CRC32 crc = new CRC32();
        crc.update(json.getBytes(StandardCharsets.UTF_8));
        return json.substring(0, json.length() - 1) + String.format(",\"crc32\":\"%08x\"}", crc.getValue());
    }

    private static String event(String kind, String of) {
        return line(
                "{\"event\":\"" + kind + "\",\"of\":" + of + ",\"writtenAtS\":3.0,\"wall\":\"2026-05-02T12:00:03Z\"}");
    }

    private static final DebriefSources SOURCES = new DebriefSources() {
        @Override
        public Optional<ActTimes> times(String actId, String variant) {
            return Optional.of(new ActTimes(actId, variant, List.of(new FigureTime("f1", 0, 10, 9, 11))));
        }

        @Override
        public Optional<Plan> plan(String actId, String variant) {
            return Optional.of(Plan.EMPTY);
        }

        @Override
        public String name(String actId, String variant, String figureId) {
            return figureId;
        }

        @Override
        public double spokenS(String text) {
            return 4;
        }

        @Override
        public List<Pass> passes(String actId, String variant) {
            return List.of();
        }
    };

    /** Lines like those the program writes, each with one value after another made nonsense. */
    private static List<String> nonsense(long seed, int count) {
        Random random = new Random(seed);
        List<LiveEvent> events = new RandomEvents(seed).next(200);
        List<String> lines = new ArrayList<>();
        while (lines.size() < count) {
            String good = CODEC.write(new JournalLine.Event(
                    java.time.Instant.parse("2026-05-02T12:00:03Z"), 3, events.get(random.nextInt(events.size()))));
            String json = good.substring(0, good.length() - 20) + "}";
            for (int changes = random.nextInt(3); changes > 0; changes--) {
                String value = VALUES.get(random.nextInt(VALUES.size()));
                List<String> keys = List.of(
                        "atS",
                        "index",
                        "actId",
                        "variant",
                        "figureIds",
                        "slotStartS",
                        "source",
                        "form",
                        "remarkId",
                        "seenS",
                        "sinceS",
                        "title",
                        "actIds",
                        "text",
                        "confirmed",
                        "writtenAtS",
                        "wall",
                        "event",
                        "of");
                String key = "\"" + keys.get(random.nextInt(keys.size())) + "\":";
                int at = json.indexOf(key);
                if (at >= 0) {
                    int from = at + key.length();
                    int to = endOfValue(json, from);
                    json = random.nextInt(6) == 0
                            ? json.substring(0, at) + "\"x\":0" + json.substring(to)
                            : json.substring(0, from) + value + json.substring(to);
                }
            }
            lines.add(line(json));
        }
        return lines;
    }

    private static int endOfValue(String json, int from) {
        int depth = 0;
        boolean text = false;
        for (int at = from; at < json.length(); at++) {
            char c = json.charAt(at);
            if (c == '"' && json.charAt(at - 1) != '\\') {
                text = !text;
            }
            if (!text && (c == '[' || c == '{')) {
                depth++;
            }
            if (!text && depth == 0 && (c == ',' || c == '}' || c == ']')) {
                return at;
            }
            if (!text && (c == ']' || c == '}')) {
                depth--;
            }
        }
        return json.length();
    }

    @Test
    void neitherReplayNorDebriefNorTheScreenThrowsWhateverALineSays() {
        int read = 0;
        for (long seed = 0; seed < 60; seed++) {
            LiveState state = LiveState.initial();
            for (LiveEvent first : new RandomEvents(seed).next(4)) {
                state = Live.next(state, first) instanceof Step.Moved moved ? moved.state() : state;
            }
            for (String text : nonsense(seed, 300)) {
                byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
                JournalLine line = CODEC.read(bytes, 0, bytes.length).orElse(null);
                if (line instanceof JournalLine.Event event) {
                    read++;
                    LiveState before = state;
                    Step[] step = new Step[1];
                    assertThatCode(() -> step[0] = Live.next(before, event.event()))
                            .as("seed %d: %s", seed, text)
                            .doesNotThrowAnyException();
                    state = step[0] instanceof Step.Moved moved ? moved.state() : state;
                }
            }
            LiveState end = state;
            assertThatCode(() -> {
                        var unused = Debrief.of(SmallShow.show(), end, SOURCES);
                        LiveNow.of(end, index -> 10, 5, Instant.EPOCH);
                    })
                    .as("seed %d", seed)
                    .doesNotThrowAnyException();
        }
        // Enough of it made some sense.
        assertThat(read).isGreaterThan(3000);
    }

    @Test
    void linesThatMakeNoSenseArePassedOverAndTold() throws Exception {
        List<String> lines = List.of(
                event("Stepped", "{\"atS\":1e308}"),
                event("Stepped", "{\"atS\":NaN}"),
                event("Stepped", "{\"atS\":null}"),
                event("Stepped", "{}"),
                event("Stepped", "null"),
                event("Stepped", "[]"),
                event("CameBack", "{\"atS\":3,\"index\":-1}"),
                event("CameBack", "{\"atS\":3,\"index\":3000000000}"),
                event("SourceChosen", "{\"atS\":3,\"source\":null}"),
                event("SourceChosen", "{\"atS\":3,\"source\":\"MOON\"}"),
                event("RemarkSaid", "{\"atS\":3,\"remarkId\":\"r\"}"),
                event("ActChosen", "{\"atS\":3,\"actId\":\"first\",\"variant\":\"full\",\"figureIds\":null}"),
                event("ActChosen", "{\"atS\":3,\"actId\":\"first\",\"variant\":\"full\",\"figureIds\":[null]}"),
                event("SomethingNew", "{\"atS\":3}"),
                line("{\"somethingElse\":{\"of\":7}}"),
                line("{\"resumed\":true}"),
                line(
                        "{\"resumed\":true,\"boot\":null,\"nanos\":0,\"wall\":\"+1000000-01-01T00:00:00Z\",\"sessionS\":1}"),
                line(
                        "{\"resumed\":true,\"boot\":null,\"nanos\":0,\"wall\":\"2026-05-02T12:00:03Z\",\"sessionS\":1e300}"),
                line("{\"crowdlineJournal\":2,\"show\":\"/shows/harbour.json\",\"sha256\":\"aa\"}"),
                line("{\"event\":" + "[".repeat(100_000) + "}"),
                line("[]"),
                line("}"),
                line("7}"));
        for (String nonsense : lines) {
            JournalWorld world = new JournalWorld(folder.resolve("at" + lines.indexOf(nonsense)));
            JournalOpening opening = world.open();
            world.pass(5);
            JournalWorld.play(
                    opening,
                    List.of(
                            new ShowEvent.ShowOpened(0, "Harbour Day", List.of("first")),
                            new LiveEvent.NoteMade(1, "before")));
            opening.journal().close();
            Path path = Objects.requireNonNull(opening.journal().path());
            String after = CODEC.write(new JournalLine.Event(world.wall, 5, new LiveEvent.NoteMade(2, "after")));
            Files.writeString(path, nonsense + "\n" + after + "\n", StandardOpenOption.APPEND);

            JournalOpening again = world.open();
            again.journal().close();

            String shown = nonsense.substring(0, Math.min(100, nonsense.length()));
            assertThat(again.resumed()).as(shown).isTrue();
            assertThat(again.state().notes()).as(shown).extracting("text").containsExactly("before", "after");
            assertThat(again.notices())
                    .as(shown)
                    .singleElement()
                    .asString()
                    .startsWith("Line 5 of the journal cannot be read; everything else was used.");
        }
    }

    @Test
    void journalOfALaterVersionIsLeftAlone() throws Exception {
        JournalWorld world = new JournalWorld(folder);
        Path later = folder.resolve("0001-2027-01-01.journal");
        Files.writeString(
                later,
                (line("{\"crowdlineJournal\":2,\"show\":\"/shows/harbour.json\",\"sha256\":\"aa\"}") + "\n").repeat(2));
        byte[] before = Files.readAllBytes(later);

        JournalOpening opening = world.open();
        opening.journal().close();

        assertThat(opening.resumed()).isFalse();
        assertThat(opening.notices())
                .containsExactly("The journal 0001-2027-01-01.journal cannot be read; it is left as it is.");
        assertThat(later).hasBinaryContent(before);
    }
}
