package crowdline.console.passes;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.passes.PassesView.FigureLine;
import crowdline.console.passes.PassesView.PassLine;
import crowdline.console.theme.Tone;
import crowdline.timing.FigureTime;
import crowdline.timing.LearnedFigure;
import crowdline.timing.LearnedTimes;
import crowdline.timing.Pass;
import crowdline.timing.TimedRun;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** Puts passes and what was learned from them into words. */
public final class PassesPresenter {
    private final UnaryOperator<String> names;
    private final PassName passName;

    /**
     * @param names a figure's name by its id
     * @param zone of the venue
     */
    public PassesPresenter(UnaryOperator<String> names, ZoneId zone) {
        this.names = names;
        passName = new PassName(zone);
    }

    /**
     * What is shown of a variant.
     *
     * @param passes of this variant, as {@link LearnedTimes#ofAct} gives them
     */
    public PassesView view(LearnedTimes learned, List<Pass> passes) {
        List<FigureLine> figures = learned.figures().stream().map(this::line).toList();
        List<PassLine> lines = new ArrayList<>();
        for (int i = 0; i < passes.size(); i++) {
            lines.add(line(i + 1, passes.get(i), learned));
        }
        String summary = passes.isEmpty()
                ? PassesView.NONE.summary()
                : "Passes: " + learned.passes() + " of " + passes.size() + " used";
        return new PassesView(summary, figures, lines);
    }

    private FigureLine line(LearnedFigure figure) {
        FigureTime now = figure.learned();
        String predicted = whole(figure.predicted().durationS()) + " s";
        String name = names.apply(figure.figureId());
        int passes = figure.passes();
        if (passes == 0) {
            return new FigureLine(predicted, "", name + ": predicted " + predicted + ", not timed yet");
        }
        String odd = figure.odd().isEmpty() ? "" : "; unusual: " + String.join("; ", figure.odd());
        return new FigureLine(
                predicted,
                Integer.toString(passes),
                String.format(
                        Locale.UK,
                        "%s: predicted %.1f s, learned %.1f s (%.1f–%.1f s) from %d %s%s",
                        name,
                        figure.predicted().durationS(),
                        now.durationS(),
                        now.lowS(),
                        now.highS(),
                        passes,
                        passes == 1 ? "pass" : "passes",
                        odd));
    }

    private PassLine line(int number, Pass pass, LearnedTimes learned) {
        List<String> odd = new ArrayList<>();
        for (LearnedFigure figure : learned.figures()) {
            for (TimedRun run : figure.runs()) {
                if (run.passNumber() == number && run.odd() != null) {
                    odd.add(names.apply(figure.figureId()) + ", " + run.odd());
                }
            }
        }
        return new PassLine(
                pass.id(), passName.of(number, pass), pass.note(), pass.counts(), mark(pass, !odd.isEmpty()), odd);
    }

    private static Mark mark(Pass pass, boolean odd) {
        if (!pass.counts()) {
            return new Mark(Form.RING, Tone.CALM, "Ignored");
        }
        if (!pass.how().isFlown()) {
            return new Mark(Form.RING, Tone.CALM, "Walked only");
        }
        return odd
                ? new Mark(Form.DIAMOND, Tone.CAUTION, "Counts, but unusual")
                : new Mark(Form.DISC, Tone.GOOD, "Counts");
    }

    private static String whole(double seconds) {
        return String.format(Locale.UK, "%.0f", seconds);
    }
}
