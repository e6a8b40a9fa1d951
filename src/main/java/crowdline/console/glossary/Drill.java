package crowdline.console.glossary;

import crowdline.console.glossary.GlossaryView.EntryView;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.sight.picture.Flown;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * Asks which figure a drawing is, with four names to choose from. What was missed comes back a few questions later. The
 * same seed asks the same questions.
 */
final class Drill {
    static final int CHOICES = 4;
    /** Questions after which a missed figure comes back; a design choice. */
    private static final int AGAIN_AFTER = 3;
    /** Lower than this nothing can be told from a line, metres; tuned by looking at the drawings. */
    private static final double LEAST_HEIGHT_M = 25;

    private final List<EntryView> known;
    private final Random random;
    private final Deque<EntryView> waiting = new ArrayDeque<>();
    private final List<Missed> missed = new ArrayList<>();
    private @Nullable EntryView now;
    private List<String> names = List.of();
    private @Nullable Integer chosen;
    private int asked;
    private int right;

    /** A figure to come back to, and after which question. */
    private record Missed(EntryView entry, int dueAt) {}

    /**
     * What to show.
     *
     * @param flown the figure asked for
     * @param names to choose from
     * @param rightIndex which of them it is, or −1 until it is answered
     * @param verdict how it was answered, or null until then
     * @param score how many were right
     */
    record View(
            Flown flown,
            List<String> names,
            int rightIndex,
            @Nullable Mark verdict,
            String score) {
        View {
            names = List.copyOf(names);
        }
    }

    Drill(List<EntryView> entries, long seed) {
        known = entries.stream()
                .filter(e -> FigureShape.of(e.flown()).heightM() >= LEAST_HEIGHT_M)
                .toList();
        random = new Random(seed);
        ask();
    }

    /** True if there are figures enough to ask about. */
    boolean possible() {
        return now != null;
    }

    View view() {
        EntryView entry = now;
        if (entry == null) {
            return new View(
                    Flown.NONE, List.of(), -1, null, "The figures are still being drawn; try again in a moment");
        }
        Integer answer = chosen;
        int rightIndex = answer == null ? -1 : names.indexOf(entry.name());
        Mark verdict = answer == null
                ? null
                : answer == rightIndex
                        ? new Mark(Form.DISC, Tone.GOOD, "Right: " + entry.name())
                        : new Mark(
                                Form.CROSS, Tone.CAUTION, "The answer: " + entry.name() + ". It will come up again.");
        return new View(entry.flown(), names, rightIndex, verdict, right + " of " + asked + " right");
    }

    /** Chooses a name, from 0; once answered, any choice goes on to the next question. */
    void choose(int index) {
        EntryView entry = now;
        if (entry == null || index < 0 || index >= names.size()) {
            return;
        }
        if (chosen != null) {
            next();
            return;
        }
        chosen = index;
        asked++;
        if (names.get(index).equals(entry.name())) {
            right++;
        } else {
            missed.add(new Missed(entry, asked + AGAIN_AFTER));
        }
    }

    /** The next question; one that was not answered counts for nothing. */
    void next() {
        ask();
    }

    private void ask() {
        chosen = null;
        EntryView entry = take();
        if (entry == null) {
            now = null;
            return;
        }
        now = entry;
        FigureShape shape = FigureShape.of(entry.flown());
        List<EntryView> others = new ArrayList<>(known.stream()
                .filter(e -> FigureShape.of(e.flown()).differsFrom(shape))
                .toList());
        Collections.shuffle(others, random);
        List<String> four = new ArrayList<>();
        four.add(entry.name());
        others.stream().limit(CHOICES - 1L).forEach(e -> four.add(e.name()));
        Collections.shuffle(four, random);
        names = List.copyOf(four);
    }

    private @Nullable EntryView take() {
        for (Missed one : missed) {
            if (one.dueAt() <= asked) {
                missed.remove(one);
                return one.entry();
            }
        }
        if (waiting.isEmpty() && known.size() >= CHOICES) {
            List<EntryView> all = new ArrayList<>(known);
            Collections.shuffle(all, random);
            waiting.addAll(all);
        }
        return waiting.poll();
    }
}
