package crowdline.edit.day;

import crowdline.edit.Change;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.show.Incident;
import crowdline.show.Incident.Contact;
import crowdline.show.bounds.Written;
import java.util.ArrayList;
import java.util.List;

/** Edits of the organiser's words for when something goes wrong. Words that have changed are agreed with nobody any more. */
public final class Announcements {
    private Announcements() {}

    /** Begins with these words, which are agreed with nobody. */
    public static Edit template(Incident words) {
        return show -> Change.of(
                "Begin the incident page",
                show.withIncident(new Incident(null, words.firstSteps(), words.words(), words.contacts())));
    }

    /** Tells who agreed the words, and when; nobody if that is blank. */
    public static Edit agreed(String withWhom) {
        return edit(
                "Agree the incident page",
                i -> new Incident(
                        withWhom.isBlank() ? null : withWhom.strip(), i.firstSteps(), i.words(), i.contacts()));
    }

    /** What to do first, a line for each step. */
    public static Edit firstSteps(String lines) {
        return edit("First steps", i -> new Incident(null, split(lines, "\\R"), i.words(), i.contacts()));
    }

    /** What to say, paragraph by paragraph, with an empty line between them. */
    public static Edit words(String paragraphs) {
        return edit(
                "Words of the incident page",
                i -> new Incident(null, i.firstSteps(), split(paragraphs, "\\R\\s*\\R"), i.contacts()));
    }

    /** Whom to reach: a line for each, with a colon between who and how. */
    public static Edit contacts(String lines) {
        return edit("Contacts", i -> {
            List<Contact> contacts = new ArrayList<>();
            for (String line : split(lines, "\\R")) {
                String[] parts = line.split(":", 2);
                if (parts.length < 2 || parts[0].isBlank() || parts[1].isBlank()) {
                    throw new CannotBe("“" + Written.brief(line, 40)
                            + "” needs who and how with a colon between, such as Display director: channel 4");
                }
                contacts.add(new Contact(parts[0].strip(), parts[1].strip()));
            }
            return new Incident(null, i.firstSteps(), i.words(), contacts);
        });
    }

    private static List<String> split(String text, String between) {
        return java.util.Arrays.stream(text.split(between, -1))
                .map(String::strip)
                .filter(s -> !s.isEmpty())
                .toList();
    }

    private interface Changing {
        Incident of(Incident before) throws CannotBe;
    }

    private static Edit edit(String name, Changing changing) {
        return ((Edit) show -> {
                    Incident before = show.incident();
                    if (before == null) {
                        throw new CannotBe("There is no incident page yet; begin with the template");
                    }
                    return Change.of(name, show.withIncident(changing.of(before)));
                })
                .refusing();
    }
}
