package crowdline.app.window;

import crowdline.console.incident.IncidentView;
import crowdline.console.keys.Command;
import crowdline.console.live.Handles;
import crowdline.console.live.IncidentPresenter;
import crowdline.console.live.LiveCommands;
import crowdline.console.live.LiveMoment;
import crowdline.console.live.LivePresenter;
import crowdline.console.live.LiveView;
import crowdline.console.live.Meaning;
import crowdline.console.live.OnAir;
import crowdline.console.live.ToldPresenter;
import crowdline.live.event.LiveEvent;
import crowdline.running.RunningShow;
import crowdline.running.Scene;
import java.time.Instant;
import java.util.function.BooleanSupplier;

/** The running show as the Live place knows it. */
final class ShowOnAir implements OnAir {
    private final RunningShow show;
    private final BooleanSupplier receiver;

    /** @param receiver whether the aircraft's position comes in from anywhere */
    ShowOnAir(RunningShow show, BooleanSupplier receiver) {
        this.show = show;
        this.receiver = receiver;
    }

    @Override
    public LiveView view() {
        Scene scene = show.scene();
        Instant wall = show.wall();
        double nowS = show.desk().nowS();
        LiveMoment moment = new LiveMoment(
                scene.state(), scene.now(nowS, wall), scene.plan(), show.atVenue(wall), scene.tracking());
        return new LivePresenter(scene.lookup())
                .view(moment)
                .withTold(scene.told(nowS)
                        .flatMap(told -> ToldPresenter.of(told, scene.lookup()))
                        .orElse(null));
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
    public void write(String words) {
        show.desk().post(atS -> new LiveEvent.NoteWritten(atS, words));
    }

    @Override
    public void resume() {
        show.desk().post(LiveCommands.resume());
    }
}
