package crowdline.speech.pace;

import crowdline.show.figure.Translation;
import java.util.ArrayList;
import java.util.List;

/**
 * A remark as it is said in its other language.
 *
 * @param speaker the name of who says it, or empty if nobody is named
 * @param words in that language
 * @param shortForm true if the remark itself is said in its short form
 * @param time how long the other language takes
 */
public record Interpreted(String speaker, Translation words, boolean shortForm, SpokenTime time) {
    private static final String ALL_OF_IT = "all of it, as it has no short form";

    /** What is said in that language. */
    public String text() {
        return words.words(shortForm);
    }

    /** True if the remark is said in its short form and this is all of it. */
    public boolean isAllOfIt() {
        return shortForm && words.shortText() == null;
    }

    /** What who says it should know of the words; empty if nothing. */
    public String note() {
        List<String> notes = new ArrayList<>();
        if (words.older()) {
            notes.add(Translation.OLDER);
        }
        if (isAllOfIt()) {
            notes.add(ALL_OF_IT);
        }
        return String.join("; ", notes);
    }
}
