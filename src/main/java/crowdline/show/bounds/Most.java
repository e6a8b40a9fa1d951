package crowdline.show.bounds;

import crowdline.measure.Must;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;

/**
 * How many entries a list of a show file may have: several times what any show has, and few enough that a file full of
 * them is still told from a show in a moment. The schema refuses the same.
 */
public enum Most {
    AIRFRAMES("airframes", 200),
    PERFORMERS("performers", 300),
    FACTS("facts", 100),
    ACTS("acts", 200),
    VARIANTS("variants", 20),
    FIGURES("figures", 300),
    ORDER("order", 300),
    ELEMENTS("elements", 60),
    MIDDLE("middle", 20),
    CHOICES("choices", 20),
    QUIETS("quiets", 60),
    REMARKS("remarks", 100),
    ALIASES("aliases", 50),
    TERMS("terms", 2_000),
    SEE("see", 20),
    SAY_AS("sayAs", 2_000),
    WINDS_ALOFT("windsAloft", 50),
    FIRST_STEPS("firstSteps", 50),
    WORDS("words", 50),
    CONTACTS("contacts", 50),
    ANNOUNCEMENTS("announcements", 50),
    PIECES("pieces", 100),
    PARTS("parts", 50),
    SPEAKERS("speakers", 20);

    /** Letters in one text: six minutes of speech. */
    static final int LETTERS = 5_000;

    private final String key;
    private final int entries;

    Most(String key, int entries) {
        this.key = key;
        this.entries = entries;
    }

    /** Its key in the show file. */
    String key() {
        return key;
    }

    /** How many it may have. */
    public int entries() {
        return entries;
    }

    /**
     * Refuses a text that says nothing or too much.
     *
     * @throws IllegalArgumentException if the text is blank, or has more than {@link #LETTERS} letters
     */
    public static void mustBeText(String what, String text) {
        Must.beSaid(what, text);
        int letters = text.codePointCount(0, text.length());
        if (letters > LETTERS) {
            throw new IllegalArgumentException(String.format(
                    Locale.UK,
                    "%s is %,d letters long; the limit is %,d, so shorten it or split it",
                    what,
                    letters,
                    LETTERS));
        }
    }

    /**
     * Refuses a list that is too long.
     *
     * @throws IllegalArgumentException if there are more, with how many and what is allowed
     */
    public void must(Collection<?> list) {
        must(list.size());
    }

    /** See {@link #must(Collection)}. */
    public void must(Map<?, ?> map) {
        must(map.size());
    }

    private void must(int size) {
        if (size > entries) {
            throw new IllegalArgumentException(String.format(
                    Locale.UK, "%s has %,d entries; the limit is %,d, so take some out", key, size, entries));
        }
    }
}
