package crowdline.flight;

import crowdline.flight.body.Body;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.NoDrive;
import crowdline.flight.leg.Extremes;
import crowdline.measure.Units;
import crowdline.show.Venue;
import crowdline.show.figure.Element;
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
    /** How far below the speed that holds a path counts, m/s: less is rounding. */
    private static final double SLOW_MPS = 1;
    /** How far from the place, height and speed it was to come to counts: less is as good as there. */
    private static final double MISS_M = 20;

    private static final double MISS_FT = 50;
    private static final double MISS_KT = 8;
    /** How far over the display line towards the crowd counts, m: less is the prediction's own roughness. */
    private static final double OVER_LINE_M = 10;

    /** A climb may begin with a dip of this much, m. */
    private static final double CLIMB_DIP_M = 3;

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

    FlightFinding lacks(String figureId, String name, String why) {
        return FindingKind.CANNOT_BE_FLOWN.about(
                figureId, name + " " + why + "; what follows is predicted as if it had been left out");
    }

    /**
     * Where a figure that was to come to a place ends, if not there.
     *
     * @param wanted the element that names the place
     */
    List<FlightFinding> place(FigureFlight f, Element wanted, FlightState end) {
        if (wanted instanceof Element.Reposition to) {
            return place(f, to.alongM(), to.heightFt(), to.kt(), end);
        }
        return wanted instanceof Element.Run to ? place(f, to.alongM(), to.heightFt(), to.kt(), end) : List.of();
    }

    /** A glider is told to stay as high as it can, so it is never too low. */
    private List<FlightFinding> place(FigureFlight f, double alongM, double heightFt, double kt, FlightState end) {
        List<String> misses = new ArrayList<>();
        double shortM = (alongM - end.place().x()) * Math.signum(end.direction().x());
        double highFt = Units.ftFromM(end.place().z()) - heightFt;
        double fastKt = Units.ktFromMps(end.speedMps()) - kt;
        if (Math.abs(shortM) > MISS_M) {
            misses.add(miss(shortM, "%.0f m short of it", "%.0f m past it"));
        }
        if (highFt > MISS_FT || (highFt < -MISS_FT && !(body.drive() instanceof NoDrive))) {
            misses.add(miss(highFt, "%.0f ft too high", "%.0f ft too low"));
        }
        if (Math.abs(fastKt) > MISS_KT) {
            misses.add(miss(fastKt, "%.0f kt too fast", "%.0f kt too slow"));
        }
        if (misses.isEmpty()) {
            return List.of();
        }
        String what = f.name() + " does not come to the place it was given: it ends " + String.join(", ", misses)
                + ". A place further on, or less of a change, usually helps";
        return List.of(FindingKind.MISSES_ITS_PLACE.about(f.figureId(), what));
    }

    private static String miss(double by, String more, String less) {
        return String.format(Locale.UK, by > 0 ? more : less, Math.abs(by));
    }

    /** Whether it only climbs to the base, upright and never lower than it begins, as after a take-off. */
    boolean climbsOut(FigureFlight f, FlightState from, FlightState to) {
        Double base = limits.baseFt();
        return base != null
                && f.upsideDownS() == 0
                && f.lowestM() > from.place().z() - CLIMB_DIP_M
                && Units.ftFromM(to.place().z()) > base - ROUNDING;
    }

    /** @param climbsOut whether it comes up from below the base, as what follows a take-off must */
    List<FlightFinding> check(FigureFlight f, Extremes e, double minEntryKt, boolean climbsOut) {
        List<FlightFinding> found = new ArrayList<>();
        speeds(f, minEntryKt, found);
        if (f.completed()) {
            loads(f, e, found);
            heights(f, climbsOut, found);
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
        if (e.shortG() > SHORT_G) {
            add(
                    found,
                    FindingKind.WOULD_STALL,
                    f,
                    "asks for %.1f g at %.0f kt, where the wing gives %.1f g; it is flown at that. More speed or a"
                            + " gentler pull usually helps",
                    e.shortAskedG(),
                    Units.ktFromMps(e.shortMps()),
                    e.shortGaveG());
        }
        if (e.slowByMps() > SLOW_MPS) {
            add(
                    found,
                    FindingKind.TOO_SLOW_TO_HOLD,
                    f,
                    "slows to %.0f kt, where the wing cannot hold it on its path; that takes %.0f kt. More speed at its"
                            + " start usually helps",
                    Units.ktFromMps(e.slowMps()),
                    Units.ktFromMps(e.slowMps() + e.slowByMps()));
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

    private void heights(FigureFlight f, boolean climbsOut, List<FlightFinding> found) {
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
        } else if (base != null && lowestFt < base - ROUNDING && !climbsOut) {
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
        boolean right = e.greatestAlongM() > -e.leastAlongM();
        double farAlongM = right ? e.greatestAlongM() : -e.leastAlongM();
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
        if (depth != null && e.farthestM() > depth + ROUNDING) {
            add(
                    found,
                    FindingKind.LEAVES_DISPLAY_AREA,
                    f,
                    "goes %.0f m beyond the display line, %.0f m further than the area given. A tighter turn usually"
                            + " helps",
                    e.farthestM(),
                    e.farthestM() - depth);
        }
        if (e.nearestM() < -OVER_LINE_M) {
            add(
                    found,
                    FindingKind.CROSSES_DISPLAY_LINE,
                    f,
                    "comes %.0f m over the display line towards the crowd. Turning away from the crowd usually helps",
                    -e.nearestM());
        }
    }

    private static void add(
            List<FlightFinding> found, FindingKind kind, FigureFlight f, String what, Object... values) {
        found.add(kind.about(f.figureId(), f.name() + " " + String.format(Locale.UK, what, values)));
    }
}
