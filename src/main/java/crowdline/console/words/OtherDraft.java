package crowdline.console.words;

import crowdline.show.figure.Translation;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A remark in another language as it is being typed; anything may stand in it.
 *
 * @param language its code, as typed
 * @param text what to say in it, empty for nothing
 * @param shortText what to say in it where the short form is said, empty for all of it
 * @param speaker the name of who says it, empty for whoever says the remark
 */
public record OtherDraft(String language, String text, String shortText, String speaker) {
    static final OtherDraft NONE = new OtherDraft("", "", "", "");

    static OtherDraft of(@Nullable Translation words) {
        return words == null
                ? NONE
                : new OtherDraft(
                        words.language(),
                        words.text(),
                        Objects.requireNonNullElse(words.shortText(), ""),
                        Objects.requireNonNullElse(words.speaker(), ""));
    }

    /**
     * What it amounts to.
     *
     * @param before what it was; it stays while the language is not known
     * @param problems takes what cannot be used, in a sentence
     */
    @Nullable
    Translation read(@Nullable Translation before, List<String> problems) {
        if (text.isBlank()) {
            if (!shortText.isBlank()) {
                problems.add("The other language has only a short form; write the full text too, or it will not be"
                        + " said.");
            }
            return null;
        }
        String code = language.strip();
        if (!Translation.isLanguage(code)) {
            problems.add(
                    code.isEmpty()
                            ? "Write the code of the other language before its words, such as fr or ar."
                            : "The other language is \"" + code
                                    + "\"; write a code such as fr for French or ar for Arabic.");
            return before;
        }
        return new Translation(
                code,
                text,
                shortText.isBlank() ? null : shortText,
                speaker.isBlank() ? null : speaker,
                before != null && before.older());
    }
}
