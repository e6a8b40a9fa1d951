package crowdline.speech;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Abbreviations, marks, registrations, types and initialisms. */
final class WordRules {

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
            Map.entry("Gp Capt", "Group Captain"));

    private static final Map<String, String> ABBREVIATIONS = abbreviations();

    private final NumberWords words;

    WordRules(NumberWords words) {
        this.words = words;
    }

    /**
     * Most particular first.
     *
     * @param shouting whether the whole text is in capitals
     */
    List<Rule> rules(boolean shouting) {
        List<Rule> rules = new ArrayList<>();
        marks(rules);
        rules.add(Rule.of(
                "(" + alternatives(TITLES) + ")" + NO_MORE_WORD + "\\.?(?= \\p{Lu})", m -> TITLES.get(m.group(1))));
        rules.add(Rule.of(
                "(" + alternatives(ABBREVIATIONS) + ")" + NO_MORE_WORD + "(\\.(?! \\p{Lu}| ?$))?",
                m -> ABBREVIATIONS.get(m.group(1))));
        rules.add(Rule.of("Sqn" + NO_MORE_WORD, m -> "Squadron"));
        rules.add(Rule.of("([ap])\\.m\\b(?:\\.(?! \\p{Lu}|$))?", m -> m.group(1) + " m"));
        registrations(rules);
        rules.add(Rule.of(
                "((?:\\p{Lu}\\.){1,8}\\p{Lu})" + NO_MORE_WORD + "(?:\\.(?! \\p{Lu}|$))?",
                m -> Initialisms.spelled(m.group(1))));
        if (!shouting) {
            rules.add(Rule.of("(?<=\\p{L} )([IVX]{2,6})" + NO_MORE_WORD, m -> {
                int value = RomanNumeral.value(m.group(1));
                return value == 0 ? null : words.cardinal(value);
            }));
        }
        rules.add(Rule.of(
                "([A-Z]{2,5})(s|'s)?" + NO_MORE_WORD,
                m -> Initialisms.isSpelled(m.group(1), shouting)
                        ? Initialisms.spelled(m.group(1)) + (m.group(2) == null ? "" : "'s")
                        : null));
        return rules;
    }

    private void marks(List<Rule> rules) {
        rules.add(Rule.of("(?:Mk\\.?|MK\\.?|Mark) ?([IVX]{1,6}|\\d{1,3})([a-zA-Z])?" + NO_MORE_WORD, m -> {
            String number = m.group(1);
            int value = Character.isDigit(number.charAt(0)) ? Integer.parseInt(number) : RomanNumeral.value(number);
            String letter = m.group(2);
            return value == 0
                    ? null
                    : "Mark " + words.cardinal(value)
                            + (letter == null ? "" : " " + letter.toUpperCase(java.util.Locale.ROOT));
        }));
        rules.add(Rule.of("(?:No|no|Nr)\\.? ?(?=\\d)", m -> "number"));
        rules.add(Rule.of("(?:Nos|nos)\\.? ?(?=\\d)", m -> "numbers"));
        rules.add(Rule.of("(World War|Part|Type|Phase|Series|Class) ([IVX]{1,6})" + NO_MORE_WORD, m -> {
            int value = RomanNumeral.value(m.group(2));
            return value == 0 ? null : m.group(1) + " " + words.cardinal(value);
        }));
        rules.add(Rule.of("([Rr]unway) (0[1-9]|[12]\\d|3[0-6])([LRC])?" + NO_MORE_WORD, m -> {
            String side = m.group(3);
            String said = side == null ? "" : side.equals("L") ? " left" : side.equals("R") ? " right" : " centre";
            return m.group(1) + " " + words.digits(m.group(2)) + said;
        }));
    }

    private void registrations(List<Rule> rules) {
        // Nationality mark, hyphen, registration mark, as ICAO Annex 7 sets them out.
        rules.add(Rule.of("([A-Z]{1,2})-([A-Z]{3,4})" + NO_MORE_WORD, m -> Initialisms.spelled(m.group())));
        rules.add(Rule.of(
                "N([1-9]\\d{1,4})([A-Z]{0,2})" + NO_MORE_WORD,
                m -> ("N " + words.digits(m.group(1)) + " " + Initialisms.spelled(m.group(2))).strip()));
        rules.add(Rule.of(
                "(?<![\\p{L}\\p{N}]-)([A-Z]{1,3})-?(\\d{1,4})([A-Z])?" + NO_MORE_WORD,
                m -> Initialisms.spelled(m.group(1)) + " " + words.inName(m.group(2)) + typeLetter(m)));
    }

    private static String typeLetter(Matcher m) {
        String letter = m.group(3);
        return letter == null ? "" : " " + letter;
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
        return Map.copyOf(table);
    }
}
