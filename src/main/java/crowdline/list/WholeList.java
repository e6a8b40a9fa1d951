package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.piece.Canopy;
import crowdline.list.split.Asides;
import crowdline.list.word.Text;
import java.util.List;

/** What lines mean beside each other, once all of a list are there. */
final class WholeList {
    private WholeList() {}

    /** Changes lines, their order, and which of them are flown; what is not goes to the asides. */
    static void read(List<Draft> lines, Text text, Asides asides) {
        lines.forEach(draft -> Arriving.turn(draft, text));
        Rotor.read(lines);
        Meant.read(lines, text);
        Together.fly(lines, text);
        Canopy.read(lines).forEach(draft -> draft.eachSpan(asides::add));
        ShowNames.give(lines, text);
        Overlong.leaveOut(lines, text).forEach(asides::ask);
        List<Draft> flown = Order.flown(BothEnds.of(lines, text), text);
        lines.clear();
        lines.addAll(flown);
        Mentions.leaveOut(lines, text).forEach(draft -> draft.eachSpan(asides::add));
        Towed.read(lines).forEach(draft -> draft.eachSpan(asides::add));
    }
}
