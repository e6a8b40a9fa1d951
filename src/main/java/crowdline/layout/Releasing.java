package crowdline.layout;

import crowdline.measure.Units;
import java.util.List;
import java.util.Locale;

/** Finds how high an act without an engine begins: as high as it was told, or so high that it lasts, and no higher. */
final class Releasing {
    /** How often an act is flown again the same way, higher or lower. */
    private static final int MOST_AGAIN = 6;
    /** No glider begins a display higher than this above its base, metres: nobody would see it; by judgement. */
    private static final double HIGHEST_M = 3_000;
    /** About how far it sinks from figure to figure beyond what was chosen for, metres; the mean of some lists. */
    private static final double SINKS_M = 30;
    /** So much height is to be left at its lowest, metres, and no more than so much. */
    private static final double LEAST_SPARE_M = 5;

    private static final double MOST_SPARE_M = 20;
    /** In thinner air it sinks further: so much it is begun higher for a metre that is missing. */
    private static final double RAISES = 1.1;
    /** Of what it is raised by, less than this is no help. */
    private static final double HELPS = 0.1;
    /** It may be no help once, where a figure is flown that was not flown from lower. */
    private static final int MOST_IN_VAIN = 2;
    /** More figures are not named in a sentence. */
    private static final int MOST_NAMED = 4;

    private final Ground ground;
    private final List<Wish> wishes;
    private final Flights flights;
    /** The most everything is raised, metres; below 0 where its figures alone take more height than there is. */
    private final double mostM;

    Releasing(Ground ground, List<Wish> wishes) {
        this.ground = ground;
        this.wishes = wishes;
        flights = new Flights(ground, wishes);
        mostM = ground.area.baseM() + HIGHEST_M - flights.beginsM();
    }

    LaidOut laid() {
        Wish first = flights.first();
        Double toldFt = first == null ? null : first.heightFt();
        return first == null || toldFt == null ? lasting() : told(first, toldFt);
    }

    /**
     * Begun where it was told, and what does not fit below that only given a time; as high as it takes if that is more than
     * twice as high, as what was told is then how high a pass is to be flown.
     */
    private LaidOut told(Wish first, double toldFt) {
        double raise = flights.takesOff() ? Math.max(Units.mFromFt(toldFt) - ground.releasedM(0), 0) : 0;
        Flying flown = flights.best(raise, Flying.TooLow.FLOWN);
        double spare = spareM(flown, ground.floorM());
        if (spare >= 0) {
            return flown.laid();
        }
        double asMuchAgainM = Units.mFromFt(toldFt) - ground.floorM();
        if (Math.min(-spare, mostM - raise) > asMuchAgainM) {
            // Seen already: how much exactly it would take makes no difference.
            return lasting();
        }
        Raised lasts = lasting(flown, raise, ground.floorM());
        if (lasts.raiseM() - raise > asMuchAgainM) {
            return lasting();
        }
        Flying kept = flights.best(raise, Flying.TooLow.GIVEN_UP_TOGETHER);
        LaidOut laid = kept.laid();
        return kept.givenUp().isEmpty()
                ? laid
                : laid.with(tooLow(first, toldFt, lasts.raiseM() - raise, kept.givenUp()));
    }

    /** Begun as high as it takes. */
    private LaidOut lasting() {
        double raise = Math.min(SINKS_M * wishes.size(), mostM);
        Raised lasts = lasting(flights.best(raise, Flying.TooLow.FLOWN), raise, ground.area.baseM());
        if (lasts.spareM() >= 0) {
            return lasts.flown().laid();
        }
        if (lasts.raiseM() < mostM) {
            return flights.best(lasts.raiseM(), Flying.TooLow.GIVEN_UP).laid();
        }
        Flying kept = flights.best(lasts.raiseM(), Flying.TooLow.GIVEN_UP_TOGETHER);
        LaidOut laid = kept.laid();
        return kept.givenUp().isEmpty() ? laid : laid.with(tooLong(laid, -lasts.spareM(), kept.givenUp()));
    }

