package crowdline.console.words;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.edit.Editing;
import crowdline.console.live.SmallShow;
import crowdline.console.words.FactsView.FactRow;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Computed facts beside the remarks of their place. */
class WordsFactsTest {
    private final List<Show> told = new ArrayList<>();
    private final Editing editing = SampleWords.editing(SmallShow.show());
    private final WordsModel model = SampleWords.model(editing);

    private FactsView facts() {
        return model.view().facts();
    }

    private List<Remark> loop() {
        return model.show().acts().get(0).figures().get(0).remarks();
    }

    private void goToTheLoop() {
        editing.onEdit(told::add);
        model.computed(SampleWords.FACTS);
        model.choosePlace("a1", "f1");
    }

    @Test
    void aListWithoutFactsSaysWhy() {
        assertThat(facts()).isEqualTo(new FactsView("Choose an act or a figure to see its facts", List.of(), -1));
        model.choosePlace("a1", "f1");
        assertThat(facts()).isEqualTo(new FactsView("Facts are being computed", List.of(), -1));
        model.computed(SampleWords.FACTS);
        assertThat(facts().title()).isEqualTo("Facts for variant \"full\"");
        model.choosePlace("a1", "f3");
        assertThat(facts()).isEqualTo(new FactsView("No facts: nothing is predicted here but its time", List.of(), -1));
        model.addFact();
        assertThat(model.show()).isEqualTo(SmallShow.show());
    }

    @Test
    void eachFactStandsWithItsNumberItsWordsAndItsSeconds() {
        goToTheLoop();
        assertThat(facts().chosen()).isZero();
        assertThat(facts().rows()).extracting(FactRow::number).containsExactly("4.1 g", "1,187 ft");
        assertThat(facts().rows().get(0).text()).isEqualTo("At the bottom everything feels about four times as heavy.");
        // The figure lasts 10 s; the default pace is 0.15 s and 0.0731 s a letter, so 48 letters take 3.7 s.
        assertThat(facts().rows().get(0).mark().word()).startsWith("Fits: 3.").endsWith(" of 10.0 s");
    }

    @Test
    void aFactThatCouldNotBeMadeStandsBelowWithTheReasonAndBecomesNoRemark() {
        RemarkPlace loop = new RemarkPlace("a1", "f1");
        PlaceFacts known = Objects.requireNonNull(SampleWords.FACTS.get(loop));
        model.computed(Map.of(
                loop, new PlaceFacts("full", known.facts(), List.of("it comes to −984 ft, so no fact is made of it"))));
        model.choosePlace("a1", "f1");
        assertThat(facts().rows())
                .extracting(FactRow::text)
                .last()
                .isEqualTo("it comes to −984 ft, so no fact is made of it");
        assertThat(facts().takesChosen()).isTrue();
        model.chooseFact(2);
        assertThat(facts().takesChosen()).isFalse();
        model.addFact();
        assertThat(model.show()).isEqualTo(SmallShow.show());
    }

    @Test
    void theChosenFactBecomesARemarkAfterTheChosenOne() {
        goToTheLoop();
        model.choose(1);
        model.chooseFact(1);
        model.addFact();
        Remark added = loop().get(2);
        assertThat(loop()).hasSize(4);
        assertThat(added)
                .isEqualTo(new Remark(
                        "f1-fact-highest",
                        RemarkKind.FACT,
                        "The top is about one thousand two hundred feet up.",
                        "About one thousand two hundred feet up.",
                        null,
                        null,
                        1,
                        false));
        assertThat(told).containsExactly(model.show());
        assertThat(model.view().remark()).isEqualTo(2);
        assertThat(model.view().page().orElseThrow().verdict().word()).endsWith(" of 10.0 s");
        assertThat(facts().rows().get(1).mark().word()).isEqualTo("Already a remark");
        assertThat(facts().rows().get(0).mark().word()).startsWith("Fits: ");
        assertThat(facts().chosen()).isEqualTo(1);
    }

    @Test
    void anAddedFactIsTakenBackInOneStepAndMadeAgain() {
        goToTheLoop();
        model.addFact();
        Show with = model.show();
        editing.undo();
        assertThat(model.show()).isEqualTo(SmallShow.show());
        assertThat(facts().rows().get(0).mark().word()).startsWith("Fits: ");
        editing.redo();
        assertThat(model.show()).isEqualTo(with);
    }

    @Test
    void aFactThatIsARemarkAlreadyIsGoneToAndNotAddedTwice() {
        goToTheLoop();
        model.addFact();
        Show once = model.show();
        model.choose(0);
        model.addFact();
        assertThat(model.show()).isEqualTo(once);
        assertThat(model.view().remark()).isEqualTo(1);
    }

    @Test
    void aFactInOtherWordsIsStillKnown() {
        goToTheLoop();
        model.addFact();
        RemarkDraft d = model.view().page().orElseThrow().draft();
        model.type(new RemarkDraft(
                d.kind(), "Four times as heavy!", d.shortText(), d.weight(), d.earliestS(), d.latestS(), d.once()));
        assertThat(facts().rows().get(0).mark().word()).isEqualTo("Already a remark, in other words");
    }

    @Test
    void aFactWrittenByHandIsKnownByItsWords() {
        goToTheLoop();
        model.choose(2);
        RemarkDraft d = model.view().page().orElseThrow().draft();
        model.type(new RemarkDraft(
                d.kind(),
                " about four times as heavy.",
                d.shortText(),
                d.weight(),
                d.earliestS(),
                d.latestS(),
                d.once()));
        assertThat(facts().rows().get(0).mark().word()).isEqualTo("Already a remark");
    }

    @Test
    void aFactOfTheActBelongsToTheActAndHasNoShortFormIfThereIsNone() {
        goToTheLoop();
        model.chooseFact(1);
        model.choosePlace("a1", null);
        assertThat(facts().chosen()).isZero();
        model.addFact();
        List<Remark> ofAct = model.show().acts().get(0).remarks();
        Remark added = ofAct.get(model.view().remark());
        assertThat(added.id()).isEqualTo("a1-fact-mass");
        assertThat(added.shortText()).isNull();
    }
}
