package crowdline.timing;

import crowdline.measure.EightInTen;
import java.util.ArrayList;
import java.util.List;

/**
 * The times of an act as its passes have them, on top of the prediction.
 *
 * @param times the times to use, in plan and in the air
 * @param figures what was learned of each figure, in the order flown
 * @param passes how many passes taught anything
 */
public record LearnedTimes(ActTimes times, List<LearnedFigure> figures, int passes) {
    /** Where the next came sooner than what lies between them lasts, a figure still took this share of its time; by judgement. */
    private static final double LEAST_OF_PREDICTED = 0.5;

    public LearnedTimes {
        figures = List.copyOf(figures);
    }

    /**
     * Learns from those passes of the act and variant that teach ({@link Pass#teaches()}); others may be among them and
     * are only numbered. Time between figures stays as predicted. Passes that time the same figure twice teach twice.
     *
     * @param passes in the order they were flown
     */
    public static LearnedTimes of(ActTimes predicted, List<Pass> passes) {
        List<Pass> own = ofAct(passes, predicted.actId(), predicted.variant());
        List<LearnedFigure> learned = new ArrayList<>();
        List<FigureTime> times = new ArrayList<>();
        double laterS = 0;
        for (int i = 0; i < predicted.figures().size(); i++) {
            FigureTime figure = predicted.figures().get(i);
            LearnedFigure now = learn(figure, own, figure.startS() + laterS, pauseS(predicted, i));
            learned.add(now);
            times.add(now.learned());
            laterS += now.learned().durationS() - figure.durationS();
        }
        int taught = (int) learned.stream()
                .flatMap(f -> f.runs().stream())
                .map(TimedRun::passId)
                .distinct()
                .count();
        return new LearnedTimes(new ActTimes(predicted.actId(), predicted.variant(), times), learned, taught);
    }

    /** The passes of one act and variant, in their order; their places are their numbers. */
    public static List<Pass> ofAct(List<Pass> passes, String actId, String variant) {
        return passes.stream().filter(p -> p.isOf(actId, variant)).toList();
    }

    private static double pauseS(ActTimes predicted, int i) {
        List<FigureTime> figures = predicted.figures();
        return i + 1 == figures.size()
                ? 0
                : Math.max(0, figures.get(i + 1).startS() - figures.get(i).endS());
    }

    /** How long a figure itself took: where only the next one ended it, what lies between the two was counted as part of it. */
    private static double ownS(Pass pass, Pass.TimedFigure timed, FigureTime predicted, double pauseS) {
        double durationS = timed.durationS();
        boolean toTheNext = pass.figures().stream().anyMatch(next -> next.startS() == timed.endS());
        return pauseS == 0 || !toTheNext
                ? durationS
                : Math.max(durationS - pauseS, Math.min(durationS, LEAST_OF_PREDICTED * predicted.durationS()));
    }

    private static LearnedFigure learn(FigureTime predicted, List<Pass> passes, double startS, double pauseS) {
        double logSpread = Math.log(predicted.highS() / predicted.lowS()) / (2 * EightInTen.HALF_WIDTH);
        DurationBelief belief = DurationBelief.fromPrediction(predicted.durationS(), logSpread);
        List<TimedRun> runs = new ArrayList<>();
        double errorS = 0;
        for (int i = 0; i < passes.size(); i++) {
            Pass pass = passes.get(i);
            for (Pass.TimedFigure timed : pass.figures()) {
                if (pass.teaches() && timed.figureId().equals(predicted.figureId())) {
                    double ownS = ownS(pass, timed, predicted, pauseS);
                    belief = belief.update(ownS, pass.durationErrorS());
                    errorS = Math.max(errorS, pass.durationErrorS());
                    runs.add(new TimedRun(i + 1, pass.id(), ownS, null));
                }
            }
        }
        FigureTime learned = runs.isEmpty()
                ? predicted.startingAt(startS)
                : belief.figureTime(predicted.figureId(), startS).with(predicted.moments());
        return new LearnedFigure(predicted, learned, judged(runs, errorS, predicted.durationS()));
    }

    private static List<TimedRun> judged(List<TimedRun> runs, double errorS, double predictedS) {
        double ordinary = Math.hypot(DurationBelief.LEAST_LOG_SPREAD, errorS / predictedS);
        OddOneOut rule = new OddOneOut(runs.stream().map(TimedRun::durationS).toList(), ordinary);
        return runs.stream().map(r -> TimedRun.judged(r, runs, rule)).toList();
    }
}
