package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.measure.Units;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * Lays out an act. First it chooses for each figure which way and where it is flown, by estimates of what the ways
 * between them take; then it flies the best of them from end to end, with the transits that are needed. The same wishes
 * give the same act.
 */
public final class Layout {
    /** How often a glider's start is raised until the height lasts. */
    private static final int MOST_RAISES = 8;

    /** No glider is taken higher than this above its base, metres; by judgement. */
    private static final double MOST_RAISED_M = 9_000;

    /** How much of what it sinks by ways that are not the best it is raised at first, under a ceiling; tuned. */
    private static final double UNDER_CEILING = 0.85;

    private final Ground ground;

    public Layout(FigureTrial trial, Area area) {
        ground = new Ground(trial, area);
    }

    /** The act of these figures in this order. */
    public LaidOut of(List<Wish> wishes) {
        Choosing choosing = new Choosing(ground);
        List<Choosing.Choice> choices = choosing.chosen(wishes);
        boolean once = !ground.joining.sinks();
        // How far it sinks shows sooner without looking for the best ways.
        double sunk = once ? 0 : missing(flown(wishes, new Weighing(ground, choosing, false), choices, 0, false));
        double share = ground.area.ceilingM() == null ? 1 : UNDER_CEILING;
        double raise = sunk > 0 ? Math.min(share * sunk + 2, MOST_RAISED_M) : 0;
        Weighing weighing = new Weighing(ground, choosing, true);
        Flying flown = flown(wishes, weighing, choices, raise, once);
        for (int i = 0; i < MOST_RAISES && raise < MOST_RAISED_M; i++) {
            double missing = missing(flown);
            if (missing <= 0) {
                break;
            }
            raise = Math.min(raise + missing + 2, MOST_RAISED_M);
            flown = flown(wishes, weighing, choices, raise, once);
        }
        double missing = raise < MOST_RAISED_M ? 0 : missing(flown);
        if (!once && lowestM(flown) < ground.floorM()) {
            flown = flown(wishes, weighing, choices, raise, true);
        }
        LaidOut laid = flown.laid();
        return missing < 1 ? laid : laid.with(tooLong(wishes.get(0), missing));
    }

    private static LaidOut.Finding tooLong(Wish first, double missingM) {
        return new LaidOut.Finding(
                first.id(),
                String.format(
                        Locale.UK,
                        "The act sinks %,.0f ft further than an act without an engine can begin above it; take figures out",
                        Units.ftFromM(missingM)));
    }

    /** How far below the base a glider's act comes, metres. */
    private double missing(Flying flown) {
        if (!ground.joining.sinks()) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        for (Piece piece : flown.pieces()) {
            Wish wish = piece.wish();
            if (wish != null && wish.isFlown() && piece.lack() == null) {
                least = Math.min(least, piece.lowestM() - ground.area.baseM());
            }
        }
        return least < 0 ? -least : 0;
    }

    private static double lowestM(Flying flown) {
        return flown.pieces().stream()
                .filter(piece -> !piece.elements().isEmpty())
                .mapToDouble(Piece::lowestM)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private Flying flown(
            List<Wish> wishes, Weighing weighing, List<Choosing.Choice> choices, double raisedM, boolean highest) {
        Entry first = choices.stream()
                .map(Choosing.Choice::entry)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
        Flying flying = new Flying(ground, first == null ? null : first.raised(raisedM), raisedM, highest);
        for (int i = 0; i < wishes.size(); i++) {
            Entry entry = choices.get(i).entry();
            if (entry != null) {
                flying.rollUpright();
            }
            FlightState at = flying.at();
            // It is not quite where it was thought to be by now.
            Trying.Tried tried = entry == null || at == null
                    ? null
                    : weighing.best(wishes.subList(i, wishes.size()), at, flying.isTurningBack(), raisedM);
            Boolean takesOff = choices.get(i).takesOffToRight();
            if (takesOff != null) {
                flying.takeOff(wishes.get(i), takesOff);
            } else if (tried == null) {
                flying.fly(wishes.get(i), entry == null ? null : entry.raised(raisedM));
            } else {
                flying.fly(wishes.get(i), tried);
            }
        }
        return flying;
    }
}
