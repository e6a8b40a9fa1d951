package crowdline.show.figure;

import crowdline.show.bounds.Most;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A remark in another language.
 *
 * @param language its code, such as "fr" or "pt-BR" (IETF BCP 47)
 * @param text what to say, as written
 * @param speaker who says it, by name, or null for whoever says the remark
 */
public record Translation(
        String language, String text, @Nullable String speaker) {
    private static final Pattern CODE = Pattern.compile("[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8}){0,3}");

    public Translation {
        if (!isLanguage(language)) {
            throw new IllegalArgumentException("the language is \"" + language
                    + "\"; it must be a code of two or three letters, such as fr for French or ar for Arabic");
        }
        Most.mustBeText("text in another language", text);
        if (speaker != null) {
            Most.mustBeText("speaker of another language", speaker);
        }
    }

    /** True if it can be the code of a language. */
    public static boolean isLanguage(String code) {
        return CODE.matcher(code).matches();
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
