package crowdline.app.window.show;

import crowdline.console.incident.IncidentView;
import crowdline.console.keys.Command;
import crowdline.console.live.Announcing;
import crowdline.console.live.Handles;
import crowdline.console.live.IncidentPresenter;
import crowdline.console.live.LiveCommands;
import crowdline.console.live.LivePresenter;
import crowdline.console.live.LiveView;
import crowdline.console.live.Meaning;
import crowdline.console.live.OnAir;
import crowdline.console.live.SecondPresenter;
import crowdline.console.live.SecondView;
import crowdline.console.live.day.DutiesPresenter;
import crowdline.console.live.day.DutiesView;
import crowdline.console.live.day.OrderPresenter;
import crowdline.console.live.day.OrderView;
import crowdline.console.live.day.ToldPresenter;
import crowdline.console.live.row.LiveMoment;
import crowdline.live.event.LiveEvent;
import crowdline.live.now.DayNow;
import crowdline.live.state.Durations;
import crowdline.loaded.Found;
import crowdline.running.RunningShow;
import crowdline.running.Scene;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import java.time.Instant;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** The running show as the Live place knows it. */
public final class ShowOnAir implements OnAir {
    private final RunningShow show;
    private final BooleanSupplier receiver;
    private final Announcing announcing;

    /**
     * A show as the Live place knows it.
     *
     * @param receiver whether the aircraft's position comes in from anywhere
     */
    public ShowOnAir(RunningShow show, BooleanSupplier receiver) {
        this.show = show;
        this.receiver = receiver;
        announcing = new ShowAnnouncements(show);
    }

    @Override
    public void inSight(boolean now) {
        show.inSight(now);
    }

    @Override
    public LiveView view() {
        Scene scene = show.scene();
        double nowS = show.desk().nowS();
        return new LivePresenter(scene.lookup())
                .view(moment(scene, nowS))
                .withTold(scene.told(nowS)
                        .flatMap(told -> ToldPresenter.of(told, scene.lookup()))
                        .orElse(null));
    }

    private LiveMoment moment(Scene scene, double nowS) {
        Instant wall = show.wall();
        return new LiveMoment(scene.state(), scene.now(nowS, wall), scene.plan(), show.atVenue(wall), scene.tracking());
    }

    @Override
    public SecondView second(@Nullable String reader) {
        Scene scene = show.scene();
        LiveMoment moment = moment(scene, show.desk().nowS());
        return SecondPresenter.of(moment, new LivePresenter(scene.lookup()).view(moment), scene.lookup(), reader);
    }

    @Override
    public IncidentView incident(double openS) {
        return IncidentPresenter.of(
                show.loaded().show().incident(), show.atVenue(show.wall()).toLocalTime(), openS);
    }

    @Override
    public void carryOut(Command command, Handles handles) {
        if (command == Command.BY_AIRCRAFT && !receiver.getAsBoolean()) {
            refuse(command, "There is no receiver. Press Ctrl+R to choose one, and then A to follow the aircraft.");
            return;
        }
        Scene scene = show.scene();
        Meaning meaning = LiveCommands.of(command, scene.lookup(), scene.state(), handles);
        if (meaning instanceof Meaning.Happens happens) {
            show.keys().give(command.key(), happens.event());
        } else if (meaning instanceof Meaning.Nothing nothing) {
            refuse(command, nothing.why());
        } else {
            show.keys().takeBack();
        }
    }

    private void refuse(Command command, String why) {
        show.keys().refuse(command.key(), why);
    }

    @Override
    public OrderView order() {
        Scene scene = show.scene();
        Instant wall = show.wall();
        double nowS = show.desk().nowS();
        Show ofTheDay = scene.lookup().show();
        DayNow day = DayNow.of(scene.state(), ofTheDay, act -> lastsS(scene, act, ofTheDay), scene.now(nowS, wall));
        return OrderPresenter.of(day, ofTheDay.date(), scene.lookup());
    }

    @Override
    public DutiesView duties() {
        Scene scene = show.scene();
        return DutiesPresenter.of(scene.state(), scene.now(show.desk().nowS(), show.wall()), scene.lookup());
    }

    /** As predicted or timed; where that is not known, as long as its slot. */
    private static double lastsS(Scene scene, Act act, Show ofTheDay) {
        Variant variant = act.variantUnder(ofTheDay.air().cloudBaseFt());
        List<String> ids = act.inOrder(variant).stream().map(Figure::id).toList();
        Durations durations = scene.durations().of(act.id(), variant.name(), ids);
        double seconds = IntStream.range(0, ids.size())
                .mapToDouble(i -> durations.secondsOf(i) + (i + 1 < ids.size() ? durations.pauseS(i, i + 1) : 0))
                .sum();
        return Double.isFinite(seconds) ? seconds : act.slotMinutes() * 60;
    }

    @Override
    public boolean putIn(String words, @Nullable String afterId) {
        Scene scene = show.scene();
        Meaning meaning = LiveCommands.putIn(scene.lookup(), scene.state(), words, afterId);
        if (meaning instanceof Meaning.Happens happens) {
            show.keys().give(Command.PUT_IN_ACT.key(), happens.event());
        } else if (meaning instanceof Meaning.Nothing nothing) {
            refuse(Command.PUT_IN_ACT, nothing.why());
        }
        return meaning instanceof Meaning.Happens;
    }

    @Override
    public boolean inTheAir() {
        return show.scene().state().course().inTheAir();
    }

    @Override
    public List<Found> find(String words) {
        return show.finder().find(words);
    }

    @Override
    public Announcing announcing() {
        return announcing;
    }

    @Override
    public void write(String words) {
        show.desk().post(atS -> new LiveEvent.NoteWritten(atS, words));
    }

    @Override
    public void resume() {
        show.desk().post(LiveCommands.resume());
    }
}
