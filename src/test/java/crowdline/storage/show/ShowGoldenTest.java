package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Act;
import crowdline.show.CrowdUnits;
import crowdline.show.DayAir;
import crowdline.show.Incident;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.WindAt;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.aircraft.Sliders;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.aircraft.Typical;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.catalogue.EntrySpeed;
import crowdline.show.figure.Element;
import crowdline.show.figure.Element.Arc;
import crowdline.show.figure.Element.Flick;
import crowdline.show.figure.Element.FlickKind;
import crowdline.show.figure.Element.HoverRoll;
import crowdline.show.figure.Element.Line;
import crowdline.show.figure.Element.Pivot;
import crowdline.show.figure.Element.Reposition;
import crowdline.show.figure.Element.Reversal;
import crowdline.show.figure.Element.Roll;
import crowdline.show.figure.Element.RollStyle;
import crowdline.show.figure.Element.Run;
import crowdline.show.figure.Element.Side;
import crowdline.show.figure.Element.Size;
import crowdline.show.figure.Element.Slide;
import crowdline.show.figure.Element.SlideKind;
import crowdline.show.figure.Element.Spin;
import crowdline.show.figure.Element.Tumble;
import crowdline.show.figure.Element.Turn;
import crowdline.show.figure.Element.Until;
import crowdline.show.figure.Element.Way;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.show.figure.Placing.Heading;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.ReversalWay;
import crowdline.show.figure.SpinKind;
import crowdline.storage.Golden;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A show file as it lies on disks, and what it says. What is expected is written here by hand. */
class ShowGoldenTest {
    private static final List<Element> ELEMENTS = List.of(
            new Line(Until.SECONDS, 2.5, 1),
            new Line(Until.METRES, 150, 0.75),
            new Line(Until.KNOTS, 160, 1),
            new Line(Until.FEET, 1200, 1),
            new Line(Until.ALONG_M, -200, 1),
            new Arc(Way.PULL, 360.0, null, Size.LOAD_G, 4.5, 1),
            new Arc(Way.PUSH, null, -45.0, Size.RADIUS_M, 140, 1),
            new Arc(Way.PULL, 90.0, null, Size.ROUND_FROM_G, 5, 0.5),
            new Arc(Way.PULL, 45.0, null, Size.TIGHTEST, 0, 1),
            new Roll(RollStyle.AILERON, Side.LEFT, 360, null, 0, 0.5, 1),
            new Roll(RollStyle.SLOW, Side.CROWD, 180, 8.0, 0, 0.5, 1),
            new Roll(RollStyle.HESITATION, Side.RIGHT, 360, null, 4, 0.75, 1),
            new Roll(RollStyle.BARREL, Side.AWAY, 360, null, 0, 0.5, 1),
            new Flick(FlickKind.POSITIVE, Side.LEFT, 360, 1),
            new Flick(FlickKind.NEGATIVE, Side.RIGHT, 180, 0.25),
            new Spin(SpinKind.UPRIGHT, Side.LEFT, 2, 0),
            new Spin(SpinKind.INVERTED, Side.RIGHT, 1.25, 0),
            new Spin(SpinKind.FLAT, Side.LEFT, 3, 0.5),
            new Spin(SpinKind.INVERTED_FLAT, Side.LEFT, 2, 0),
            new Pivot(Side.RIGHT, 1),
            new Slide(SlideKind.WHEELS_DOWN, 0),
            new Slide(SlideKind.WHEELS_UP, 0.125),
            new HoverRoll(4, 1),
            new Tumble(Side.LEFT, 1.5, 1),
            new Turn(Side.AWAY, 180, 60, 10, 1, 1),
            new Reposition(-1200, 1500, 150, 30, 1),
            new Line(Until.RADII, 0.4, 1),
            new Line(Until.STALLS, 1.6, List.of(new Roll(RollStyle.AILERON, Side.LEFT, 180, null, 0, 0.5, 1)), 1),
            new Line(Until.ENTRY_HEIGHT, 0, List.of(new Flick(FlickKind.POSITIVE, Side.LEFT, 360, 1)), 0.5),
            new Line(Until.ENTRY_LINE, 0, 1),
            new Arc(Way.PULL, 360.0, null, Size.USUAL, 0, 1),
            new Arc(Way.PULL, 90.0, null, Size.CORNER, 0, 1),
            new Arc(Way.PUSH, null, 0.0, Size.OVER, 0, 0.5),
            new Arc(Way.PULL, 360.0, null, Size.RADIUS_M, 90, 0.75, 1),
            new Turn(Side.AWAY, 180, null, 25, true, 0, false, 1),
            new Run(-600, 900, 140, 0.75));

