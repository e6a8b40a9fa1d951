package crowdline.live.state;

import crowdline.live.event.AnnouncementEvent;
import crowdline.live.event.AnnouncementEvent.AnnouncementRead;
import crowdline.live.event.AnnouncementEvent.AnnouncementShown;
import crowdline.live.event.AnnouncementEvent.BlankFilled;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The announcements of the day.
 *
 * @param pages each time one was shown, in that order
 * @param filled what is said for each blank, by the id of the announcement
 */
public record Announced(List<Page> pages, Map<String, Map<String, String>> filled) {
    /** Nothing yet. */
    public static final Announced NONE = new Announced(List.of(), Map.of());

    /**
     * An announcement that was shown once.
     *
     * @param shownAtS when its page was opened, on the session's scale
     * @param readAtS when it was read out, or null if it was not
     * @param words what was said then, paragraph by paragraph
     */
    public record Page(
            String announcementId,
            String occasion,
            double shownAtS,
            @Nullable Double readAtS,
            List<String> words) {
        public Page {
            words = List.copyOf(words);
        }
    }

    public Announced {
        pages = List.copyOf(pages);
        Map<String, Map<String, String>> copy = new HashMap<>();
        filled.forEach((id, blanks) -> copy.put(id, Map.copyOf(blanks)));
        filled = Map.copyOf(copy);
    }

    /** What is said for each blank of an announcement. */
    public Map<String, String> filled(String announcementId) {
        return filled.getOrDefault(announcementId, Map.of());
    }

    /** When an announcement was last read out, on the session's scale. */
    public Optional<Double> lastReadS(String announcementId) {
        return pages.stream()
                .filter(page -> page.announcementId().equals(announcementId))
                .flatMap(page -> Optional.ofNullable(page.readAtS()).stream())
                .reduce((before, last) -> last);
    }

    Announced next(AnnouncementEvent event) {
        if (event instanceof AnnouncementShown shown) {
            return with(pages.size(), new Page(shown.announcementId(), shown.occasion(), shown.atS(), null, List.of()));
        }
        if (event instanceof BlankFilled blank) {
            Map<String, String> blanks = new HashMap<>(filled(blank.announcementId()));
            blanks.put(blank.blank(), blank.said());
            Map<String, Map<String, String>> next = new HashMap<>(filled);
            next.put(blank.announcementId(), blanks);
            return new Announced(pages, next);
        }
        return read((AnnouncementRead) event);
    }

    /** The newest page is the one that was read, unless a damaged journal has lost it. */
    private Announced read(AnnouncementRead event) {
        int last = pages.size() - 1;
        boolean shown = last >= 0
                && pages.get(last).announcementId().equals(event.announcementId())
                && pages.get(last).readAtS() == null;
        double shownAtS = shown ? pages.get(last).shownAtS() : event.atS();
        return with(
                shown ? last : last + 1,
                new Page(
                        event.announcementId(),
                        event.occasion(),
                        shownAtS,
                        Math.max(shownAtS, event.atS()),
                        event.words()));
    }

    private Announced with(int index, Page page) {
        List<Page> next = new ArrayList<>(pages.subList(0, index));
        next.add(page);
        return new Announced(next, filled);
    }
}
