package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.list.line.Place;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import crowdline.storage.show.CatalogueFile;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ListReaderTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final ListReader READER = new ListReader(CATALOGUE);

    private final Map<Integer, FigureList> madeUp = new HashMap<>();

    private static final Pattern TOKEN = Pattern.compile("[\\p{L}\\p{N}½¼¾]+");

    private static Map<String, Integer> tokens(String text) {
        Map<String, Integer> tokens = new HashMap<>();
        Matcher found = TOKEN.matcher(text);
        while (found.find()) {
            tokens.merge(found.group(), 1, Integer::sum);
        }
        return tokens;
    }

    private static String kept(FigureList list) {
        List<String> kept = new ArrayList<>(list.notes());
        list.lines().forEach(line -> kept.add(line.text()));
        return String.join("\n", kept);
    }

    private static List<String> codes(FigureList list) {
        return list.findings().stream().map(Finding::code).toList();
    }

    /** Read once for all that is asked of it. */
    private FigureList madeUpAndRead(int seed) {
        return madeUp.computeIfAbsent(seed, s -> READER.read(madeUp(s)));
    }

    static IntStream seeds() {
        return IntStream.range(0, 400);
    }

    /** Pieces of every kind, joined by anything. */
    private static String madeUp(int seed) {
        Random random = new Random(seed);
        List<String> pieces = new ArrayList<>(List.of(
                "loop",
                "2 loops",
                "stall turn",
                "right end",
                "at 140 kt",
                "(45 s)",
                "spin (2 turns",
                "with a roll",
                "1/2 Cuban",
                "smoke on",
                "from the left",
                "Hi Sam",
                "Cheers",
                "Jo",
                "here is what I fly:",
                "if the cloud is low",
                "dog fight",
                "1.",
                "2)",
                "-",
                "•",
                "x2",
                "½",
                "12:30",
                "3,000 ft",
                "no spin",
                "and",
                "pull up",
                "into",
                "a",
                "the",
                "Größe",
                "日本",
                "p.s.",
                "???",
                "the loop will be left out",
                "on",
                "L to R",
                "9999999",
                "up",
                "quarter roll",
                "zz zz zz",
                "🙂"));
        CATALOGUE.entries().forEach(entry -> pieces.add(entry.name()));
        List<String> joints = List.of(
                ", ", " ", "\n", "; ", " then ", " into ", " -> ", "\t", ". ", ": ", " (", ") ", " - ", "\n\n", "\r\n",
                " and ", ",", "|", "…", " / ");
        StringBuilder text = new StringBuilder();
        int count = 1 + random.nextInt(40);
        for (int i = 0; i < count; i++) {
            text.append(pieces.get(random.nextInt(pieces.size()))).append(joints.get(random.nextInt(joints.size())));
        }
        return text.toString();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noWordOfATextIsLostOrToldTwice(int seed) {
        String text = madeUp(seed);

        assertThat(tokens(kept(madeUpAndRead(seed)))).as(text).isEqualTo(tokens(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.\t", "2)", "loop\n3. ", "  4.\n5. "})
    void numberWithNothingBehindItIsKeptAsANote(String text) {
        assertThat(tokens(kept(READER.read(text)))).isEqualTo(tokens(text));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyLineCanBeUsed(int seed) {
        FigureList list = madeUpAndRead(seed);

        assertThat(list.lines()).allSatisfy(line -> {
            assertThat(line.choices()).allMatch(choice -> CATALOGUE.find(choice).isPresent());
            assertThat(line.figure() == null || CATALOGUE.find(line.figure()).isPresent())
                    .isTrue();
            assertThat(line.sure() && !line.choices().isEmpty()).isFalse();
        });
    }

    @Test
    void everyNameAndAliasOfTheCatalogueIsReadAsItsFigure() {
        for (CatalogueEntry entry : CATALOGUE.entries()) {
            List<String> names = new ArrayList<>(entry.aliases());
            names.add(entry.name());
            for (String name : names) {
                assertThat(READER.read(name).lines())
                        .as(name)
                        .singleElement()
                        .satisfies(line -> assertThat(line.figure()).isEqualTo(entry.name()))
                        .satisfies(line -> assertThat(line.sure()).isTrue());
            }
        }
    }

    @Test
    void aFigureOfTheShowsOwnIsReadLikeAnyOther() {
        Catalogue own = CATALOGUE.with(List.of(new CatalogueEntry(
                "windmill",
                List.of("big wheel"),
                "own",
                "It turns.",
                "Watch it turn.",
                "",
                "",
                "",
                "",
                "",
                null,
                null,
                null,
                List.of())));

        assertThat(new ListReader(own).read("loop, big wheels (30 s)").lines())
                .extracting(ListLine::figure)
                .containsExactly("loop", "windmill");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\n\n\t\n"})
    void anEmptyListIsRefused(String text) {
        FigureList list = READER.read(text);

        assertThat(list.lines()).isEmpty();
        assertThat(list.findings()).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.ERROR);
            assertThat(f.message()).startsWith("The list is empty; paste what the pilot sent");
        });
    }

    @Test
    void aListInAnotherLanguageAsksWhetherItIsEnglish() {
        FigureList list = READER.read("Silmukka\nHidas kierre\nSyöksy\nKaarto\n".repeat(10));

        assertThat(list.findings()).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.ERROR);
            assertThat(f.message())
                    .isEqualTo("No figure was recognised in 40 lines; is this a list of figures in English?");
        });
    }

    @Test
    void thingsThatAreNoFiguresStayAsTimedLinesUnderTheirOwnWords() {
        FigureList list = READER.read("milk, eggs, bread (20 s)");

        assertThat(list.lines()).extracting(ListLine::title).containsExactly("milk", "eggs", "bread");
        assertThat(list.lines()).allMatch(line -> line.figure() == null && !line.sure());
        assertThat(list.lines().get(2).seconds()).isEqualTo(20);
        assertThat(codes(list)).containsExactly("list-no-figures");
    }

    @Test
    void numbersOfALineWithoutSpacesCountNoFigures() {
        FigureList list = READER.read("1. Take-off;2. Half Cuban;3. Loop;4. Slow roll");

        assertThat(list.lines())
                .extracting(ListLine::figure)
                .containsExactly("take-off", "half Cuban", "loop", "slow roll");
        assertThat(list.lines()).allMatch(line -> line.count() == null && line.sure());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "6 minutes: loop, roll|6 minutes:",
                "9 min, loop, roll|9 min,",
                "Slot 15:20, 9 min. Loop, roll|Slot 15:20, 9 min."
            })
    void minutesAheadOfAllFiguresAreNotThoseOfTheFirst(String text, String note) {
        FigureList list = READER.read(text);

        assertThat(list.lines()).extracting(ListLine::seconds).containsOnlyNulls();
        assertThat(String.join(" ", list.notes())).isEqualTo(note);
    }

    @Test
    void aTimeOfDayIsNoLength() {
        FigureList list = READER.read("""
                14:05 Take-off
                14:05 - 14:20 Climb to 4000 m
                14:20 Exit
                14:20 Freefall about 50 seconds
                14:23 Canopy descent""");

        assertThat(list.lines()).extracting(ListLine::seconds).containsExactly(null, null, null, 50.0, null);
    }

    @Test
    void aNovelIsNoList() {
        String page =
                "It was late in the year when she came down the hill again, and the boys had left the orchard long"
                        + " before. \"You will take the road by the mill,\" he said, \"or none.\" A loop of rope hung from the"
                        + " beam; nobody could tell who had put it there. She began to turn, slowly, and the wind turned with her.\n";
        FigureList list = READER.read(page.repeat(60));

        assertThat(list.lines()).isEmpty();
        assertThat(kept(list)).contains("orchard");
        assertThat(list.findings()).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.ERROR);
            assertThat(f.message()).contains("is this a list of figures in English?");
        });
    }

    @Test
    void contradictingPlacesAreAskedAbout() {
        FigureList list = READER.read("loop, stall turn left end, right end");

        assertThat(list.lines().get(1).place()).isEqualTo(Place.LEFT_END);
        assertThat(list.lines().get(1).sure()).isFalse();
        assertThat(list.findings()).singleElement().satisfies(f -> {
            assertThat(f.path()).isEqualTo("lines[1]");
            assertThat(f.message()).startsWith("\"stall turn left end, right end\" says more than one place");
        });
    }

    @Test
    void moreFiguresThanAnActHoldsAreRefusedButKept() {
        FigureList list = READER.read("loop\n".repeat(301));

        assertThat(list.lines()).hasSize(301);
        assertThat(list.findings()).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.ERROR);
            assertThat(f.message()).isEqualTo("The list has 301 figures; an act has 300 at most, so cut it down");
        });
    }

    @Test
    void tenThousandLinesAreRefusedWithTheLimit() {
        FigureList list = READER.read("loop\n".repeat(10_000));

        assertThat(list.findings()).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.ERROR);
            assertThat(f.message()).contains("10,000 lines").contains("1,000 lines");
        });
    }

    @Test
    void aNumberOutOfAnyRangeStaysInTheNote() {
        ListLine line = READER.read("loop at 99999 kt").lines().get(0);

        assertThat(line.entryKt()).isNull();
        assertThat(line.note()).contains("99999 kt");
    }

    static List<String> longTexts() {
        return List.of(
                "loop, stall turn right end, 2-turn spin at 140 kt\n".repeat(1_000),
                "loop ".repeat(10_000),
                "(".repeat(50_000),
                "l".repeat(50_000),
                "1".repeat(50_000),
                "1,".repeat(25_000),
                "- ".repeat(25_000),
                "pull up into ".repeat(3_800),
                " ".repeat(50_000),
                "approx. ".repeat(6_000),
                "2 to 3 ".repeat(7_000),
                "in from the ".repeat(4_000),
                "the roll is left, then the green fan. ".repeat(1_280),
                "swap the loop for the spin. ".repeat(1_750),
                "loop. 140 kt. no, 150 kt. ".repeat(1_880),
                "with no loop and no roll but no spin. ".repeat(1_280),
                words());
    }

    /** Words that nobody has seen before. */
    private static String words() {
        Random random = new Random(5);
        StringBuilder text = new StringBuilder();
        while (text.length() < 49_000) {
            for (int i = 0; i < 6 + random.nextInt(4); i++) {
                text.append((char) ('a' + random.nextInt(26)));
            }
            text.append(random.nextInt(5) == 0 ? "\n" : " ");
        }
        return text.substring(0, Math.min(text.length(), 49_000));
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("longTexts")
    void theLongestTextsAreReadInSeconds(String text) {
        // Of the processor, as other tests keep the machine busy.
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long start = threads.getCurrentThreadCpuTime();
        FigureList list = READER.read(text);
        Duration took = Duration.ofNanos(threads.getCurrentThreadCpuTime() - start);

        assertThat(list.findings()).isNotEmpty();
        assertThat(took).isLessThan(Duration.ofSeconds(5));
    }

    /** How long it lasts is asked for only where nobody has said so. */
    @Test
    void timeThatWasToldIsNotAskedForAgain() {
        assertThat(READER.read("loop, wobble of doom 45 s").findings())
                .singleElement()
                .satisfies(f -> assertThat(f.message()).endsWith("so choose a figure if there is one"));
        assertThat(READER.read("loop, wobble of doom").findings())
                .singleElement()
                .satisfies(f -> assertThat(f.message()).endsWith("so choose a figure or say how long it lasts"));
    }
}
