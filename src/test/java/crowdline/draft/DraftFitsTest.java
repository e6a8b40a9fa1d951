package crowdline.draft;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.patter.Plan;
import crowdline.show.Act;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The words are those of whoever flies and of what flies: a person, several, a log, what has no engine. */
class DraftFitsTest {
    private static final String WHOLE = """
            take-off, dive in from the left, loop, stall turn right end, slow roll, half Cuban, four point roll, \
            humpty bump, spin 2 turns, low pass, landing""";

    @Test
    void performersOwnFactsAreToldByName() {
        Drafted drafted = Drafted.of(
                Drafted.with(
                        "Ada Quillan",
                        "Mends church organs for a living.",
                        "Nine summers of displays.",
                        "She learned to fly in a glider."),
                "light aerobatic biplane",
                "Ada Quillan",
                WHOLE);
        assertThat(drafted.texts()).contains("Ada mends church organs for a living.", "Nine summers of displays.");
    }

    /** Two minutes of an act with hardly a pause: what finds no place can be said wherever there is time, or taken by its key. */
    @Test
    void factsThatFindNoPlaceInAFigureFloatInTheAct() {
        String[] facts = {"Mends church organs for a living.", "She learned to fly in a glider.", "Built in 1943."};
        Drafted drafted = Drafted.of(
                Drafted.with("Ada Quillan", facts),
                "old trainer",
                "Ada Quillan",
                "loop, stall turn, slow roll, half Cuban, low pass");

        assertThat(drafted.act().remarks())
                .isNotEmpty()
                .allMatch(r -> r.draft() && r.kind() == RemarkKind.FACT && r.shortText() == null);
        List<String> all = new ArrayList<>(drafted.texts());
        drafted.act().remarks().forEach(r -> all.add(r.text()));
        assertThat(all)
                .containsOnlyOnce(
                        "Ada mends church organs for a living.",
                        "Ada learned to fly in a glider.",
                        "The old trainer was built in 1943.");
        Plan plan = drafted.plan();
        assertThat(plan.talkS() / (plan.talkS() + plan.quietS())).isLessThan(0.6);
        assertThat(drafted.overMoments(plan)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "parachutists | the pilot | jump, landing | Please welcome the parachutists. First, the jump.",
                "parachutists | The Tern Team | jump, landing | Please welcome the Tern Team. First, the jump.",
                "formation | the pilot | low pass, landing | Please welcome a formation. First, a low pass.",
                "fly-past | the pilot | low pass, low pass | Here comes our fly-past, with a low pass.",
                "fly-past | Ada Quillan | low pass, low pass | Here comes Ada Quillan, with a low pass.",
                "helicopter | Ada Quillan | hover, landing | Please welcome Ada Quillan, in a helicopter. First, a hover."
            })
    void whatIsOnlyTimedIsWelcomedByWhatItIs(String kind, String performer, String list, String call) {
        assertThat(Drafted.of(Drafted.empty(), kind, performer, list).texts().get(0))
                .isEqualTo(call);
    }

    @Test
    void aFormationSaysHowManyTheyAreAndSpeaksOfEach() {
        Drafted drafted = Drafted.of(
                Drafted.empty(), "formation of 4", "The Tern Team", "run-in, break, low pass, break, landing", 1);

        assertThat(drafted.texts().get(0)).isEqualTo("Please welcome the Tern Team, a formation of four.");
        assertThat(drafted.texts()).anyMatch(t -> t.startsWith("For each pilot: "));
        assertThat(String.join(" ", drafted.texts()))
                .doesNotContain("The pilot slows")
                .contains("another break");
    }

    @Test
    void aLoopOfAFormationIsAllOfThemsAndSeveralPassesArePasses() {
        Drafted drafted = Drafted.of(
                Drafted.empty(),
                "formation of 4",
                "The Tern Team",
                "run-in, loop, opposition passes x 3, barrel roll",
                1);

        assertThat(drafted.of("loop")).first().asString().contains("a formation loop");
        assertThat(drafted.of("barrel-roll")).first().asString().contains("a formation roll");
        assertThat(drafted.of("opposition-pass")).first().asString().contains("three opposition passes");
    }

    /** It may be an airliner or a balloon. */
    @Test
    void ofAFlyPastNothingIsSaidThatOnlyAnAeroplaneHas() {
        String all = String.join(
                " ",
                Drafted.of(Drafted.empty(), "fly-past", "Ada Quillan", "take-off, low pass, low pass, landing", 1)
                        .texts());

        assertThat(all).contains("horizon").doesNotContainPattern("stick|wheels|cockpit|rushes");
    }

    @Test
    void aGliderIsHeardAsWind() {
        String all = String.join(
                " ",
                Drafted.of(Drafted.empty(), "aerobatic glider", "Ada Quillan", "dive, loop, dive, low pass", 1)
                        .texts());

        assertThat(all).contains("listen to the wind rising").doesNotContain("without a sound");
    }

