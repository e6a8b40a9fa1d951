package crowdline.list;

import crowdline.list.piece.Heard;
import java.util.List;
import java.util.regex.Pattern;

/** What a form asks beside what is flown. */
final class Form {
    /** "3. Aircraft: two-seater, red and white": a field of a form. */
    private static final Pattern FIELD = Pattern.compile(
            "\\W*(?:\\d{1,2}[.)]\\s*)?(?:name|operator|type|captain|max(?:imum)? bank|a/c|reg|item no\\.?|wx|pilot|aircraft|aeroplane|airplane|glider|tug|music|crew|contact|phone|tel|e-?mail|callsign|registration"
                    + "|colou?rs?|colou?r scheme|minimum height|slot|date|venue|club|licence|insurance|sponsor|weight|engine|home base|home airfield)(?:s|\\(s\\))?[\\s.]*[:?].*",
            Pattern.DOTALL);

    /** The same of what nobody flies, whatever it names: "Slot length: 9 min incl. tow". */
    private static final Pattern NO_FIGURES = Pattern.compile(
            "\\W*(?:\\d{1,2}[.)]\\s*)(?:slot(?: length| time)?|length of slot|music|min(?:imum)? (?:height|altitude)|contact(?: on the day)?|phone|e-?mail|anything else|other information|insurance|licence)(?:s|\\(s\\))?\\s?[:?].*",
            Pattern.DOTALL);

    /** "8. What should the audience look out for?" */
    private static final Pattern ASKED = Pattern.compile(
            "\\W*(?:\\d{1,2}[.)]\\s*)(?:what|which|who|how|where|when|is|are|do|does|any)\\b[^?]*\\?\\W*");

    private Form() {}

    /** Whether all of a sentence is such a field: one that names no figure, or whose label nobody flies. */
    static boolean asks(String said, List<Heard> pieces) {
        return (FIELD.matcher(said).matches() && pieces.stream().allMatch(piece -> !piece.isFigure() || piece.isWeak()))
                || NO_FIGURES.matcher(said).matches()
                || ASKED.matcher(said).matches();
    }
}
