package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.body.Body;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Variation;
import crowdline.flight.leg.ExtremesMade;
import crowdline.measure.Units;
import crowdline.show.Venue;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every finding just inside its limit, at it and just beyond it. */
class FindingRulesTest {
    private static final Venue.Limits LIMITS = new Venue.Limits(200.0, 3000.0, 900.0, 600.0);
    /** Limits +6 and −4 g, never above 175 kt. */
    private static Body body() {
        return Body.of(Rig.biplane(), Variation.NONE);
    }

    private static final double NEEDED_KT = 110;

    /** A figure that gives no finding at all, until something of it is changed. */
    private static final class Flown {
        private final ExtremesMade seen = new ExtremesMade();
        private double entryKt = 120;
        private double greatestKt = 140;
        private double lowestFt = 500;
        private double highestFt = 1500;
        private double greatestG = 4;
        private double leastG = 1;
        private boolean completed = true;
        private Venue.Limits limits = LIMITS;
        private @Nullable Double cloudBaseFt;

        Flown() {
            seen.leastAlongM = -300;
            seen.greatestAlongM = 300;
            seen.nearestM = 0;
            seen.farthestM = 100;
        }

        List<String> told() {
            FigureFlight flight = new FigureFlight(
                    "f1",
                    "loop",
                    true,
                    completed,
                    0,
                    10,
                    Units.mpsFromKt(entryKt),
                    60,
                    30,
                    Units.mpsFromKt(greatestKt),
                    Units.mFromFt(lowestFt),
                    Units.mFromFt(highestFt),
                    greatestG,
                    leastG,
                    600,
                    600,
                    0,
                    0,
                    0,
                    List.of());
            return new FindingRules(body(), limits, cloudBaseFt)
                    .check(flight, seen.made(), NEEDED_KT, false).stream()
                            .map(f -> f.figureId() + " " + f.severity() + " " + f.code() + ": " + f.message())
                            .toList();
        }
    }

    private interface Change {
        void by(Flown flown, double value);
    }

    /** One limit: two values on its near side, the second the very last there, one beyond, and what is told of that. */
    private record Edge(FindingKind kind, Change change, double inside, double at, double beyond, String told) {
        @Override
        public String toString() {
            return kind + " " + beyond;
        }
    }

