package crowdline.exchange;

import crowdline.show.aircraft.Kinds;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A row of a running order, as it was understood.
 *
 * @param line where it stands in the text, from 1
 * @param title how the act is announced; empty if the row names none
 * @param start when it begins, by the clock at the venue
 * @param minutes how long it takes, above 0
 * @param performer who flies it; empty if the row does not say
 * @param aircraft what flies it, as written; empty if the row does not say
 * @param kind what kind that is
 * @param actId the act of the show that it is about, or null for a new one
 * @param taken whether it becomes an act
 * @param said what is assumed, or why it is not taken, in sentences
 */
public record ActRow(
        int line,
        String title,
        LocalTime start,
        double minutes,
        String performer,
        String aircraft,
        Kinds.Named kind,
        @Nullable String actId,
        boolean taken,
        List<String> said) {
    public ActRow {
        said = List.copyOf(said);
    }
}
