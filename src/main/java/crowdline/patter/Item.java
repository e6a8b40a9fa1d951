package crowdline.patter;

import java.util.List;

/**
 * A remark that can be placed. A remark of a figure has its place in the fixed order of such remarks; one that floats
 * has none.
 *
 * @param order its place among the remarks bound to figures, or −1 if it floats
 * @param bit its number among the floating ones, or −1 if it is bound to a figure
 * @param choices at least one
 * @param greatestValue the value of the best choice
 */
record Item(Candidate candidate, int order, int bit, List<Choice> choices, long greatestValue) {
    static Item of(Candidate candidate, int order, int bit, List<Choice> choices) {
        long greatest = choices.stream().mapToLong(Choice::value).max().orElse(0);
        return new Item(candidate, order, bit, choices, greatest);
    }

    boolean floats() {
        return order < 0;
    }

    String id() {
        return candidate.remark().id();
    }
}
