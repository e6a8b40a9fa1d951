package crowdline.speech.plain;

import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.speech.say.SpokenText;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * How all remarks of an act read together, and those of the show outside acts. Each text is counted once. Too slow to be
 * asked at every letter; belongs to one thread.
 */
public final class ActReading {
    /** Stands for the show outside acts; no act has an empty id. */
    public static final String SHOW = "";

    /** Texts typed letter by letter are counted each; beyond these they are forgotten. Tuned. */
    private static final int MOST_COUNTED = 4000;

    private final Function<String, SpokenText> sounds;
    private final Sentences sentences = new Sentences();
    private final Map<String, Optional<Readability>> counted = new HashMap<>();

    /** @param sounds how a text sounds */
    public ActReading(Function<String, SpokenText> sounds) {
        this.sounds = sounds;
    }

    /**
     * How a block of remarks reads; empty without a word.
     *
     * @param actId the act, or null for the show outside acts
     */
    public Optional<Readability> of(Show show, @Nullable String actId) {
        int allSentences = 0;
        int words = 0;
        int syllables = 0;
        for (RemarkPlace place : RemarkPlace.all(show)) {
            if (!Objects.equals(place.actId(), actId)) {
                continue;
            }
            for (Remark remark : place.in(show)) {
                Readability one =
                        counted.computeIfAbsent(remark.text(), this::count).orElse(null);
                if (one != null) {
                    allSentences += one.sentences();
                    words += one.words();
                    syllables += one.syllables();
                }
            }
        }
        if (counted.size() > MOST_COUNTED) {
            counted.clear();
        }
        return words == 0 ? Optional.empty() : Optional.of(new Readability(allSentences, words, syllables));
    }

    /** Every block in a sentence, by its act; that of the show outside acts under {@link #SHOW}. */
    public Map<String, String> all(Show show) {
        Map<String, String> all = new HashMap<>();
        all.put(SHOW, inWords(of(show, null)));
        show.acts().forEach(act -> all.put(act.id(), inWords(of(show, act.id()))));
        return all;
    }

    private Optional<Readability> count(String text) {
        try {
            return Optional.of(Readability.of(sounds.apply(text), sentences));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Reading ease, which knows nothing but lengths, in a short sentence for the author; empty where there is too little text for a score. */
    static String inWords(Optional<Readability> reads) {
        return reads.filter(Readability::isMeaningful)
                .map(r -> String.format(Locale.UK, "As a whole, by length: %s (%.0f).", r.band(), r.readingEase()))
                .orElse("");
    }
}
