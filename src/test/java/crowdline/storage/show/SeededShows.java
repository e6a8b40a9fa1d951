package crowdline.storage.show;

import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Gaps;
import crowdline.show.Incident;
import crowdline.show.Interpreting;
import crowdline.show.Performer;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.WindAt;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.AirframeMaker;
import crowdline.show.aircraft.Engine;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.catalogue.EntrySpeed;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.MomentKind;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.Placing;
import crowdline.show.figure.Quiet;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.ReversalWay;
import crowdline.show.figure.SpinKind;
import crowdline.show.figure.Translation;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Shows of every shape that can be written, from a seed. */
final class SeededShows {
    private static final List<String> TEXTS = List.of(
            "Here it comes.",
            "“Café” & <b>µ</b> \\ \"quoted\"",
            "line\nbreak\ttab",
            "😀 ünïcode",
            "\u0001 control",
            "0");

    private final SplittableRandom random;
    private int ids;

    private SeededShows(long seed) {
        random = new SplittableRandom(seed);
    }

    static Show show(long seed) {
        return new SeededShows(seed).show();
    }

    private Show show() {
        return new Show(
                        text(),
                        LocalDate.of(2027, 1, 1).plusDays(random.nextInt(1000)),
                        venue(),
                        chance() ? DayAir.STANDARD : air(),
                        some(i -> aircraft()),
                        some(i -> performer()),
                        some(i -> act()),
                        some(i -> remark()))
                .withGlossary(some(i -> entry()), List.of())
                .withSayAs(chance() ? Map.of() : Map.of("Quillan", text(), text(), text()))
                .withIncident(chance() ? null : incident())
                .withSpeakers(new Speakers(some(i -> new Speaker(text(), chance())), pick(Interpreting.values())))
                .withGaps(new Gaps(within(0, 100), some(i -> piece())));
    }

    private Piece piece() {
        List<Piece.Part> parts = new ArrayList<>();
        parts.add(part());
        parts.addAll(some(i -> part()));
        return new Piece(id(), text(), or(this::text), or(this::text), parts);
    }

    private Piece.Part part() {
        return new Piece.Part(text(), chance() ? 0 : within(0, 1800), or(this::text), or(this::translation));
    }

    private Translation translation() {
        return new Translation(
                pick(new String[] {"fr", "ar", "pt-BR"}), text(), or(this::text), or(this::text), chance());
    }

    private Venue venue() {
        Venue.Limits limits = new Venue.Limits(
                or(() -> within(0, 900)),
                or(() -> within(1000, 9000)),
                or(() -> within(1, 3000)),
                or(() -> within(1, 3000)));
        boolean placed = chance();
        return new Venue(
                text(),
                placed ? Double.valueOf(within(-90, 90)) : null,
                placed ? Double.valueOf(within(-180, 180)) : null,
                or(() -> within(-1500, 15000)),
                or(() -> within(0, 360)),
                or(() -> within(0, 500)),
                ZoneId.of(chance() ? "Europe/London" : "Pacific/Auckland"),
                chance() ? Venue.Limits.NONE : limits);
    }

    private DayAir air() {
        List<WindAt> windsAloft = chance()
                ? List.of()
                : List.of(windAt(within(34, 2000)), windAt(within(2001, 9000)), windAt(within(9001, 20000)));
        return new DayAir(
                within(850, 1100),
                within(-60, 60),
                within(0, 360),
                within(0, 100),
                windsAloft,
                or(() -> within(0, 20000)));
    }

    private WindAt windAt(double heightFt) {
        return new WindAt(heightFt, within(0, 360), within(0, 200));
    }

