package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Flies to one figure and flies it, and begins it again higher, faster or lower until it comes out as it is to. */
final class Trying {
    /** How long an act runs in to its first figure, seconds. */
    private static final double RUN_IN_S = 6;
    /** How often a figure is begun anew, higher or faster. */
    private static final int MOST_CORRECTIONS = 3;
    /** How often one that was raised is begun lower again. */
    private static final int MOST_LOWERED = 3;
    /** Of the height a figure takes: begun higher than it needs by less is near enough. */
    private static final double SPARE = 0.05;
    /** So near to a limit it counts as beyond it, as it is flown a little differently step by step, metres. */
    private static final double ROUGH_M = 0.3;

    /** A figure is begun this much further on, seconds, rather than that the aircraft comes round for it; by judgement. */
    private static final double FURTHER_S = 20;
    /** The same of one whose place was told, as a share of how far figures are spread. */
    private static final double TOLD = 0.15;
    /** What comes over the display line is begun no further out for it than this, metres. */
    private static final double MOST_OUT_M = 400;
    /** Off its middle by less than this a pass is flown past it, metres. */
    private static final double ASIDE_M = 50;
    /** Off where it leads straight on to the next by less than this a dive is flown so, metres. */
    private static final double MISSED_M = 15;
    /** The same of a pass, which goes past the middle, metres. */
    private static final double PASS_M = 100;

    /** What was begun faster than usual by more and did not come off is begun no faster than that, as a share; by judgement. */
    private static final double USUAL = 1.03;
    /** What a metre outside an area that was given is worth of a way, seconds; as what is chosen. */
    private static final double OUTSIDE_S_PER_M = 0.2;

    private static final double SHARE_OF_NEVER_EXCEED = 0.92;

    private final Ground ground;

    Trying(Ground ground) {
        this.ground = ground;
    }

    /**
     * What came of it.
     *
     * @param wanted where it was to begin in the end
     * @param start where the way to it begins
     * @param way what leads there
     * @param from where the figure begins
     * @param out the figure
     * @param lowM how far figure or way come below what they may, metres; 0 or below if they do not
     */
    record Tried(
            Entry wanted, FlightState start, List<Piece> way, FlightState from, FigureTrial.Outcome out, double lowM) {
        /** How long the way takes, seconds. */
        double waySeconds() {
            return way.stream().mapToDouble(Piece::seconds).sum();
        }
    }

    /**
     * @param before where the aircraft is; null if the act begins with this figure
     * @param first whether nothing was flown before
     */
    Tried of(Wish wish, Entry to, @Nullable FlightState before, boolean first) {
        return Objects.requireNonNull(of(wish, to, before, first, way -> true));
    }

    /**
     * The same where its first way is worth it.
     *
     * @param worth whether a way is worth that the figure is flown from its end
     * @return null if the first way is not
     */
    @Nullable
    Tried of(Wish wish, Entry to, @Nullable FlightState before, boolean first, Predicate<List<Piece>> worth) {
        Entry found = inThinnerAir(wish, to, before);
        Entry wanted = isFree(wish) && before != null ? ground.joining.fromHere(before, found) : found;
        FlightState start = before == null ? runIn(wanted) : before;
        List<Piece> way = way(wish, start, wanted, first);
        if (!worth.test(way)) {
            return null;
        }
        Tried tried = once(wish, wanted, start, way);
        int most = ground.work.isLeft(Work.Part.FLYING) ? MOST_CORRECTIONS : 1;
        for (int i = 0; i < most; i++) {
            Entry better = corrected(wish, wanted, tried);
            if (better == null) {
                break;
            }
            Tried again = once(wish, better, before, first);
            boolean isHopeless = !ground.measured(wish, to.toRight()).isWell()
                    && !tried.out().flown()
                    && !again.out().flown();
            if (isHopeless || !isBetter(wish, wanted, tried, again)) {
                break;
            }
            tried = again;
        }
        double askedM = wish.heightFt() == null ? wanted.heightM() : Units.mFromFt(wish.heightFt());
        return ground.joining.sinks() ? tried : lowered(wish, askedM, tried, before, first);
    }

    /** Whether what is begun again, as it did not come out as people expect to see it, is worth the time it takes longer. */
    private boolean isBetter(Wish wish, Entry asked, Tried tried, Tried again) {
        double longer = Estimating.worthS(again.way()) - Estimating.worthS(tried.way());
        return !tried.out().flown()
                || belowM(wish, tried) > 0
                || overM(tried) < -Fit.CLOSE_M
                || missedM(wish, asked, again) < missedM(wish, asked, tried) - MISSED_M
                || longer
                        < Weighing.unwellS(tried.out())
                                + OUTSIDE_S_PER_M * (Math.abs(outsideM(wish, tried)) - Math.abs(outsideM(wish, again)));
    }

