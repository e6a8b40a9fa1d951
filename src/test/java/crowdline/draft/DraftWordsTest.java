package crowdline.draft;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.show.Act;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class DraftWordsTest {
    private static final String WHOLE = """
            take-off, dive in from the left, loop, stall turn right end, slow roll, half Cuban, four point roll, \
            humpty bump, spin 2 turns, low pass, landing""";
    private static final String HOVERS =
            "run-in 40 s\nbow 20 s\nhover 45 s\npedal turn 30 s\nrescue with the winch 30 s\nbow 20 s";

    /** Acts unlike each other: kind, performer, list. */
    record Case(String kind, String performer, String list) {}

    static List<Case> acts() {
        return List.of(
                new Case("light aerobatic biplane", "Ada Quillan", WHOLE),
                new Case(
                        "old trainer",
                        "the pilot",
                        "dive in from the right\nloop\nbarrel roll\nhalf cuban left\nloop\naileron roll\nwing over\nsteep turn\nlow pass"),
                new Case(
                        "strong aerobatic monoplane",
                        "Bram Okkels",
                        "dive in\navalanche\n2 flick rolls\ntail slide\nknife edge\ntorque roll\nlomcovak\nflat spin 3 turns\ninverted pass\ntail slide\nwing rock"),
                new Case("helicopter", "The Tern Team", HOVERS),
                new Case(
                        "aerobatic glider",
                        "Hettie Pell",
                        "loop\nsplit S\nslow roll\nlazy eight\nloop\nbarrel roll\nlow pass"),
                new Case("jet trainer", "Jon Marsh", "loop\nbarrel roll\nderry turn\nhalf Cuban\nsteep turn\nlow pass"),
                new Case(
                        "large biplane",
                        "Isa Brandt",
                        "loop, stall turn, wing over, loop, low pass, stall turn, low pass"),
                new Case(
                        "piston fighter",
                        "Mara Voss",
                        "low pass\nloop\nhalf Cuban\nbarrel roll\nCuban eight\nwing over\nlow pass"));
    }

    /** Made once: each flies an act and plans its words. */
    private static final class Once {
        static final List<Drafted> DRAFTS = acts().stream()
                .map(c -> Drafted.of(Drafted.empty(), c.kind(), c.performer(), c.list()))
                .toList();
    }

    static List<Drafted> drafts() {
        return Once.DRAFTS;
    }

    private static List<String> sentences(List<String> texts) {
        return texts.stream()
                .flatMap(t -> Sentences.of(t).stream())
                .map(Sentences::key)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void planFindsAPlaceForEveryRemarkAndLeavesHalfTheTimeQuiet(Drafted drafted) {
        Plan plan = drafted.plan();

        assertThat(plan.unplaced()).isEmpty();
        assertThat(drafted.overMoments(plan)).isEmpty();
        assertThat(plan.talkS() / (plan.talkS() + plan.quietS())).isBetween(0.15, 0.52);
    }

    @Test
    void aWayToTheOtherSideIsTheSameSentence() {
        assertThat(Sentences.key("It flies out to the left, turns away from you, and comes back."))
                .isEqualTo(Sentences.key("It flies out to the right, turns away from you, and comes back."));
        assertThat(Sentences.key("Look to the left: here it comes."))
                .isNotEqualTo(Sentences.key("Look to the right: here it comes."));
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void noSentenceIsSaidTwice(Drafted drafted) {
        assertThat(sentences(drafted.texts())).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void everyRemarkIsADraftInWordsThatFitAnybody(Drafted drafted) {
        assertThat(drafted.remarks()).isNotEmpty().allMatch(Remark::draft);
        assertThat(String.join(" ", drafted.texts()))
                .doesNotContainPattern("(?i)\\b(he|she|his|her|him|hers|safe|safely|safety|null|NaN)\\b")
                .doesNotContainPattern("\\.\\.|  |: \\.|\\ba [aeiou]|\\ban [bcdfgjklmnpqrstvwxyz]");
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void everyFigureWithANameIsNamedOnceAndNoTransitIs(Drafted drafted) {
        for (int i = 1; i < drafted.act().figures().size(); i++) {
            var figure = drafted.act().figures().get(i);
            assertThat(figure.remarks().stream()
                            .filter(r -> r.kind() == RemarkKind.CALL || r.id().equals(figure.id() + "-name")))
                    .as(figure.id())
                    .hasSize(figure.transit() ? 0 : 1);
        }
    }

    @ParameterizedTest
    @MethodSource("drafts")
    void nextCallsBeginInOtherWords(Drafted drafted) {
        List<String> begun = drafted.remarks().stream()
                .filter(r -> r.kind() == RemarkKind.CALL)
                .map(r -> r.text().replaceFirst("( (an?|the|another|two) |[,:]).*", ""))
                .toList();
        for (int i = 2; i < begun.size(); i++) {
            assertThat(begun.get(i)).isNotEqualTo(begun.get(i - 1));
        }
    }

    @Test
    void severalComeAndOneComes() {
        List<String> calls = Drafted.of(
                        Drafted.empty(),
                        "helicopter",
                        "Ada Quillan",
                        "hover\n2 pedal turns\n2 bows\n2 quick stops\n3 spiral climbs\n2 sideways flights\n2 backwards flights\nlanding")
                .texts();

        assertThat(calls).noneMatch(text -> text.matches("(?s).*\\b(?:comes|is) (?:two|three) .*"));
        assertThat(calls).anyMatch(text -> text.matches("(?s).*\\b(?:come|are) (?:two|three) .*"));
    }

    @Test
    void whatIsDescribedHasItsPluralInTheRightPlace() {
        String calls = String.join(
                        " ",
                        Drafted.of(
                                        Drafted.empty(),
                                        "strong aerobatic monoplane",
                                        "Ada Quillan",
                                        "loop, 1 1/2 vertical rolls up, 2 vertical rolls down")
                                .texts())
                .toLowerCase(Locale.ROOT);

        assertThat(calls).contains("one and a half rolls going straight up").contains("two rolls going straight down");
        assertThat(calls).doesNotContain("full roll while climbing");
    }

    @Test
    void whatTheListCallsByANameOfItsOwnKeepsIt() {
        String calls = String.join(
                " ",
                Drafted.of(
                                Drafted.empty(),
                                "helicopter",
                                "Ada Quillan",
                                "hover\npirouette\nchanging shape\nwinch demo\nlanding")
                        .texts());

        assertThat(calls)
                .contains(" a pirouette")
                .contains(" a change of shape")
                .contains(" the winch demo")
                .doesNotContain("pedal turn");
    }

    /** One aeroplane has no leader, a helicopter no push in the back, and nobody under a parachute adds power. */
    @ParameterizedTest
    @CsvSource({
        "helicopter, 'take-off, hover, low pass, landing', push in the back|nose rise|lets the wheels",
        "parachutists, 'steep turn, freefall, canopy descent, landing', hand on|cockpit|For the pilot|wheels",
        "jet trainer, 'loop, break, landing', leader|headset"
    })
    void noSentenceOfTheGlossaryIsSaidOfWhatItDoesNotMean(String kind, String list, String wrong) {
        assertThat(String.join(
                        " ",
                        Drafted.of(Drafted.empty(), kind, "Ada Quillan", list, 1)
                                .texts()))
                .doesNotContainPattern(wrong);
    }

    @Test
    void severalPeopleComeAndATeamDoes() {
        assertThat(opening("Ada and Bram Quillan"))
                .containsIgnoringCase("here come Ada and Bram Quillan, in a large biplane");
        assertThat(opening("The Bramble Wings")).containsIgnoringCase("here come the Bramble Wings, in");
        assertThat(opening("Ada Quillan")).containsIgnoringCase("here comes Ada Quillan, in");
    }

    @ParameterizedTest
    @CsvSource({
        "the Tern Team, formation of 5, 'Please welcome the Tern Team, with Ada Quillan', the Tern Team",
        "Red Kites, parachutists, 'Please welcome Red Kites, with Ada Quillan', Red Kites",
        "The Kites of Wrayholme, formation of 3, 'Please welcome the Kites of Wrayholme, with Ada', the Kites of Wrayholme",
        "Morning display, formation of 5, 'Please welcome Ada Quillan, with a formation of five', Ada Quillan",
        "Evening Display, parachutists, Please welcome Ada Quillan, Ada Quillan",
        "'Ada Quillan, formation', formation of 5, 'Please welcome Ada Quillan, with a formation', Ada Quillan"
    })
    void severalAreWelcomedAndThankedByTheNameTheyAreAnnouncedBy(
            String title, String kind, String welcome, String thanked) {
        ShowArranging.Made made =
                Drafted.arranged(Drafted.empty(), kind, "Ada Quillan", "low pass, low pass, low pass");
        List<String> said =
                Drafted.of(made.show(), made.act().withTitle(title), 1).texts();

        assertThat(said.get(0)).startsWith(welcome);
        assertThat(said.get(said.size() - 1)).containsPattern("(: |for |of |you, )" + thanked + "\\.");
    }

    private static String opening(String performer) {
        return Drafted.of(Drafted.empty(), "large biplane", performer, "loop, low pass")
                .texts()
                .get(0);
    }

    /** Called "straight up until it has almost stopped", and told to wait for that, nobody needs to hear of it again. */
    @Test
    void whatTheCallAndTheLookSayIsNotSaidAThirdTime() {
        List<String> said = Drafted.of(
                        Drafted.empty(),
                        "light aerobatic biplane",
                        "Ada Quillan",
                        "low pass, stall turn, half Cuban",
                        1)
                .texts();

        assertThat(said).anyMatch(text -> text.endsWith("a stall turn: straight up until it has almost stopped."));
        assertThat(said).noneMatch(text -> text.startsWith("Then it swings round"));
    }

    @Test
    void factsAreSaidWhileTheyAreSeen() {
        int checked = 0;
        List<Drafted> all = new ArrayList<>(drafts());
        all.add(DraftSenseTest.HIGH);
        for (Drafted drafted : all) {
            Plan plan = drafted.plan();
            for (Placed placed : plan.placed()) {
                Remark remark = drafted.remarks().stream()
                        .filter(r -> r.id().equals(placed.remarkId()))
                        .findFirst()
                        .orElseThrow();
                if (remark.text().contains("times as heavy") && remark.id().contains("-number")) {
                    checked++;
                    assertThat(drafted.heaviestNear(placed.startS(), 4.5))
                            .as(remark.text())
                            .isTrue();
                } else if (remark.text().startsWith("It climbs about")) {
                    checked++;
                    assertThat(drafted.climbsNear(placed.startS(), 1.5))
                            .as(remark.text())
                            .isTrue();
                }
            }
        }
        assertThat(checked).isGreaterThanOrEqualTo(3);
    }

    @Test
    void firstOfAllItSaysWhoFliesWhat() {
        Drafted drafted =
                Drafted.of(Drafted.empty(), "old trainer", "Ada Quillan", "dive in from the left, loop, low pass");
        assertThat(drafted.texts().get(0)).contains("Ada Quillan").contains("an old trainer");

        Drafted nobody = Drafted.of(Drafted.empty(), "old trainer", "the pilot", "loop, low pass");
        assertThat(nobody.texts().get(0)).contains("an old trainer").doesNotContain("pilot");
        assertThat(Drafted.of(Drafted.empty(), "strong aerobatic monoplane", "Ada Quillan", "loop, low pass")
                        .texts()
                        .get(0))
                .contains("in an aerobatic monoplane");
    }

    @Test
    void lastOfAllItNamesThemAgain() {
        List<String> texts = Drafted.of(Drafted.empty(), "old trainer", "Ada Quillan", "loop, roll, low pass")
                .texts();
        assertThat(texts.get(texts.size() - 1)).contains("Ada Quillan, in the old trainer");
    }

    @Test
    void secondLoopIsAnotherLoopAndIsNotExplainedAgain() {
        Drafted drafted = Drafted.of(
                Drafted.empty(), "light aerobatic biplane", "Ada Quillan", "loop, slow roll, loop, stall turn, loop");

        assertThat(drafted.of("loop-2").get(0)).contains("another loop");
        assertThat(drafted.of("loop-3").get(0)).contains("a third loop");
        assertThat(String.join(" ", drafted.of("loop-2")))
                .doesNotContain("full circle")
                .doesNotContain("as round at the top");
    }

    @Test
    void nextActOfTheDayRepeatsNoSentenceOfTheFirst() {
        Drafted first = Drafted.of(Drafted.empty(), "light aerobatic biplane", "Ada Quillan", WHOLE);
        Drafted second = Drafted.of(
                first.show(),
                "old trainer",
                "Bram Okkels",
                "loop, stall turn, slow roll, half Cuban, humpty bump, low pass");
        List<String> spoken = new ArrayList<>(sentences(first.texts()));
        Set<String> calls = new HashSet<>(sentences(second.remarks().stream()
                .filter(r -> r.kind() == RemarkKind.CALL)
                .map(Remark::text)
                .toList()));
        spoken.retainAll(sentences(second.texts()));
        spoken.removeAll(calls);
        assertThat(spoken).isEmpty();
    }

    @Test
    void timedActHasNoNumbersAndItsOwnWordsAreKept() {
        Drafted drafted = Drafted.of(Drafted.empty(), "helicopter", "The Tern Team", HOVERS);
        String all = String.join(" ", drafted.texts()).toLowerCase(Locale.ROOT);
        assertThat(all).doesNotContainPattern("\\d|feet|miles|kilograms|about (one|two|three|a|four|five|ten)\\b");
        assertThat(all).contains("rescue with the winch").contains("the tern team");
    }

    @Test
    void typicalNumbersAndThingsNobodyToldAreNotClaimed() {
        for (Drafted drafted : drafts()) {
            assertThat(String.join(" ", drafted.texts()))
                    .doesNotContain("smoke")
                    .doesNotContain("horsepower")
                    .doesNotContain(" hp")
                    .doesNotContain("grass")
                    .doesNotContain("normal weight")
                    .doesNotContain("with me");
        }
    }

    @Test
    void jetsHaveNoPropellerAndGlidersNoPower() {
        Drafted jet = Drafted.of(
                Drafted.empty(), "jet trainer", "the pilot", "loop, inverted pass, half roll, barrel roll, slow roll");
        assertThat(String.join(" ", jet.texts())).doesNotContain("wheels").doesNotContain("propeller");
        Drafted glider =
                Drafted.of(Drafted.empty(), "aerobatic glider", "the pilot", "spin, split S, loop, stall turn");
        assertThat(String.join(" ", glider.texts()).replace("powerful", "").replace("flown without an engine", ""))
                .doesNotContain("aeroplane")
                .doesNotContain("engine")
                .doesNotContain("power");
    }

    @Test
    void lessTalkIsLess() {
        double half = Drafted.of(Drafted.empty(), "light aerobatic biplane", "Ada Quillan", WHOLE, 0.5)
                .plan()
                .talkS();
        double little = Drafted.of(Drafted.empty(), "light aerobatic biplane", "Ada Quillan", WHOLE, 0.2)
                .plan()
                .talkS();
        assertThat(little).isLessThan(0.75 * half);
    }

    @Test
    void whatAPersonWroteStaysAndItsFigureIsLeftAlone() {
        var made = Drafted.arranged(
                Drafted.empty(), "light aerobatic biplane", "Ada Quillan", "loop, slow roll, stall turn");
        Remark own = Remark.of("own", RemarkKind.EXPLANATION, "Round and round it goes.");
        Act act = made.act()
                .withFigures(
                        made.act().figures().stream()
                                .map(f -> f.id().equals("loop") ? f.withRemarks(List.of(own)) : f)
                                .toList(),
                        List.of());
        Drafted drafted = Drafted.of(made.show().withActs(List.of(act), List.of()), act, 0.5);
        assertThat(drafted.act().figure("loop").orElseThrow().remarks()).containsExactly(own);
        assertThat(drafted.of("stall-turn")).isNotEmpty();
    }

    @Test
    void sameActGivesTheSameWords() {
        String list = "loop, stall turn, slow roll";
        assertThat(Drafted.of(Drafted.empty(), "old trainer", "Ada Quillan", list)
                        .texts())
                .isEqualTo(Drafted.of(Drafted.empty(), "old trainer", "Ada Quillan", list)
                        .texts());
    }
}
