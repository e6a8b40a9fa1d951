package crowdline.console.live;

import crowdline.console.incident.IncidentView;
import crowdline.console.keys.Command;
import crowdline.console.live.day.DutiesView;
import crowdline.console.live.day.OrderView;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.loaded.Finder;
import crowdline.loaded.Found;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.TermsFile;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A running show that shows what it is told to, and keeps what it was asked for. On the event thread. */
public final class SampleOnAir implements OnAir {
    public final List<Command> given = new ArrayList<>();
    public final List<String> written = new ArrayList<>();
    /** What Live shows of it. */
    public volatile LiveView view = SampleLiveViews.flying();
    /** Its incident page, which it has not opened itself yet. */
    public @Nullable IncidentView page;

    public OrderView order = new OrderView(List.of(), 0);
    public final List<String> putIn = new ArrayList<>();
    public int resumed;

    @Override
    public LiveView view() {
        return view;
    }

    @Override
    public void inSight(boolean now) {}

    @Override
    public IncidentView incident(double openS) {
        IncidentView own = page;
        return own == null ? IncidentPresenter.withoutShow(LocalTime.NOON, openS) : own;
    }

    @Override
    public void carryOut(Command command, Handles handles) {
        given.add(command);
    }

    @Override
    public OrderView order() {
        return order;
    }

    @Override
    public DutiesView duties() {
        return new DutiesView(List.of());
    }

    @Override
    public boolean putIn(String words, @Nullable String afterId) {
        putIn.add(words + " after " + afterId);
        return words.contains(",");
    }

    /** Its announcements, and what was done with them. */
    public final SampleAnnouncing announcing = new SampleAnnouncing();

    @Override
    public SecondView second(@Nullable String reader) {
        return new SecondView(
                view, new Mark(Form.UP, Tone.CAUTION, "You speak next"), "Then, in 9 s: Look up.", List.of(), null);
    }

    /** Whether an act is in the air. */
    public boolean flying;

    @Override
    public boolean inTheAir() {
        return flying;
    }

    @Override
    public List<Found> find(String words) {
        return Finder.of(SmallShow.show(), CatalogueFile.shipped(), TermsFile.shipped())
                .find(words);
    }

    @Override
    public Announcing announcing() {
        return announcing;
    }

    @Override
    public void write(String words) {
        written.add(words);
    }

    @Override
    public void resume() {
        resumed++;
    }
}
