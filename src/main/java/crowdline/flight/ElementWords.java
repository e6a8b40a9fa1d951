package crowdline.flight;

import crowdline.show.figure.Element;
import crowdline.show.figure.ReversalWay;

/** What an element is called, in words. */
public final class ElementWords {
    private ElementWords() {}

    /** A few words such as "pull", "line" or "slow roll". */
    public static String of(Element element) {
        if (element instanceof Element.Arc arc) {
            return arc.way() == Element.Way.PULL ? "pull" : "push";
        } else if (element instanceof Element.Roll roll) {
            return switch (roll.style()) {
                case AILERON -> "roll";
                case SLOW -> "slow roll";
                case HESITATION -> "hesitation roll";
                case BARREL -> "barrel roll";
            };
        } else if (element instanceof Element.Reversal reversal) {
            return reversal.way() == ReversalWay.UNDER ? "roll underneath" : "roll back over the top";
        } else if (element instanceof Element.Flick flick) {
            return flick.kind() == Element.FlickKind.POSITIVE ? "flick" : "negative flick";
        } else if (element instanceof Element.Spin spin) {
            return switch (spin.kind()) {
                case UPRIGHT -> "spin";
                case INVERTED -> "inverted spin";
                case FLAT -> "flat spin";
                case INVERTED_FLAT -> "inverted flat spin";
            };
        } else if (element instanceof Element.Turn turn) {
            return turn.rolls() != 0
                    ? "rolling turn"
                    : turn.climbs() ? "climbing turn" : turn.peakPathDeg() > 0 ? "wing-over" : "turn";
        } else if (element instanceof Element.HoverRoll) {
            return "hover roll";
        } else if (element instanceof Element.Pivot) {
            return "pivot";
        } else if (element instanceof Element.Slide) {
            return "slide";
        } else if (element instanceof Element.Tumble) {
            return "tumble";
        } else if (element instanceof Element.Run) {
            return "run";
        } else if (element instanceof Element.Reposition) {
            return "reposition";
        }
        return "line";
    }
}
