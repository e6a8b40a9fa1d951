package crowdline.edit.act;

import static crowdline.edit.act.Edited.CATALOGUE;
import static crowdline.edit.act.Edited.act;
import static crowdline.edit.act.Edited.change;
import static crowdline.edit.act.Edited.done;
import static crowdline.edit.act.Edited.figure;
import static crowdline.edit.act.Edited.flown;
import static crowdline.edit.act.Edited.id;
import static crowdline.edit.act.Edited.words;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.list.ListReader;
import crowdline.measure.Units;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.show.check.Severity;
import crowdline.show.check.ShowRules;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FiguresTest {
    private static final String SOLO = "solo";
    private static final String FULL = "full";

    private final Figures figures = new Figures(CATALOGUE);

    private static Flight flight(Show show) {
        Act act = act(show);
        return new Predictor(show, CATALOGUE, act, act.variants().get(0)).predict();
    }

    private static void isSound(Show show) {
        assertThat(ShowRules.check(show, CATALOGUE).stream().filter(f -> f.severity() == Severity.ERROR))
                .isEmpty();
        assertThat(flight(show).figures())
                .allSatisfy(f -> assertThat(f.completed()).as(f.name()).isTrue());
    }

    @Test
    void aFigureIsAddedWhereItIsWantedAndFlown() throws CannotBe {
        Show show = Edited.solo();
        Show with = done(show, figures.add(SOLO, FULL, id(show, "slow roll"), "Cuban eight", null));
        assertThat(flown(act(with), FULL))
                .containsExactly(
                        "take-off", "loop", "stall turn", "Cuban eight", "slow roll", "spin", "low pass", "landing");
        isSound(with);
    }

    @Test
    void aFigureIsFoundByItsAlias() throws CannotBe {
        Show show = Edited.solo();
        Show with = done(show, figures.add(SOLO, FULL, null, "hammerhead", null));
        assertThat(flown(act(with), FULL)).endsWith("low pass", "stall turn", "landing");
    }

    @Test
    void aNameThatTheCatalogueDoesNotHaveIsRefused() throws CannotBe {
        Show show = Edited.solo();
        assertThatThrownBy(() ->
                        figures.add(SOLO, FULL, null, "x".repeat(5_000), null).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("No figure of the catalogue is called")
                .satisfies(e -> assertThat(e.getMessage()).hasSizeLessThan(200));
    }

    @Test
    void aMovedFigureIsFlownThereAndAllStaysSaid() throws CannotBe {
        Show show = Edited.worded(Edited.solo());
        Show moved = done(show, figures.move(SOLO, FULL, id(show, "spin"), -2));
        assertThat(flown(act(moved), FULL))
                .containsExactly("take-off", "loop", "spin", "stall turn", "slow roll", "low pass", "landing");
        assertThat(words(moved)).isEqualTo(words(show));
        isSound(moved);
    }

    @Test
    void everyOrderOfTheFiguresKeepsEveryWord() throws CannotBe {
        Show show = Edited.worded(Edited.solo());
        Show now = show;
        String[] moved = {"loop", "slow roll", "low pass", "stall turn", "spin", "loop", "spin", "slow roll"};
        int[] by = {3, -1, -3, 2, -1, -1, 1, 2};
        for (int i = 0; i < moved.length; i++) {
            now = done(now, figures.move(SOLO, FULL, id(now, moved[i]), by[i]));
            assertThat(words(now)).isEqualTo(words(show));
            assertThat(now.everyRemark().map(Remark::id)).doesNotHaveDuplicates();
            assertThat(act(now).figures().stream().map(Figure::id)).doesNotHaveDuplicates();
            isSound(now);
        }
    }

    /** A letter that says "running in from the left" above its list, which begins with the take-off. */
    @Test
    void whatAListPutBeforeTheTakeOffStopsNoOtherEdit() throws CannotBe {
        Show show = done(
                Edited.empty(),
                Edited.adding(0)
                        .fromList(
                                new ListReader(Edited.CATALOGUE).read("run-in\ntake-off\nloop\nspin\nlanding"),
                                Edited.wanted("light aerobatic biplane", "Solo")));
        Show lower = done(show, figures.remove(SOLO, FULL, id(show, "spin")));
        assertThat(Edited.flown(act(lower), FULL)).containsExactly("run-in", "take-off", "loop", "landing");
        Show sound = done(lower, figures.remove(SOLO, FULL, id(lower, "run-in")));
        assertThatThrownBy(() -> figures.move(SOLO, FULL, id(sound, "loop"), -9).of(sound))
                .isInstanceOf(CannotBe.class);
    }

    @Test
    void nothingIsFlownOnTheGround() throws CannotBe {
        Show show = Edited.solo();
        assertThatThrownBy(() -> figures.move(SOLO, FULL, id(show, "spin"), -9).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessage("The take-off comes first; spin cannot be flown before it");
        assertThatThrownBy(() -> figures.move(SOLO, FULL, id(show, "spin"), 9).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessage("The landing comes last; spin cannot be flown after it");
    }

    @Test
    void aRemovedFigureTakesOnlyItsOwnWords() throws CannotBe {
        Show show = Edited.worded(Edited.solo());
        String roll = id(show, "slow roll");
        Show without = done(show, figures.remove(SOLO, FULL, roll));
        assertThat(flown(act(without), FULL)).doesNotContain("slow roll");
        assertThat(words(without))
                .isEqualTo(words(show).stream()
                        .filter(w -> !w.equals("About " + roll))
                        .toList());
    }

    @Test
    void theLastFigureCannotBeRemoved() throws CannotBe {
        Show now = Edited.solo();
        for (String name : List.of("take-off", "loop", "stall turn", "slow roll", "spin", "low pass")) {
            now = done(now, figures.remove(SOLO, FULL, id(now, name)));
        }
        Show last = now;
        assertThatThrownBy(() -> figures.remove(SOLO, FULL, id(last, "landing")).of(last))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("at least one figure");
    }

    @Test
    void aPinnedHeightIsWhereTheFigureBegins() throws CannotBe {
        Show show = Edited.solo();
        Show pinned = done(show, figures.pin(SOLO, id(show, "slow roll"), new Pin.Height(1_400.0)));
        double lowest =
                flight(pinned).figure(id(show, "slow roll")).orElseThrow().lowestM();
        assertThat(Units.ftFromM(lowest)).isBetween(1_250.0, 1_450.0);
        assertThat(figure(pinned, "slow roll").asked())
                .extracting(Asked::heightFt)
                .isEqualTo(1_400.0);
    }

    @Test
    void aFigureMovedOnTheLineIsFlownThere() throws CannotBe {
        Show show = Edited.solo();
        for (double along : new double[] {-300, 250}) {
            Show pinned = done(show, figures.pin(SOLO, id(show, "slow roll"), new Pin.Along(along)));
            var flown = flight(pinned).figure(id(show, "slow roll")).orElseThrow();
            var samples = flight(pinned).samples().stream()
                    .filter(s -> s.tS() >= flown.startS() && s.tS() <= flown.endS())
                    .mapToDouble(s -> s.place().x())
                    .summaryStatistics();
            assertThat((samples.getMin() + samples.getMax()) / 2)
                    .isCloseTo(along, org.assertj.core.api.Assertions.within(60.0));
        }
    }

    @Test
    void whatWasPinnedIsAssumedAgainWhenItIsFreed() throws CannotBe {
        Show show = Edited.solo();
        Show pinned = done(show, figures.pin(SOLO, id(show, "loop"), new Pin.Speed(120.0)));
        Show freed = done(pinned, figures.pin(SOLO, id(show, "loop"), new Pin.Speed(null)));
        assertThat(freed).isEqualTo(show);
    }

    @Test
    void whatCannotBeIsRefusedWithTheSentenceOfTheLayout() throws CannotBe {
        Show empty = Edited.solo();
        Venue v = empty.venue();
        Show show = empty.withVenue(new Venue(
                v.name(), null, null, null, null, null, v.timeZone(), new Venue.Limits(500.0, 1_500.0, null, null)));
        assertThatThrownBy(() -> figures.pin(SOLO, id(show, "loop"), new Pin.Height(1_450.0))
                        .of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageMatching("(?s)Loop is given 1,450 ft, and tops the ceiling from there: it begins at .*");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 0, 3_000, Double.NaN, Double.POSITIVE_INFINITY})
    void aSpeedThatIsNoneIsRefusedWithWhatIsAllowed(double kt) throws CannotBe {
        Show show = Edited.solo();
        assertThatThrownBy(() ->
                        figures.pin(SOLO, id(show, "loop"), new Pin.Speed(kt)).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("kt");
    }

    @Test
    void aReplacedFigureKeepsWhatAPersonWroteAndNoDraft() throws CannotBe {
        Show show = Edited.worded(Edited.solo());
        Act act = act(show);
        Show drafted = show.withAct(act.withFigures(
                act.figures().stream()
                        .map(f -> f.figure().equals("loop")
                                ? f.withRemarks(List.of(
                                        f.remarks().get(0),
                                        Remark.of("draft", f.remarks().get(0).kind(), "A draft")
                                                .withDraft(true)))
                                : f)
                        .toList(),
                act.remarks()));
        String loop = id(drafted, "loop");
        Show replaced = done(drafted, figures.replace(SOLO, loop, "half Cuban"));
        Figure now = act(replaced).figure(loop).orElseThrow();
        assertThat(now.figure()).isNotEqualTo("loop");
        assertThat(now.remarks()).extracting(Remark::text).containsExactly("About " + loop);
        assertThat(now.asked()).extracting(Asked::heightFt).isEqualTo(600.0);
    }

    @Test
    void anActDrawnByHandStaysAsItWasDrawn() throws CannotBe {
        Show show = Edited.solo();
        Act act = act(show);
        Show typed = show.withAct(act.withFigures(
                act.figures().stream()
                        .map(f -> new Figure(
                                f.id(),
                                f.figure(),
                                f.title(),
                                f.look(),
                                f.elements(),
                                f.durationS(),
                                f.exit(),
                                null,
                                List.of(),
                                List.of()))
                        .toList(),
                act.remarks()));
        Show with = done(typed, figures.add(SOLO, FULL, null, "loop", null));
        assertThat(act(with).figures()).startsWith(act(typed).figures().toArray(Figure[]::new));
        assertThatThrownBy(() -> figures.pin(SOLO, id(typed, "loop"), new Pin.Height(900.0))
                        .of(typed))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("lay the act out first");
        Show laid = done(typed, figures.layOut(SOLO));
        isSound(done(laid, figures.pin(SOLO, id(laid, "loop"), new Pin.Height(900.0))));
    }

    @Test
    void aChangeIsCalledByWhatWasDoneToWhat() throws CannotBe {
        Show show = Edited.solo();
        String loop = id(show, "loop");
        assertThat(change(show, figures.add(SOLO, FULL, null, "loop", null)).name())
                .isEqualTo("Add loop");
        assertThat(change(show, figures.remove(SOLO, FULL, loop)).name()).isEqualTo("Remove loop");
        assertThat(change(show, figures.move(SOLO, FULL, loop, 1)).name()).isEqualTo("Move loop");
        assertThat(change(show, figures.pin(SOLO, loop, new Pin.Height(900.0))).name())
                .isEqualTo("Pin the height of loop");
        assertThat(change(show, figures.pin(SOLO, loop, new Pin.Height(null))).name())
                .isEqualTo("Free the height of loop");
    }

    @Test
    void whatIsGoneIsSaid() throws CannotBe {
        Show show = Edited.solo();
        assertThatThrownBy(() -> figures.remove("nobody", FULL, "loop").of(show))
                .hasMessageContaining("no longer");
        assertThatThrownBy(
                        () -> figures.pin(SOLO, "nothing", new Pin.Height(1.0)).of(show))
                .hasMessageContaining("no longer");
    }
}
