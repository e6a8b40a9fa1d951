package crowdline.console.walk;

import crowdline.flight.ElementFlight;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.leg.Sample;
import crowdline.measure.InTime;
import java.util.List;
import java.util.Optional;

/**
 * What the prediction has at one moment.
 *
 * @param speedMps airspeed
 * @param heightM above the display datum
 * @param g load factor felt
 * @param alongM to the commentator's right
 * @param awayM beyond the display line
 * @param upsideDown true with the canopy below the horizon
 * @param element what is being flown, in words; empty if nobody knows
 */
record FlownTrack(
        double speedMps, double heightM, double g, double alongM, double awayM, boolean upsideDown, String element) {

    /**
     * The moment at which a share of a figure is flown; empty for a figure that is only timed.
     *
     * @param share 0 at the figure's start to 1 at its end
     */
    static Optional<FlownTrack> at(Flight flight, int figure, double share) {
        if (figure < 0 || figure >= flight.figures().size()) {
            return Optional.empty();
        }
        FigureFlight flown = flight.figures().get(figure);
        List<Sample> samples = flight.samples();
        if (!flown.simulated() || samples.isEmpty()) {
            return Optional.empty();
        }
        double tS = flown.startS() + flown.durationS() * Math.max(0, Math.min(1, share));
        int after = InTime.firstAfter(samples, Sample::tS, tS);
        Sample b = samples.get(Math.min(after, samples.size() - 1));
        Sample a = samples.get(Math.max(0, after - 1));
        double stepS = b.tS() - a.tS();
        double part = stepS <= 0 ? 0 : Math.max(0, Math.min(1, (tS - a.tS()) / stepS));
        return Optional.of(new FlownTrack(
                between(a.speedMps(), b.speedMps(), part),
                between(a.place().z(), b.place().z(), part),
                between(a.g(), b.g(), part),
                between(a.place().x(), b.place().x(), part),
                between(a.place().y(), b.place().y(), part),
                between(a.up().z(), b.up().z(), part) < 0,
                element(flown, tS)));
    }

    private static double between(double a, double b, double part) {
        return a + part * (b - a);
    }

    private static String element(FigureFlight figure, double tS) {
        String name = "";
        for (ElementFlight element : figure.elements()) {
            if (element.startS() <= tS || name.isEmpty()) {
                name = element.name();
            }
        }
        return name;
    }
}
