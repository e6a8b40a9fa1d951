package crowdline.flight;

import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import java.util.ArrayList;
import java.util.List;

/**
 * The path of a flight through the air, one stretch for each figure.
 *
 * @param stretches in the order flown
 */
public record Track(List<Stretch> stretches) {
    /**
     * One figure's part of the path.
     *
     * @param name how the figure is called
     * @param startS seconds since the act began
     * @param places in the display frame, metres; none if the figure is only timed
     */
    public record Stretch(String name, double startS, List<Vec> places) {
        public Stretch {
            places = List.copyOf(places);
        }
    }

    public Track {
        stretches = List.copyOf(stretches);
    }

    /** The path of a flight that was predicted with samples. */
    public static Track of(Flight flight) {
        List<Stretch> stretches = new ArrayList<>();
        for (FigureFlight figure : flight.figures()) {
            List<Vec> own = flight.samples().stream()
                    .filter(s -> figure.simulated() && s.tS() >= figure.startS() && s.tS() <= figure.endS())
                    .map(Sample::place)
                    .toList();
            stretches.add(new Stretch(figure.name(), figure.startS(), own));
        }
        return new Track(stretches);
    }
}
