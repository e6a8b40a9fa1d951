package crowdline.console.live;

import crowdline.console.incident.AnnouncementView;
import crowdline.console.incident.AnnouncementView.Blank;
import crowdline.console.incident.ChoicePanel;
import crowdline.console.keys.Command;
import crowdline.console.live.strip.StripPresenter;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.live.state.Announced;
import crowdline.live.state.Announced.Page;
import crowdline.show.Announcement;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/** Decides what the pages of announcements show. Pure. */
public final class AnnouncementPresenter {
    static final String WITHOUT = "This show has no announcements. They are written in Prepare: "
            + Command.PREPARE.key() + ", then " + Command.PAGE_ANNOUNCEMENTS.key() + ".";

    private AnnouncementPresenter() {}

    /**
     * An announcement as its page shows it.
     *
     * @param hour the clock at the venue at a second of the session
     */
    public static AnnouncementView of(Announcement announcement, Announced announced, DoubleFunction<LocalTime> hour) {
        Map<String, String> filled = announced.filled(announcement.id());
        List<Blank> blanks = announcement.blanks().stream()
                .map(asks -> new Blank(asks, filled.getOrDefault(asks, "").strip()))
                .toList();
        // What is missing stands out of the words as a word in brackets.
        Map<String, String> said = new HashMap<>();
        blanks.forEach(
                blank -> said.put(blank.asks(), blank.isMissing() ? "[fill in: " + blank.asks() + "]" : blank.said()));
        Optional<Double> readS = announced.lastReadS(announcement.id());
        long missing = blanks.stream().filter(Blank::isMissing).count();
        return new AnnouncementView(
                announcement.id(),
                announcement.occasion(),
                announcement.agreement(),
                state(announcement, missing, readS, hour),
                missing == 0
                        ? null
                        : new Mark(Form.DIAMOND, Tone.CAUTION, "Not to be read out yet: " + toFillIn(missing)),
                times(announcement.id(), announced, readS, hour),
                announcement.words(said),
                blanks);
    }

    private static Mark state(
            Announcement announcement, long missing, Optional<Double> readS, DoubleFunction<LocalTime> hour) {
        String more = missing == 0 ? "" : ", " + toFillIn(missing);
        if (!announcement.isAgreed()) {
            return new Mark(Form.DIAMOND, Tone.CAUTION, "Not agreed" + more);
        }
        return readS.map(s -> new Mark(Form.DISC, Tone.GOOD, "Read out at " + StripPresenter.hour(hour.apply(s))))
                .orElseGet(() -> new Mark(Form.RING, Tone.CALM, "Agreed" + more));
    }

    private static String toFillIn(long missing) {
        return missing + (missing == 1 ? " blank" : " blanks") + " to fill in";
    }

    private static String times(
            String id, Announced announced, Optional<Double> readS, DoubleFunction<LocalTime> hour) {
        List<String> times = new ArrayList<>();
        List<Page> pages = announced.pages();
        if (!pages.isEmpty()) {
            Page last = pages.get(pages.size() - 1);
            if (last.announcementId().equals(id) && last.readAtS() == null) {
                times.add("Shown " + StripPresenter.hour(hour.apply(last.shownAtS())));
            }
        }
        readS.ifPresent(s -> times.add("read out before at " + StripPresenter.hour(hour.apply(s))));
        return String.join(", ", times);
    }

    /**
     * Which there are to choose from.
     *
     * @param from index of the first that is shown
     */
    static ChoicePanel.Shown choice(List<AnnouncementView> all, int from) {
        int to = Math.min(all.size(), from + ChoicePanel.MOST);
        String back = "Back to the act: Esc";
        String more = all.size() <= ChoicePanel.MOST
                ? back
                : (from + 1) + " to " + to + " of " + all.size() + ". The others: Space. " + back;
        return new ChoicePanel.Shown(
                IntStream.range(from, to)
                        .mapToObj(i -> new ChoicePanel.Row(
                                i - from + 1, all.get(i).occasion(), all.get(i).state()))
                        .toList(),
                more,
                all.isEmpty() ? WITHOUT : "");
    }

    /** What goes on under the page, a line for each. */
    static List<String> meanwhile(LiveView live) {
        List<String> lines = new ArrayList<>();
        String left = live.now().left();
        // Before an act its name is when it comes.
        boolean known = left.isEmpty() || live.now().name().endsWith(left);
        lines.add(live.now().caption() + ": " + live.now().name() + (known ? "" : ", " + left));
        if (!live.next().name().isEmpty()) {
            lines.add(live.next().caption()
                    + (live.next().in().isEmpty() ? "" : " " + live.next().in()) + ": "
                    + live.next().name());
        }
        return lines;
    }
}
