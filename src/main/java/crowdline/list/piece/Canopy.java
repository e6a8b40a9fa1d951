package crowdline.list.piece;

import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Parachutists call things as aeroplanes do, and mean others. */
public final class Canopy {
    private static final Set<String> OPENING = Set.of("open", "opening", "deploy", "deployment");
    /** What an opening begins. */
    public static final Names.Sense DESCENDING = new Names.Sense("canopy descent", "canopy descent", false, List.of());

    private static final String JUMP = "jump";
    private static final String DESCENT = "canopy descent";
    private static final String LANDING = "canopy landing";
    private static final Set<String> UNDER_CANOPY = Set.of("jump", "freefall", DESCENT);

    private Canopy() {}

    /** "Then canopies open, under canopy three minutes": it opens once; and who lands last lands with the others. */
    public static boolean isOpen(List<Draft> lines, Draft draft) {
        Names.Sense sense = draft.sense();
        Names.Sense before =
                lines.isEmpty() ? null : lines.get(lines.size() - 1).sense();
        return sense != null
                && before != null
                && List.of(DESCENT, LANDING).contains(sense.figure())
                && before.figure().equals(sense.figure());
    }

    /** "Opening at 3000 ft", behind a jump. */
    public static boolean opens(List<Draft> lines, Heard heard) {
        Names.Sense before = lastFigure(lines);
        return before != null
                && (before.figure().equals("jump") || before.figure().equals("freefall"))
                && heard.words().stream().anyMatch(word -> OPENING.contains(word.plain()));
    }

    /** "Parachute drop" ahead of the exit heads the list; who jumps at the exit, jumps. Takes out, and returns, what only heads it. */
    public static List<Draft> read(List<Draft> lines) {
        List<Draft> figures = lines.stream().filter(Draft::isFigure).toList();
        boolean isOfJumpers = figures.stream().anyMatch(draft -> draft.means("freefall") || draft.means(DESCENT));
        if (!isOfJumpers) {
            return List.of();
        }
        figures.stream().filter(draft -> draft.means(JUMP)).forEach(draft -> {
            draft.mean(new Names.Sense(JUMP, JUMP, false, List.of()), draft.name());
        });
        boolean isHead = figures.size() > 1
                && figures.get(1).means(JUMP)
                && (figures.get(0).means(DESCENT)
                        || (figures.get(0).means(JUMP) && !figures.get(0).saysAnything()));
        List<Draft> ahead = isHead ? List.of(figures.get(0)) : List.of();
        lines.removeAll(ahead);
        return ahead;
    }

    /** Who comes down under a canopy lands under it. */
    public static void land(List<Draft> lines, Draft draft) {
        Names.Sense down = draft.sense();
        Names.Sense before = lastFigure(lines);
        if (down == null || before == null) {
            return;
        }
        boolean isUnder = UNDER_CANOPY.contains(before.figure());
        if (down.figure().equals("landing") && (isUnder || before.figure().equals(LANDING))) {
            draft.mean(new Names.Sense(LANDING, LANDING, false, List.of()));
        } else if (isUnder && down.weak() && down.choices().contains("landing")) {
            draft.mean(new Names.Sense(DESCENT, DESCENT, false, List.of()));
        }
    }

    /** Of what is only timed nothing is known. */
    private static Names.@Nullable Sense lastFigure(List<Draft> lines) {
        return lines.stream()
                .map(Draft::sense)
                .filter(Objects::nonNull)
                .reduce((first, last) -> last)
                .orElse(null);
    }
}
