package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/** What of one figure that is flown could not be had, each a sentence with the smallest change that would do. */
final class Shortfalls {
    /** How far off a told speed is not worth a word, knots and as a share of it: what is taken for it, and nobody on the ground sees. */
    private static final double NEAR_KT = 5;

    private static final double NEAR_SPEED = 0.05;
    /** The same of a pass, whose speed nobody sees so exactly. */
    private static final double NEAR_PASS = 0.065;
    /** How far off a told height is not worth a word, feet, and low down as a share of it; tuned. */
    private static final double NEAR_FT = 100;

    private static final double NEAR_SHARE = 0.03;

    private static final double NEAR_LOW = 0.15;
    /** A climb of so many seconds is worth a word, and one of so many nobody minds; by judgement. */
    private static final double LONG_CLIMB_S = 180;

    private static final double SHORT_CLIMB_S = 60;
    /** Less below the base is only rounding, metres. */
    static final double NOTICED_M = 0.5;

    private final Ground ground;
    private final Wish wish;
    private final Trying.Tried tried;
    private final Entry wanted;
    private final FlightState from;
    private final FigureTrial.Outcome out;
    private final List<LaidOut.Finding> findings = new ArrayList<>();

    /**
     * @param tried how it was flown to and flown
     * @param out the same with what it lacks in full
     */
    Shortfalls(Ground ground, Wish wish, Trying.Tried tried, FigureTrial.Outcome out) {
        this.ground = ground;
        this.wish = wish;
        this.tried = tried;
        wanted = tried.wanted();
        from = tried.from();
        this.out = out;
    }

    List<LaidOut.Finding> said() {
        closed();
        asHigh();
        speed();
        height();
        room();
        return findings;
    }

    /** Says where a loop has not the speed to end where it began. */
    private void closed() {
        double further = Math.abs(out.end().place().x() - from.place().x());
        if (!out.closes()) {
            findings.add(new LaidOut.Finding(
                    wish.id(),
                    String.format(
                            Locale.UK,
                            "%s ends %.0f m from where it began, as it is too slow over its top to come back; begin it"
                                    + " faster than at %.0f kt, or into the wind",
                            wish.name(),
                            tens(further),
                            Units.ktFromMps(from.speedMps())),
                    true));
        }
    }

    /** Says where it comes out lower than it began, and so had to be climbed to for long; else it is only begun higher. */
    private void asHigh() {
        if (out.low() != null && climbS() > SHORT_CLIMB_S) {
            findings.add(new LaidOut.Finding(
                    wish.id(), wish.name() + " " + out.low() + "; it begins that much higher", true));
        }
    }

    /** Says where a height that somebody pinned is not the one it begins at, and why. */
    private void height() {
        Double told = wish.heightFt();
        if (told == null) {
            return;
        }
        double has = Units.ftFromM(from.place().z());
        double near = Math.max(NEAR_SHARE * told, Math.min(NEAR_FT, NEAR_LOW * told));
        boolean isFar = Math.abs(has - told) > near;
        boolean isHigher = has > told;
        boolean isRaised = wanted.heightM() > Units.mFromFt(told) && !ground.joining.sinks();
        Double ceiling = ground.area.ceilingM();
        double z = from.place().z();
        if (isHigher
                && !ground.joining.sinks()
                && ground.area.baseGiven()
                && Units.mFromFt(told) < ground.area.baseM() - NOTICED_M) {
            told("and the base is %,.0f ft: it begins at %,.0f ft, the lowest it can", told, ground.area.baseM(), z);
        } else if (isFar && isHigher && isRaised) {
            told("and comes below the " + floor() + " from there: it begins at %,.0f ft", told, z);
        } else if (isFar && !isHigher && ceiling != null && Units.mFromFt(told) > ceiling) {
            told("and the ceiling is %,.0f ft: it begins at %,.0f ft, the highest it can", told, ceiling, z);
        } else if (isFar && !isHigher && ceiling != null && wanted.heightM() < Units.mFromFt(told)) {
            told("and tops the ceiling from there: it begins at %,.0f ft", told, z);
        } else if (climbS() > LONG_CLIMB_S) {
            climb(told);
        } else if (isFar) {
            findings.add(new LaidOut.Finding(
                    wish.id(),
                    String.format(
                            Locale.UK,
                            "%s begins at %,.0f ft, as near as it gets to the %,.0f ft it was given; give it about"
                                    + " %,.0f ft, or leave its height open",
                            wish.name(),
                            tens(has),
                            told,
                            tens(has))));
        }
    }