    /** How far out of an area that was given a figure reaches, metres, above 0 to the right; 0 if it is as wide as that or was told its place. */
    private double outsideM(Wish wish, Tried tried) {
        double halfM = ground.area.halfM();
        double right = Math.max(tried.out().box().rightM() - halfM, 0);
        double left = Math.max(-tried.out().box().leftM() - halfM, 0);
        return !ground.area.halfGiven() || wish.alongM() != null || Math.min(left, right) > 0 ? 0 : right - left;
    }

    private static double overM(Tried tried) {
        return Measured.overM(tried.out().box().nearestM(), tried.out().end());
    }

    /** How far it comes below where it may, metres; 0 or below if it does not. */
    private double belowM(Wish wish, Tried tried) {
        return Math.max(leastM(wish) - tried.out().box().lowestM(), tried.lowM());
    }

    private static boolean isFree(Wish wish) {
        return wish.isAnywhere() && !wish.isPass() && wish.leadsTo() == null;
    }

    private Tried once(Wish wish, Entry wanted, @Nullable FlightState before, boolean first) {
        FlightState start = before == null ? runIn(wanted) : before;
        return once(wish, wanted, start, way(wish, start, wanted, first));
    }

    private List<Piece> way(Wish wish, FlightState start, Entry wanted, boolean first) {
        List<Piece> joined = ground.joining.from(start, reached(wish, start, wanted), first);
        return joined == null ? List.of() : joined;
    }

    private Tried once(Wish wish, Entry wanted, FlightState start, List<Piece> way) {
        FlightState there = way.isEmpty() ? start : way.get(way.size() - 1).to();
        FigureTrial.Outcome out = wish.flownIfItCan(ground.trial, there);
        return new Tried(wanted, start, way, there, out, lowM(way, out));
    }

    /** What was raised and comes out higher than it need is begun lower again, as near to what was asked as it may. */
    private Tried lowered(Wish wish, double askedM, Tried raised, @Nullable FlightState before, boolean begins) {
        Tried lowest = raised;
        for (int i = 0; i < MOST_LOWERED; i++) {
            double spare = lowest.out().box().lowestM() - leastM(wish) - Ground.MARGIN_M;
            double down = Math.min(spare, lowest.wanted().heightM() - askedM);
            double takes = lowest.from().place().z() - lowest.out().box().lowestM();
            if (!lowest.out().flown() || down <= SPARE * takes) {
                return lowest;
            }
            Tried lower = once(wish, lowest.wanted().raised(-down), before, begins);
            boolean asGood = lower.lowM() <= 0 && lower.out().box().lowestM() >= leastM(wish);
            if (!asGood
                    || !lower.out().flown()
                    || (lowest.out().isWell() && !lower.out().isWell())) {
                return lowest;
            }
            lowest = lower;
        }
        return lowest;
    }

    /** So much further on that its speed is had by then, where there is room. */
    private Entry reached(Wish wish, FlightState from, Entry wanted) {
        if (wish.alongM() != null) {
            return wanted;
        }
        boolean isFarther = isFree(wish) || wish.end() == End.ahead(wanted.toRight());
        double mostM = isFarther
                ? FURTHER_S * (from.speedMps() + wanted.mps()) / 2
                : wish.isPass() ? PASS_M : TOLD * ground.area.spreadM();
        Entry further = ground.joining.reached(from, wanted, mostM);
        boolean isOutside = Math.abs(further.alongM()) > ground.farthestM();
        return isOutside ? wanted : further;
    }

    /** The airspeeds were found at the base; a glider begins far above it, where it takes more of them for as much lift. */
    private Entry inThinnerAir(Wish wish, Entry to, @Nullable FlightState from) {
        if (!ground.joining.sinks() || wish.kt() != null) {
            return to;
        }
        double heightM = from == null ? to.heightM() : from.place().z();
        double base = ground.trial.stallMps(ground.area.baseM());
        double thinner = Math.max(1, ground.trial.stallMps(heightM) / base);
        return to.faster(Math.max(1, Math.min(thinner, mostMps() / to.mps())));
    }

    private double mostMps() {
        return SHARE_OF_NEVER_EXCEED * Units.mpsFromKt(ground.trial.airframe().neverExceedKt());
    }

    /** Where the act begins, so that it runs in to its first figure. */
    FlightState runIn(Entry to) {
        double runInM = to.alongM() - to.way() * RUN_IN_S * to.mps();
        double within = ground.area.halfGiven()
                ? Math.max(-ground.area.halfM(), Math.min(runInM, ground.area.halfM()))
                : runInM;
        boolean isPast = (to.alongM() - within) * to.way() < 0;
        double heightM = to.heightM() + lostM(to);
        return Ground.written(
                FlightState.along(new Vec(isPast ? to.alongM() : within, to.awayM(), heightM), to.mps(), to.toRight()));
    }

