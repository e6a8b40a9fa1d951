package crowdline.arrange;

import crowdline.show.bounds.Most;
import crowdline.show.figure.Asked.Hand;
import crowdline.show.figure.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The elements of a figure, as often and to the side that a list asks for. */
final class Counted {
    /** More of one figure at a stretch than any act has. */
    private static final int MOST_REPEATS = 12;

    /** A figure of a show takes more, but drawing it may need as many again. */
    private static final int MOST_ELEMENTS = Most.ELEMENTS.entries() / 2;

    private Counted() {}

    /** How often at most a figure of these elements is drawn at a stretch. */
    private static int mostRepeats(List<Element> elements) {
        return Math.max(1, Math.min(MOST_REPEATS, MOST_ELEMENTS / Math.max(1, elements.size())));
    }

    /**
     * How often a figure is drawn that is asked for more often than one figure of a show can hold; 0 if it is not asked for
     * too often.
     */
    static int cutTo(List<Element> usual, @Nullable Double count) {
        int most = mostRepeats(usual);
        return count == null || hasTurns(usual) || isOneRoll(usual) || Math.round(count) <= most ? 0 : most;
    }

    /**
     * The elements asked for.
     *
     * @param count how many turns of a spin or tumble, how many rolls, or how often the figure; null for the usual
     */
    static List<Element> of(List<Element> usual, @Nullable Double count, @Nullable Hand side) {
        List<Element> sided =
                side == null ? usual : usual.stream().map(e -> to(e, side)).toList();
        if (count == null) {
            return sided;
        }
        if (hasTurns(sided)) {
            return sided.stream().map(e -> turned(e, count)).toList();
        }
        if (isOneRoll(sided)) {
            return sided.stream().map(e -> rolled(e, count)).toList();
        }
        List<Element> repeated = new ArrayList<>();
        for (int i = 0; i < Math.min(Math.max(Math.round(count), 1), mostRepeats(sided)); i++) {
            repeated.addAll(sided);
        }
        return repeated;
    }

    private static boolean hasTurns(List<Element> elements) {
        return elements.stream().anyMatch(e -> e instanceof Element.Spin || e instanceof Element.Tumble);
    }

    private static Element turned(Element element, double turns) {
        if (element instanceof Element.Spin spin) {
            return new Element.Spin(spin.kind(), spin.toward(), turns, spin.power());
        }
        return element instanceof Element.Tumble tumble
                ? new Element.Tumble(tumble.toward(), turns, tumble.power())
                : element;
    }

    /**
     * Whether it is one aileron roll of a full turn on a line, be that level, a slope or straight up: two of them are rolled on
     * one line, and two loops with a roll are two loops.
     */
    private static boolean isOneRoll(List<Element> elements) {
        List<Element> rolls = elements.stream()
                .flatMap(e -> e instanceof Element.Line line && !line.middle().isEmpty()
                        ? line.middle().stream()
                        : Stream.of(e))
                .filter(e -> !(e instanceof Element.Line) && !isCorner(e))
                .toList();
        return rolls.size() == 1 && isFullRoll(rolls.get(0));
    }

    private static boolean isFullRoll(Element element) {
        return element instanceof Element.Roll roll
                && roll.style() == Element.RollStyle.AILERON
                && roll.degrees() == 360;
    }

    /** Whether it leads from one line to another. */
    private static boolean isCorner(Element element) {
        return element instanceof Element.Arc arc && (arc.toPathDeg() != null || arc.size() == Element.Size.OVER);
    }

    private static Element rolled(Element element, double times) {
        if (element instanceof Element.Line line) {
            List<Element> middle =
                    line.middle().stream().map(e -> rolled(e, times)).toList();
            return new Element.Line(line.until(), line.value(), middle, line.power());
        }
        return element instanceof Element.Roll roll
                ? new Element.Roll(
                        roll.style(),
                        roll.toward(),
                        roll.degrees() * times,
                        roll.seconds(),
                        roll.pointsPerTurn(),
                        roll.pauseS(),
                        roll.power())
                : element;
    }

    /** Turns keep their side: it is chosen by where the crowd is. */
    private static Element to(Element element, Hand hand) {
        Element.Side side = hand == Hand.LEFT ? Element.Side.LEFT : Element.Side.RIGHT;
        if (element instanceof Element.Spin spin) {
            return new Element.Spin(spin.kind(), side, spin.turns(), spin.power());
        } else if (element instanceof Element.Pivot pivot) {
            return new Element.Pivot(side, pivot.power());
        } else if (element instanceof Element.Flick flick) {
            return new Element.Flick(flick.kind(), side, flick.degrees(), flick.power());
        } else if (element instanceof Element.Tumble tumble) {
            return new Element.Tumble(side, tumble.turns(), tumble.power());
        } else if (element instanceof Element.Roll roll && isPlain(roll)) {
            return new Element.Roll(
                    roll.style(),
                    side,
                    roll.degrees(),
                    roll.seconds(),
                    roll.pointsPerTurn(),
                    roll.pauseS(),
                    roll.power());
        }
        return element;
    }

    private static boolean isPlain(Element.Roll roll) {
        return roll.style() != Element.RollStyle.BARREL
                && (roll.toward() == Element.Side.LEFT || roll.toward() == Element.Side.RIGHT);
    }
}
