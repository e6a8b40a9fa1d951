package crowdline.console.debrief;

import crowdline.live.debrief.Debrief;
import crowdline.live.debrief.Debrief.Run;
import crowdline.sheet.day.DayBeside;
import crowdline.sheet.day.DayCharts;
import crowdline.sheet.day.DayWords;
import crowdline.sheet.day.OtherDay;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The charts of what was flown.
 *
 * @param hour the clock at the venue at a second of the session
 * @param other another day to set beside it, or null
 */
record FlownCharts(
        Debrief debrief,
        DoubleFunction<LocalTime> hour,
        @Nullable OtherDay other) implements Charts {

    @Override
    public int count() {
        return debrief.runs().isEmpty() ? 0 : 1 + debrief.runs().size();
    }

    @Override
    public ChartView chart(int number) {
        return number == 0 ? day() : act(number - 1);
    }

    private ChartView day() {
        OtherDay then = other;
        List<String> words = new ArrayList<>();
        if (then != null) {
            words.addAll(DayBeside.sentences(debrief.day(), hour, then));
        }
        words.addAll(DayWords.day(debrief, hour));
        return new ChartView(
                "The day" + (then == null ? "" : " beside " + then.name()),
                DayCharts.day(debrief, hour, then),
                withHow(words));
    }

    private ChartView act(int number) {
        OtherDay then = other;
        Run run = debrief.runs().get(number);
        List<String> words = new ArrayList<>(DayWords.run(debrief, hour, number));
        if (then != null) {
            words.addAll(1, DayBeside.sentences(run, then));
        }
        return new ChartView(
                run.title() + ", " + DebriefPresenter.when(run, hour),
                DayCharts.run(debrief, hour, number, then),
                withHow(words));
    }

    private List<String> withHow(List<String> words) {
        words.add(DayWords.HOW);
        if (other != null) {
            words.add(DayWords.how(other));
        }
        return words;
    }
}
