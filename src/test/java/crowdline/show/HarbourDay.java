package crowdline.show;

import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;

/** As small a show as there is: at no place in particular, in the air of no day, with what a test puts in. */
public final class HarbourDay {
    public static final LocalDate DATE = LocalDate.of(2027, 6, 1);
    public static final Venue VENUE = new Venue("Nowhere", 52, 0, 0, 90, 200, ZoneId.of("UTC"), Venue.Limits.NONE);

    private HarbourDay() {}

    public static Show of(List<Act> acts, Remark... remarks) {
        return new Show("Harbour Day", DATE, VENUE, DayAir.STANDARD, List.of(), List.of(), acts, List.of(remarks));
    }

    /** Ten minutes of these figures, in the one variant there is. */
    public static Act act(String id, LocalTime slot, List<Figure> figures, Remark... remarks) {
        return new Act(
                id,
                id,
                "who",
                "what",
                slot,
                10,
                null,
                figures,
                List.of(new Variant(
                        "full", null, figures.stream().map(Figure::id).toList())),
                List.of(remarks));
    }
}
