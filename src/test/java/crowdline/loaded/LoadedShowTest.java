package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.app.window.time.LoadedPredictions;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.flight.Workers;
import crowdline.measure.Measures;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.sheet.RunningSheet;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.Variant;
import crowdline.show.figure.Remark;
import crowdline.speech.pace.Pace;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import crowdline.timing.Pass;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is computed of a show when it is asked for, on the demo show. */
class LoadedShowTest {
    private LoadedShow loaded;
    private Act act;
    private Variant variant;

    @BeforeEach
    void load() throws Exception {
        byte[] content = Files.readAllBytes(Path.of("src/test/resources/crowdline/shows", "fenmarsh-air-day.json"));
        Show show = ShowFile.soundBefore(content).orElseThrow();
        loaded = new LoadedShow(show, CatalogueFile.shipped(), Paces.DEFAULT, Workers.ALONE, LoadedShow.FIRST_FLIGHTS);
        act = show.acts().get(0);
        variant = act.variants().get(0);
    }

    private Prediction prediction() {
        return loaded.prediction(act.id(), variant.name()).orElseThrow();
    }

    @Test
    void aDebriefDoesNotTakeItsOwnPassForThePlan() {
        String figure = variant.order().get(1);
        double predictedS = durationS(prediction().times(), figure);
        Instant begun = Instant.parse("2030-06-01T12:00:00Z");
        var timed = List.of(new Pass.TimedFigure(figure, 0, predictedS + 9));
        loaded.learn(List.of(Pass.of("p", act.id(), variant.name(), Pass.How.LIVE, begun.plusSeconds(60), timed)));

        assertThat(durationS(prediction().times(), figure)).isGreaterThan(predictedS + 1);
        assertThat(planned(begun, figure)).isEqualTo(predictedS);
        assertThat(planned(begun.plusSeconds(3600), figure)).isGreaterThan(predictedS + 1);
    }

    private double planned(Instant begun, String figure) {
        return durationS(
                loaded.debriefSources(begun, (a, v) -> List.of())
                        .times(act.id(), variant.name())
                        .orElseThrow(),
                figure);
    }

    private static double durationS(ActTimes times, String figure) {
        return times.figures().stream()
                .filter(t -> t.figureId().equals(figure))
                .findFirst()
                .orElseThrow()
                .durationS();
    }

    @Test
    void underATitleStandsOnlyWhatItDoesNotSay() {
        ShowLookup words = loaded.words();
        Act act = loaded.show().acts().get(0);
        List<String> who = List.of(words.who(act).split(", ", -1));
        assertThat(words.whoElse(act.withTitle("The opening"))).isEqualTo(who.get(0) + ", " + who.get(1));
        assertThat(words.whoElse(act.withTitle(who.get(0) + " and friend"))).isEqualTo(who.get(1));
        assertThat(words.whoElse(
                        act.withTitle(who.get(0) + " and the " + who.get(1).toUpperCase(Locale.ROOT))))
                .isEmpty();
    }

    /** In Live, in the debrief, in the table and on paper: the same names, and none of them twice. */
    @Test
    void everyFigureOfAVariantHasANameOfItsOwnEverywhere() {
        ShowLookup words = loaded.words();
        var debrief = loaded.debriefSources(Instant.parse("2030-06-01T12:00:00Z"), (a, v) -> List.of());
        List<String> shown = variant.order().stream()
                .map(id -> words.name(act, variant.name(), id))
                .toList();

        assertThat(shown).doesNotHaveDuplicates().contains("loop", "landing");
        assertThat(shown).filteredOn(name -> name.startsWith("turning back, ")).hasSizeGreaterThan(1);
        assertThat(LoadedPredictions.view(loaded, List.of())
                        .acts()
                        .get(0)
                        .variants()
                        .get(0)
                        .figures())
                .extracting(PrepareView.FigureView::name)
                .isEqualTo(shown);
        assertThat(variant.order().stream()
                        .map(id -> debrief.name(act.id(), variant.name(), id))
                        .toList())
                .isEqualTo(shown);
        List<String> paper = RunningSheet.lines(
                loaded.show(),
                act,
                prediction().flight(),
                prediction().bands(),
                loaded.drifts(act, prediction().flight()),
                prediction().learned(),
                List.of(),
                Measures.USUAL);
        // A name too long for its column goes on underneath.
        String column = paper.stream()
                .filter(line -> line.length() > 8)
                .map(line -> line.substring(8, Math.min(line.length(), 33)).strip())
                .collect(Collectors.joining(" "));
        assertThat(shown).allSatisfy(name -> assertThat(" " + column + " ").contains(" " + name + " "));
    }

    @Test
    void aVariantIsPredictedOnce() {
        assertThat(prediction()).isSameAs(prediction());
    }