    /** How long it climbs to where it begins, seconds; nothing where it comes down or stays as high. */
    private double climbS() {
        return from.place().z() > tried.start().place().z() + Joining.CLIMB_M ? tried.waySeconds() : 0;
    }

    /** Says where a height that somebody pinned takes minutes to climb to, and how high it is after one of them. */
    private void climb(double toldFt) {
        double beganM = tried.start().place().z();
        double lessM = beganM + (from.place().z() - beganM) * SHORT_CLIMB_S / climbS();
        findings.add(new LaidOut.Finding(
                wish.id(),
                String.format(
                        Locale.UK,
                        "%s is given %,.0f ft, and begins at %,.0f ft after about %.0f minutes of climbing; given"
                                + " about %,.0f ft it climbs for one",
                        wish.name(),
                        toldFt,
                        tens(Units.ftFromM(from.place().z())),
                        climbS() / 60,
                        Math.rint(Units.ftFromM(lessM) / 100) * 100)));
    }

    /** Says where a speed that somebody pinned is not had on the way there. */
    private void speed() {
        Double told = wish.kt();
        double has = Units.ktFromMps(from.speedMps());
        if (told != null && Math.abs(has - told) > Math.max(NEAR_KT, (wish.isPass() ? NEAR_PASS : NEAR_SPEED) * told)) {
            findings.add(new LaidOut.Finding(
                    wish.id(),
                    String.format(
                            Locale.UK,
                            "%s begins at %.0f kt, as near as it gets to the %.0f kt it was given; give it about"
                                    + " %.0f kt, or leave its speed open",
                            wish.name(),
                            has,
                            told,
                            has)));
        }
    }

    /** Says where a place that somebody pinned is none in the display area that was given. */
    private void along() {
        double left = -ground.area.halfM() - out.box().leftM();
        double right = out.box().rightM() - ground.area.halfM();
        double beyond = Math.max(left, right);
        if (wish.alongM() != null && ground.area.halfGiven() && beyond > 1) {
            findings.add(new LaidOut.Finding(
                    wish.id(),
                    String.format(
                            Locale.UK,
                            "%s reaches %.0f m beyond the %s end of the display area; it needs to be %.0f m further in",
                            wish.name(),
                            tens(beyond),
                            left > right ? "left" : "right",
                            tens(beyond))));
        }
    }

    /** Says where the room does not do. */
    private void room() {
        along();
        Double ceiling = ground.area.ceilingM();
        double low = ground.floorM() - out.box().lowestM();
        if (low > NOTICED_M && !ground.joining.sinks()) {
            finding("%s comes %.0f ft below the " + floor() + "; it needs %.0f ft more before it", low, low);
        }
        boolean isSaidOfAll = Room.isCrossed(ground.area) || ground.joining.sinks();
        if (ceiling != null && !isSaidOfAll && out.box().highestM() > ceiling + 1) {
            finding(
                    "%s tops %.0f ft above the ceiling; it needs a ceiling %.0f ft higher, or to be left out",
                    out.box().highestM() - ceiling, out.box().highestM() - ceiling);
        }
    }

    /** What is missing where it comes too low however high it begins, in a sentence that follows its name. */
    String below(double lowM) {
        return String.format(
                Locale.UK, "comes %,.0f ft below the %s from as high as it gets", tens(Units.ftFromM(lowM)), floor());
    }

    private String floor() {
        // A base that nobody gave is only a height to draw at: a pilot may well have told less.
        return ground.area.baseGiven() ? "base" : "ground";
    }

    private void told(String message, double toldFt, double... metres) {
        Object[] feet =
                DoubleStream.of(metres).mapToObj(m -> tens(Units.ftFromM(m))).toArray();
        findings.add(new LaidOut.Finding(
                wish.id(),
                String.format(Locale.UK, "%s is given %,.0f ft, ", wish.name(), toldFt)
                        + String.format(Locale.UK, message, feet)));
    }

    private void finding(String message, double firstM, double secondM) {
        findings.add(new LaidOut.Finding(
                wish.id(),
                String.format(
                        Locale.UK, message, wish.name(), tens(Units.ftFromM(firstM)), tens(Units.ftFromM(secondM)))));
    }

    static double tens(double value) {
        return Math.ceil(value / 10) * 10;
    }
}
