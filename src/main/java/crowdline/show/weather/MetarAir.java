package crowdline.show.weather;

import crowdline.show.DayAir;
import java.util.List;

/**
 * The air of a day with what a METAR says of it put in.
 *
 * @param air the new air; what the METAR does not say is as it was
 * @param read what was taken from it, in words, such as "Wind from 240° at 8 kt"
 * @param notes what was not used, is missing or was taken with a grain of salt, a sentence each
 */
public record MetarAir(DayAir air, List<String> read, List<String> notes) {
    public MetarAir {
        read = List.copyOf(read);
        notes = List.copyOf(notes);
    }
}
