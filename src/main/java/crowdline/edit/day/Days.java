package crowdline.edit.day;

import crowdline.edit.Change;
import crowdline.edit.act.Edit;
import crowdline.edit.act.LaidOutActs;
import crowdline.show.CrowdUnits;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import java.time.LocalDate;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/** Edits of the day and the place of a show. */
public final class Days {
    private final LaidOutActs acts;

    public Days(Catalogue shipped) {
        acts = new LaidOutActs(shipped);
    }

    /** Renames the show. */
    public static Edit title(String title) {
        return ((Edit) show -> new Change("Rename the show", show.called(title.strip(), show.date()), "show title"))
                .refusing();
    }

    /** Moves the show to another day. */
    public static Edit date(LocalDate date) {
        return show -> Change.of("Change the date", show.called(show.title(), date));
    }

    /** Renames the place. */
    public static Edit place(String name) {
        return ((Edit) show -> new Change(
                        "Rename the place", show.withVenue(show.venue().called(name.strip())), "place name"))
                .refusing();
    }

    /** Moves the place: degrees north and east, both null if that is not known. */
    public static Edit position(@Nullable Double latDeg, @Nullable Double lonDeg) {
        return ((Edit) show -> Change.of(
                        "Change where the place is", show.withVenue(show.venue().at(latDeg, lonDeg))))
                .refusing();
    }

    /** Changes the time zone of the running order. */
    public static Edit timeZone(ZoneId zone) {
        return show ->
                Change.of("Change the time zone", show.withVenue(show.venue().inZone(zone)));
    }

    /** Changes the units that the crowd is told numbers in. */
    public static Edit units(CrowdUnits units) {
        return show -> Change.of(
                "Change the crowd's units", show.withVenue(show.venue().withCrowdUnits(units)));
    }

    /** Sets a number of the place, null if it is not known. Within another limit acts are laid out anew. */
    public Edit number(VenueNumber number, @Nullable Double told) {
        return ((Edit) show -> {
                    Show with = show.withVenue(number.in(show.venue(), told));
                    return Change.of(
                            (told == null ? "Clear " : "Change ") + number.words(),
                            number.isLimit() ? acts.again(with, act -> true) : with);
                })
                .refusing();
    }

    /** Sets a number of the air of the day. */
    public static Edit air(AirNumber number, @Nullable Double told) {
        return ((Edit) show -> Change.of("Change " + number.words(), show.withAir(number.in(show.air(), told))))
                .refusing();
    }
}
