package crowdline.console.words;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.edit.Editing;
import crowdline.console.live.SmallShow;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Remarks that are a first draft until somebody has read them. */
class WordsDraftTest {
    private static final RemarkPlace LOOP = new RemarkPlace("a1", "f1");
    private static final Remark SECOND = LOOP.in(SmallShow.show()).get(1);

    @Test
    void wordsTypedAreNoFirstDraftAnyMore() {
        Editing editing = editingWith(SECOND.withDraft(true));
        WordsModel typing = modelOf(editing);
        typing.type(WordsModelTest.text(typing.view().page().orElseThrow().draft(), "Round it goes."));
        assertThat(loopOf(typing).get(1).draft()).isFalse();
        editing.undo();
        assertThat(loopOf(typing).get(1).draft()).isTrue();
    }

    @Test
    void whatCannotBeUsedLeavesAFirstDraftAsItWas() {
        WordsModel typing = modelOf(editingWith(SECOND.withDraft(true)));
        typing.type(WordsModelTest.text(typing.view().page().orElseThrow().draft(), " "));
        assertThat(loopOf(typing).get(1).draft()).isTrue();
    }

    @Test
    void draftsAreMarkedInAWordUntilTheyAreAccepted() {
        Editing editing = editingWith(SECOND.withDraft(true));
        WordsModel model = modelOf(editing);
        assertThat(model.view().remarks().get(1).draft()).isNotNull();
        assertThat(model.view().remarks().get(0).draft()).isNull();
        assertThat(model.view().page().orElseThrow().firstDraft()).isNotNull();
        assertThat(model.view().drafts()).isEqualTo(1);

        model.accept();
        assertThat(model.view().remarks().get(1).draft()).isNull();
        assertThat(model.view().page().orElseThrow().firstDraft()).isNull();
        assertThat(loopOf(model).get(1)).isEqualTo(SECOND);

        editing.undo();
        assertThat(loopOf(model).get(1).draft()).isTrue();
    }

    @Test
    void acceptingGoesOnToTheNextDraftOfThePlace() {
        WordsModel model = SampleWords.model(allDrafts());
        model.choosePlace("a1", "f1");
        model.choose(0);
        model.accept();
        assertThat(model.view().remark()).isEqualTo(1);
        model.accept();
        assertThat(model.view().remark()).isEqualTo(2);
        model.accept();
        assertThat(loopOf(model)).noneMatch(Remark::draft);
        assertThat(model.view().drafts()).isPositive();
    }

    @Test
    void everyDraftOfTheActIsAcceptedInOneStep() {
        Editing editing = allDrafts();
        WordsModel model = SampleWords.model(editing);
        model.choosePlace("a1", null);
        long all = model.show().everyRemark().count();
        assertThat(model.acceptAll())
                .isEqualTo((int) all - model.show().remarks().size());
        assertThat(model.show().acts().get(0).figures().stream().flatMap(f -> f.remarks().stream()))
                .noneMatch(Remark::draft);
        assertThat(model.show().remarks()).allMatch(Remark::draft);
        editing.undo();
        assertThat(model.show().everyRemark()).allMatch(Remark::draft);
        model.choosePlace(null, null);
        assertThat(model.acceptAll()).isEqualTo((int) all);
        assertThat(model.show().everyRemark()).noneMatch(Remark::draft);
    }

    private static Editing allDrafts() {
        Show show = SmallShow.show();
        for (RemarkPlace place : RemarkPlace.all(show)) {
            show = place.with(
                    show, place.in(show).stream().map(r -> r.withDraft(true)).toList());
        }
        return SampleWords.editing(show);
    }

    /** The second remark of the loop is this one. */
    private static Editing editingWith(Remark second) {
        List<Remark> remarks = new ArrayList<>(LOOP.in(SmallShow.show()));
        remarks.set(1, second);
        Show show = LOOP.with(SmallShow.show(), remarks);
        return SampleWords.editing(show);
    }

    /** It is chosen. */
    private static WordsModel modelOf(Editing editing) {
        WordsModel made = SampleWords.model(editing);
        made.choosePlace("a1", "f1");
        made.choose(1);
        return made;
    }

    private static List<Remark> loopOf(WordsModel of) {
        return LOOP.in(of.show());
    }
}
