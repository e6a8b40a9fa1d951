package crowdline.arrange;

import crowdline.layout.LaidOut;
import crowdline.show.aircraft.Airframe;
import crowdline.show.figure.Asked;
import java.util.List;
import java.util.Locale;

/** What of a wish no aircraft of the kind can do, whatever it flies before: it is left open, and found. */
final class Possible {
    /** Nothing that a crowd is to see is flown higher. */
    private static final double HIGHEST_FT = 30_000;

    private final Airframe airframe;
    private final List<LaidOut.Finding> findings;

    Possible(Airframe airframe, List<LaidOut.Finding> findings) {
        this.airframe = airframe;
        this.findings = findings;
    }

    /**
     * What is asked, without a speed or a height that cannot be.
     *
     * @param id of the figure
     * @param name how it is called
     */
    Asked of(String id, String name, Asked asked) {
        Asked possible = asked;
        Double kt = asked.kt();
        if (kt != null && kt > airframe.neverExceedKt()) {
            possible = possible.withKt(null);
            found(
                    id,
                    "%s is given %,.0f kt, and nothing is flown faster than %.0f kt in this aircraft; give it less,"
                            + " or leave its speed open",
                    name,
                    kt,
                    airframe.neverExceedKt());
        }
        if (kt != null && kt < airframe.stallKt()) {
            possible = possible.withKt(null);
            found(
                    id,
                    "%s is given %,.0f kt, and below %.0f kt the wing of this aircraft does not carry it; give it"
                            + " more, or leave its speed open",
                    name,
                    kt,
                    Math.ceil(airframe.stallKt()));
        }
        Double heightFt = asked.heightFt();
        if (heightFt != null && heightFt > HIGHEST_FT) {
            possible = possible.withHeightFt(null);
            found(
                    id,
                    "%s is given %,.0f ft, and nobody sees it above %,.0f ft; give it less, or leave its height open",
                    name,
                    heightFt,
                    HIGHEST_FT);
        }
        return possible;
    }

    private void found(String id, String message, Object... values) {
        findings.add(new LaidOut.Finding(id, String.format(Locale.UK, message, values)));
    }
}
