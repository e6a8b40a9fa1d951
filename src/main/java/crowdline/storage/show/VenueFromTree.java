package crowdline.storage.show;

import crowdline.show.CrowdUnits;
import crowdline.show.DayAir;
import crowdline.show.Venue;
import crowdline.show.WindAt;
import crowdline.show.bounds.Nearest;
import crowdline.storage.json.Fields;
import crowdline.storage.json.Quoted;
import crowdline.storage.json.Refusals;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Where a show is and the air there, from the tree of its file. */
final class VenueFromTree {
    private VenueFromTree() {}

    static Venue venue(Fields f) {
        Fields limits = f.group("limits");
        String zone = f.text("timeZone");
        Optional<ZoneId> timeZone = f.refusals().attempt(f.path() + ".timeZone", () -> zone(zone));
        Optional<Venue.Limits> given = f.refusals()
                .attempt(
                        limits.path(),
                        () -> new Venue.Limits(
                                limits.numberOrNull("baseFt"),
                                limits.numberOrNull("ceilingFt"),
                                limits.numberOrNull("halfLengthM"),
                                limits.numberOrNull("depthM")));
        return new Venue(
                f.text("name"),
                f.numberOrNull("latDeg"),
                f.numberOrNull("lonDeg"),
                f.numberOrNull("elevationFt"),
                f.numberOrNull("axisBearingDeg"),
                f.numberOrNull("crowdToLineM"),
                timeZone.orElseThrow(Refusals.Noted::new),
                f.choice("crowdUnits", ShowNames.CROWD_UNITS, CrowdUnits.MILES),
                given.orElseThrow(Refusals.Noted::new));
    }

    private static ZoneId zone(String name) {
        try {
            return ZoneId.of(name);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(
                    "there is no time zone " + Quoted.text(name)
                            + hint(Nearest.hint(name, ZoneId.getAvailableZoneIds())),
                    e);
        }
    }

    private static String hint(String near) {
        return near.isEmpty() ? "; name one such as Europe/London" : near;
    }

    static DayAir air(Fields f) {
        List<WindAt> windsAloft =
                f.list("windsAloft", at -> new WindAt(at.number("heightFt"), at.number("fromDeg"), at.number("kt")));
        return new DayAir(
                f.number("qnhHpa", DayAir.STANDARD.qnhHpa()),
                f.number("temperatureC", DayAir.STANDARD.temperatureC()),
                f.number("windFromDeg", 0),
                f.number("windKt", 0),
                windsAloft,
                f.numberOrNull("cloudBaseFt"));
    }
}
