package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What of one figure that is flown could not be had, each a sentence with the smallest change that would do. */
final class Shortfalls {
    /** How far off a told speed is not worth a word, knots and as a share of it: what nobody on the ground sees; tuned. */
    private static final double NEAR_KT = 5;

    private static final double NEAR_SHARE = 0.03;
    /** How far off a told height is not worth a word, feet; tuned. */
    private static final double NEAR_FT = 100;
    /** Less below the base is only rounding, metres. */
    static final double NOTICED_M = 0.5;

    private final Ground ground;
    private final Wish wish;
    private final FlightState from;
    private final FigureTrial.Outcome out;
    private final List<LaidOut.Finding> findings = new ArrayList<>();

    Shortfalls(Ground ground, Wish wish, FlightState from, FigureTrial.Outcome out) {
        this.ground = ground;
        this.wish = wish;
        this.from = from;
        this.out = out;
    }

    List<LaidOut.Finding> said() {
        closed();
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

    /** Says where a height that somebody pinned is not had on the way there. */
    private void height() {
        Double wanted = wish.heightFt();
        double has = Units.ftFromM(from.place().z());
        if (wanted != null && Math.abs(has - wanted) > Math.max(NEAR_FT, NEAR_SHARE * wanted)) {
            findings.add(new LaidOut.Finding(
                    wish.id(),
                    String.format(
                            Locale.UK,
                            "%s begins at %,.0f ft, as near as it comes to the %,.0f ft it was told; tell it about %,.0f ft,"
                                    + " or leave its height open",
                            wish.name(),
                            tens(has),
                            wanted,
                            tens(has))));
        }
    }

    /** Says where a speed that somebody pinned is not had on the way there. */
    private void speed() {
        Double wanted = wish.kt();
        double has = Units.ktFromMps(from.speedMps());
        if (wanted != null && Math.abs(has - wanted) > Math.max(NEAR_KT, NEAR_SHARE * wanted)) {
            findings.add(new LaidOut.Finding(
                    wish.id(),
                    String.format(
                            Locale.UK,
                            "%s begins at %.0f kt, as near as it comes to the %.0f kt it was told; tell it about %.0f kt,"
                                    + " or leave its speed open",
                            wish.name(),
                            has,
                            wanted,
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
        // A base that nobody gave is only a height to draw at: a pilot may well have told less.
        boolean given = ground.area.baseGiven();
        double low = (given ? ground.area.baseM() : 0) - out.box().lowestM();
        Double told = wish.heightFt();
        if (low > NOTICED_M && told != null && given && out.box().lowestM() > Units.mFromFt(told) - Fit.LEVEL_M) {
            findings.add(new LaidOut.Finding(
                    wish.id(),
                    String.format(
                            Locale.UK,
                            "%s is told %,.0f ft, and the base is %,.0f ft; tell it more, or give a lower base",
                            wish.name(),
                            told,
                            Units.ftFromM(ground.area.baseM()))));
        } else if (low > NOTICED_M && !ground.joining.sinks()) {
            String below = given ? "base" : "ground";
            finding("%s comes %.0f ft below the " + below + "; it needs %.0f ft more before it", low, low);
        }
        if (ceiling != null && out.box().highestM() > ceiling + 1) {
            finding(
                    "%s tops %.0f ft above the ceiling; it needs a ceiling %.0f ft higher, or to be left out",
                    out.box().highestM() - ceiling, out.box().highestM() - ceiling);
        }
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
