package crowdline.layout;

import crowdline.flight.FigureTrial;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.catalogue.EntrySpeed;
import crowdline.show.figure.Element;
import org.jspecify.annotations.Nullable;

/**
 * A figure flown once from the middle of the display line, to see how much room it takes and which way it leaves.
 *
 * @param mps airspeed it begins at
 * @param slowestMps the least it can begin at
 * @param fastestMps the most it should begin at
 * @param toRight which way it begins
 * @param leftM how far left of its beginning it reaches, metres, 0 or below
 * @param rightM how far right, 0 or above
 * @param nearM how far towards the crowd of its beginning, 0 or below
 * @param downM how far below its beginning, 0 or below
 * @param upM how far above, 0 or above
 * @param end where it leaves the aircraft, the right way up again, beginning at nothing
 * @param seconds how long it takes until then
 * @param closes false where a loop ends further on than it began
 * @param isLow whether it comes out lower than it began though it was to come out there
 * @param lack why it cannot be flown, or null
 */
record Measured(
        double mps,
        double slowestMps,
        double fastestMps,
        boolean toRight,
        double leftM,
        double rightM,
        double nearM,
        double downM,
        double upM,
        FlightState end,
        double seconds,
        boolean closes,
        boolean isLow,
        @Nullable String lack) {
    /** A figure that comes this far towards the crowd is begun so much further away, metres. */
    private static final double NEAR_M = 2;

    private static final double MORE_KT = 5;
    private static final int MOST_STEPS = 8;
    /** Where it looks at one more speed only, what most of what needs more needs; by judgement. */
    private static final int FEW_STEPS = 4;
    /** Of these steps, what is looked at first where a figure cannot be flown at its usual speed; by judgement. */
    private static final int[] LOOKED_AT = {1, 2, 5, 8};
    /** So much lower than it began nobody sees, as a share of its height and metres. */
    private static final double UNSEEN = 0.06;

    private static final double UNSEEN_M = 5;
    /** What is too hard at its usual speed is begun more slowly, as shares of it. */
    private static final double[] SLOWER = {0.93, 0.86, 0.8};

    /** Lower than it began by so many times what it rises is far, by judgement. */
    private static final double FAR_LOW = 1.5;

    private static final double SPIN_FROM = 1.5;
    /** A glider slows down slowly. */
    private static final double SPIN_FROM_GLIDING = 1.15;

    /** As much faster than usual as this may be what rolls or only passes; by judgement. */
    private static final double FASTER_ROLL = 1.35;
    /** The same of other figures, and of what takes nothing more. */
    private static final double FASTER = 1.15;

    private static final double HARDLY_FASTER = 1.05;
    /** A pass as much slower than it is told is nothing to come round for, as a share; by judgement. */
    private static final double TOLD_PASS = 0.95;

    private static final double SHARE_OF_NEVER_EXCEED = 0.92;
    /** How steeply it turns back along the line from a few degrees off it, as a tangent, and how soon; as runs are flown. */
    private static final double GENTLE_TAN = Math.tan(Math.toRadians(40));

    private static final double BANKS_S = 1.5;
    /** Less wind along the line than this makes no difference, m/s. */
    private static final double STILL_MPS = 0.05;

    /**
     * Flies a figure at its usual speed, or the pinned one; faster where it needs that and may.
     *
     * @param heightM where it is flown
     * @param looksFurther whether it looks for the least and the most speed that does, and the least that more does
     */
    static Measured of(Wish wish, FigureTrial trial, boolean toRight, double heightM, boolean looksFurther) {
        double usual = usualMps(wish, trial, heightM);
        if (wish.kt() != null) {
            Measured told = at(usual, wish, trial, toRight, heightM);
            return wish.isPass() ? told.between(TOLD_PASS * usual, told.fastestMps()) : told;
        }
        Measured first = at(usual, wish, trial, toRight, heightM);
        if (wish.heightFt() == null && !wish.own() && first.isFarLow()) {
            return first.lacking("comes out far lower than it began");
        }
        if (first.isWell()) {
            return !looksFurther
                    ? first
                    : first.between(
                            slowest(usual, wish, trial, toRight, heightM),
                            fastest(usual, wish, trial, toRight, heightM));
        }
        double most = SHARE_OF_NEVER_EXCEED * Units.mpsFromKt(trial.airframe().neverExceedKt());
        Measured flown = first;
        int i = first.isOnlyLow() ? first.leastSteps() : 1;
        int failed = 0;
        i = looksFurther ? i : Math.max(i, FEW_STEPS);
        while (i <= MOST_STEPS && usual + i * Units.mpsFromKt(MORE_KT) <= most) {
            double mps = usual + i * Units.mpsFromKt(MORE_KT);
            if (first.isOnlyLow() && trial.climbs(usual, heightM) >= 0 && trial.climbs(mps, heightM) < 0) {
                // To begin higher takes less than to dive for more speed than the engine holds.
                break;
            }
            Measured faster = at(mps, wish, trial, toRight, heightM);
            if (looksFurther && faster.isWell() && i > failed + 1) {
                // Something slower that was passed over may do.
                i = failed + 1;
                continue;
            } else if (faster.isWell()) {
                return faster;
            } else if (flown.lack() != null) {
                flown = faster.lack() == null ? faster : flown;
            }
            failed = i;
            i = !looksFurther ? MOST_STEPS + 1 : first.isOnlyLow() ? i + 1 : next(i);
        }
        for (double share : SLOWER) {
            Measured slower =
                    flown.lack() == null || !looksFurther ? flown : at(share * usual, wish, trial, toRight, heightM);
            flown = slower.lack() == null ? slower : flown;
        }
        return flown.lack() == null ? flown : first;
    }

    /** What is missing to fly it, with what would do, which takes long to find; null if it can be flown. */
    @Nullable
    String lackInFull(Wish wish, FigureTrial trial, double heightM) {
        return wish.flown(trial, from(mps, toRight, heightM)).lack();
    }

    /** The next speed to look at: what cannot be flown takes long to find out, so some are passed over. */
    private static int next(int steps) {
        for (int looked : LOOKED_AT) {
            if (looked > steps) {
                return looked;
            }
        }
        return steps + 1;
    }

    /**
     * The same figure the other way, sooner than from nothing: what cannot be flown in still air cannot be flown the other
     * way either, and the speeds that do one way are tried first.
     */
    Measured theOtherWay(Wish wish, FigureTrial trial, boolean right, double heightM, boolean looksFurther) {
        if (lack != null && Math.abs(trial.windAlongMps()) < STILL_MPS) {
            return new Measured(
                    mps,
                    slowestMps,
                    fastestMps,
                    right,
                    -rightM,
                    -leftM,
                    nearM,
                    downM,
                    upM,
                    from(mps, right, heightM),
                    seconds,
                    closes,
                    isLow,
                    lack);
        }
        if (isWell() && wish.kt() == null && mps == usualMps(wish, trial, heightM)) {
            Measured same = at(mps, wish, trial, right, heightM);
            Measured slow = same.isWell() ? at(slowestMps, wish, trial, right, heightM) : same;
            if (slow.isWell()) {
                return same.between(slowestMps, fastestMps);
            }
        }
        return of(wish, trial, right, heightM, looksFurther);
    }

    private static double slowest(double usual, Wish wish, FigureTrial trial, boolean toRight, double heightM) {
        boolean dives = divesFirst(wish);
        double[] shares = dives
                ? new double[] {0.55, 0.6, 0.65, 0.75, 0.85}
                : wish.enters() == EntrySpeed.VERTICAL ? new double[] {0.7, 0.8, 0.9} : new double[] {0.85, 0.92};
        double comesOut = dives ? 0.83 * Units.mpsFromKt(trial.usual().loopKt()) : 0;
        for (double share : shares) {
            Measured slow = at(share * usual, wish, trial, toRight, heightM);
            if (slow.isWell() && slow.end().speedMps() >= comesOut) {
                return share * usual;
            }
        }
        return 0.97 * usual;
    }

    /** Whether it gets its speed by going down, and need not have it before; it has to come out fast enough for a loop. */
    private static boolean divesFirst(Wish wish) {
        return !wish.elements().isEmpty()
                && wish.elements().get(0) instanceof Element.Arc arc
                && arc.way() == Element.Way.PUSH
                && arc.toPathDeg() != null
                && arc.toPathDeg() < 0;
    }

    /**
     * A spin slows down by itself, and a roll or a pass is flown a good deal faster than usual rather than come round for;
     * other figures take a little more speed, and so does a turn that rolls, which is pushed half the way round.
     */
    private static double fastest(double usual, Wish wish, FigureTrial trial, boolean toRight, double heightM) {
        double most = SHARE_OF_NEVER_EXCEED * Units.mpsFromKt(trial.airframe().neverExceedKt());
        if (wish.elements().stream().anyMatch(e -> e instanceof Element.Spin)) {
            double share = trial.climbs(usual, heightM) < 0 ? SPIN_FROM_GLIDING : SPIN_FROM;
            return Math.min(share * usual, most);
        }
        boolean rollsRound =
                wish.elements().stream().anyMatch(e -> e instanceof Element.Turn turn && turn.rolls() != 0);
        if ((wish.enters() == EntrySpeed.ROLL && !rollsRound && !divesFirst(wish))
                || wish.enters() == EntrySpeed.PASS) {
            double quick = Math.min(FASTER_ROLL * usual, most);
            if (at(quick, wish, trial, toRight, heightM).isWell()) {
                return quick;
            }
        }
        double little = Math.min((wish.enters() == EntrySpeed.SLOW ? 1.1 : FASTER) * usual, most);
        return rollsRound && !at(little, wish, trial, toRight, heightM).isWell() ? HARDLY_FASTER * usual : little;
    }

    private Measured between(double slowest, double fastest) {
        return new Measured(
                mps, slowest, fastest, toRight, leftM, rightM, nearM, downM, upM, end, seconds, closes, isLow, lack);
    }

    private static double usualMps(Wish wish, FigureTrial trial, double heightM) {
        Double pinned = wish.kt();
        if (pinned != null) {
            return Units.mpsFromKt(pinned);
        }
        double stallKt = Units.ktFromMps(trial.stallMps(heightM));
        Double kt = wish.enters() == null ? null : wish.enters().kt(trial.usual(), stallKt);
        double mps = Units.mpsFromKt(kt == null ? trial.usual().passKt() : kt);
        return divesFirst(wish) ? Math.min(mps, divesFromMps(wish, trial, heightM)) : mps;
    }

    /** From what speed on it is no dive for the one it is to have in the end, m/s; infinite if it has to have none. */
    private static double divesFromMps(Wish wish, FigureTrial trial, double heightM) {
        for (Element element : wish.elements()) {
            if (element instanceof Element.Line line && line.until() == Element.Until.STALLS) {
                return Wish.DIVES_FROM * line.value() * trial.stallMps(heightM);
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private static Measured at(double mps, Wish wish, FigureTrial trial, boolean toRight, double heightM) {
        return at(mps, trial, toRight, heightM, wish.flownIfItCan(trial, from(mps, toRight, heightM)));
    }

    private static FlightState from(double mps, boolean toRight, double heightM) {
        return FlightState.along(new Vec(0, 0, heightM), mps, toRight);
    }

    private static Measured at(
            double mps, FigureTrial trial, boolean toRight, double heightM, FigureTrial.Outcome out) {
        FigureTrial.Box box = out.box();
        FlightState end =
                out.end().upsideDown() ? trial.fly(Joining.UPRIGHT, out.end()).end() : out.end();
        return new Measured(
                mps,
                0.97 * mps,
                HARDLY_FASTER * mps,
                toRight,
                box.leftM(),
                box.rightM(),
                box.nearestM(),
                box.lowestM() - heightM,
                box.highestM() - heightM,
                end,
                end.tS(),
                out.closes(),
                out.low() != null,
                out.lack());
    }

    /** Whether it is flown as people expect to see it. */
    boolean isWell() {
        return lack == null && closes && !isLow;
    }

    /** The fewest steps of more speed that can win the height it comes out low by, as speed is height. */
    private int leastSteps() {
        double wonM = mps * Units.mpsFromKt(MORE_KT) / Units.G_MPS2;
        double missingM = -downM - UNSEEN * (upM - downM) - UNSEEN_M;
        return Math.max(1, (int) Math.floor(missingM / wonM));
    }

    /** Whether it comes out lower than it began by so much more than it rises that nobody climbs for it who was not told to. */
    boolean isFarLow() {
        return isLow && -downM > FAR_LOW * upM;
    }

    private Measured lacking(String why) {
        return new Measured(
                mps,
                slowestMps,
                fastestMps,
                toRight,
                leftM,
                rightM,
                nearM,
                downM,
                upM,
                end,
                seconds,
                closes,
                isLow,
                why);
    }

    private boolean isOnlyLow() {
        return lack == null && closes && isLow;
    }

    /** Along the A-axis by 1 or by -1 for each metre of its way. */
    int way() {
        return toRight ? 1 : -1;
    }

    /** Whether it leaves the other way than it came. */
    boolean turnsRound() {
        return end.toRight() != toRight;
    }

    /** How far towards the crowd of its beginning it comes before it is along the line again, metres; below 0 if nearer. */
    double overM() {
        return overM(nearM, end);
    }

    /** The nearest a figure comes to the crowd and what leads on from it, metres beyond the line. */
    static double overM(double nearM, FlightState end) {
        double towards = Math.max(-end.direction().y(), 0);
        double v = end.speedMps();
        double radiusM = v * v / (Units.G_MPS2 * GENTLE_TAN);
        double turnsM = radiusM * (1 - Math.sqrt(1 - towards * towards)) + v * BANKS_S * towards;
        return Math.min(nearM, end.place().y() - turnsM);
    }

    /**
     * It begun somewhere.
     *
     * @param alongM on the A-axis, metres to the commentator's right
     * @param heightM above the datum
     */
    Entry begunAt(double alongM, double heightM) {
        return new Entry(alongM, overM() < -NEAR_M ? -overM() : 0, heightM, mps, slowestMps, fastestMps, toRight);
    }

    /**
     * Where it leaves the aircraft if it begins elsewhere.
     *
     * @param by how far from where it was measured, metres
     */
    FlightState leaves(Vec by) {
        return end.at(end.place().plus(by));
    }

    /** Where its middle is if it begins at a place, metres. */
    double middleM() {
        return (leftM + rightM) / 2;
    }
}
