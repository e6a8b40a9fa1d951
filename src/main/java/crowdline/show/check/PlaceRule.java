package crowdline.show.check;

import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.show.bounds.Quantity;
import crowdline.show.catalogue.Catalogue;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Consumer;

/** The venue lies where its time zone is used: latitude and longitude are easily exchanged, and a sign easily left out. */
final class PlaceRule implements ShowRule {
    private static final double DEG_PER_HOUR = 15;
    /** The widest zone of all keeps its clock so far from its sun, hours. */
    private static final double MOST_HOURS_OFF = 3.2;

    /** Degrees that hold every place whose time zone begins with this word; from memory, no source. */
    private record Region(String word, double south, double north, double west, double east) {
        boolean holds(double latDeg, double lonDeg) {
            boolean across = west > east;
            boolean within = across ? (lonDeg >= west || lonDeg <= east) : (lonDeg >= west && lonDeg <= east);
            return latDeg >= south && latDeg <= north && within;
        }
    }

    private static final List<Region> REGIONS = List.of(
            new Region("Europe", 34, 82, -32, 67),
            new Region("Africa", -36, 38, -26, 64),
            new Region("America", -56, 84, -180, -10),
            new Region("Asia", -12, 82, 25, -168),
            new Region("Australia", -56, -8, 95, 161),
            new Region("Antarctica", -90, -50, -180, 180),
            new Region("Arctic", 66, 90, -180, 180));

    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        Venue venue = show.venue();
        Double lat = venue.latDeg();
        Double lon = venue.lonDeg();
        if (lat == null || lon == null || fits(show, lat, lon)) {
            return;
        }
        String why = "the venue at latDeg " + Quantity.written(lat) + " and lonDeg " + Quantity.written(lon)
                + " is not where the clock of " + venue.timeZone() + " is kept";
        String slip = Math.abs(lon) <= 90 && fits(show, lon, lat)
                ? "; were the two swapped?"
                : fits(show, lat, -lon)
                        ? "; is it lonDeg " + Quantity.written(-lon) + "? East is positive, west negative"
                        : fits(show, -lat, lon)
                                ? "; is it latDeg " + Quantity.written(-lat) + "? North is positive, south negative"
                                : "; check all three";
        findings.accept(new Finding(Severity.WARNING, "venue-elsewhere", why + slip, "venue.latDeg"));
    }

    private static boolean fits(Show show, double lat, double lon) {
        String zone = show.venue().timeZone().getId();
        boolean inRegion = REGIONS.stream()
                .filter(region -> zone.startsWith(region.word() + "/"))
                .allMatch(region -> region.holds(lat, lon));
        boolean anywhere = !zone.contains("/") || zone.startsWith("Etc/");
        double zoneHours = show.venue()
                        .timeZone()
                        .getRules()
                        .getStandardOffset(
                                show.date().atStartOfDay(ZoneOffset.UTC).toInstant())
                        .getTotalSeconds()
                / 3600.0;
        double off = Math.IEEEremainder(lon / DEG_PER_HOUR - zoneHours, 24);
        return inRegion && (anywhere || Math.abs(off) <= MOST_HOURS_OFF);
    }
}
