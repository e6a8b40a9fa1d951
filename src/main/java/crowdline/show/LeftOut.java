package crowdline.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What cannot be computed for want of what a venue has not told. */
final class LeftOut {
    private LeftOut() {}

    /** What is not given and what that leaves out; empty if the venue says all there is. */
    static Optional<String> sentence(Show show) {
        Venue venue = show.venue();
        List<String> unknown = venue.unknown();
        if (unknown.isEmpty()) {
            return Optional.empty();
        }
        List<String> without = new ArrayList<>();
        if (venue.latDeg() == null || venue.axisBearingDeg() == null) {
            without.add("the sun");
        }
        if (venue.crowdToLineM() == null) {
            without.add("where to look");
            without.add("how late the sound is");
        }
        if (venue.notPlaced().isPresent()) {
            without.add("the aircraft's own position");
        }
        return Optional.of(
                "the venue's " + Venue.listed(unknown) + (unknown.size() == 1 ? " is" : " are") + " not given; "
                        + Venue.listed(without) + (without.size() == 1 ? " is" : " are") + " left out"
                        + assumed(show));
    }

    /** What the prediction goes on with. */
    private static String assumed(Show show) {
        List<String> assumed = new ArrayList<>();
        if (show.venue().elevationFt() == null) {
            assumed.add("the air is taken as at sea level");
        }
        boolean wind = show.air().windKt() > 0 || !show.air().windsAloft().isEmpty();
        if (show.venue().axisBearingDeg() == null && wind) {
            assumed.add("the wind is not counted in");
        }
        return assumed.isEmpty() ? "" : "; " + String.join(", and ", assumed);
    }
}
