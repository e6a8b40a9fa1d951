package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.ListLine;
import java.util.Collection;
import java.util.List;

/** Figures in short: a hyphen for each space, parted by spaces. */
final class Flown {
    private Flown() {}

    /** Figures, and what is only timed by its own words. */
    static void assertFlown(List<ListLine> lines, String flown) {
        assertFlown(
                lines.stream()
                        .map(line -> line.figure() == null ? line.title() : line.figure())
                        .toList(),
                flown);
    }

    /** @param flown what they are to be, in short: "slow-roll spin low-pass" */
    static void assertFlown(Collection<String> figures, String flown) {
        assertThat(figures).extracting(figure -> figure.replace(' ', '-')).containsExactly(flown.split(" "));
    }
}
