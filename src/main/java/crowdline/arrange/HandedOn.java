package crowdline.arrange;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.layout.LaidOut;
import crowdline.layout.Piece;
import crowdline.layout.Wish;
import crowdline.measure.Units;
import crowdline.show.figure.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

    /** Where it is tried from what speed a figure can be flown, metres; and by how much more each time, knots. */
    private static final double TRIED_AT_M = 200;

    private static final double MORE_KT = 5;

    /** A figure may begin so much slower than it is told, as a share. */
    private static final double HARDLY_LESS = 0.96;

    /** What each is in the catalogue, by their ids. */
    private final Map<String, String> names;

    private final FigureTrial trial;
    private final List<LaidOut.Finding> findings;

    /** @param findings what is found is added to them */
    HandedOn(Map<String, String> names, FigureTrial trial, List<LaidOut.Finding> findings) {
        this.names = names;
        this.trial = trial;
        this.findings = findings;
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
                Double kt = fastEnough(leads, next);
                Wish led = begun(next, null, kt);
                all.set(i + 1, led);
                all.set(i, diving(leads.beginning(leads.heightFt(), kt)).leadingTo(led));
            } else if (isLevel(leads) && next.elements().get(0) instanceof Element.Turn) {
                all.set(i + 1, begun(next, leads.heightFt(), null));
            }
        }
        return all;
    }

    /** How fast a dive is to be in the end, knots: as it is told, or as fast as what it leads to takes at least, which is said. */
    private @Nullable Double fastEnough(Wish dive, Wish next) {
        Double told = dive.kt();
        if (told == null || next.kt() != null || next.own() || isFlown(next, told)) {
            return told;
        }
        double mostKt = trial.airframe().neverExceedKt();
        for (double kt = MORE_KT * Math.ceil((told + 1) / MORE_KT); kt < mostKt; kt += MORE_KT) {
            if (isFlown(next, kt)) {
                findings.add(new LaidOut.Finding(
                        dive.id(),
                        String.format(
                                Locale.UK,
                                "%s is told %.0f kt, and %s after it takes %.0f kt: it dives on to that",
                                dive.name(),
                                told,
                                next.name(),
                                kt)));
                return kt;
            }
        }
        return told;
    }

    /** Whether it is flown as people expect to see it from this speed, or hardly less. */
    private boolean isFlown(Wish wish, double kt) {
        FlightState from = FlightState.along(new Vec(0, 0, TRIED_AT_M), HARDLY_LESS * Units.mpsFromKt(kt), true);
        return trial.drawnIfItCan(wish.elements(), from).isWell();
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
