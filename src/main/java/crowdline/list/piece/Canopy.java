package crowdline.list.piece;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.draft.Measured;
import crowdline.list.name.Names;
import crowdline.list.word.Words;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Parachutists call things as aeroplanes do, and mean others. */
public final class Canopy {
    private static final Set<String> OPENING = Set.of("open", "opening", "deploy", "deployment");
    /** What an opening begins. */
    public static final Names.Sense DESCENDING = Names.Sense.of("canopy descent");

    private static final Set<String> DELAY = Set.of("delay", "Delay", "DELAY");

    private static final Set<String> SHOWN = Set.of(
            "stack",
            "biplane",
            "triplane",
            "downplane",
            "plane",
            "flag",
            "spiral",
            "side",
            "diamond",
            "train",
            "swoop");

    private static final Set<String> HANGING = Set.of("banner", "streamer");

    private static final Pattern OUT = Pattern.compile("(\\d{1,2}) (?:out|exit|go|leave)");

    private static final String JUMP = "jump";
    private static final String DESCENT = "canopy descent";
    private static final String LANDING = "canopy landing";
    private static final Set<String> UNDER_CANOPY = Set.of("jump", "freefall", DESCENT, "canopy stack", "downplane");

    /** With fewer figures it may be all that jumpers do. */
    private static final int LEAST_FLOWN = 5;

    private Canopy() {}

    /** "Then canopies open, under canopy three minutes": it opens once; and who lands last lands with the others. */
    public static boolean isOpen(List<Draft> lines, Draft draft) {
        Names.Sense sense = draft.sense();
        Names.Sense before =
                lines.isEmpty() ? null : lines.get(lines.size() - 1).sense();
        return sense != null
                && before != null
                && List.of(DESCENT, LANDING).contains(sense.figure())
                && before.figure().equals(sense.figure())
                && (sense.figure().equals(LANDING) || !isShown(lines.get(lines.size() - 1)));
    }

    /** "Canopy stack", "flag under canopy": what is shown next under canopies is a figure of its own. */
    private static boolean isShown(Draft draft) {
        return draft.notes().stream()
                .flatMap(note -> Words.of(Words.folded(note)).stream())
                .anyMatch(word -> SHOWN.contains(word.plain()));
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
        if (figures.size() > LEAST_FLOWN && figures.stream().noneMatch(Canopy::isSurelyJumped)) {
            List<Draft> others = figures.stream()
                    .filter(draft -> draft.means(JUMP) || draft.means(DESCENT))
                    .toList();
            lines.removeAll(others);
            return others;
        }
        boolean isOfJumpers = figures.stream().anyMatch(draft -> draft.means("freefall") || draft.means(DESCENT));
        if (!isOfJumpers) {
            return List.of();
        }
        drop(lines);
        delay(lines);
        hang(lines);
        figures.stream().filter(draft -> draft.means(JUMP)).forEach(draft -> {
            draft.mean(Names.Sense.of(JUMP), draft.name());
        });
        boolean isHead = figures.size() > 1
                && figures.get(1).means(JUMP)
                && (figures.get(0).means(DESCENT)
                        || (figures.get(0).means(JUMP) && !figures.get(0).saysAnything()));
        List<Draft> ahead = isHead ? List.of(figures.get(0)) : List.of();
        lines.removeAll(ahead);
        return ahead;
    }

    /** "Spin, exits away from you", "humpty, canopy down": an aeroplane has a canopy too, and nobody jumps out of it. */
    private static boolean isSurelyJumped(Draft draft) {
        Names.Sense sense = draft.sense();
        return sense != null
                && !sense.weak()
                && List.of(JUMP, "freefall", DESCENT, LANDING).contains(sense.figure());
    }

    /** "5 out at 1800 m", ahead of their freefall: that many jump. */
    private static void drop(List<Draft> lines) {
        if (lines.stream().anyMatch(draft -> draft.means(JUMP))) {
            return;
        }
        lines.stream()
                .takeWhile(draft -> !draft.isFigure())
                .filter(draft -> !draft.notes().isEmpty())
                .forEach(draft -> {
                    Matcher out = OUT.matcher(Words.folded(draft.notes().get(0)));
                    if (out.matches()) {
                        draft.forgetNotes();
                        draft.mean(Names.Sense.of(JUMP));
                        Measured.number(draft, Detail.COUNT, Double.parseDouble(out.group(1)));
                    }
                });
    }

    /** "Delay 8 sec", behind the exit: they fall as long. */
    private static void delay(List<Draft> lines) {
        for (int i = 1; i < lines.size(); i++) {
            Draft draft = lines.get(i);
            if (lines.get(i - 1).means(JUMP)
                    && !draft.isFigure()
                    && draft.notes().stream().anyMatch(DELAY::contains)) {
                draft.forgetNotes();
                draft.mean(Names.Sense.of("freefall"));
            }
        }
    }

    /** "2-stack, then a big flag": what hangs below the canopies is said of their descent. */
    private static void hang(List<Draft> lines) {
        Draft descent = null;
        for (Draft draft : List.copyOf(lines)) {
            boolean isTold = descent != null
                    && !draft.isFigure()
                    && draft.notes().stream()
                            .flatMap(note -> Words.of(Words.folded(note)).stream())
                            .anyMatch(word -> HANGING.contains(word.plain()));
            if (isTold && descent != null) {
                draft.notes().forEach(descent::note);
                draft.eachSpan(descent::takeIn);
                lines.remove(draft);
            } else {
                descent = draft.means(DESCENT) ? draft : null;
            }
        }
    }

    /** Who comes down under a canopy lands under it. */
    public static void land(List<Draft> lines, Draft draft) {
        Names.Sense down = draft.sense();
        Names.Sense before = lastFigure(lines);
        if (down == null || before == null) {
            return;
        }
        boolean isUnder = UNDER_CANOPY.contains(before.figure());
        boolean isDown = isUnder || before.figure().equals(LANDING) || (isNoun(draft) && isComingDown(lines));
        if (down.figure().equals("landing") && isDown) {
            draft.mean(Names.Sense.of(LANDING));
        } else if (isUnder && down.weak() && down.choices().contains("landing")) {
            draft.mean(Names.Sense.of(DESCENT));
        }
    }

    /** Whether canopies are open, and no aircraft has come since. */
    private static boolean isComingDown(List<Draft> lines) {
        int last = lines.size() - 1;
        while (last >= 0 && !isUnderCanopy(lines.get(last)) && !lines.get(last).means("low pass")) {
            last--;
        }
        return last >= 0 && isUnderCanopy(lines.get(last));
    }

    private static boolean isUnderCanopy(Draft draft) {
        return draft.means(DESCENT) || draft.means("canopy stack") || draft.means("downplane");
    }

    /** "Landings on the cross", not "plane lands". */
    private static boolean isNoun(Draft draft) {
        return draft.name().stream().anyMatch(word -> word.plain().equals("landing"));
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
