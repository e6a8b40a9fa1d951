package crowdline.list.about;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Who flies: "Pilot: Ada Quillan", "led by P. Voss", "my name is …", and whoever signs. Each way to say so is a row of a table,
 * the surest first. A letter that speaks of somebody else may be signed by anybody.
 */
final class Pilots {
    /** Of a letter, the first notes. */
    private static final int HEADINGS = 3;
    /** Letters. */
    private static final int LONGEST_HEADING = 120;
    /** And the last, where somebody signs. */
    private static final int LAST = 3;
    /** With as many messages somebody tells a list. */
    private static final int LEAST_MESSAGES = 3;

    /** Where in a text a way to say it counts, and which of several names there is meant. */
    private enum Where {
        /** Anywhere: the first. */
        ANYWHERE,
        /** The first notes, if they are no paragraphs: the first. */
        HEAD,
        /** All of it, where one line may sign for the one before: the last. */
        WHOLE,
        /** The lines of the last notes: the last. */
        FOOT,
        /** The last note. */
        END,
        /** Its last line. */
        LAST_LINE
    }

    /** A way to say who flies; the name is the first group that was found. */
    private record Way(Where where, Pattern pattern) {
        static Way of(Where where, String regex) {
            return new Way(where, Pattern.compile(regex));
        }
    }

    private static final String LABEL =
            "(?i:(?:display |lead )?pilot(?:s|in|e)?(?:['’]s)?(?: name)?(?: in command)?|pic|flown by|led by|crew|leader|jump ?master|jump leader"
                    + "|performers?|performed by|caller|in charge(?: is)?|drop ?master|p/o|p/f|presented by|team lead(?:er)?|skipper|captain|aviator|flyer|flier|at the controls|me(?=:)"
                    + "|in the (?:front|back|left|right|hot) seat)";
    private static final String NO_LABEL =
            "(?!(?i:venue|place|location|airfield|airport|aerodrome|event|show|subject|to"
                    + "|from|for|attn|cc|dear|hi|hello|aircraft|aeroplane|plane|type|team|callsign|call sign)\\b)";
    private static final String ROLE =
            "(?![ \\t]*[,(\\n][ \\t]*(?i:(?:[\\w']+ ){0,2}(?:secretary|organi[sz]er|coordinator|commentator|commentary|events?|admin|office|editor"
                    + "|treasurer|display director|marketing|manager)\\b))";
    /** Whose the aircraft is, or who watches, need not fly it. */
    private static final String NOT_BY =
            "(?<!(?:belongs? to|owned by|built by|restored by|bought by|named after|thanks to|and|with) )";

    private static final String MINE =
            "my (?:dad|father|mum|mother|husband|wife|brother|sister|son|daughter|uncle|aunt|grandpa|friend|boss|colleague)";

    private static final String PARTING =
            "(?i:(?:many |kind |kindest |best |warm |all the |all |very |with )*(?:cheers|good wishes|thanks|thx|regards|wishes|best"
                    + "|rgds|ta|love|greetings)|thank you|cordially|cordialement|salutations|salu(?:dos|ti)|un saludo|groeten|hilsen|h(?:ä|a)lsningar|amicalement|gracias|grazie|merci|danke|rgds|mit freundlichen gr(?:ü|ue)(?:ß|ss)en|viele gr(?:ü|ue)(?:ß|ss)e|yours(?: \\w+)?|all the best"
                    + "|atb|bye|see (?:you|ya)(?: \\w+){0,3})";
    private static final String SIGNS = "(?:^|\\n|[.!,:)][ \\t]*|(?i:full stop|comma) )" + PARTING
            + "[ \\t]*[,.!–-]{0,2}\\s+(?:[-–—][ \\t]*)?" + "(?:(?i:from)[ \\t])?" + PersonName.TITLE;

