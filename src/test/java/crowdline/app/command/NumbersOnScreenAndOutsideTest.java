package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.app.Main;
import crowdline.app.shell.ExitCode;
import crowdline.app.window.time.LoadedPredictions;
import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.flight.Workers;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.CatalogueFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The numbers that leave the program are those that stood on the screen, but for their last place. */
@Tag("slow")
class NumbersOnScreenAndOutsideTest {
    private static final Path DEMO = Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json");
    private static final int FLIGHTS = 30;
    private static final String DASH = "–";
    private static final Pattern SHEET_ROW =
            Pattern.compile("(?m)^ *(\\d+):(\\d\\d) {2}(\\S.*?) {2,}([\\d.]+) s(?:.*?)$");

    @TempDir
    Path folder;

    private String printed(String... args) {
        CaughtTerminal caught = new CaughtTerminal();
        assertThat(Main.run(args, caught.terminal(), (show, t) -> ExitCode.UNUSABLE))
                .isEqualTo(ExitCode.FINE);
        return caught.out();
    }

    private List<ActView> onScreen() throws Exception {
        ShowLoader loader = new ShowLoader(CatalogueFile::shipped, () -> Paces.DEFAULT, folder, Workers.ALONE, FLIGHTS);
        LoadedShow loaded = Objects.requireNonNull(loader.load(DEMO, FLIGHTS).loaded());
        return LoadedPredictions.view(loaded, List.of()).acts();
    }

    /** The numbers in words such as "−0.7 to +4.5", in order. */
    private static List<Double> numbers(String shown) {
        List<Double> found = new ArrayList<>();
        Matcher each = Pattern.compile("[+−]?\\d[\\d,]*(\\.\\d+)?").matcher(shown);
        while (each.find()) {
            found.add(Double.parseDouble(each.group().replace("−", "-").replace(",", "")));
        }
        return found;
    }

    private static void meets(String what, String shown, double place, double... exact) {
        List<Double> read = numbers(shown);
        double first = read.get(0);
        double last = read.get(read.size() - 1);
        assertThat(first).as("%s, shown as %s", what, shown).isCloseTo(exact[0], within(place));
        assertThat(last).as("%s, shown as %s", what, shown).isCloseTo(exact[exact.length - 1], within(place));
    }

    @Test
    void everyNumberOfThePredictionIsTheOneInPrepare() throws Exception {
        JsonNode acts = new JsonMapper()
                .readTree(printed("predict", DEMO.toString(), "--json", "--flights", String.valueOf(FLIGHTS)))
                .get("acts");
        List<ActView> screen = onScreen();
        int compared = 0;
        for (JsonNode act : acts) {
            ActView shown = screen.stream()
                    .filter(a -> a.id().equals(act.get("id").stringValue()))
                    .findFirst()
                    .orElseThrow();
            List<FigureView> rows = shown.variants().get(0).figures();
            assertThat(rows).hasSize(act.get("figures").size());
            for (int i = 0; i < rows.size(); i++) {
                FigureView row = rows.get(i);
                JsonNode figure = act.get("figures").get(i);
                String name = figure.get("name").stringValue();
                assertThat(row.name()).isEqualTo(name);
                List<Double> start = numbers(row.start());
                assertThat(start.get(0) * 60 + start.get(1))
                        .as(name)
                        .isCloseTo(figure.get("learnedStartS").doubleValue(), within(0.51));
                meets(name, row.duration(), 0.51, figure.get("learnedS").doubleValue());
                meets(
                        name,
                        row.band(),
                        0.51,
                        figure.get("learnedLowS").doubleValue(),
                        figure.get("learnedHighS").doubleValue());
                if (!row.load().equals(DASH)) {
                    meets(name, row.entry(), 0.51, figure.get("entryKt").doubleValue());
                    meets(
                            name,
                            row.height(),
                            0.51,
                            figure.get("lowestFt").doubleValue(),
                            figure.get("highestFt").doubleValue());
                    meets(
                            name,
                            row.load(),
                            0.051,
                            figure.get("minG").doubleValue(),
                            figure.get("maxG").doubleValue());
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(30);
    }

    @Test
    void theRunningSheetBeginsAndLastsAsInPrepare() throws Exception {
        String sheet = printed("predict", DEMO.toString(), "--flights", String.valueOf(FLIGHTS));
        Matcher row = SHEET_ROW.matcher(sheet);
        List<FigureView> screen = onScreen().stream()
                .filter(act -> sheet.contains(act.title() + "\n"))
                .flatMap(act -> act.variants().get(0).figures().stream())
                .toList();
        int rows = 0;
        while (row.find()) {
            FigureView shown = screen.get(rows++);
            assertThat(shown.name()).startsWith(row.group(3));
            List<Double> start = numbers(shown.start());
            assertThat(start.get(0) * 60 + start.get(1))
                    .as(shown.name())
                    .isEqualTo(Double.parseDouble(row.group(1)) * 60 + Double.parseDouble(row.group(2)));
            meets(shown.name(), shown.duration(), 0.56, Double.parseDouble(row.group(4)));
        }
        assertThat(rows).isEqualTo(screen.size());
    }
}
