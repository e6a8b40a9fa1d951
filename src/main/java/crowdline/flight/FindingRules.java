package crowdline.flight;

import crowdline.measure.Units;
import crowdline.show.Venue;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What is worth telling about a predicted figure: what, where, by how much, what usually helps. */
final class FindingRules {
    /** Knots, feet or metres: nearer to a limit than this, the message would name the limit itself. */
    private static final double ROUNDING = 0.5;
    /** The same for loads, which are told to a tenth, g. */
    private static final double ROUNDING_G = 0.05;
    /** How far short of the load asked for counts, g: less is rounding. */
    private static final double SHORT_G = 0.15;
    /** How far over the display line towards the crowd counts, m: less is the prediction's own roughness. */
    private static final double OVER_LINE_M = 10;

    private final Body body;
    private final Venue.Limits limits;
    private final @Nullable Double cloudBaseFt;

    FindingRules(Body body, Venue.Limits limits, @Nullable Double cloudBaseFt) {
        this.body = body;
        this.limits = limits;
        this.cloudBaseFt = cloudBaseFt;
    }

    FlightFinding cannotFly(String figureId, String name, String why) {
        return FindingKind.CANNOT_BE_FLOWN.about(
                figureId,
                name + " " + why + "; what follows is predicted as if it had been left out after that time."
                        + " More speed at its start usually helps");
    }

    List<FlightFinding> check(FigureFlight f, Extremes e, double minEntryKt) {
        List<FlightFinding> found = new ArrayList<>();
        speeds(f, minEntryKt, found);
        if (f.completed()) {
            loads(f, e, found);
            heights(f, found);
            area(f, e, found);
        }
        return found;
    }

    private void speeds(FigureFlight f, double minEntryKt, List<FlightFinding> found) {
        double entryKt = Units.ktFromMps(f.entryMps());
        if (entryKt < minEntryKt - ROUNDING) {
            add(
                    found,
                    FindingKind.SLOW_TO_BEGIN,
                    f,
                    "begins at %.0f kt; it usually needs %.0f kt. A line to gain speed before it usually helps",
                    entryKt,
                    minEntryKt);
        }
        double greatestKt = Units.ktFromMps(f.greatestMps());
        double neverExceedKt = Units.ktFromMps(body.neverExceedMps());
        if (greatestKt > neverExceedKt + ROUNDING) {
            add(
                    found,
                    FindingKind.OVER_NEVER_EXCEED,
                    f,
                    "reaches %.0f kt; the never-exceed speed given is %.0f kt. A shorter or shallower line down usually"
                            + " helps",
                    greatestKt,
                    neverExceedKt);
        }
    }

    private void loads(FigureFlight f, Extremes e, List<FlightFinding> found) {
        if (e.shortG > SHORT_G) {
            add(
                    found,
                    FindingKind.WOULD_STALL,
                    f,
                    "asks for %.1f g at %.0f kt, where the wing gives %.1f g; it is flown at that. More speed or a"
                            + " gentler pull usually helps",
                    e.shortAskedG,
                    Units.ktFromMps(e.shortMps),
                    e.shortGaveG);
        }
        if (f.greatestG() > body.limitPositiveG() + ROUNDING_G) {
            add(
                    found,
                    FindingKind.OVER_LOAD_LIMIT,
                    f,
                    "feels %+.1f g; the limit given is %+.1f g. A wider pull or less speed usually helps",
                    f.greatestG(),
                    body.limitPositiveG());
        }
        if (f.leastG() < body.limitNegativeG() - ROUNDING_G) {
            add(
                    found,
                    FindingKind.OVER_LOAD_LIMIT,
                    f,
                    "feels %+.1f g; the limit given is %+.1f g. A wider push or less speed usually helps",
                    f.leastG(),
                    body.limitNegativeG());
        }
    }

    private void heights(FigureFlight f, List<FlightFinding> found) {
        double lowestFt = Units.ftFromM(f.lowestM());
        double highestFt = Units.ftFromM(f.highestM());
        Double base = limits.baseFt();
        Double ceiling = limits.ceilingFt();
        if (lowestFt < -ROUNDING) {
            add(
                    found,
                    FindingKind.BELOW_GROUND,
                    f,
                    "comes to %.0f ft, below the ground. More height before it usually helps",
                    lowestFt);
        } else if (base != null && lowestFt < base - ROUNDING) {
            add(
                    found,
                    FindingKind.BELOW_BASE,
                    f,
                    "comes down to %.0f ft, %.0f ft below the base of %.0f ft that was given. More height before it"
                            + " usually helps",
                    Math.max(lowestFt, 0),
                    base - lowestFt,
                    base);
        }
        if (ceiling != null && highestFt > ceiling + ROUNDING) {
            add(
                    found,
                    FindingKind.ABOVE_CEILING,
                    f,
                    "climbs to %.0f ft, %.0f ft above the %.0f ft that was given. A lower start usually helps",
                    highestFt,
                    highestFt - ceiling,
                    ceiling);
        }
        Double cloud = cloudBaseFt;
        if (cloud != null && highestFt > cloud + ROUNDING) {
            add(
                    found,
                    FindingKind.IN_CLOUD,
                    f,
                    "tops at %,.0f ft; the cloud base of the day is %,.0f ft. A variant agreed for this base usually"
                            + " helps",
                    highestFt,
                    cloud);
        }
    }

    private void area(FigureFlight f, Extremes e, List<FlightFinding> found) {
        Double half = limits.halfLengthM();
        Double depth = limits.depthM();
        boolean right = e.greatestAlongM > -e.leastAlongM;
        double farAlongM = right ? e.greatestAlongM : -e.leastAlongM;
        if (half != null && farAlongM > half + ROUNDING) {
            add(
                    found,
                    FindingKind.LEAVES_DISPLAY_AREA,
                    f,
                    "goes %.0f m to the %s, %.0f m beyond the display area given. Turning round earlier usually helps",
                    farAlongM,
                    right ? "right" : "left",
                    farAlongM - half);
        }
        if (depth != null && e.farthestM > depth + ROUNDING) {
            add(
                    found,
                    FindingKind.LEAVES_DISPLAY_AREA,
                    f,
                    "goes %.0f m beyond the display line, %.0f m further than the area given. A tighter turn usually"
                            + " helps",
                    e.farthestM,
                    e.farthestM - depth);
        }
        if (e.nearestM < -OVER_LINE_M) {
            add(
                    found,
                    FindingKind.CROSSES_DISPLAY_LINE,
                    f,
                    "comes %.0f m over the display line towards the crowd. Turning away from the crowd usually helps",
                    -e.nearestM);
        }
    }

    private static void add(
            List<FlightFinding> found, FindingKind kind, FigureFlight f, String what, Object... values) {
        found.add(kind.about(f.figureId(), f.name() + " " + String.format(Locale.UK, what, values)));
    }
}
