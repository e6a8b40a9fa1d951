package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Figures;
import crowdline.layout.LaidOut;
import crowdline.list.ListReader;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import crowdline.show.figure.Figure;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.IncidentTemplate;
import crowdline.storage.show.KindsFile;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** An act made of a list passes the check without an error, however little of the list can be flown as it was told. */
class ArrangedCheckTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final int LISTS_FOR_EACH_KIND = Integer.getInteger("crowdline.contradicting", 3);

    private static final Pattern CLIMB =
            Pattern.compile("about (\\d+) minutes of climbing; given about ([\\d,]+) ft it climbs for one");

    private static final List<String> PLACES =
            List.of(" left end", " right end", " in the middle", " from the left", " right to left");
    private static final List<String> HEIGHTS =
            List.of(" at 20 ft", " at 100 ft", " at 900 ft", " from 3,000 ft", " at 5,000 ft", " at 12,000 ft");
    private static final List<String> SPEEDS = List.of(" at 35 kt", " at 100 kt", " at 140 kt", " at 250 kt");

    static List<String> flying() {
        return KindsFile.shipped().all().stream()
                .filter(Kind::flies)
                .map(Kind::name)
                .toList();
    }

    private static ShowArranging.Made made(String list, String kind, Venue.Limits limits) {
        Show empty = ShowArranging.empty(
                "A day",
                LocalDate.of(2027, 5, 2),
                ZoneOffset.UTC,
                IncidentTemplate.shipped().incident());
        Venue v = empty.venue();
        Show show = empty.withVenue(new Venue(v.name(), null, null, null, null, null, v.timeZone(), limits));
        ShowArranging.Making making =
                id -> KindsFile.shipped().named(kind).airframe(id, "The aircraft", Sliders.TYPICAL);
        return new ShowArranging(CATALOGUE)
                .add(
                        show,
                        new ListReader(CATALOGUE).read(list),
                        making,
                        new ShowArranging.About("An act", "Somebody", LocalTime.of(14, 0), null));
    }

    private static List<String> errors(ShowArranging.Made made) {
        return FlownCheck.of(made.show(), CATALOGUE).stream()
                .filter(f -> f.severity() == Severity.ERROR)
                .map(Finding::message)
                .toList();
    }

    private static Venue.Limits base(double feet) {
        return new Venue.Limits(feet, null, null, null);
    }

    /** Lists of any figures with heights, speeds and places that nobody could have in that order. */
    @Tag("slow")
    @ParameterizedTest
    @MethodSource("flying")
    void whatContradictsItselfIsAnActWithoutAnError(String kind) {
        for (int i = 0; i < 2 * LISTS_FOR_EACH_KIND; i++) {
            Random random = new Random((i % 2 == 0 ? 31L : 37L) * kind.hashCode() + i / 2);
            String list = contradicting(random);
            Venue.Limits limits = i / 2 % 3 == 0 ? Venue.Limits.NONE : base(200 + 100.0 * random.nextInt(8));

            assertThat(errors(made(list, kind, limits)))
                    .as(limits + "\n" + list)
                    .isEmpty();
        }
    }

    /** Stretched to 18 s for the thick air below, it could not go over its top up there, and dived to the ground. */
    @ParameterizedTest
    @MethodSource("flying")
    void whatIsToldHowHighAndHowLongIsDrawnForTheAirUpThere(String kind) {
        for (String told : List.of(
                "goldfish at 5,000 ft (18 s)", "square loop at 4,000 ft (18 s)", "half Cuban at 5,000 ft (16 s)")) {
            assertThat(errors(made("low pass, " + told + ", loop", kind, Venue.Limits.NONE)))
                    .as(told)
                    .isEmpty();
        }
    }

    /** Ten minutes at 71 kt: the straight way out of it takes two of them, and the prediction has to fly it to its end. */
    @ParameterizedTest
    @ValueSource(strings = {"large biplane", "old trainer", "aerobatic two-seater"})
    void aClimbOfMinutesIsFlownToItsEndAndSaidWithTheHeightThatWouldDo(String kind) {
        ShowArranging.Made high = made("loop, spin from 12,000 ft, low pass", kind, Venue.Limits.NONE);

        assertThat(errors(high)).isEmpty();
        Matcher said = CLIMB.matcher(said(high));
        assertThat(said.find()).as(said(high)).isTrue();
        assertThat(Integer.parseInt(said.group(1))).isBetween(3, 15);
        ShowArranging.Made lower = made("loop, spin from " + said.group(2) + " ft, low pass", kind, Venue.Limits.NONE);
        assertThat(said(lower)).doesNotContain("of climbing");
        assertThat(climbS(lower)).isBetween(30.0, 120.0);
    }

    private static String said(ShowArranging.Made made) {
        return made.arranged().findings().stream().map(LaidOut.Finding::message).collect(Collectors.joining("\n"));
    }

    private static double climbS(ShowArranging.Made made) {
        List<Figure> figures = made.arranged().figures();
        return IntStream.range(0, figures.size())
                .filter(i -> figures.get(i).transit())
                .mapToDouble(i -> made.arranged().times().get(i))
                .max()
                .orElse(0);
    }

    private static String contradicting(Random random) {
        List<CatalogueEntry> all = CATALOGUE.entries();
        List<String> lines = new ArrayList<>();
        int figures = 6 + random.nextInt(8);
        for (int i = 0; i < figures; i++) {
            lines.add(all.get(random.nextInt(all.size())).name()
                    + one(PLACES, random)
                    + one(HEIGHTS, random)
                    + one(SPEEDS, random)
                    + (random.nextInt(6) == 0 ? " (" + (3 + random.nextInt(60)) + " s)" : ""));
        }
        return String.join("\n", lines);
    }

    private static String one(List<String> of, Random random) {
        return random.nextInt(3) == 0 ? of.get(random.nextInt(of.size())) : "";
    }

    private static List<String> codes(Show show) {
        return FlownCheck.of(show, CATALOGUE).stream().map(Finding::code).toList();
    }

    /** A steady wind across carries what was drawn in calm air over the line; a pilot holds it off. */
    @ParameterizedTest
    @ValueSource(strings = {"light aerobatic biplane", "old trainer", "aerobatic glider"})
    void anActInOtherAirIsOfferedAndLaidOutAnew(String kind) throws CannotBe {
        Show made = made("loop, half Cuban, stall turn, slow roll, spin, humpty bump, low pass", kind, base(500))
                .show();
        Venue v = made.venue();
        Show calm = made.withVenue(new Venue(v.name(), null, null, null, 90.0, null, v.timeZone(), v.limits()));
        Show windy = calm.withAir(new DayAir(1013.25, 25, 0, 15, List.of(), null));
        String act = windy.acts().get(0).id();

        assertThat(codes(calm)).doesNotContain(LaidOutCheck.CODE);
        assertThat(codes(windy)).contains(LaidOutCheck.CODE);
        Show anew = new Figures(CATALOGUE).layOut(act).of(windy).show();
        assertThat(codes(anew)).doesNotContain(LaidOutCheck.CODE);
    }

    @Test
    void aHeightThatDoesNotDoIsFlownHigherAndSaidOnce() {
        ShowArranging.Made made = made("low pass, split S from 5,000 ft, loop", "fast jet", Venue.Limits.NONE);

        assertThat(errors(made)).isEmpty();
        assertThat(made.arranged().findings())
                .extracting(LaidOut.Finding::message)
                .singleElement()
                .satisfies(message -> assertThat(message)
                        .matches("split S is given 5,000 ft, and comes below the ground from there: it begins"
                                + " at 5,[45]\\d0 ft"));
    }

    @Test
    void aTakeOffAfterAFigureLeavesTheActBegunInTheAir() {
        ShowArranging.Made made = made("low pass, take-off, loop", "strong aerobatic monoplane", Venue.Limits.NONE);

        assertThat(errors(made)).isEmpty();
        assertThat(made.arranged().findings())
                .extracting(LaidOut.Finding::message)
                .containsExactly(
                        "take-off comes after figures that are flown, with no landing between; if the act begins"
                                + " with it, move it to the front");
    }

    @Test
    void whatNeedsMoreHeightThanThereIsUnderTheCeilingTouchesNoBase() {
        ShowArranging.Made made = made(
                "loop at 4,000 ft, four-point roll at 7,000 ft, low pass at 100 ft",
                "piston fighter",
                new Venue.Limits(600.0, 3_500.0, null, null));

        assertThat(errors(made)).isEmpty();
        assertThat(made.arranged().findings())
                .extracting(LaidOut.Finding::message)
                .contains("low pass is given 100 ft, and the base is 600 ft: it begins at 620 ft, the lowest it can")
                .anyMatch(message ->
                        message.startsWith("four-point roll is given 7,000 ft, and the ceiling is 3,500 ft:"));
    }

    @Test
    void nothingIsFlownToWhereNobodySeesIt() {
        ShowArranging.Made made =
                made("low pass, loop from 9,000 ft, low pass from the left, stall turn", "fast jet", base(500));

        assertThat(FlownCheck.of(made.show(), CATALOGUE))
                .extracting(Finding::message)
                .noneMatch(message -> message.contains("alongM"));
    }

    @Test
    void whatComesTooLowFromAsHighAsItGetsIsGivenATime() {
        ShowArranging.Made made = made("loop, landing, slow roll", "aerobatic glider", base(500));

        assertThat(errors(made)).isEmpty();
        assertThat(made.arranged().findings())
                .extracting(LaidOut.Finding::message)
                .anyMatch(message ->
                        message.matches("slow roll comes \\d+ ft below the base from as high as it gets, so it is"
                                + " only given a time; ask the pilot about it"));
    }
}