    /** Somebody who is named, whoever writes. */
    private static final List<Way> NAMED = List.of(
            Way.of(
                    Where.ANYWHERE,
                    "(?:\\b" + LABEL + "\\b\\s*(?i:is\\b|will be\\b|:|-|–|=|,)?\\s{0,3}(?:1[ .:)]{1,2})?"
                            + "|(?:^|\\n)[ \\t]*(?i:name)(?:[ \\t]*[:=]| is\\b)[ \\t]*|\\b(?i:(?<!your )name:?)[ \\t]{2,}"
                            + "|\\b(?i:lead)[ \\t]*[:=]?[ \\t]*"
                            + "|\\b(?i:programme|program|sequence|list|display|routine|figures|flying) (?i:of|for|by)[ \\t]+"
                            + "|(?:(?:\\(|\\b(?i:is|it's) )me,? |\\bme \\())" + PersonName.TITLE + PersonName.WHOLE
                            + "(?:(?: \\([^)\\n]{1,20}\\))? (?:and|&) " + PersonName.TITLE + PersonName.WHOLE + ")?"),
            Way.of(
                    Where.ANYWHERE,
                    "\\b(?i:(?:his|her) name(?: is|'s)|our (?:member|pilot|friend|chairman|treasurer|instructor)|on behalf of"
                            + "|" + NOT_BY + MINE
                            + "|(?:call|chat|conversation|interview|spoke|spoken|talked|talking|speaking) (?:with|to))\\b,?[ \\t]+"
                            + PersonName.TITLE + PersonName.WHOLE),
            Way.of(
                    Where.ANYWHERE,
                    PersonName.TITLE + PersonName.WHOLE
                            + ",? (?i:will fly|intends to fly|is to fly|wants to fly|would like to fly|flies|is flying|will be flying|leading|leads|is leading|is the leader|lifts off|takes off|performs"
                            + "|who (?:flies|will fly|will be flying|is flying)|is (?:the|our|your) (?:display )?pilot)\\b"),
            // "My husband Rufus is doing the flying".
            Way.of(
                    Where.ANYWHERE,
                    NOT_BY + "\\b(?i:" + MINE + ")\\b,?[ \\t]+" + PersonName.FIRST
                            + "(?=,? (?i:is|will|flies|does|who|has|takes|would|wants)\\b)"),
            // "Sequence for two-seater, P. Ollerenshaw", "ITEM 6 - LARGE BIPLANE - MR O. FENWICKE".
            Way.of(
                    Where.HEAD,
                    "(?:,|[-–—:]|\\b(?i:programme|program|sequence|seq|list|solo|display))[ \\t]+" + PersonName.TITLE
                            + "(?<!\\p{L})((?:\\p{Lu}\\.[ \\t]?){1,3}(?:(?:de|van|von|der|den|la|le|du|ten)[ \\t]+)*\\p{Lu}[\\p{L}'’-]+)"
                            + "(?=[ \\t]*(?:$|\\n|[-–—(,]))"),
            // "No. 1 Ada Quillan, No. 2 Wilf Marrow".
            Way.of(
                    Where.ANYWHERE,
                    "\\b(?i:no\\.?|number|nr\\.?)[ \\t]?1[ \\t:,=–-]{1,3}" + PersonName.TITLE + PersonName.WHOLE
                            + "[ \\t,;/]{1,3}(?:(?i:and)[ \\t])?(?i:no\\.?|number|nr\\.?)[ \\t]?2[ \\t:,=–-]{1,3}"
                            + PersonName.TITLE
                            + PersonName.WHOLE),
            // "Ada Quillan 14.10 8min biplane: …".
            Way.of(
                    Where.HEAD,
                    "^[ \\t]*" + PersonName.TITLE + PersonName.WHOLE
                            + "[ \\t]*[,–-]?[ \\t]*(?=(?i:slot\\b|\\d{1,2}[:.h]\\d{2}\\b|\\d{1,2} ?min))"),
            // "Sat 14.30 / Ada Quillan / biplane".
            Way.of(
                    Where.HEAD,
                    "\\d{1,2}[:.h]\\d{2}[ \\t]*/[ \\t]*" + PersonName.TITLE + PersonName.WHOLE
                            + "(?=[ \\t]*(?:/|$|\\n))"),
            // "Helicopter solo, 6 mins, Ada Quillan".
            Way.of(Where.HEAD, "\\b(?i:solo|demo|min(?:ute)?s?)\\b.*,[ \\t]*" + PersonName.WHOLE + "[ \\t]*(?:$|\\n)"),
            Way.of(
                    Where.HEAD,
                    "(?<!(?i:dear|hi|hello|to|flt|sqn|wg|gp|fg|plt|lt) )(?<![\\p{L}.])" + PersonName.RANK
                            + PersonName.WHOLE),
            Way.of(
                    Where.ANYWHERE,
                    "\\b(?i:item|act|display no\\.?|slot)[ \\t]?\\d{1,2}[ \\t]*[:.–-][ \\t]*" + PersonName.TITLE
                            + PersonName.WHOLE + "(?=[ \\t]*(?:$|\\n|[,(]))"),
            // "Programme for Saturday - Wilf Marrow, glider".
            Way.of(
                    Where.HEAD,
                    "^[ \\t]*(?i:sequence|seq|display|programme|program|routine|list|solo|figures)\\b[^\\n]{0,30}[-–—:][ \\t]+"
                            + PersonName.TITLE + PersonName.WHOLE + "(?=[ \\t]*(?:$|\\n|[,(–—]|- ))"),
            // "Fighter demo (Hugo Lindt):".
            Way.of(
                    Where.HEAD,
                    "^[^\\n(]{0,40}\\b(?i:demo|display|solo|programme|program|sequence|routine|list)[ \\t]*\\([ \\t]*"
                            + PersonName.TITLE + PersonName.WHOLE + "[ \\t]*\\)"),
            // "Sailplane, Solveig Ahrens, Sunday 15:50".
            Way.of(
                    Where.HEAD,
                    "^[ \\t]*[^,\\n]{0,40}\\b(?i:sailplane|glider|helicopter|heli|jet|biplane|monoplane|fighter|warbird|trainer|two-seater|solo|display|aeros|aerobatics)\\b[^,\\n]{0,20},[ \\t]+"
                            + PersonName.TITLE + PersonName.WHOLE + "(?=[ \\t]*(?:$|\\n|[,(]))"),
            // "Sailplane display - Solveig Ahrens", "Glider aeros. A. Threlkeld. 14:15".
            Way.of(
                    Where.HEAD,
                    "^[ \\t]*[^\\n:]{0,40}\\b(?i:display|demo|solo|show|aeros|aerobatics|routine|sequence|programme)[ \\t]*"
                            + "(?:[-–—.,/][ \\t]*|by[ \\t]+|of[ \\t]+)" + PersonName.TITLE + PersonName.WHOLE
                            + "(?=[ \\t]*(?:$|\\n|[,(.]))"),
            // "Glider aerobatics: Wilf Marrow in his sailplane".
            Way.of(
                    Where.HEAD,
                    "^[ \\t]*" + NO_LABEL + "[\\p{L}][^:\\n]{2,40}:[ \\t]+" + PersonName.WHOLE
                            + "(?=[ \\t]*(?:$|[,(]|(?:in|on) (?:his|her|the|a|an)\\b))"));

