package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One number written wrongly is told in its place, and takes nothing else down. */
@Timeout(value = 300, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class TypingSlipTest {
    private static final String WRACKENHOLT = "wrackenholt-evening";
    /** {@code -Dcrowdline.slips=4} tries four ways of each key. */
    private static final int SLIPS_OF_A_KEY = Integer.getInteger("crowdline.slips", 1);

    private final WholeShow whole = new WholeShow();

    private static String show(String name) throws IOException {
        return Files.readString(Path.of("src/test/resources/crowdline/shows", name + ".json"));
    }

    private static List<String> troubles(List<String> findings) {
        return findings.stream().filter(f -> !f.contains(": note: ")).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"wrackenholt-evening", "fenmarsh-air-day"})
    void theDemosAsTheyAreGiveNoWarning(String name) throws IOException {
        assertThat(troubles(whole.of(Files.readString(Path.of("demo-shows", name + ".json")))))
                .isEmpty();
        assertThat(troubles(whole.of(show(name)))).isEmpty();
    }

    /** Of every key that a demo has, one place by lot, written wrongly in a way by lot. */
    @Tag("slow")
    @ParameterizedTest
    @CsvSource({"wrackenholt-evening, 11", "fenmarsh-air-day, 12"})
    void noSlipTakesAPlaceDown(String name, long seed) throws IOException {
        Random random = new Random(seed);
        Slips slips = new Slips(show(name));
        Map<String, List<Slips.Place>> byKey = new TreeMap<>();
        slips.places()
                .forEach(p ->
                        byKey.computeIfAbsent(p.key(), k -> new ArrayList<>()).add(p));
        assertThat(byKey).hasSizeGreaterThan(40);
        for (List<Slips.Place> places : byKey.values()) {
            List<Slips.Slip> ways = new ArrayList<>(slips.of(places.get(random.nextInt(places.size()))));
            Collections.shuffle(ways, random);
            for (Slips.Slip slip : ways.subList(0, Math.min(SLIPS_OF_A_KEY, ways.size()))) {
                try {
                    whole.of(slip.text());
                } catch (RuntimeException e) {
                    throw new AssertionError(name + ", seed " + seed + ": " + slip, e);
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        "heightFt": 2350   | "heightFt": 235      | the heightFt is 235, from which variant "full" comes to
        "heightFt": 2350   | "heightFt": 235      | ft, below the ground; from 2,350 it does not: was that meant?
        "heightFt": 2350   | "heightFt": 23500    | the heightFt is 23,500; 0 to 12,000 is plausible (feet above the datum, within sight of the crowd); was 2,350 meant?
        "massKg": 840      | "massKg": 84         | the massKg is 84; 150 to 30,000 is plausible (from an ultralight to a wartime bomber); was 840 meant?
        "massKg": 840      | "massKg": 8400       | massKg, wingAreaM2 together make 525 kg for each m² of wing; 12 to 450 is plausible; check them
        "kt": 62           | "kt": 6.2            | the kt is 6.2 at 2,350 ft; "teasel" stalls at about
        "kt": 150          | "kt": 1500           | ; was 150 meant?
        "slotMinutes": 7   | "slotMinutes": 70    | the slotMinutes are 70; variant
        "slotMinutes": 7   | "slotMinutes": 4     | minutes, longer than its slot of 4; ask the pilot
        "lonDeg": 3.1      | "lonDeg": 3100       | venue.lonDeg is 3100; it must be from -180 to 180
        "qnhHpa": 1019     | "qnhHpa": 29.92      | air.qnhHpa is 29.92; it must be from 850 to 1100
        "elevationFt": 90  | "elevationFt": "90 ft" | venue.elevationFt is "90 ft"; it must be a number; write 90 alone, as the key has its unit
        "latDeg": 54.6     | "latDeg": "54,6"     | venue.latDeg is "54,6"; it must be a number; write 54.6, with a full stop and without quotes
        "heightFt": 2350   | "heightFt": "2,350"  | it must be a number; write 2350, without the comma and without quotes
        """)
    void aSlipIsToldInItsPlaceWithWhatWasProbablyMeant(String from, String to, String sentence) throws IOException {
        String show = show(WRACKENHOLT);
        assertThat(show).contains(from.strip());
        List<String> found = troubles(whole.of(show.replaceFirst(Pattern.quote(from.strip()), to.strip())));
        assertThat(found).anySatisfy(finding -> assertThat(finding).contains(sentence.strip()));
    }

    @Test
    void aSlipIsToldWithItsLineAndColumn() throws IOException {
        String show = show(WRACKENHOLT);
        int at = show.indexOf("\"heightFt\": 2350");
        long line = show.substring(0, at).lines().count();
        assertThat(troubles(whole.of(show.replace("\"heightFt\": 2350", "\"heightFt\": 23500"))))
                .anySatisfy(finding -> assertThat(finding).startsWith("show.json:" + line + ":"));
    }
}