    /** What it runs in higher by, metres: a speed that the engine does not hold is dived for. */
    private double lostM(Entry to) {
        return Math.max(-ground.trial.climbs(to.mps(), to.heightM()), 0) * RUN_IN_S * to.mps();
    }

    /** A beginning that mends what was wrong with how a figure came out; null if it was well, or cannot be mended. */
    private @Nullable Entry corrected(Wish wish, Entry asked, Tried tried) {
        Entry to = tried.wanted();
        FlightState there = tried.from();
        FigureTrial.Outcome out = tried.out();
        boolean could = ground.measured(wish, there.toRight()).isWell();
        Entry better = to;
        if (!out.flown() || (!out.isWell() && could)) {
            boolean isFast = there.speedMps() > USUAL * to.mps();
            double faster = Math.min(Math.max(to.mps(), there.speedMps()) * 1.05, mostMps());
            better = wish.kt() != null
                    ? to
                    : isFast ? to.noFaster(USUAL) : faster > there.speedMps() * 1.01 ? to.atLeast(faster) : to;
        }
        double asideM = wish.isPass() && !tried.way().isEmpty() ? middleM(out) - middleM(wish, to) : 0;
        if (Math.abs(asideM) > ASIDE_M) {
            better = better.at(better.alongM() - asideM);
        }
        double low = belowM(wish, tried);
        if (missedM(wish, asked, tried) > MISSED_M) {
            better = leading(wish, asked, tried);
        } else if (out.flown() && low > 0 && !ground.joining.sinks()) {
            better = better.raised(low + Ground.MARGIN_M);
        }
        double outsideM = outsideM(wish, tried);
        if (outsideM != 0 && out.flown()) {
            better = better.at(better.alongM() - outsideM - Math.copySign(Joining.NEAR_M / 2, outsideM));
        }
        double over = to.awayM() - overM(tried);
        if (overM(tried) < -Fit.CLOSE_M && over > better.awayM() && over < MOST_OUT_M) {
            better = better.away(over);
        }
        return better.equals(to) ? null : better;
    }

    /** How far it ends from where it was to lead straight on to the next figure, along the line and up, metres; 0 if it leads to none. */
    private double missedM(Wish wish, Entry asked, Tried tried) {
        Wish led = wish.leadsTo();
        if (led == null || !wish.isAnywhere() || !tried.out().flown()) {
            return 0;
        }
        FlightState end = tried.out().end();
        return Math.hypot(ground.pastM(led, end) - besideM(wish, asked), aboveM(wish, led, end));
    }

    /** Begun so much earlier or later, and higher or lower, that it leads straight on to the next. */
    private Entry leading(Wish wish, Entry asked, Tried tried) {
        Wish led = Objects.requireNonNull(wish.leadsTo());
        FlightState end = tried.out().end();
        double aboveM = aboveM(wish, led, end);
        FlightState level = end.at(end.place().plus(new Vec(0, 0, -aboveM)));
        double pastM = ground.pastM(led, level) - besideM(wish, asked);
        return tried.wanted().at(tried.wanted().alongM() - pastM).raised(-aboveM);
    }

    /** What begins as high as it was told ends as high as that leaves it. */
    private double aboveM(Wish wish, Wish led, FlightState end) {
        return wish.heightFt() == null ? ground.aboveM(led, end) : 0;
    }

    /** How far from where it leads best to the next it is to begin, metres. */
    private double besideM(Wish wish, Entry asked) {
        return asked.alongM() - ground.bestM(wish, ground.measured(wish, asked.toRight()));
    }

    /** Where the middle of what was flown is, metres. */
    private static double middleM(FigureTrial.Outcome out) {
        return (out.box().leftM() + out.box().rightM()) / 2;
    }

    /** Where the middle of a figure is wanted, metres. */
    private double middleM(Wish wish, Entry to) {
        Measured measured = ground.measured(wish, to.toRight());
        return ground.bestM(wish, measured) + measured.middleM();
    }

    /** How low a figure may come, metres above the datum. */
    private double leastM(Wish wish) {
        double base = wish.heightFt() != null ? ground.floorM() : ground.area.baseM();
        return base - Shortfalls.NOTICED_M;
    }

    /** How far a figure and the way to it come below what they may, metres; a climb from below is no matter. */
    private double lowM(List<Piece> way, FigureTrial.Outcome out) {
        double lowest = out.box().lowestM();
        for (Piece piece : way) {
            if (piece.from().place().z() > ground.floorM()) {
                lowest = Math.min(lowest, piece.lowestM());
            }
        }
        return ground.floorM() + ROUGH_M - lowest;
    }
}
