package crowdline.edit.day;

import crowdline.arrange.FreshId;
import crowdline.edit.Change;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.show.Announcement;
import crowdline.show.Show;
import crowdline.show.bounds.Written;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Edits of the organiser's words for occasions that nobody can plan. Words that have changed are agreed with nobody any more.
 */
public final class Occasions {
    private static final String FIRST_WORDS = "[what to say]";

    private Occasions() {}

    /** Adds these words, which are agreed with nobody, for every occasion the show has none for. */
    public static Edit template(List<Announcement> words) {
        return show -> {
            List<Announcement> all = new ArrayList<>(show.announcements());
            words.stream()
                    .filter(fresh -> show.announcement(fresh.id()).isEmpty())
                    .forEach(fresh -> all.add(new Announcement(fresh.id(), fresh.occasion(), fresh.words(), null)));
            return Change.of("Begin the announcements", show.withAnnouncements(all));
        };
    }

    /** Adds an occasion, with words still to be written. */
    public static Edit add(String occasion) {
        return ((Edit) show -> {
                    Set<String> ids = show.announcements().stream()
                            .map(Announcement::id)
                            .collect(Collectors.toCollection(HashSet::new));
                    List<Announcement> all = new ArrayList<>(show.announcements());
                    all.add(new Announcement(FreshId.of(occasion, ids), occasion.strip(), List.of(FIRST_WORDS), null));
                    return Change.of("Add an announcement", show.withAnnouncements(all));
                })
                .refusing();
    }

    /** Takes an occasion out, with its words. */
    public static Edit remove(String id) {
        return show -> {
            Announcement gone = find(show, id);
            return Change.of(
                    "Remove the announcement " + quoted(gone),
                    show.withAnnouncements(show.announcements().stream()
                            .filter(a -> !a.id().equals(id))
                            .toList()));
        };
    }

    /** Calls an occasion otherwise; what is said on it stays agreed. */
    public static Edit rename(String id, String occasion) {
        return edit(
                id, "Rename the announcement ", a -> new Announcement(id, occasion.strip(), a.words(), a.agreedWith()));
    }

    /** What to say, paragraph by paragraph, with an empty line between them; what is to be filled in in square brackets. */
    public static Edit words(String id, String paragraphs) {
        return edit(id, "Words of the announcement ", a -> {
            List<String> words = Arrays.stream(paragraphs.split("\\R\\s*\\R", -1))
                    .map(String::strip)
                    .filter(paragraph -> !paragraph.isEmpty())
                    .toList();
            return new Announcement(id, a.occasion(), words, words.equals(a.words()) ? a.agreedWith() : null);
        });
    }

    /** Tells who agreed the words, and when; nobody if that is blank. */
    public static Edit agreed(String id, String withWhom) {
        return edit(
                id,
                "Agree the announcement ",
                a -> new Announcement(id, a.occasion(), a.words(), withWhom.isBlank() ? null : withWhom.strip()));
    }

    private interface Changing {
        Announcement of(Announcement before);
    }

    private static Edit edit(String id, String name, Changing changing) {
        return ((Edit) show -> {
                    Announcement before = find(show, id);
                    Announcement after = changing.of(before);
                    return Change.of(
                            name + quoted(before),
                            show.withAnnouncements(show.announcements().stream()
                                    .map(a -> a.id().equals(id) ? after : a)
                                    .toList()));
                })
                .refusing();
    }

    private static String quoted(Announcement announcement) {
        String occasion = announcement.occasion();
        return "“" + Written.brief(occasion, 40) + "”";
    }

    private static Announcement find(Show show, String id) throws CannotBe {
        return show.announcement(id)
                .orElseThrow(() -> new CannotBe("That announcement is no longer in the show; choose another"));
    }
}
