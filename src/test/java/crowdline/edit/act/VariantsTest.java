package crowdline.edit.act;

import static crowdline.edit.act.Edited.CATALOGUE;
import static crowdline.edit.act.Edited.act;
import static crowdline.edit.act.Edited.done;
import static crowdline.edit.act.Edited.flown;
import static crowdline.edit.act.Edited.id;
import static crowdline.edit.act.Edited.words;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.flight.Predictor;
import crowdline.list.ListReader;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.check.Severity;
import crowdline.show.check.ShowRules;
import crowdline.show.figure.Figure;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class VariantsTest {
    private static final String SOLO = "solo";

    private final Variants variants = new Variants(CATALOGUE);
    private final Figures figures = new Figures(CATALOGUE);
    private final Show show;
    private final Show two;

    VariantsTest() throws CannotBe {
        show = Edited.worded(Edited.solo());
        two = done(
                done(show, variants.agree(SOLO, "full", "full", 2_000.0)), variants.add(SOLO, "full", "flat", 800.0));
    }

    private static void isSound(Show show) {
        assertThat(ShowRules.check(show, CATALOGUE).stream().filter(f -> f.severity() == Severity.ERROR))
                .isEmpty();
        for (Variant variant : act(show).variants()) {
            assertThat(new Predictor(show, CATALOGUE, act(show), variant)
                            .predict()
                            .figures())
                    .allSatisfy(f -> assertThat(f.completed())
                            .as(variant.name() + " " + f.name())
                            .isTrue());
        }
    }

    @Test
    void aNewVariantFliesWhatTheOtherDoes() {
        assertThat(flown(act(two), "flat")).isEqualTo(flown(act(show), "full"));
        assertThat(act(two).variants()).extracting(Variant::name).containsExactly("full", "flat");
        assertThat(words(two)).isEqualTo(words(show));
        isSound(two);
    }

    /** A dive that is told its speed is handed on otherwise once its elements are there. */
    @Test
    void aNewVariantIsACopyWithItsWaysAndItsWords() throws CannotBe {
        Show made = done(
                Edited.empty(),
                Edited.adding(0.5).fromList(new ListReader(CATALOGUE).read("""
                                                In from the right at 120 knots in a shallow dive, loop
                                                Half Cuban
                                                Barrel roll
                                                Wing-over
                                                Stall turn to the left
                                                Roll off the top
                                                Spin, two turns
                                                Low pass
                                                """), Edited.wanted("old trainer", "Solo")));
        Show copied = done(made, variants.add(SOLO, "full", "low", null));
        Variant full = act(copied).variant("full").orElseThrow();
        Variant low = act(copied).variant("low").orElseThrow();
        assertThat(low.order()).isEqualTo(full.order());
        assertThat(act(copied).entry(low)).isEqualTo(act(copied).entry(full));
        isSound(copied);
        // What is edited in one of them stays out of the other.
        Show less = done(copied, figures.remove(SOLO, "low", id(copied, "loop")));
        assertThat(act(less).variant("full").orElseThrow().order()).isEqualTo(full.order());
        isSound(less);
    }

    @Test
    void aFigureLeftOutOfOneStaysInTheOther() throws CannotBe {
        Show less = done(
                done(two, figures.remove(SOLO, "flat", id(two, "loop"))),
                figures.remove(SOLO, "flat", id(two, "stall turn")));
        assertThat(flown(act(less), "flat")).containsExactly("take-off", "slow roll", "spin", "low pass", "landing");
        assertThat(flown(act(less), "full")).isEqualTo(flown(act(show), "full"));
        assertThat(words(less)).containsAll(words(show));
        isSound(less);
    }

    @Test
    void aVariantMayBeginElsewhere() throws CannotBe {
        Show now = two;
        for (String gone : List.of("take-off", "loop", "stall turn")) {
            now = done(now, figures.remove(SOLO, "flat", id(now, gone)));
        }
        Act act = act(now);
        assertThat(act.variants().get(1).entry()).isNotNull().isNotEqualTo(act.entry());
        assertThat(act.variants().get(0).entry()).isNull();
        isSound(now);
    }

    @Test
    void aFigureIsDrawnTheSameInEveryVariant() throws CannotBe {
        Show less = done(two, figures.remove(SOLO, "flat", id(two, "loop")));
        assertThat(act(less).figures().stream().filter(f -> f.figure().equals("slow roll")))
                .hasSize(1);
    }

    @Test
    void anotherOrderInOneLeavesTheOther() throws CannotBe {
        Show moved = done(two, figures.move(SOLO, "flat", id(two, "spin"), -2));
        assertThat(flown(act(moved), "full")).isEqualTo(flown(act(show), "full"));
        assertThat(flown(act(moved), "flat").indexOf("spin")).isEqualTo(2);
        isSound(moved);
    }

    @Test
    void theHighestCloudBaseComesFirst() throws CannotBe {
        Show three = done(two, variants.add(SOLO, "flat", "high", 5_000.0));
        assertThat(act(three).variants()).extracting(Variant::name).containsExactly("high", "full", "flat");
        Show any = done(three, variants.agree(SOLO, "high", "any", null));
        assertThat(act(any).variants()).extracting(Variant::name).containsExactly("full", "flat", "any");
        isSound(any);
    }

    @Test
    void aVariantGoesWithWhatOnlyItFlewAndNobodyWroteAbout() throws CannotBe {
        Show without = done(two, variants.remove(SOLO, "flat"));
        assertThat(act(without).variants()).extracting(Variant::name).containsExactly("full");
        assertThat(words(without)).isEqualTo(words(show));
        assertThat(act(without).figures().stream().map(Figure::id))
                .containsExactlyInAnyOrderElementsOf(
                        act(show).figures().stream().map(Figure::id).toList());
        assertThatThrownBy(() -> variants.remove(SOLO, "full").of(without)).hasMessageContaining("needs a variant");
    }

    @Test
    void namesAreFreeAndShortAndBasesAreHeights() {
        assertThatThrownBy(() -> variants.add(SOLO, "full", " flat ", 800.0).of(two))
                .hasMessageContaining("already");
        assertThatThrownBy(() -> variants.add(SOLO, "full", "", 800.0).of(two)).isInstanceOf(CannotBe.class);
        assertThatThrownBy(() ->
                        variants.add(SOLO, "full", "n".repeat(5_000), 800.0).of(two))
                .hasMessageContaining("40 letters");
        assertThatThrownBy(() -> variants.agree(SOLO, "flat", "flat", -1.0).of(two))
                .isInstanceOf(CannotBe.class);
        assertThatThrownBy(() -> variants.agree(SOLO, "gone", "x", null).of(two))
                .hasMessageContaining("any more");
    }
}
