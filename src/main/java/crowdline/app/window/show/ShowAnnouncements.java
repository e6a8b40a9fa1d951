package crowdline.app.window.show;

import crowdline.console.incident.AnnouncementView;
import crowdline.console.keys.Command;
import crowdline.console.live.AnnouncementPresenter;
import crowdline.console.live.Announcing;
import crowdline.live.event.AnnouncementEvent;
import crowdline.live.state.Announced;
import crowdline.running.RunningShow;
import crowdline.show.Announcement;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The announcements of the running show as the Live place knows them. */
final class ShowAnnouncements implements Announcing {
    private static final double NANOS_PER_S = 1e9;

    private final RunningShow show;

    ShowAnnouncements(RunningShow show) {
        this.show = show;
    }

    private List<Announcement> announcements() {
        return show.loaded().show().announcements();
    }

    private Optional<Announcement> announcement(String id) {
        return show.loaded().show().announcement(id);
    }

    private Announced announced() {
        return show.scene().state().announced();
    }

    @Override
    public List<AnnouncementView> all() {
        Announced now = announced();
        return announcements().stream()
                .map(one -> AnnouncementPresenter.of(one, now, this::hour))
                .toList();
    }

    private LocalTime hour(double atS) {
        Instant then = show.wall().minusNanos((long) ((show.desk().nowS() - atS) * NANOS_PER_S));
        return show.atVenue(then).toLocalTime();
    }

    @Override
    public void shown(String id) {
        announcement(id)
                .ifPresent(one ->
                        show.desk().post(atS -> new AnnouncementEvent.AnnouncementShown(atS, id, one.occasion())));
    }

    @Override
    public void fill(String id, String asks, String said) {
        show.desk().post(atS -> new AnnouncementEvent.BlankFilled(atS, id, asks, said));
    }

    @Override
    public void readOut(String id) {
        Map<String, String> filled = announced().filled(id);
        announcement(id)
                .filter(one -> !one.lacks(filled))
                .ifPresent(one -> show.keys()
                        .give(
                                Command.ANNOUNCE.key(),
                                atS -> new AnnouncementEvent.AnnouncementRead(
                                        atS, id, one.occasion(), one.words(filled))));
    }
}
