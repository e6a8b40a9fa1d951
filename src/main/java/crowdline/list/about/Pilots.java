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
    private static final String WORD = "\\p{Lu}[\\p{L}'’-]*\\.?";
    private static final String NAME =
            "(" + WORD + "(?:[ \\t]+(?:(?:de|van|von|der|den|la|le|du|ten)[ \\t]+)*" + WORD + "){1,3})";
    private static final Pattern NAMED =
            Pattern.compile("(?:\\b(?i:(?:display )?pilot(?:['’]s)?(?: name)?|flown by|led by|"
                    + "leader|performer|team lead(?:er)?)\\b\\s*(?i:is\\b|will be\\b|:|-|–|=|,)?[ \\t]*"
                    + "|\\b(?i:my name is|this is)[ \\t]+|(?:^|[.,!\\n][ \\t]*)(?i:i['’]?m|i am)[ \\t]+)" + NAME);
    private static final Pattern SIGNED =
            Pattern.compile("(?:^|\\n|[.!,][ \\t]*)(?i:(?:many |kind |best |warm |all the )?(?:cheers|"
                    + "thanks|regards|wishes|best|rgds)|thank you|yours(?: \\w+)?|all the best|atb|see you(?: \\w+){0,3})[ \\t]*[,.!–-]?\\s+"
                    + NAME + "\\s*(?:$|\\n|[,(])");
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
            "your");

    private static final Pattern BETWEEN = Pattern.compile("[ .]+");

    private Pilots() {}

    static @Nullable String in(List<String> notes) {
        String named =
                notes.stream().flatMap(note -> found(NAMED, note)).findFirst().orElse(null);
        if (named != null
                || notes.stream().noneMatch(note -> MYSELF.matcher(note).find())) {
            return named;
        }
        String all = String.join("\n", notes);
        return found(SIGNED, all).reduce((first, last) -> last).orElse(null);
    }

    private static Stream<String> found(Pattern pattern, String note) {
        return pattern.matcher(note)
                .results()
                .map(result -> result.group(1).strip())
                .map(name -> name.replaceAll("\\s+", " "))
                .filter(Pilots::isName);
    }

    private static boolean isName(String name) {
        return BETWEEN.splitAsStream(name.toLowerCase(Locale.UK)).noneMatch(NO_NAMES::contains);
    }
}