    @Test
    void anEditFliesAnewOnlyTheActsThatAreFlownOtherwise() {
        Prediction before = prediction();
        Act other = loaded.show().acts().get(1);
        Prediction beside =
                loaded.prediction(other.id(), other.variants().get(0).name()).orElseThrow();
        LoadedShow renamed = loaded.with(loaded.show().withAct(act.withTitle("Another title")));
        assertThat(renamed.prediction(act.id(), variant.name())).containsSame(before);
        assertThat(renamed.show().act(act.id()).orElseThrow().title()).isEqualTo("Another title");
        List<String> shorter = variant.order().subList(0, 3);
        LoadedShow edited = loaded.with(
                loaded.show().withAct(act.flown(act.entry(), act.figures(), List.of(variant.inOrder(shorter)))));
        assertThat(edited.prediction(act.id(), variant.name())
                        .orElseThrow()
                        .outline()
                        .figures())
                .hasSize(3);
        assertThat(edited.prediction(other.id(), other.variants().get(0).name()))
                .containsSame(beside);
        LoadedShow elsewhere = loaded.with(loaded.show().withAircraft(List.of()));
        assertThat(elsewhere.prediction(act.id(), variant.name())).isEmpty();
    }

    @Test
    void whatTheShowDoesNotHaveIsNotPredicted() {
        assertThat(loaded.prediction(act.id(), "no such variant")).isEmpty();
        assertThat(loaded.prediction("no such act", variant.name())).isEmpty();
        assertThat(loaded.prediction(null, null)).isEmpty();
    }

    @Test
    void theClockGoesByTheSameDurationsAsThePlan() {
        List<String> ids = variant.order();
        var clock = loaded.durations().of(act.id(), variant.name(), ids);

        List<FigureTime> planned = prediction().times().figures();

        assertThat(planned).isNotEmpty();
        for (FigureTime time : planned) {
            assertThat(clock.secondsOf(ids.indexOf(time.figureId()))).isEqualTo(time.durationS());
        }
    }

    @Test
    void moreFlightsChangeTheBandsAndNotTheDurations() {
        List<FigureTime> first = prediction().times().figures();

        loaded.refine(2 * LoadedShow.FIRST_FLIGHTS);

        List<FigureTime> refined = prediction().times().figures();
        assertThat(refined).isNotEqualTo(first);
        assertThat(refined)
                .extracting(FigureTime::durationS)
                .isEqualTo(first.stream().map(FigureTime::durationS).toList());
    }

    @Test
    void anotherSpeakerTimesTheWordsAnewAndFliesNothingAnew() {
        Pace slow = new Pace("slow", 0.3, 2 * Pace.DEFAULT.perLetterS(), 0.5, 1.38, 0.1);
        String text = "Look up to the right.";
        double usualS = loaded.voices().time(text).seconds();
        Prediction flown = prediction();

        LoadedShow again = loaded.atPaces(new Paces(slow, List.of()));

        assertThat(again.voices().time(text).seconds()).isCloseTo(2 * usualS, within(1e-9));
        assertThat(again.prediction(act.id(), variant.name())).containsSame(flown);
        assertThat(again.withWords(again.show()).paces().own()).isEqualTo(slow);
        assertThat(again.inAir(again.show().air()).paces().own()).isEqualTo(slow);
        assertThat(loaded.voices().time(text).seconds()).isEqualTo(usualS);
    }

    @Test
    void aRemarkOfTheOtherIsPlannedAtTheOthersPace() {
        Remark one = act.remarks().stream()
                .filter(r -> plan(loaded).find(r.id()).isPresent())
                .findFirst()
                .orElseThrow();
        double usualS = length(loaded, one);
        Pace slow = new Pace("Ben", 0.3, 1.2 * Pace.DEFAULT.perLetterS(), 0.3, 0.83, 0.1);
        Show given = loaded.show()
                .withSpeakers(new Speakers(List.of(new Speaker("Ann", false), new Speaker("Ben", false))))
                .withAct(act.withFigures(
                        act.figures(),
                        act.remarks().stream()
                                .map(r -> r.id().equals(one.id()) ? r.saidBy("Ben") : r)
                                .toList()));
        LoadedShow both = loaded.with(given).atPaces(new Paces(Pace.DEFAULT, List.of(slow)));
        assertThat(length(both, one)).isBetween(1.15 * usualS, 1.35 * usualS);
        assertThat(both.words().time(one.saidBy("Ben"), false).seconds()).isCloseTo(length(both, one), within(0.06));
        Show alone = given.withSpeakers(new Speakers(List.of(new Speaker("Ann", false), new Speaker("Ben", true))));
        assertThat(length(both.with(alone), one)).as("Ben is away").isEqualTo(usualS);
    }

    private Plan plan(LoadedShow of) {
        return of.plan(of.show().act(act.id()).orElseThrow(), prediction().times());
    }

    private double length(LoadedShow of, Remark remark) {
        Placed placed = plan(of).find(remark.id()).orElseThrow();
        return placed.endS() - placed.startS();
    }
}
