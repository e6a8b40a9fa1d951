package crowdline.sight.clue;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.FigureAlone;
import crowdline.sight.picture.Flown;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.KindsFile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Whoever answers truly is led to the figure, whatever flew it. */
class WhatIsThatTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final Map<String, WhatIsThat> STARTS = new HashMap<>();

    /** Kinds that the questions were not made with: light, heavy, and without an engine. */
    static List<Kind> kinds() {
        return Stream.of("light aerobatic biplane", "fast jet", "aerobatic glider")
                .map(KindsFile.shipped()::named)
                .toList();
    }

    private static FigureAlone alone(Kind kind) {
        return new FigureAlone(CATALOGUE, kind.airframe("m", kind.name(), Sliders.TYPICAL));
    }

    private static Flown flown(FigureAlone alone, Kind kind, CatalogueEntry entry) {
        return entry.elements().stream().allMatch(kind::shows) ? computed(alone.fly(entry)) : Flown.NONE;
    }

    /** In what is only sketched nothing can be measured. */
    private static Flown computed(FigureAlone.Outcome outcome) {
        return outcome.flown().company().sketched() ? Flown.NONE : outcome.flown();
    }

    /** As the program asks: by a strong aeroplane and by a weak one. */
    private static WhatIsThat first() {
        return STARTS.computeIfAbsent("first", any -> {
            Kind strong = KindsFile.shipped().named("strong aerobatic monoplane");
            Kind weak = KindsFile.shipped().named("old trainer");
            FigureAlone one = alone(strong);
            FigureAlone other = alone(weak);
            return WhatIsThat.of(CATALOGUE.entries(), e -> List.of(flown(one, strong, e), flown(other, weak, e)));
        });
    }

    /** Every end that true answers lead to, whichever of several allowed answers is given. */
    private static List<WhatIsThat> ends(WhatIsThat now, Candidate truth) {
        List<WhatIsThat> ends = new ArrayList<>();
        if (now.question() == null) {
            ends.add(now);
            return ends;
        }
        Clue clue = clue(now);
        for (int i = 0; i < now.answers().size(); i++) {
            int answer = clue.answers().indexOf(now.answers().get(i));
            if (truth.allows(clue, answer)) {
                ends.addAll(ends(now.answer(i), truth));
            }
        }
        return ends;
    }

    private static Clue clue(WhatIsThat now) {
        for (Clue clue : Clue.values()) {
            if (clue.question().equals(now.question())) {
                return clue;
            }
        }
        throw new AssertionError(now.question());
    }

    @Test
    void everyFigureIsReachedInAtMostFourAnswersAmongAFew() {
        double sum = 0;
        int count = 0;
        Kind strong = KindsFile.shipped().named("strong aerobatic monoplane");
        FigureAlone alone = alone(strong);
        for (CatalogueEntry entry : CATALOGUE.entries()) {
            Flown flown = flown(alone, strong, entry);
            Candidate truth = new Candidate(entry, flown.isEmpty() ? List.of() : List.of(Traits.of(flown)));
            List<WhatIsThat> ends = ends(first(), truth);
            assertThat(ends).as(entry.name()).isNotEmpty();
            for (WhatIsThat end : ends) {
                assertThat(end.candidates()).as(entry.name()).contains(entry);
                assertThat(end.answers(true)).isLessThanOrEqualTo(WhatIsThat.MOST_ANSWERS);
                sum += end.candidates().size();
                count++;
                assertThat(end.candidates().size()).as(entry.name()).isLessThanOrEqualTo(10);
            }
        }
        assertThat(sum / count).as("figures left on the average").isLessThan(6.4);
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("kinds")
    void whateverFliesItTrueAnswersLeadToIt(Kind kind) {
        FigureAlone alone = new FigureAlone(CATALOGUE, kind.airframe("m", kind.name(), Sliders.TYPICAL));
        List<String> missed = new ArrayList<>();
        int walked = 0;
        for (CatalogueEntry entry : CATALOGUE.entries()) {
            Flown flown = computed(alone.fly(entry));
            if (!flown.isEmpty() && entry.elements().stream().allMatch(kind::shows)) {
                List<WhatIsThat> ends = ends(first(), new Candidate(entry, List.of(Traits.of(flown))));
                long found = ends.stream()
                        .filter(e -> e.candidates().contains(entry))
                        .count();
                walked++;
                if (found < 0.8 * ends.size() || ends.isEmpty()) {
                    missed.add(entry.name() + " " + found + " of " + ends.size());
                }
            }
        }
        assertThat(missed).as("of " + walked).hasSizeLessThanOrEqualTo(walked / 12);
    }

    /** What goes round one way and then as far the other went round a curve all the same. */
    @ParameterizedTest
    @MethodSource("kinds")
    void turnsThatEndTheWayTheyBeganWentRoundACurve(Kind kind) {
        int curve = Clue.LINE.answers().indexOf("round a curve, leaning over");
        for (String name : List.of("Derry turn", "lazy eight", "steep turn")) {
            Flown flown = computed(alone(kind).fly(CATALOGUE.find(name).orElseThrow()));
            if (flown.isEmpty()) {
                // Too fast to swing up and round in a reasonable time.
                assertThat(kind.name() + ", " + name).isEqualTo("fast jet, lazy eight");
                continue;
            }
            Traits traits = Traits.of(flown);
            assertThat(traits.roundDeg()).as(name).isGreaterThan(90);
            assertThat(Clue.LINE.allowed(traits) & Clue.only(curve)).as(name).isNotZero();
        }
    }

    @Test
    void notSureLeavesEverythingOpenAndAsksSomethingElse() {
        WhatIsThat asked = first().answer(0);
        WhatIsThat unsure = asked.notSure();
        assertThat(unsure.candidates()).isEqualTo(asked.candidates());
        assertThat(unsure.question()).isNotEqualTo(asked.question());
        assertThat(unsure.back().question()).isEqualTo(asked.question());
    }

    @Test
    void onlyAnswersThatSomethingAllowsAreOffered() {
        WhatIsThat helicopter = first().answer(3);
        assertThat(helicopter.candidates()).allMatch(e -> e.family().equals("helicopter"));
        assertThat(first().answer(99)).isSameAs(first());
        WhatIsThat at = first();
        while (at.question() != null) {
            assertThat(at.answers()).isNotEmpty();
            at = at.answer(0);
            assertThat(at.candidates()).isNotEmpty();
        }
        assertThat(at.answers()).isEmpty();
        assertThat(at.told()).isNotEmpty();
    }

    /** Answers of somebody who has never heard a name, put down before they were tried. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "humpty bump | no; straight up; not at all; it did not; only in passing; on, the; about as high; about half; its top",
                "wing-over | no; round a curve; not at all; it did not; never; back; about as high; none; there was no circle",
                "stall turn | it swung; straight up; not at all; it did not; never; back; about as high; none; there was no circle",
                "knife edge pass | no; level; half round; smoothly; never; on, the; about as high; none; there was no circle",
                "split S | no; a circle; half round; smoothly; only in passing; back; lower; about half; its top"
            })
    void whatALayPersonSaysLeadsToIt(String figure, String said) {
        WhatIsThat now = first();
        while (now.question() != null) {
            List<String> answers = now.answers();
            int choice = now.question().equals(Clue.WHO.question())
                    ? 0
                    : Arrays.stream(said.split("; "))
                            .mapToInt(part -> answers.stream()
                                    .filter(answer -> part.equals("no") ? answer.equals(part) : answer.startsWith(part))
                                    .mapToInt(answers::indexOf)
                                    .findFirst()
                                    .orElse(-1))
                            .filter(i -> i >= 0)
                            .findFirst()
                            .orElse(-1);
            now = choice < 0 ? now.notSure() : now.answer(choice);
        }
        assertThat(now.candidates())
                .extracting(CatalogueEntry::name)
                .contains(figure)
                .hasSizeLessThanOrEqualTo(8);
        assertThat(now.answers(true)).isLessThanOrEqualTo(WhatIsThat.MOST_ANSWERS);
    }
}
