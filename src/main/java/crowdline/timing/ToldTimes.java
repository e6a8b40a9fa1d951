package crowdline.timing;

import crowdline.show.Act;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The clock of the pilot's list: when figures of an act begin by it. What the pilot has told goes before what was predicted;
 * what was timed in passes goes before both.
 *
 * @param beginsS by the figure's id, seconds from the beginning of the act, 0 or more
 * @param order the ids of all figures of the act in the order of the list
 * @param ways the ids of what is flown between figures
 */
public record ToldTimes(Map<String, Double> beginsS, List<String> order, Set<String> ways) {
    /**
     * A way between two figures is made shorter down to this share of its predicted time before the figures about it are:
     * by judgement, no source.
     */
    private static final double SHORTEST_WAY = 0.4;
    /** A list is written in steps of five seconds; half of that is what a time in it may be off, seconds. */
    private static final double STEP_S = 2.5;

    public ToldTimes {
        beginsS = Map.copyOf(beginsS);
        order = List.copyOf(order);
        ways = Set.copyOf(ways);
    }

    /** What the list of an act told. */
    public static ToldTimes of(Act act) {
        Map<String, Double> begins = new HashMap<>();
        Set<String> ways = new HashSet<>();
        for (Figure figure : act.figures()) {
            Asked asked = figure.asked();
            if (asked != null && asked.beginsS() != null) {
                begins.put(figure.id(), asked.beginsS());
            }
            if (figure.transit()) {
                ways.add(figure.id());
            }
        }
        return new ToldTimes(begins, act.figures().stream().map(Figure::id).toList(), ways);
    }

    public boolean isEmpty() {
        return beginsS.isEmpty();
    }

    /**
     * The times of an act with those of the list in place of the predicted ones. Between two figures that the list has a time
     * for, and with nothing left out between them, all that is flown takes as long as the list says: first the ways are longer
     * or shorter; what they cannot give is taken from the figures, and what they cannot take is time between figures. Where the
     * list's times do not rise they say nothing.
     */
    public ActTimes on(ActTimes predicted) {
        if (isEmpty()) {
            return predicted;
        }
        List<FigureTime> figures = predicted.figures();
        List<FigureTime> times = new ArrayList<>();
        double laterS = 0;
        for (int i = 0; i < figures.size(); ) {
            int next = next(figures, i);
            if (next < 0) {
                times.add(figures.get(i).startingAt(figures.get(i).startS() + laterS));
                i++;
                continue;
            }
            double lastsS = lasts(figures.get(i), figures.get(next));
            double startS = figures.get(i).startS() + laterS;
            double atS = startS;
            for (FigureTime fitted : fitted(figures.subList(i, next), lastsS)) {
                times.add(fitted.startingAt(atS));
                atS += fitted.durationS();
            }
            laterS = startS + lastsS - figures.get(next).startS();
            i = next;
        }
        return new ActTimes(predicted.actId(), predicted.variant(), times);
    }

    /**
     * From the beginning of a figure to that of the next that the list has a time for.
     *
     * @param figureId the first figure
     * @param toldS by the list, seconds, above 0
     * @param predictedS as predicted, seconds, above 0
     */
    public record Stretch(String figureId, double toldS, double predictedS) {}

    /** The stretches that this says something of. */
    public List<Stretch> stretches(ActTimes predicted) {
        List<FigureTime> figures = predicted.figures();
        List<Stretch> all = new ArrayList<>();
        for (int i = 0; i < figures.size(); i++) {
            int next = next(figures, i);
            if (next > 0) {
                FigureTime first = figures.get(i);
                FigureTime last = figures.get(next);
                all.add(new Stretch(first.figureId(), lasts(first, last), last.startS() - first.startS()));
            }
        }
        return all;
    }

    private double lasts(FigureTime first, FigureTime next) {
        return beginsS.getOrDefault(next.figureId(), Double.NaN) - beginsS.getOrDefault(first.figureId(), Double.NaN);
    }

    /** The next figure that the list has a later time for, if this one has one and all between them is flown as listed; else −1. */
    private int next(List<FigureTime> figures, int from) {
        if (!beginsS.containsKey(figures.get(from).figureId())) {
            return -1;
        }
        for (int i = from + 1; i < figures.size(); i++) {
            if (order.indexOf(figures.get(i).figureId())
                    != order.indexOf(figures.get(i - 1).figureId()) + 1) {
                return -1;
            }
            if (beginsS.containsKey(figures.get(i).figureId())) {
                return lasts(figures.get(from), figures.get(i)) > 0 ? i : -1;
            }
        }
        return -1;
    }

    private List<FigureTime> fitted(List<FigureTime> stretch, double lastsS) {
        double waysS = stretch.stream()
                .filter(this::isWay)
                .mapToDouble(FigureTime::durationS)
                .sum();
        double figuresS = stretch.stream().mapToDouble(FigureTime::durationS).sum() - waysS;
        double leastS = figuresS + SHORTEST_WAY * waysS;
        double ofFigures = Math.min(1, lastsS / leastS);
        double ofWays = lastsS < leastS ? ofFigures * SHORTEST_WAY : waysS == 0 ? 1 : (lastsS - figuresS) / waysS;
        return stretch.stream()
                .map(f -> scaled(f, isWay(f) ? ofWays : ofFigures))
                .toList();
    }

    private boolean isWay(FigureTime figure) {
        return ways.contains(figure.figureId());
    }

    private static FigureTime scaled(FigureTime figure, double by) {
        if (by == 1) {
            return figure;
        }
        double durationS = figure.durationS() * by;
        double low = Math.min(figure.lowS() * by, durationS - STEP_S);
        return new FigureTime(
                figure.figureId(),
                figure.startS(),
                durationS,
                Math.max(durationS / 4, low),
                Math.max(figure.highS() * by, durationS + STEP_S),
                figure.moments());
    }
}
