package crowdline.list;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import java.util.List;
import java.util.Set;

/** What words mean where a helicopter flies: its turn-back is a figure. */
final class Rotor {
    private static final Set<String> OWN = Set.of(
            "hover",
            "pedal turn",
            "sideways flight",
            "backwards flight",
            "quick stop",
            "nose-in circle",
            "bow",
            "spiral climb");
    /** One alone may be said of an aeroplane. */
    private static final int LEAST = 2;

    private static final Names.Sense TURN_BACK = Names.Sense.of("helicopter turn-back");

    /** After which a helicopter turns where it stands. */
    private static final Set<String> STANDING = Set.of("hover", "pedal turn", "bow");

    private static final Set<String> TURNS = Set.of("turn", "degree", "full");

    private static final Names.Sense PEDAL_TURN = Names.Sense.of("pedal turn");

    private Rotor() {}

    static void read(List<Draft> drafts) {
        long own = drafts.stream().filter(draft -> is(draft, OWN)).count();
        if (own >= LEAST) {
            for (int i = 1; i < drafts.size(); i++) {
                if (isTurn(drafts.get(i)) && is(drafts.get(i - 1), STANDING)) {
                    drafts.get(i).mean(PEDAL_TURN);
                }
            }
            drafts.stream()
                    .filter(draft -> is(draft, Set.of("reposition"))
                            && draft.name().stream()
                                    .anyMatch(word -> word.plain().startsWith("back")
                                            || word.plain().startsWith("return")))
                    .forEach(draft -> draft.mean(TURN_BACK));
        }
    }

    /** "Turn 360 to the left", not "steep turn", "circle round the cone" or "turn at 80 kt". */
    private static boolean isTurn(Draft draft) {
        return is(draft, Set.of("steep turn"))
                && draft.name().stream().allMatch(word -> word.number() != null || TURNS.contains(word.plain()))
                && !draft.says(Detail.ENTRY_KT);
    }

    private static boolean is(Draft draft, Set<String> any) {
        Names.Sense sense = draft.sense();
        return sense != null && any.contains(sense.figure());
    }
}
