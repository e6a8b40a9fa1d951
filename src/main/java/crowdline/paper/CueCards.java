package crowdline.paper;

import crowdline.patter.Unplaced;
import crowdline.sheet.RunningSheet;
import crowdline.sheet.page.Area;
import crowdline.sheet.page.Cell;
import crowdline.sheet.page.Counting;
import crowdline.sheet.page.Flow;
import crowdline.sheet.page.PaperSize;
import crowdline.sheet.page.Style;
import crowdline.sheet.still.PaperStill;
import crowdline.show.Caution;
import crowdline.show.Performer;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;

/** Cards for the pocket: one for the start of an act, one for each figure, one for what found no place; none for a way on which nothing is said. */
final class CueCards {
    /** The least size of what is read aloud, points. */
    static final double WORDS_PT = 15;

    private static final double NAME_PT = 21;
    private static final double LONG_NAME_PT = 15;
    private static final int LONG_NAME_LINES = 3;
    private static final double DRAWING_PT = 84;
    /** So much of what to look for is said already where a remark has these of its words. Tuned on first drafts. */
    private static final double SAME = 0.8;

    private final PaperAct act;
    private final Type type;
    private final List<Card> cards = new ArrayList<>();

    private CueCards(PaperAct act, Type type) {
        this.act = act;
        this.type = type;
    }

    /** The cards of an act, in their order. */
    static List<Card> of(PaperAct act, Type type, Counting count) {
        CueCards made = new CueCards(act, type);
        made.opening();
        for (int i = made.following(-1); i >= 0; i = made.following(i)) {
            count.is(i, act.times().size());
            made.figure(i);
        }
        made.spare();
        return made.cards;
    }

    /** The next figure with a card, from 0; -1 if there is none. A way between two figures in which nothing is said needs none. */
    private int following(int i) {
        for (int next = i + 1; next < act.times().size(); next++) {
            boolean isWay = act.act()
                    .figure(act.times().get(next).figureId())
                    .filter(Figure::transit)
                    .isPresent();
            if (!isWay || !act.said(next).isEmpty()) {
                return next;
            }
        }
        return -1;
    }

    private void card(String name, String when, String next, String nextWhen, Consumer<Flow> filled) {
        Flow flow = new Flow(PaperSize.A6, page -> CardFrame.room(type, !next.isEmpty()));
        filled.accept(flow);
        cards.add(new Card(act, name, when, next, nextWhen, flow));
    }

    private void opening() {
        int next = following(-1);
        String first = next < 0 ? "" : act.name(next);
        String from = next < 0 ? "0:00" : Said.clock(act.times().get(next).startS());
        card(act.act().title(), "slot " + act.slot(), first, from, flow -> {
            name(flow, act.act().title(), PaperStill.NONE, "");
            act.performer().ifPresent(p -> performer(flow, p));
            flow.gap(type.pt(6));
            if (!act.act().title().contains(act.aircraft())) {
                flow.text("about", act.aircraft(), body());
            }
            flow.text(
                    "about",
                    "Variant “" + act.variant() + "”, " + RunningSheet.minutes(act.totalS()) + " in the air",
                    small());
            remarks(flow, act.said(-1).stream().map(p -> Said.of(act, p)).toList());
            flow.gap(type.pt(6));
            flow.keep(flow.height(Caution.ON_SCREEN, caution()));
            flow.text("caution", Caution.ON_SCREEN, caution());
        });
    }

    private static Style caution() {
        return new Style(9, false, Type.SOFT);
    }

    private void performer(Flow flow, Performer performer) {
        if (!act.act().title().contains(performer.name())) {
            flow.text("about", performer.name(), new Style(type.pt(WORDS_PT), true, Type.BLACK));
        }
        String said = performer.sayAs();
        if (said != null) {
            flow.text("say", "say: " + said, small());
        }
    }

