package crowdline.console.incident;

import java.util.List;

/**
 * The incident page.
 *
 * @param agreedWith who agreed the words, or a plain statement that nobody has
 * @param noted the time the page was opened, such as "Noted 14:32:05"
 * @param since such as "2 min 10 s ago"
 * @param firstSteps what to do first
 * @param words what to say, by paragraphs
 * @param contacts whom to reach
 */
public record IncidentView(
        String agreedWith,
        String noted,
        String since,
        List<String> firstSteps,
        List<String> words,
        List<ContactView> contacts) {

    /** Whom to reach and how. */
    public record ContactView(String role, String how) {}

    public IncidentView {
        firstSteps = List.copyOf(firstSteps);
        words = List.copyOf(words);
        contacts = List.copyOf(contacts);
    }
}
