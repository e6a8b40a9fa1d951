package crowdline.speech.pace;

import crowdline.show.Speaker;
import java.util.List;

/**
 * The pace the console goes by, and those of everybody else who was timed.
 *
 * @param own of whoever sits at the console
 * @param timed of everybody who was timed on this machine
 */
public record Paces(Pace own, List<Pace> timed) {
    /** Nobody was timed. */
    public static final Paces DEFAULT = new Paces(Pace.DEFAULT, List.of());

    public Paces {
        timed = List.copyOf(timed);
    }

    /** The pace of a speaker; the default for one who was not timed. */
    public Pace of(Speaker speaker) {
        return timed.stream()
                .filter(pace -> speaker.isCalled(pace.name()))
                .findFirst()
                .orElse(Pace.DEFAULT);
    }
}
