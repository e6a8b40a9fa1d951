package crowdline.list.line;

import crowdline.measure.Must;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands in a list and is taken for none of its figures: a greeting, a heading, a remark to the commentator. Somebody
 * who reads it may know better.
 *
 * @param text as it was written
 * @param before the line it stands ahead of, from 0; as many as there are lines if it stands behind them
 * @param choices the catalogue's names that it may mean, the likeliest first, {@link ListLine#MOST_CHOICES} at most
 */
public record Aside(String text, int before, List<String> choices) {
    /** @throws IllegalArgumentException if there are too many choices, or nothing is written */
    public Aside {
        Must.beSaid("text of an aside", text);
        Must.beWithin("number of choices", choices.size(), 0, ListLine.MOST_CHOICES);
        choices = List.copyOf(choices);
    }

    /**
     * The line it is to somebody who says so.
     *
     * @param figure the catalogue's name of the figure
     */
    public ListLine as(String figure) {
        return line(figure, figure);
    }

    /**
     * The line that is only timed.
     *
     * @param words how to call it
     */
    ListLine called(String words) {
        return line(null, words);
    }

    private ListLine line(@Nullable String figure, String title) {
        return ListLine.of(text, figure, title, null, figure != null, List.of());
    }
}
