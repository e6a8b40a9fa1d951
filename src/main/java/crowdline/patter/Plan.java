package crowdline.patter;

import java.util.List;
import java.util.Optional;

/**
 * What to say when.
 *
 * @param placed in the order of time, without overlap; first what is being said now, if anything
 * @param unplaced what found no place, in the order of the candidates
 * @param quietS seconds without a word from now to the end of the plan
 * @param talkS seconds of talk from now to the end of the plan
 * @param provenBest true if no other plan is worth more, false if the search was cut short before that was certain
 */
public record Plan(List<Placed> placed, List<Unplaced> unplaced, double quietS, double talkS, boolean provenBest) {
    /** Nothing is to be said. */
    public static final Plan EMPTY = new Plan(List.of(), List.of(), 0, 0, true);

    /** Nobody has looked yet what is to be said. */
    public static final Plan NOT_YET = new Plan(List.of(), List.of(), 0, 0, false);

    public Plan {
        placed = List.copyOf(placed);
        unplaced = List.copyOf(unplaced);
    }

    public Optional<Placed> find(String remarkId) {
        return placed.stream().filter(p -> p.remarkId().equals(remarkId)).findFirst();
    }
}
