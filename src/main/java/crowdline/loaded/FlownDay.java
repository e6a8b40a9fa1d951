package crowdline.loaded;

import crowdline.live.debrief.Debrief;
import crowdline.sheet.day.OtherDay;
import crowdline.storage.journal.JournalReading;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A day that was flown, as its journal tells it, measured against a show.
 *
 * @param loaded the show with what was put in on that day
 */
public record FlownDay(JournalReading reading, Debrief debrief, LoadedShow loaded) {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.UK);

    /** What a journal tells, against a show as it is planned. */
    public static FlownDay of(JournalReading reading, LoadedShow planned) {
        LoadedShow ofTheDay = planned.onTheDay(reading.state().day().added());
        return new FlownDay(
                reading,
                Debrief.of(
                        ofTheDay.show(),
                        reading.state(),
                        ofTheDay.debriefSources(reading.zero(), (actId, variant) -> List.of())),
                ofTheDay);
    }

    /** The clock at the venue at a second of the session. */
    public LocalTime hour(double sessionS) {
        return loaded.hour(reading.zero(), sessionS);
    }

    /** This day, to be set beside another of the same show. */
    public OtherDay beside() {
        String name = DATE.format(reading.zero().atZone(loaded.show().venue().timeZone()));
        return new OtherDay(name, debrief, this::hour, lacks(name));
    }

    private List<String> lacks(String name) {
        List<String> lacks = new ArrayList<>();
        String title = reading.state().showTitle();
        if (title != null && !title.equals(loaded.show().title())) {
            lacks.add("On " + name + " the show was called " + title
                    + ". Acts, figures and duties are compared where the show file calls them the same.");
        }
        List<String> unknown = reading.state().runningOrder().stream()
                .filter(id -> loaded.show().act(id).isEmpty())
                .toList();
        if (!unknown.isEmpty()) {
            lacks.add("Not in this show, so not compared: " + String.join(", ", unknown) + ".");
        }
        if (debrief.runs().isEmpty()) {
            lacks.add("No act of this show was flown on " + name + ".");
        }
        if (reading.damagedLines() > 0) {
            lacks.add("Lines of that day's journal that cannot be read and are left out: " + reading.damagedLines()
                    + ".");
        }
        return lacks;
    }
}
