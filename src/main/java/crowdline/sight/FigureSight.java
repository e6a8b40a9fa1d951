package crowdline.sight;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Sample;
import crowdline.show.Airframe;
import crowdline.show.Show;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where the crowd looks for one figure.
 *
 * @param figureId the figure
 * @param name how it is called
 * @param start at its beginning
 * @param highest at its highest
 */
public record FigureSight(String figureId, String name, Glimpse start, Glimpse highest) {

    /**
     * One instant as the crowd has it.
     *
     * @param tS seconds since the act began
     * @param look where to look
     * @param soundDelayS how late its sound is, seconds
     * @param size how large its wing span looks, square on
     * @param glare against the sun, or null if no time of day was given
     */
    public record Glimpse(
            double tS,
            Sighting look,
            double soundDelayS,
            ApparentSize size,
            @Nullable Glare glare) {}

    /**
     * Every figure of a flight in order, without those that have no samples.
     *
     * @param airframe the one that flies it
     * @param flight with its samples
     * @param begins when the act begins, or null to leave the sun out
     */
    public static List<FigureSight> of(Show show, Airframe airframe, Flight flight, @Nullable Instant begins) {
        FlownPath whole = new FlownPath(flight.samples());
        List<FigureSight> sights = new ArrayList<>();
        for (FigureFlight f : flight.figures()) {
            List<Sample> samples = whole.between(f.startS(), f.endS()).samples();
            if (!samples.isEmpty()) {
                Sample highest = samples.stream()
                        .max(Comparator.comparingDouble(s -> s.place().z()))
                        .orElseThrow();
                sights.add(new FigureSight(
                        f.figureId(),
                        f.name(),
                        glimpse(show, airframe, samples.get(0), begins),
                        glimpse(show, airframe, highest, begins)));
            }
        }
        return List.copyOf(sights);
    }

    private static Glimpse glimpse(Show show, Airframe airframe, Sample sample, @Nullable Instant begins) {
        Sighting look = Sighting.of(sample.place(), show.venue().crowdToLineM());
        Glare glare = null;
        if (begins != null) {
            Instant at = begins.plus(Duration.ofMillis(Math.round(sample.tS() * 1000)));
            glare = Glare.of(Sun.over(show.venue(), at), look, show.venue().axisBearingDeg());
        }
        return new Glimpse(
                sample.tS(),
                look,
                Sound.delayS(look.slantM(), show.air().temperatureC()),
                ApparentSize.of(airframe.spanM(), look.slantM()),
                glare);
    }
}
