package crowdline.sight.fact;

import crowdline.sight.Unsayable;
import crowdline.sight.fact.CrowdFact.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Makes the facts about one thing, each by itself: what is wrong with the number of one keeps none of the others back. */
final class FactMaking {
    private final @Nullable String figureId;
    private final List<CrowdFact> made = new ArrayList<>();
    private final List<UnmadeFact> unmade = new ArrayList<>();

    /** @param figureId what they are about, or null for the whole act */
    FactMaking(@Nullable String figureId) {
        this.figureId = figureId;
    }

    /** Makes one fact, or notes why it cannot be made; a dull one is empty. */
    FactMaking make(Kind kind, Supplier<Optional<CrowdFact>> fact) {
        try {
            fact.get().ifPresent(made::add);
        } catch (Unsayable e) {
            unmade.add(
                    new UnmadeFact(figureId, kind.measure() + " is " + e.getMessage() + ", so no fact is made of it"));
        }
        return this;
    }

    /** Notes why some facts are not even tried. */
    FactMaking leaveOut(String why) {
        unmade.add(new UnmadeFact(figureId, why));
        return this;
    }

    /** Adds the most telling first. */
    void addTo(List<CrowdFact> facts, List<UnmadeFact> without) {
        made.stream()
                .sorted(Comparator.comparingDouble(CrowdFact::telling).reversed())
                .forEach(facts::add);
        without.addAll(unmade);
    }
}
