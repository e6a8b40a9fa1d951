package crowdline.edit.act;

import static crowdline.edit.act.Edited.CATALOGUE;
import static crowdline.edit.act.Edited.act;
import static crowdline.edit.act.Edited.change;
import static crowdline.edit.act.Edited.done;
import static crowdline.edit.act.Edited.figure;
import static crowdline.edit.act.Edited.id;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.edit.EditedShow;
import crowdline.edit.day.People;
import crowdline.show.Act;
import crowdline.show.Performer.SourcedFact;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.Pace;
import java.util.List;
import org.junit.jupiter.api.Test;

class FirstDraftTest {
    private static final String SOLO = "solo";

    private final FirstDraft draft = new FirstDraft(CATALOGUE, Pace.DEFAULT, 0.5);

    private static Show said(Show show, String figure, boolean isDraft) {
        Remark written = Remark.of("mine-" + figure.replace(' ', '-'), RemarkKind.FACT, "Ada built it herself.")
                .withDraft(isDraft);
        return show.withAct(act(show)
                .withFigures(
                        act(show).figures().stream()
                                .map(f -> f.figure().equals(figure) ? f.withRemarks(List.of(written)) : f)
                                .toList(),
                        List.of()));
    }

    @Test
    void aFigureIsDraftedAloneAndTakenBackByName() throws CannotBe {
        Show show = Edited.solo();
        EditedShow edited = EditedShow.opened(show).changed(change(show, draft.figure(SOLO, id(show, "loop"))));
        Show with = edited.now();
        assertThat(figure(with, "loop").remarks())
                .isNotEmpty()
                .allSatisfy(r -> assertThat(r.draft()).isTrue());
        assertThat(act(with).figures().stream().filter(f -> !f.figure().equals("loop")))
                .allSatisfy(f -> assertThat(f.remarks()).isEmpty());
        assertThat(edited.undoName()).contains("Draft the words of loop");
        assertThat(edited.undone().now()).isEqualTo(show);
    }

    @Test
    void anActIsDraftedInOneStepAndEveryWordThatWasThereStays() throws CannotBe {
        Show show = said(said(Edited.solo(), "loop", false), "spin", true);
        EditedShow edited = EditedShow.opened(show).changed(change(show, draft.act(SOLO)));
        Show with = edited.now();
        assertThat(figure(with, "loop").remarks())
                .isEqualTo(figure(show, "loop").remarks());
        assertThat(figure(with, "spin").remarks())
                .isEqualTo(figure(show, "spin").remarks());
        assertThat(figure(with, "stall turn").remarks()).isNotEmpty();
        assertThat(with.everyRemark().map(Remark::id)).doesNotHaveDuplicates();
        assertThat(edited.undoName()).contains("Draft the words of “Solo”");
        assertThat(edited.undone().now()).isEqualTo(show);
    }

    @Test
    void whatIsKnownOfThePilotIsDraftedWithTheActUnlessAPersonChoseWhatFloats() throws CannotBe {
        Show bare = Edited.solo();
        String pilot = act(bare).performer();
        SourcedFact fact =
                new SourcedFact("Mends church organs for a living, and says both jobs need patience.", "form");
        SourcedFact more = new SourcedFact("Learned to fly in a glider, before she could drive a car.", "form");
        Show known = done(bare, People.facts(pilot, List.of(fact, more)));
        Show drafted = done(known, draft.act(SOLO));

        assertThat(drafted.everyRemark().map(Remark::text))
                .containsOnlyOnce("Ada mends church organs for a living, and says both jobs need patience.")
                .containsOnlyOnce("Ada learned to fly in a glider, before she could drive a car.");
        Act act = act(known);
        Remark own = Remark.of("own", RemarkKind.FACT, "Organs sing for her.");
        Show chosen = known.withAct(act.withFigures(act.figures(), List.of(own)));
        assertThat(act(done(chosen, draft.act(SOLO))).remarks()).containsExactly(own);
    }

    @Test
    void whatSomebodyWroteIsNeverTheDraftsPlace() throws CannotBe {
        Show show = said(Edited.solo(), "loop", false);
        assertThatThrownBy(() -> draft.figure(SOLO, id(show, "loop")).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("Somebody has written words for loop already");
        Show untouched = said(Edited.solo(), "loop", true);
        Show anew = done(untouched, draft.figure(SOLO, id(untouched, "loop")));
        assertThat(figure(anew, "loop").remarks()).extracting(Remark::text).doesNotContain("Ada built it herself.");
    }

    @Test
    void aFigureThatWasExchangedIsDraftedForWhatItIsNow() throws CannotBe {
        Show show = done(Edited.solo(), draft.act(SOLO));
        Show other = done(show, new Figures(CATALOGUE).replace(SOLO, id(show, "loop"), "Cuban eight"));
        assertThat(figure(other, "Cuban eight").remarks()).isEmpty();
        Show with = done(other, draft.figure(SOLO, id(other, "Cuban eight")));
        assertThat(figure(with, "Cuban eight").remarks())
                .isNotEmpty()
                .anySatisfy(r -> assertThat(r.text()).containsIgnoringCase("Cuban"));
    }

    @Test
    void whereNothingIsToBeDraftedThatIsSaid() throws CannotBe {
        Show show = Edited.worded(Edited.solo());
        assertThatThrownBy(() -> draft.act(SOLO).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("There is nothing to draft");
        Figure gone = figure(show, "loop");
        assertThatThrownBy(() -> draft.figure(SOLO, gone.id() + "-gone").of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("no longer in the act");
    }
}
