package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Sliders;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.check.Severity;
import crowdline.show.check.ShowRules;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.storage.file.ShowFileException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The words and figures that ship with the program, and the demo shows, as they would be used. */
class ShippedContentTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    /** High enough that no figure of the catalogue reaches the ground. */
    private static final double HIGH_FT = 2500;

    private static final String AIR_DAY = "fenmarsh-air-day.json";
    private static final String EVENING = "wrackenholt-evening.json";

    private static ShowReading reading(String file) throws ShowFileException {
        return new ShowFile().read(Path.of("demo-shows", file));
    }

    private static Show show(String file) throws ShowFileException {
        return Objects.requireNonNull(reading(file).show());
    }

    private static Show demo() throws ShowFileException {
        return show(AIR_DAY);
    }

    @Test
    void everyDemoShowIsHeldHere() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-shows"))) {
            assertThat(files.map(file -> String.valueOf(file.getFileName())))
                    .containsExactlyInAnyOrder(AIR_DAY, EVENING);
        }
    }

    static Stream<CatalogueEntry> entries() {
        return CATALOGUE.entries().stream();
    }

    static Stream<CatalogueEntry> flown() {
        return entries().filter(entry -> !entry.elements().isEmpty());
    }

    @Test
    void theCatalogueExplainsAtLeastFiftyFigures() {
        assertThat(CATALOGUE.entries()).hasSizeGreaterThanOrEqualTo(50);
    }

    @ParameterizedTest
    @MethodSource("entries")
    void whatToLookForIsOneSentenceUnderSixteenWords(CatalogueEntry entry) {
        assertThat(entry.lookFor().split("\\s+")).hasSizeLessThan(16);
        assertThat(entry.lookFor()).matches("[^.!?]+\\.");
    }

    @ParameterizedTest
    @MethodSource("entries")
    void everyQuestionAboutAFigureIsAnswered(CatalogueEntry entry) {
        assertThat(List.of(
                        entry.whatItIs(),
                        entry.whyHard(),
                        entry.handsAndFeet(),
                        entry.pilotFeels(),
                        entry.mixUps(),
                        Objects.requireNonNullElse(entry.source(), "")))
                .allSatisfy(text -> assertThat(text).isNotBlank());
    }

    @ParameterizedTest
    @MethodSource("flown")
    void everyFigureCanBeFlownToItsEndFromItsUsualEntrySpeed(CatalogueEntry entry) throws ShowFileException {
        Flight flight = alone(entry, demo());
        FigureFlight figure = flight.figures().get(0);

        assertThat(figure.completed()).as(flight.findings().toString()).isTrue();
        assertThat(flight.findings()).noneMatch(found -> found.severity() == Severity.ERROR);
    }

    private static Flight alone(CatalogueEntry entry, Show show) {
        Airframe strong = KindsFile.shipped().all().get(0).airframe("strong", "A strong aeroplane", Sliders.TYPICAL);
        double kt =
                Objects.requireNonNull(Objects.requireNonNull(entry.enters()).kt(strong.usual(), strong.stallKt()));
        Act shown = show.acts().get(0);
        Act act = new Act(
                "alone",
                "Alone",
                shown.performer(),
                strong.id(),
                shown.slotStart(),
                5,
                new Placing(0, 0, HIGH_FT, kt, Placing.Heading.RIGHT),
                List.of(Figure.of("only", entry.name())),
                List.of(new Variant("full", null, List.of("only"))),
                List.of());
        Venue venue = show.venue();
        Venue open = new Venue(
                venue.name(),
                venue.latDeg(),
                venue.lonDeg(),
                venue.elevationFt(),
                venue.axisBearingDeg(),
                venue.crowdToLineM(),
                venue.timeZone(),
                Venue.Limits.NONE);
        Show bare = new Show(
                show.title(),
                show.date(),
                open,
                show.air(),
                List.of(strong),
                show.performers(),
                List.of(act),
                List.of());
        return new Predictor(bare, CATALOGUE, act, act.variants().get(0)).predict();
    }

    @ParameterizedTest
    @ValueSource(strings = {AIR_DAY, EVENING})
    void aDemoShowHasNothingWorthMending(String file) throws ShowFileException {
        ShowReading reading = reading(file);

        assertThat(reading.with(ShowRules.check(show(file), CATALOGUE)).findings())
                .noneMatch(found -> found.severity() != Severity.NOTE);
    }

    @ParameterizedTest
    @ValueSource(strings = {AIR_DAY, EVENING})
    void everyLoopOfADemoShowEndsWhereItBegan(String file) throws ShowFileException {
        Show show = show(file);
        int loops = 0;
        for (Act act : show.acts()) {
            List<FigureFlight> flown = new Predictor(
                            show, CATALOGUE, act, act.variants().get(0))
                    .predict()
                    .figures();
            for (int i = 1; i < flown.size(); i++) {
                FigureFlight loop = flown.get(i);
                if (loop.name().equals("loop")) {
                    loops++;
                    double height = loop.highestM() - loop.lowestM();
                    assertThat(loop.exitAlongM() - flown.get(i - 1).exitAlongM())
                            .as(act.id())
                            .isCloseTo(0, within(0.05 * height));
                }
            }
        }
        assertThat(loops).isPositive();
    }

    @ParameterizedTest
    @ValueSource(strings = {AIR_DAY, EVENING})
    void everyVariantOfADemoShowFliesWithoutAFinding(String file) throws ShowFileException {
        Show show = show(file);
        for (Act act : show.acts()) {
            for (Variant variant : act.variants()) {
                assertThat(new Predictor(show, CATALOGUE, act, variant)
                                .predict()
                                .findings())
                        .as("%s, %s", act.id(), variant.name())
                        .isEmpty();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {AIR_DAY, EVENING})
    void theActsEndWithinTheirSlots(String file) throws ShowFileException {
        Show show = show(file);
        for (Act act : show.acts()) {
            for (Variant variant : act.variants()) {
                boolean meant = variant.equals(act.variants().get(0));
                assertThat(new Predictor(show, CATALOGUE, act, variant)
                                .predict()
                                .totalS())
                        .as("%s, %s", act.id(), variant.name())
                        .isBetween(meant ? 3 * 60.0 : 90.0, act.slotMinutes() * 60.0);
            }
        }
    }

    @Test
    void theEveningShowFliesWhatTheAirDayDoesNot() throws ShowFileException {
        assertThat(show(EVENING).acts().get(0).figures())
                .extracting(Figure::figure)
                .contains(
                        "double flick",
                        "torque roll",
                        "tail slide",
                        "lomcovak",
                        "rolling turn",
                        "knife edge pass",
                        "45 degree up-line with roll");
        assertThat(show(EVENING).acts().get(1).figures())
                .extracting(Figure::figure)
                .contains("loop", "barrel roll", "stall turn", "spin", "wing-over", "steep turn");
    }

    @Test
    void theDemoSoloLastsAboutSevenMinutes() throws ShowFileException {
        Show show = demo();
        Act solo = show.acts().get(0);

        assertThat(new Predictor(show, CATALOGUE, solo, solo.variants().get(0))
                        .predict()
                        .totalS())
                .isBetween(6.5 * 60, 8.0 * 60);
    }

    @Test
    void aFormationIsTimedBesideTheActsThatAreFlown() throws ShowFileException {
        Show show = demo();
        assertThat(show.acts().stream().map(act -> show.aircraft(act.airframe()).orElseThrow()))
                .hasAtLeastOneElementOfType(TimedAircraft.class)
                .hasAtLeastOneElementOfType(Airframe.class);
    }
}
