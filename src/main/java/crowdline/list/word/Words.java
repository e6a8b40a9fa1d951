package crowdline.list.word;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes a text apart into words, in a form in which two ways of writing a thing are one. */
public final class Words {
    private static final Pattern WORD = Pattern.compile("\\d{1,2}:\\d{2}(?!\\d)|\\d{1,2}'\\d{2}\""
            + "|(?<!\\p{L})(?<way>l ?(?:-+>?|>|to|2|→|/) ?r|r ?(?:-+>?|>|to|2|→|/) ?l|ltr|rtl)(?!\\p{L})"
            + "|(?<whole>\\d{1,3})(?: |-| and )?(?<part>1/2|1/4|3/4|[½¼¾])(?!\\d)"
            + "|(?<ordinal>(?<![\\d.,:])\\d{1,2}(?:st|nd|rd|th))(?!\\p{L})"
            + "|(?<fraction>1/2|1/4|3/4|[½¼¾])(?!\\d)"
            + "|(?<thousands>\\d{1,3}(?:,\\d{3}){1,3})(?!\\d)"
            + "|(?<number>\\d{1,9}(?:\\.\\d{1,6}|,(?:5|25|75)(?![\\d,]))?)(?:(?<![5-9]\\d\\d)(?<!\\d{4})ish(?!\\p{L}))?"
            + "|(?<!\\p{L})(?:w/(?!over|o(?!\\p{L}))|w\\.(?=\\s)|(?:c/l|k/e|o/side|o/s)(?!\\p{L}))"
            + "|\\p{L}+(?:" + Hyphens.SOFT + "+\\p{L}+)*+(?:'\\p{L}+){0,3}"
            + "|[^\\s\\p{L}]");

    /** Signs that say nothing. */
    private static final String SILENT = Hyphens.SOFT + "-()[]{}.,;:!?_\"'|=<#•";

    private static final Map<String, String> SAME = same(
            "centre center ctr central",
            "flick snap",
            "point pt pnt pts facet facette",
            "kt kts knot kn kias kst",
            "ft feet foot '",
            "metre meter mtr",
            "s sec second",
            "min minute",
            "reverse rev reversed revers rever",
            "inverted inv",
            "negative neg",
            "degree deg °",
            "left lh l lft port",
            "to too",
            "through thru",
            "cuban cub cubain cubian",
            "vertical vert vertically",
            "low lo",
            "double dbl",
            "knifeedge ke k/e",
            "square sq quadratic",
            "reposition repo repos",
            "with w/ w.",
            "turn trn turner",
            "landing ldg lndg",
            "inverted upsidedown inverse",
            "right rh r rt rgt starboard stbd",
            "aileron ail",
            "hesitation hes hesi",
            "half halves",
            "down dn",
            "outside o/s o/side",
            "barrel bbl",
            "shark shk",
            "humpty hmpty",
            "avalanche avalnche avalnch",
            "quarter qtr",
            "and & + n adn",
            "the teh hte",
            "at @",
            "top apex",
            "height ht hgt",
            "about ~ bout abt",
            "x × *",
            "1 one",
            "2 two zwei deux",
            "3 three drei trois",
            "4 four vier quatre",
            "5 five",
            "6 six",
            "7 seven",
            "8 eight ate",
            "9 nine",
            "10 ten",
            "12 twelve",
            "16 sixteen",
            "0 zero",
            "11 eleven",
            "13 thirteen",
            "14 fourteen",
            "15 fifteen",
            "17 seventeen",
            "18 eighteen",
            "19 nineteen",
            "20 twenty",
            "30 thirty",
            "40 forty fourty",
            "50 fifty",
            "60 sixty",
            "70 seventy",
            "80 eighty",
            "90 ninety",
            "45 fortyfive",
            "leftend lhe lhs",
            "rightend rhe rhs",
            "opposite opp",
            "pass passage passing",
            "slow slowly",
            "climb clb",
            "descend desc dsnd",
            "from frm fr fm",
            "spin vrille barrena",
            "loop looping lupe lupin",
            "roll role rowl rool tonneau rll",
            "right write riht",
            "end edn ned",
            "tail tale",
            "toward towards",
            "across accross",
            "except xc",
            "smoke smokes smoking");

    /** Of other languages, in lists that are written in them or half in them: no English word is a misspelt one of these. */
    private static final Map<String, String> FOREIGN = same(
            "left links gauche",
            "right rechts droite",
            "slow langsam",
            "to nach",
            "from von",
            "i've ive",
            "i'm im",
            "spin vite",
            "turn tours umdrehung umdrehungen");

    private static final List<String> ORDINALS = List.of(
            "first",
            "next",
            "third",
            "fourth",
            "fifth",
            "sixth",
            "seventh",
            "eighth",
            "ninth",
            "tenth",
            "eleventh",
            "twelfth");

    private Words() {}

    /** All ways to write a word that are known. */
    public static Set<String> spellings() {
        return SAME.keySet();
    }

    private static Map<String, String> same(String... rows) {
        Map<String, String> same = new HashMap<>();
        for (String row : rows) {
            List<String> words = List.of(row.split(" "));
            words.subList(1, words.size()).forEach(word -> same.put(word, words.get(0)));
        }
        return Map.copyOf(same);
    }

