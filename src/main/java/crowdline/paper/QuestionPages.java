package crowdline.paper;

import crowdline.loaded.PilotLetter;
import crowdline.loaded.PilotQuestions.Question;
import crowdline.sheet.ink.Ink;
import crowdline.sheet.page.Cell;
import crowdline.sheet.page.Counting;
import crowdline.sheet.page.Flow;
import crowdline.sheet.page.Pages;
import crowdline.sheet.page.PaperSize;
import crowdline.sheet.page.Sign;
import crowdline.show.Act;
import crowdline.show.Show;
import java.util.List;
import java.util.stream.Collectors;

/** What to ask a pilot, with a line for each answer. */
final class QuestionPages {
    private static final double ANSWER_PT = 26;
    /** Where that saves a page with a question or two on it. */
    private static final List<Double> LESS_PT = List.of(22.0, 19.0, 16.0);

    private QuestionPages() {}

    static Pages of(String title, Wanted wanted, Counting count) throws NothingOnPaper {
        Show show = wanted.loaded().show();
        List<PilotLetter> letters = PilotLetter.of(
                        show, wanted.loaded().catalogue(), wanted.loaded().passes())
                .stream()
                .filter(letter -> wanted.acts().contains(letter.act()))
                .toList();
        if (letters.isEmpty()) {
            throw wanted.acts().isEmpty()
                    ? NothingOnPaper.noActs()
                    : new NothingOnPaper("nothing is assumed of "
                            + wanted.acts().stream().map(Act::id).collect(Collectors.joining(", "))
                            + ", so there is nothing to ask");
        }
        Pages all = new Pages(title, List.of(), List.of());
        for (PilotLetter letter : letters) {
            count.is(all.pages().size(), letters.size());
            all = all.with(letter(title, show, letter, wanted));
        }
        return all;
    }

    private static Pages letter(String title, Show show, PilotLetter letter, Wanted wanted) {
        Pages roomy = letter(title, show, letter, wanted, ANSWER_PT);
        for (double less : LESS_PT) {
            Pages tighter = letter(title, show, letter, wanted, less);
            if (tighter.pages().size() < roomy.pages().size()) {
                return tighter;
            }
        }
        return roomy;
    }

    private static Pages letter(String title, Show show, PilotLetter letter, Wanted wanted, double answerPt) {
        Type type = wanted.type();
        Flow flow = new Flow(PaperSize.A4, page -> PageFrame.room());
        flow.bookmark(letter.act().title(), 0);
        flow.text("title", letter.act().title(), type.title());
        flow.gap(3);
        flow.text("to", "Questions for " + letter.to() + ", the most important first", type.words());
        String group = "";
        for (Question question : letter.questions()) {
            String text = wanted.measures().told(question.text());
            double height = flow.height(text, type.words()) + type.pt(answerPt);
            if (!question.group().equals(group)) {
                group = question.group();
                flow.gap(type.pt(14) * answerPt / ANSWER_PT);
                flow.keep(type.head().leadingPt() + height);
                flow.text("head", group, type.head());
            }
            flow.gap(type.pt(5));
            flow.keep(height);
            flow.row(new Cell("question", 0, flow.room().width(), text, type.words()).with(Sign.BOX));
            flow.picture(
                    "answer",
                    0,
                    flow.room().width(),
                    type.pt(answerPt),
                    a -> List.of(
                            Ink.line(a.x() + type.pt(15), a.bottom() - 4, a.right(), a.bottom() - 4, Type.RULE, 0.8)));
        }
        return flow.pages(
                title, new PageFrame(show.title(), "Questions · " + letter.act().title(), true));
    }
}
