package crowdline.app.window.edit;

import crowdline.console.words.PlaceFacts;
import crowdline.loaded.LoadedShow;
import crowdline.show.Act;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.aircraft.Airframe;
import crowdline.sight.fact.CrowdFacts;
import crowdline.sight.fact.UnmadeFact;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Facts of every act and figure of a show, each from the first variant that flies it. It takes a moment. */
public final class ShowFacts {
    private ShowFacts() {}

    public static Map<RemarkPlace, PlaceFacts> of(LoadedShow loaded) {
        Map<RemarkPlace, PlaceFacts> found = new HashMap<>();
        for (Act act : loaded.show().acts()) {
            loaded.show().airframe(act.airframe()).ifPresent(airframe -> {
                for (Variant variant : act.variants()) {
                    if (!found.keySet().containsAll(places(act, variant))) {
                        add(found, loaded, act, airframe, variant);
                    }
                }
            });
        }
        return found;
    }

    private static void add(
            Map<RemarkPlace, PlaceFacts> found, LoadedShow loaded, Act act, Airframe airframe, Variant variant) {
        Show show = loaded.show();
        loaded.prediction(act.id(), variant.name()).ifPresent(prediction -> {
            CrowdFacts facts = CrowdFacts.of(show, airframe, prediction.flight());
            found.putIfAbsent(new RemarkPlace(act.id(), null), about(facts, null, variant));
            places(act, variant).forEach(place -> found.putIfAbsent(place, about(facts, place.figureId(), variant)));
        });
    }

    private static PlaceFacts about(CrowdFacts found, @Nullable String figureId, Variant variant) {
        return new PlaceFacts(
                variant.name(),
                found.facts().stream()
                        .filter(fact -> Objects.equals(fact.figureId(), figureId))
                        .toList(),
                found.unmade().stream()
                        .filter(unmade -> Objects.equals(unmade.figureId(), figureId))
                        .map(UnmadeFact::why)
                        .toList());
    }

    private static Collection<RemarkPlace> places(Act act, Variant variant) {
        return variant.order().stream()
                .filter(id -> act.figure(id).isPresent())
                .map(id -> new RemarkPlace(act.id(), id))
                .toList();
    }
}
