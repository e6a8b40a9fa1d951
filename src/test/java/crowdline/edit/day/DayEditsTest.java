package crowdline.edit.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.arrange.ShowArranging;
import crowdline.edit.EditedShow;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.edit.act.FirstDraft;
import crowdline.list.ListReader;
import crowdline.show.Act;
import crowdline.show.CrowdUnits;
import crowdline.show.Incident;
import crowdline.show.Performer;
import crowdline.show.Performer.SourcedFact;
import crowdline.show.Show;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Kinds;
import crowdline.show.aircraft.Sliders;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.aircraft.Typical;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.Severity;
import crowdline.show.check.ShowRules;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.Pace;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.IncidentTemplate;
import crowdline.storage.show.KindsFile;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DayEditsTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final Kinds KINDS = KindsFile.shipped();
    private static final Days DAYS = new Days(CATALOGUE);
    private static final Aircrafts AIRCRAFT = new Aircrafts(CATALOGUE);
    private static final String PLANE = "solo-aircraft";

    private final Show show;

    DayEditsTest() throws CannotBe {
        Show made = new AddAct(CATALOGUE, new FirstDraft(CATALOGUE, Pace.DEFAULT, 0.5))
                .fromList(
                        new ListReader(CATALOGUE).read("loop, stall turn, slow roll, low pass"),
                        new AddAct.Wanted(
                                KINDS.named("light aerobatic biplane"), null, "Solo", "Ada Field", LocalTime.NOON))
                .of(ShowArranging.empty(
                        "A day",
                        LocalDate.of(2027, 5, 2),
                        ZoneOffset.UTC,
                        IncidentTemplate.shipped().incident()))
                .show();
        Act act = made.acts().get(0);
        // A person has read the words, so none of them may be lost.
        show = made.withAct(act.withFigures(
                act.figures().stream()
                        .map(f -> f.withRemarks(f.remarks().stream()
                                .map(r -> r.withDraft(false))
                                .toList()))
                        .toList(),
                List.of()));
    }

    Stream<Edit> edits() {
        return Stream.of(
                Days.title("Another day"),
                Days.date(LocalDate.of(2028, 2, 29)),
                Days.place("Elsewhere"),
                Days.position(51.5, -0.5),
                Days.timeZone(ZoneId.of("Europe/London")),
                DAYS.number(VenueNumber.ELEVATION_FT, 120.0),
                DAYS.number(VenueNumber.BEARING_DEG, 85.0),
                DAYS.number(VenueNumber.CROWD_M, 150.0),
                DAYS.number(VenueNumber.BASE_FT, 400.0),
                DAYS.number(VenueNumber.CEILING_FT, 4_000.0),
                DAYS.number(VenueNumber.HALF_LENGTH_M, 1_200.0),
                DAYS.number(VenueNumber.DEPTH_M, 800.0),
                Days.air(AirNumber.QNH_HPA, 1_001.0),
                Days.air(AirNumber.TEMPERATURE_C, -3.0),
                Days.air(AirNumber.WIND_FROM_DEG, 240.0),
                Days.air(AirNumber.WIND_KT, 12.0),
                Days.air(AirNumber.CLOUD_BASE_FT, 2_500.0),
                People.add("Bo Marsh"),
                People.rename("ada-field", "Ada Fields"),
                People.sayAs("ada-field", "AY-da"),
                People.facts("ada-field", List.of(new SourcedFact("Mends clocks.", "her own form"))),
                People.words(Map.of("Fenmarsh", "FEN-marsh")),
                Announcements.words("Please stay where you are.\n\nThank you."),
                Announcements.firstSteps("Stop the music\nListen"),
                Announcements.contacts("Director: channel 1"),
                Announcements.agreed("the director, 2 May"),
                Aircrafts.rename(PLANE, "The little red one"),
                AIRCRAFT.kind(PLANE, KINDS.named("jet trainer")),
                AIRCRAFT.sliders(PLANE, new Sliders(0.5, -0.5, 1)),
                AIRCRAFT.number(PLANE, "massKg", 700.0));
    }

    @ParameterizedTest
    @MethodSource("edits")
    void everyEditChangesTheShowAndIsTakenBackAndMadeAgain(Edit edit) throws CannotBe {
        var change = edit.of(show);
        assertThat(change.name()).isNotBlank().hasSizeLessThan(60);
        EditedShow edited = EditedShow.opened(show).changed(change);
        assertThat(edited.now()).isNotEqualTo(show);
        assertThat(edited.undoName()).contains(change.name());
        assertThat(edited.undone().now()).isEqualTo(show);
        assertThat(edited.undone().redone().now()).isEqualTo(change.show());
        assertThat(ShowRules.check(change.show(), CATALOGUE).stream().filter(f -> f.severity() == Severity.ERROR))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("edits")
    void noEditLosesAWordOfAnAct(Edit edit) throws CannotBe {
        assertThat(edit.of(show)
                        .show()
                        .everyRemark()
                        .filter(r -> !r.draft())
                        .map(Remark::text)
                        .sorted())
                .containsExactlyElementsOf(
                        show.everyRemark().map(Remark::text).sorted().toList());
    }

    private static List<String> drafts(Show show) {
        return show.everyRemark().filter(Remark::draft).map(Remark::text).toList();
    }

    private static Show knowing(Show show, String... facts) throws CannotBe {
        return People.facts(
                        "ada-field",
                        Stream.of(facts)
                                .map(f -> new SourcedFact(f, "her own form"))
                                .toList())
                .of(show)
                .show();
    }

    @Test
    void aFactThatIsTypedIsADraftOfItsActAndChangesWithIt() throws CannotBe {
        Show two = knowing(show, "Mends clocks.", "Built in 1943.");
        assertThat(drafts(two)).containsExactly("Ada mends clocks.", "The light aerobatic biplane was built in 1943.");
        assertThat(two.acts().get(0).remarks()).filteredOn(Remark::draft).allMatch(r -> r.kind() == RemarkKind.FACT);
        assertThat(drafts(knowing(two, "Mends clocks.", "Built in 1944.")))
                .containsExactly("Ada mends clocks.", "The light aerobatic biplane was built in 1944.");
        assertThat(drafts(knowing(two, "Built in 1943.")))
                .containsExactly("The light aerobatic biplane was built in 1943.");
        assertThat(drafts(knowing(two))).isEmpty();
    }

    @Test
    void whatAPersonAcceptedOfAFactStaysAndIsNotSaidAgain() throws CannotBe {
        Show with = knowing(show, "Mends clocks.");
        Act act = with.acts().get(0);
        Show accepted = with.withAct(act.withFigures(
                act.figures(),
                act.remarks().stream().map(r -> r.withDraft(false)).toList()));

        assertThat(knowing(accepted).everyRemark().map(Remark::text)).contains("Ada mends clocks.");
        assertThat(drafts(knowing(accepted, "Mends clocks."))).isEmpty();
    }

    /** "For a living she mends clocks" says it, though no computer sees that. */
    @Test
    void aFactThatWasKnownBeforeIsNotDraftedBesideAPersonsOwnWords() throws CannotBe {
        Show with = knowing(show, "Mends clocks.");
        Act act = with.acts().get(0);
        Show own = with.withAct(act.withFigures(
                act.figures(), List.of(Remark.of("own", RemarkKind.FACT, "For a living she mends clocks."))));

        assertThat(drafts(knowing(own, "Mends clocks.", "Built in 1943.")))
                .containsExactly("The light aerobatic biplane was built in 1943.");
        assertThat(drafts(knowing(own, "Mends old clocks."))).isEmpty();
    }

    @Test
    void anActWithoutWordsIsLeftWithout() throws CannotBe {
        Act act = show.acts().get(0);
        Show silent = show.withAct(act.withFigures(
                act.figures().stream().map(f -> f.withRemarks(List.of())).toList(), List.of()));

        assertThat(drafts(knowing(silent, "Mends clocks."))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e9, 1e9, Double.NaN, Double.NEGATIVE_INFINITY})
    void aNumberThatIsNoneIsRefusedWithWhatIsAllowed(double value) {
        for (VenueNumber number : VenueNumber.values()) {
            assertThatThrownBy(() -> DAYS.number(number, value).of(show)).isInstanceOf(CannotBe.class);
        }
        for (AirNumber number : AirNumber.values()) {
            assertThatThrownBy(() -> Days.air(number, value).of(show)).isInstanceOf(CannotBe.class);
        }
        assertThatThrownBy(() -> AIRCRAFT.number(PLANE, "massKg", value).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("massKg");
    }

    @ParameterizedTest
    @MethodSource("edits")
    void noEditChangesHowTheCrowdMeasures(Edit edit) throws CannotBe {
        Show metric = Days.units(CrowdUnits.METRIC).of(show).show();
        assertThat(edit.of(metric).show().venue().crowdUnits()).isEqualTo(CrowdUnits.METRIC);
    }

    @Test
    void whatWasNotGivenStaysUnknown() throws CannotBe {
        Show told = DAYS.number(VenueNumber.BASE_FT, 500.0).of(show).show();
        Show cleared = DAYS.number(VenueNumber.BASE_FT, null).of(told).show();
        assertThat(cleared.venue().limits().baseFt()).isNull();
        assertThat(show.venue().limits().baseFt()).isNull();
        assertThat(show.venue().axisBearingDeg()).isNull();
    }

    @Test
    void actsAreLaidOutAboveTheHeightTheDirectorGave() throws CannotBe {
        Show high = DAYS.number(VenueNumber.BASE_FT, 1_500.0).of(show).show();
        assertThat(lowestEntry(high)).isGreaterThan(lowestEntry(show) + 300);
    }

    private static double lowestEntry(Show show) {
        return Objects.requireNonNull(show.acts().get(0).entry()).heightFt();
    }

    @Test
    void aNumberTypedIsToldAndClearedIsTheKindsAgain() throws CannotBe {
        Airframe before = show.airframe(PLANE).orElseThrow();
        Airframe told = AIRCRAFT.number(PLANE, "massKg", 700.0)
                .of(show)
                .show()
                .airframe(PLANE)
                .orElseThrow();
        assertThat(told.massKg()).isEqualTo(700);
        assertThat(told.assumed())
                .doesNotContain("massKg")
                .hasSize(before.assumed().size() - 1);
        Show again = AIRCRAFT.number(PLANE, "massKg", null)
                .of(AIRCRAFT.number(PLANE, "massKg", 700.0).of(show).show())
                .show();
        assertThat(again.airframes()).isEqualTo(show.airframes());
    }

    @Test
    void slidersMoveWhatIsAssumedAndLeaveWhatWasTold() throws CannotBe {
        Show told = AIRCRAFT.number(PLANE, "massKg", 700.0).of(show).show();
        Airframe moved = AIRCRAFT.sliders(PLANE, new Sliders(1, 1, 1))
                .of(told)
                .show()
                .airframe(PLANE)
                .orElseThrow();
        assertThat(moved.massKg()).isEqualTo(700);
        assertThat(moved.rollRateDegPerS())
                .isGreaterThan(show.airframe(PLANE).orElseThrow().rollRateDegPerS());
        assertThat(moved.typical()).extracting(Typical::sliders).isEqualTo(new Sliders(1, 1, 1));
    }

    @Test
    void anotherKindFliesTheSameFigures() throws CannotBe {
        Show jet = AIRCRAFT.kind(PLANE, KINDS.named("jet trainer")).of(show).show();
        assertThat(flown(jet)).isEqualTo(flown(show));
        Show formation = AIRCRAFT.kind(PLANE, KINDS.named("formation")).of(show).show();
        assertThat(flown(formation)).isEqualTo(flown(show));
        assertThat(formation.acts().get(0).figures())
                .allSatisfy(f -> assertThat(f.durationS()).isNotNull());
        Show four = AIRCRAFT.number(PLANE, 4).of(formation).show();
        assertThat(four.aircraft(PLANE)).containsInstanceOf(TimedAircraft.class);
        assertThatThrownBy(() -> AIRCRAFT.number(PLANE, 400).of(formation)).hasMessageContaining("from 1 to 100");
        Show back = AIRCRAFT.kind(PLANE, KINDS.named("light aerobatic biplane"))
                .of(formation)
                .show();
        assertThat(flown(back)).isEqualTo(flown(show));
    }

    private static List<String> flown(Show show) {
        return show.acts().get(0).figures().stream()
                .filter(f -> !f.transit())
                .map(Figure::figure)
                .toList();
    }

    @Test
    void wordsThatChangeAreAgreedWithNobodyAnyMore() throws CannotBe {
        Show agreed = Announcements.agreed("the director, 2 May").of(show).show();
        assertThat(agreed.incident()).extracting(Incident::agreedWith).isEqualTo("the director, 2 May");
        assertThat(Announcements.words("Other words.").of(agreed).show().incident())
                .extracting(Incident::agreedWith)
                .isNull();
        assertThatThrownBy(() -> Announcements.words(" \n\n ").of(show)).hasMessageContaining("no words");
        assertThatThrownBy(() -> Announcements.words("x".repeat(5_001)).of(show))
                .hasMessageContaining("5,001 letters");
        assertThatThrownBy(() -> Announcements.contacts("somebody").of(show)).hasMessageContaining("a colon between");
        Show none = show.withIncident(null);
        assertThatThrownBy(() -> Announcements.words("x").of(none)).hasMessageContaining("begin with the template");
        assertThat(Announcements.template(IncidentTemplate.shipped().incident())
                        .of(none)
                        .show()
                        .incident())
                .extracting(Incident::agreedWith)
                .isNull();
    }

    @Test
    void whoFliesAnActIsNotTakenOut() throws CannotBe {
        assertThatThrownBy(() -> People.remove("ada-field").of(show)).hasMessageContaining("flies in an act");
        Show two = People.add("Bo Marsh").of(show).show();
        assertThat(People.remove("bo-marsh").of(two).show()).isEqualTo(show);
        assertThatThrownBy(() -> People.add("Ada Field").of(show)).hasMessageContaining("already");
        assertThatThrownBy(() -> People.rename("ada-field", "n".repeat(5_001)).of(show))
                .hasMessageContaining("5,001 letters");
        assertThat(People.rename("ada-field", "عايدة").of(show).show().performers())
                .extracting(Performer::name)
                .containsExactly("عايدة");
    }
}
