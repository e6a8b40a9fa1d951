package crowdline.console.help;

import crowdline.console.place.Place;
import java.util.List;

/**
 * One thing explained.
 *
 * @param title what it is about
 * @param places where one would ask, most of all the first; none for what belongs to all
 * @param paragraphs the explanation, keys already in words
 */
public record HelpTopic(String title, List<Place> places, List<String> paragraphs) {
    public HelpTopic {
        places = List.copyOf(places);
        paragraphs = List.copyOf(paragraphs);
    }

    /** Title and explanation as one text. */
    String text() {
        return title + "\n" + String.join("\n", paragraphs);
    }
}
