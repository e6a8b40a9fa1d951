package crowdline.console.debrief;

import crowdline.sheet.chart.DayChart;
import java.util.List;

/**
 * A chart with what it shows in words.
 *
 * @param title of what is shown
 */
public record ChartView(String title, DayChart chart, List<String> words) {
    public ChartView {
        words = List.copyOf(words);
    }
}