    static List<Edge> edges() {
        return List.of(
                new Edge(
                        FindingKind.SLOW_TO_BEGIN,
                        (f, kt) -> f.entryKt = kt,
                        110,
                        109.5,
                        109.49,
                        "f1 WARNING slow-to-begin: loop begins at 109 kt; it usually needs 110 kt. A line to gain speed"
                                + " before it usually helps"),
                new Edge(
                        FindingKind.OVER_NEVER_EXCEED,
                        (f, kt) -> f.greatestKt = kt,
                        175,
                        175.5,
                        175.51,
                        "f1 ERROR over-never-exceed: loop reaches 176 kt; the never-exceed speed given is 175 kt. A"
                                + " shorter or shallower line down usually helps"),
                new Edge(
                        FindingKind.WOULD_STALL,
                        FindingRulesTest::fallShortBy,
                        0.1,
                        0.15,
                        0.16,
                        "f1 WARNING would-stall: loop asks for 5.2 g at 90 kt, where the wing gives 5.0 g; it is flown"
                                + " at that. More speed or a gentler pull usually helps"),
                new Edge(
                        FindingKind.TOO_SLOW_TO_HOLD,
                        (f, by) -> {
                            f.seen.slowMps = 45 * 1852.0 / 3600;
                            f.seen.slowByMps = by;
                        },
                        0.5,
                        1,
                        1.01,
                        "f1 WARNING too-slow-to-hold: loop slows to 45 kt, where the wing cannot hold it on its path; that"
                                + " takes 47 kt. More speed at its start usually helps"),
                new Edge(
                        FindingKind.OVER_LOAD_LIMIT,
                        (f, g) -> f.greatestG = g,
                        6,
                        6.05,
                        6.06,
                        "f1 ERROR over-load-limit: loop feels +6.1 g; the limit given is +6.0 g. A wider pull or less"
                                + " speed usually helps"),
                new Edge(
                        FindingKind.OVER_LOAD_LIMIT,
                        (f, g) -> f.leastG = g,
                        -4,
                        -4.05,
                        -4.06,
                        "f1 ERROR over-load-limit: loop feels -4.1 g; the limit given is -4.0 g. A wider push or less"
                                + " speed usually helps"),
                new Edge(
                        FindingKind.BELOW_GROUND,
                        (f, ft) -> f.lowestFt = ft,
                        0,
                        -0.5,
                        -0.51,
                        "f1 ERROR below-ground: loop comes to -1 ft, below the ground. More height before it usually"
                                + " helps"),
                new Edge(
                        FindingKind.BELOW_BASE,
                        (f, ft) -> f.lowestFt = ft,
                        200,
                        199.5,
                        199.49,
                        "f1 ERROR below-base: loop comes down to 199 ft, 1 ft below the base of 200 ft that was given."
                                + " More height before it usually helps"),
                new Edge(
                        FindingKind.ABOVE_CEILING,
                        (f, ft) -> f.highestFt = ft,
                        3000,
                        3000.5,
                        3000.51,
                        "f1 WARNING above-ceiling: loop climbs to 3001 ft, 1 ft above the 3000 ft that was given. A lower"
                                + " start usually helps"),
                new Edge(
                        FindingKind.IN_CLOUD,
                        FindingRulesTest::topUnderACloud,
                        2500,
                        2500.5,
                        2500.51,
                        "f1 WARNING in-cloud: loop tops at 2,501 ft; the cloud base of the day is 2,500 ft. A variant"
                                + " agreed for this base usually helps"),
                new Edge(
                        FindingKind.LEAVES_DISPLAY_AREA,
                        (f, m) -> f.seen.greatestAlongM = m,
                        900,
                        900.5,
                        900.51,
                        "f1 WARNING leaves-display-area: loop goes 901 m to the right, 1 m beyond the display area given."
                                + " Turning round earlier usually helps"),
                new Edge(
                        FindingKind.LEAVES_DISPLAY_AREA,
                        (f, m) -> f.seen.leastAlongM = m,
                        -900,
                        -900.5,
                        -900.51,
                        "f1 WARNING leaves-display-area: loop goes 901 m to the left, 1 m beyond the display area given."
                                + " Turning round earlier usually helps"),
                new Edge(
                        FindingKind.LEAVES_DISPLAY_AREA,
                        (f, m) -> f.seen.farthestM = m,
                        600,
                        600.5,
                        600.51,
                        "f1 WARNING leaves-display-area: loop goes 601 m beyond the display line, 1 m further than the"
                                + " area given. A tighter turn usually helps"),
                new Edge(
                        FindingKind.CROSSES_DISPLAY_LINE,
                        (f, m) -> f.seen.nearestM = m,
                        -9,
                        -10,
                        -10.01,
                        "f1 WARNING crosses-display-line: loop comes 10 m over the display line towards the crowd."
                                + " Turning away from the crowd usually helps"));
    }

    /** In numbers that are their own sum to the last digit. */
    private static void fallShortBy(Flown f, double g) {
        f.seen.shortG = g;
        f.seen.shortAskedG = 5 + g;
        f.seen.shortGaveG = 5;
        f.seen.shortMps = Units.mpsFromKt(90);
    }

    private static void topUnderACloud(Flown f, double ft) {
        f.cloudBaseFt = 2500.0;
        f.highestFt = ft;
    }

