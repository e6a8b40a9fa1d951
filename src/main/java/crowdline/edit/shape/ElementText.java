package crowdline.edit.shape;

import crowdline.show.figure.Element;
import crowdline.show.figure.Element.RollStyle;
import crowdline.show.figure.Element.Size;
import crowdline.show.figure.Element.Until;
import crowdline.show.figure.ReversalWay;

/** An element in one line of words, as it stands in a list. */
final class ElementText {
    private ElementText() {}

    static String of(Element element) {
        if (element instanceof Element.Line line) {
            return "straight on " + until(line);
        } else if (element instanceof Element.Arc arc) {
            return arc(arc);
        } else if (element instanceof Element.Roll roll) {
            return roll(roll);
        } else if (element instanceof Element.Turn turn) {
            return (turn.rolls() != 0 ? "rolling turn " : "turn ") + side(turn.toward()) + number(turn.degrees()) + "°"
                    + (turn.endsBanked() ? ", stays banked" : "");
        } else if (element instanceof Element.Reversal reversal) {
            return "roll to the other bank, " + way(reversal.way());
        } else if (element instanceof Element.Flick flick) {
            return (flick.kind() == Element.FlickKind.POSITIVE ? "flick " : "negative flick ") + side(flick.toward())
                    + number(flick.degrees()) + "°";
        } else if (element instanceof Element.Spin spin) {
            return ElementField.word(spin.kind()) + " spin " + side(spin.toward()) + turns(spin.turns());
        } else if (element instanceof Element.Tumble tumble) {
            return "tumble " + side(tumble.toward()) + turns(tumble.turns());
        } else if (element instanceof Element.Pivot pivot) {
            return ("pivot " + side(pivot.toward())).strip();
        } else if (element instanceof Element.HoverRoll hover) {
            return "hover roll for " + number(hover.seconds()) + " s";
        } else if (element instanceof Element.Run run) {
            return "run to " + place(run.alongM(), run.heightFt(), run.kt());
        } else if (element instanceof Element.Reposition back) {
            return "turn back to " + place(back.alongM(), back.heightFt(), back.kt());
        }
        return ElementKind.of(element).word();
    }

    private static String place(double alongM, double ft, double kt) {
        String along = Math.abs(alongM) < 0.5
                ? "the centre"
                : number(Math.rint(Math.abs(alongM))) + " m " + (alongM < 0 ? "left" : "right");
        return along + ", " + number(Math.rint(ft)) + " ft, " + number(Math.rint(kt)) + " kt";
    }

    private static String until(Element.Line line) {
        // What the layout found has more places than anybody flies.
        String value = number(
                switch (line.until()) {
                    case METRES, KNOTS, FEET, ALONG_M -> Math.rint(line.value());
                    default -> line.value();
                });
        return switch (line.until()) {
            case SECONDS -> "for " + value + " s";
            case METRES -> "for " + value + " m";
            case KNOTS -> "until " + value + " kt";
            case FEET -> "until " + value + " ft";
            case ALONG_M -> "until " + value + " m to the right";
            case RADII -> "for " + value + (line.value() == 1 ? " radius" : " radii");
            case STALLS -> "until " + value + " × the stalling speed";
            case ENTRY_HEIGHT, ENTRY_LINE -> "until " + end(line.until()).replaceFirst("^at ", "");
        };
    }

    private static String arc(Element.Arc arc) {
        Double degrees = arc.degrees();
        Double to = arc.toPathDeg();
        String far = degrees != null
                ? number(degrees) + "°"
                : to == null || to == 0 ? "to level" : "to " + number(Math.abs(to)) + "° " + (to > 0 ? "up" : "down");
        return ElementField.word(arc.way()) + " " + far + ", "
                + switch (arc.size()) {
                    case LOAD_G -> number(arc.value()) + " g";
                    case RADIUS_M -> "radius " + number(Math.rint(arc.value())) + " m";
                    case ROUND_FROM_G -> "round from " + number(arc.value()) + " g";
                    case TIGHTEST, USUAL, CORNER, OVER -> size(arc.size());
                };
    }

    private static String roll(Element.Roll roll) {
        Double seconds = roll.seconds();
        String how = roll.style() == RollStyle.AILERON ? "roll " : ElementField.word(roll.style()) + " roll ";
        return how + side(roll.toward()) + number(roll.degrees()) + "°"
                + (roll.style() == RollStyle.HESITATION ? ", " + roll.pointsPerTurn() + " points in a turn" : "")
                + (seconds == null ? "" : ", " + number(seconds) + " s");
    }

    private static String side(Element.Side side) {
        return switch (side) {
            case LEFT, RIGHT -> ElementField.word(side) + " ";
            case AWAY -> "away from the crowd ";
            case CROWD -> "towards the crowd ";
        };
    }

    /** Which way round to the other bank. */
    static String way(ReversalWay way) {
        return switch (way) {
            case UNDER -> "underneath";
            case OVER -> "over the top";
        };
    }

    private static String turns(double turns) {
        return number(turns) + (turns == 1 ? " turn" : " turns");
    }

    private static String number(double value) {
        return ElementField.text(value);
    }

    /** What ends a line. */
    static String end(Until until) {
        return switch (until) {
            case SECONDS -> "after a time";
            case METRES -> "after a length";
            case KNOTS -> "at a speed";
            case FEET -> "at a height";
            case ALONG_M -> "at a place";
            case RADII -> "after radii of the figure";
            case STALLS -> "at stalling speeds";
            case ENTRY_HEIGHT -> "at the height it began";
            case ENTRY_LINE -> "at the line it began on";
        };
    }

    static String unit(Until until) {
        return switch (until) {
            case SECONDS -> "Seconds";
            case METRES -> "Metres";
            case KNOTS -> "Knots";
            case FEET -> "Feet";
            case ALONG_M -> "To the right, m";
            case RADII -> "Radii";
            case STALLS -> "Times the stall";
            case ENTRY_HEIGHT, ENTRY_LINE -> "";
        };
    }

    /** How hard an arc is flown. */
    static String size(Size size) {
        return switch (size) {
            case LOAD_G -> "a steady load";
            case RADIUS_M -> "a radius";
            case ROUND_FROM_G -> "round, from a load";
            case TIGHTEST -> "as tight as it goes";
            case USUAL -> "as usual";
            case CORNER -> "a hard corner";
            case OVER -> "slowly over the top";
        };
    }
}
