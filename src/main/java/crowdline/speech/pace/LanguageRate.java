package crowdline.speech.pace;

import crowdline.show.figure.Translation;
import java.util.Locale;
import java.util.Map;
import java.util.Map.Entry;

/**
 * How fast a language is read aloud, in letters, without spaces and signs.
 *
 * <p>Means and standard deviations between readers of Trauzettel-Klosinski and Dietz 2012 (Investigative Ophthalmology &amp;
 * Visual Science 53(9), 5452 to 5461, doi 10.1167/iovs.11-8284): ten texts of the same content read aloud in 17 languages, by
 * 25 native readers each, 36 in Japanese. They read as fast as they could, so only what a language takes against English is
 * used of it.
 *
 * @param lettersPerMinute the mean, above 0
 * @param deviation its standard deviation between readers, letters a minute
 */
record LanguageRate(double lettersPerMinute, double deviation) {
    static final LanguageRate ENGLISH = new LanguageRate(987, 118);

    static final Map<String, LanguageRate> MEASURED = Map.ofEntries(
            rate("ar", 612, 88),
            rate("zh", 255, 29),
            rate("nl", 978, 143),
            Map.entry("en", ENGLISH),
            rate("fi", 1078, 121),
            rate("fr", 998, 126),
            rate("de", 920, 86),
            rate("he", 833, 130),
            rate("it", 950, 140),
            rate("ja", 357, 56),
            rate("pl", 916, 126),
            rate("pt", 913, 145),
            rate("ru", 986, 175),
            rate("sl", 885, 145),
            rate("es", 1025, 127),
            rate("sv", 917, 156),
            rate("tr", 1054, 156));

    /**
     * A language in letters that nobody measured there: the mean of the fifteen in letters, Arabic and Hebrew among them, is
     * 937 with a deviation of 110 between languages; with 130 between readers of one, 170.
     */
    static final LanguageRate OTHER = new LanguageRate(937, 170);

    /** One that is written in syllables or in signs for words: the study's 370 syllables a minute, deviation 80. */
    static final LanguageRate IN_SYLLABLES = new LanguageRate(370, 80);

    private static Entry<String, LanguageRate> rate(String language, double lettersPerMinute, double deviation) {
        return Map.entry(language, new LanguageRate(lettersPerMinute, deviation));
    }

    /** The rate of a translation, by its language, or by its writing if that was not measured. */
    static LanguageRate of(Translation translation) {
        LanguageRate measured =
                MEASURED.get(Locale.forLanguageTag(translation.language()).getLanguage());
        return measured != null ? measured : isInSyllables(translation.text()) ? IN_SYLLABLES : OTHER;
    }

    /** What a letter takes against an English one. */
    double againstEnglish() {
        return ENGLISH.lettersPerMinute / lettersPerMinute;
    }

    double relativeDeviation() {
        return deviation / lettersPerMinute;
    }

    private static boolean isInSyllables(String text) {
        int letters = ForeignText.letters(text);
        return letters > 0
                && 2 * text.codePoints().filter(LanguageRate::isSyllable).count() > letters;
    }

    private static boolean isSyllable(int c) {
        return switch (Character.UnicodeScript.of(c)) {
            case HAN, HANGUL, HIRAGANA, KATAKANA -> true;
            default -> false;
        };
    }
}