    @Test
    void figureInsideEveryLimitGivesNoFinding() {
        assertThat(new Flown().told()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("edges")
    void isToldJustBeyondItsLimitAndNotAtIt(Edge edge) {
        assertThat(flown(edge, edge.inside)).isEmpty();
        assertThat(flown(edge, edge.at)).isEmpty();
        assertThat(flown(edge, edge.beyond)).containsExactly(edge.told);
    }

    private static List<String> flown(Edge edge, double value) {
        Flown flown = new Flown();
        if (edge.kind == FindingKind.BELOW_GROUND) {
            flown.limits = Venue.Limits.NONE;
        }
        edge.change.by(flown, value);
        return flown.told();
    }

    @Test
    void everyKindHasAnEdge() {
        Set<FindingKind> tried = edges().stream().map(Edge::kind).collect(Collectors.toSet());
        tried.add(FindingKind.CANNOT_BE_FLOWN);
        tried.add(FindingKind.MISSES_ITS_PLACE);

        assertThat(tried).isEqualTo(EnumSet.allOf(FindingKind.class));
    }

    /** From 20 m: 3 m of dip are left out of account, and the base is 200 ft, half a foot of rounding below it. */
    @Test
    void climbsOutThatRisesUprightToTheBase() {
        assertThat(climbsOut(LIMITS, 20, 250, 0)).isTrue();
        assertThat(climbsOut(LIMITS, 17.01, 250, 0)).isTrue();
        assertThat(climbsOut(LIMITS, 17, 250, 0)).as("dips").isFalse();
        assertThat(climbsOut(LIMITS, 20, 199.51, 0)).isTrue();
        assertThat(climbsOut(LIMITS, 20, 199.5, 0)).as("stays below").isFalse();
        assertThat(climbsOut(LIMITS, 20, 250, 0.1)).as("upside down").isFalse();
        assertThat(climbsOut(Venue.Limits.NONE, 20, 250, 0))
                .as("there is no base to climb to")
                .isFalse();
    }

    private static boolean climbsOut(Venue.Limits limits, double lowestM, double endFt, double upsideDownS) {
        FigureFlight f = new FigureFlight(
                "f1",
                "loop",
                true,
                true,
                0,
                10,
                60,
                60,
                30,
                60,
                lowestM,
                300,
                1,
                1,
                100,
                100,
                0,
                0,
                upsideDownS,
                List.of());
        return new FindingRules(body(), limits, null)
                .climbsOut(f, Rig.level(60, 20), Rig.level(60, Units.mFromFt(endFt)));
    }

    @Test
    void whatCannotBeFlownIsToldWithItsReason() {
        FlightFinding told =
                new FindingRules(body(), LIMITS, null).cannotFly("f1", "loop", "runs out of speed in the pull");

        assertThat(told.severity() + " " + told.code() + ": " + told.message())
                .isEqualTo(
                        "ERROR cannot-be-flown: loop runs out of speed in the pull; what follows is predicted as if it had"
                                + " been left out after that time. More speed at its start usually helps");
    }

    @Test
    void withoutLimitsOnlyGroundAirframeAndDisplayLineAreTold() {
        Flown flown = new Flown();
        flown.limits = Venue.Limits.NONE;
        flown.lowestFt = 1;
        flown.highestFt = 9000;
        flown.seen.leastAlongM = -5000;
        flown.seen.greatestAlongM = 5000;
        flown.seen.farthestM = 5000;

        assertThat(flown.told()).isEmpty();
    }

    @Test
    void ofTwoSidesTheOneFurtherOutIsTold() {
        Flown flown = new Flown();
        flown.seen.leastAlongM = -1000;
        flown.seen.greatestAlongM = 950;

        assertThat(flown.told()).singleElement().asString().contains("goes 1000 m to the left, 100 m beyond");
    }

    /** Rounded as it is, a height of minus nothing is told as none. */
    @Test
    void wheelsOnTheGroundAreBelowTheBaseAtNoHeight() {
        Flown flown = new Flown();
        flown.lowestFt = -0.3;

        assertThat(flown.told()).singleElement().asString().contains("loop comes down to 0 ft, 200 ft below the base");
    }

    @Test
    void underTheGroundTheBaseIsNotToldAsWell() {
        Flown flown = new Flown();
        flown.lowestFt = -20;

        assertThat(flown.told()).singleElement().asString().contains("below-ground: loop comes to -20 ft");
    }

    @Test
    void ofAFigureThatWasNotFlownToItsEndOnlyTheSpeedsAreTold() {
        Flown flown = new Flown();
        flown.completed = false;
        flown.entryKt = 90;
        flown.greatestG = 12;
        flown.lowestFt = -50;
        flown.seen.nearestM = -500;

        assertThat(flown.told()).singleElement().asString().contains("slow-to-begin");
    }
}
