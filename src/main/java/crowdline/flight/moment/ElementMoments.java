package crowdline.flight.moment;

import crowdline.flight.ElementFlight;
import crowdline.flight.Predictor;
import crowdline.flight.body.Attitude;
import crowdline.flight.leg.Sample;
import crowdline.flight.moment.FigureMoments.Seen;
import crowdline.show.figure.Element;
import crowdline.show.figure.MomentKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What there is to see in one element because of what it is.
 *
 * @param seen in order
 * @param ownFromS from here to the element's end the nose does not tell where it flies, or is steered without being
 *     worth a word; seconds since the act began, infinite where that is never so
 */
record ElementMoments(List<Seen> seen, double ownFromS) {
    /** A line leading to a spin that is shorter than this is not seen as slowing down, seconds. */
    private static final double SLOWING_S = 1;
    /** A roll that takes longer than this to come round is seen upside down on its way, seconds. */
    private static final double LASTING_S = 2.5;
    /** A roll through this much comes round. */
    private static final double ROUND_DEG = 300;
    /** Nearer to wholly upside down than this is as good, degrees. */
    private static final double WHOLLY_DEG = 3;
    /** Steeper than this there is no upright and no upside down, degrees. */
    private static final double STEEP_DEG = 75;

    /** How a wing lies. */
    private enum Lie {
        LEVEL,
        DIPPED,
        ON_ITS_SIDE,
        UPSIDE_DOWN;

        static Lie of(Attitude attitude) {
            double bank = Math.abs(attitude.bankDeg());
            return bank < 20 ? LEVEL : bank < 60 ? DIPPED : bank < 120 ? ON_ITS_SIDE : UPSIDE_DOWN;
        }
    }

    static ElementMoments of(ElementFlight flown, List<Sample> samples) {
        Element element = flown.element();
        List<Seen> seen = new ArrayList<>();
        double ownFromS = Double.POSITIVE_INFINITY;
        if (element instanceof Element.Roll roll && roll.style() == Element.RollStyle.BARREL) {
            ownFromS = flown.startS();
            barrel(flown, samples, seen);
        } else if (element instanceof Element.Roll roll) {
            roll(roll, flown, samples, seen);
        } else if (element instanceof Element.Reversal) {
            seen.add(new Seen(MomentKind.ROLLS, flown.startS()));
            upsideDown(flown, samples, seen);
            seen.add(new Seen(MomentKind.ROLL_ENDS, flown.endS()));
        } else if (element instanceof Element.Flick) {
            seen.add(new Seen(MomentKind.FLICKS, flown.startS()));
        } else if (element instanceof Element.Spin) {
            ownFromS = flown.lastLegS();
            if (flown.lastLegS() - flown.startS() > SLOWING_S) {
                seen.add(new Seen(MomentKind.SLOWING_FOR_THE_SPIN, flown.startS()));
            }
            seen.add(new Seen(MomentKind.SPIN_BEGINS, flown.lastLegS()));
            seen.add(new Seen(MomentKind.SPIN_STOPS, flown.endS()));
        } else if (element instanceof Element.Pivot) {
            ownFromS = flown.lastLegS();
            seen.add(new Seen(MomentKind.PIVOTS, flown.lastLegS()));
        } else if (element instanceof Element.Slide) {
            ownFromS = flown.lastLegS();
            slide(flown, samples, seen);
        } else if (element instanceof Element.HoverRoll) {
            ownFromS = flown.startS();
            seen.add(new Seen(MomentKind.HANGS, flown.startS()));
        } else if (element instanceof Element.Tumble) {
            ownFromS = flown.startS();
            seen.add(new Seen(MomentKind.TUMBLES, flown.startS()));
            seen.add(new Seen(MomentKind.STOPS_TUMBLING, flown.endS()));
        } else if (element instanceof Element.Turn turn) {
            if (turn.peakPathDeg() == 0 || turn.climbs()) {
                seen.add(new Seen(MomentKind.TURN_BEGINS, flown.startS()));
                if (turn.rolls() != 0) {
                    upsideDown(flown, samples, seen);
                }
                seen.add(new Seen(MomentKind.TURN_ENDS, flown.endS()));
            }
        } else if (element instanceof Element.Reposition) {
            ownFromS = flown.startS();
            seen.add(new Seen(MomentKind.TURNS_BACK, flown.startS()));
            seen.add(new Seen(MomentKind.RUNS_IN, flown.lastLegS()));
        }
        return new ElementMoments(seen, ownFromS);
    }

