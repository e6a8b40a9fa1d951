package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;

/** Figures in short: a hyphen for each space, parted by spaces. */
final class Flown {
    private Flown() {}

    /** @param flown what they are to be, in short: "slow-roll spin low-pass" */
    static void assertFlown(Collection<String> figures, String flown) {
        assertThat(figures).extracting(figure -> figure.replace(' ', '-')).containsExactly(flown.split(" "));
    }
}
