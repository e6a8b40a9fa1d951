package crowdline.console.words;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.edit.Editing;
import crowdline.console.live.SmallShow;
import crowdline.console.words.WordsView.RemarkPage;
import crowdline.edit.Change;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.plain.SpeechFinding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

public class WordsModelTest {
    private final List<Show> told = new ArrayList<>();
    private final Editing editing = SampleWords.editing(SmallShow.show());
    private final WordsModel model = SampleWords.model(editing);

    private RemarkPage page() {
        return model.view().page().orElseThrow();
    }

    public static RemarkDraft text(RemarkDraft d, String text) {
        return new RemarkDraft(d.kind(), text, d.shortText(), d.weight(), d.earliestS(), d.latestS(), d.once());
    }

    private static RemarkDraft limits(RemarkDraft d, String weight, String earliestS, String latestS) {
        return new RemarkDraft(d.kind(), d.text(), d.shortText(), weight, earliestS, latestS, d.once());
    }

    private void typeText(String text) {
        model.type(text(page().draft(), text));
    }

    private List<Remark> loop() {
        return model.show().acts().get(0).figures().get(0).remarks();
    }

    private void goToExplanationOfTheLoop() {
        model.choosePlace("a1", "f1");
        model.choose(1);
    }

    @Test
    void placesAreTheShowTheActAndItsFigures() {
        assertThat(model.view().places())
                .extracting(WordsView.PlaceView::name)
                .containsExactly("The whole show", "The Calder display", "Loop", "Stall turn", "Low pass");
        model.choosePlace("a1", "f1");
        assertThat(model.view().place()).isEqualTo(2);
        assertThat(model.view().remarks()).hasSize(3);
    }

    @Test
    void typedWordsReachTheShowAndItsTitleSaysSo() {
        goToExplanationOfTheLoop();
        editing.onEdit(told::add);
        assertThat(editing.title()).contains("day.json");
        typeText("Up at 120 kt.");
        assertThat(loop().get(1).text()).isEqualTo("Up at 120 kt.");
        assertThat(told).containsExactly(model.show());
        assertThat(editing.title()).contains("day.json, not saved");
        assertThat(page().spoken()).isEqualTo("Up at one hundred and twenty knots.");
    }

    @Test
    void whatAStepBackChangesIsGoneTo() {
        goToExplanationOfTheLoop();
        String before = loop().get(1).text();
        typeText("Up and over.");
        model.choosePlace(null, null);
        editing.undo();
        assertThat(model.view().place()).isEqualTo(2);
        assertThat(page().draft().text()).isEqualTo(before);
    }

    @Test
    void typingOneWordIsOneStepBack() {
        goToExplanationOfTheLoop();
        String before = loop().get(1).text();
        for (String typed : List.of("U", "Up", "Up ", "Up h", "Up he")) {
            typeText(typed);
        }
        editing.undo();
        assertThat(loop().get(1).text()).isEqualTo("Up");
        assertThat(page().draft().text()).isEqualTo("Up");
        editing.undo();
        assertThat(loop().get(1).text()).isEqualTo(before);
        assertThat(editing.isUnsaved()).isFalse();
        editing.redo();
        editing.redo();
        assertThat(loop().get(1).text()).isEqualTo("Up he");
        editing.redo();
        assertThat(loop().get(1).text()).isEqualTo("Up he");
    }

    @Test
    void whatCannotBeUsedIsSaidAndChangesNothing() {
        goToExplanationOfTheLoop();
        Show before = model.show();
        typeText("  ");
        assertThat(page().problems())
                .containsExactly("The text is empty, so the old one is kept until you write something.");
        typeText(before.acts().get(0).figures().get(0).remarks().get(1).text());
        model.type(limits(page().draft(), "heavy", "4", "2"));
        assertThat(page().problems())
                .containsExactly(
                        "The weight is \"heavy\"; it must be a number such as 2.5.",
                        "The latest end, 2 s, must come after the earliest start, 4 s.");
        assertThat(page().draft().weight()).isEqualTo("heavy");
        assertThat(model.show()).isEqualTo(before);
        model.type(limits(page().draft(), "-1", "", ""));
        assertThat(page().problems()).containsExactly("The weight must be a number above 0; 1 is ordinary.");
    }