    /** Whoever writes. */
    private static final List<Way> WRITER = List.of(
            Way.of(
                    Where.ANYWHERE,
                    "(?:\\b(?i:my name(?: is|['’]s)|this is|(?:hi|hello|hey|hiya|morning|afternoon|evening),?[ \\t]+it['’]?s(?: me,?)?)[ \\t]+|(?:^|[.,!\\n][ \\t]*)(?i:i['’]?m|i am)[ \\t]+)"
                            + PersonName.WHOLE),
            Way.of(Where.WHOLE, SIGNS + PersonName.WHOLE + ROLE + "\\s*(?:$|\\n|[,(])"),
            // A line that is nothing but a name, behind a letter.
            Way.of(
                    Where.FOOT,
                    "^[ \\t]*[-–—~]{0,2}[ \\t]*" + PersonName.WHOLE
                            + "[ \\t]*(?:[.]?|, ?(?i:(?:mon|tues|wednes|thurs|fri|satur|sun)day\\b.*|\\d.*))$"),
            // "Ada Quillan | Display pilot", "Ada Quillan, flying group".
            Way.of(
                    Where.FOOT,
                    "^[ \\t]*[-–—~]{0,2}[ \\t]*" + PersonName.TITLE + PersonName.WHOLE
                            + "[ \\t]*[|•·](?![^\\n]*(?i:secretary|organi[sz]er|coordinator|comment|events?|admin|office|editor|treasurer"
                            + "|display director|marketing|manager))[^\\n|]{2,60}$"),
            // "Yours, Alwyn Marrow (chief pilot)", "Night night, Tobias Crake", and nothing behind it.
            Way.of(
                    Where.END,
                    "^[^\\n]{0,40}[,.!–-][ \\t]*" + PersonName.WHOLE + ROLE + "[ \\t]*\\.?(?:[ \\t]*\\([^)\\n]*\\))?$"),
            Way.of(Where.ANYWHERE, "^(?i:from)[ \\t]*:[ \\t]*" + PersonName.WHOLE + "[ \\t]*(?:$|<|\\(|,)"),
            // One name alone: "I'm Gethin, flying the old trainer".
            Way.of(
                    Where.ANYWHERE,
                    "(?:\\b(?i:my name is|(?:it|this|that)(?: is|['’]?s)(?: me,?)?)|(?:^|[.,!\\n][ \\t]*)(?i:i['’]?m|i am))[ \\t]+"
                            + PersonName.FIRST
                            + "(?=[ \\t]*(?:$|[.!,\\n]|,? (?i:and i|here|again|about|calling|talking|speaking|flying|who flies|with|from|for|the pilot|your pilot)\\b))"),
            Way.of(
                    Where.ANYWHERE,
                    "(?:^|\\n|[,.!] |\\b(?i:so|right|ok|okay|hello|hi),? )[ \\t]*" + PersonName.FIRST
                            + " (?:here|speaking)\\b"),
            Way.of(
                    Where.ANYWHERE,
                    "(?:^|\\n|[,.!] |\\b(?:so|right|ok|okay|hello|hi),? )[ \\t]*" + PersonName.WHOLE
                            + " (?:here|speaking|calling)\\b"),
            // "I'll confirm on the day. Jory", and nothing behind it.
            Way.of(Where.END, "[.!?)][ \\t]+" + PersonName.FIRST + "[ \\t]*[.!x]{0,3}[ \\t]*$"),
            Way.of(Where.WHOLE, SIGNS + PersonName.FIRST + ROLE + "[ \\t]*(?:[.!x]{0,3}(?:$|\\n)|[,(])"),
            Way.of(Where.ANYWHERE, "\\n" + PARTING + "[ \\t,.!–-]{1,3}" + PersonName.FIRST + "[ \\t]*[.!x]{0,3}\\s*$"),
            // A line that is nothing but one name, behind a letter.
            Way.of(Where.LAST_LINE, "^[ \\t]*[-–—~]{0,2}[ \\t]*" + PersonName.FIRST + "[ \\t]*[.x]{0,3}$"));

