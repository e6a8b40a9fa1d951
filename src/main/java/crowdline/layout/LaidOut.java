package crowdline.layout;

import crowdline.flight.body.FlightState;
import java.util.ArrayList;
import java.util.List;

/**
 * An act laid out.
 *
 * @param entry where the aircraft is when the first piece begins
 * @param pieces figures and transits in the order flown
 * @param findings what could not be had, each a sentence
 */
public record LaidOut(FlightState entry, List<Piece> pieces, List<Finding> findings) {
    /**
     * What could not be had.
     *
     * @param wishId the figure it is about
     * @param message a whole sentence with the smallest change that would do
     * @param asIs whether it is flown all the same, only not as one would like it: no reason to refuse what was told
     */
    public record Finding(String wishId, String message, boolean asIs) {
        /** What is not flown as it was asked for. */
        public Finding(String wishId, String message) {
            this(wishId, message, false);
        }
    }

    public LaidOut {
        pieces = List.copyOf(pieces);
        findings = List.copyOf(findings);
    }

    LaidOut with(Finding found) {
        List<Finding> all = new ArrayList<>(findings);
        all.add(found);
        return new LaidOut(entry, pieces, all);
    }

    /** How long it takes, seconds. */
    public double seconds() {
        return pieces.stream().mapToDouble(Piece::seconds).sum();
    }
}
