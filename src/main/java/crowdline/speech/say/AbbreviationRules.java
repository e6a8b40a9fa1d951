package crowdline.speech.say;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Abbreviations, marks, registrations, types and initialisms. */
final class AbbreviationRules {

    private static final String NO_MORE_WORD = "(?![\\p{L}\\p{N}])";

    /** Before a name; a full stop after them ends nothing. */
    private static final Map<String, String> TITLES = Map.ofEntries(
            Map.entry("Mr", "Mister"),
            Map.entry("Mrs", "Missus"),
            Map.entry("Ms", "Miz"),
            Map.entry("Dr", "Doctor"),
            Map.entry("Prof", "Professor"),
            Map.entry("Rev", "Reverend"),
            Map.entry("St", "Saint"),
            Map.entry("Capt", "Captain"),
            Map.entry("Sgt", "Sergeant"),
            Map.entry("Cpl", "Corporal"),
            Map.entry("Maj", "Major"),
            Map.entry("Col", "Colonel"),
            Map.entry("Cdr", "Commander"),
            Map.entry("Lt Cdr", "Lieutenant Commander"),
            Map.entry("Lt", "Lieutenant"),
            Map.entry("Flt Lt", "Flight Lieutenant"),
            Map.entry("Fg Off", "Flying Officer"),
            Map.entry("Plt Off", "Pilot Officer"),
            Map.entry("Sqn Ldr", "Squadron Leader"),
            Map.entry("Wg Cdr", "Wing Commander"),
            Map.entry("Gp Capt", "Group Captain"),
            Map.entry("Air Cdre", "Air Commodore"),
            Map.entry("Fl Lt", "Flight Lieutenant"),
            Map.entry("F/Lt", "Flight Lieutenant"),
            Map.entry("F/O", "Flying Officer"),
            Map.entry("P/O", "Pilot Officer"),
            Map.entry("Sq Ldr", "Squadron Leader"),
            Map.entry("S/Ldr", "Squadron Leader"),
            Map.entry("W/Cdr", "Wing Commander"),
            Map.entry("Brig", "Brigadier"),
            Map.entry("Gen", "General"),
            Map.entry("Hon", "Honourable"));

    private static final Map<String, String> ABBREVIATIONS = abbreviations();

    /** Only where a number follows: "Max" alone is a name. */
    private static final Map<String, String> BEFORE_NUMBER = Map.ofEntries(
            Map.entry("Est", "Established"),
            Map.entry("est", "established"),
            Map.entry("Max", "Maximum"),
            Map.entry("MAX", "maximum"),
            Map.entry("MIN", "minimum"),
            Map.entry("max", "maximum"),
            Map.entry("Min", "Minimum"),
            Map.entry("min", "minimum"),
            Map.entry("p", "page"),
            Map.entry("pp", "pages"),
            Map.entry("b", "born"),
            Map.entry("d", "died"),
            Map.entry("Tel", "Telephone"),
            Map.entry("tel", "telephone"),
            Map.entry("Ext", "Extension"),
            Map.entry("ext", "extension"));

    private final SpelledNumbers words;

    AbbreviationRules(SpelledNumbers words) {
        this.words = words;
    }

