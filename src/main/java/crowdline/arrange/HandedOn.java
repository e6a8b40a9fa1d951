package crowdline.arrange;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.layout.Piece;
import crowdline.layout.Wish;
import crowdline.measure.Units;
import crowdline.show.figure.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What is told of something that leads to a figure says how that figure begins: a run-in how high and how fast, a climb how
 * high, and a dive how fast. A climb is the way there, and not flown before it. A dive ends where the figure begins. A turn begins as high as a pass or a roll right before it.
 */
final class HandedOn {
    private static final String RUN_IN = "run-in";
    private static final String CLIMB = "climb";
    private static final String DIVE = "dive";
    /** What rises by less is no climb, metres; by judgement. */
    private static final double LEAST_CLIMB_M = 30;
    /** From where a dive is tried, metres; by judgement. */
    private static final double DIVES_FROM_M = 1_000;

    /** What each is in the catalogue, by their ids. */
    private final Map<String, String> names;

    private final FigureTrial trial;

    HandedOn(Map<String, String> names, FigureTrial trial) {
        this.names = names;
        this.trial = trial;
    }

    /** The wishes, each figure with what is told of what leads to it, where it has nothing of its own. */
    List<Wish> wishes(List<Wish> wishes) {
        List<Wish> all = new ArrayList<>(wishes);
        boolean isFirst = true;
        for (int i = 0; i + 1 < all.size(); i++) {
            Wish leads = all.get(i);
            Wish next = all.get(i + 1);
            isFirst &= !leads.isFlown();
            if (!next.isFlown() || next.role() != Wish.Role.FIGURE) {
                continue;
            }
            if (is(RUN_IN, leads) && isFirst) {
                all.set(i + 1, begun(next, leads.heightFt(), leads.kt()));
            } else if (is(CLIMB, leads)) {
                all.set(i + 1, begun(next, leads.heightFt(), null));
            } else if (is(DIVE, leads) && !leads.own()) {
                Wish led = begun(next, null, leads.kt());
                all.set(i + 1, led);
                all.set(i, diving(leads).leadingTo(led));
            } else if (isLevel(leads) && next.elements().get(0) instanceof Element.Turn) {
                all.set(i + 1, begun(next, leads.heightFt(), null));
            }
        }
        return all;
    }

    /** Until it is as fast as it is told; as usual where it would be faster than that before it is well in its dive. */
    private Wish diving(Wish dive) {
        Double kt = dive.kt();
        if (kt == null) {
            return dive;
        }
        double mps = Units.mpsFromKt(kt);
        List<Element> elements = dive.elements().stream()
                .map(element -> until(element, mps / trial.stallMps(0)))
                .toList();
        FlightState slower = FlightState.along(new Vec(0, 0, DIVES_FROM_M), Wish.DIVES_FROM * mps, true);
        boolean gains = trial.drawnIfItCan(elements, slower).flown();
        return dive.flying(gains ? elements : dive.elements()).beginning(dive.heightFt(), null);
    }

    private static Element until(Element element, double stalls) {
        return element instanceof Element.Line line && line.until() == Element.Until.STALLS
                ? new Element.Line(line.until(), stalls, line.middle(), line.power())
                : element;
    }

    /** The pieces laid out, a climb that only took its time flown on the way that follows it. */
    List<Piece> pieces(List<Piece> pieces) {
        List<Piece> all = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            int climbs = isTimedClimb(piece) ? climbsAt(pieces, i + 1) : -1;
            if (climbs < 0) {
                all.add(piece);
                continue;
            }
            all.addAll(pieces.subList(i + 1, climbs));
            all.add(pieces.get(climbs).as(Objects.requireNonNull(piece.wish())));
            i = climbs;
        }
        return all;
    }

    private boolean isTimedClimb(Piece piece) {
        Wish wish = piece.wish();
        return wish != null
                && is(CLIMB, wish)
                && wish.seconds() == null
                && piece.elements().isEmpty();
    }

    /** Which of the transits from here on rises most; -1 if none climbs. */
    private static int climbsAt(List<Piece> pieces, int from) {
        int most = -1;
        double mostM = LEAST_CLIMB_M;
        for (int i = from; i < pieces.size() && pieces.get(i).isTransit(); i++) {
            double risesM = pieces.get(i).to().place().z()
                    - pieces.get(i).from().place().z();
            if (risesM >= mostM) {
                most = i;
                mostM = risesM;
            }
        }
        return most;
    }

    private boolean is(String name, Wish wish) {
        return name.equals(names.get(wish.id()));
    }

    private static boolean isLevel(Wish wish) {
        return wish.isFlown()
                && wish.elements().stream().allMatch(e -> e instanceof Element.Line || e instanceof Element.Roll);
    }

    private static Wish begun(Wish wish, @Nullable Double heightFt, @Nullable Double kt) {
        return wish.beginning(wish.heightFt() == null ? heightFt : wish.heightFt(), wish.kt() == null ? kt : wish.kt());
    }
}
