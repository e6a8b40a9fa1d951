package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.draft.Drafted;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.list.line.FigureList;
import crowdline.loaded.ActOrigins.What;
import crowdline.loaded.PilotQuestions.Question;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import crowdline.storage.show.ShowFile;
import crowdline.timing.Pass;
import crowdline.trace.FlightFigures;
import crowdline.trace.Found;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalTime;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class PilotQuestionsTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final String KIND = "light aerobatic biplane";
    private static final String LONG =
            "take-off, dive in, loop at 140 kt, stall turn right end, slow roll, half Cuban, avalanche,"
                    + " humpty bump, spin 2 turns, wing over, shark's tooth, square loop, low pass 12 s, landing";

    private static ShowArranging.Made made(String kind, String list) {
        return Drafted.arranged(Drafted.empty(), kind, "Ada Quillan", list);
    }

    private static Flight flight(Show show, Act act) {
        return new Predictor(show, CATALOGUE, act, act.variants().get(0)).predict();
    }

    private static ActOrigins origins(ShowArranging.Made made, List<Pass> passes) {
        return ActOrigins.of(made.show(), made.act(), flight(made.show(), made.act()), CATALOGUE, passes);
    }

    private static Origin of(ActOrigins origins, String figure, What what) {
        return origins.numbers().stream()
                .filter(n -> figure.equals(n.figureId()) && n.what() == what)
                .findFirst()
                .orElseThrow()
                .origin();
    }

    @Test
    void powerIsAskedInHorsepowerAndInKilowatts() {
        // 180 hp at 550 ft·lbf/s are 134.2 kW.
        assertThat(questions(KIND, LONG))
                .extracting(Question::text)
                .anySatisfy(text -> assertThat(text).contains("how much power").endsWith("kg and 180 hp (134 kW)."));
    }

    private static List<Question> questions(String kind, String list) {
        ShowArranging.Made made = made(kind, list);
        return PilotQuestions.of(
                made.show(), made.act(), flight(made.show(), made.act()), CATALOGUE, origins(made, List.of()));
    }

    private static List<String> texts(List<Question> questions) {
        return questions.stream().map(Question::text).toList();
    }

    @Test
    void anActThatIsLongerThanItsSlotIsAskedAbout() {
        ShowArranging.Made made = made(KIND, LONG);
        double minutes = flight(made.show(), made.act()).totalS() / 60;
        assertThat(ofSlot(made, minutes / 1.05)).noneMatch(text -> text.startsWith("Your slot"));
        assertThat(ofSlot(made, minutes / 1.2))
                .anyMatch(text -> text.startsWith("Your slot has ") && text.contains(" minutes, and we make it "));
    }

    private static List<String> ofSlot(ShowArranging.Made made, double minutes) {
        Act act = made.act().withSlot(LocalTime.of(14, 10), minutes);
        Flight flight = flight(made.show(), act);
        ActOrigins origins = ActOrigins.of(made.show(), act, flight, CATALOGUE, List.of());
        return texts(PilotQuestions.of(made.show(), act, flight, CATALOGUE, origins));
    }

    @Test
    void oneWayBetweenFiguresIsSpokenOfAsOne() {
        for (String list : List.of("loop", "loop, slow roll", "loop, slow roll, loop, slow roll", LONG)) {
            assertThat(texts(questions(KIND, list)))
                    .filteredOn(q -> q.startsWith("What do you fly between the figures"))
                    .allMatch(q -> q.matches(".* We put in (one such piece, of \\d+ s|([2-9]|\\d\\d+) such pieces,"
                            + " (\\d\\d? s|about \\d+ minutes) in all), and would like yours\\."));
        }
        assertThat(texts(questions(KIND, LONG.replace(", landing", ", spin, barrel roll, spin, low pass, landing"))))
                .as("minutes are told in minutes")
                .anyMatch(q -> q.matches("What do you fly between .* pieces, about [2-9] minutes in all, .*"));
    }

    @Test
    void whatTheListSaysIsToldAndTheRestAssumed() {
        ActOrigins origins = origins(
                made(KIND, "loop at 140 kt, stall turn right end, spin 2 turns, spin, landing 40 s"), List.of());

        assertThat(of(origins, "loop", What.ENTRY_SPEED)).isEqualTo(Origin.TOLD);
        assertThat(of(origins, "loop", What.PLACE)).isEqualTo(Origin.ASSUMED);
        assertThat(of(origins, "stall-turn", What.PLACE)).isEqualTo(Origin.TOLD);
        assertThat(of(origins, "stall-turn", What.ENTRY_SPEED)).isEqualTo(Origin.ASSUMED);
        assertThat(of(origins, "spin", What.TURNS)).isEqualTo(Origin.TOLD);
        assertThat(of(origins, "spin-2", What.TURNS)).isEqualTo(Origin.ASSUMED);
        assertThat(of(origins, "landing", What.TIME)).isEqualTo(Origin.TOLD);
        assertThat(origins.assumed())
                .anyMatch(n -> n.what() == What.AIRCRAFT && n.key().equals("massKg"));
    }

    @Test
    void whatAFlownPassTimedIsTimed() {
        ShowArranging.Made made = made(KIND, "loop, slow roll");
        Pass flown = new Pass(
                "p1",
                made.act().id(),
                "full",
                Pass.How.BY_HAND,
                Instant.EPOCH,
                "",
                List.of(new Pass.TimedFigure("loop", 0, 14)),
                true,
                0.3);
        assertThat(of(origins(made, List.of(flown)), "loop", What.TIME)).isEqualTo(Origin.TIMED);
        assertThat(of(origins(made, List.of(flown)), "slow-roll", What.TIME)).isEqualTo(Origin.ASSUMED);
        Pass walked =
                new Pass("p2", made.act().id(), "full", Pass.How.WALKED, Instant.EPOCH, "", flown.figures(), true, 0.3);
        assertThat(of(origins(made, List.of(walked)), "loop", What.TIME)).isEqualTo(Origin.ASSUMED);
    }

    /** The pilot wrote nothing of it, and had to guess what else it might be. */
    @Test
    void whatWasFoundInAFlightLogIsAskedOfTheLog() {
        FigureList found = FlightFigures.list(List.of(
                new Found(
                        Found.What.FIGURE,
                        598,
                        610,
                        List.of(new Found.Guess("loop", 0.28), new Found.Guess("avalanche", 0.2))),
                new Found(Found.What.LINE, 615, 624, List.of()),
                new Found(Found.What.UNKNOWN, 630, 651, List.of())));
        Kind kind = KindsFile.shipped().named(KIND);
        ShowArranging.Made made = new ShowArranging(CATALOGUE)
                .add(
                        Drafted.empty(),
                        found,
                        id -> kind.airframe(id, kind.name(), Sliders.TYPICAL),
                        new ShowArranging.About("An act", null, LocalTime.NOON, null));
        assertThat(texts(PilotQuestions.of(
                        made.show(), made.act(), flight(made.show(), made.act()), CATALOGUE, origins(made, List.of()))))
                .contains(
                        "In the flight log, at 9:58 for 12 s: is it “loop” or “avalanche”, or what?",
                        "In the flight log, at 10:15 for 9 s: is it “low pass” or “slow roll”, or what?",
                        "What did you fly in the flight log at 10:30 for 21 s?")
                .noneMatch(text -> text.startsWith("You wrote"));
    }

    @Test
    void showThatSomebodyWroteRestsOnNothingAssumed() throws ShowFileException {
        Show demo = Objects.requireNonNull(
                new ShowFile().read(readDemo("fenmarsh-air-day.json")).show());
        for (Act act : demo.acts()) {
            if (ActOrigins.mayAssume(demo, act)) {
                continue;
            }
            ActOrigins origins = ActOrigins.of(demo, act, flight(demo, act), CATALOGUE, List.of());
            assertThat(origins.numbers()).isNotEmpty().noneMatch(n -> n.origin() == Origin.TOLD);
            assertThat(origins.sentence()).isEmpty();
            assertThat(PilotQuestions.of(demo, act, flight(demo, act), CATALOGUE, origins))
                    .isEmpty();
        }
    }

    private static Path readDemo(String name) {
        return Path.of("src/test/resources/crowdline/shows", name);
    }

    @Test
    void atMostADozenAreAskedGroupByGroupTheMostImportantFirst() {
        List<Question> asked = questions(KIND, LONG);

        assertThat(asked).hasSize(PilotQuestions.MOST);
        List<String> groups = asked.stream().map(Question::group).toList();
        int changes = 0;
        for (int i = 1; i < groups.size(); i++) {
            changes += groups.get(i).equals(groups.get(i - 1)) ? 0 : 1;
        }
        assertThat(changes + 1).isEqualTo(new LinkedHashSet<>(groups).size());
        assertThat(asked.get(0).seconds())
                .isEqualTo(asked.stream().mapToDouble(Question::seconds).max().orElseThrow());
        for (int i = 1; i < asked.size(); i++) {
            if (groups.get(i).equals(groups.get(i - 1))) {
                assertThat(asked.get(i).seconds())
                        .isLessThanOrEqualTo(asked.get(i - 1).seconds());
            }
        }
    }

    @Test
    void whatWasToldIsNotAsked() {
        List<String> told = texts(questions(KIND, "loop at 140 kt, spin 2 turns, landing 40 s"));
        assertThat(told).noneMatch(q -> q.contains("begin the loop")).noneMatch(q -> q.contains("How many turns"));
        assertThat(told).noneMatch(q -> q.contains("landing"));

        List<String> open = texts(questions(KIND, "loop, spin, landing"));
        assertThat(open)
                .anyMatch(q -> q.matches("How fast do you begin the loop\\? We assumed \\d+ kt\\."))
                .contains(
                        "How many turns does the spin have? We assumed 2.",
                        "How long does the landing take? We assumed 60 s.");
    }

    @Test
    void figureThatMayBeAnotherIsAskedFirst() {
        List<Question> asked = questions("helicopter", "run-in 40 s\nrescue with the winch\nbow 20 s");
        assertThat(asked.get(0).text()).contains("rescue with the winch");
    }

    @Test
    void sentenceCountsWhatIsAssumed() {
        assertThat(origins(made(KIND, "loop, slow roll"), List.of()).sentence().orElseThrow())
                .startsWith("Rests on assumptions: ")
                .contains("2 times")
                .contains("2 entry speeds, 2 heights")
                .contains("numbers of the aircraft");
    }

    /** The climb after a take-off begins near the ground, and is nobody's display. */
    @Test
    void theLowestIsThatOfAFigure() {
        String lowest = texts(questions(KIND, "take-off, loop, slow roll")).stream()
                .filter(q -> q.startsWith("What is the lowest"))
                .findFirst()
                .orElseThrow();
        assertThat(Integer.parseInt(lowest.replaceAll("\\D", ""))).isBetween(400, 700);
    }
}