    /**
     * Most particular first.
     *
     * @param shouting whether the whole text is in capitals
     */
    List<SayingRule> rules(boolean shouting) {
        List<SayingRule> rules = new ArrayList<>();
        marks(rules);
        rules.add(SayingRule.of(
                "(" + alternatives(TITLES).replace(" ", "\\E\\.? \\Q") + ")" + NO_MORE_WORD + "\\.?(?= \\p{Lu})",
                m -> TITLES.get(m.group(1).replace(".", ""))));
        rules.add(SayingRule.of("(Mr|Dr)\\.?(?= (?:&|and) )", m -> TITLES.get(m.group(1))));
        signsAndShortWords(rules);
        // These never end a sentence, whatever follows their full stop.
        rules.add(SayingRule.of(
                "(vs|e\\.g|i\\.e|incl|excl|approx|Approx|viz)\\.(?= )", m -> ABBREVIATIONS.get(m.group(1))));
        rules.add(SayingRule.of(
                "([Ee]st|[Mm]ax|MAX|MIN|[Mm]in|pp?|b|d|[Tt]el|[Ee]xt)\\.? (?=\\d)",
                m -> BEFORE_NUMBER.get(m.group(1))));
        rules.add(SayingRule.of(
                "(" + alternatives(ABBREVIATIONS) + ")" + NO_MORE_WORD + "(\\.(?! \\p{Lu}| ?$))?",
                m -> ABBREVIATIONS.get(m.group(1))));
        rules.add(SayingRule.of("Sqn" + NO_MORE_WORD, m -> "Squadron"));
        rules.add(SayingRule.of("([ap])\\.m\\b(?:\\.(?! \\p{Lu}|$))?", m -> m.group(1) + " m"));
        registrations(rules);
        rules.add(SayingRule.of(
                "((?:\\p{Lu}\\.){1,8}\\p{Lu})" + NO_MORE_WORD + "(?:\\.(?! \\p{Lu}|$))?",
                m -> Initialisms.spelled(m.group(1))));
        if (!shouting) {
            rules.add(SayingRule.of(
                    "(?<=\\b(?:King|Queen|Prince|Pope|Emperor) \\p{Lu}\\p{L}{1,15} )([IVX]{1,6})" + NO_MORE_WORD, m -> {
                        int value = RomanNumeral.value(m.group(1));
                        return value == 0 ? null : "the " + words.ordinal(value);
                    }));
            rules.add(SayingRule.of("(?<=\\p{L} )([IVX]{2,6})" + NO_MORE_WORD, m -> {
                int value = RomanNumeral.value(m.group(1));
                return value == 0 ? null : words.cardinal(value);
            }));
        }
        rules.add(SayingRule.of(
                "([A-Z]{2,5})(s|'s)?" + NO_MORE_WORD,
                m -> Initialisms.isSpelled(m.group(1), shouting)
                        ? Initialisms.spelled(m.group(1)) + (m.group(2) == null ? "" : "'s")
                        : null));
        return rules;
    }

    private void signsAndShortWords(List<SayingRule> rules) {
        // "High St", where "Old St Mary's" is said as a saint.
        rules.add(SayingRule.of(
                "(?<=\\p{Lu}\\p{L}{1,20} )(St|Rd|Ave)" + NO_MORE_WORD + "(\\.(?! \\p{Lu}| ?$))?",
                m -> switch (m.group(1)) {
                    case "St" -> "Street";
                    case "Rd" -> "Road";
                    default -> "Avenue";
                }));
        rules.add(SayingRule.of("w/o(?= ?\\p{L})", m -> "without"));
        rules.add(SayingRule.of("w/(?= ?\\p{L})", m -> "with"));
        rules.add(SayingRule.of("(?:c\\. ?|c|ca\\.? )(?=\\d)", m -> "circa"));
        rules.add(SayingRule.of(
                "x ?(\\d{1,3})" + NO_MORE_WORD + "(?! times)", m -> "times " + words.quantity(m.group(1))));
        rules.add(SayingRule.of("M ?(\\d\\.\\d{1,3})" + NO_MORE_WORD, m -> "Mach " + words.quantity(m.group(1))));
        rules.add(SayingRule.of(
                "WW ?(II|I|1|2)" + NO_MORE_WORD,
                m -> "World War " + (m.group(1).equals("I") || m.group(1).equals("1") ? "one" : "two")));
        rules.add(SayingRule.of(
                "(QNH|QFE) (\\d{3,4})" + NO_MORE_WORD,
                m -> Initialisms.spelled(m.group(1)) + " " + words.digits(m.group(2))));
        rules.add(SayingRule.of(
                "(?<=(?:ft|feet|metres|m) )(agl|amsl|asl)" + NO_MORE_WORD,
                m -> Initialisms.spelled(m.group(1).toUpperCase(Locale.ROOT))));
    }