    private static void barrel(ElementFlight flown, List<Sample> samples, List<Seen> seen) {
        seen.add(new Seen(MomentKind.ROLLS, flown.startS()));
        Optional<Sample> highest = FigureMoments.within(samples, flown.startS(), flown.endS()).stream()
                .max(Comparator.comparingDouble(s -> s.place().z()));
        highest.map(Sample::tS)
                .filter(t -> t > flown.startS() + Predictor.SAMPLE_S && t < flown.endS() - Predictor.SAMPLE_S)
                .ifPresent(t -> seen.add(new Seen(MomentKind.OVER_THE_TOP, t)));
        seen.add(new Seen(MomentKind.ROLL_ENDS, flown.endS()));
    }

    private static void roll(Element.Roll roll, ElementFlight flown, List<Sample> samples, List<Seen> seen) {
        boolean steep = Math.abs(flown.start().pathDeg()) > STEEP_DEG;
        if (roll.degrees() >= ROUND_DEG || steep) {
            seen.add(new Seen(MomentKind.ROLLS, flown.startS()));
            boolean hesitates = roll.style() == Element.RollStyle.HESITATION;
            if (!steep && (hesitates || (flown.endS() - flown.startS()) * 360 > LASTING_S * roll.degrees())) {
                upsideDown(flown, samples, seen);
            }
            seen.add(new Seen(MomentKind.ROLL_ENDS, flown.endS()));
            return;
        }
        part(Lie.of(flown.start()), Lie.of(flown.end())).ifPresent(kind -> seen.add(new Seen(kind, flown.startS())));
    }

    /** Each time it comes to lie on its back. */
    private static void upsideDown(ElementFlight flown, List<Sample> samples, List<Seen> seen) {
        boolean before = Lie.of(flown.start()) == Lie.UPSIDE_DOWN;
        double most = 0;
        for (Sample s : FigureMoments.within(samples, flown.startS(), flown.endS())) {
            double bank = Math.abs(s.rollDeg());
            boolean falling = bank < most || bank > 180 - WHOLLY_DEG;
            if (!before && falling && most > 120) {
                seen.add(new Seen(MomentKind.UPSIDE_DOWN, s.tS()));
                before = true;
            } else if (bank < 120) {
                before = false;
            }
            most = bank;
        }
    }

    private static Optional<MomentKind> part(Lie from, Lie to) {
        return switch (to) {
            case LEVEL ->
                from == Lie.ON_ITS_SIDE || from == Lie.UPSIDE_DOWN
                        ? Optional.of(MomentKind.ROLLS_UPRIGHT)
                        : Optional.empty();
            case DIPPED -> Optional.of(MomentKind.DIPS_A_WING);
            case ON_ITS_SIDE -> Optional.of(MomentKind.ROLLS_ONTO_ITS_SIDE);
            case UPSIDE_DOWN -> from == Lie.UPSIDE_DOWN ? Optional.empty() : Optional.of(MomentKind.ROLLS_UPSIDE_DOWN);
        };
    }

    private static void slide(ElementFlight flown, List<Sample> samples, List<Seen> seen) {
        seen.add(new Seen(MomentKind.SLIDES_BACKWARDS, flown.lastLegS()));
        FigureMoments.within(samples, flown.lastLegS(), flown.endS()).stream()
                .filter(s -> s.nose().z() < 0)
                .findFirst()
                .ifPresent(s -> seen.add(new Seen(MomentKind.NOSE_FALLS_THROUGH, s.tS())));
    }
}
