package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.show.Show;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.check.LocatedFinding;
import crowdline.show.check.ShowRules;
import crowdline.storage.Golden;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An airframe that says its kind: what it leaves out is assumed, what it says is told. */
class AirframeKindTest {
    static ShowReading reading(String airframe) {
        String text = new String(Golden.bytes("show-1.json"), StandardCharsets.UTF_8);
        int from = text.indexOf("{", text.indexOf("\"airframes\""));
        int to = text.indexOf("}", from);
        byte[] bytes = (text.substring(0, from) + "{\"id\": \"wren\", \"name\": \"Wren\", " + airframe
                        + text.substring(to))
                .getBytes(StandardCharsets.UTF_8);
        ShowReading reading = new ShowFile().read(Path.of("show.json"), bytes);
        Show show = reading.show();
        return show == null ? reading : reading.with(ShowRules.check(show, CatalogueFile.shipped()));
    }

    static Airframe airframe(String airframe) {
        Show show = reading(airframe).show();
        return (Airframe) show(show).airframes().get(0);
    }

    private static Show show(@Nullable Show show) {
        return Objects.requireNonNull(show);
    }

    static List<String> about(ShowReading reading, String path) {
        return reading.findings().stream()
                .filter(found -> found.path().startsWith(path))
                .map(LocatedFinding::message)
                .toList();
    }

    private static String written(ShowReading reading) {
        String text =
                new String(new ShowFile().bytes(show(reading.show()), reading.document()), StandardCharsets.UTF_8);
        int from = text.indexOf("{", text.indexOf("\"airframes\""));
        return text.substring(from, text.indexOf("}", from) + 1).replaceAll("\\s+", " ");
    }

    @Test
    void whatIsNotToldIsAssumed() {
        Airframe a = airframe("\"kind\": \"old trainer\", \"massKg\": 800, \"limitPositiveG\": 4");

        assertThat(a.massKg()).isEqualTo(800);
        assertThat(a.wingAreaM2()).isEqualTo(16);
        assertThat(a.assumed())
                .contains("wingAreaM2", "powerKw", "propellerType", "neverExceedKt")
                .doesNotContain("massKg", "limitPositiveG", "propellerTurns", "thrustKn")
                .hasSize(20);
    }

    @Test
    void withoutAKindNothingIsAssumed() {
        Show show = show(new ShowFile()
                .read(Path.of("show.json"), Golden.bytes("show-1.json"))
                .show());

        assertThat(show.airframes())
                .allSatisfy(a -> assertThat(((Airframe) a).assumed()).isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"0, 850, 108, 75", "1, 914, 134, 90", "-1, 760, 97, 60", "0.5, 882, 121, 82.5", "-0.5, 805, 102.5, 67.5"
    })
    void slidersMoveThroughTheRangeOfTheKind(double slider, double massKg, double powerKw, double rollRate) {
        Airframe a = airframe("\"kind\": \"old trainer\", \"heavier\": " + slider + ", \"stronger\": " + slider
                + ", \"rollsFaster\": " + slider);

        assertThat(a.massKg()).isCloseTo(massKg, within(1e-9));
        assertThat(((Engine.Propeller) a.engine()).powerKw()).isCloseTo(powerKw, within(1e-9));
        assertThat(a.rollRateDegPerS()).isCloseTo(rollRate, within(1e-9));
    }

    @Test
    void aToldNumberIsLeftAloneByTheSliders() {
        assertThat(airframe("\"kind\": \"old trainer\", \"heavier\": 1, \"massKg\": 800")
                        .massKg())
                .isEqualTo(800);
    }

    @Test
    void onlyToldNumbersAreWritten() {
        String airframe = "\"kind\": \"fast jet\", \"stronger\": -0.5, \"massKg\": 10000";

        assertThat(written(reading(airframe))).isEqualTo("{\"id\": \"wren\", \"name\": \"Wren\", " + airframe + "}");
    }

    @Test
    void aShowWrittenAnewReadsBackTheSame() {
        Show show = show(reading("\"kind\": \"aerobatic glider\", \"rollsFaster\": 0.25, \"pivotS\": 3")
                .show());

        byte[] bytes = new ShowFile().bytes(show, null);

        assertThat(new ShowFile().read(Path.of("show.json"), bytes).show()).isEqualTo(show);
    }

    @Test
    void usualSpeedsKeepBelowWhatThePilotTold() {
        Airframe a = airframe("\"kind\": \"fast jet\", \"neverExceedKt\": 400, \"limitPositiveG\": 5");

        assertThat(a.usual().verticalKt()).isCloseTo(0.92 * 400, within(1e-9));
        assertThat(a.usual().pullG()).isCloseTo(4.5, within(1e-9));
    }

    @Test
    void withoutAKindWhatIsUsualFollowsFromItsOwnNumbers() {
        Airframe wren = (Airframe) show(new ShowFile()
                        .read(Path.of("show.json"), Golden.bytes("show-1.json"))
                        .show())
                .airframes()
                .get(0);

        assertThat(wren.usual().loopKt()).isCloseTo(2.7 * wren.stallKt(), within(1e-9));
        assertThat(wren.usual().pullG()).isCloseTo(0.65 * 8, within(1e-9));
        assertThat(wren.usual().pushG()).isCloseTo(-4, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"kind\": \"jet fighter\" | airframes[0]: there is no kind \"jet fighter\"; nearest: fast jet, jet trainer, piston fighter",
                "\"kind\": \"fast jet\", \"powerKw\": 100 | airframes[0]: powerKw is for a propeller and the fast jet has a jet; take one out",
                "\"kind\": \"old trainer\", \"reheatKn\": 100 | airframes[0]: reheatKn is for a jet and the old trainer has a propeller; take one out",
                "\"kind\": \"old trainer\", \"heavier\": 2 | airframes[0].heavier is 2; it must be from -1 to 1",
                "\"kind\": \"old trainer\", \"glider\": true | airframes[0]: glider is true and the old trainer has an engine; take one out",
                "\"kind\": \"\" | airframes[0].kind is empty; it needs some text",
                "\"kind\": \"fast jet\", \"reheatKn\": 60 | airframes[0]: reheatKn is 60 and thrustKn is 79.2; reheat must give more thrust, or be left out"
            })
    void whatDoesNotGoTogetherIsSaid(String airframe, String message) {
        assertThat(about(reading(airframe), "airframes[0]")).containsExactly(message);
    }
}
