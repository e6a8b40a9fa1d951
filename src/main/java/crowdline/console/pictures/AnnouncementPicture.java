package crowdline.console.pictures;

import crowdline.console.ConsolePane;
import crowdline.console.incident.AnnouncementView;
import crowdline.console.live.AnnouncementPresenter;
import crowdline.console.live.Announcing;
import crowdline.console.live.LiveView;
import crowdline.console.place.Place;
import crowdline.live.state.Announced;
import crowdline.show.Announcement;
import java.awt.event.KeyEvent;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * The announcements as they are chosen, filled in and read out.
 *
 * @param live what goes on meanwhile
 * @param announcements of the show; the second has something to fill in
 */
public record AnnouncementPicture(LiveView live, List<Announcement> announcements) {
    private static final LocalTime BEGIN = LocalTime.of(14, 32, 5);

    public AnnouncementPicture {
        announcements = List.copyOf(announcements);
    }

    Map<String, Consumer<ConsolePane>> screens() {
        Map<String, Consumer<ConsolePane>> all = new LinkedHashMap<>();
        all.put("live-announcements", pane -> on(pane, announced(false)));
        all.put("live-announcement-blank", pane -> on(pane, announced(false), KeyEvent.VK_2));
        all.put("live-announcement", pane -> on(pane, announced(true), KeyEvent.VK_2));
        return all;
    }

    private void on(ConsolePane pane, Announced announced, int... keys) {
        pane.go(Place.LIVE);
        pane.live().announcements().open(new Still(announcements, announced));
        pane.showLive(live);
        for (int key : keys) {
            pane.live()
                    .announcements()
                    .press(new KeyEvent(pane, KeyEvent.KEY_PRESSED, 0, 0, key, KeyEvent.CHAR_UNDEFINED), false);
            pane.showLive(live);
        }
    }

    private Announced announced(boolean filled) {
        Announcement second = announcements.get(1);
        return new Announced(
                List.of(new Announced.Page(second.id(), second.occasion(), 0, null, List.of())),
                filled
                        ? Map.of(
                                second.id(),
                                second.blanks().stream()
                                        .collect(Collectors.toMap(blank -> blank, AnnouncementPicture::filled)))
                        : Map.of());
    }

    /** Announcements to which nothing happens. */
    private record Still(List<Announcement> announcements, Announced announced) implements Announcing {
        @Override
        public List<AnnouncementView> all() {
            return announcements.stream()
                    .map(one -> AnnouncementPresenter.of(one, announced, atS -> BEGIN.plusSeconds((long) atS)))
                    .toList();
        }

        @Override
        public void shown(String id) {}

        @Override
        public void fill(String id, String asks, String said) {}

        @Override
        public void readOut(String id) {}
    }

    private static String filled(String blank) {
        return blank.startsWith("age") ? "a girl of six" : "the blue tent by the gate";
    }
}
