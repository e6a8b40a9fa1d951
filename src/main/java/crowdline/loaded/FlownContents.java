package crowdline.loaded;

import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.Venue;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Figure;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The predictions of a show and of what became of it, by what a flight follows from: after an edit only what it changes is
 * flown anew, and after a step back nothing is. It may be asked from any thread.
 */
final class FlownContents {
    /** More variants than any show has, with some that were edited since; each holds its outline and its bands. */
    private static final int MOST = 400;

    /** On its own lock. */
    private final Map<Content, Prediction> known = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Content, Prediction> eldest) {
            return size() > MOST;
        }
    };

    /**
     * What the flight of a variant follows from, and where the crowd looks.
     *
     * @param act with the figures of the variant alone, and without what is only said
     */
    record Content(
            Act act,
            @Nullable Aircraft aircraft,
            Venue venue,
            DayAir air,
            LocalDate date,
            List<CatalogueEntry> catalogue) {
        private static final String UNSAID = "act";

        static Content of(Show show, Act act, Variant variant) {
            List<Figure> flown = act.inOrder(variant).stream()
                    .map(figure -> figure.withRemarks(List.of()))
                    .toList();
            Act bare = new Act(
                    act.id(),
                    UNSAID,
                    UNSAID,
                    act.airframe(),
                    act.slotStart(),
                    1,
                    act.entry(),
                    flown,
                    List.of(variant),
                    List.of());
            return new Content(
                    bare,
                    show.aircraft(act.airframe()).orElse(null),
                    show.venue(),
                    show.air(),
                    show.date(),
                    show.figures());
        }
    }

    /** What was predicted from this content, or is now. Two that ask at once may both predict. */
    Prediction of(Content content, Supplier<Prediction> predicting) {
        Prediction before = get(content);
        if (before != null) {
            return before;
        }
        Prediction made = predicting.get();
        put(content, made);
        return made;
    }

    private @Nullable Prediction get(Content content) {
        synchronized (known) {
            return known.get(content);
        }
    }

    private void put(Content content, Prediction made) {
        synchronized (known) {
            known.put(content, made);
        }
    }
}
