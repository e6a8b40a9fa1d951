package crowdline.show;

import crowdline.show.bounds.Most;
import java.text.Normalizer;
import java.util.Locale;

/**
 * Somebody who speaks to the crowd.
 *
 * @param name as written, and as on the pace that was timed for them
 * @param away true if they are not there today: what is theirs is then said by whoever is at the console
 */
public record Speaker(String name, boolean away) {
    public Speaker {
        Most.mustBeText("speaker name", name);
    }

    /** True if a name is this speaker's, however its letters are composed and whether they are capitals. */
    public boolean isCalled(String other) {
        return key(name).equals(key(other));
    }

    /**
     * What is to be known before anything is given to them, in a few words; empty if nothing.
     *
     * @param timed whether their pace was timed
     */
    public String note(boolean timed) {
        return away ? "away" : timed ? "" : "not timed";
    }

    private static String key(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC).strip().toLowerCase(Locale.ROOT);
    }
}
