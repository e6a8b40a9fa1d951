package crowdline.list.piece;

import crowdline.list.draft.Draft;
import crowdline.list.draft.Sayings;
import crowdline.list.word.Word;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What is said of a figure and corrected in one breath: "stall turn right no left". */
final class Corrections {
    private static final Set<String> CORRECTS =
            Set.of("no", "sorry", "rather", "correction", "wait", "oops", "make", "mean");

    /** Among the words that correct. */
    private static final Set<String> BETWEEN =
            Set.of("i", "that", "it", "oh", "er", "um", "uh", ",", "-", "–", "—", "…", ".");

    private Corrections() {}

    /** Where a correction begins of what was said of the figure, and where its own words do: "stall turn right no left". */
    private record Correction(int from, int to) {}

    /** The last correction behind a name; null if nothing is corrected. */
    private static @Nullable Correction corrected(List<Word> words, int behind) {
        for (int i = words.size() - 2; i > behind; i--) {
            int to = i;
            while (to < words.size()
                    && (CORRECTS.contains(words.get(to).plain())
                            || (to > i && BETWEEN.contains(words.get(to).plain())))) {
                to++;
            }
            boolean isWhole = to > i
                    && to < words.size()
                    && !CORRECTS.contains(words.get(i - 1).plain())
                    && !BETWEEN.contains(words.get(i - 1).plain());
            if (isWhole) {
                return new Correction(i, to);
            }
        }
        return null;
    }

    /** Says what is said of a figure; what is corrected of it holds instead of what it corrects. */
    static boolean[] say(
            Sayings sayings, Draft draft, List<Word> words, List<String> plain, List<Found> found, int extras) {
        Correction correction =
                found.size() == 1 ? corrected(words, found.get(0).to()) : null;
        if (correction != null) {
            Draft other = new Draft(0, 0);
            other.mean(found.get(0).sense());
            List<String> behind = new ArrayList<>(plain.subList(correction.to(), plain.size()));
            behind.add(0, Sayings.FIGURE);
            boolean[] taken = sayings.take(other, behind, behind.size());
            boolean isAll = IntStream.range(1, taken.length)
                    .allMatch(i -> taken[i] || LeftOver.isSilent(words.get(correction.to() + i - 1)));
            if (isAll && other.saysAnything()) {
                boolean[] said = Arrays.copyOf(
                        sayings.take(draft, plain.subList(0, correction.from()), Math.min(extras, correction.from())),
                        plain.size());
                Arrays.fill(said, correction.from(), said.length, true);
                draft.correct(other);
                return said;
            }
        }
        return sayings.take(draft, plain, extras);
    }
}