    private static Placing placing(Heading heading) {
        return new Placing(-1200, 60, 1500, 170, heading);
    }

    private static final Remark CALL =
            new Remark("loop-call", RemarkKind.CALL, "Here comes the loop.", "The loop.", -6.0, -1.5, 2, false);

    private static Remark remark(String id, RemarkKind kind, boolean once) {
        return new Remark(id, kind, "Words of " + id + ".", null, null, null, 1, once);
    }

    private static Figure home(String id, Heading exit) {
        return new Figure(id, "landing", null, null, null, 90.0, placing(exit), null, List.of(), List.of());
    }

    private static final Show SHOW = new Show(
                    "Harbour Day “two”",
                    LocalDate.of(2027, 6, 12),
                    new Venue(
                            "Harrowmere",
                            52.125,
                            -1.25,
                            310,
                            245,
                            230,
                            ZoneId.of("Europe/London"),
                            new Venue.Limits(500.0, 4000.0, 1500.0, 900.0)),
                    new DayAir(
                            1018.5, 21, 240, 9, List.of(new WindAt(1000, 250, 15), new WindAt(2000, 260, 20)), 3800.0),
                    List.of(
                            new Airframe(
                                    "wren",
                                    "Wren 300",
                                    null,
                                    new Engine.Propeller(
                                            230,
                                            2,
                                            2700,
                                            Engine.Turns.ANTICLOCKWISE,
                                            Engine.PropellerType.CONSTANT_SPEED),
                                    640,
                                    10.8,
                                    7.5,
                                    6.4,
                                    0.03,
                                    0.09,
                                    1.5,
                                    1.4,
                                    380,
                                    160,
                                    500,
                                    300,
                                    350,
                                    1.6,
                                    330,
                                    8,
                                    -8,
                                    220),
                            new Airframe(
                                    "gull",
                                    "Gull 12",
                                    null,
                                    Engine.NONE,
                                    420,
                                    12.5,
                                    14,
                                    6.5,
                                    0.012,
                                    0.04,
                                    1.4,
                                    1.1,
                                    120,
                                    90,
                                    200,
                                    180,
                                    250,
                                    2.5,
                                    150,
                                    7,
                                    -5,
                                    150)),
                    List.of(new Performer(
                            "ada",
                            "Ada Quillan",
                            "AY-da KWIL-an",
                            List.of(new Performer.SourcedFact(
                                    "She learned to fly in a glider.", "her letter, March")))),
                    List.of(new Act(
                            "ada-solo",
                            "Ada Quillan in the Wren",
                            "ada",
                            "wren",
                            LocalTime.of(14, 30),
                            12.5,
                            placing(Heading.RIGHT),
                            List.of(
                                    new Figure(
                                            "mine",
                                            "loop",
                                            "Ada's own",
                                            "Watch the smoke.",
                                            ELEMENTS,
                                            null,
                                            null,
                                            120.0,
                                            List.of(new Quiet(2, 5.0, "the engine"), new Quiet(7, null, null)),
                                            List.of(CALL, remark("mine-why", RemarkKind.EXPLANATION, false))),
                                    home("left", Heading.LEFT),
                                    home("away", Heading.AWAY),
                                    home("crowd", Heading.CROWD)),
                            List.of(
                                    new Variant("full", 3000.0, List.of("mine", "left")),
                                    new Variant("flat", null, List.of("left"))),
                            List.of(
                                    remark("wren-built", RemarkKind.FACT, false),
                                    remark("wren-fill", RemarkKind.FILLER, false)))),
                    List.of(remark("thanks", RemarkKind.DUTY, true)))
            .withGlossary(
                    List.of(new CatalogueEntry(
                            "harbour turn",
                            List.of("quay turn"),
                            "turns",
                            "It is a turn.",
                            "Look for the wing.",
                            "It is hard to hold.",
                            "The stick goes left.",
                            "The seat presses.",
                            "A steep turn is not it.",
                            "HAR-bur",
                            null,
                            100.0,
                            EntrySpeed.LOOP,
                            List.of(new Turn(Side.LEFT, 90, 45, 0, 0, 1)))),
                    List.of())
            .withSayAs(Map.of("Quillan", "KWIL-an", "Ada", "AY-da"))
            .withIncident(new Incident(
                    "display director, 2 May",
                    List.of("Stop talking."),
                    List.of("The display has stopped for the moment."),
                    List.of(new Incident.Contact("Control", "channel 3"))));

