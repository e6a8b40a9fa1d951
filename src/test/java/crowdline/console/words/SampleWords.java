package crowdline.console.words;

import crowdline.console.edit.Editing;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.sight.fact.CrowdFact;
import crowdline.speech.pace.Pace;
import crowdline.speech.plain.TradeTerms;
import crowdline.speech.say.Spoken;
import crowdline.timing.FigureTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What made-up words are judged by. */
public final class SampleWords {
    private static final Spoken SPOKEN = new Spoken(Map.of());

    /** Every figure lasts 10 s, most often 8 to 12 s; the default pace. */
    public static final WordsBasis BASIS = new WordsBasis(
            TradeTerms.PLAIN,
            figure -> Set.of(figure.figure()),
            SPOKEN::expand,
            text -> Pace.DEFAULT.time(SPOKEN.expand(text)),
            (act, figure) -> Optional.of(new FigureTime(figure, 0, 10, 8, 12)),
            Figure::shownName);

    /** Two facts of the loop and one of the act, as if computed. */
    public static final Map<RemarkPlace, PlaceFacts> FACTS = Map.of(
            new RemarkPlace("a1", "f1"),
            new PlaceFacts(
                    "full",
                    List.of(
                            new CrowdFact(
                                    "f1.heaviest",
                                    "f1",
                                    CrowdFact.Kind.HEAVIEST,
                                    4.12,
                                    "g",
                                    4,
                                    "At the bottom everything feels about four times as heavy.",
                                    "About four times as heavy.",
                                    8),
                            new CrowdFact(
                                    "f1.highest",
                                    "f1",
                                    CrowdFact.Kind.HIGHEST,
                                    1187.3,
                                    "ft",
                                    1200,
                                    "The top is about one thousand two hundred feet up.",
                                    "About one thousand two hundred feet up.",
                                    7)),
                    List.of()),
            new RemarkPlace("a1", null),
            new PlaceFacts(
                    "full",
                    List.of(new CrowdFact(
                            "a1.mass", null, CrowdFact.Kind.MASS, 470, "kg", 470, "It weighs very little.", " ", 6)),
                    List.of()));

    private SampleWords() {}

    /** A show being edited, as it was opened. */
    public static Editing editing(Show show) {
        Editing editing = new Editing();
        editing.open("day.json", show);
        return editing;
    }

    /** The words of a show that is edited, which follow it. */
    public static WordsModel model(Editing editing) {
        WordsModel model = new WordsModel(editing, BASIS);
        editing.onChange(model::follow);
        return model;
    }

    /** The words of a show as it was opened. */
    public static WordsModel model(Show show) {
        return model(editing(show));
    }
}
