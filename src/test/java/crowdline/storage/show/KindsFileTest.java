package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Kinds;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class KindsFileTest {
    private final Kinds kinds = KindsFile.shipped();

    static Stream<Kind> flying() {
        return KindsFile.shipped().all().stream().filter(Kind::flies);
    }

    @Test
    void theKindsAreThoseADisplayHas() {
        assertThat(kinds.all())
                .extracting(Kind::name)
                .containsExactly(
                        "strong aerobatic monoplane",
                        "aerobatic two-seater",
                        "light aerobatic biplane",
                        "large biplane",
                        "old trainer",
                        "piston fighter",
                        "jet trainer",
                        "fast jet",
                        "aerobatic glider",
                        "helicopter",
                        "formation",
                        "parachutists",
                        "fly-past");
        assertThat(kinds.all()).filteredOn(kind -> !kind.flies()).hasSize(4);
    }

    @Test
    void aKindIsFoundByAliasWhateverTheCase() {
        assertThat(kinds.named("Warbird").name()).isEqualTo("piston fighter");
        assertThat(kinds.named("FLY PAST").name()).isEqualTo("fly-past");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "jet fighter | fast jet, jet trainer, piston fighter",
                "arobatic glyder | aerobatic glider, strong aerobatic monoplane, aerobatic two-seater",
                "helicoptre | helicopter"
            })
    void anUnknownKindIsToldWithTheNearest(String name, String nearest) {
        assertThatThrownBy(() -> kinds.named(name))
                .hasMessage("there is no kind \"" + name + "\"; nearest: " + nearest);
    }

    @Test
    void aKindLikeNoneIsToldWithAllOfThem() {
        assertThatThrownBy(() -> kinds.named("zeppelin"))
                .hasMessageStartingWith("there is no kind \"zeppelin\"; the kinds are strong aerobatic monoplane, ")
                .hasMessageEndingWith(", fly-past");
    }

    /** No number of ours is one that a show would be asked about, at either end of the sliders. */
    @ParameterizedTest
    @MethodSource("flying")
    void everyNumberOfAKindIsPlausibleAndInProportion(Kind kind) throws Exception {
        for (double slider : List.of(-1.0, 0.0, 1.0)) {
            ShowReading reading = AirframeKindTest.reading("\"kind\": \"" + kind.name() + "\", \"heavier\": " + slider
                    + ", \"stronger\": " + slider + ", \"rollsFaster\": " + slider);
            assertThat(AirframeKindTest.about(reading, "airframes[0]")).isEmpty();
        }
    }

    /** Each is entered above its stall and below its never-exceed speed, and pulls what its wing gives there. */
    @ParameterizedTest
    @MethodSource("flying")
    void whatIsUsualCanBeFlown(Kind kind) throws Exception {
        Airframe a = AirframeKindTest.airframe("\"kind\": \"" + kind.name() + "\"");
        var usual = a.usual();

        assertThat(Math.pow(usual.loopKt() / a.stallKt(), 2)).isGreaterThan(usual.pullG());
        assertThat(usual.verticalKt()).isBetween(usual.rollKt(), a.neverExceedKt());
        assertThat(usual.pullG()).isLessThan(a.limitPositiveG());
        assertThat(usual.flickKt() == null).isEqualTo(kind.never().contains(Kind.Unshown.FLICK));
    }

    @Test
    void enginesAreThoseOfTheKind() throws Exception {
        assertThat(AirframeKindTest.airframe("\"kind\": \"glider\"").glider()).isTrue();
        assertThat(AirframeKindTest.airframe("\"kind\": \"fast jet\"").engine()).isEqualTo(new Engine.Jet(79.2, 129.0));
        assertThat(AirframeKindTest.airframe("\"kind\": \"old trainer\"").engine())
                .isEqualTo(
                        new Engine.Propeller(108, 2, 2300, Engine.Turns.CLOCKWISE, Engine.PropellerType.FIXED_CLIMB));
    }

    @Test
    void damagedKindsAreRefusedWithEveryFault() {
        assertThatThrownBy(() -> KindsFile.read("""
                {"crowdlineKinds": 1, "kinds": [{"name": "kite", "aliases": [], "sentence": "A kite.",
                "numbers": {"massKg": {"value": 5, "low": 6, "high": 7, "source": "none", "trust": "read"}}}]}"""))
                .hasMessage(
                        "the kinds of aircraft are damaged; kinds[0]: value is 5.0; it must be a number from 6.0 to 7.0");
    }
}