    private static Show read(String golden) {
        ShowReading reading = new ShowFile().read(Path.of("day.json"), Golden.bytes(golden));
        assertThat(reading.findings()).isEmpty();
        return Objects.requireNonNull(reading.show());
    }

    @Test
    void showIsReadAsItWasMeant() {
        assertThat(read("show-1.json")).isEqualTo(SHOW);
    }

    @Test
    void showThatSaysNothingItNeedNotIsReadWithWhatIsMeantThen() {
        Show show = read("show-1-least.json");
        assertThat(show.air()).isEqualTo(new DayAir(1013.25, 15, 0, 0, List.of(), null));
        assertThat(show.venue().limits()).isEqualTo(new Venue.Limits(null, null, null, null));
        assertThat(show.incident()).isNull();
        Airframe plane = (Airframe) show.airframes().get(0);
        assertThat(plane.glider()).isFalse();
        assertThat(plane.engine())
                .isInstanceOfSatisfying(
                        Engine.Propeller.class,
                        propeller -> assertThat(propeller.turns()).isEqualTo(Engine.Turns.CLOCKWISE));
        assertThat(show.acts().get(0).figures().get(0).elements())
                .containsExactly(
                        new Line(Until.SECONDS, 3, 1),
                        new Roll(RollStyle.AILERON, Side.LEFT, 360, null, 0, 0.5, 1),
                        new Spin(SpinKind.UPRIGHT, Side.LEFT, 1, 0),
                        new Turn(Side.LEFT, 90, 60, 0, 0, 1),
                        new Reposition(0, 1000, 120, 45, 1));
        assertThat(show.acts().get(0).remarks())
                .containsExactly(new Remark("fact", RemarkKind.FACT, "It is small.", null, null, null, 1, false));
    }

    @Test
    void turnsThatEndBankedAndTheRollsBetweenThemAreRead() {
        assertThat(read("show-1-banked.json").acts().get(0).figures().get(0).elements())
                .containsExactly(
                        new Turn(Side.AWAY, 60, null, 0, false, 0, true, 1),
                        new Reversal(ReversalWay.UNDER, 1),
                        new Turn(Side.CROWD, 30, 60.0, 0, false, 0, true, 1),
                        new Reversal(ReversalWay.OVER, 0.5),
                        new Turn(Side.LEFT, 30, 60, 0, 0, 1));
    }

    @Test
    void crowdThatMeasuresOtherwiseIsReadAndWritten() throws Exception {
        Show show = read("show-1-units.json");
        assertThat(show.venue().crowdUnits()).isEqualTo(CrowdUnits.METRIC);
        assertThat(read("show-1-least.json").venue().crowdUnits()).isEqualTo(CrowdUnits.MILES);
        JsonNode written = new JsonMapper().readTree(new ShowFile().bytes(show, null));
        assertThat(written.path("venue").path("crowdUnits").asString()).isEqualTo("metric");
    }

    @Test
    void variantMayBeginWhereItsActDoesNot() {
        Act act = read("show-1-variant-entry.json").acts().get(0);
        assertThat(act.variants())
                .containsExactly(
                        new Variant("full", 2_000.0, null, List.of("mine")),
                        new Variant("flat", 800.0, new Placing(-600, 40, 900, 150, Heading.LEFT), List.of("mine")));
        assertThat(act.entry(act.variants().get(0))).isEqualTo(act.entry());
    }

