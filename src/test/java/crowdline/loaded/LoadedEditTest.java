package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.Workers;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Placing;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.Paces;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import crowdline.timing.FigureTime;
import crowdline.timing.LearnedTimes;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.IntConsumer;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What is predicted anew after an edit, and what is not. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LoadedEditTest {
    private Show show;
    private LoadedShow loaded;
    /** Varied flights flown so far. */
    private int varied;

    @BeforeAll
    void load() throws Exception {
        byte[] content = Files.readAllBytes(Path.of("src/test/resources/crowdline/shows", "fenmarsh-air-day.json"));
        show = ShowFile.soundBefore(content).orElseThrow();
        loaded = new LoadedShow(show, CatalogueFile.shipped(), Paces.DEFAULT, this::fly, 2);
        loaded.predictAll((n, all) -> {});
    }

    private void fly(int count, IntConsumer work) {
        varied += count;
        Workers.ALONE.each(count, work);
    }

    private static Prediction of(LoadedShow loaded, Act act, Variant variant) {
        return loaded.prediction(act.id(), variant.name()).orElseThrow();
    }

    /** The variants that are predicted anew after an edit, each as "act variant". */
    private List<String> anewAfter(Show edited) {
        LoadedShow next = loaded.with(edited);
        List<String> anew = new ArrayList<>();
        for (Act act : show.acts()) {
            for (Variant variant : act.variants()) {
                Prediction before = of(loaded, act, variant);
                // A prediction has no equals: it is the same one or another.
                if (next.prediction(act.id(), variant.name())
                        .filter(before::equals)
                        .isEmpty()) {
                    anew.add(act.id() + " " + variant.name());
                }
            }
        }
        return anew;
    }

    private Show withFirst(UnaryOperator<Act> edit) {
        List<Act> acts = new ArrayList<>(show.acts());
        acts.set(0, edit.apply(acts.get(0)));
        return show.withActs(acts, show.remarks());
    }

    private List<String> everyVariant() {
        return show.acts().stream().flatMap(act -> ofAct(act).stream()).toList();
    }

    private static List<String> ofAct(Act act) {
        return act.variants().stream().map(v -> act.id() + " " + v.name()).toList();
    }

    /** As many varied flights are needed for the bands; the time of each figure is known without them. */
    @Test
    void bandsOfAnEditedActAreAsWideAsTheLastUntilTheyWereFlown() {
        Show higher = withFirst(act -> entering(act, 100));
        LoadedShow next = loaded.with(higher);
        Act act = show.acts().get(0);
        Variant variant = act.variants().get(0);
        int before = varied;

        assertThat(next.hasBands()).isFalse();
        LearnedTimes atOnce = of(next, act, variant).learnedAtOnce();
        assertThat(varied).isEqualTo(before);
        List<FigureTime> last = of(loaded, act, variant).times().figures();
        for (int i = 0; i < last.size(); i++) {
            FigureTime now = atOnce.times().figures().get(i);
            assertThat(now.highS() / now.durationS())
                    .isCloseTo(last.get(i).highS() / last.get(i).durationS(), within(1e-9));
        }

        LearnedTimes flown = of(next, act, variant).learned();
        assertThat(varied).isGreaterThan(before);
        assertThat(flown.times().figures())
                .extracting(FigureTime::durationS)
                .isEqualTo(atOnce.times().figures().stream()
                        .map(FigureTime::durationS)
                        .toList());
        assertThat(of(next, act, variant).learnedAtOnce()).isEqualTo(flown);
    }

    @Test
    void wordsNamesOrderAndSlotLengthsFlyNothingAnew() {
        Act first = show.acts().get(0);
        assertThat(anewAfter(withFirst(a -> a.withTitle("Another name")))).isEmpty();
        assertThat(anewAfter(withFirst(a -> a.withSlot(a.slotStart(), 3)))).isEmpty();
        List<Figure> silent = first.figures().stream()
                .map(f -> f.withRemarks(List.of(Remark.of(f.id() + "-x", RemarkKind.FACT, "Look."))))
                .toList();
        assertThat(anewAfter(withFirst(a -> a.withFigures(silent, List.of())))).isEmpty();
        List<Act> turned = new ArrayList<>(show.acts());
        Collections.reverse(turned);
        assertThat(anewAfter(show.withActs(turned, List.of()))).isEmpty();
    }

    @Test
    void anActThatBeginsElsewhereIsTheOnlyOneFlownAnew() {
        Act first = show.acts().get(0);
        Show edited = withFirst(a -> entering(a, 300));
        assertThat(anewAfter(edited)).containsExactlyInAnyOrderElementsOf(ofAct(first));
        LoadedShow next = loaded.with(edited);
        Variant flown = first.variants().get(0);
        assertThat(of(next, first, flown).flight().figures().get(0))
                .isNotEqualTo(of(loaded, first, flown).flight().figures().get(0));
        assertThat(of(loaded.with(edited).with(show), first, flown)).isSameAs(of(loaded, first, flown));
        assertThat(of(loaded.with(edited), first, flown)).isSameAs(of(next, first, flown));
    }

    private static Act entering(Act act, double higherFt) {
        Placing entry = Objects.requireNonNull(act.entry());
        return new Act(
                act.id(),
                act.title(),
                act.performer(),
                act.airframe(),
                act.slotStart(),
                act.slotMinutes(),
                new Placing(entry.alongM(), entry.awayM(), entry.heightFt() + higherFt, entry.kt(), entry.heading()),
                act.figures(),
                act.variants(),
                act.remarks());
    }

    @Test
    void aFigureTakenOutOfOneVariantLeavesTheOthers() {
        Act act = show.acts().stream()
                .filter(a -> a.variants().size() > 1)
                .findFirst()
                .orElseThrow();
        Variant one = act.variants().get(0);
        List<Variant> variants = new ArrayList<>(act.variants());
        variants.set(
                0,
                new Variant(
                        one.name(),
                        one.minCloudBaseFt(),
                        one.order().subList(0, one.order().size() - 1)));
        List<Act> acts = show.acts().stream()
                .map(a -> a.equals(act)
                        ? new Act(
                                a.id(),
                                a.title(),
                                a.performer(),
                                a.airframe(),
                                a.slotStart(),
                                a.slotMinutes(),
                                a.entry(),
                                a.figures(),
                                variants,
                                a.remarks())
                        : a)
                .toList();
        assertThat(anewAfter(show.withActs(acts, show.remarks()))).containsExactly(act.id() + " " + one.name());
    }

    @Test
    void airPlaceAndDateChangeEveryFlight() {
        assertThat(anewAfter(show.withAir(new DayAir(990, 30, 200, 25, null))))
                .containsExactlyInAnyOrderElementsOf(everyVariant());
        Venue v = show.venue();
        Venue higher = new Venue(
                v.name(),
                v.latDeg(),
                v.lonDeg(),
                Double.valueOf(3000),
                v.axisBearingDeg(),
                v.crowdToLineM(),
                v.timeZone(),
                v.limits());
        Show moved = show.withVenue(higher);
        assertThat(anewAfter(moved)).containsExactlyInAnyOrderElementsOf(everyVariant());
        Show later = show.called(show.title(), show.date().plusMonths(4));
        assertThat(anewAfter(later)).as("the sun stands elsewhere").isEqualTo(everyVariant());
    }

    @Test
    void passesReachWhatBecameOfTheShow() {
        LoadedShow next = loaded.with(withFirst(a -> entering(a, 100)));
        assertThat(next.passes()).isSameAs(loaded.passes());
    }

    @Test
    void namesThatAreSaidOtherwiseAreTimedAnew() {
        Show said = show.withSayAs(Map.of("Xy", "a very long name that is said slowly"));
        assertThat(loaded.with(said).voices().time("Xy").seconds())
                .isGreaterThan(loaded.voices().time("Xy").seconds() + 1);
        assertThat(loaded.with(show).voices()).isSameAs(loaded.voices());
    }
}
