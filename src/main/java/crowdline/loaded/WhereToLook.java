package crowdline.loaded;

import crowdline.flight.Flight;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Airframe;
import crowdline.sight.FigureSight;
import crowdline.sight.Glare;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;

/** Where the crowd looks as each figure begins, in a few words. */
final class WhereToLook {
    private WhereToLook() {}

    /** By the figures' ids; with the sun, if the act begins when its slot does. */
    static Map<String, String> of(Show show, Act act, Flight flight) {
        Airframe airframe = show.airframe(act.airframe()).orElse(null);
        if (airframe == null) {
            return Map.of();
        }
        Instant begins = show.date()
                .atTime(act.slotStart())
                .atZone(show.venue().timeZone())
                .toInstant();
        Map<String, String> where = new HashMap<>();
        for (FigureSight sight : FigureSight.of(show, airframe, flight, begins)) {
            Glare glare = sight.start().glare();
            String sun = glare != null && glare.intoSun() ? ", near the sun" : "";
            where.put(sight.figureId(), sight.start().look().words() + sun);
        }
        return Map.copyOf(where);
    }
}
