package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.arrange.ShowArranging;
import crowdline.draft.Drafted;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.loaded.ActOrigins.What;
import crowdline.loaded.PilotQuestions.Question;
import crowdline.measure.Units;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.Finding;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Redrawn;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a pilot told and is not flown so is found, shown and asked about. */
class ToldNotFlownTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final String KIND = "strong aerobatic monoplane";

    private static ShowArranging.Made made(String list) {
        return Drafted.arranged(Drafted.empty(), KIND, "Ada Quillan", list);
    }

    private static List<String> found(Show show, String code) {
        return FlownCheck.of(show, CATALOGUE).stream()
                .filter(f -> f.code().equals(code))
                .map(Finding::message)
                .toList();
    }

    private static Flight flight(Show show) {
        Act act = show.acts().get(0);
        return new Predictor(show, CATALOGUE, act, act.variants().get(0)).predict();
    }

    private static List<String> questions(Show show) {
        Act act = show.acts().get(0);
        Flight flight = flight(show);
        return PilotQuestions.of(show, act, flight, CATALOGUE, ActOrigins.of(show, act, flight, CATALOGUE, List.of()))
                .stream()
                .map(Question::text)
                .toList();
    }

    private static Figure figure(Show show, String name) {
        return show.acts().get(0).figures().stream()
                .filter(f -> f.figure().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The same with what was asked of a figure, and nothing laid out again for it. */
    private static Show asking(Show show, String name, Asked asked) {
        Act act = show.acts().get(0);
        List<Figure> figures = act.figures().stream()
                .map(f -> !f.figure().equals(name) ? f : Redrawn.asked(f, asked, false))
                .toList();
        return show.withAct(act.withFigures(figures, act.remarks()));
    }

    @Test
    void aRollThatIsNotDrawnIsFoundAndAsked() {
        Show show = made("loop\n2. Push to vertical, quarter roll, stall turn\nslow roll")
                .show();
        assertThat(found(show, ToldNotFlown.PART))
                .containsExactly(
                        "stall turn is drawn without “quarter roll” and “Push to vertical”, which the pilot wrote:"
                                + " put it into its shape, or ask the pilot");
        assertThat(questions(show))
                .contains(
                        "You wrote “Push to vertical, quarter roll, stall turn”. We draw a stall turn without “quarter"
                                + " roll” and “Push to vertical”: where does it come?");
    }

    @Test
    void itIsAskedAlthoughSomebodyConfirmedTheFigure() {
        Show show = made("loop\nhumpty bump, half roll up\nslow roll").show();
        Asked asked = figure(show, "humpty bump").asked();
        assertThat(asked).isNotNull();
        Show sure = asking(show, "humpty bump", asked.confirmed());
        assertThat(questions(sure))
                .contains(
                        "You wrote “humpty bump, half roll up”. We draw it without “half roll up”: where does it come?");
    }

    @Test
    void whoeverGaveItAShapeOfItsOwnTookCareOfIt() {
        Show show = made("loop\nhumpty bump, half roll up\nslow roll").show();
        Asked asked = figure(show, "humpty bump").asked();
        assertThat(asked).isNotNull();
        assertThat(found(asking(show, "humpty bump", asked.withOwnShape(true)), ToldNotFlown.PART))
                .isEmpty();
    }

    @Test
    void aPlaceAndSmokeAreNoPartOfAShape() {
        Show show = made("loop with smoke on\nslow roll along the line, nice and slow\nwing over")
                .show();
        assertThat(found(show, ToldNotFlown.PART)).isEmpty();
    }

    @Test
    void whatIsKeptIsNotFound() {
        Show show = made("loop at 160 kt, 900 ft\nslow roll\nstall turn").show();
        assertThat(NotKept.of(show.acts().get(0), flight(show))).isEmpty();
        assertThat(found(show, ToldNotFlown.NUMBER)).isEmpty();
    }

    @Test
    void aSpeedThatIsNotFlownIsFoundAndAsked() {
        Show show = made("loop\nslow roll\nstall turn").show();
        Asked asked = figure(show, "loop").asked();
        assertThat(asked).isNotNull();
        double flownKt = Math.rint(Units.ktFromMps(
                flight(show).figure(figure(show, "loop").id()).orElseThrow().entryMps()));
        Show told = asking(show, "loop", asked.withKt(flownKt * 1.2));
        assertThat(NotKept.of(told.acts().get(0), flight(told)))
                .singleElement()
                .satisfies(not -> assertThat(not.what()).isEqualTo(What.ENTRY_SPEED));
        String kts = "%.0f kt".formatted(flownKt * 1.2);
        assertThat(found(told, ToldNotFlown.NUMBER))
                .containsExactly("loop was told " + kts + " and begins at %.0f kt".formatted(flownKt)
                        + ", so ask the pilot which is right");
        assertThat(questions(told))
                .contains("You told us that the loop begins at " + kts
                        + ". With what stands around it ours begins at %.0f kt: which is right?".formatted(flownKt));
        assertThat(NotKept.of(
                        asking(show, "loop", asked.withKt(flownKt * 1.05))
                                .acts()
                                .get(0),
                        flight(show)))
                .isEmpty();
    }

    @Test
    void aHeightAndATimeThatAreNotFlownAreFound() {
        Show show = made("loop\nslow roll\nstall turn").show();
        Asked asked = figure(show, "loop").asked();
        assertThat(asked).isNotNull();
        Show told = asking(show, "loop", asked.withHeightFt(3000.0).withSeconds(40.0));
        assertThat(NotKept.of(told.acts().get(0), flight(told)))
                .extracting(NotKept::what)
                .containsExactly(What.HEIGHT, What.TIME);
        assertThat(found(told, ToldNotFlown.NUMBER))
                .hasSize(2)
                .first()
                .asString()
                .contains("3,000 ft");
    }

    @Test
    void whatTheAircraftCannotFlyIsFoundAndWhatIsNeverDrawnIsNot() {
        Show show = Drafted.arranged(
                        Drafted.empty(), "old trainer", "Ada Quillan", "loop\ninverted pass\nrun-in\nslow roll")
                .show();
        assertThat(found(show, ToldNotFlown.TIMED))
                .containsExactly("inverted pass cannot be drawn for what flies this act, so only its time is known: ask"
                        + " whether it is flown");
    }

    @Test
    void aFigureIsAskedAboutAsItsPilotCallsIt() {
        assertThat(questions(made("Tailslide\nroll off the top\nspin 2 turns\nrecover on the axis")
                        .show()))
                .anyMatch(text -> text.startsWith("How fast do you begin the tail slide?"))
                .anyMatch(text -> text.startsWith("How long does “recover on the axis” take?"))
                .anyMatch(text -> text.startsWith("How fast do you begin the roll off the top?"));
    }
}
