package crowdline.list;

import crowdline.list.split.Sentence;

/**
 * How the pieces of a sentence are said.
 *
 * @param isTimed whether it has a time of its own, as what is flown has
 * @param isProse whether it talks, so that what is not understood of it is no figure
 * @param isOne whether it has one figure at most
 * @param leadsDetails whether it says what it says of a figure ahead of it
 * @param isOfAParagraph whether others stand in its line, and much is said
 * @param isAtTheEnd whether no figure follows but in it
 */
record Told(
        Sentence sentence,
        boolean isTimed,
        boolean isProse,
        boolean isOne,
        boolean leadsDetails,
        boolean isOfAParagraph,
        boolean isAtTheEnd) {}