    /** By its path a loop is seen, not what was meant: nothing is explained, counted or taken for certain. */
    @Test
    void whatALogOnlyGuessesIsNeverSaidForCertain() {
        var made = Drafted.arranged(Drafted.empty(), "old trainer", "Ada Quillan", "loop, barrel roll, low pass, loop");
        Act guessed = made.act()
                .withFigures(
                        made.act().figures().stream()
                                .map(f -> f.transit() || f.id().equals("loop")
                                        ? f
                                        : f.asking(new Asked(
                                                Asked.FROM_LOG + "at 0:10 for 9 s",
                                                null,
                                                null,
                                                null,
                                                null,
                                                null,
                                                null,
                                                null,
                                                null,
                                                null,
                                                null,
                                                false,
                                                List.of(f.figure(), "wing-over"),
                                                false)))
                                .toList(),
                        List.of());
        Drafted drafted = Drafted.of(made.show().withActs(List.of(guessed), List.of()), guessed, 1);

        assertThat(drafted.of("barrel-roll")).containsExactly("Perhaps a barrel roll.");
        assertThat(drafted.of("low-pass")).containsExactly("Next, most likely, a low pass.");
        assertThat(drafted.of("loop")).anyMatch(t -> t.startsWith("Watch whether the circle"));
        assertThat(drafted.of("loop-2")).first().asString().startsWith("Now, by the look of it, another loop");
    }

    @Test
    void aHalfRollBackIsNotTheOneThatStaysUpsideDown() {
        Drafted drafted = Drafted.of(
                Drafted.empty(),
                "aerobatic glider",
                "Ada Quillan",
                "low pass, inverted pass, roll to upright, loop",
                1);

        assertThat(drafted.of("half-roll")).singleElement().asString().contains("half a roll, back the right way up");
    }

    @Test
    void aWordThatDescribesAFigureIsSaidWithIt() {
        String calls = String.join(
                " ",
                Drafted.of(Drafted.empty(), "formation", "The Tern Team", "run-in, fan break, diamond loop, fan break")
                        .texts());

        assertThat(calls).contains("a fan break").contains("a diamond loop").contains("another fan break");
    }

    /** It passes low as it comes out of its spin: until then there is something to watch. */
    @Test
    void aFigureThatNoCallCanComeBeforeIsNamedAsItBegins() {
        var made = Drafted.arranged(
                Drafted.empty(), "light aerobatic biplane", "Ada Quillan", "loop, spin 2 turns, low pass, slow roll");
        Act close = made.act()
                .withFigures(
                        made.act().figures().stream()
                                .filter(f -> !f.transit() || !isBehindASpin(made.act(), f))
                                .toList(),
                        List.of());
        Drafted drafted = Drafted.of(made.show().withActs(List.of(close), List.of()), close, DraftWords.SHARE);

        assertThat(drafted.of("low-pass")).first().isEqualTo("This is a low pass.");
        assertThat(drafted.plan().placed())
                .filteredOn(p -> p.remarkId().equals("low-pass-name"))
                .singleElement()
                .satisfies(
                        p -> assertThat(p.startS() - drafted.startS("low-pass")).isBetween(0.0, 3.0));
    }

    private static boolean isBehindASpin(Act act, Figure transit) {
        List<String> ids = act.figures().stream().map(Figure::id).toList();
        return ids.indexOf(transit.id()) > ids.indexOf("spin") && ids.indexOf(transit.id()) < ids.indexOf("low-pass");
    }

    @Test
    void noTwoColonsStandInOneCall() {
        for (Drafted drafted : DraftWordsTest.drafts()) {
            assertThat(drafted.texts()).noneMatch(text -> text.matches("[^.]*: [^.]*: [^.]*\\..*"));
        }
    }

    /** "She" behind a sentence about an aeroplane is the aeroplane. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Ada Quillan | She has flown for 31 years. | Ada has flown for 31 years.",
                "Ada Quillan | He learnt in a glider. | Ada learnt in a glider.",
                "Ada Quillan | They have flown for six years. | Ada has flown for six years.",
                "Ada Quillan | They learned to fly at sixteen. | Ada learned to fly at sixteen.",
                "Ada Quillan | They sometimes sing. | They sometimes sing.",
                "Ada Quillan | Their first flight was in a balloon. | Ada's first flight was in a balloon.",
                "Ada and Bram Quillan | They have flown for six years. | They have flown for six years.",
                "The pilot | Her day job is teaching. | The pilot's day job is teaching.",
                "Ada Quillan | Built in 1943 as a trainer. | The large biplane was built in 1943 as a trainer.",
                "Ada Quillan | Built half of it herself. | Ada built half of it herself.",
                "Ada Quillan | Powered by a round engine. | The large biplane is powered by a round engine.",
                "Ada Quillan | It was built in a barn. | The large biplane was built in a barn.",
                "Ada Quillan | It is her first season. | It is her first season.",
                "Ada Quillan | Its wings are cloth. | The large biplane's wings are cloth."
            })
    void aFactThatBeginsWithAPronounIsToldByName(String performer, String fact, String said) {
        var made = Drafted.arranged(Drafted.with(performer, fact), "large biplane", performer, "loop, low pass");

        assertThat(Names.of(made.show(), made.act()).said(fact)).isEqualTo(said);
    }
}
