package crowdline.console.live;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the keys take hold of in a view: the remarks behind the words on the screen. It is part of the view so that a key
 * always means what was shown when it was pressed.
 *
 * @param sayId id of the remark in Say now, or null
 * @param sayShort true if its short form is shown
 * @param sayWaits true if its time has not come, so that nobody has said it yet
 * @param factIds ids of the facts, in the order of their keys
 * @param fillerId id of the filler that would be taken, or null
 * @param nextIndex place in the variant of the next figure, or null
 * @param chosenActId id of the act chosen in the running order, or null if that is not open
 * @param chosenDutyId id of the duty chosen in the list of them, or null if that is not open
 * @param othersTurn true if somebody other than who sits at the console speaks next
 */
public record Handles(
        @Nullable String sayId,
        boolean sayShort,
        boolean sayWaits,
        List<String> factIds,
        @Nullable String fillerId,
        @Nullable Integer nextIndex,
        @Nullable String chosenActId,
        @Nullable String chosenDutyId,
        boolean othersTurn) {

    public static final Handles NONE = new Handles(null, false, false, List.of(), null, null);

    /** With no running order open. */
    public Handles(
            @Nullable String sayId,
            boolean sayShort,
            boolean sayWaits,
            List<String> factIds,
            @Nullable String fillerId,
            @Nullable Integer nextIndex) {
        this(sayId, sayShort, sayWaits, factIds, fillerId, nextIndex, null, null, false);
    }

    /** With an act chosen in the running order. */
    public Handles withChosenAct(@Nullable String actId) {
        return new Handles(sayId, sayShort, sayWaits, factIds, fillerId, nextIndex, actId, chosenDutyId, othersTurn);
    }

    /** With a duty chosen in the list of them. */
    public Handles withChosenDuty(@Nullable String dutyId) {
        return new Handles(sayId, sayShort, sayWaits, factIds, fillerId, nextIndex, chosenActId, dutyId, othersTurn);
    }

    Handles withTurn(boolean isTheOthers) {
        return new Handles(
                sayId, sayShort, sayWaits, factIds, fillerId, nextIndex, chosenActId, chosenDutyId, isTheOthers);
    }

    public Handles {
        factIds = List.copyOf(factIds);
    }
}
