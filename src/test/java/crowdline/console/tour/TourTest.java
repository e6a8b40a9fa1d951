package crowdline.console.tour;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.place.Place;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TourTest {
    private static List<Tour.Step> all() {
        List<Tour.Step> steps = new ArrayList<>();
        Tour tour = Tour.begin();
        steps.add(tour.step());
        while (!tour.isLast()) {
            tour = tour.next();
            steps.add(tour.step());
        }
        return steps;
    }

    @Test
    void everyPlaceIsVisited() {
        assertThat(all()).extracting(Tour.Step::place).contains(Place.values());
    }

    /** Two minutes at the 200 words a minute of quiet reading, with time left to look; common practice, no source. */
    @Test
    void itIsReadInTwoMinutes() {
        int words =
                all().stream().mapToInt(s -> s.words().split(" ", -1).length).sum();
        assertThat(words).isBetween(150, 400);
        assertThat(all()).allSatisfy(s -> assertThat(s.words()).hasSizeBetween(40, 260));
    }

    @Test
    void stepsGoOnAndBackAndStopAtTheEnds() {
        Tour tour = Tour.begin();
        assertThat(tour.back()).isEqualTo(tour);
        assertThat(tour.next().back()).isEqualTo(tour);
        assertThat(tour.next().where()).isEqualTo("2 of " + tour.steps().size());
        Tour last = new Tour(tour.steps(), tour.steps().size() - 1);
        assertThat(last.next()).isEqualTo(last);
    }
}
