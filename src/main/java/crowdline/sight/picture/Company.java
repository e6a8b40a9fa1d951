package crowdline.sight.picture;

import crowdline.show.aircraft.Outline;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What else is seen with a flight.
 *
 * @param others those that fly with it
 * @param own the shape of what flies, where the figure is no aeroplane's; else null
 * @param sketched true if it is drawn after its description and not computed
 */
public record Company(List<Track> others, @Nullable Outline own, boolean sketched) {
    /** One aircraft, as it was computed. */
    public static final Company NONE = new Company(List.of(), null, false);

    public Company {
        others = List.copyOf(others);
    }

    /** The shape of what flies, where the figure is no aeroplane's. */
    public Optional<Outline> outline() {
        return Optional.ofNullable(own);
    }
}
