package crowdline.exchange;

import crowdline.edit.act.CannotBe;
import crowdline.show.bounds.Written;
import crowdline.storage.file.ShowFileException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** What cells say, compared and quoted, and what is said of all tables. */
final class Text {
    private static final int LONGEST = 40;
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{M}\\p{N}]+");

    private static final Pattern ACCENTS = Pattern.compile("\\p{M}");

    private Text() {}

    static String formula(String cell) {
        return quoted(cell) + " is a formula; copy its value, then take the row";
    }

    static CannotBe noneTaken() {
        return new CannotBe("None of the rows can be taken; each says why");
    }

    static ShowFileException noRows(Path name) {
        return new ShowFileException(name + " has headings but no rows below them; copy the rows too");
    }

    /** By which two names are the same: small letters and digits, whatever stands between them. */
    static String key(String text) {
        return BETWEEN.matcher(text.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
    }

    /** As it would be written without accents. */
    static String withoutAccents(String text) {
        return ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("");
    }

    static String quoted(String text) {
        return "“" + Written.brief(text, LONGEST) + "”";
    }
}