    private Aircraft aircraft() {
        if (chance()) {
            return airframe();
        }
        Kind kind = pick(KindsFile.shipped().all().toArray(Kind[]::new));
        return kind.flies()
                ? AirframeMaker.make(
                        id(),
                        text(),
                        kind,
                        new Sliders(within(-1, 1), within(-1, 1), chance() ? 0 : within(-1, 1)),
                        new AirframeMaker.Told(
                                chance() ? Map.of() : Map.of("massKg", within(20, 700_000), "pivotS", within(0.1, 60)),
                                false,
                                kind.propellerType() == null ? null : pick(Engine.Turns.values()),
                                kind.propellerType() == null || chance() ? null : pick(Engine.PropellerType.values())))
                : new TimedAircraft(id(), text(), kind, chance() ? null : 2 + random.nextInt(9));
    }

    private Airframe airframe() {
        boolean glider = chance();
        return new Airframe(
                id(),
                text(),
                null,
                glider
                        ? Engine.NONE
                        : new Engine.Propeller(
                                within(0.1, 50_000),
                                within(0.1, 15),
                                within(0.1, 20_000),
                                pick(Engine.Turns.values()),
                                pick(Engine.PropellerType.values())),
                within(20, 700_000),
                within(1, 2_000),
                within(1, 150),
                within(1, 120),
                within(0.001, 1),
                within(0.001, 2),
                within(0.1, 10),
                within(0.1, 10),
                within(1, 2_000),
                within(1, 2_000),
                within(1, 3_000),
                within(1, 3_000),
                within(1, 20_000),
                within(0.1, 60),
                within(1, 3_000),
                within(1, 20),
                within(-20, 0),
                within(10, 2_000));
    }

    private Performer performer() {
        return new Performer(id(), text(), or(this::text), some(i -> new Performer.SourcedFact(text(), text())));
    }

    private Act act() {
        List<Figure> figures = some(i -> figure());
        List<Variant> variants = new ArrayList<>(some(i -> new Variant(
                id(),
                or(() -> within(0, 9000)),
                figures.stream().map(Figure::id).toList())));
        variants.add(new Variant("flat", null, List.of()));
        return new Act(
                id(),
                text(),
                id(),
                id(),
                LocalTime.of(random.nextInt(24), random.nextInt(60)),
                within(0.01, 1_440),
                or(this::placing),
                figures,
                variants,
                some(i -> remark()));
    }

    private Figure figure() {
        return new Figure(
                id(),
                "loop",
                or(this::text),
                or(this::text),
                or(() -> some(i -> element())),
                or(() -> within(0.01, 7_200)),
                or(this::placing),
                or(() -> within(1, 2_000)),
                some(i -> new Quiet(within(0, 5), or(() -> within(6, 9)), or(this::text))),
                some(i -> remark()));
    }

    private Placing placing() {
        return new Placing(
                along(), along(), within(-1_000, 60_000), within(0.1, 2_000), pick(Placing.Heading.values()));
    }

    private MomentName moment() {
        return new MomentName(pick(MomentKind.values()), chance() ? 1 : (int) within(1, 999));
    }

    private Remark remark() {
        return new Remark(
                id(),
                pick(RemarkKind.values()),
                text(),
                or(this::text),
                or(this::moment),
                or(this::moment),
                or(() -> within(-20, 0)),
                or(() -> within(1, 20)),
                chance() ? 1 : within(0.001, 1_000),
                chance(),
                chance(),
                null,
                or(this::text),
                or(this::translation));
    }

    private CatalogueEntry entry() {
        return new CatalogueEntry(
                id(),
                some(i -> text()),
                text(),
                text(),
                text(),
                chance() ? "" : text(),
                text(),
                text(),
                text(),
                text(),
                or(() -> text()),
                or(() -> within(1, 2_000)),
                or(() -> pick(EntrySpeed.values())),
                some(i -> element()));
    }

    private Incident incident() {
        List<String> words = new ArrayList<>(some(i -> text()));
        words.add(text());
        return new Incident(or(this::text), some(i -> text()), words, some(i -> new Incident.Contact(text(), text())));
    }

