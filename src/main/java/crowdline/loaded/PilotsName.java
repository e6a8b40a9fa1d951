package crowdline.loaded;

import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import java.util.Locale;
import java.util.regex.Pattern;

/** A figure as its pilot calls it, for what the pilot is to read. */
final class PilotsName {
    /** Letters of what is quoted as the name of a figure. */
    private static final int LONGEST_QUOTED = 45;

    private static final Pattern LINE_NUMBER = Pattern.compile("^(?:\\d{1,2}[.):]|[-*•])\\s*");
    private static final String QUOTE = "“";

    private PilotsName() {}

    /** "stall turn", or what was written, in quotation marks, where that names it otherwise. */
    static String of(Figure figure, Catalogue catalogue) {
        String title = figure.title();
        String name = title == null
                ? catalogue.find(figure.figure()).map(CatalogueEntry::name).orElse(figure.figure())
                : title;
        Asked asked = figure.asked();
        String wrote = asked == null ? "" : wrote(asked);
        boolean isOther = !wrote.isEmpty()
                && wrote.length() <= LONGEST_QUOTED
                && !letters(wrote).contains(letters(name));
        return isOther ? QUOTE + wrote + "”" : name;
    }

    /** With its article, where it is no quotation. */
    static String the(String name) {
        return name.startsWith(QUOTE) ? name : "the " + name;
    }

    /** The pilot's words in one line, without its number; empty if it was no pilot that wrote them. */
    static String wrote(Asked asked) {
        return LINE_NUMBER.matcher(asked.written()).replaceFirst("");
    }

    /** "Tailslide" is a tail slide. */
    private static String letters(String words) {
        return words.toLowerCase(Locale.UK).replaceAll("[^\\p{L}\\d]", "");
    }
}
