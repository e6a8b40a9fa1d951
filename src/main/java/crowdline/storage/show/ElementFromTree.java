package crowdline.storage.show;

import crowdline.show.figure.Element;
import crowdline.show.figure.Element.Side;
import crowdline.show.figure.Element.Size;
import crowdline.show.figure.Element.Until;
import crowdline.storage.json.Fields;
import crowdline.storage.json.Quoted;
import java.util.List;

/** Elements from their keys; what is left out has the default the schema tells. */
final class ElementFromTree {
    static final double FULL_POWER = 1;
    static final double NO_POWER = 0;
    static final double PAUSE_S = 0.5;
    static final double BANK_DEG = 45;
    static final double ROUND = 1;
    static final int NO_POINTS = 0;

    private ElementFromTree() {}

    static Element element(Fields f) {
        String what = f.text("do");
        return switch (what) {
            case "line" -> line(f);
            case "arc" -> arc(f);
            case "roll" -> roll(f);
            case "reversal" -> new Element.Reversal(f.choice("way", ShowNames.REVERSAL_WAY), full(f));
            case "flick" ->
                new Element.Flick(f.choice("kind", ShowNames.FLICK_KIND), side(f), f.number("degrees"), full(f));
            case "spin" -> new Element.Spin(f.choice("kind", ShowNames.SPIN_KIND), side(f), f.number("turns"), none(f));
            case "pivot" -> new Element.Pivot(side(f), full(f));
            case "slide" -> new Element.Slide(f.choice("kind", ShowNames.SLIDE_KIND), none(f));
            case "hover-roll" -> new Element.HoverRoll(f.number("seconds"), full(f));
            case "tumble" -> new Element.Tumble(side(f), f.number("turns"), full(f));
            case "turn" ->
                new Element.Turn(
                        side(f),
                        f.number("degrees"),
                        f.numberOrNull("bankDeg"),
                        f.number("peakPathDeg", 0),
                        f.flag("climbs"),
                        f.number("rolls", 0),
                        f.flag("endsBanked"),
                        full(f));
            case "run" ->
                new Element.Run(
                        f.number("alongM"), f.number("awayM", 0), f.number("heightFt"), f.number("kt"), full(f));
            case "reposition" ->
                new Element.Reposition(
                        f.number("alongM"),
                        f.number("awayM", 0),
                        f.number("heightFt"),
                        f.number("kt"),
                        f.number("bankDeg", BANK_DEG),
                        full(f));
            default -> throw new IllegalArgumentException("there is no element " + Quoted.text(what));
        };
    }

    private static Element line(Fields f) {
        for (Until until : Until.values()) {
            String key = key(until);
            if (f.has(key)) {
                double value = until == Until.ENTRY_HEIGHT || until == Until.ENTRY_LINE ? 0 : f.number(key);
                return new Element.Line(until, value, middle(f), full(f));
            }
        }
        throw new IllegalArgumentException("a line needs something that ends it");
    }

    private static List<Element> middle(Fields f) {
        return f.list("middle", ElementFromTree::element);
    }

    private static Element arc(Fields f) {
        for (Size size : Size.values()) {
            if (size != Size.USUAL && f.has(key(size))) {
                boolean alone = size == Size.TIGHTEST || size.isOpen();
                return arc(f, size, alone ? 0 : f.number(key(size)));
            }
        }
        return arc(f, Size.USUAL, 0);
    }

    private static Element arc(Fields f, Size size, double value) {
        return new Element.Arc(
                f.choice("way", ShowNames.WAY),
                f.numberOrNull("degrees"),
                f.numberOrNull("toPathDeg"),
                size,
                value,
                f.number("topShare", ROUND),
                full(f));
    }

    private static Element roll(Fields f) {
        return new Element.Roll(
                f.choice("style", ShowNames.ROLL_STYLE),
                side(f),
                f.number("degrees"),
                f.numberOrNull("seconds"),
                f.whole("pointsPerTurn", NO_POINTS),
                f.number("pauseS", PAUSE_S),
                full(f));
    }

    /** The key that says what ends a line. */
    static String key(Until until) {
        return switch (until) {
            case SECONDS -> "seconds";
            case METRES -> "metres";
            case KNOTS -> "toKt";
            case FEET -> "toFt";
            case ALONG_M -> "toAlongM";
            case RADII -> "radii";
            case STALLS -> "toStalls";
            case ENTRY_HEIGHT -> "toEntryHeight";
            case ENTRY_LINE -> "toEntryLine";
        };
    }

    /** The key that says how hard an arc is flown. */
    static String key(Size size) {
        return switch (size) {
            case LOAD_G -> "loadG";
            case RADIUS_M -> "radiusM";
            case ROUND_FROM_G -> "roundFromG";
            case TIGHTEST -> "tightest";
            case USUAL -> "usual";
            case CORNER -> "corner";
            case OVER -> "over";
        };
    }

    private static Side side(Fields f) {
        return f.choice("toward", ShowNames.SIDE, Side.LEFT);
    }

    private static double full(Fields f) {
        return f.number("power", FULL_POWER);
    }

    private static double none(Fields f) {
        return f.number("power", NO_POWER);
    }
}
