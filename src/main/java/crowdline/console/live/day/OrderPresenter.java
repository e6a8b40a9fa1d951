package crowdline.console.live.day;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Seconds;
import crowdline.console.theme.Tone;
import crowdline.live.now.DayNow;
import crowdline.loaded.ShowLookup;
import crowdline.measure.Hour;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Says the running order. */
public final class OrderPresenter {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE", Locale.UK);

    private OrderPresenter() {}

    /**
     * The running order at a moment.
     *
     * @param date of the show; an hour of another day names its day
     */
    public static OrderView of(DayNow day, LocalDate date, ShowLookup words) {
        List<OrderView.Row> rows =
                day.acts().stream().map(line -> row(line, date, words)).toList();
        return new OrderView(rows, first(day));
    }

    private static int first(DayNow day) {
        for (int i = 0; i < day.acts().size(); i++) {
            DayNow.Fate fate = day.acts().get(i).fate();
            if (fate == DayNow.Fate.FLYING || fate == DayNow.Fate.NEXT || fate == DayNow.Fate.WAITING) {
                return i;
            }
        }
        return Math.max(0, day.acts().size() - 1);
    }

    private static OrderView.Row row(DayNow.Line line, LocalDate date, ShowLookup words) {
        return new OrderView.Row(
                line.act().id(),
                state(line.fate()),
                hour(line.slot(), date),
                moved(line.laterS()),
                expected(line, date),
                Seconds.toTheMinute(line.lastsS()),
                line.act().title(),
                words.who(line.act()));
    }

    private static Mark state(DayNow.Fate fate) {
        return switch (fate) {
            case WAITING -> new Mark(Form.RING, Tone.CALM, "Waiting");
            case NEXT -> new Mark(Form.UP, Tone.CALM, "Next");
            case FLYING -> new Mark(Form.AEROPLANE, Tone.GOOD, "Flying");
            case FLOWN -> new Mark(Form.DISC, Tone.CALM, "Flown");
            case CANCELLED -> new Mark(Form.CROSS, Tone.CAUTION, "Cancelled");
        };
    }

    /** An hour, such as "14:42". */
    public static String hour(LocalDateTime at) {
        return Hour.toTheMinute(at);
    }

    private static String hour(LocalDateTime at, LocalDate date) {
        String hour = Hour.toTheMinute(at);
        return at.toLocalDate().equals(date) ? hour : DAY.format(at) + " " + hour;
    }

    /** "12 min later", or empty for an act at its time. */
    public static String moved(double laterS) {
        if (Math.abs(laterS) < 1) {
            return "";
        }
        return Seconds.minutes(Math.abs(laterS)) + (laterS > 0 ? " later" : " earlier");
    }

    private static String expected(DayNow.Line line, LocalDate date) {
        @Nullable LocalDateTime at = line.beginsAt();
        if (at == null) {
            return "";
        }
        boolean begun = line.fate() == DayNow.Fate.FLYING || line.fate() == DayNow.Fate.FLOWN;
        String hour = hour(at, date);
        return begun ? "began " + hour : hour.equals(hour(line.slot(), date)) ? "" : "expect " + hour;
    }
}
