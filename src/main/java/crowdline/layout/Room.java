package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.measure.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** How much room the figures of an act take, and one sentence each where the area as a whole does not give it. */
final class Room {
    private final Area area;
    private final boolean sinks;
    private @Nullable Wish widest;
    private @Nullable Wish highest;
    private double reachM;
    private double topM;

    /** @param sinks whether what flies has no engine, so that it begins as high as all of its figures take */
    Room(Area area, boolean sinks) {
        this.area = area;
        this.sinks = sinks;
    }

    void takes(Wish wish, FigureTrial.Box box) {
        double reach = Math.max(-box.leftM(), box.rightM());
        if (wish.alongM() == null && (widest == null || reach > reachM)) {
            widest = wish;
            reachM = reach;
        }
        if (highest == null || box.highestM() > topM) {
            highest = wish;
            topM = box.highestM();
        }
    }

    /** Whether nothing fits between a base and a ceiling, so that no figure needs to say that it tops it. */
    static boolean isCrossed(Area area) {
        Double ceiling = area.ceilingM();
        return area.baseGiven() && ceiling != null && ceiling <= area.baseM();
    }

    List<LaidOut.Finding> said() {
        List<LaidOut.Finding> said = new ArrayList<>();
        Double ceiling = area.ceilingM();
        Wish top = highest;
        if (top != null && ceiling != null && isCrossed(area)) {
            said.add(new LaidOut.Finding(
                    top.id(),
                    String.format(
                            Locale.UK,
                            "the ceiling, %,.0f ft, is not above the base, %,.0f ft: this act needs a ceiling of %,.0f ft",
                            Units.ftFromM(ceiling),
                            Units.ftFromM(area.baseM()),
                            Shortfalls.tens(Units.ftFromM(topM))),
                    true));
        }
        if (top != null && ceiling != null && sinks && !isCrossed(area) && topM > ceiling + 1) {
            said.add(new LaidOut.Finding(
                    top.id(),
                    String.format(
                            Locale.UK,
                            "without an engine this act takes %,.0f ft, and the ceiling is %,.0f ft: it needs a ceiling that"
                                    + " high, or fewer figures",
                            Shortfalls.tens(Units.ftFromM(topM)),
                            Units.ftFromM(ceiling)),
                    true));
        }
        Wish wide = widest;
        if (wide != null && area.halfGiven() && reachM > area.halfM() + 1) {
            said.add(new LaidOut.Finding(
                    wide.id(),
                    String.format(
                            Locale.UK,
                            "%s reaches %,.0f m from the middle, and the display area ends at %,.0f m: this act needs %,.0f m"
                                    + " to each side",
                            wide.name(),
                            Shortfalls.tens(reachM),
                            area.halfM(),
                            Shortfalls.tens(reachM)),
                    true));
        }
        return said;
    }
}
