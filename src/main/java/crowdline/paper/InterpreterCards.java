package crowdline.paper;

import crowdline.patter.Placed;
import crowdline.sheet.ink.Lettering;
import crowdline.sheet.page.Cell;
import crowdline.sheet.page.Counting;
import crowdline.sheet.page.Flow;
import crowdline.sheet.page.PaperSize;
import crowdline.sheet.page.Style;
import crowdline.show.Interpreting;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.speech.pace.Interpreted;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Cards for the interpreter: a card for each figure of which something is said in another language, with what comes before it. */
final class InterpreterCards {
    private final PaperAct act;
    private final Type type;
    private final List<Card> cards = new ArrayList<>();

    private InterpreterCards(PaperAct act, Type type) {
        this.act = act;
        this.type = type;
    }

    /**
     * Something said in another language, and the remark it belongs to.
     *
     * @param when in the act, or empty if at any time of the day
     */
    private record Pair(String when, boolean shortForm, Remark remark, Interpreted other) {}

    /** The cards of an act, in their order; none if nothing of it is interpreted. */
    static List<Card> of(PaperAct act, Type type, Counting count) {
        InterpreterCards made = new InterpreterCards(act, type);
        if (act.number() == 1) {
            made.anyTime();
        }
        made.card(-1, act.act().title(), "slot " + act.slot());
        for (int i = 0; i < act.times().size(); i++) {
            count.is(i, act.times().size());
            made.card(i, act.name(i), Said.clock(act.times().get(i).startS()));
        }
        return made.cards;
    }

    /** What is said between acts and wherever there is time, such as the duties of the day. */
    private void anyTime() {
        List<Pair> pairs = Stream.concat(
                        act.show().remarks().stream(), act.show().gaps().remarks())
                .flatMap(remark -> pair("", false, remark).stream())
                .toList();
        card("At any time of the day", "", pairs);
    }

    private void card(int figure, String name, String when) {
        List<Pair> pairs = act.said(figure).stream()
                .flatMap(placed -> pair(placed).stream())
                .toList();
        card(name, when, pairs);
    }

    private void card(String name, String when, List<Pair> pairs) {
        if (pairs.isEmpty()) {
            return;
        }
        Flow flow = new Flow(PaperSize.A6, page -> CardFrame.room(type, false));
        flow.text("name", name, new Style(type.pt(17), true, Type.BLACK));
        pairs.forEach(pair -> pair(flow, pair));
        cards.add(new Card(act, name, when, "", "", flow));
    }

    private Optional<Pair> pair(Placed placed) {
        return pair(
                Said.clock(placed.startS()),
                placed.form() == RemarkForm.SHORT,
                act.lookup().remark(placed.remarkId()).orElseThrow());
    }

    private Optional<Pair> pair(String when, boolean shortForm, Remark remark) {
        return act.lookup().interpreted(remark, shortForm).map(other -> new Pair(when, shortForm, remark, other));
    }

    private void pair(Flow flow, Pair pair) {
        flow.gap(type.pt(9));
        double width = flow.room().width();
        double aside = type.pt(44);
        Style label = new Style(type.pt(9.5), true, Type.ACCENT);
        Style words = new Style(type.pt(CueCards.WORDS_PT), false, Type.BLACK);
        Style first = new Style(type.pt(11), false, Type.SOFT);
        String said = pair.other().text();
        String id = pair.remark().id();
        flow.keep(2 * label.leadingPt() + 2 * words.leadingPt());
        String name = pair.other().speaker();
        flow.row(
                new Cell(
                        "kind " + id,
                        0,
                        width - aside,
                        pair.other().words().languageName()
                                + (name.isEmpty() ? "" : " \u00b7 " + name)
                                + (pair.when().isEmpty() ? "" : " \u00b7 " + pair.when()),
                        label),
                new Cell(
                                "seconds " + id,
                                width - aside,
                                aside,
                                Said.seconds(pair.other().time().seconds()),
                                label)
                        .ending());
        String note = pair.other().note();
        if (!note.isEmpty()) {
            flow.text("note " + id, note.substring(0, 1).toUpperCase(Locale.UK) + note.substring(1), label);
        }
        boolean after = act.lookup().voices().interpreting() == Interpreting.AFTER;
        flow.text("first " + id, (after ? "After: " : "With: ") + pair.remark().words(pair.shortForm()), first);
        flow.row(inItsDirection(new Cell("other " + id, 0, width, said, words), said));
        String shorter = pair.other().words().shortText();
        // In which form it is said is known within an act alone.
        if (pair.when().isEmpty() && shorter != null && pair.remark().shortText() != null) {
            flow.text(
                    "short " + id,
                    (after ? "In short, after: " : "In short, with: ")
                            + pair.remark().shortText(),
                    first);
            flow.row(inItsDirection(new Cell("other short " + id, 0, width, shorter, words), shorter));
        }
    }

    private static Cell inItsDirection(Cell cell, String said) {
        return Lettering.isRightToLeft(said) ? cell.ending() : cell;
    }
}
