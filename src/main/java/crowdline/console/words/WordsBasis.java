package crowdline.console.words;

import crowdline.show.figure.Figure;
import crowdline.speech.pace.Voices;
import crowdline.speech.say.SpokenText;
import crowdline.timing.FigureTime;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * What the Words place must know to judge a remark. Asked on the event thread, so every answer comes at once.
 *
 * @param tradeWords words that need explaining, with plain words for each
 * @param called every name of a figure
 * @param said how a text sounds
 * @param voices how long remarks take
 * @param lasts how long a figure lasts, by act and figure, if anybody predicted it
 * @param names how a figure is called
 */
public record WordsBasis(
        Map<String, String> tradeWords,
        Function<Figure, Set<String>> called,
        Function<String, SpokenText> said,
        Voices voices,
        BiFunction<String, String, Optional<FigureTime>> lasts,
        Function<Figure, String> names) {
    public WordsBasis {
        tradeWords = Map.copyOf(tradeWords);
    }
}
