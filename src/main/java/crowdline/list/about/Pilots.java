package crowdline.list.about;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Who flies: "Pilot: Ada Quillan", "led by P. Voss", "my name is …", and whoever signs a letter in which "I" fly. A letter that
 * speaks of somebody else may be signed by anybody.
 */
final class Pilots {
    private static final String WORD = "(?:\\p{Lu}[\\p{L}'’-]+|\\p{Lu}\\.?)";
    private static final String NAME =
            "(" + WORD + "(?:[ \\t]+(?:(?:de|van|von|der|den|la|le|du|ten)[ \\t]+)*" + WORD + "){1,3})";
    private static final String RANK =
            "(?:(?i:mr|mrs|ms|miss|dr|herr|frau|monsieur|madame|m\\.|signor|senor|sir|dame|capt(?:ain)?|flt lt|sqn ldr|wg cdr|lt|sgt|maj(?:or)?)\\.?[ \\t]+)?";
    private static final Pattern NAMED =
            Pattern.compile("(?:\\b(?i:(?:display )?pilot(?:['’]s)?(?: name)?|flown by|led by|"
                    + "leader|performer|team lead(?:er)?|skipper|captain|aviator|flyer|flier|at the controls|in the (?:front|back|left|right|hot) seat)\\b\\s*(?i:is\\b|will be\\b|:|-|–|=|,)?[ \\t]*"
                    + RANK
                    + "|\\b(?i:(?<!your )name:?)[ \\t]{2,}|\\b(?i:programme|program|sequence|list|display|routine|figures|flying) (?i:of|for|by)[ \\t]+"
                    + "|\\(me,? )" + RANK + NAME);
    /** Somebody who is spoken of: no letter's writer. */
    private static final Pattern SPOKEN_OF = Pattern.compile(
            "(?:\\b(?i:(?:his|her) name(?: is|'s)|our (?:member|pilot|friend|chairman|treasurer|instructor)|on behalf of"
                    + "|my (?:dad|father|mum|mother|husband|wife|brother|sister|son|daughter|uncle|aunt|grandpa|friend|boss|colleague))\\b,?[ \\t]+"
                    + RANK + NAME + "|" + RANK + NAME
                    + ",? (?i:will fly|intends to fly|is to fly|wants to fly|would like to fly|flies|is flying|will be flying|who (?:flies|will fly|will be flying|is flying)|is the pilot|is our pilot)\\b)");

    private static final Pattern SELF = Pattern.compile(
            "(?:\\b(?i:my name(?: is|['’]s)|this is)[ \\t]+|(?:^|[.,!\\n][ \\t]*)(?i:i['’]?m|i am)[ \\t]+)" + NAME);
    /** One name alone: "I'm Gethin, flying the old trainer". */
    private static final Pattern FIRST_NAME = Pattern.compile(
            "(?:\\b(?i:my name is)|(?:^|[.,!\\n][ \\t]*)(?i:i['’]?m|i am))[ \\t]+(\\p{Lu}[\\p{Ll}'’-]{2,})"
                    + "(?=[ \\t]*(?:$|[.!\\n]|,? (?i:and i|flying|who flies|from|the pilot|your pilot)\\b))");
    /** "The Sandpipers - 4 ship". */
    private static final Pattern TEAM = Pattern.compile(
            "^[ \\t]*([Tt]he(?:[ \\t]+\\p{Lu}[\\p{L}'’-]+){1,3})(?=[ \\t]*[-–—,:(].*(?i:ship|formation|team|pair|synchro|display)\\b)");

    private static final Pattern SIGNED = Pattern.compile(
            "(?:^|\\n|[.!,][ \\t]*)(?i:(?:many |kind |best |warm |all the |all |very |with )?(?:cheers|good wishes|"
                    + "thanks|regards|wishes|best|rgds)|thank you|cordialement|mit freundlichen gr(?:ü|ue)(?:ß|ss)en|yours(?: \\w+)?|all the best|atb|see (?:you|ya)(?: \\w+){0,3})[ \\t]*[,.!–-]?\\s+(?:[-–—][ \\t]*)?"
                    + NAME + "\\s*(?:$|\\n|[,(])");
    /** A line that is nothing but a name, behind a letter. */
    private static final Pattern ALONE = Pattern.compile("^[ \\t]*[-–—~]{0,2}[ \\t]*" + NAME + "[ \\t]*[.]?$");
    /** "Night night, Tobias Crake", and nothing behind it. */
    private static final Pattern BEHIND = Pattern.compile("^[^\\n]{0,40}[,.!–-][ \\t]*" + NAME + "[ \\t]*\\.?$");
    /** "Sequence for two-seater, P. Ollerenshaw", "ITEM 6 - LARGE BIPLANE - MR O. FENWICKE". */
    private static final Pattern HEADED = Pattern.compile(
            "(?:,|[-–—:]|\\b(?i:programme|program|sequence|seq|list|solo|display))[ \\t]+" + RANK + "(?<!\\p{L})"
                    + "((?:\\p{Lu}\\.[ \\t]?){1,3}(?:(?:de|van|von|der|den|la|le|du|ten)[ \\t]+)*\\p{Lu}[\\p{L}'’-]+)(?=[ \\t]*(?:$|\\n|[-–—(,]))");

    /** "Helicopter solo, 6 mins, Ada Quillan". */
    private static final Pattern OF_AN_ACT =
            Pattern.compile("\\b(?i:solo|demo|min(?:ute)?s?)\\b.*,[ \\t]*" + NAME + "[ \\t]*$");

