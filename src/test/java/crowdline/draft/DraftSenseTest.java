package crowdline.draft;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Sliders;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether a first draft makes sense to whoever hears it where it is said. */
class DraftSenseTest {
    static final Drafted HIGH = Drafted.of(
            Drafted.empty(),
            "strong aerobatic monoplane",
            "Ada Quillan",
            "run-in from the left, loop, half Cuban, Cuban eight, inverted pass, tail slide, double snap roll,"
                    + " spin 3 turns from 3000 ft, knife edge pass, wing rock");

    private static Figure longestWay(Drafted drafted) {
        return drafted.act().figures().stream()
                .filter(Figure::transit)
                .max(Comparator.comparingDouble(
                        f -> drafted.flight().figure(f.id()).orElseThrow().durationS()))
                .orElseThrow();
    }

    @Test
    void theLongestWayBetweenTwoFiguresHasTheMostToSay() {
        Figure longest = longestWay(HIGH);

        assertThat(HIGH.flight().figure(longest.id()).orElseThrow().durationS()).isGreaterThan(60);
        assertThat(HIGH.of(longest.id()))
                .hasSizeGreaterThanOrEqualTo(2)
                .anyMatch(t -> t.startsWith("The highest point in this act is about three thousand feet up."));
    }

    @Test
    void anActThatEndsInAnInstantEndsWithThanksAllTheSame() {
        assertThat(HIGH.texts().get(HIGH.texts().size() - 1)).isEqualTo("Thank you, Ada Quillan.");
    }

    @Test
    void anotherIsSaidOnlyOfWhatWasCalledSoBefore() {
        Drafted drafted = Drafted.of(
                Drafted.empty(), "helicopter", "Ada Quillan", "spot turn\nspot turn\npedal turn\nhover\npedal turn");
        assertThat(drafted.texts().stream().filter(t -> t.contains(" turn")))
                .anyMatch(t -> t.contains("another spot turn"))
                .anyMatch(t -> t.contains("a pedal turn"))
                .anyMatch(t -> t.contains("another pedal turn"))
                .noneMatch(t -> t.contains("a third"));
    }

    @Test
    void aWayThatClimbsIsSaidToClimb() {
        assertThat(longestWay(HIGH).look()).startsWith("It climbs ");
        assertThat(Sentences.key("It climbs out to the left, turns away from you, and comes back."))
                .isEqualTo(Sentences.key("It climbs out to the right, turns away from you, and comes back."));
    }

    /** A minute of coming in, of which nothing else is known. */
    @Test
    void whereItComesFromIsToldWhileItComes() {
        assertThat(Drafted.of(Drafted.empty(), "formation", "The Tern Team", "run-in, 1 min\nbreak, 1 min\nlanding")
                        .of("run-in"))
                .contains("Look for the lights, or a dark dot that stays where it is and grows.");
    }

    @ParameterizedTest
    @CsvSource({"strong aerobatic monoplane", "aerobatic two-seater"})
    void handsAreToldWholeOrNotAtAll(String kind) {
        List<Remark> hands = Drafted.of(
                        Drafted.empty(), kind, "Ada Quillan", "tail slide\nlow pass\ntail slide\nstall turn\nlow pass")
                .remarks()
                .stream()
                .filter(r -> r.id().contains("-hands"))
                .toList();

        assertThat(hands).allMatch(r -> r.shortText() == null);
        assertThat(hands)
                .extracting(Remark::text)
                .doesNotContain("In the cockpit, the hand on the throttle closes it.");
    }

    @Test
    void aGliderHasOneWheelWhichIsSeenWhenItLands() {
        List<String> texts = Drafted.of(
                        Drafted.empty(),
                        "aerobatic glider",
                        "Ada Quillan",
                        "loop, inverted pass, half roll, low pass, landing")
                .texts();

        assertThat(texts).noneMatch(t -> t.contains("wheels"));
        assertThat(texts).anyMatch(t -> t.contains("the wheel touches"));
    }

    /** What is only typical of a kind is no fact about this one. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "strong aerobatic monoplane | Aeroplanes like this one are built for aerobatics, and for nothing else.",
                "large biplane | A big biplane takes its time, so there is time to look at every figure.",
                "old trainer | Aeroplanes like this one taught people to fly: gently, always trading height for speed."
            })
    void ofAKindOnlyThatIsToldWhichIsTrueOfAll(String kind, String told) {
        Aircraft aircraft = KindsFile.shipped().find(kind).orElseThrow().airframe("a", kind, Sliders.TYPICAL);

        assertThat(Names.kind(aircraft)).contains(told);
    }

    @Test
    void theJumpIsTheOnlyOneUnderAnyName() {
        assertThat(Drafted.of(
                                Drafted.empty(),
                                "parachutists",
                                "The Tern Team",
                                "run in, 2 min\nexit, 20 s\nlanding, 1 min")
                        .texts())
                .anyMatch(t -> t.endsWith(" the exit."));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Trellis (2 and 3), 1 minute | the trellis",
                "Zwickel fan over the crowd, 40 s | Zwickel fan over the crowd",
                "Zwickelbogen, 40 s | Zwickelbogen",
                "the winch demo, 40 s | the winch demo"
            })
    void whatOnlyTheTeamKnowsIsCalledAsItIsSpoken(String line, String called) {
        assertThat(Drafted.of(Drafted.empty(), "formation", "The Tern Team", "low pass, 1 min\n" + line + "\nlanding")
                        .texts())
                .anyMatch(t -> t.endsWith(" " + called + "."));
    }

    /** "For the pilot: gentle: a swing" has one colon too many. */
    @Test
    void whatThePilotFeelsFollowsAColonAndHasNone() {
        assertThat(CatalogueFile.shipped().entries())
                .allSatisfy(entry -> assertThat(String.valueOf(entry.pilotFeels()))
                        .as(entry.name())
                        .doesNotContain(":"));
    }
}
