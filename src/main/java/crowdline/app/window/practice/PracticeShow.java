package crowdline.app.window.practice;

import crowdline.app.window.show.ShowOnAir;
import crowdline.console.incident.IncidentView;
import crowdline.console.keys.Command;
import crowdline.console.live.Announcing;
import crowdline.console.live.Handles;
import crowdline.console.live.LiveView;
import crowdline.console.live.OnAir;
import crowdline.console.live.SecondView;
import crowdline.console.live.day.DutiesView;
import crowdline.console.live.day.OrderView;
import crowdline.console.path.CrowdView;
import crowdline.console.practice.PracticeChoice;
import crowdline.live.state.Phase;
import crowdline.loaded.Found;
import crowdline.loaded.LoadedShow;
import crowdline.practice.CannotPractise;
import crowdline.practice.PracticeFlight;
import crowdline.practice.PracticePilot;
import crowdline.practice.PracticeScore;
import crowdline.running.AircraftSource;
import crowdline.running.ChosenAct;
import crowdline.running.RunningShow;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.sight.ActSheet;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalOpening;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A show run a second time, for a flight to practise on: from half a minute before the act's slot by a clock of its own, with a
 * journal of its own in a folder that is gone afterwards, and no receiver. Its position is moved on as on the day.
 */
public final class PracticeShow implements OnAir {
    private static final double NANOS_PER_S = 1e9;
    /** So long after there is nothing more to see it ends by itself, seconds: time to end the act. */
    private static final double LINGERS_S = 15;

    private static final String NO_RECEIVER = "A practice flight has no receiver: your keys move it on.";

    private final PracticeFlight flight;
    private final LoadedShow loaded;
    private final PracticeFolder folder;
    private final JournalShelf shelf;
    private final JournalOpening opening;
    private final RunningShow running;
    private final ShowOnAir onAir;
    private final CrowdView sky;

    /**
     * Makes the flight and begins. It takes a moment.
     *
     * @param loaded the show, which has the act; nothing of it is changed
     * @param machine its clocks are used; the hour is taken from the act's slot
     * @param nowhere a source of positions that is never opened
     * @param folder deleted in the end
     * @throws CannotPractise if the act cannot be practised on
     */
    PracticeShow(
            LoadedShow loaded,
            PracticeChoice choice,
            JournalMachine machine,
            AircraftSource nowhere,
            PracticeFolder folder)
            throws CannotPractise {
        Show show = loaded.show();
        Act act = show.act(choice.actId()).orElseThrow();
        Variant variant = act.variantUnder(show.air().cloudBaseFt());
        flight = new PracticePilot(show, loaded.catalogue()).fly(act, variant, choice.level(), choice.seed());
        this.loaded = loaded;
        this.folder = folder;
        sky = sky(loaded, act, variant, flight);
        Instant zero = show.slotStart(act)
                .atZone(show.venue().timeZone())
                .toInstant()
                .minusNanos(Math.round(flight.slotS() * NANOS_PER_S));
        long beganNanos = machine.ticker().nanos();
        JournalMachine own = new JournalMachine(
                machine.ticker(), () -> zero.plusNanos(machine.ticker().nanos() - beganNanos), machine.bootId());
        shelf = new JournalShelf(folder.path(), own, 0);
        opening = shelf.begin(new JournalShow(folder.path().toString(), ""));
        running = new RunningShow(loaded, opening, nowhere, own.wall());
        running.desk().post(ChosenAct.of(show, act));
        onAir = new ShowOnAir(running, () -> false);
    }

    /** The sky of a flight, seen from the crowd line of the show. */
    static CrowdView sky(LoadedShow loaded, Act act, Variant variant, PracticeFlight flight) {
        ActSheet sheet = loaded.words().sheet(act.id(), variant.name());
        return CrowdView.of(
                flight.flown(), flight.startS(), flight.endS(), sheet.path(-1).eye(), sheet.outline());
    }

    /** What is flown. */
    public PracticeFlight flight() {
        return flight;
    }

    /** What the act is called. */
    String act() {
        return loaded.show().act(flight.actId()).map(Act::title).orElse(flight.actId());
    }

    public RunningShow running() {
        return running;
    }

    /** The sky as it is now. */
    CrowdView sky() {
        return sky.at(running.desk().nowS());
    }

    /** Whether there has been nothing more to see for a while. */
    public boolean isOver() {
        return running.desk().nowS() > flight.overS() + LINGERS_S;
    }

    /**
     * Ends it, says how it went so far, and leaves nothing behind. It waits for the disk.
     *
     * @throws ShowFileException if its journal could not be written or read
     */
    PracticeScore end() throws ShowFileException {
        double leftS = running.desk().nowS();
        running.close();
        try {
            Path journal = opening.journal().path();
            if (journal == null) {
                throw new ShowFileException("The practice could not be written down in " + folder.path()
                        + ", so it has no score: is the disk full?");
            }
            return PracticeScore.of(flight, loaded.words(), shelf.events(journal), leftS);
        } finally {
            folder.delete();
        }
    }

    /** Ends it without a word, and leaves nothing behind. It waits for the disk. */
    void drop() {
        running.close();
        folder.delete();
    }

    @Override
    public LiveView view() {
        return onAir.view().inPractice(running.desk().snapshot().state().phase() instanceof Phase.ActDone);
    }

    @Override
    public void inSight(boolean now) {
        onAir.inSight(now);
    }

    @Override
    public IncidentView incident(double openS) {
        return onAir.incident(openS);
    }

    @Override
    public void carryOut(Command command, Handles handles) {
        if (command == Command.BY_AIRCRAFT) {
            running.keys().refuse(command.key(), NO_RECEIVER);
        } else {
            onAir.carryOut(command, handles);
        }
    }

    @Override
    public DutiesView duties() {
        return onAir.duties();
    }

    @Override
    public OrderView order() {
        return onAir.order();
    }

    @Override
    public boolean putIn(String words, @Nullable String afterId) {
        return onAir.putIn(words, afterId);
    }

    @Override
    public SecondView second(@Nullable String reader) {
        return onAir.second(reader);
    }

    @Override
    public boolean inTheAir() {
        return onAir.inTheAir();
    }

    @Override
    public List<Found> find(String words) {
        return onAir.find(words);
    }

    @Override
    public Announcing announcing() {
        return onAir.announcing();
    }

    @Override
    public void write(String words) {
        onAir.write(words);
    }

    @Override
    public void resume() {
        onAir.resume();
    }
}
