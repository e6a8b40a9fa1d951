package crowdline.speech.pace;

import crowdline.show.Speaker;
import crowdline.show.Speakers;
import java.util.List;
import java.util.Optional;

/**
 * The pace the console goes by, and those of everybody else who was timed.
 *
 * @param own of whoever is at the console
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
        return find(speaker).orElse(Pace.DEFAULT);
    }

    /**
     * True if a speaker goes by a pace that somebody timed.
     *
     * @param all who speaks at the show: whoever of them sits at the console goes by the pace that was chosen there
     */
    public boolean isTimed(Speaker speaker, Speakers all) {
        return all.other(speaker.name(), own.name())
                .map(other -> find(other).isPresent())
                .orElse(!own.equals(Pace.DEFAULT));
    }

    private Optional<Pace> find(Speaker speaker) {
        return timed.stream().filter(pace -> speaker.isCalled(pace.name())).findFirst();
    }
}
