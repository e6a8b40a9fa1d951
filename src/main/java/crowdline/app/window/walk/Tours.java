package crowdline.app.window.walk;

import crowdline.console.walk.Tour;
import crowdline.loaded.LoadedShow;
import java.util.List;

/** What can be walked through in a show. */
public final class Tours {
    private Tours() {}

    /** Every variant of every act that was predicted, in running order. */
    public static List<Tour> of(LoadedShow loaded) {
        return loaded.show().acts().stream()
                .flatMap(act -> act.variants().stream()
                        .flatMap(variant -> loaded.prediction(act.id(), variant.name()).stream()
                                .map(p -> new Tour(
                                        act,
                                        variant,
                                        p::flight,
                                        p.times(),
                                        p::sheet,
                                        p.learned().passes()))))
                .toList();
    }
}