    /**
     * An act flown from a height.
     *
     * @param raiseM how much higher than chosen, metres
     * @param spareM how far above the least height its lowest figure comes, metres
     */
    private record Raised(Flying flown, double raiseM, double spareM) {}

    /** Whether it lasts, and is no higher than it takes; or lasts, once much was flown to find that. */
    private boolean isEnough(Raised raised) {
        boolean isLow = raised.spareM() <= MOST_SPARE_M || raised.raiseM() <= 0;
        return raised.spareM() < 0 ? raised.raiseM() >= mostM : isLow || !ground.work.isLeft(Work.Part.FLYING);
    }

    /** The same act so high that it lasts, or as nearly as that was found. */
    private Raised lasting(Flying flown, double raiseM, double leastM) {
        Raised now = new Raised(flown, raiseM, spareM(flown, leastM));
        Raised lasts = now;
        int inVain = 0;
        double low = Math.min(0, mostM);
        double enough = mostM;
        for (int i = 0; i < MOST_AGAIN && !isEnough(now); i++) {
            Raised before = now;
            low = now.spareM() < 0 ? now.raiseM() : low;
            enough = now.spareM() < 0 ? enough : now.raiseM();
            double raise = Math.max(now.raiseM() + RAISES * (spareM() - now.spareM()), Math.min(0, mostM));
            if (raise < low || raise > enough) {
                // Some figure may be flown from one height and not from another.
                raise = enough < mostM ? (low + enough) / 2 : enough;
            }
            Flying again = flights.again(raise);
            now = new Raised(again, raise, spareM(again, leastM));
            lasts = now.spareM() >= 0 || lasts.spareM() < 0 ? now : lasts;
            double raised = now.raiseM() - before.raiseM();
            boolean helps = raised <= 0 || now.spareM() - before.spareM() >= HELPS * raised;
            inVain = now.spareM() >= 0 || helps ? 0 : inVain + 1;
            if (inVain == MOST_IN_VAIN) {
                // What comes after a landing stays as low.
                break;
            }
        }
        return lasts;
    }

    /** So much is to be spare, metres: more once much was flown, so that it lasts. */
    private double spareM() {
        return ground.work.isLeft(Work.Part.FLYING) ? LEAST_SPARE_M : 3 * MOST_SPARE_M;
    }

    private static LaidOut.Finding tooLong(LaidOut laid, double missingM, List<Wish> givenUp) {
        return new LaidOut.Finding(
                givenUp.get(0).id(),
                String.format(
                        Locale.UK,
                        "the act takes %,.0f ft more than from %,.0f ft, and no display without an engine begins higher: take"
                                + " something out; %s only given a time",
                        Shortfalls.tens(Units.ftFromM(missingM)),
                        Math.rint(Units.ftFromM(laid.entry().place().z()) / 100) * 100,
                        named(givenUp)));
    }

    private LaidOut.Finding tooLow(Wish first, double toldFt, double missingM, List<Wish> givenUp) {
        double missingFt = Shortfalls.tens(Units.ftFromM(missingM));
        return new LaidOut.Finding(
                first.id(),
                String.format(
                        Locale.UK,
                        "%s is given %,.0f ft, and the act takes %,.0f ft more: give it %,.0f ft, or take something out;"
                                + " %s only given a time",
                        first.name(),
                        toldFt,
                        missingFt,
                        toldFt + missingFt,
                        named(givenUp)));
    }

    private static String named(List<Wish> wishes) {
        List<String> names = wishes.stream().map(Wish::name).toList();
        int last = names.size() - 1;
        return last < 1
                ? names.get(0) + " is"
                : last < MOST_NAMED
                        ? String.join(", ", names.subList(0, last)) + " and " + names.get(last) + " are"
                        : names.size() + " figures are";
    }

    /** How far above the least height the lowest figure of an act comes, metres; below 0 if it comes lower. */
    private static double spareM(Flying flown, double leastM) {
        return flown.pieces().stream()
                .filter(piece -> piece.wish() != null && !piece.elements().isEmpty())
                .mapToDouble(piece -> piece.lowestM() - leastM)
                .min()
                .orElse(0);
    }
}
