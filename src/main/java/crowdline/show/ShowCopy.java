package crowdline.show;

import crowdline.show.aircraft.Aircraft;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Remark;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The parts of a show while another is made of them. */
final class ShowCopy {
    String title;
    LocalDate date;
    Venue venue;
    DayAir air;
    List<Aircraft> airframes;
    List<Performer> performers;
    List<Act> acts;
    List<Remark> remarks;
    List<CatalogueEntry> figures;
    List<Term> terms;
    Map<String, String> sayAs;

    @Nullable
    Incident incident;

    List<Announcement> announcements;
    Gaps gaps;
    Speakers speakers;

    ShowCopy(Show show) {
        title = show.title();
        date = show.date();
        venue = show.venue();
        air = show.air();
        airframes = show.airframes();
        performers = show.performers();
        acts = show.acts();
        remarks = show.remarks();
        figures = show.figures();
        terms = show.terms();
        sayAs = show.sayAs();
        incident = show.incident();
        announcements = show.announcements();
        gaps = show.gaps();
        speakers = show.speakers();
    }

    Show made() {
        return new Show(
                title,
                date,
                venue,
                air,
                airframes,
                performers,
                acts,
                remarks,
                figures,
                terms,
                sayAs,
                incident,
                announcements,
                gaps,
                speakers);
    }
}
