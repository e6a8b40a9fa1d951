package crowdline.list.about;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What the aircraft is called: "Aircraft: Corvane 300", "I shall bring the old Petrel", "Ada Quillan, Petrel". */
final class AircraftName {
    /** Of a letter, the first notes. */
    private static final int HEADINGS = 3;
    /** Letters. */
    private static final int LONGEST_HEADING = 120;

    private static final int LONGEST = 40;
    private static final int MOST_WORDS = 4;

    /** "Corvane 300", "Sprite Mk 2", "K.9"; of a column's wide gap nothing goes on. */
    private static final String WORD =
            "(?:\\p{Lu}[\\p{L}\\d.'’-]*|\\d[\\p{Lu}\\d-]*|(?:mk|mark|series)(?= \\d)|[ivx]+(?![\\p{L}]))";

    private static final String NAME = "(\\p{Lu}[\\p{L}\\d.'’-]*(?: " + WORD + "){0,3})";

    /** With the word for it ahead, whatever letters it is in. */
    private static final Pattern LABELLED = Pattern.compile(
            "(?im)(?:^|[\\s,;/|(.–-])(?:aircraft(?: type)?|aeroplane|airplane|a/c|plane|machine|type(?: of aircraft)?|flying an?|ship)"
                    + "(?: is| will be)?[ \\t]*[:=][ \\t]*(?:an? |the )?([\\p{L}\\d][^\\n\\t,;/|()–—:]*?)"
                    + "(?=[ \\t]*(?:$|[\\n\\t,;/|()–—]| - |  |\\. |\\.$|\\b[\\p{L}/]+[ \\t]?:))");

    /** In a sentence, with what is done with it: "I fly the Petrel", "I shall be bringing our old Petrel". */
    private static final Pattern FLOWN = Pattern.compile(
            "\\b(?i:fly|flies|flying|flown in|bring|brings|bringing|displaying|show you|take up|at the controls of|aircraft is|aeroplane is"
                    + "|aeroplane will be|aircraft will be|in)"
                    + " (?i:the|my|our|an?|his|her) (?:(?!(?i:same|show|display|first|second|last)\\b)[\\p{Ll}-]+ ){0,2}"
                    + NAME
                    + "(?=[ \\t]{0,3}(?:$|[\\n,;()–—.!?]|- |(?i:and|which|who|that|for|on|at|with|this|from|again|as|is|has)\\b))");

    /** Behind who flies it, in a heading: "Ada Quillan, Petrel", "Ada Quillan - Petrel". */
    private static final Pattern BEHIND = Pattern.compile(
            "^[ \\t]*" + PersonName.TITLE + PersonName.WHOLE + "(?:,| [-–—]| \\()[ \\t]*" + NAME + "\\)?[ \\t.]*$");

    /** Words of names of other things: of days and places, of shows, of what a letter speaks of with a capital. */
    private static final Set<String> OTHER = Set.of(
            "airshow",
            "air",
            "show",
            "display",
            "airfield",
            "aerodrome",
            "airport",
            "festival",
            "fete",
            "fair",
            "field",
            "vale",
            "day",
            "days",
            "weekend",
            "saturday",
            "sunday",
            "monday",
            "tuesday",
            "wednesday",
            "thursday",
            "friday",
            "january",
            "february",
            "march",
            "april",
            "may",
            "june",
            "july",
            "august",
            "september",
            "october",
            "november",
            "december",
            "pilot",
            "team",
            "club",
            "group",
            "commentator",
            "commentary",
            "sequence",
            "programme",
            "program",
            "list",
            "figures",
            "museum",
            "society",
            "trust",
            "secretary",
            "organiser",
            "organizer",
            "director",
            "slot",
            "left",
            "right",
            "north",
            "south",
            "east",
            "west",
            "a-axis",
            "b-axis",
            "axis",
            "tba",
            "tbc",
            "as",
            "same",
            "see",
            "i",
            "my",
            "we",
            "cuban",
            "immelmann",
            "derry",
            "lomcovak",
            "english",
            "british",
            "german",
            "french");

    /** Words that say what it is and not what it is called. */
    private static final Set<String> KIND = Set.of(
            "light",
            "aerobatic",
            "aerobatics",
            "biplane",
            "biplanes",
            "monoplane",
            "monoplanes",
            "trainer",
            "trainers",
            "glider",
            "gliders",
            "sailplane",
            "jet",
            "jets",
            "fighter",
            "fighters",
            "helicopter",
            "helicopters",
            "heli",
            "two-seat",
            "two-seater",
            "single-seat",
            "single-seater",
            "seater",
            "old",
            "vintage",
            "strong",
            "fast",
            "large",
            "big",
            "small",
            "piston",
            "formation",
            "warbird",
            "aircraft",
            "aeroplane",
            "plane",
            "the",
            "a",
            "an",
            "one",
            "two",
            "three",
            "four",
            "red",
            "blue",
            "yellow",
            "white",
            "green",
            "black",
            "silver");

    private AircraftName() {}

    /**
     * Its name; null if none is told.
     *
     * @param notes what stands around the figures
     */
    static @Nullable String in(List<String> notes) {
        return Stream.of(
                        notes.stream().flatMap(note -> LABELLED.matcher(note).results()),
                        notes.stream()
                                .limit(HEADINGS)
                                .filter(note -> note.length() <= LONGEST_HEADING)
                                .flatMap(note -> BEHIND.matcher(note).results()),
                        notes.stream().flatMap(note -> FLOWN.matcher(note).results()))
                .flatMap(way -> way)
                .map(AircraftName::tidied)
                .filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .findFirst()
                .orElse(null);
    }

    /** The last group found, in one line; null if it is the name of something else. */
    private static @Nullable String tidied(MatchResult found) {
        String name =
                found.group(found.groupCount()).strip().replaceAll("\\s+", " ").replaceAll("[.]$", "");
        String[] words = name.toLowerCase(Locale.UK).split(" ");
        boolean isOther = Stream.of(words).anyMatch(OTHER::contains)
                || Stream.of(name.split(" "))
                        .noneMatch(word ->
                                Character.isUpperCase(word.charAt(0)) && !KIND.contains(word.toLowerCase(Locale.UK)));
        return isOther || name.length() < 2 || name.length() > LONGEST || words.length > MOST_WORDS ? null : name;
    }
}
