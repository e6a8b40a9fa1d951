package crowdline.console.prepare.day;

import crowdline.show.DayAir;
import crowdline.show.weather.Metar;
import crowdline.show.weather.MetarAir;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a pasted METAR says, as it is typed.
 *
 * @param air the air it gives, or null if it gives none
 * @param read what was read, in one line
 * @param notes what was not used or is missing
 * @param wrong why it gives no air, or empty
 */
record MetarView(@Nullable DayAir air, String read, List<String> notes, String wrong) {
    static final String HOW = "Paste the report of the aerodrome, or one nearby";

    MetarView {
        notes = List.copyOf(notes);
    }

    /** @param before the air until now; what the report does not say stays */
    static MetarView of(String text, DayAir before) {
        if (text.isBlank()) {
            return new MetarView(null, "", List.of(), HOW);
        }
        try {
            MetarAir metar = Metar.read(text, before);
            return new MetarView(metar.air(), String.join(", ", metar.read()), metar.notes(), "");
        } catch (IllegalArgumentException e) {
            return new MetarView(null, "", List.of(), String.valueOf(e.getMessage()));
        }
    }
}
