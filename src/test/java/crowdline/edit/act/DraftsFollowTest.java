package crowdline.edit.act;

import static crowdline.edit.act.Edited.CATALOGUE;
import static crowdline.edit.act.Edited.act;
import static crowdline.edit.act.Edited.done;
import static crowdline.edit.act.Edited.figure;
import static crowdline.edit.act.Edited.id;
import static org.assertj.core.api.Assertions.assertThat;

import crowdline.edit.EditedShow;
import crowdline.edit.day.Days;
import crowdline.edit.day.VenueNumber;
import crowdline.show.Act;
import crowdline.show.CrowdUnits;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.speech.pace.Pace;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class DraftsFollowTest {
    private static final String SOLO = "solo";

    private final FirstDraft draft = new FirstDraft(CATALOGUE, Pace.DEFAULT, 0.5);
    private final Figures figures = new Figures(CATALOGUE);

    private Show drafted() throws CannotBe {
        return done(Edited.solo(), draft.act(SOLO));
    }

    /** What would be said if the act had been drafted as it is now. */
    private List<String> anew(Show show) throws CannotBe {
        Act act = act(show);
        List<Figure> bare =
                act.figures().stream().map(f -> f.withRemarks(List.of())).toList();
        return Edited.words(done(show.withAct(act.withFigures(bare, List.of())), draft.act(SOLO)));
    }

    private static Show with(Show show, String figure, UnaryOperator<Remark> remark) {
        Figure told = figure(show, figure);
        List<Remark> remarks = told.remarks().stream().map(remark).toList();
        return with(show, told.withRemarks(remarks));
    }

    private static Show with(Show show, Figure figure) {
        Act act = act(show);
        return show.withAct(act.withFigures(
                act.figures().stream()
                        .map(f -> f.id().equals(figure.id()) ? figure : f)
                        .toList(),
                act.remarks()));
    }

    /** A lowest height that was told after the words were written. */
    private static Edit lower() {
        return new Days(CATALOGUE).number(VenueNumber.BASE_FT, 900.0);
    }

    private Edit last(String figure, Show show) {
        return figures.move(SOLO, act(show).variants().get(0).name(), id(show, figure), 3);
    }

    private void follows(Show show, Edit edit) throws CannotBe {
        Show after = done(show, draft.followed(edit));
        assertThat(Edited.words(after)).isNotEqualTo(Edited.words(show)).isEqualTo(anew(after));
        assertThat(after.everyRemark().map(Remark::id)).doesNotHaveDuplicates();
    }

    @Test
    void whatNobodyTouchedSaysWhatWouldBeDraftedOfTheActAsItIs() throws CannotBe {
        Show show = drafted();
        follows(show, figures.move(SOLO, act(show).variants().get(0).name(), id(show, "stall turn"), 2));
        follows(show, figures.replace(SOLO, id(show, "loop"), "Cuban eight"));
        follows(show, figures.add(SOLO, act(show).variants().get(0).name(), null, "barrel roll", null));
        follows(show, figures.remove(SOLO, act(show).variants().get(0).name(), id(show, "spin")));
        follows(show, lower());
        follows(show, Days.units(CrowdUnits.METRIC));
    }

    @Test
    void oneStepTakesBothBack() throws CannotBe {
        Show show = drafted();
        EditedShow edited =
                EditedShow.opened(show).changed(draft.followed(lower()).of(show));
        assertThat(Edited.words(edited.now())).isNotEqualTo(Edited.words(show));
        assertThat(edited.undone().now()).isEqualTo(show);
    }

    @Test
    void whatAPersonWroteOrAcceptedStaysAndIsNotSaidTwice() throws CannotBe {
        Show drafted = drafted();
        Show accepted = with(drafted, "stall turn", r -> r.withDraft(false));
        Show after = done(accepted, draft.followed(last("stall turn", accepted)));
        assertThat(figure(after, "stall turn").remarks())
                .isEqualTo(figure(accepted, "stall turn").remarks());
        assertThat(after.everyRemark().map(Remark::text)).doesNotHaveDuplicates();
        assertThat(Edited.words(after)).isNotEqualTo(Edited.words(accepted));

        Show accepting = with(drafted, "spin", r -> r.withDraft(false));
        Show replaced = done(accepting, draft.followed(figures.replace(SOLO, id(drafted, "spin"), "barrel roll")));
        assertThat(figure(replaced, "barrel roll").remarks())
                .isEqualTo(figure(accepting, "spin").remarks());
    }

    @Test
    void whatAPersonTookOutStaysOut() throws CannotBe {
        Show drafted = drafted();
        Figure turn = figure(drafted, "stall turn");
        assertThat(turn.remarks()).hasSizeGreaterThan(1);
        Show without = with(drafted, turn.withRemarks(turn.remarks().subList(0, 1)));
        Show after = done(without, draft.followed(last("stall turn", without)));
        assertThat(figure(after, "stall turn").remarks())
                .hasSize(1)
                .isNotEqualTo(figure(without, "stall turn").remarks());
    }

    @Test
    void whatTheEditDoesNotTouchStaysWhateverItIsDraftedLikeNow() throws CannotBe {
        Show old = with(drafted(), "take-off", r -> r.worded("Ready? " + r.text(), null));
        Show after = done(old, draft.followed(last("stall turn", old)));
        assertThat(figure(after, "take-off").remarks())
                .isEqualTo(figure(old, "take-off").remarks());
    }

    @Test
    void whereNothingIsDraftedNothingIs() throws CannotBe {
        Show bare = Edited.solo();
        Edit edit = last("stall turn", bare);
        assertThat(done(bare, draft.followed(edit))).isEqualTo(done(bare, edit));
        Show accepted = drafted();
        for (Figure figure : act(accepted).figures()) {
            accepted = with(
                    accepted,
                    figure.withRemarks(figure.remarks().stream()
                            .map(r -> r.withDraft(false))
                            .toList()));
        }
        Edit after = last("stall turn", accepted);
        assertThat(done(accepted, draft.followed(after))).isEqualTo(done(accepted, after));
    }
}