    private static final Pattern FROM = Pattern.compile("^(?i:from)[ \\t]*:[ \\t]*" + NAME + "[ \\t]*(?:$|<|\\(|,)");
    private static final Pattern THIRD = Pattern.compile(
            "\\b(?i:he|she)(?: (?:then|will|also|always|usually))? (?:flies|takes off|does|loops|rolls|dives|lands|opens|begins|starts|finishes|fly|turns|goes|says|tells|gave)\\b"
                    + "|\\b(?i:on behalf of|(?:his|her) (?:list|sequence|programme|program|routine|flying|display|figures)|our member)\\b");
    private static final Pattern MYSELF = Pattern.compile("\\b(?:I|I['’](?:m|d|ll|ve)|my|My)\\b");

    /** Of headings, not of people. */
    private static final Set<String> NO_NAMES = Set.of(
            "a",
            "an",
            "the",
            "act",
            "aerobatic",
            "aircraft",
            "and",
            "brief",
            "briefing",
            "club",
            "display",
            "entry",
            "figure",
            "figures",
            "flying",
            "for",
            "height",
            "i",
            "i'm",
            "i’m",
            "in",
            "licence",
            "list",
            "my",
            "name",
            "notes",
            "of",
            "phone",
            "pilot",
            "programme",
            "sequence",
            "show",
            "slot",
            "solo",
            "speed",
            "team",
            "to",
            "we",
            "with",
            "your",
            "grandma",
            "grandpa",
            "grandad",
            "auntie",
            "uncle",
            "mum",
            "dad",
            "monday",
            "tuesday",
            "wednesday",
            "thursday",
            "friday",
            "saturday",
            "sunday",
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
            "airshow",
            "commentary",
            "commentator",
            "regards",
            "thanks",
            "speeds");

    /** Of a letter, the first notes. */
    private static final int HEADINGS = 3;
    /** Letters. */
    private static final int LONGEST_HEADING = 120;
    /** And the last, where somebody signs. */
    private static final int LAST = 3;

    private static final Pattern CAPITALS = Pattern.compile("(?<![\\p{L}'’-])\\p{Lu}{4,}(?!\\p{L})");

    private static final Pattern BETWEEN = Pattern.compile("[ .]+");

    private Pilots() {}

    /**
     * Who is said to fly; null if nobody is.
     *
     * @param notes what stands around the figures
     * @param lines the figures as they were written, which may say "he"
     */
    static @Nullable String in(List<String> notes, List<String> lines) {
        String named = Stream.of(NAMED, SPOKEN_OF)
                .flatMap(pattern -> notes.stream().flatMap(note -> found(pattern, note)))
                .findFirst()
                .or(() -> notes.stream()
                        .limit(HEADINGS)
                        .flatMap(note -> Stream.concat(
                                found(HEADED, note),
                                note.length() <= LONGEST_HEADING ? found(OF_AN_ACT, note) : Stream.empty()))
                        .findFirst())
                .orElse(null);
        boolean isOfAnother = Stream.concat(notes.stream(), lines.stream())
                .anyMatch(said -> THIRD.matcher(said).find());
        if (named != null || isOfAnother) {
            return named;
        }
        String self =
                notes.stream().flatMap(note -> found(SELF, note)).findFirst().orElse(null);
        boolean isMine = Stream.concat(notes.stream(), lines.stream())
                .anyMatch(said -> MYSELF.matcher(said).find());
        if (self != null || !isMine) {
            return self != null ? self : team(notes);
        }
        String all = String.join("\n", notes);
        return found(SIGNED, all)
                .reduce((first, last) -> last)
                .or(() -> Stream.of(notes.subList(Math.max(0, notes.size() - LAST), notes.size()))
                        .flatMap(List::stream)
                        .flatMap(String::lines)
                        .flatMap(line -> found(ALONE, line))
                        .reduce((first, last) -> last))
                .or(() -> notes.stream()
                        .skip(Math.max(0, notes.size() - 1))
                        .flatMap(note -> found(BEHIND, note))
                        .findFirst())
                .or(() -> notes.stream().flatMap(note -> found(FROM, note)).findFirst())
                .or(() ->
                        notes.stream().flatMap(note -> found(FIRST_NAME, note)).findFirst())
                .orElseGet(() -> team(notes));
    }

    private static @Nullable String team(List<String> notes) {
        return notes.stream()
                .limit(HEADINGS)
                .filter(note -> note.length() <= LONGEST_HEADING)
                .flatMap(note -> TEAM.matcher(note).results().map(result -> result.group(1)))
                .findFirst()
                .orElse(null);
    }

    private static Stream<String> found(Pattern pattern, String note) {
        return pattern.matcher(note)
                .results()
                .map(result -> result.group(result.groupCount() > 1 && result.group(1) == null ? 2 : 1))
                .map(String::strip)
                .map(name -> name.replaceAll("\\s+", " ").replaceAll("(?<=\\p{L}{2})\\.$", ""))
                .map(Pilots::inSmallLetters)
                .filter(Pilots::isName);
    }

    /** "O. FENWICKE" as "O. Fenwicke"; initials and short names stay. */
    private static String inSmallLetters(String name) {
        return CAPITALS.matcher(name)
                .replaceAll(word ->
                        word.group().substring(0, 1) + word.group().substring(1).toLowerCase(Locale.UK));
    }

    private static boolean isName(String name) {
        return BETWEEN.splitAsStream(name.toLowerCase(Locale.UK)).noneMatch(NO_NAMES::contains);
    }
}
