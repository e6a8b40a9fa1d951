package crowdline.show;

import crowdline.show.bounds.Most;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is said and done when something goes wrong, in the organiser's own words.
 *
 * @param agreedWith who agreed these words, such as "display director, 2 May"; null if nobody has yet
 * @param firstSteps what to do first, in order
 * @param words what to say, paragraph by paragraph
 * @param contacts whom to reach and how
 */
public record Incident(
        @Nullable String agreedWith, List<String> firstSteps, List<String> words, List<Contact> contacts) {

    /** Whom to reach and how. */
    public record Contact(String role, String how) {
        public Contact {
            Most.mustBeText("contact role", role);
            Most.mustBeText("contact how", how);
        }
    }

    public Incident {
        Most.FIRST_STEPS.must(firstSteps);
        Most.WORDS.must(words);
        Most.CONTACTS.must(contacts);
        firstSteps = List.copyOf(firstSteps);
        words = List.copyOf(words);
        contacts = List.copyOf(contacts);
        if (words.isEmpty()) {
            throw new IllegalArgumentException("the incident page has no words; it needs the organiser's text");
        }
        firstSteps.forEach(step -> Most.mustBeText("first step", step));
        words.forEach(paragraph -> Most.mustBeText("paragraph of the incident page", paragraph));
        if (agreedWith != null) {
            Most.mustBeText("agreement of the incident page", agreedWith);
        }
    }

    /** Who agreed these words, or that nobody has, for a page. */
    public String agreement() {
        return agreement(agreedWith);
    }

    /** The same of any words of the organiser's. */
    static String agreement(@Nullable String with) {
        return with == null ? "Nobody has agreed these words yet" : "Agreed with " + with;
    }
}
