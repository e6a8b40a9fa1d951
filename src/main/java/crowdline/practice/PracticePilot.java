package crowdline.practice;

import crowdline.arrange.Arranged;
import crowdline.arrange.Arranger;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.Spread;
import crowdline.flight.air.Air;
import crowdline.flight.body.Variation;
import crowdline.flight.leg.Sample;
import crowdline.practice.Change.Kind;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.aircraft.Airframe;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Flies acts otherwise than they are planned, for practice. Each flight is laid out and predicted like any act: what is dropped,
 * swapped or put in has its own ways between figures. What does not keep about as far from the crowd as the plan is not taken.
 */
public final class PracticePilot {
    /** So often it is tried: in the first half with all that the level has in it, and last in each half flown exactly as drawn. */
    private static final int TRIES = 48;
    /** So often the same changes are tried before others are. */
    private static final int TRIES_OF_KINDS = 8;

    private static final double HOLD_BANK_DEG = 55;
    private static final double HALF_A_CIRCLE_DEG = 180;
    private static final double FULL_POWER = 1;
    private static final long STEP = 0x9E3779B97F4A7C15L;

    private final Show show;
    private final Catalogue catalogue;

    /** @param catalogue the shipped one; the show's own figures are added */
    public PracticePilot(Show show, Catalogue catalogue) {
        this.show = show;
        this.catalogue = catalogue.with(show.figures());
    }

    /** An act as it is flown, and in what order. */
    private record Laid(Act act, Variant variant) {}

    /**
     * A flight to practise on. The same arguments give the same flight; it takes a moment.
     *
     * @param seed any number
     * @throws CannotPractise if nothing is known of the act but its times, or no such flight was found
     */
    public PracticeFlight fly(Act act, Variant variant, Level level, long seed) throws CannotPractise {
        Airframe airframe = show.aircraft(act.airframe()).orElse(null) instanceof Airframe known ? known : null;
        if (airframe == null || act.entry(variant) == null) {
            throw timed(act);
        }
        Flight plan = predictor(act, variant).predict();
        if (plan.figures().stream().noneMatch(FigureFlight::simulated)) {
            throw timed(act);
        }
        Margin margin = Margin.of(plan);
        for (int i = 0; i < TRIES; i++) {
            SplittableRandom random = new SplittableRandom(seed + STEP * (i + 1));
            double much = i % (TRIES / 2) < TRIES / 3 ? level.much() : 0;
            // What is hard to fly, a hold above all, is tried several times, or it would hardly ever come.
            SplittableRandom ofKinds = new SplittableRandom(seed - STEP * (1 + i / TRIES_OF_KINDS));
            List<Kind> kinds = level.drawn(ofKinds, 2 * i / TRIES);
            Optional<PracticeFlight> flown =
                    fly(new Laid(act, variant), airframe, plan, margin, level, seed, kinds, much, random);
            if (flown.isPresent()) {
                return flown.get();
            }
        }
        throw new CannotPractise("No flight of level " + level.number() + " was found for \"" + act.title()
                + "\": choose a lower level, or an act with more figures.");
    }

    private static CannotPractise timed(Act act) {
        return new CannotPractise("Of \"" + act.title() + "\" only times are known, so there is nothing to see:"
                + " choose an act whose flight is computed.");
    }

    private Predictor predictor(Act act, Variant variant) {
        return new Predictor(show, catalogue, act, variant);
    }

    private Optional<PracticeFlight> fly(
            Laid planned,
            Airframe airframe,
            Flight plan,
            Margin margin,
            Level level,
            long seed,
            List<Kind> kinds,
            double much,
            SplittableRandom random) {
        OtherOrder order = OtherOrder.drawn(planned.act(), planned.variant(), catalogue, kinds, random)
                .orElse(null);
        if (order == null) {
            return Optional.empty();
        }
        Variation variation = Spread.drawn(random, much);
        Laid laid = order.needsOtherWays() ? laidOut(planned, order, airframe).orElse(null) : planned;
        if (laid == null) {
            return Optional.empty();
        }
        Flight flight = predictor(laid.act(), laid.variant()).predict(variation);
        if (order.holdAfter().isPresent()) {
            Laid holding = holding(laid, flight, order.holdAfter().get()).orElse(null);
            if (holding == null) {
                return Optional.empty();
            }
            laid = holding;
            flight = predictor(laid.act(), laid.variant()).predict(variation);
        }
        if (!isFlown(flight) || !margin.isKeptBy(flight)) {
            return Optional.empty();
        }
        return new Timeline(plan, level, seed, order, margin, random).of(laid.act(), flight);
    }

    private static boolean isFlown(Flight flight) {
        return flight.figures().stream().allMatch(FigureFlight::completed);
    }

    private Optional<Laid> laidOut(Laid planned, OtherOrder order, Airframe airframe) {
        Arranged arranged = new Arranger(catalogue)
                .flown(order.figures(), airframe, show.venue().limits(), Air.of(show.air(), show.venue()));
        // What cannot be flown is only timed in a layout.
        boolean lacks = arranged.figures().stream()
                .anyMatch(f -> f.id().equals(OtherOrder.UNPLANNED_ID) && f.durationS() != null);
        if (lacks) {
            return Optional.empty();
        }
        Variant variant = planned.variant()
                .inOrder(arranged.figures().stream().map(Figure::id).toList())
                .from(null);
        return Optional.of(
                new Laid(planned.act().flown(arranged.entry(), arranged.figures(), List.of(variant)), variant));
    }

    /** The same with two circles after a figure, round the side away from the crowd; nothing where it ends steep or upside down. */
    private static Optional<Laid> holding(Laid laid, Flight flight, String afterId) {
        FigureFlight after = flight.figure(afterId).orElse(null);
        if (after == null || !after.completed()) {
            return Optional.empty();
        }
        Sample end = flight.samples().stream()
                .filter(s -> s.tS() >= after.endS() - 1e-6)
                .findFirst()
                .orElse(null);
        if (end == null || end.up().z() < 0.9 || Math.abs(end.nose().y()) > 0.2) {
            return Optional.empty();
        }
        Element.Side away = end.nose().x() > 0 ? Element.Side.LEFT : Element.Side.RIGHT;
        Element half = new Element.Turn(away, HALF_A_CIRCLE_DEG, HOLD_BANK_DEG, 0, 0, FULL_POWER);
        Figure hold = new Figure(
                OtherOrder.HOLD_ID,
                "reposition",
                "hold",
                null,
                List.of(half, half, half, half),
                null,
                null,
                null,
                List.of(),
                List.of());
        List<Figure> figures = new ArrayList<>(laid.act().figures());
        figures.add(hold);
        List<String> order = new ArrayList<>(laid.variant().order());
        order.add(order.indexOf(afterId) + 1, OtherOrder.HOLD_ID);
        Variant variant = laid.variant().inOrder(order);
        return Optional.of(new Laid(laid.act().flown(laid.act().entry(), figures, List.of(variant)), variant));
    }
}
