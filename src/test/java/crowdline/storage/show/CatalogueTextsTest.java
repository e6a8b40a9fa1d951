package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the shipped texts say, against what handbooks say. */
class CatalogueTextsTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();

    static Stream<CatalogueEntry> entries() {
        return CATALOGUE.entries().stream();
    }

    private static CatalogueEntry entry(String name) {
        return CATALOGUE.find(name).orElseThrow();
    }

    private static String all(CatalogueEntry e) {
        return String.join(
                " ", e.whatItIs(), e.lookFor(), e.whyHard(), e.handsAndFeet(), e.pilotFeels(), e.mixUps(), e.sayIt());
    }

    /** Which hand holds what depends on the aeroplane. */
    @ParameterizedTest
    @MethodSource("entries")
    void noHandIsNamedByItsSide(CatalogueEntry entry) {
        assertThat(all(entry)).doesNotContainPattern("(?i)\\b(right|left) hand");
    }

    /** A stalled wing has lost most of its lift, not all: Pilot's Handbook of Aeronautical Knowledge, chapter 5. */
    @ParameterizedTest
    @MethodSource("entries")
    void aStalledWingIsNotSaidToLiftNoMore(CatalogueEntry entry) {
        assertThat(all(entry)).doesNotContainPattern("(?i)(stops|stopped|no longer) lifting");
    }

    /** Drag is small where a dive begins, so nothing pulls the pilot forward there. */
    @ParameterizedTest
    @CsvSource({"stall turn", "humpty bump", "vertical roll down", "45 degree down-line with flick"})
    void nobodyHangsForwardWhereADiveBegins(String name) {
        assertThat(entry(name).pilotFeels())
                .containsPattern("floating|[Ll]ight")
                .doesNotContainPattern(
                        "^Hanging forward|, and hanging forward on the way down|swing sideways, and hanging");
    }

    /** With air from behind, stick forward throws the nose over backwards and stick back lets it fall forwards. */
    @ParameterizedTest
    @CsvSource({"tail slide, firmly back, short of", "tail slide wheels up, firmly forward, past"})
    void tailSlideFallsTheWayTheStickIsHeld(String name, String stick, String lean) {
        assertThat(entry(name).handsAndFeet()).contains(stick);
        assertThat(entry(name).whyHard()).contains(lean + " straight up");
    }

    @Test
    void wheelsUpIsASomersaultBackwards() {
        assertThat(entry("tail slide wheels up").pilotFeels())
                .contains("somersault backwards")
                .doesNotContain("forwards");
    }

    /** The force that bends the path points to the lifting side: upright the canopy, inverted the wheels are inside. */
    @Test
    void invertedSpinHasTheCockpitOutside() {
        assertThat(entry("inverted spin").lookFor()).contains("cockpit on the outside");
        assertThat(entry("inverted spin").mixUps()).contains("wheels are on the outside");
    }

    @Test
    void barrelRollRunsRoundTheInside() {
        assertThat(entry("barrel roll").whatItIs()).contains("inside of an invisible barrel");
    }

    @Test
    void torqueRollTurnsWhileItSlides() {
        assertThat(entry("torque roll").whatItIs()).contains("keeps it rolling as it stops and slides back");
        assertThat(all(entry("torque roll"))).doesNotContain("hanging still");
    }

    @Test
    void halfRollOnTopDoesNotPause() {
        assertThat(entry("half loop with roll out on top").lookFor())
                .contains("at once")
                .doesNotContain("paus");
    }

    /** Height in a steep turn is held by pulling: Airplane Flying Handbook, chapter 10. */
    @Test
    void feetOnlyBalanceASteepTurn() {
        assertThat(entry("steep turn").handsAndFeet())
                .contains("pulls, which keeps it from sinking")
                .contains("feet balance");
    }

    @Test
    void noseOfAnAileronRollIsNotSaidToStayPut() {
        assertThat(entries().map(CatalogueTextsTest::all)).noneMatch(text -> text.contains("stays put"));
    }

    @ParameterizedTest
    @CsvSource({"take-off, sit on a tail wheel", "landing, on a tail-wheel aeroplane"})
    void noseHidesTheRunwayOnTailWheelsOnly(String name, String words) {
        assertThat(entry(name).whyHard()).contains(words);
    }

    @ParameterizedTest
    @MethodSource("entries")
    void everyFigureSaysWhereItsTextsComeFrom(CatalogueEntry entry) {
        assertThat(Objects.requireNonNull(entry.source()))
                .containsPattern("common practice|[A-Z]|published|encyclopaedia");
    }

    /** "LOOP" beside "loop" helps nobody. */
    @ParameterizedTest
    @MethodSource("entries")
    void howToSayItIsNotTheNameInCapitals(CatalogueEntry entry) {
        String said = letters(entry.sayIt());
        assertThat(letters(entry.name())).isNotEqualTo(said);
        if (!said.isBlank()) {
            assertThat(List.of(letters(entry.name()).split(" "))).doesNotContain(said);
        }
    }

    @Test
    void onlyNamesThatAreReadWrongSayHowToSayThem() {
        assertThat(entries().filter(e -> !e.sayIt().isBlank()).map(CatalogueEntry::name))
                .containsExactlyInAnyOrder("Derry turn", "chandelle", "lomcovak", "aileron roll", "bow");
    }

    private static String letters(String text) {
        return text.toLowerCase(Locale.UK).replaceAll("[^a-z ]", "");
    }
}
