package crowdline.sight;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.leg.Sample;
import crowdline.show.Show;
import crowdline.show.aircraft.Airframe;
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
     * @param glare against the sun, or null if no time of day was given, or not where the venue is and which way it lies
     */
    public record Glimpse(
            double tS,
            Sighting look,
            double soundDelayS,
            ApparentSize size,
            @Nullable Glare glare) {}

    /**
     * Every figure of a flight in order, without those that have no samples; none at all where nobody knows how far away the crowd is.
     *
     * @param airframe the one that flies it
     * @param flight with its samples
     * @param begins when the act begins, or null to leave the sun out
     */
    public static List<FigureSight> of(Show show, Airframe airframe, Flight flight, @Nullable Instant begins) {
        Double crowdToLineM = show.venue().crowdToLineM();
        if (crowdToLineM == null) {
            return List.of();
        }
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
                        glimpse(show, crowdToLineM, airframe, samples.get(0), begins),
                        glimpse(show, crowdToLineM, airframe, highest, begins)));
            }
        }
        return List.copyOf(sights);
    }

    private static Glimpse glimpse(
            Show show, double crowdToLineM, Airframe airframe, Sample sample, @Nullable Instant begins) {
        Sighting look = Sighting.of(sample.place(), crowdToLineM);
        Glare glare = null;
        Double axisDeg = show.venue().axisBearingDeg();
        if (begins != null && axisDeg != null) {
            Instant at = begins.plus(Duration.ofMillis(Math.round(sample.tS() * 1000)));
            glare = Sun.over(show.venue(), at)
                    .map(sun -> Glare.of(sun, look, axisDeg))
                    .orElse(null);
        }
        return new Glimpse(
                sample.tS(),
                look,
                Sound.delayS(look.slantM(), show.air().temperatureC()),
                ApparentSize.of(airframe.spanM(), look.slantM()),
                glare);
    }
}
