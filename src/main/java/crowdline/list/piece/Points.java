package crowdline.list.piece;

import crowdline.list.name.Names.Sense;
import crowdline.list.word.Word;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A number that may be the points of a roll, though no roll of the catalogue has as many, or that may count rolls.
 *
 * @param sense what may be meant
 * @param at which word is the number
 */
public record Points(Sense sense, int at) {
    private static final Map<Integer, String> ROLLS =
            Map.of(2, "two-point roll", 4, "four-point roll", 8, "eight-point roll");

    private static final Set<String> UNITS = Set.of("s", "min", "m", "g", "turn");

    private static final Set<String> STOPS = Set.of("stop", "stopped", "stopping", "pause", "hesitate");

    /** Of a name that stands at these words; null if it has no such number. */
    static @Nullable Points of(List<Word> words, int from, int to) {
        Double before = from == 0 ? null : words.get(from - 1).number();
        if (before != null && words.get(from).plain().equals("point")) {
            return new Points(sense(before, ROLLS.size(), List.of()), from - 1);
        }
        boolean isOf = from > 2
                && before != null
                && words.get(from).plain().equals("roll")
                && words.get(from - 2).plain().equals("of")
                && words.get(from - 3).number() != null;
        if (isOf && before != null) {
            return new Points(sense(before, 2, List.of()), from - 1);
        }
        Points stops = stops(words, from, to);
        if (stops != null) {
            return stops;
        }
        Points counted = counted(words, from, to);
        if (counted != null) {
            return counted;
        }
        boolean isTimes = to == from + 1
                && words.get(from).plain().equals("roll")
                && to + 2 < words.size()
                && Set.of("of", "in").contains(words.get(to).plain())
                && words.get(to + 2).plain().equals("time");
        Double after = isTimes ? words.get(to + 1).number() : null;
        if (after == null) {
            return null;
        }
        // "A roll in four times" is no English, and of what else it is said nobody knows.
        boolean isForeign = words.get(to).plain().equals("in");
        return new Points(isForeign ? sure(after) : sense(after, 2, List.of("aileron roll")), to + 1);
    }

    /** "Hesitation roll (8)", "hesitation roll 8 times". */
    private static @Nullable Points counted(List<Word> words, int from, int to) {
        boolean hesitates =
                words.subList(from, to).stream().anyMatch(word -> word.plain().equals("hesitation"));
        Double number = to < words.size() ? words.get(to).number() : null;
        boolean isLast =
                to + 1 >= words.size() || !UNITS.contains(words.get(to + 1).plain());
        return hesitates && number != null && isLast && ROLLS.containsKey(number.intValue())
                ? new Points(sure(number), to)
                : null;
    }

    /** "That roll where he stops eight times", "the roll with the four stops in it". */
    private static @Nullable Points stops(List<Word> words, int from, int to) {
        boolean isRoll = words.get(to - 1).plain().equals("roll")
                && to == from + 1
                && words.subList(to, words.size()).stream().anyMatch(word -> STOPS.contains(word.plain()));
        for (int i = to; isRoll && i < words.size(); i++) {
            Double number = words.get(i).number();
            if (number != null && ROLLS.containsKey(number.intValue())) {
                return new Points(sense(number, 1, List.of()), i);
            }
        }
        return null;
    }

    /** The roll that has as many points; null if the catalogue has none. */
    public static @Nullable Sense roll(double points) {
        String roll = ROLLS.get((int) points);
        return roll == null ? null : Sense.of(roll);
    }

    private static Sense sure(double number) {
        String roll = sense(number, 1, List.of()).figure();
        return Sense.of(roll);
    }

    private static Sense sense(double number, int most, List<String> others) {
        List<String> choices = Stream.concat(
                        ROLLS.keySet().stream()
                                .sorted(Comparator.comparingDouble((Integer points) -> Math.abs(points - number))
                                        .thenComparing(Comparator.naturalOrder()))
                                .limit(most)
                                .map(ROLLS::get),
                        others.stream())
                .toList();
        return new Sense(choices.get(0), choices.get(0), false, choices);
    }
}
