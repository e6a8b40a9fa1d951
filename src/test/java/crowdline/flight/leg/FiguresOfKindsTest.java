package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.air.Wind;
import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Variation;
import crowdline.flight.shape.Shaped;
import crowdline.flight.shape.Shaper;
import crowdline.measure.Units;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.bounds.Quantity;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Element;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every figure of the catalogue with every kind that flies, from its usual entry speed, in calm air and in wind. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FiguresOfKindsTest {
    private static final Path LACKS = Path.of("src/test/resources/crowdline/flight/figures-that-kinds-lack.txt");
    private static final Path IN_WIND = Path.of("src/test/resources/crowdline/flight/figures-that-wind-takes-away.txt");
    private static final double HEIGHT_M = 300;
    /** Of the height or the width of what should close. */
    private static final double CLOSE = 0.05;

    /** The same in wind. */
    private static final double CLOSE_IN_WIND = 0.1;
    /** The same of what drag takes speed from all the way round, and no power gives it back. */
    private static final double CLOSE_WITHOUT_POWER = 0.3;

    private static final double SAME_M = 3;
    /** Of how high a figure is: so much lower than it began it may come out where it is to come out as high. */
    private static final double SEEN_LOWER = 0.06;

    /** What is nothing, but for rounding. */
    private static final double LIGHTEST_G = -0.02;

    private static final Set<String> BACK_AT_ITS_HEIGHT = Set.of(
            "loop",
            "square loop",
            "avalanche",
            "half Cuban",
            "Cuban eight",
            "reverse half Cuban",
            "wing-over",
            "lazy eight");
    private static final Set<String> LOOPS = Set.of("loop", "formation loop", "outside loop");
    private static final Set<String> BACK_AT_ITS_PLACE = Set.of("loop", "formation loop", "square loop", "steep turn");

    private final Map<List<Double>, List<Pair>> drawn = new HashMap<>();

    /** One figure with one kind, and how it was drawn; null if it cannot be flown. */
    private record Pair(
            CatalogueEntry entry,
            Airframe airframe,
            Forces forces,
            FlightState from,
            @Nullable Shaped shaped,
            String lack,
            boolean calm) {
        String name() {
            return entry.name() + ", " + airframe.name();
        }
    }

    private static List<Airframe> kinds() {
        return KindsFile.shipped().all().stream()
                .filter(Kind::flies)
                .map(kind -> kind.airframe("it", kind.name(), Sliders.TYPICAL))
                .toList();
    }

    /** Drawn once in each wind for all tests: they only look. */
    private List<Pair> drawnOnce(double fromDeg, double kt) {
        return drawn.computeIfAbsent(List.of(fromDeg, kt), key -> drawn(Wind.steady(fromDeg, kt, 90)));
    }

    private static List<Pair> drawn(Wind wind) {
        List<Pair> pairs = new ArrayList<>();
        for (CatalogueEntry entry : CatalogueFile.shipped().entries()) {
            for (Airframe airframe : entry.elements().isEmpty() ? List.<Airframe>of() : kinds()) {
                Double kt = entry.enters() == null ? null : entry.enters().kt(airframe.usual(), airframe.stallKt());
                if (kt != null) {
                    pairs.add(drawn(entry, airframe, wind, kt));
                }
            }
        }
        assertThat(pairs).hasSizeGreaterThan(400);
        return pairs;
    }

    private static Pair drawn(CatalogueEntry entry, Airframe airframe, Wind wind, double kt) {
        Forces forces = new Forces(Body.of(airframe, Variation.NONE), Rig.SEA_LEVEL, wind);
        FlightState from = Rig.level(Units.mpsFromKt(kt), HEIGHT_M);
        try {
            Shaped shaped = new Shaper(forces, airframe).shape(entry.elements(), from);
            return new Pair(entry, airframe, forces, from, shaped, "", wind.isCalm());
        } catch (CannotFly e) {
            return new Pair(entry, airframe, forces, from, null, e.why(), wind.isCalm());
        }
    }

    /** The list is read by people: it is what the program says to somebody who asks for such a figure. */
    @Test
    void whatAKindCannotFlyIsToldAsReviewed() throws IOException {
        StringBuilder told = new StringBuilder();
        for (Pair pair : drawnOnce(0, 0)) {
            String fault = fault(pair);
            if (fault != null) {
                told.append(pair.name()).append(": ").append(fault).append('\n');
            }
        }
        asReviewed(told, LACKS);
    }

    /** What wind takes away: flown in calm air, and not, or not as high, in 15 kt along the line or across it. */
    @Tag("slow")
    @Test
    void whatAKindCannotFlyInWindIsToldAsReviewed() throws IOException {
        Set<String> calm = new HashSet<>();
        for (Pair pair : drawnOnce(0, 0)) {
            if (fault(pair) == null) {
                calm.add(pair.name());
            }
        }
        StringBuilder told = new StringBuilder();
        Map<String, Integer> winds = new LinkedHashMap<>();
        winds.put("ahead", 90);
        winds.put("behind", 270);
        winds.put("across", 180);
        for (Map.Entry<String, Integer> wind : winds.entrySet()) {
            for (Pair pair : drawnOnce(wind.getValue(), 15)) {
                String fault = calm.contains(pair.name()) ? fault(pair) : null;
                if (fault != null) {
                    told.append(pair.name() + ", 15 kt " + wind.getKey() + ": " + fault + '\n');
                }
            }
        }
        asReviewed(told, IN_WIND);
    }

    private static @Nullable String fault(Pair pair) {
        Shaped shaped = pair.shaped();
        if (shaped == null) {
            return pair.lack();
        }
        return shaped.isLow()
                ? new Shaper(pair.forces(), pair.airframe())
                        .low(shaped, pair.entry().elements(), pair.from(), true)
                : null;
    }

    private static void asReviewed(StringBuilder told, Path file) throws IOException {
        if ("write".equals(System.getProperty("crowdline.golden"))) {
            Files.writeString(file, told);
        }
        assertThat(told.toString())
                .as("lines nobody has read yet; -Dcrowdline.golden=write keeps them")
                .isEqualTo(Files.readString(file));
    }

    @Test
    void theSamePairIsDrawnTheSameTwice() {
        assertThat(made(drawn(Wind.CALM))).isEqualTo(made(drawnOnce(0, 0)));
    }

    private static List<Object> made(List<Pair> pairs) {
        return pairs.stream()
                .<Object>map(p -> p.shaped() == null ? p.lack() : p.shaped().elements())
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "15, 0", "15, 180", "15, 90", "15, 270"})
    void whatIsDrawnIsWhatWasMeant(double windKt, double fromDeg) {
        Set<String> wrong = new TreeSet<>();
        for (Pair pair : drawnOnce(fromDeg, windKt)) {
            Shaped shaped = pair.shaped();
            if (shaped != null) {
                withinLimits(pair, shaped, wrong);
                closed(pair, shaped, wrong);
                outAsHighAsItWas(pair, shaped, wrong);
                pulledAllTheWay(pair, shaped, wrong);
                clearOfTheCrowd(pair, shaped, wrong);
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static void withinLimits(Pair pair, Shaped shaped, Set<String> wrong) {
        Extremes e = shaped.extremes();
        Body body = pair.forces().body;
        check(shaped.elements().stream().noneMatch(Element::isOpen), pair, "is still open", wrong);
        check(shaped.elements().stream().allMatch(FiguresOfKindsTest::isPlausible), pair, "has odd numbers", wrong);
        check(e.greatestG() <= body.limitPositiveG(), pair, "takes " + e.greatestG(), wrong);
        check(e.leastG() >= body.limitNegativeG(), pair, "takes " + e.leastG(), wrong);
        check(e.greatestMps() <= body.neverExceedMps(), pair, "reaches " + e.greatestMps(), wrong);
        check(e.shortG() < 0.16 && e.slowByMps() < 1.1, pair, "asks for more than the wing gives", wrong);
    }

    /** What the program drew itself is not asked about as a slip of somebody's hand. */
    private static boolean isPlausible(Element element) {
        if (element instanceof Element.Line line && line.until() == Element.Until.METRES) {
            return Quantity.LINE_METRES.isPlausible(line.value());
        }
        return !(element instanceof Element.Arc arc)
                || arc.size() != Element.Size.RADIUS_M
                || (Quantity.ARC_RADIUS_M.isPlausible(arc.value())
                        && Quantity.ARC_TOP_SHARE.isPlausible(arc.topShare()));
    }

    /** In a pull the pilot is pressed into the seat, or floats in it; never does the pilot hang in the straps. */
    private static void pulledAllTheWay(Pair pair, Shaped shaped, Set<String> wrong) {
        FlightState at = pair.from();
        Look look = new Look();
        for (Element element : shaped.elements()) {
            double[] least = {0};
            at = Rig.fly(
                    pair.forces(),
                    Rig.watched((leg, tS, legS, y) -> {
                        leg.look(legS, y, look);
                        least[0] = Math.min(least[0], look.g);
                    }),
                    at,
                    element);
            boolean pulled = element instanceof Element.Arc arc && arc.way() == Element.Way.PULL;
            check(!pulled || least[0] > LIGHTEST_G, pair, "is pulled with " + least[0] + " g", wrong);
        }
    }

    private static void closed(Pair pair, Shaped shaped, Set<String> wrong) {
        Extremes e = shaped.extremes();
        double height = e.highestM() - e.lowestM();
        double higher = shaped.end().place().z() - HEIGHT_M;
        if (BACK_AT_ITS_HEIGHT.contains(pair.entry().name()) && !shaped.isLow()) {
            check(
                    Math.abs(higher) < close(pair) * height + SAME_M,
                    pair,
                    "ends higher by " + higher + " of " + height,
                    wrong);
        }
        boolean meant = pair.calm() || shaped.topShare() >= LoopShape.CLOSES_DOWN_TO;
        if (BACK_AT_ITS_PLACE.contains(pair.entry().name()) && meant) {
            double width = Math.max(e.greatestAlongM - e.leastAlongM, 1);
            double off =
                    Math.hypot(shaped.end().place().x(), shaped.end().place().y());
            check(off < close(pair) * width, pair, "ends " + off + " m from where it began, of " + width, wrong);
        }
        if (pair.entry().name().equals("loop") && meant) {
            check(unround(pair, shaped) < 0.1, pair, "is not round by " + unround(pair, shaped), wrong);
        }
        if (pair.entry().name().equals("chandelle")) {
            check(higher > 0 && shaped.end().speedMps() < pair.from().speedMps(), pair, "gains " + higher, wrong);
        }
    }

    /** A way down that ends where the figure began is high enough for that, or it is told that it is not. */
    private static void outAsHighAsItWas(Pair pair, Shaped shaped, Set<String> wrong) {
        boolean meant = pair.entry().elements().stream()
                .anyMatch(e -> e instanceof Element.Line line && line.until() == Element.Until.ENTRY_HEIGHT);
        double low = HEIGHT_M - shaped.extremes().lowestM();
        double most =
                SEEN_LOWER * (shaped.extremes().highestM() - shaped.extremes().lowestM()) + SAME_M;
        check(!meant || shaped.isLow() || low < most, pair, "goes " + low + " m below where it began", wrong);
        check(meant || !shaped.isLow(), pair, "is told to be low and never was to come back", wrong);
    }

    private static double close(Pair pair) {
        if (pair.airframe().name().equals("aerobatic glider")
                && !LOOPS.contains(pair.entry().name())) {
            return CLOSE_WITHOUT_POWER;
        }
        return pair.calm() ? CLOSE : CLOSE_IN_WIND;
    }

    /** The greatest share by which a loop is nearer to its middle or farther than it is on average. */
    private static double unround(Pair pair, Shaped shaped) {
        List<double[]> seen = new ArrayList<>();
        Rig.fly(
                pair.forces(),
                Rig.watched((leg, tS, legS, y) -> seen.add(new double[] {y[0], y[2]})),
                pair.from(),
                shaped.elements().toArray(new Element[0]));
        double x = (seen.stream().mapToDouble(s -> s[0]).max().orElseThrow()
                        + seen.stream().mapToDouble(s -> s[0]).min().orElseThrow())
                / 2;
        double z = (shaped.extremes().highestM + shaped.extremes().lowestM) / 2;
        List<Double> radii =
                seen.stream().map(s -> Math.hypot(s[0] - x, s[1] - z)).toList();
        double usual = radii.stream().mapToDouble(r -> r).average().orElseThrow();
        return radii.stream().mapToDouble(r -> Math.abs(r / usual - 1)).max().orElseThrow();
    }

    /** A turn back begins and ends on its line, and points at most some 40° towards the crowd on its way. */
    private static void clearOfTheCrowd(Pair pair, Shaped shaped, Set<String> wrong) {
        if (!pair.entry().name().equals("reposition")) {
            return;
        }
        double[] towards = {0};
        Look look = new Look();
        Rig.fly(
                pair.forces(),
                Rig.watched((leg, tS, legS, y) -> {
                    leg.look(legS, y, look);
                    towards[0] = Math.max(towards[0], -look.ty);
                }),
                pair.from(),
                shaped.elements().toArray(new Element[0]));
        check(towards[0] < Math.sin(Math.toRadians(41)), pair, "points " + towards[0] + " towards the crowd", wrong);
        check(shaped.extremes().nearestM > -5, pair, "comes to " + shaped.extremes().nearestM + " m", wrong);
        check(
                Math.abs(shaped.end().place().y()) < 5,
                pair,
                "ends off its line by " + shaped.end().place().y(),
                wrong);
    }

    private static void check(boolean fine, Pair pair, String what, Set<String> wrong) {
        if (!fine) {
            wrong.add(pair.name() + " " + what);
        }
    }
}