    /** The text in small letters without accents, letter for letter as long as it was. */
    public static String folded(String text) {
        StringBuilder folded = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            folded.append(folded(text.charAt(i)));
        }
        return folded.toString();
    }

    private static char folded(char c) {
        if (c < 128) {
            return Character.toLowerCase(c);
        }
        return switch (c) {
            case '’', '‘', '′', '`', '´' -> '\'';
            case '–', '—', '−', '‐', '‑', '‒' -> '-';
            case '“', '”', '″' -> '"';
            case '\u00a0', '\u2009', '\u202f' -> ' ';
            default -> {
                char plain = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFD)
                        .charAt(0);
                yield Character.toLowerCase(plain);
            }
        };
    }

    /** The words of a text that is {@link #folded}. */
    public static List<Word> of(String folded) {
        return of(folded, 0, folded.length());
    }

    /** The plain words of these, in order. */
    public static List<String> plain(List<Word> words) {
        return words.stream().map(Word::plain).toList();
    }

    /** The words of a stretch of a text that is {@link #folded}. */
    public static List<Word> of(String folded, int from, int to) {
        List<Word> words = new ArrayList<>();
        Matcher found = WORD.matcher(folded).region(from, to);
        while (found.find()) {
            String text = found.group().replace(Hyphens.SOFT, "");
            boolean isFeet = text.equals("'")
                    && !words.isEmpty()
                    && words.get(words.size() - 1).number() != null;
            boolean isSeconds = text.equals("\"")
                    && found.start() > 0
                    && Character.isDigit(folded.charAt(found.start() - 1))
                    && !words.isEmpty()
                    && words.get(words.size() - 1).end() == found.start()
                    && (words.get(words.size() - 1).start() == 0
                            || folded.charAt(words.get(words.size() - 1).start() - 1) != '"')
                    && words.get(words.size() - 1).number() != null;
            if (isSeconds) {
                words.add(new Word("s", found.start(), found.end(), null));
                continue;
            }
            if (text.equals("w") && found.end() < folded.length() && folded.charAt(found.end()) == ' ') {
                words.add(new Word("with", found.start(), found.end(), null));
                continue;
            }
            if (text.equals("-") && isRange(folded, found)) {
                words.add(new Word("to", found.start(), found.end(), null));
                continue;
            }
            if (text.length() == 1 && SILENT.contains(text) && !isFeet) {
                continue;
            }
            boolean isTurns = text.equals("t")
                    && !words.isEmpty()
                    && words.get(words.size() - 1).number() != null;
            words.add(isTurns ? new Word("turn", found.start(), found.end(), null) : word(found, text));
        }
        return Halves.joined(Halves.quartersJoined(Numerals.joined(words, folded)));
    }

    /** "10-12". */
    private static boolean isRange(String folded, Matcher dash) {
        return dash.start() > 0
                && dash.end() < folded.length()
                && Character.isDigit(folded.charAt(dash.start() - 1))
                && Character.isDigit(folded.charAt(dash.end()));
    }

    private static Word word(Matcher found, String text) {
        if (text.endsWith("\"") && text.length() > 1) {
            return new Word(text.replace('\'', ':').replace("\"", ""), found.start(), found.end(), null);
        }
        String part = found.group("part");
        if (part != null) {
            return number(found, Double.parseDouble(found.group("whole")) + share(part));
        }
        if (found.group("ordinal") != null) {
            int rank = Integer.parseInt(text.replaceAll("\\D", ""));
            String plain = rank > 0 && rank <= ORDINALS.size() ? ORDINALS.get(rank - 1) : text;
            return new Word(plain, found.start(), found.end(), null);
        }
        if (found.group("way") != null) {
            return new Word(text.startsWith("l") ? "lefttoright" : "righttoleft", found.start(), found.end(), null);
        }
        if (found.group("fraction") != null) {
            double share = share(text);
            return new Word(
                    share == 0.5 ? "half" : share == 0.25 ? "quarter" : "three-quarter",
                    found.start(),
                    found.end(),
                    null);
        }
        if (found.group("thousands") != null) {
            return number(found, Double.parseDouble(text.replace(",", "")));
        }
        if (found.group("number") != null) {
            return number(found, Double.parseDouble(found.group("number").replace(',', '.')));
        }
        if (text.charAt(0) == Arrows.RIGHT || text.charAt(0) == Arrows.LEFT) {
            boolean isRight = text.charAt(0) == Arrows.RIGHT;
            return new Word(isRight ? "lefttoright" : "righttoleft", found.start(), found.end(), null);
        }
        String plain = plain(text);
        boolean isNumber = Character.isDigit(plain.charAt(0)) && plain.indexOf(':') < 0;
        return new Word(plain, found.start(), found.end(), isNumber ? Double.valueOf(plain) : null);
    }

    private static Word number(Matcher found, double number) {
        String plain = number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
        return new Word(plain, found.start(), found.end(), number);
    }

    private static double share(String fraction) {
        return switch (fraction) {
            case "1/4", "¼" -> 0.25;
            case "3/4", "¾" -> 0.75;
            default -> 0.5;
        };
    }

    /** The plain form of one word. */
    public static String plain(String word) {
        String same = FOREIGN.getOrDefault(word, SAME.get(word));
        if (same != null) {
            return same;
        }
        String one = singular(word.endsWith("'s") ? word.substring(0, word.length() - 2) : word);
        return SAME.getOrDefault(one, one);
    }

    private static String singular(String word) {
        if (word.length() < 4 || !word.endsWith("s") || word.endsWith("ss") || word.endsWith("us")) {
            return word;
        }
        if (word.endsWith("ies") && word.length() > 4) {
            return word.substring(0, word.length() - 3) + "y";
        }
        return word.endsWith("sses") ? word.substring(0, word.length() - 2) : word.substring(0, word.length() - 1);
    }
}
