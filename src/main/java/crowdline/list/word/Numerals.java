package crowdline.list.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Makes one number of what is spoken in several words: "one hundred and forty", "one forty", "one four zero", "forty-five"
 * and "two point five". Digits that stand beside each other stay as many numbers as they are.
 */
final class Numerals {
    private static final Set<String> UNITS = Set.of("s", "min");

    private final List<Word> words;
    private final String folded;

    private Numerals(List<Word> words, String folded) {
        this.words = words;
        this.folded = folded;
    }

    /** The words with every spoken number as one. */
    static List<Word> joined(List<Word> words, String folded) {
        boolean isNone = words.stream().noneMatch(word -> word.number() != null || isScale(word));
        return isNone ? words : new Numerals(words, folded).joined();
    }

    private List<Word> joined() {
        List<Word> joined = new ArrayList<>(words.size());
        int i = 0;
        while (i < words.size()) {
            Spoken spoken = spokenAt(i);
            if (spoken == null || (spoken.to() == i + 1 && !isScale(words.get(i)))) {
                joined.add(words.get(i++));
            } else {
                joined.add(word(i, spoken));
                i = spoken.to();
            }
        }
        return joined;
    }

    private Word word(int from, Spoken spoken) {
        double value = spoken.value();
        String plain = value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
        return new Word(
                plain, words.get(from).start(), words.get(spoken.to() - 1).end(), value);
    }

    /** A number, and where the words behind it begin. */
    private record Spoken(double value, int to) {}

    private @Nullable Spoken spokenAt(int from) {
        Spoken digits = digitsAt(from);
        if (digits != null) {
            return digits;
        }
        Spoken part = partAt(from);
        if (part == null || part.to() >= words.size()) {
            return part;
        }
        int next = part.to();
        Spoken withHalf = withHalfAt(part);
        if (withHalf != null) {
            return withHalf;
        }
        if (words.get(next).plain().equals("thousand")) {
            Spoken rest = partAt(afterAnd(next + 1));
            return rest == null || rest.value() >= 1000
                    ? new Spoken(part.value() * 1000, next + 1)
                    : new Spoken(part.value() * 1000 + rest.value(), rest.to());
        }
        boolean isPoint = words.get(next).plain().equals("point")
                && isSpoken(next)
                && spoken(next + 1, 1, 9) > 0
                && part.value() < 10
                && spoken(from, 0, 9) >= 0;
        return isPoint ? new Spoken(part.value() + spoken(next + 1, 1, 9) / 10, next + 2) : part;
    }

    /** "Two and a half thousand". */
    private @Nullable Spoken withHalfAt(Spoken part) {
        int half = part.to() + 1;
        half += half < words.size() && words.get(half).plain().equals("a") ? 1 : 0;
        boolean isHalf = half + 1 < words.size()
                && words.get(part.to()).plain().equals("and")
                && words.get(half).plain().equals("half")
                && isScale(words.get(half + 1));
        return isHalf
                ? new Spoken(
                        (part.value() + 0.5) * (words.get(half + 1).plain().equals("hundred") ? 100 : 1000), half + 2)
                : null;
    }

    /** "One four zero": the digits of one number, of which nobody says fewer than three. */
    private @Nullable Spoken digitsAt(int from) {
        double value = 0;
        int i = from;
        while (spoken(i, 0, 9) >= 0) {
            value = 10 * value + spoken(i, 0, 9);
            i++;
        }
        return i - from >= 3 && i - from <= 5 ? new Spoken(value, i) : null;
    }

    /** What is said of a number below a thousand, or in hundreds. */
    private @Nullable Spoken partAt(int from) {
        if (from >= words.size()) {
            return null;
        }
        Spoken small = belowHundredAt(from);
        int next = small == null ? from : small.to();
        if (next < words.size() && words.get(next).plain().equals("hundred")) {
            double hundreds = 100 * (small == null ? 1 : small.value());
            Spoken rest = belowHundredAt(afterAnd(next + 1));
            return rest == null ? new Spoken(hundreds, next + 1) : new Spoken(hundreds + rest.value(), rest.to());
        }
        if (small == null) {
            return words.get(from).plain().equals("thousand") ? new Spoken(1, from) : null;
        }
        Spoken tens = small.value() >= 1 && small.value() < 10 && spoken(from, 1, 9) > 0 ? belowHundredAt(next) : null;
        return tens == null || tens.value() < 10 || isParted(tens)
                ? small
                : new Spoken(small.value() * 100 + tens.value(), tens.to());
    }

    /** "Two twenty second rolls" and "one forty-five degree line" are two numbers. */
    private boolean isParted(Spoken tens) {
        if (tens.to() >= words.size()) {
            return false;
        }
        String after = words.get(tens.to()).plain();
        return UNITS.contains(after) || (tens.value() == 45 && after.equals("degree"));
    }

    private @Nullable Spoken belowHundredAt(int at) {
        if (at >= words.size()) {
            return null;
        }
        Double number = words.get(at).number();
        if (number == null || number >= 100) {
            return null;
        }
        double ones = number >= 20 && number % 10 == 0 && isSpoken(at) ? spoken(at + 1, 1, 9) : -1;
        return ones > 0 ? new Spoken(number + ones, at + 2) : isCounting(at) ? new Spoken(number, at + 1) : null;
    }

    /** A number in digits is part of a longer one only ahead of "hundred" and "thousand". */
    private boolean isCounting(int at) {
        return isSpoken(at) || (at + 1 < words.size() && isScale(words.get(at + 1)));
    }

    /** A number in words within bounds, or -1. */
    private double spoken(int at, double least, double most) {
        Double number = at < words.size() && isSpoken(at) ? words.get(at).number() : null;
        return number != null && number >= least && number <= most ? number : -1;
    }

    private boolean isSpoken(int at) {
        return Character.isLetter(folded.charAt(words.get(at).start()));
    }

    private int afterAnd(int at) {
        return at < words.size() && words.get(at).plain().equals("and") ? at + 1 : at;
    }

    private static boolean isScale(Word word) {
        return word.plain().equals("hundred") || word.plain().equals("thousand");
    }
}
