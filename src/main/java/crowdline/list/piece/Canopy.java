package crowdline.list.piece;

import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import java.util.List;
import java.util.Set;

/** Parachutists call things as aeroplanes do, and mean others. */
public final class Canopy {
    private static final Set<String> UNDER_CANOPY = Set.of("jump", "freefall", "canopy descent");

    private Canopy() {}

    /** "Then canopies open, under canopy three minutes": it opens once. */
    public static boolean isOpen(List<Draft> lines, Draft draft) {
        Names.Sense sense = draft.sense();
        Names.Sense before =
                lines.isEmpty() ? null : lines.get(lines.size() - 1).sense();
        return sense != null
                && before != null
                && sense.figure().equals("canopy descent")
                && before.figure().equals("canopy descent");
    }

    /** Who comes down under a canopy lands under it. */
    public static void land(List<Draft> lines, Draft draft) {
        Names.Sense landing = draft.sense();
        Names.Sense before =
                lines.isEmpty() ? null : lines.get(lines.size() - 1).sense();
        if (landing != null
                && before != null
                && landing.figure().equals("landing")
                && UNDER_CANOPY.contains(before.figure())) {
            draft.mean(new Names.Sense("canopy landing", "canopy landing", false, List.of()));
        }
    }
}