    /** Teams, where nobody is named. */
    private static final List<Way> TEAM = List.of(
            // "The Sandpipers - 4 ship".
            Way.of(
                    Where.HEAD,
                    "^[ \\t]*([Tt]he(?:[ \\t]+\\p{Lu}[\\p{L}'’-]+){1,3})(?=[ \\t]*[-–—,:(].*(?i:ship|formation|team|pair|synchro|display)\\b)"),
            Way.of(
                    Where.ANYWHERE,
                    "[\"“]([^\"”\\n]{3,40})[\"”],? (?i:(?:\\w+[- ]?(?:ship|man|strong) )?(?:(?:display|parachute|formation|aerobatic|synchro) )*(?:team|pair|formation))\\b"),
            Way.of(
                    Where.FOOT,
                    "^[ \\t]*((?:\\p{Lu}[\\p{L}'’-]+[ \\t]){1,3}(?:(?:Parachute|Display|Formation|Aerobatic) )+Team)[ \\t]*$"));

    /** Of a table; nobody is named so. */
    private static final Pattern ROW = Pattern.compile("^[^\\n\\t|]*[\\t|][^\\n\\t|]*[\\t|][^\\n]*$");

    /** "[18:02] Juno:". */
    private static final Pattern MESSAGE = Pattern.compile(
            "(?:^|\\n)[ \\t]*\\[?[\\d./, ]{0,12}\\d{1,2}[:.]\\d{2}(?::\\d{2})?\\]?[ \\t]*[-–]?[ \\t]*(\\p{Lu}[\\p{L}'’-]+(?: \\p{Lu}[\\p{L}'’-]+)?):");