    private void marks(List<SayingRule> rules) {
        rules.add(SayingRule.of("(?:Mk\\.?|MK\\.?|Mark) ?([IVX]{1,6}|\\d{1,3})([a-zA-Z])?" + NO_MORE_WORD, m -> {
            String number = m.group(1);
            int value = Character.isDigit(number.charAt(0)) ? Integer.parseInt(number) : RomanNumeral.value(number);
            String letter = m.group(2);
            return value == 0
                    ? null
                    : "Mark " + words.cardinal(value) + (letter == null ? "" : " " + letter.toUpperCase(Locale.ROOT));
        }));
        rules.add(SayingRule.of("(?:No|no|Nr|N[º°])\\.? {0,2}(?=\\d)", m -> "number"));
        rules.add(SayingRule.of("(?:Nos|nos)\\.? ?(?=\\d)", m -> "numbers"));
        rules.add(SayingRule.of("(World War|Part|Type|Phase|Series|Class) ([IVX]{1,6})" + NO_MORE_WORD, m -> {
            int value = RomanNumeral.value(m.group(2));
            return value == 0 ? null : m.group(1) + " " + words.cardinal(value);
        }));
        rules.add(SayingRule.of(
                "([Rr]unway|[Rr]wy|RWY) (0[1-9]|[12]\\d|3[0-6])([LRC])?(?:/(0[1-9]|[12]\\d|3[0-6])([LRC])?)?"
                        + NO_MORE_WORD,
                m -> {
                    String other = m.group(4);
                    return (m.group(1).equals("RWY") ? "r" : m.group(1).substring(0, 1)) + "unway "
                            + words.digits(m.group(2)) + side(m.group(3))
                            + (other == null ? "" : " " + words.digits(other) + side(m.group(5)));
                }));
    }

    private static String side(@Nullable String letter) {
        return letter == null ? "" : letter.equals("L") ? " left" : letter.equals("R") ? " right" : " centre";
    }

    private void registrations(List<SayingRule> rules) {
        // Nationality mark, hyphen, registration mark, as ICAO Annex 7 sets them out.
        rules.add(SayingRule.of("([A-Z]{1,2})[-–]([A-Z]{3,4})" + NO_MORE_WORD, m -> Initialisms.spelled(m.group())));
        rules.add(SayingRule.of(
                "N([1-9]\\d{1,4})([A-Z]{0,2})" + NO_MORE_WORD,
                m -> ("N " + words.digits(m.group(1)) + " " + Initialisms.spelled(m.group(2))).strip()));
        rules.add(SayingRule.of(
                "(?<![\\p{L}\\p{N}]-)([A-Z]{1,3})[-.]?(\\d{1,4})([A-Za-h])?('?s)?" + NO_MORE_WORD,
                m -> Initialisms.spelled(m.group(1)) + " " + words.inName(m.group(2)) + typeLetter(m)));
    }

    private static String typeLetter(Matcher m) {
        String letter = m.group(3);
        String end = m.group(4);
        return (letter == null ? "" : " " + letter.toUpperCase(Locale.ROOT)) + (end == null ? "" : "'s");
    }

    private static String alternatives(Map<String, String> table) {
        return table.keySet().stream()
                .sorted((a, b) -> b.length() - a.length())
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
    }

    private static Map<String, String> abbreviations() {
        Map<String, String> table = new LinkedHashMap<>();
        table.put("e.g", "for example");
        table.put("eg", "for example");
        table.put("i.e", "that is");
        table.put("ie", "that is");
        table.put("etc", "and so on");
        table.put("approx", "approximately");
        table.put("Approx", "Approximately");
        table.put("vs", "versus");
        table.put("viz", "namely");
        table.put("incl", "including");
        table.put("excl", "excluding");
        table.put("max", "maximum");
        table.put("dept", "department");
        table.put("est", "established");
        table.put("aka", "also known as");
        table.put("a.k.a", "also known as");
        table.put("Ltd", "Limited");
        table.put("Bros", "Brothers");
        table.put("Jr", "Junior");
        table.put("Snr", "Senior");
        return Map.copyOf(table);
    }
}
