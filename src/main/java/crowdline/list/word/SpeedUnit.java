package crowdline.list.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The unit of all speeds of a text whose numbers stand without one: "All speeds in km/h", a first speed with its unit and then
 * no more, or figures with three digits behind each.
 *
 * @param plain the unit as a plain word; null if the text has no such numbers
 * @param isSaid whether the text says that it is that of all
 * @param most what no speed of it exceeds
 */
record SpeedUnit(@Nullable String plain, boolean isSaid, double most) {
    private static final SpeedUnit NONE = new SpeedUnit(null, false, 0);

    private static final String UNIT =
            "(?<unit>mph|miles?(?: per| an|/)? ?hour|km ?/? ?h|kph|kmh|kilomet(?:er|re)s?(?: per hour)?|knots?|kts?|kn)(?![a-z])";
    private static final Pattern SAID =
            Pattern.compile("\\b(?:speeds?|everything|airspeeds?|ias)\\b[^.\\n\\d;]{0,25}?\\b" + UNIT
                    + "|(?:\\ball(?: are| is)? in |\\((?:all )?(?:in )?)" + UNIT.replace("unit", "all"));
    private static final Pattern ONE = Pattern.compile("\\d ?" + UNIT);

    /** As many numbers behind figures are speeds, though no unit stands with any. */
    private static final int LEAST_BARE = 3;

    private static final Pattern BARE = Pattern.compile(
            "(?<=[a-z)] |[a-z], |[a-z]\\t|[a-z]; )(?<!(?:turn|roll|circle|orbit|runway|rwy|through|height|base|qnh|no|row|page|is) )[1-5]\\d\\d"
                    + "(?=[ \\t]*(?:$|\\n|[,;)]|l ?(?:-?>?|to|2) ?r\\b|r ?(?:-?>?|to|2) ?l\\b|left|right|from|gear|smoke))(?!, ?\\d)");

    private static final double LEAST = 60;
    private static final double MOST = 500;
    private static final double MOST_KMH = 900;
    /** Where one speed is as high, another may be above {@link #MOST}. */
    private static final double FAST = 300;

    private static final double MOST_FAST = 700;

    /** Heights that passes are flown at are multiples of this, up to {@link #HIGHEST_PASS}. Common practice, no source. */
    private static final int PASS_STEP = 50;

    private static final double HIGHEST_PASS = 300;
    private static final int ANGLE_STEP = 45;
    private static final int CIRCLE = 360;

    private static final Set<String> NOT_BEFORE = Set.of(
            "is",
            "are",
            "am",
            "was",
            "only",
            "row",
            "/",
            "page",
            "for",
            "of",
            "in",
            "the",
            "a",
            "no",
            "number",
            "runway",
            "rwy",
            "age",
            "aged",
            "turned",
            "height",
            "base",
            "top",
            "floor",
            "alt",
            "altitude",
            "gate",
            "qnh",
            "through",
            "point",
            "channel",
            "route",
            "+",
            "she's",
            "shes",
            "he's",
            "hes",
            "being",
            "i'm",
            "turns",
            "bank",
            "pitch",
            "fl",
            "than");

    private static final Set<String> NOT_BEHIND = Set.of(
            "kt",
            "mph",
            "km",
            "kmh",
            "kph",
            "ft",
            "metre",
            "m",
            "s",
            "min",
            "turn",
            "degree",
            "point",
            "g",
            "kg",
            "hp",
            "lb",
            "litre",
            "people",
            "am",
            "pm",
            "hour",
            "hr",
            "year",
            "old",
            "x",
            "%",
            "/",
            "to",
            "time",
            "fpm",
            "hundred",
            "thousand",
            "agl",
            "day",
            "of",
            "up",
            "high",
            "ish",
            "bank");

    private static final Set<String> TURNING =
            Set.of("turn", "circle", "orbit", "degree", "steep", "rate", "spin", "pedal", "rolling", "spot", "full");
    /** Ahead of "roll", which turns as far as one likes. */
    private static final Set<String> PLAIN_ROLL = Set.of("half", "aileron", "a", "the", "then", "and", "through");

