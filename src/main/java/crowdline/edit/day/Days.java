package crowdline.edit.day;

import crowdline.edit.Change;
import crowdline.edit.act.Edit;
import crowdline.edit.act.LaidOutActs;
import crowdline.show.CrowdUnits;
import crowdline.show.Show;
import crowdline.show.Venue;
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

    /** Calls the show otherwise. */
    public static Edit title(String title) {
        return ((Edit) show -> new Change("Rename the show", show.called(title.strip(), show.date()), "show title"))
                .refusing();
    }

    /** Puts the show on another day. */
    public static Edit date(LocalDate date) {
        return show -> Change.of("Change the date", show.called(show.title(), date));
    }

    /** Calls the place otherwise. */
    public static Edit place(String name) {
        return ((Edit) show -> {
                    Venue v = show.venue();
                    return new Change(
                            "Rename the place",
                            show.withVenue(new Venue(
                                    name.strip(),
                                    v.latDeg(),
                                    v.lonDeg(),
                                    v.elevationFt(),
                                    v.axisBearingDeg(),
                                    v.crowdToLineM(),
                                    v.timeZone(),
                                    v.crowdUnits(),
                                    v.limits())),
                            "place name");
                })
                .refusing();
    }

    /** Tells where the place is, degrees north and east; null and null if that is not known. */
    public static Edit position(@Nullable Double latDeg, @Nullable Double lonDeg) {
        return ((Edit) show -> {
                    Venue v = show.venue();
                    return Change.of(
                            "Change where the place is",
                            show.withVenue(new Venue(
                                    v.name(),
                                    latDeg,
                                    lonDeg,
                                    v.elevationFt(),
                                    v.axisBearingDeg(),
                                    v.crowdToLineM(),
                                    v.timeZone(),
                                    v.crowdUnits(),
                                    v.limits())));
                })
                .refusing();
    }

    /** Tells by which clocks the running order is. */
    public static Edit timeZone(ZoneId zone) {
        return show -> {
            Venue v = show.venue();
            return Change.of(
                    "Change the time zone",
                    show.withVenue(new Venue(
                            v.name(),
                            v.latDeg(),
                            v.lonDeg(),
                            v.elevationFt(),
                            v.axisBearingDeg(),
                            v.crowdToLineM(),
                            zone,
                            v.crowdUnits(),
                            v.limits())));
        };
    }

    /** Has what is said to the crowd measured so. */
    public static Edit units(CrowdUnits units) {
        return show -> {
            Venue v = show.venue();
            return Change.of(
                    "Change the crowd's units",
                    show.withVenue(new Venue(
                            v.name(),
                            v.latDeg(),
                            v.lonDeg(),
                            v.elevationFt(),
                            v.axisBearingDeg(),
                            v.crowdToLineM(),
                            v.timeZone(),
                            units,
                            v.limits())));
        };
    }

    /** Tells a number of the place, or that it is not known; acts are laid out anew within another limit. */
    public Edit number(VenueNumber number, @Nullable Double told) {
        return ((Edit) show -> {
                    Show with = show.withVenue(number.in(show.venue(), told));
                    return Change.of(
                            (told == null ? "Clear " : "Change ") + number.words(),
                            number.isLimit() ? acts.again(with, act -> true) : with);
                })
                .refusing();
    }

    /** Tells a number of the air of the day. */
    public static Edit air(AirNumber number, @Nullable Double told) {
        return ((Edit) show -> Change.of("Change " + number.words(), show.withAir(number.in(show.air(), told))))
                .refusing();
    }
}
