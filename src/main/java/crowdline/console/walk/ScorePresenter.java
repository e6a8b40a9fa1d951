package crowdline.console.walk;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.console.walk.WalkView.ScoreLine;
import crowdline.loaded.ShowLookup;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.Practice;
import crowdline.show.figure.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says how a practice run went: numbers with words, no marks out of ten. */
final class ScorePresenter {
    private static final int LONGEST = 46;

    private ScorePresenter() {}

    static List<ScoreLine> of(Practice run, Plan plan, Tour tour, ShowLookup words, String speed) {
        List<ScoreLine> lines = new ArrayList<>();
        lines.add(new ScoreLine(
                null, String.format(Locale.UK, "%.0f s of the act, at %s", run.toS() - run.fromS(), speed)));
        calls(lines, run, tour, words);
        lines.add(state(run.overruns().isEmpty(), count(run.overruns().size(), "remark") + " ran into the next call"));
        for (Practice.Overrun over : run.overruns()) {
            lines.add(detail(String.format(Locale.UK, "%s by %.1f s", text(words, over.remarkId()), over.overS())));
        }
        lines.add(state(run.quiets().isEmpty(), count(run.quiets().size(), "quiet") + " talked over"));
        for (Practice.BrokenQuiet quiet : run.quiets()) {
            lines.add(detail(String.format(
                    Locale.UK,
                    "%s, for %.1f s",
                    words.name(tour.act(), tour.variant().name(), quiet.figureId()),
                    quiet.talkedS())));
        }
        int missed = run.dutiesMissed().size();
        lines.add(
                run.dutiesDue() == 0
                        ? nothing("No duty was due")
                        : state(
                                missed == 0,
                                (run.dutiesDue() - missed) + " of " + count(run.dutiesDue(), "duty", "duties")
                                        + " said"));
        run.dutiesMissed().forEach(id -> lines.add(detail("missed: " + text(words, id))));
        lines.add(new ScoreLine(
                new Mark(
                        Form.RING,
                        Tone.CALM,
                        String.format(
                                Locale.UK,
                                "Talking %.0f%% of the time; planned %.0f%%",
                                100 * run.talkShare(),
                                100 * planned(run, plan))),
                ""));
        return lines;
    }

    private static void calls(List<ScoreLine> lines, Practice run, Tour tour, ShowLookup words) {
        if (run.calls().isEmpty()) {
            lines.add(nothing("No call was due"));
            return;
        }
        long onTime = run.calls(Practice.Timing.ON_TIME);
        lines.add(state(
                onTime == run.calls().size(),
                onTime + " of " + count(run.calls().size(), "call") + " on time, 1 to 2 s before the figure"));
        for (Practice.Call call : run.calls()) {
            String name = words.name(tour.act(), tour.variant().name(), call.figureId());
            Double beforeS = call.beforeS();
            if (beforeS == null) {
                lines.add(detail(name + ": not said"));
            } else if (call.timing() != Practice.Timing.ON_TIME) {
                String when = beforeS < 0
                        ? String.format(Locale.UK, "ended %.1f s into it", -beforeS)
                        : String.format(Locale.UK, "ended %.1f s before", beforeS);
                String side = call.timing() == Practice.Timing.EARLY ? "early" : "late";
                lines.add(detail(name + ": " + side + ", " + when));
            }
        }
    }

    private static double planned(Practice run, Plan plan) {
        double talkS = 0;
        for (Placed placed : plan.placed()) {
            talkS += Math.max(0, Math.min(run.toS(), placed.endS()) - Math.max(run.fromS(), placed.startS()));
        }
        return run.toS() > run.fromS() ? talkS / (run.toS() - run.fromS()) : 0;
    }

    private static ScoreLine state(boolean good, String text) {
        return new ScoreLine(
                good ? new Mark(Form.DISC, Tone.GOOD, text) : new Mark(Form.DIAMOND, Tone.CAUTION, text), "");
    }

    private static ScoreLine nothing(String text) {
        return new ScoreLine(new Mark(Form.RING, Tone.CALM, text), "");
    }

    private static ScoreLine detail(String text) {
        return new ScoreLine(null, text);
    }

    private static String count(int count, String word) {
        return count(count, word, word + "s");
    }

    private static String count(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    private static String text(ShowLookup words, String remarkId) {
        String text = words.remark(remarkId).map(Remark::text).orElse(remarkId);
        return "“" + (text.length() > LONGEST ? text.substring(0, LONGEST - 1).strip() + "…" : text) + "”";
    }
}
