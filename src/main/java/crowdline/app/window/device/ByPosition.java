package crowdline.app.window.device;

import crowdline.console.glossary.GlossaryHost.Belief;
import crowdline.loaded.LoadedShow;
import crowdline.running.RunningShow;
import crowdline.running.Scene;
import crowdline.show.Act;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.steer.Tracking;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Calls what the aircraft's position says of the figures of the plan by their names in the glossary. */
public final class ByPosition {
    private ByPosition() {}

    /** What the position says now; nothing without a show or a receiver. */
    public static List<Belief> of(@Nullable RunningShow running) {
        if (running == null) {
            return List.of();
        }
        Scene scene = running.scene();
        return of(
                running.loaded(),
                scene.state().actId(),
                scene.state().course().figureIds(),
                scene.tracking().guesses());
    }

    /**
     * The figures of an act by their names, the likeliest first; a figure that is flown twice once, and no ways.
     *
     * @param ids the figures in the order flown
     */
    public static List<Belief> of(
            LoadedShow loaded, @Nullable String actId, List<String> ids, List<Tracking.Guess> guesses) {
        Optional<Act> act = Optional.ofNullable(actId).flatMap(loaded.show()::act);
        Map<String, Double> chances = new LinkedHashMap<>();
        for (Tracking.Guess guess : guesses) {
            if (guess.figureIndex() >= 0 && guess.figureIndex() < ids.size()) {
                act.flatMap(a -> a.figure(ids.get(guess.figureIndex())))
                        .filter(figure -> !figure.transit())
                        .flatMap(figure -> loaded.catalogue().find(figure.figure()))
                        .map(CatalogueEntry::name)
                        .ifPresent(name -> chances.merge(name, guess.chance(), Double::sum));
            }
        }
        List<Belief> beliefs = new ArrayList<>();
        chances.forEach((name, chance) -> beliefs.add(new Belief(name, chance)));
        beliefs.sort(Comparator.comparingDouble(b -> -b.chance()));
        return List.copyOf(beliefs);
    }
}
