package crowdline.flight.shape;

import crowdline.show.figure.Element;

/** Elements flown with less power than they ask for. */
final class Powers {
    private Powers() {}

    /**
     * The same element with a share of its power. What hangs on the propeller keeps it all.
     *
     * @param share 0 to 1
     */
    static Element scaled(Element element, double share) {
        if (share == 1) {
            return element;
        }
        double power = element.power() * share;
        if (element instanceof Element.Line line) {
            return new Element.Line(line.until(), line.value(), line.middle(), power);
        } else if (element instanceof Element.Arc arc) {
            return new Element.Arc(
                    arc.way(), arc.degrees(), arc.toPathDeg(), arc.size(), arc.value(), arc.topShare(), power);
        } else if (element instanceof Element.Roll roll) {
            return new Element.Roll(
                    roll.style(),
                    roll.toward(),
                    roll.degrees(),
                    roll.seconds(),
                    roll.pointsPerTurn(),
                    roll.pauseS(),
                    power);
        } else if (element instanceof Element.Flick flick) {
            return new Element.Flick(flick.kind(), flick.toward(), flick.degrees(), power);
        } else if (element instanceof Element.Turn turn) {
            return turn.drawn(turn.bankDeg(), turn.peakPathDeg(), power);
        } else if (element instanceof Element.Reversal reversal) {
            return new Element.Reversal(reversal.way(), power);
        }
        return element;
    }
}
