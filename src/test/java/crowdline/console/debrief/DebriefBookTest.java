package crowdline.console.debrief;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import crowdline.sheet.chart.DayChart;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DebriefBookTest {
    private final List<Integer> made = new ArrayList<>();
    private final DebriefBook book = new DebriefBook(new Appearance(Themes.DAY, new Zoom(100)), new DayChooser.Asked() {
        @Override
        public void beside(Path journal) {}

        @Override
        public void alone() {}

        @Override
        public void file() {}

        @Override
        public void leave() {}
    });

    /** Three charts of a debrief that is another at every change of the show. */
    private final class Counted implements Charts {
        @Override
        public int count() {
            return 3;
        }

        @Override
        public ChartView chart(int number) {
            made.add(number);
            return new ChartView(
                    "Chart " + number,
                    new DayChart(
                            new DayChart.Bars("Acts", List.of("a"), List.of(), List.of(), List.of()),
                            new DayChart.Dots("Duties", List.of(), List.of()),
                            new DayChart.Dots("", List.of(), List.of()),
                            List.of(),
                            new DayChart.Curves("Late", List.of()),
                            null),
                    List.of());
        }
    }

    private void changed(Charts charts) {
        book.show(new DebriefView(
                "Day", new Mark(Form.DISC, Tone.GOOD, "Done"), List.of(), List.of(), List.of(), "", charts));
    }

    @Test
    void aChartIsMadeWhenItIsLookedAtAndNoOther() {
        changed(new Counted());
        changed(new Counted());
        assertThat(made).as("nobody looks").isEmpty();
        book.turn();
        assertThat(made).containsExactly(0);
        book.step(1);
        assertThat(made).containsExactly(0, 1);
        changed(new Counted());
        assertThat(made).as("anew, with what changed").containsExactly(0, 1, 1);
        book.turn();
        changed(new Counted());
        assertThat(made).as("turned away").hasSize(3);
        book.turn();
        assertThat(made).containsExactly(0, 1, 1, 1);
        book.turn();
        book.turn();
        assertThat(made).as("nothing has changed").hasSize(4);
    }
}
