package crowdline.speech.pace;

import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.figure.Remark;
import crowdline.speech.say.Spoken;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The voices of a show at the paces that were timed. From any thread; each text is timed once. */
public final class PacedVoices implements Voices {
    private final Speakers speakers;
    private final Paces paces;
    private final Spoken spoken;
    private final Map<Said, SpokenTime> known = new ConcurrentHashMap<>();

    /** A text at a pace. */
    private record Said(String text, Pace pace) {}

    public PacedVoices(Show show, Paces paces) {
        speakers = show.speakers();
        spoken = new Spoken(show.sayAs());
        this.paces = paces;
    }

    @Override
    public SpokenTime time(String text) {
        return time(text, paces.own());
    }

    @Override
    public SpokenTime time(Remark remark, boolean shortForm) {
        return time(remark.words(shortForm), said(remark).map(paces::of).orElse(paces.own()));
    }

    @Override
    public Optional<String> other(Remark remark) {
        return said(remark).map(Speaker::name);
    }

    private Optional<Speaker> said(Remark remark) {
        return speakers.other(remark.speaker(), paces.own().name());
    }

    private SpokenTime time(String text, Pace pace) {
        return known.computeIfAbsent(new Said(text, pace), said -> pace.time(spoken.expand(said.text())));
    }
}
