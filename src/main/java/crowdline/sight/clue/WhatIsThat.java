package crowdline.sight.clue;

import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.picture.Flown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Narrows what was seen down to a few figures by plain questions, each time the one that tells most. Immutable: an answer gives
 * the next, and what was before can be gone back to.
 */
public final class WhatIsThat {
    /** After so many answers it is told what is left. */
    public static final int MOST_ANSWERS = 4;
    /** So few are told at once. */
    private static final int FEW = 2;

    private final List<Candidate> all;
    /** What was answered; null for not sure. */
    private final Map<Clue, @Nullable Integer> answered;

    private final @Nullable WhatIsThat before;

    private WhatIsThat(List<Candidate> all, Map<Clue, @Nullable Integer> answered, @Nullable WhatIsThat before) {
        this.all = all;
        this.answered = answered;
        this.before = before;
    }

    /**
     * The first question about the figures of a catalogue, by how they are flown.
     *
     * @param flown a figure as one aircraft and another flies it; none where it is only timed
     */
    public static WhatIsThat of(List<CatalogueEntry> entries, Function<CatalogueEntry, List<Flown>> flown) {
        List<Candidate> all = new ArrayList<>();
        for (CatalogueEntry entry : entries) {
            all.add(new Candidate(
                    entry,
                    flown.apply(entry).stream()
                            // What is only sketched has no numbers that anything could be told from.
                            .filter(one -> !one.isEmpty() && !one.company().sketched())
                            .map(Traits::of)
                            .toList()));
        }
        return new WhatIsThat(List.copyOf(all), Map.of(), null);
    }

    /** The question asked now; null once there is nothing more to ask. */
    public @Nullable String question() {
        Clue clue = clue();
        return clue == null ? null : clue.question();
    }

    /** The answers to choose from, those alone that anything left allows; empty once there is nothing more to ask. */
    public List<String> answers() {
        Clue clue = clue();
        return clue == null
                ? List.of()
                : choices(clue).stream().map(clue.answers()::get).toList();
    }

    /** The numbers of the answers that something left allows. */
    private List<Integer> choices(Clue clue) {
        List<Candidate> left = left();
        List<Integer> choices = new ArrayList<>();
        for (int i = 0; i < clue.answers().size(); i++) {
            int answer = i;
            if (left.stream().anyMatch(one -> one.allows(clue, answer))) {
                choices.add(i);
            }
        }
        return choices;
    }

    /**
     * With an answer.
     *
     * @param choice its place among {@link #answers}, from 0; anything else is ignored
     */
    public WhatIsThat answer(int choice) {
        Clue clue = clue();
        if (clue == null || choice < 0 || choice >= choices(clue).size()) {
            return this;
        }
        return with(clue, choices(clue).get(choice));
    }

    /** With the question left open. */
    public WhatIsThat notSure() {
        Clue clue = clue();
        return clue == null ? this : with(clue, null);
    }

    /** Before the last answer; the same at the beginning. */
    public WhatIsThat back() {
        return before == null ? this : before;
    }

    private WhatIsThat with(Clue clue, @Nullable Integer answer) {
        Map<Clue, @Nullable Integer> now = new EnumMap<>(Clue.class);
        now.putAll(answered);
        now.put(clue, answer);
        return new WhatIsThat(all, now, this);
    }

    /** What it may have been. */
    public List<CatalogueEntry> candidates() {
        return left().stream().map(Candidate::entry).toList();
    }

    private List<Candidate> left() {
        return all.stream()
                .filter(one -> answered.entrySet().stream().allMatch(e -> {
                    Integer answer = e.getValue();
                    return answer == null || one.allows(e.getKey(), answer);
                }))
                .toList();
    }

    /** How many questions were answered. */
    public int answers(boolean sure) {
        return (int) answered.values().stream().filter(a -> !sure || a != null).count();
    }

    private @Nullable Clue clue() {
        List<Candidate> left = left();
        if (left.size() <= FEW || answers(true) >= MOST_ANSWERS) {
            return null;
        }
        // Whatever else is asked, who is flying comes first: it is the only thing that everybody knows.
        if (!answered.containsKey(Clue.WHO)) {
            return Clue.WHO;
        }
        Clue best = null;
        double least = left.size() - 0.5;
        for (Clue clue : Clue.values()) {
            if (!answered.containsKey(clue)) {
                double remaining = remaining(clue, left);
                if (remaining < least) {
                    least = remaining;
                    best = clue;
                }
            }
        }
        return best;
    }

    /** How many are left after an answer, on the average over the figures it may be and the answers they allow. */
    private static double remaining(Clue clue, List<Candidate> left) {
        int answers = clue.answers().size();
        int[] allowing = new int[answers];
        for (Candidate one : left) {
            for (int i = 0; i < answers; i++) {
                allowing[i] += one.allows(clue, i) ? 1 : 0;
            }
        }
        double sum = 0;
        for (Candidate one : left) {
            double of = 0;
            int count = 0;
            for (int i = 0; i < answers; i++) {
                if (one.allows(clue, i)) {
                    of += allowing[i];
                    count++;
                }
            }
            sum += count == 0 ? left.size() : of / count;
        }
        return sum / left.size();
    }

    /** Those left by their names, for whoever lists them. */
    public List<CatalogueEntry> told() {
        return candidates().stream()
                .sorted(Comparator.comparing(CatalogueEntry::name))
                .toList();
    }
}