    /** Kinds, engines, timed acts, and venues that say little. */
    @Test
    void showOfKindsIsReadAsItAlwaysWas() {
        Show show = Objects.requireNonNull(new ShowFile()
                .read(Path.of("show-2.json"), Golden.bytes("show-2.json"))
                .show());

        assertThat(show.venue())
                .isEqualTo(new Venue(
                        "Harrowmere", null, null, null, null, null, ZoneId.of("Europe/London"), Venue.Limits.NONE));
        Airframe teal = show.airframe("teal").orElseThrow();
        Typical typical = Objects.requireNonNull(teal.typical());
        assertThat(typical.kind().name()).isEqualTo("light aerobatic biplane");
        assertThat(typical.sliders()).isEqualTo(new Sliders(0.5, -1, 0.25));
        assertThat(teal.neverExceedKt()).isEqualTo(170);
        assertThat(teal.assumed()).contains("massKg", "powerKw", "rollRateDegPerS");
        assertThat(teal.assumed()).doesNotContain("neverExceedKt", "propellerType");
        assertThat(teal.engine()).isInstanceOfSatisfying(Engine.Propeller.class, propeller -> {
            assertThat(propeller.turns()).isEqualTo(Engine.Turns.ANTICLOCKWISE);
            assertThat(propeller.type()).isEqualTo(Engine.PropellerType.FIXED_CRUISE);
        });
        assertThat(show.airframe("dart").orElseThrow().engine())
                .isInstanceOfSatisfying(
                        Engine.Jet.class, jet -> assertThat(jet.reheatKn()).isEqualTo(120));
        assertThat(show.airframe("lark").orElseThrow().engine()).isEqualTo(new Engine.Jet(20, null));
        assertThat(show.airframe("lark").orElseThrow().assumed()).isEmpty();
        assertThat(show.airframe("four")).isEmpty();
        assertThat(show.aircraft("four").orElseThrow()).isInstanceOfSatisfying(TimedAircraft.class, four -> {
            assertThat(four.kind().name()).isEqualTo("formation");
            assertThat(four.number()).isEqualTo(4);
        });
        assertThat(show.acts().get(0).entry()).isNull();
    }

    @Test
    void showOfKindsIsWrittenAsItAlwaysWas() {
        Show show = Objects.requireNonNull(new ShowFile()
                .read(Path.of("show-2.json"), Golden.bytes("show-2.json"))
                .show());
        JsonMapper mapper = new JsonMapper();
        JsonNode written = mapper.readTree(new ShowFile().bytes(show, null));
        JsonNode golden = mapper.readTree(Golden.bytes("show-2.json"));
        assertThat(written.toPrettyString()).isEqualTo(golden.toPrettyString());
    }

    @Test
    void showIsWrittenAsItAlwaysWas() {
        JsonMapper mapper = new JsonMapper();
        assertThat(mapper.readTree(new ShowFile().bytes(SHOW, null)).toPrettyString())
                .isEqualTo(mapper.readTree(Golden.bytes("show-1.json")).toPrettyString());
    }

    @Test
    void everyElementAndEveryChoiceIsInAGoldenShow() throws ReflectiveOperationException {
        Set<Object> seen = new HashSet<>();
        collect(SHOW, seen);
        collect(read("show-1-banked.json"), seen);
        Set<Object> all = new HashSet<>(List.of(Element.class.getPermittedSubclasses()));
        for (Class<?> type : Stream.concat(
                        Stream.of(Element.class.getDeclaredClasses()),
                        Stream.of(Heading.class, RemarkKind.class, ReversalWay.class, SpinKind.class))
                .filter(Class::isEnum)
                .toList()) {
            all.addAll(List.of(type.getEnumConstants()));
        }
        assertThat(seen).containsAll(all);
    }

    /** Every constant there is below a value, and the types of the elements. */
    private static void collect(Object value, Set<Object> seen) throws ReflectiveOperationException {
        if (value instanceof Enum<?>) {
            seen.add(value);
        } else if (value instanceof Iterable<?> items) {
            for (Object item : items) {
                collect(item, seen);
            }
        } else if (value instanceof Record row) {
            if (row instanceof Element) {
                seen.add(row.getClass());
            }
            for (RecordComponent part : row.getClass().getRecordComponents()) {
                Object below = part.getAccessor().invoke(row);
                if (below != null) {
                    collect(below, seen);
                }
            }
        }
    }
}
