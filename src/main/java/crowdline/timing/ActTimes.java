package crowdline.timing;

import crowdline.flight.moment.FigureMoments;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The times of an act's figures in the order flown. Between the end of one figure and the start of the next there may be
 * time that belongs to neither; starts never go back.
 *
 * @param actId which act
 * @param variant which variant of it
 * @param figures in the order flown
 */
public record ActTimes(String actId, String variant, List<FigureTime> figures) {
    public ActTimes {
        figures = List.copyOf(figures);
        for (int i = 1; i < figures.size(); i++) {
            if (figures.get(i).startS() < figures.get(i - 1).startS()) {
                throw new IllegalArgumentException("figure " + figures.get(i).figureId() + " starts at "
                        + figures.get(i).startS() + " s; it must not start before "
                        + figures.get(i - 1).figureId() + ", at "
                        + figures.get(i - 1).startS() + " s");
            }
        }
    }

    /** The same times with what there is to see in each figure, by the figure's id. */
    public ActTimes with(Function<String, FigureMoments> moments) {
        return new ActTimes(
                actId,
                variant,
                figures.stream().map(f -> f.with(moments.apply(f.figureId()))).toList());
    }

    /** From the start of the first figure to the end of the last, seconds; 0 if there is no figure. */
    public double totalS() {
        return figures.isEmpty()
                ? 0
                : figures.get(figures.size() - 1).endS() - figures.get(0).startS();
    }

    /** From the end of a figure to the start of the next, where that is the one named; else 0, seconds, 0 or more. */
    public double pauseS(String figureId, String nextId) {
        for (int i = 1; i < figures.size(); i++) {
            FigureTime before = figures.get(i - 1);
            if (before.figureId().equals(figureId) && figures.get(i).figureId().equals(nextId)) {
                return Math.max(0, figures.get(i).startS() - before.endS());
            }
        }
        return 0;
    }

    /**
     * The figure being flown at a time: the last that has started by then and has not ended, or empty before, between
     * and after figures. A figure holds its start and not its end.
     *
     * @param tS seconds on the act's time scale
     */
    public Optional<FigureTime> at(double tS) {
        for (int i = figures.size() - 1; i >= 0; i--) {
            FigureTime figure = figures.get(i);
            if (figure.startS() <= tS) {
                return tS < figure.endS() ? Optional.of(figure) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    /**
     * These times with one figure known to start at a given moment, as after a step by hand. That figure and all later
     * ones shift by the same amount; earlier ones stay as they were, except that none may then start after it: such are
     * drawn back to the same start.
     *
     * @param index of the figure in {@link #figures()}
     * @param startS when it started, seconds on the act's time scale
     * @throws IndexOutOfBoundsException if there is no such figure
     */
    public ActTimes from(int index, double startS) {
        double shiftS = startS - figures.get(index).startS();
        List<FigureTime> moved = new ArrayList<>(figures.size());
        for (int i = 0; i < figures.size(); i++) {
            FigureTime figure = figures.get(i);
            double newStartS = i < index ? Math.min(figure.startS(), startS) : figure.startS() + shiftS;
            moved.add(figure.startingAt(newStartS));
        }
        return new ActTimes(actId, variant, moved);
    }
}
