package crowdline.speech.pace;

import crowdline.show.Interpreting;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.figure.Remark;
import crowdline.show.figure.Translation;
import crowdline.speech.say.Spoken;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** The voices of a show at the paces that were timed. From any thread; each text is timed once. */
public final class PacedVoices implements Voices {
    private final Speakers speakers;
    private final Paces paces;
    private final Spoken spoken;
    private final Map<Said, SpokenTime> known = new ConcurrentHashMap<>();

    private final Map<Foreign, SpokenTime> translated = new ConcurrentHashMap<>();

    /** A text at a pace. */
    private record Said(String text, Pace pace) {}

    /** Words in another language at a pace. */
    private record Foreign(String language, String text, Pace pace) {}

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
    public SpokenTime first(Remark remark, boolean shortForm) {
        return time(remark.words(shortForm), pace(remark.speaker()));
    }

    @Override
    public Optional<String> other(Remark remark) {
        return speakers.other(remark.speaker(), paces.own().name()).map(Speaker::name);
    }

    /** Said if who is named for it is there; the console need not know the language. */
    @Override
    public Optional<Interpreted> interpreted(Remark remark, boolean shortForm) {
        Translation words = remark.translation();
        if (words == null) {
            return Optional.empty();
        }
        boolean inShort = shortForm && remark.shortText() != null;
        String named = words.speaker();
        String speaker = named == null ? remark.speaker() : named;
        return named == null || speakers.isHere(named)
                ? Optional.of(new Interpreted(
                        speakers.find(speaker).map(Speaker::name).orElse(""),
                        words,
                        inShort,
                        foreign(words.language(), words.words(inShort), pace(speaker))))
                : Optional.empty();
    }

    @Override
    public boolean isTimed(Speaker speaker) {
        return paces.isTimed(speaker, speakers);
    }

    @Override
    public Interpreting interpreting() {
        return speakers.interpreting();
    }

    private Pace pace(@Nullable String speaker) {
        return speakers.other(speaker, paces.own().name()).map(paces::of).orElse(paces.own());
    }

    private SpokenTime foreign(String language, String text, Pace pace) {
        return translated.computeIfAbsent(
                new Foreign(language, text, pace),
                said -> pace.time(new Translation(said.language(), said.text(), null)));
    }

    private SpokenTime time(String text, Pace pace) {
        return known.computeIfAbsent(new Said(text, pace), said -> pace.time(spoken.expand(said.text())));
    }
}