    @Test
    void whatNoRemarkMayBeIsSaidAndChangesNothing() {
        goToExplanationOfTheLoop();
        Show before = model.show();
        model.type(limits(page().draft(), "5000", "", ""));
        assertThat(page().problems())
                .containsExactly("This remark cannot be used, so the old one is kept: weight is 5,000; it must be from"
                        + " 0.001 to 1,000.");
        model.type(limits(page().draft(), "1", "-99999", ""));
        assertThat(page().problems())
                .containsExactly("This remark cannot be used, so the old one is kept: earliestS is -99,999; it must be"
                        + " from -7,200 to 7,200.");
        assertThat(model.show()).isEqualTo(before);
    }

    @Test
    void limitsAndWeightAreTaken() {
        goToExplanationOfTheLoop();
        model.type(limits(page().draft(), "2.5", "−1", "6"));
        Remark remark = loop().get(1);
        assertThat(remark.weight()).isEqualTo(2.5);
        assertThat(remark.earliestS()).isEqualTo(-1);
        assertThat(remark.latestS()).isEqualTo(6);
        assertThat(page().problems()).isEmpty();
    }

    @Test
    void secondsStandAgainstTheFigureWithItsBand() {
        goToExplanationOfTheLoop();
        typeText("Round.");
        assertThat(page().verdict().word()).startsWith("Fits: ").endsWith(" of 10.0 s");
        // The default pace is 0.15 s and 0.0731 s a weighed letter, and 152 letters of one word weigh (152 + 1) / 1.09:
        // 10.4 s, more than 10 and less than the 13 s that it may run to.
        typeText("w".repeat(152));
        assertThat(page().verdict().word()).startsWith("Runs over: 10.4 s");
        typeText("w".repeat(130));
        assertThat(page().verdict().word()).startsWith("Just fits: 8.9 s");
        typeText("w".repeat(200));
        assertThat(page().verdict().word()).startsWith("On a good day: 13.6 s");
        typeText("w".repeat(240));
        assertThat(page().verdict().word()).startsWith("Too long: 16.3 s");
        model.type(limits(page().draft(), "1", "2", "5"));
        assertThat(page().verdict().word()).endsWith("of 3.0 s");
    }

    @Test
    void callHasTheSecondsBeforeItsFigure() {
        model.choosePlace("a1", "f1");
        assertThat(page().verdict().word()).startsWith("Fits: ").endsWith(" of 7.0 s");
        assertThat(page().room()).isEqualTo("A call is spoken before its figure, from 8 s to 1 s ahead.");
    }

    @Test
    void addedRemarkHasAnIdOfItsOwnAndIsChosen() {
        model.choosePlace("a1", "f3");
        model.add();
        model.add();
        model.add();
        List<Remark> remarks = model.show().acts().get(0).figures().get(2).remarks();
        assertThat(remarks).extracting(Remark::id).containsExactly("f3-call", "f3-explanation", "f3-explanation-2");
        assertThat(remarks).extracting(Remark::kind).startsWith(RemarkKind.CALL);
        assertThat(model.view().remark()).isEqualTo(2);
    }

    @Test
    void oneRemarkMoreThanThereMayBeIsRefusedWithTheLimit() {
        goToExplanationOfTheLoop();
        while (loop().size() < 100) {
            model.add();
        }
        assertThat(page().problems()).isEmpty();
        model.add();
        assertThat(loop()).hasSize(100);
        assertThat(page().problems())
                .containsExactly(
                        "No further remark can be added here: remarks has 101 entries; the limit is 100, so take"
                                + " some out.");
        model.delete();
        assertThat(page().problems()).isEmpty();
    }

