package crowdline.list;

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

    private static final Names.Sense TURN_BACK =
            new Names.Sense("helicopter turn-back", "helicopter turn-back", false, List.of());

    private Rotor() {}

    static void read(List<Draft> drafts) {
        long own = drafts.stream().filter(draft -> is(draft, OWN)).count();
        if (own >= LEAST) {
            drafts.stream()
                    .filter(draft -> is(draft, Set.of("reposition"))
                            && draft.name().stream()
                                    .anyMatch(word -> word.plain().startsWith("back")
                                            || word.plain().startsWith("return")))
                    .forEach(draft -> draft.mean(TURN_BACK));
        }
    }

    private static boolean is(Draft draft, Set<String> any) {
        Names.Sense sense = draft.sense();
        return sense != null && any.contains(sense.figure());
    }
}
