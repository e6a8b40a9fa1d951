package crowdline.trace;

import crowdline.trace.Found.Guess;
import crowdline.trace.Found.What;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Figures that are another flown twice: with nothing between, two half Cubans are a Cuban eight. */
final class Doubles {
    /** What is flown twice, and what it is then. */
    private static final Map<String, String> TWICE = Map.of("half Cuban", "Cuban eight", "wing-over", "lazy eight");

    private final double longestS;

    /** @param longestS between the halves, seconds */
    Doubles(double longestS) {
        this.longestS = longestS;
    }

    List<Found> in(List<Found> found) {
        List<Found> joined = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            Found one = found.get(i);
            int next = i + 1;
            while (next < found.size()
                    && found.get(next).what() == What.LINE
                    && found.get(next).seconds() <= longestS) {
                next++;
            }
            if (next < found.size() && isTwice(one, found.get(next))) {
                joined.add(both(one, found.get(next)));
                i = next;
            } else {
                joined.add(one);
            }
        }
        return joined;
    }

    private boolean isTwice(Found one, Found other) {
        if (one.what() != What.FIGURE || other.what() != What.FIGURE || other.startS() - one.endS() > longestS) {
            return false;
        }
        return TWICE.keySet().stream().anyMatch(half -> isGuessed(one, half) && isGuessed(other, half));
    }

    private static boolean isGuessed(Found one, String name) {
        return one.guesses().stream().limit(2).anyMatch(g -> g.name().equals(name) && g.sure() > 0.2);
    }

    private static Found both(Found one, Found other) {
        List<Guess> guesses = new ArrayList<>();
        for (Map.Entry<String, String> twice : TWICE.entrySet()) {
            if (isGuessed(one, twice.getKey()) && isGuessed(other, twice.getKey())) {
                double sure = Math.min(sure(one), sure(other));
                guesses.add(new Guess(twice.getValue(), 0.9 * sure));
                guesses.add(new Guess(twice.getKey(), 0.1 * sure));
            }
        }
        return new Found(What.FIGURE, one.startS(), other.endS(), guesses.subList(0, 2));
    }

    private static double sure(Found one) {
        return one.guesses().stream().limit(2).mapToDouble(Guess::sure).sum();
    }
}