    @Test
    void remarksAreDeletedAndMovedAndTakenBack() {
        model.choosePlace("a1", "f1");
        model.choose(2);
        model.move(-1);
        assertThat(loop()).extracting(Remark::id).containsExactly("r-call-1", "r-fact-1", "r-say-1");
        assertThat(model.view().remark()).isEqualTo(1);
        model.delete();
        assertThat(loop()).extracting(Remark::id).containsExactly("r-call-1", "r-say-1");
        editing.undo();
        editing.undo();
        assertThat(model.show()).isEqualTo(SmallShow.show());
        model.move(-5);
        assertThat(model.show()).isEqualTo(SmallShow.show());
    }

    @Test
    void deletingTheLastRemarkLeavesAnEmptyPage() {
        model.choosePlace("a1", "f2");
        model.delete();
        assertThat(model.view().page()).isEmpty();
        assertThat(model.view().remark()).isEqualTo(-1);
        model.delete();
        model.type(new RemarkDraft(RemarkKind.FACT, "x", "", "1", "", "", false));
        editing.undo();
        assertThat(page().draft().text()).isEqualTo("And now it stops.");
    }

    @Test
    void plainWordsGoBehindTheTradeWordAndSatisfyTheFinding() {
        goToExplanationOfTheLoop();
        typeText("Watch the rudder as it turns.");
        assertThat(page().findings()).extracting(SpeechFinding::code).containsExactly("trade-word");
        Optional<Integer> caret = model.insertPlainWords(0);
        assertThat(loop().get(1).text())
                .isEqualTo("Watch the rudder, that is, the moving panel on the fin that swings the nose left or right,"
                        + " as it turns.");
        assertThat(caret).contains(loop().get(1).text().indexOf(" as it turns"));
        assertThat(page().findings()).isEmpty();
        assertThat(model.insertPlainWords(0)).isEmpty();
        editing.undo();
        assertThat(loop().get(1).text()).isEqualTo("Watch the rudder as it turns.");
    }

    @Test
    void tradeWordIsFoundOnlyWhereTheActSaysItFirst() {
        model.choosePlace("a1", "f1");
        typeText("Full rudder.");
        assertThat(page().findings()).extracting(SpeechFinding::code).containsExactly("trade-word");
        goToExplanationOfTheLoop();
        typeText("More rudder.");
        assertThat(page().findings()).isEmpty();
    }

    @Test
    void plainWordsAreThoseAtTheCaret() {
        goToExplanationOfTheLoop();
        typeText("The rudder. And the elevator.");
        model.insertPlainWords("The rudder. And".length());
        assertThat(loop().get(1).text())
                .startsWith("The rudder. And the elevator, that is")
                .endsWith("nose.");
    }

    @Test
    void savingKeepsWhatWasTypedMeanwhile() {
        goToExplanationOfTheLoop();
        typeText("Up.");
        Show written = model.show();
        typeText("Up and over.");
        editing.saved(written, "other.json");
        assertThat(editing.title()).contains("other.json, not saved");
        assertThat(editing.isUnsaved()).isTrue();
        editing.undo();
        assertThat(editing.isUnsaved()).isFalse();
    }

    @Test
    void planIsShownWithItsRemark() {
        goToExplanationOfTheLoop();
        model.planned(new WordsPlan(
                Map.of("r-say-1", new PlannedRemark(PlannedRemark.Standing.SAID, "At 1:28.")),
                Map.of("a1", "All reads well.")));
        assertThat(page().planned()).isEqualTo("At 1:28.");
        assertThat(page().reads()).isEqualTo("All reads well.");
        model.choose(0);
        assertThat(page().planned()).isEmpty();
    }

