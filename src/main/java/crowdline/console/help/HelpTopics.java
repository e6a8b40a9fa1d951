package crowdline.console.help;

import crowdline.console.place.Place;
import crowdline.show.bounds.Nearest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Everything that help explains, and what somebody is probably looking for. */
public final class HelpTopics {
    private static final String RESOURCE = "/crowdline/help/topics.txt";
    private static final int IN_TITLE = 10;

    private final List<HelpTopic> all;

    HelpTopics(List<HelpTopic> all) {
        this.all = List.copyOf(all);
    }

    /** Those that come with the program. */
    public static HelpTopics shipped() {
        return new HelpTopics(
                KeyedText.shipped(RESOURCE).stream().map(HelpTopics::topic).toList());
    }

    private static HelpTopic topic(KeyedText.Part part) {
        List<Place> places = part.about().isEmpty()
                ? List.of()
                : Stream.of(part.about().split(", ", -1)).map(KeyedText::place).toList();
        return new HelpTopic(part.head(), places, part.paragraphs());
    }

    /** Every topic, those of a place first. */
    public List<HelpTopic> from(Place place) {
        return all.stream()
                .sorted(Comparator.comparingInt(topic -> distance(topic, place)))
                .toList();
    }

    private static int distance(HelpTopic topic, Place place) {
        int at = topic.places().indexOf(place);
        return at == 0 ? 0 : at > 0 ? 1 : topic.places().isEmpty() ? 2 : 3;
    }

    /**
     * Topics in which every word is found, or one that is spelled nearly so; the best first.
     *
     * @param place its topics come before others as good; all of them where nothing is asked
     */
    public List<HelpTopic> search(String asked, Place place) {
        List<String> words = words(asked);
        if (words.isEmpty()) {
            return from(place);
        }
        Set<String> known = all.stream()
                .flatMap(t -> words(t.text()).stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        List<String> meant = new ArrayList<>();
        for (String word : words) {
            boolean isKnown = known.stream().anyMatch(k -> k.startsWith(word));
            Optional<String> near = isKnown ? Optional.of(word) : Nearest.to(word, known);
            near.ifPresent(meant::add);
        }
        return from(place).stream()
                .filter(topic -> !meant.isEmpty() && score(topic, meant) > 0)
                .sorted(Comparator.comparingInt((HelpTopic topic) -> -score(topic, meant)))
                .toList();
    }

    /** 0 if a word is missing. */
    private static int score(HelpTopic topic, List<String> words) {
        List<String> title = words(topic.title());
        List<String> text = words(topic.text());
        int score = 0;
        for (String word : words) {
            int times = (int) text.stream().filter(t -> t.startsWith(word)).count();
            if (times == 0) {
                return 0;
            }
            int whole = (int) text.stream().filter(word::equals).count();
            score += Math.min(times + 2 * whole, IN_TITLE - 1)
                    + (title.stream().anyMatch(t -> t.startsWith(word)) ? IN_TITLE : 0);
        }
        return score;
    }

    private static List<String> words(String text) {
        return Arrays.stream(text.toLowerCase(Locale.UK).split("[^\\p{L}\\p{N}]+", -1))
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
