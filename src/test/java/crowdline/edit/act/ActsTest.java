package crowdline.edit.act;

import static crowdline.edit.act.Edited.CATALOGUE;
import static crowdline.edit.act.Edited.change;
import static crowdline.edit.act.Edited.done;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.list.ListReader;
import crowdline.show.Act;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.check.Severity;
import crowdline.show.check.ShowRules;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.storage.show.KindsFile;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ActsTest {
    private static Show three() throws CannotBe {
        Show show = Edited.solo();
        show = done(show, Edited.adding(0).fromNothing(Edited.wanted("formation", "Four ship"), 12));
        return done(show, Edited.adding(0).fromNothing(Edited.wanted("aerobatic glider", "Glider"), 8));
    }

    private static List<String> titles(Show show) {
        return show.acts().stream().map(Act::title).toList();
    }

    private static void isSound(Show show) {
        assertThat(ShowRules.check(show, CATALOGUE).stream().filter(f -> f.severity() == Severity.ERROR))
                .isEmpty();
    }

    @Test
    void anActIsCalledByTheNameOfItsAircraft() throws CannotBe {
        AddAct.Wanted wanted = new AddAct.Wanted(
                KindsFile.shipped().named("light aerobatic biplane"),
                null,
                "",
                "Ada Field",
                "Corvane 300",
                LocalTime.of(14, 0));
        Show show = Edited.done(
                Edited.empty(), Edited.adding(0).fromList(new ListReader(Edited.CATALOGUE).read("loop"), wanted));
        assertThat(Edited.act(show).title()).isEqualTo("Ada Field, Corvane 300");
        assertThat(show.airframe(Edited.act(show).airframe()).orElseThrow().name())
                .isEqualTo("Corvane 300");
    }

    @Test
    void anActOfAListHasItsWordsInOneChange() throws CannotBe {
        var add = change(
                Edited.empty(),
                Edited.adding(0.5)
                        .fromList(
                                new ListReader(CATALOGUE).read(Edited.LIST),
                                Edited.wanted("light aerobatic biplane", "Solo")));
        assertThat(add.name()).isEqualTo("Add act “Solo”");
        assertThat(add.show().everyRemark())
                .isNotEmpty()
                .allSatisfy(r -> assertThat(r.draft()).isTrue());
        assertThat(add.show().performers()).extracting(Performer::name).containsExactly("Ada Field");
        isSound(add.show());
    }

    @Test
    void aListThatIsTooLongIsRefusedInItsOwnSentence() {
        var read = new ListReader(CATALOGUE).read("loop\n".repeat(10_000));
        assertThatThrownBy(() -> Edited.adding(0.5)
                        .fromList(read, Edited.wanted("old trainer", "Solo"))
                        .of(Edited.empty()))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("The list has 10,000 lines");
    }

    @Test
    void aNewActStandsWhereItsSlotPutsIt() throws CannotBe {
        Show show = three();
        for (String hour : List.of("14:05", "09:00", "14:05")) {
            var wanted = Edited.wanted("formation", hour);
            Show with = done(
                    show,
                    Edited.adding(0)
                            .fromNothing(
                                    new AddAct.Wanted(wanted.kind(), null, "At " + hour, "", LocalTime.parse(hour)),
                                    7));
            assertThat(AddAct.added(show, with).title()).isEqualTo("At " + hour);
            assertThat(AddAct.added(show, with).slotMinutes()).isEqualTo(7);
            show = with;
        }
        assertThat(show.acts()).extracting(Act::slotStart).isSorted();
        assertThat(titles(show).get(0)).isEqualTo("At 09:00");
    }

    @Test
    void aTimedActTakesItsMinutes() throws CannotBe {
        Show show = three();
        Act formation = show.acts().get(1);
        assertThat(formation.slotMinutes()).isEqualTo(12);
        assertThat(formation.figures()).extracting(Figure::durationS).containsExactly(720.0);
        isSound(show);
        Show with = done(show, new Figures(CATALOGUE).add(formation.id(), "full", null, "The big break", 25.0));
        assertThat(with.acts().get(1).figures()).extracting(Figure::figure).endsWith("The big break");
        isSound(with);
    }

    @Test
    void anActFromNothingGrowsFigureByFigure() throws CannotBe {
        Show show = three();
        String glider = show.acts().get(2).id();
        Figures figures = new Figures(CATALOGUE);
        for (String name : List.of("loop", "stall turn", "landing")) {
            show = done(show, figures.add(glider, "full", null, name, null));
        }
        show = done(show, figures.add(glider, "full", null, "low pass", null));
        assertThat(Edited.flown(show.acts().get(2), "full"))
                .containsExactly("take-off", "loop", "stall turn", "low pass", "landing");
        isSound(show);
    }

    @Test
    void theNextSlotBeginsWhereTheLastEnds() throws CannotBe {
        assertThat(AddAct.nextSlot(Edited.empty())).isEqualTo(LocalTime.of(14, 0));
        Show show = three();
        assertThat(AddAct.nextSlot(show)).isEqualTo(LocalTime.of(14, 8));
    }

    @Test
    void anActMovesInTheRunningOrderAsFarAsItCan() throws CannotBe {
        Show show = three();
        String glider = show.acts().get(2).id();
        assertThat(titles(done(show, Acts.move(glider, -1)))).containsExactly("Solo", "Glider", "Four ship");
        assertThat(titles(done(show, Acts.move(glider, -99)))).containsExactly("Glider", "Solo", "Four ship");
        assertThat(done(show, Acts.move(glider, 5))).isEqualTo(show);
    }

    @Test
    void aRemovedActTakesNothingElse() throws CannotBe {
        Show show = three();
        Show without = done(show, Acts.remove(show.acts().get(1).id()));
        assertThat(titles(without)).containsExactly("Solo", "Glider");
        assertThat(without.acts().get(0)).isEqualTo(show.acts().get(0));
    }

    @Test
    void aCopyHasIdsOfItsOwn() throws CannotBe {
        Show show = Edited.worded(Edited.solo());
        Show twice = done(show, Acts.duplicate("solo"));
        assertThat(titles(twice)).containsExactly("Solo", "Solo (copy)");
        assertThat(twice.everyRemark().map(Remark::id)).doesNotHaveDuplicates();
        assertThat(twice.everyRemarkOf(twice.acts().get(1).id()).map(Remark::text))
                .containsExactlyElementsOf(show.everyRemark().map(Remark::text).toList());
        isSound(twice);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   "})
    void anActNeedsATitle(String title) throws CannotBe {
        Show show = Edited.solo();
        assertThatThrownBy(() -> Acts.rename("solo", title).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessage("act title is empty; it needs some text");
    }

    @Test
    void aTitleOfAnyLettersIsTakenAndOneTooLongRefused() throws CannotBe {
        Show show = Edited.solo();
        assertThat(titles(done(show, Acts.rename("solo", " عرض جوي ")))).containsExactly("عرض جوي");
        assertThatThrownBy(() -> Acts.rename("solo", "n".repeat(5_001)).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("5,001 letters");
        assertThat(change(show, Acts.rename("solo", "n".repeat(5_000))).name()).isEqualTo("Rename act “Solo”");
    }

    @Test
    void lettersTypedIntoOneTitleAreOneStep() throws CannotBe {
        Show show = Edited.solo();
        assertThat(change(show, Acts.rename("solo", "A")).about())
                .isNotEmpty()
                .isEqualTo(change(show, Acts.rename("solo", "AB")).about());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -3, 1_441, Double.NaN})
    void aSlotOfNoLengthIsRefused(double minutes) throws CannotBe {
        Show show = Edited.solo();
        assertThatThrownBy(() -> Acts.slot("solo", LocalTime.NOON, minutes).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("slotMinutes");
    }

    @Test
    void whoFliesIsFoundByNameOrAdded() throws CannotBe {
        Show show = Edited.solo();
        Show same = done(show, Acts.performer("solo", "Ada Field "));
        assertThat(same).isEqualTo(show);
        Show other = done(show, Acts.performer("solo", "Bo Marsh"));
        assertThat(other.performers()).extracting(Performer::name).containsExactly("Ada Field", "Bo Marsh");
        assertThat(other.performer(other.acts().get(0).performer())
                        .orElseThrow()
                        .name())
                .isEqualTo("Bo Marsh");
    }
}
