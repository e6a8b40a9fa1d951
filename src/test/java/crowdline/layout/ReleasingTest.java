package crowdline.layout;

import static crowdline.layout.LayoutTest.a;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.measure.Units;
import crowdline.show.Venue;
import crowdline.show.aircraft.Kind;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How high an act without an engine begins. */
class ReleasingTest {
    private static final String GLIDER = "aerobatic glider";
    private static final Pattern NEEDS =
            Pattern.compile("(.*) is given ([\\d,]+) ft, and the act takes ([\\d,]+) ft more:"
                    + " give it ([\\d,]+) ft, or take something out; (.*) only given a time");
    private static final List<String> ACT = List.of(
            "loop",
            "half Cuban",
            "stall turn",
            "aileron roll",
            "humpty bump",
            "half Cuban",
            "loop",
            "loop with a roll on top",
            "spin",
            "wing-over",
            "slow roll",
            "low pass");

    private static LaidOut laid(Venue.Limits limits, LayoutTest.Wanted first) {
        return LayoutTest.laid(
                GLIDER,
                limits,
                Stream.concat(Stream.of(first), ACT.stream().map(LayoutTest::a)).toArray(LayoutTest.Wanted[]::new));
    }

    private static Piece first(LaidOut laid, String name) {
        return laid.pieces().stream()
                .filter(piece -> piece.wish() != null && piece.wish().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> said(LaidOut laid) {
        return laid.findings().stream().map(LaidOut.Finding::message).toList();
    }

    private static List<String> givenUp(LaidOut laid) {
        return laid.pieces().stream()
                .filter(piece -> piece.lack() != null)
                .map(piece -> Objects.requireNonNull(piece.wish()).name())
                .toList();
    }

    @ParameterizedTest
    @ValueSource(doubles = {3_900, 5_000})
    void aToldReleaseHolds(double feet) {
        LaidOut laid = laid(Venue.Limits.NONE, a("tow release").heightFt(feet));

        assertThat(Units.ftFromM(first(laid, "tow release").from().place().z())).isCloseTo(feet, within(20.0));
        assertThat(said(laid)).isEmpty();
        assertThat(givenUp(laid)).isEmpty();
    }

    @Test
    void aToldReleaseHoldsAfterATakeOffToo() {
        LaidOut laid = LayoutTest.laid(
                GLIDER, a("take-off"), a("tow release").heightFt(3_000), a("loop"), a("stall turn"), a("low pass"));

        assertThat(Units.ftFromM(first(laid, "tow release").from().place().z())).isCloseTo(3_000, within(20.0));
        assertThat(said(laid)).isEmpty();
    }

    /** What is missing is said once, and what it says does: neither is anything given up then, nor is 200 ft less enough. */
    @ParameterizedTest
    @ValueSource(strings = {"tow release", "loop"})
    void whatAToldHeightDoesNotLastForIsOneSentenceWithTheSmallestChange(String first) {
        Venue.Limits base = new Venue.Limits(300.0, null, null, null);
        LaidOut laid = laid(base, a(first).heightFt(2_500));

        assertThat(said(laid)).singleElement().asString().matches(NEEDS);
        Matcher says = NEEDS.matcher(said(laid).get(0));
        assertThat(says.matches()).isTrue();
        double needs = Double.parseDouble(says.group(4).replace(",", ""));
        assertThat(says.group(1)).isEqualTo(first);
        assertThat(givenUp(laid)).isNotEmpty();
        assertThat(Units.ftFromM(first(laid, first).from().place().z())).isCloseTo(2_500, within(20.0));

        LaidOut higher = laid(base, a(first).heightFt(needs + 100));
        assertThat(said(higher)).isEmpty();
        assertThat(givenUp(higher)).isEmpty();
        assertThat(givenUp(laid(base, a(first).heightFt(needs - 400)))).isNotEmpty();
    }

    /** An act that begins with a pass at 100 ft had nothing in it but that pass. */
    @Test
    void aPassThatWasToldToBeLowDoesNotMakeTheWholeActLow() {
        LaidOut laid = laid(Venue.Limits.NONE, a("knife edge pass").heightFt(100));

        assertThat(givenUp(laid)).isEmpty();
        assertThat(said(laid))
                .singleElement()
                .asString()
                .startsWith("knife edge pass begins at ")
                .contains("as near as it gets to the 100 ft it was given");
    }

    /** A figure that is flown only from higher up takes height as well: where that was so the last ones were given up. */
    @Test
    void nothingIsGivenUpForWantOfHeightWhileTheActCanBeginHigher() {
        RandomLists lists = new RandomLists(20_271_129);
        Kind glider = RandomLists.kinds().stream()
                .filter(kind -> kind.name().equals(GLIDER))
                .findFirst()
                .orElseThrow();

        assertThat(IntStream.range(0, 80)
                        .mapToObj(i -> lists.next(glider).laid())
                        .flatMap(laid -> said(laid).stream())
                        .filter(said -> said.contains("from as high as it gets")))
                .isEmpty();
    }

    /** It turned at the speed of the figure it came round for, and sank by 750 ft in it. */
    @Test
    void itComesRoundSlowlyAndDivesForItsSpeed() {
        LaidOut laid =
                LayoutTest.laid(GLIDER, a("loop").toRight(true), a("loop").toRight(false), a("low pass"));
        List<Piece> turns = laid.pieces().stream()
                .filter(piece -> piece.transit() == Transit.TURNS_BACK)
                .toList();

        assertThat(turns).isNotEmpty().allSatisfy(turn -> {
            assertThat(Units.ktFromMps(turn.to().speedMps())).isLessThan(80);
            assertThat(Units.ftFromM(turn.from().place().z() - turn.to().place().z()))
                    .isLessThan(200);
        });
    }

    @Test
    void itBeginsNoHigherThanItTakes() {
        double base = 300;
        LaidOut laid = laid(new Venue.Limits(base, null, null, null), a("loop"));
        double lowest = laid.pieces().stream()
                .filter(piece -> piece.wish() != null && !piece.elements().isEmpty())
                .mapToDouble(Piece::lowestM)
                .min()
                .orElseThrow();

        assertThat(Units.ftFromM(lowest)).isBetween(base - 1, base + 80);
    }
}
