package crowdline.paper;

import crowdline.glossary.Explained;
import crowdline.sheet.page.Counting;
import crowdline.sheet.page.Pages;
import crowdline.show.catalogue.Catalogue;
import java.util.List;

/** Makes pages. */
public final class Paper {
    private Paper() {}

    /**
     * The pages of a kind.
     *
     * @param count hears how far it is, and may throw to stop it
     * @throws NothingOnPaper if there is nothing to be put on such paper
     */
    public static Pages of(SheetKind kind, Wanted wanted, Counting count) throws NothingOnPaper {
        String title = wanted.loaded().show().title() + ": " + kind.title();
        return switch (kind) {
            case CARDS ->
                CardSheets.of(
                        title,
                        PaperAct.of(wanted, count),
                        wanted.type(),
                        act -> CueCards.of(act, wanted.type(), count));
            case INTERPRETER -> interpreter(title, PaperAct.of(wanted, count), wanted.type(), count);
            case RUNNING -> RunningPages.of(title, PaperAct.of(wanted, count), wanted, count);
            case PILOT -> PilotPages.of(title, PaperAct.of(wanted, count), wanted, count);
            case QUESTIONS -> QuestionPages.of(title, wanted, count);
            case GLOSSARY -> GlossaryPages.of(title, wanted, count);
            case INCIDENT -> IncidentPages.of(title, wanted.loaded().show(), wanted.type());
            case DEBRIEF -> DebriefPages.of(title, wanted);
        };
    }

    private static Pages interpreter(String title, List<PaperAct> acts, Type type, Counting count)
            throws NothingOnPaper {
        Pages pages = CardSheets.of(title, acts, type, act -> InterpreterCards.of(act, type, count));
        if (pages.pages().isEmpty()) {
            throw new NothingOnPaper("No planned remark has words in another language that somebody is there to"
                    + " say. Write them in Words, under the remark");
        }
        return pages;
    }

    /**
     * Pages of the glossary, whatever show.
     *
     * @param items figures and words, in the order given
     * @param catalogue knows every figure among them
     */
    public static Pages glossary(String title, List<Explained> items, Catalogue catalogue, boolean large) {
        return GlossaryPages.of(title, items, catalogue, new Type(large ? Type.LARGE : 1), Counting.UNHEARD);
    }
}
