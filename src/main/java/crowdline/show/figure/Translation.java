package crowdline.show.figure;

import crowdline.show.bounds.Most;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A remark in another language.
 *
 * @param language its code, such as "fr" or "pt-BR" (IETF BCP 47)
 * @param text what to say, as written
 * @param shortText what to say where the remark is said in its short form, or null for all of {@code text}
 * @param speaker who says it, by name, or null for whoever says the remark
 * @param older true if the remark was worded anew since, and nobody has said that this still fits
 */
public record Translation(
        String language,
        String text,
        @Nullable String shortText,
        @Nullable String speaker,
        boolean older) {
    /** What is said of one that is older. */
    public static final String OLDER = "older than the text";

    private static final Pattern CODE = Pattern.compile("[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8}){0,3}");

    public Translation {
        if (!isLanguage(language)) {
            throw new IllegalArgumentException("the language is \"" + language
                    + "\"; it must be a code of two or three letters, such as fr for French or ar for Arabic");
        }
        Most.mustBeText("text in another language", text);
        if (shortText != null) {
            Most.mustBeText("short text in another language", shortText);
        }
        if (speaker != null) {
            Most.mustBeText("speaker of another language", speaker);
        }
    }

    /** Words without a short form, made from the text as it is. */
    public Translation(String language, String text, @Nullable String speaker) {
        this(language, text, null, speaker, false);
    }

    /** True if it can be the code of a language. */
    public static boolean isLanguage(String code) {
        return CODE.matcher(code).matches();
    }

    /** What is said where the remark is said in a form. */
    public String words(boolean shortForm) {
        return shortForm && shortText != null ? shortText : text;
    }

    /** The same, as older than the remark or as fitting it. */
    public Translation older(boolean isOlder) {
        return isOlder == older ? this : new Translation(language, text, shortText, speaker, isOlder);
    }

    /** True if another has the same words in the same language. */
    boolean isWordedAs(@Nullable Translation other) {
        return other != null
                && language.equals(other.language)
                && text.equals(other.text)
                && Objects.equals(shortText, other.shortText);
    }

    /** The language in English, such as "French"; its code if nobody gave it a name. */
    public String languageName() {
        return languageName(language);
    }

    /** A language in English, such as "French"; its code if nobody gave it a name. */
    public static String languageName(String code) {
        String name = Locale.forLanguageTag(code).getDisplayLanguage(Locale.UK);
        return name.isEmpty() ? code : name;
    }
}
