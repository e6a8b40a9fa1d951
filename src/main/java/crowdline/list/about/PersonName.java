package crowdline.list.about;

import crowdline.list.word.Uniform;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** How people's names are written, and told from headings. */
final class PersonName {
    private static final String WORD = "(?:(?:\\p{Lu}|ff(?=\\p{Ll}))[\\p{L}'’-]+|\\p{Lu}\\.?)";
    /** Two to four words, one group. Of a column's wide gap nothing goes on. */
    static final String WHOLE =
            "(" + WORD + "(?:[ \\t](?:(?:de|van|von|der|den|la|le|du|ten)[ \\t])*" + WORD + "){1,3})";
    /** One word, one group. */
    static final String FIRST = "(\\p{Lu}[\\p{Ll}'’-]{2,})";

    /** Ahead of a name: of a service, or of a flight deck. */
    static final String RANK = Uniform.RANK + "[ \\t]";
    /** Ahead of a name, or not. */
    static final String TITLE = "(?:(?:(?i:mr|mrs|ms|miss|dr|herr|frau|monsieur|madame|m\\.|signor|senor|sir|dame)\\.?|"
            + Uniform.RANK + ")[ \\t]+){0,2}";

    private static final Pattern CAPITALS = Pattern.compile("(?<![\\p{L}'’-])\\p{Lu}{3,}(?!\\p{L})");
    private static final Pattern BETWEEN = Pattern.compile("[ .]+");

    /** Of headings, not of people. */
    private static final Set<String> NO_NAMES = Set.of(
            "a",
            "act",
            "aerobatic",
            "aerobatics",
            "aircraft",
            "airshow",
            "an",
            "and",
            "april",
            "august",
            "auntie",
            "both",
            "brief",
            "briefing",
            "club",
            "commentary",
            "commentator",
            "commentators",
            "dad",
            "day",
            "december",
            "display",
            "entry",
            "everybody",
            "everyone",
            "february",
            "figure",
            "figures",
            "flying",
            "for",
            "friday",
            "foundation",
            "grandad",
            "group",
            "museum",
            "preservation",
            "society",
            "trust",
            "grandma",
            "grandpa",
            "bonjour",
            "bye",
            "skydive",
            "skydivers",
            "parachute",
            "gliding",
            "aero",
            "office",
            "events",
            "association",
            "ltd",
            "school",
            "centre",
            "sec",
            "secs",
            "cheers",
            "dear",
            "evening",
            "good",
            "hallo",
            "hello",
            "hey",
            "hi",
            "hiya",
            "morning",
            "height",
            "here",
            "i",
            "i'm",
            "i’m",
            "in",
            "january",
            "july",
            "june",
            "licence",
            "list",
            "march",
            "may",
            "monday",
            "mum",
            "my",
            "name",
            "notes",
            "november",
            "october",
            "of",
            "phone",
            "pilot",
            "programme",
            "regards",
            "running",
            "saturday",
            "section",
            "september",
            "sequence",
            "show",
            "slot",
            "solo",
            "speed",
            "speeds",
            "sunday",
            "team",
            "thanks",
            "that",
            "the",
            "this",
            "thursday",
            "to",
            "tuesday",
            "uncle",
            "we",
            "wednesday",
            "with",
            "your",
            "yours",
            "yes",
            "no",
            "right",
            "left");

    private PersonName() {}

    /** A name as it was found, tidied; null if it is a heading's. */
    static @Nullable String tidied(String found) {
        String name = found.strip().replaceAll("\\s+", " ").replaceAll("(?<=\\p{L}{2})\\.$", "");
        boolean isName = BETWEEN.splitAsStream(name.toLowerCase(Locale.UK)).noneMatch(NO_NAMES::contains);
        return isName ? inSmallLetters(name) : null;
    }

    /** "O. FENWICKE" as "O. Fenwicke"; initials stay. */
    private static String inSmallLetters(String name) {
        return CAPITALS.matcher(name)
                .replaceAll(word ->
                        word.group().substring(0, 1) + word.group().substring(1).toLowerCase(Locale.UK));
    }
}
