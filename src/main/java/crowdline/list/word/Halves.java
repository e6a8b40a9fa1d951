package crowdline.list.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Makes one number of "one and a half", "3 turns and a half" and "three quarters". */
final class Halves {
    private static final Map<String, Double> PARTS = Map.of("half", 0.5, "quarter", 0.25, "three-quarter", 0.75);

    /** What "half" is more likely said of than of the number before it, unless there are several. */
    private static final Set<String> HALVED = Set.of("cuban", "loop", "roll", "flick");

    private Halves() {}

    private static boolean isHalved(List<Word> words, int at) {
        if (at >= words.size()) {
            return false;
        }
        Word word = words.get(at);
        boolean isPlural = word.end() - word.start() > word.plain().length();
        return HALVED.contains(word.plain()) && !isPlural;
    }

    /** "three quarters" is one part, but "three quarter clovers" are three. */
    static List<Word> quartersJoined(List<Word> words) {
        List<Word> joined = new ArrayList<>(words.size());
        for (int i = 0; i < words.size(); i++) {
            boolean isThree = words.get(i).plain().equals("3")
                    && i + 1 < words.size()
                    && words.get(i + 1).plain().equals("quarter")
                    && (i + 2 == words.size() || !words.get(i + 2).plain().startsWith("clover"));
            joined.add(
                    isThree
                            ? new Word(
                                    "three-quarter",
                                    words.get(i).start(),
                                    words.get(i + 1).end(),
                                    null)
                            : words.get(i));
            i += isThree ? 1 : 0;
        }
        return joined;
    }

    /** "2 turns 1/4", not "2 turns, quarter clover". */
    private static boolean isPartOfATurn(List<Word> words, int at) {
        return at + 2 < words.size()
                && words.get(at).number() != null
                && words.get(at + 1).plain().equals("turn")
                && words.get(at + 2).plain().endsWith("quarter")
                && !isHalved(words, at + 3)
                && (at + 3 == words.size()
                        || (!words.get(at + 3).plain().startsWith("clover")
                                && !words.get(at + 3).plain().equals("of")));
    }

    /** Behind "3 turns and a half"; -1 if the words from here on are none. */
    private static int behindTurnsAndAHalf(List<Word> words, int at) {
        int half = at + 3 < words.size() && words.get(at + 3).plain().equals("a") ? at + 4 : at + 3;
        return half < words.size()
                        && words.get(at).number() != null
                        && words.get(at + 1).plain().equals("turn")
                        && words.get(at + 2).plain().equals("and")
                        && words.get(half).plain().equals("half")
                        && !isHalved(words, half + 1)
                ? half + 1
                : -1;
    }

    /** "one and a half" is one number. */
    static List<Word> joined(List<Word> words) {
        List<Word> joined = new ArrayList<>(words.size());
        for (int i = 0; i < words.size(); i++) {
            Word word = words.get(i);
            int behindTurns = behindTurnsAndAHalf(words, i);
            if (behindTurns > 0) {
                double sum = Objects.requireNonNull(word.number()) + 0.5;
                joined.add(new Word(String.valueOf(sum), word.start(), word.end(), sum));
                joined.add(words.get(i + 1));
                i = behindTurns - 1;
                continue;
            }
            if (isPartOfATurn(words, i)) {
                double sum = Objects.requireNonNull(word.number())
                        + PARTS.getOrDefault(words.get(i + 2).plain(), 0.0);
                joined.add(new Word(String.valueOf(sum), word.start(), word.end(), sum));
                joined.add(words.get(i + 1));
                i += 2;
                continue;
            }
            int half = i + 2 < words.size() && words.get(i + 2).plain().equals("a") ? i + 3 : i + 2;
            boolean isOne = word.plain().equals("turn")
                    || (half == i + 3 && word.plain().matches("roll|flick|spin|rotation|loop"));
            Double number = isOne ? Double.valueOf(1) : word.number();
            if (number != null
                    && half < words.size()
                    && words.get(i + 1).plain().equals("and")
                    && PARTS.containsKey(words.get(half).plain())
                    && !isHalved(words, half + 1)) {
                double sum = number + PARTS.getOrDefault(words.get(half).plain(), 0.0);
                Word many = new Word(
                        String.valueOf(sum), word.start(), words.get(half).end(), sum);
                if (isOne && !word.plain().equals("turn")) {
                    joined.add(word);
                    joined.add(many);
                } else {
                    joined.add(many);
                    if (isOne) {
                        joined.add(word);
                    }
                }
                i = half;
            } else {
                joined.add(word);
            }
        }
        return joined;
    }
}
