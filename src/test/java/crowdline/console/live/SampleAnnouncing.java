package crowdline.console.live;

import crowdline.console.incident.AnnouncementView;
import crowdline.live.event.AnnouncementEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.show.Announcement;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/** Announcements of a show that is nothing else; a second passes with everything that is done. Noon is its beginning. */
public final class SampleAnnouncing implements Announcing {
    public final List<String> done = new ArrayList<>();
    public List<Announcement> announcements = List.of();
    private LiveState state =
            ((Step.Moved) Live.next(LiveState.initial(), new ShowEvent.ShowOpened(0, "Day", List.of("a1")))).state();

    private void happens(AnnouncementEvent event) {
        state = ((Step.Moved) Live.next(state, event)).state();
    }

    private Announcement announcement(String id) {
        return announcements.stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Override
    public List<AnnouncementView> all() {
        return announcements.stream()
                .map(one ->
                        AnnouncementPresenter.of(one, state.announced(), atS -> LocalTime.NOON.plusSeconds((long) atS)))
                .toList();
    }

    @Override
    public void shown(String id) {
        done.add("shown " + id);
        happens(new AnnouncementEvent.AnnouncementShown(
                done.size(), id, announcement(id).occasion()));
    }

    @Override
    public void fill(String id, String asks, String said) {
        done.add("filled " + id + ", " + asks + ": " + said);
        happens(new AnnouncementEvent.BlankFilled(done.size(), id, asks, said));
    }

    @Override
    public void readOut(String id) {
        done.add("read " + id);
        happens(new AnnouncementEvent.AnnouncementRead(
                done.size(),
                id,
                announcement(id).occasion(),
                announcement(id).words(state.announced().filled(id))));
    }
}
