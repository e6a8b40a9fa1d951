package crowdline.console.glossary;

import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.Term;
import crowdline.show.Venue;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;

/** Shows with nothing in them but words. */
final class Shows {
    private Shows() {}

    static Show withTerms(List<Term> terms) {
        return new Show(
                        "Day",
                        LocalDate.EPOCH,
                        new Venue("Nowhere", 0, 0, 0, 0, 1, ZoneOffset.UTC, Venue.Limits.NONE),
                        DayAir.STANDARD,
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of())
                .withGlossary(List.of(), terms);
    }
}