    private static final Pattern THIRD = Pattern.compile(
            "\\b(?i:he|she)(?: (?:then|will|also|always|usually))? (?:flies|takes off|does|loops|rolls|dives|lands|opens|begins|starts|finishes|fly|turns|goes|says|tells|gave)\\b"
                    + "|\\b(?i:on behalf of|(?:his|her) (?:list|sequence|programme|program|routine|flying|display|figures)|our member)\\b");

    private final List<String> notes;
    private final List<String> said;

    private Pilots(List<String> notes, List<String> said) {
        this.notes = notes;
        this.said = said;
    }

    /**
     * Who is said to fly; null if nobody is.
     *
     * @param notes what stands around the figures
     * @param said the same and the figures as they were written, in order
     */
    static @Nullable String in(List<String> notes, List<String> said) {
        Pilots pilots = new Pilots(notes, said);
        boolean isOfAnother = said.stream().anyMatch(part -> THIRD.matcher(part).find());
        return pilots.first(NAMED)
                .or(() -> isOfAnother ? Optional.empty() : pilots.writer())
                .orElse(null);
    }

    private Optional<String> writer() {
        return first(WRITER).or(this::messenger).or(this::team);
    }

    private Optional<String> first(List<Way> ways) {
        return ways.stream().flatMap(this::found).findFirst();
    }

    private Optional<String> team() {
        return TEAM.stream()
                .flatMap(way -> parts(way.where())
                        .flatMap(part -> way.pattern().matcher(part).results()))
                .map(found -> found.group(1))
                .findFirst();
    }

    private Stream<String> found(Way way) {
        Stream<String> names = parts(way.where())
                .flatMap(part -> way.pattern()
                        .matcher(part)
                        .results()
                        .map(Pilots::names)
                        .filter(Objects::nonNull)
                        .map(Objects::requireNonNull));
        boolean isLast = way.where() == Where.WHOLE || way.where() == Where.FOOT;
        return isLast ? names.reduce((first, last) -> last).stream() : names;
    }

    private Stream<String> parts(Where where) {
        return parted(where).filter(part -> !ROW.matcher(part).find());
    }

    private Stream<String> parted(Where where) {
        return switch (where) {
            case ANYWHERE -> Stream.concat(notes.stream(), Stream.of(String.join("\n", said)));
            case HEAD -> notes.stream().limit(HEADINGS).filter(note -> note.length() <= LONGEST_HEADING);
            case WHOLE -> Stream.of(String.join("\n", notes));
            case FOOT ->
                notes.subList(Math.max(0, notes.size() - LAST), notes.size()).stream()
                        .flatMap(String::lines);
            case END -> notes.stream().skip(Math.max(0, notes.size() - 1));
            case LAST_LINE ->
                notes.stream()
                        .skip(Math.max(0, notes.size() - 1))
                        .map(note -> note.substring(note.lastIndexOf('\n') + 1));
        };
    }

    /** One name, or two with "and" between them. */
    private static @Nullable String names(MatchResult found) {
        List<String> names = IntStream.rangeClosed(1, found.groupCount())
                .mapToObj(found::group)
                .filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .map(PersonName::tidied)
                .filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .toList();
        return names.isEmpty() ? null : String.join(" and ", names);
    }

    /** Who sends most of the messages of a talk. */
    private Optional<String> messenger() {
        Map<String, Long> sent = MESSAGE.matcher(String.join("\n", notes))
                .results()
                .map(message -> message.group(1))
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        return sent.entrySet().stream()
                .filter(one -> one.getValue() >= LEAST_MESSAGES)
                .max(Comparator.comparing(Map.Entry::getValue))
                .map(Map.Entry::getKey);
    }
}