    /** The list and the page say the same of a remark, and neither calls fitting what the plan cannot place. */
    @Test
    void whatThePlanCannotPlaceIsNotSaidToFit() {
        goToExplanationOfTheLoop();
        typeText("Up and over.");
        Map<PlannedRemark.Standing, String> begins = Map.of(
                PlannedRemark.Standing.UNKNOWN, "Fits: ",
                PlannedRemark.Standing.SAID, "Fits: ",
                PlannedRemark.Standing.TIGHT, "Just fits: ",
                PlannedRemark.Standing.SHORT, "Short form: ",
                PlannedRemark.Standing.NOT_NEEDED, "No gap to fill: ",
                PlannedRemark.Standing.NO_PLACE, "No place: ");
        begins.forEach((standing, word) -> {
            model.planned(new WordsPlan(Map.of("r-say-1", new PlannedRemark(standing, "Why.")), Map.of()));
            assertThat(page().verdict().word()).startsWith(word);
            // The list has no room for how much quicker or slower it may be read.
            assertThat(model.view().remarks().get(1).verdict().word())
                    .startsWith(word)
                    .isEqualTo(page().verdict().word().replaceFirst(" \\(.*\\)", ""));
        });
    }

    @Test
    void figuresAreNumberedAsTheyAreFlown() {
        assertThat(model.view().places())
                .extracting(WordsView.PlaceView::number)
                .containsExactly("", "", "1", "2", "3");
    }

    @Test
    void whatWasDoneHasANameWithItsPlace() {
        goToExplanationOfTheLoop();
        typeText("Up.");
        assertThat(editing.undoName()).contains("Edit a remark (Loop)");
        model.delete();
        assertThat(editing.undoName()).contains("Delete a remark (Loop)");
        model.choosePlace(null, null);
        model.add();
        assertThat(editing.undoName()).contains("Add a remark (The whole show)");
        model.move(-1);
        assertThat(editing.undo()).contains("Move a remark (The whole show)");
        assertThat(editing.redoName()).contains("Move a remark (The whole show)");
    }

    @Test
    void anActTakenAwayElsewhereLeavesTheWholeShowChosen() {
        goToExplanationOfTheLoop();
        Show show = model.show();
        editing.change(Change.of("Delete the act", show.withActs(List.of(), show.remarks())));
        assertThat(model.view().place()).isZero();
        assertThat(page().draft().text()).isEqualTo(show.remarks().get(0).text());
        editing.undo();
        assertThat(model.view().places()).hasSize(5);
    }

    @Test
    void whatIsTypedElsewhereIsShownHere() {
        goToExplanationOfTheLoop();
        RemarkPlace loop = new RemarkPlace("a1", "f1");
        List<Remark> remarks = new ArrayList<>(loop());
        remarks.set(1, Remark.of("r-say-1", RemarkKind.EXPLANATION, "Over the top."));
        editing.change(Change.of("Edit a remark", loop.with(model.show(), remarks)));
        assertThat(page().draft().text()).isEqualTo("Over the top.");
    }

    @Test
    void anythingDoneIsTakenBackStepByStep() {
        Random random = new Random(11);
        for (int round = 0; round < 20; round++) {
            Editing steps = SampleWords.editing(SmallShow.show());
            WordsModel any = SampleWords.model(steps);
            for (int i = 0; i < 60; i++) {
                switch (random.nextInt(8)) {
                    case 0 -> any.add();
                    case 1 -> any.delete();
                    case 2 -> any.move(random.nextInt(3) - 1);
                    case 3 -> steps.undo();
                    case 4 -> steps.redo();
                    case 5 -> any.choosePlace(random.nextInt(6));
                    case 6 -> any.choose(random.nextInt(4));
                    default -> {
                        String typed = "word ".repeat(random.nextInt(4));
                        any.view().page().ifPresent(p -> any.type(text(p.draft(), typed)));
                    }
                }
                any.view();
            }
            while (steps.undoName().isPresent()) {
                steps.undo();
            }
            assertThat(any.show()).as("round %s", round).isEqualTo(SmallShow.show());
        }
    }
}
