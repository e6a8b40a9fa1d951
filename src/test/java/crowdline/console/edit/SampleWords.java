package crowdline.console.edit;

import crowdline.show.Figure;
import crowdline.speech.Pace;
import crowdline.speech.Spoken;
import crowdline.timing.FigureTime;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What made-up words are judged by. */
public final class SampleWords {
    private static final Spoken SPOKEN = new Spoken(Map.of());

    /** Every figure lasts 10 s, most often 8 to 12 s; the default pace. */
    public static final WordsBasis BASIS = new WordsBasis(
            Set.of("stall turn"),
            SPOKEN::expand,
            text -> Pace.DEFAULT.time(SPOKEN.expand(text)),
            (act, figure) -> Optional.of(new FigureTime(figure, 0, 10, 8, 12)),
            Figure::shownName);

    private SampleWords() {}
}
