package crowdline.console;

import crowdline.console.debrief.DebriefHost;
import crowdline.console.edit.EditHost;
import crowdline.console.glossary.GlossaryHost;
import crowdline.console.incident.IncidentView;
import crowdline.console.live.IncidentPresenter;
import crowdline.console.pace.IdlePaceHost;
import crowdline.console.pace.PaceHost;
import crowdline.console.paint.Mark;
import crowdline.console.passes.PassesHost;
import crowdline.console.pedals.PedalHost;
import crowdline.console.practice.PracticeHost;
import crowdline.console.prepare.page.PrepareHost;
import crowdline.console.preview.PaperHost;
import crowdline.console.receiver.Receivers;
import crowdline.console.second.SecondHost;
import crowdline.console.theme.Appearance;
import crowdline.show.DayAir;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * What the window asks of the rest of the program. Every method is called on the event thread and must return at once;
 * longer work belongs elsewhere and answers through {@link ConsoleFrame}'s couriers.
 */
public interface Host {

    /**
     * The incident page while no show runs.
     *
     * @param openS how long ago the page was called for, seconds
     */
    default IncidentView incident(double openS) {
        return IncidentPresenter.withoutShow();
    }

    /** Asks for the walk through the show as it is now; {@link ConsoleFrame#walk} answers, if it has changed. */
    default void askForWalk() {}

    /** What was flown and said in the running show, or null if no show is open. */
    @Nullable
    DebriefHost debrief();

    /** Has Live listen to the microphone, or no longer. */
    default void listen() {}

    /** What the glossary asks. */
    default GlossaryHost glossary() {
        return GlossaryHost.NONE;
    }

    /** What the preview of paper asks. */
    default PaperHost paper() {
        return PaperHost.NONE;
    }

    /** Seconds on a clock that never goes back, for what plays on the screen. */
    double nowS();

    /** What the editing of the show asks. */
    EditHost edit();

    /** What the passes in Prepare ask. */
    default PassesHost passes() {
        return PassesHost.NONE;
    }

    /** What editing in Prepare asks. */
    default PrepareHost prepare() {
        return PrepareHost.NONE;
    }

    /** What the choice of a speaker and the timing of one ask. */
    default PaceHost pace() {
        return IdlePaceHost.NONE;
    }

    /** What practising asks. */
    default PracticeHost practice() {
        return PracticeHost.NONE;
    }

    /** What the second window asks. */
    default SecondHost second() {
        return SecondHost.NONE;
    }

    /** What pedals and remotes ask. */
    default PedalHost pedals() {
        return PedalHost.NONE;
    }

    /**
     * Whether a show may be opened now; if an act of another is in the air, a banner says what to do instead.
     *
     * @param file null where it is still to be chosen
     */
    default boolean mayOpen(@Nullable Path file) {
        return true;
    }

    /** As {@link #mayOpen}, for the demo show. */
    default boolean mayOpenDemo() {
        return true;
    }

    /** Whether the window may be closed; in mid-act the first time it may not, and a banner says what closing does. */
    default boolean mayClose() {
        return true;
    }

    /** Something was not done, and why: a banner says so. */
    default void say(Mark mark) {}

    /** Opens a show file and answers with views or a banner. */
    void open(Path file);

    /** Opens the demo show. */
    void openDemo();

    /** The air the open show is predicted in, or null if no show is open. */
    @Nullable
    DayAir air();

    /**
     * Predicts the open show again in other air; the show file stays as it is until it is saved.
     *
     * @param toBeSaved whether it stands in the show that is edited, so that saving writes it
     */
    void useAir(DayAir air, boolean toBeSaved);

    /** Looks for receivers of the aircraft's position and answers on the event thread. */
    void findReceivers(Consumer<Receivers> found);

    /**
     * Takes the aircraft's position from there: a port's path, a flight log, or nowhere if empty.
     *
     * @param faster how much faster than flown a flight log is played, above 0
     */
    void useReceiver(String where, double faster);

    /** Show files opened before, the newest first. */
    List<Path> recent();

    /** The look the commentator chose, to be kept. */
    void keep(Appearance appearance);

    /** The commentator wants to close the console. */
    void quit();
}
