package crowdline.show;

import crowdline.show.bounds.Most;
import crowdline.show.bounds.Quantity;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where the show is flown. What was not given is null, and nothing is made from it.
 *
 * @param name of the place
 * @param latDeg latitude of the datum, degrees north, −90 to 90; given together with {@code lonDeg} or not at all
 * @param lonDeg longitude of the datum, degrees east, −180 to 180
 * @param elevationFt elevation of the datum above mean sea level in feet
 * @param axisBearingDeg true bearing of the A-axis towards the commentator's right, 0 to 360
 * @param crowdToLineM distance from the crowd line to the display line in metres, as given by the director
 * @param timeZone time zone of the running order
 * @param crowdUnits what the crowd is told numbers in
 * @param limits what the director and the authority gave; nothing is assumed
 */
public record Venue(
        String name,
        @Nullable Double latDeg,
        @Nullable Double lonDeg,
        @Nullable Double elevationFt,
        @Nullable Double axisBearingDeg,
        @Nullable Double crowdToLineM,
        ZoneId timeZone,
        CrowdUnits crowdUnits,
        Limits limits) {

    /**
     * Limits as given for this show; null means not given, and then nothing is checked against it.
     *
     * @param baseFt lowest height for aerobatics, feet above the datum
     * @param ceilingFt greatest height, feet above the datum
     * @param halfLengthM how far left and right of the datum the display area reaches, metres
     * @param depthM how far beyond the display line it reaches, metres
     */
    public record Limits(
            @Nullable Double baseFt,
            @Nullable Double ceilingFt,
            @Nullable Double halfLengthM,
            @Nullable Double depthM) {

        public static final Limits NONE = new Limits(null, null, null, null);

        public Limits {
            if (baseFt != null) {
                Quantity.BASE_FT.must(baseFt);
            }
            if (ceilingFt != null) {
                Quantity.CEILING_FT.must(ceilingFt);
            }
            if (halfLengthM != null) {
                Quantity.HALF_LENGTH_M.must(halfLengthM);
            }
            if (depthM != null) {
                Quantity.DEPTH_M.must(depthM);
            }
        }
    }

    public Venue {
        Most.mustBeText("venue name", name);
        if ((latDeg == null) != (lonDeg == null)) {
            throw new IllegalArgumentException(
                    (latDeg == null ? "lonDeg is given and latDeg is" : "latDeg is given and lonDeg is")
                            + " not; give both or neither");
        }
        must(Quantity.LAT_DEG, latDeg);
        must(Quantity.LON_DEG, lonDeg);
        must(Quantity.ELEVATION_FT, elevationFt);
        must(Quantity.AXIS_BEARING_DEG, axisBearingDeg);
        must(Quantity.CROWD_TO_LINE_M, crowdToLineM);
    }

    private static void must(Quantity quantity, @Nullable Double value) {
        if (value != null) {
            quantity.must(value);
        }
    }

    /** Where the crowd thinks in miles. */
    public Venue(
            String name,
            @Nullable Double latDeg,
            @Nullable Double lonDeg,
            @Nullable Double elevationFt,
            @Nullable Double axisBearingDeg,
            @Nullable Double crowdToLineM,
            ZoneId timeZone,
            Limits limits) {
        this(name, latDeg, lonDeg, elevationFt, axisBearingDeg, crowdToLineM, timeZone, CrowdUnits.MILES, limits);
    }

    /** With everything given. */
    public Venue(
            String name,
            double latDeg,
            double lonDeg,
            double elevationFt,
            double axisBearingDeg,
            double crowdToLineM,
            ZoneId timeZone,
            Limits limits) {
        this(
                name,
                Double.valueOf(latDeg),
                Double.valueOf(lonDeg),
                Double.valueOf(elevationFt),
                Double.valueOf(axisBearingDeg),
                Double.valueOf(crowdToLineM),
                timeZone,
                limits);
    }

    /** The same under another name. */
    public Venue called(String other) {
        return new Venue(
                other, latDeg, lonDeg, elevationFt, axisBearingDeg, crowdToLineM, timeZone, crowdUnits, limits);
    }

    /** The same elsewhere: degrees north and east, both null if that is not known. */
    public Venue at(@Nullable Double otherLatDeg, @Nullable Double otherLonDeg) {
        return new Venue(
                name,
                otherLatDeg,
                otherLonDeg,
                elevationFt,
                axisBearingDeg,
                crowdToLineM,
                timeZone,
                crowdUnits,
                limits);
    }

    /** The same by other clocks. */
    public Venue inZone(ZoneId other) {
        return new Venue(name, latDeg, lonDeg, elevationFt, axisBearingDeg, crowdToLineM, other, crowdUnits, limits);
    }

    /** The same with a crowd that measures otherwise. */
    public Venue withCrowdUnits(CrowdUnits units) {
        return new Venue(name, latDeg, lonDeg, elevationFt, axisBearingDeg, crowdToLineM, timeZone, units, limits);
    }

    /** The keys, as in the show file, of what was not given. */
    public List<String> unknown() {
        List<String> keys = new ArrayList<>();
        if (latDeg == null) {
            keys.add(Quantity.LAT_DEG.key());
            keys.add(Quantity.LON_DEG.key());
        }
        if (elevationFt == null) {
            keys.add(Quantity.ELEVATION_FT.key());
        }
        if (axisBearingDeg == null) {
            keys.add(Quantity.AXIS_BEARING_DEG.key());
        }
        if (crowdToLineM == null) {
            keys.add(Quantity.CROWD_TO_LINE_M.key());
        }
        return List.copyOf(keys);
    }

    /**
     * Why positions cannot be placed in the display: it takes to know where it is, how high, and which way it lies. Empty if they
     * can.
     */
    public Optional<String> notPlaced() {
        List<String> missing = unknown().stream()
                .filter(key -> !key.equals(Quantity.CROWD_TO_LINE_M.key()))
                .toList();
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of("the aircraft cannot be placed without the venue's " + listed(missing) + "; add "
                        + (missing.size() == 1 ? "it" : "them") + " to the show file");
    }

    /** The keys with commas and a last "and". */
    static String listed(List<String> keys) {
        return keys.size() < 2
                ? String.join("", keys)
                : String.join(", ", keys.subList(0, keys.size() - 1)) + " and " + keys.get(keys.size() - 1);
    }
}