    private Element element() {
        double power = chance() ? 1 : chance() ? 0 : within(0, 1);
        Element.Side side = pick(Element.Side.values());
        return switch (random.nextInt(14)) {
            case 0 -> line(power);
            case 1 -> arc(power);
            case 2 ->
                new Element.Roll(
                        pick(Element.RollStyle.values()),
                        side,
                        within(0.1, 36_000),
                        within(0.05, 600),
                        2 + random.nextInt(7),
                        chance() ? 0.5 : within(0, 2),
                        power);
            case 3 -> new Element.Flick(pick(Element.FlickKind.values()), side, within(0.1, 100), power);
            case 4 -> new Element.Spin(pick(SpinKind.values()), side, within(0.1, 100), power);
            case 5 -> new Element.Pivot(side, power);
            case 6 -> new Element.Slide(pick(Element.SlideKind.values()), power);
            case 7 -> new Element.HoverRoll(within(0.05, 600), power);
            case 8 -> new Element.Tumble(side, within(0.1, 100), power);
            case 9 ->
                new Element.Turn(
                        side,
                        within(0.1, 36_000),
                        or(() -> within(1, 89)),
                        chance() ? 0 : within(0, 85),
                        chance(),
                        chance() ? 0 : within(-9, 9),
                        chance(),
                        power);
            case 12 -> new Element.Reversal(pick(ReversalWay.values()), power);
            case 11 -> new Element.Run(along(), within(-1_000, 60_000), within(0.1, 2_000), power);
            case 10 ->
                new Element.Reposition(
                        along(), within(-1_000, 60_000), within(0.1, 2_000), chance() ? 45 : within(10, 80), power);
            default -> new Element.Roll(Element.RollStyle.AILERON, side, 360, null, 0, 0.5, power);
        };
    }

    private Element line(double power) {
        Element.Until until = pick(Element.Until.values());
        double value = switch (until) {
            case ENTRY_HEIGHT, ENTRY_LINE -> 0;
            case RADII -> within(0, 20);
            case STALLS -> within(0.2, 10);
            case SECONDS, METRES, KNOTS, FEET, ALONG_M -> within(0, 600);
        };
        List<Element> middle = chance()
                ? List.of()
                : some(i -> chance()
                        ? new Element.Flick(Element.FlickKind.POSITIVE, Element.Side.LEFT, within(0.1, 100), 1)
                        : new Element.Roll(Element.RollStyle.AILERON, Element.Side.CROWD, 360, null, 0, 0.5, 1));
        return new Element.Line(until, value, middle, power);
    }

    private Element arc(double power) {
        Element.Size size = pick(Element.Size.values());
        double value = switch (size) {
            case TIGHTEST, USUAL, CORNER, OVER -> 0;
            case RADIUS_M -> within(1, 100_000);
            case LOAD_G, ROUND_FROM_G -> within(-30, 30);
        };
        boolean through = chance();
        return new Element.Arc(
                pick(Element.Way.values()),
                through ? within(0, 3600) : null,
                through ? null : within(-90, 90),
                size,
                value,
                chance() ? 1 : within(0.1, 1),
                power);
    }

    private boolean chance() {
        return random.nextBoolean();
    }

    private <T> T pick(T[] values) {
        return values[random.nextInt(values.length)];
    }

    private <T> @Nullable T or(Supplier<T> maker) {
        return chance() ? null : maker.get();
    }

    private <T> List<T> some(IntFunction<T> maker) {
        List<T> made = new ArrayList<>();
        int count = random.nextInt(4);
        for (int i = 0; i < count; i++) {
            made.add(maker.apply(i));
        }
        return made;
    }

    private String id() {
        return "id-" + ids++;
    }

    private String text() {
        return TEXTS.get(random.nextInt(TEXTS.size())) + " " + ids++;
    }

    private double within(double least, double most) {
        return switch (random.nextInt(4)) {
            case 0 -> least;
            case 1 -> most;
            case 2 ->
                Math.max(least, Math.rint(random.nextDouble(least, most)) + 0.0); // not -0.0, which is written as 0
            default -> random.nextDouble(least, most);
        };
    }

    private double along() {
        return within(-100_000, 100_000);
    }
}