    private static final Set<String> PASSING = Set.of("pass", "past", "by", "flypast", "flyby", "run");

    /** Of a text that is {@link Words#folded}. */
    static SpeedUnit of(String folded) {
        Matcher said = SAID.matcher(folded);
        if (said.find()) {
            String unit = said.group("unit") == null ? said.group("all") : said.group("unit");
            return new SpeedUnit(plain(unit), true, most(plain(unit), folded));
        }
        Map<String, Integer> units = new TreeMap<>();
        Matcher one = ONE.matcher(folded);
        while (one.find()) {
            units.merge(plain(one.group("unit")), 1, Integer::sum);
        }
        if (units.size() == 1) {
            String unit = units.keySet().iterator().next();
            return new SpeedUnit(unit, false, most(unit, folded));
        }
        boolean isBare = units.isEmpty() && BARE.matcher(folded).results().count() >= LEAST_BARE;
        return isBare ? new SpeedUnit("kt", false, most("kt", folded)) : NONE;
    }

    private static double most(String unit, String folded) {
        boolean isFast = BARE.matcher(folded)
                .results()
                .mapToDouble(found -> Double.parseDouble(found.group()))
                .anyMatch(speed -> speed >= FAST && speed < MOST);
        return unit.equals("kmh") ? MOST_KMH : isFast ? MOST_FAST : MOST;
    }

    private static String plain(String unit) {
        return unit.startsWith("kn") || unit.startsWith("kt") ? "kt" : unit.startsWith("m") ? "mph" : "kmh";
    }

    /** The words of a stretch, with the unit behind each number that is a speed without one. */
    List<Word> with(List<Word> words, String folded) {
        if (plain == null || words.stream().noneMatch(word -> word.number() != null)) {
            return words;
        }
        boolean isPass = words.stream().anyMatch(word -> PASSING.contains(word.plain()));
        boolean turns = words.stream().anyMatch(word -> TURNING.contains(word.plain()))
                || IntStream.range(0, words.size())
                        .anyMatch(i -> words.get(i).plain().equals("roll")
                                && (i == 0
                                        || PLAIN_ROLL.contains(words.get(i - 1).plain())));
        List<Word> all = new ArrayList<>(words.size() + 1);
        for (int i = 0; i < words.size(); i++) {
            Word word = words.get(i);
            all.add(word);
            if (isSpeed(words, i, isPass, turns) && !isOfSeveral(folded, word)) {
                all.add(new Word(plain, word.start(), word.end(), null));
            }
        }
        return all;
    }

    /** "0, 90, 180, 270". */
    private static boolean isOfSeveral(String folded, Word word) {
        String before =
                folded.substring(Math.max(0, word.start() - 3), word.start()).strip();
        String behind = folded.substring(word.end(), Math.min(folded.length(), word.end() + 3))
                .strip();
        return (before.length() > 1 && before.endsWith(",") && Character.isDigit(before.charAt(before.length() - 2)))
                || (behind.length() > 1 && behind.startsWith(",") && Character.isDigit(behind.charAt(1)));
    }

    private static boolean isOneSide(String word) {
        return word.equals("left") || word.equals("right");
    }

    private boolean isSpeed(List<Word> words, int at, boolean isPass, boolean turns) {
        Double number = words.get(at).number();
        if (number == null || number < LEAST || number >= most || number != Math.rint(number)) {
            return false;
        }
        String before = at == 0 ? "" : words.get(at - 1).plain();
        String behind = at + 1 == words.size() ? "" : words.get(at + 1).plain();
        boolean isAngle = number % ANGLE_STEP == 0
                && (turns
                        || (number % CIRCLE == 0 && !isPass && !before.equals("at"))
                        || (isOneSide(behind) && !isPass));
        boolean isHeight =
                !isSaid && isPass && before.equals("at") && number % PASS_STEP == 0 && number <= HIGHEST_PASS;
        boolean isNumber = at + 1 < words.size() && words.get(at + 1).number() != null;
        return !isAngle && !isHeight && !isNumber && !NOT_BEFORE.contains(before) && !NOT_BEHIND.contains(behind);
    }
}