    private void figure(int i) {
        int after = following(i);
        boolean last = after < 0;
        String next = last ? "" : act.name(after);
        String when = Said.clock(act.times().get(i).startS()) + " · "
                + Said.seconds(act.times().get(i).durationS());
        String nextWhen = last ? "" : Said.clock(act.times().get(after).startS());
        card(act.name(i), when, next, nextWhen, flow -> {
            name(flow, act.name(i), act.still(i), act.sayIt(i));
            String look = act.look(i);
            List<Said> said = act.said(i).stream().map(p -> Said.of(act, p)).toList();
            if (!look.isBlank() && said.stream().noneMatch(s -> says(s.words(), look))) {
                flow.gap(type.pt(5));
                flow.keep(body().leadingPt() * 2);
                flow.text("label", "LOOK FOR", label());
                flow.text("look", look, body());
            }
            remarks(flow, said);
        });
    }

    /** Whether words on the card say it already, or nearly so: what is read twice costs the place of what is not. */
    static boolean says(String words, String look) {
        Set<String> wanted = words(look);
        long found = words(words).stream().filter(wanted::contains).count();
        return found >= SAME * wanted.size();
    }

    private static Set<String> words(String text) {
        return Set.copyOf(Arrays.asList(text.toLowerCase(Locale.ROOT).strip().split("[^\\p{L}\\p{N}']+")));
    }

    private void name(Flow flow, String name, PaperStill still, String sayIt) {
        Area room = flow.room();
        boolean drawn = still.isDrawn();
        double width = room.width() - (drawn ? DRAWING_PT + 8 : 0);
        double tall = still.height(DRAWING_PT);
        double from = flow.at();
        Style style = CardFrame.nameStyle(name, width, type.pt(NAME_PT), type.pt(LONG_NAME_PT), LONG_NAME_LINES);
        int page = flow.page();
        if (drawn) {
            flow.picture("drawing", width + 8, DRAWING_PT, tall, a -> still.inks(a.x(), a.y(), a.width(), a.height()));
            flow.goOnFrom(from);
        }
        flow.row(new Cell("name", 0, width, name, style));
        if (!sayIt.isEmpty()) {
            flow.row(new Cell("say", 0, width, "say: " + sayIt, small()));
        }
        if (drawn && flow.page() == page) {
            flow.goOnFrom(Math.max(flow.at(), from + tall));
        }
    }

    private void remarks(Flow flow, List<Said> remarks) {
        for (Said said : remarks) {
            flow.gap(type.pt(8));
            flow.keep(label().leadingPt() + flow.height(said.words(), body()));
            double width = flow.room().width();
            double aside = type.pt(44);
            String head = said.word()
                    + (said.when().isEmpty() ? "" : " · " + said.when())
                    + (said.noteOfDraft().isEmpty() ? "" : " · " + said.noteOfDraft());
            flow.row(
                    new Cell("kind " + said.id(), 0, width - aside, head, label()).with(said.sign()),
                    new Cell("seconds " + said.id(), width - aside, aside, said.seconds(), seconds()).ending());
            flow.text("remark " + said.id(), said.words(), body());
        }
    }

    private void spare() {
        List<Unplaced> left = act.planned().plan().unplaced();
        if (left.isEmpty()) {
            return;
        }
        card("In hand", "not in the plan", "", "", flow -> {
            name(flow, "In hand", PaperStill.NONE, "");
            flow.text("about", "What the plan has no room for.", small());
            remarks(flow, left.stream().map(u -> Said.of(act, u)).toList());
        });
    }

    private Style body() {
        return new Style(type.pt(WORDS_PT), false, Type.BLACK);
    }

    private Style small() {
        return new Style(type.pt(11), false, Type.SOFT);
    }

    private Style label() {
        return new Style(type.pt(10), true, Type.ACCENT);
    }

    private Style seconds() {
        return new Style(type.pt(10), true, Type.BLACK);
    }
}
