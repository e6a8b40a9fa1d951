package crowdline.console.practice;

import crowdline.console.path.CrowdView;
import java.util.List;

/**
 * A flight to be watched, in which one thing is not as planned.
 *
 * @param title the act and the number of the flight, in words
 * @param choice what was asked for
 * @param sky the flight
 * @param fromS when there is something to watch from, seconds of the flight
 * @param toS until when
 * @param plan the figures as planned
 * @param choices what it may be, of which one is true
 * @param right which of them, from 0
 */
public record Spotted(
        String title,
        PracticeChoice choice,
        CrowdView sky,
        double fromS,
        double toS,
        List<String> plan,
        List<String> choices,
        int right) {
    public Spotted {
        plan = List.copyOf(plan);
        choices = List.copyOf(choices);
    }
}
