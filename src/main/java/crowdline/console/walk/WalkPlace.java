package crowdline.console.walk;

import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.place.EmptyShow;
import crowdline.console.place.LazyCard;
import crowdline.console.place.PlaceOrEmpty;
import crowdline.console.place.PlaceScreen;
import crowdline.console.place.Ways;
import crowdline.console.theme.Appearance;
import java.util.function.DoubleSupplier;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;

/** The Walk through place, with the note that is written there and what the mouse points at. */
public final class WalkPlace implements PlaceScreen {
    private final PlaceOrEmpty<WalkView, WalkPanel> place;
    private final CommandTable commands = CommandTable.of(Command.Scope.WALK)
            .on(Command.NOTE, this::hasShow, this::note)
            .rest(this::hasShow, this::give)
            .filled();
    private final Runnable keysBack;
    private DoubleSupplier nowS = () -> 0;
    private Runnable asked = () -> {};
    private @Nullable Walk walk;
    private boolean writing;
    private Appearance worn;

    /** The act that was chosen in the place that was left for this one. */
    private @Nullable String came;
    /** The same until somebody walks on from it: the walk through a changed show begins there too. */
    private @Nullable String wanted;

    /** @param keysBack gives the keys to the window again, when what had them is hidden */
    public WalkPlace(Appearance appearance, Ways ways, Runnable keysBack) {
        worn = appearance;
        this.keysBack = keysBack;
        LazyCard<WalkView, WalkPanel> panel = new LazyCard<>(appearance, this::made, WalkPanel::show, WalkPanel::wear);
        place = new PlaceOrEmpty<>("Walk through", appearance, panel, ways);
    }

    /**
     * Who serves it.
     *
     * @param clockS seconds on a clock that never goes back
     * @param ask asks for the walk through the show as it is now, which {@link #walk(Walk)} answers
     */
    public void serve(DoubleSupplier clockS, Runnable ask) {
        nowS = clockS;
        asked = ask;
    }

    private WalkPanel made(Appearance appearance) {
        WalkPanel made = new WalkPanel(appearance, this::pointed, this::written);
        made.wear(appearance);
        return made;
    }

    /** From now on this is walked through, or nothing. */
    public void walk(@Nullable Walk next) {
        walk = next;
        begin();
    }

    /** Begins with the act that is chosen in another place, unless it was that one already when this was gone to before. */
    public void comeFrom(@Nullable String actId) {
        if (actId != null && !actId.equals(came)) {
            came = actId;
            wanted = actId;
            begin();
        }
    }

    private void begin() {
        Walk now = walk;
        String act = wanted;
        if (now != null && act != null) {
            now.chooseAct(act);
        }
    }

    @Override
    public JComponent component() {
        return place;
    }

    @Override
    public CommandTable commands() {
        return commands;
    }

    private void give(Command command) {
        wanted = null;
        Walk now = walk;
        if (now != null) {
            now.command(command, nowS.getAsDouble());
            refresh();
        }
    }

    private void note() {
        Walk now = walk;
        if (now != null) {
            // While somebody writes, nothing runs away under the note.
            now.pause(nowS.getAsDouble());
            writing = true;
            place.ifShown(p ->
                    p.openNote(now.view(nowS.getAsDouble(), worn.measures()).noteFor(), now.note(nowS.getAsDouble())));
            refresh();
        }
    }

    private void pointed(double share) {
        Walk now = walk;
        if (now != null) {
            now.goTo(share, nowS.getAsDouble());
            refresh();
        }
    }

    private void written(String text) {
        writing = false;
        Walk now = walk;
        if (now != null) {
            now.write(text, nowS.getAsDouble());
            refresh();
        }
        keysBack.run();
    }

    @Override
    public void arrive() {
        asked.run();
    }

    @Override
    public boolean moves() {
        return true;
    }

    @Override
    public boolean needsNoFocus() {
        return true;
    }

    @Override
    public void refresh() {
        Walk now = walk;
        show(now == null ? null : now.view(nowS.getAsDouble(), worn.measures()));
    }

    /** Shows a moment, or how to open a show if there is none. */
    public void show(@Nullable WalkView view) {
        place.show(view);
    }

    @Override
    public void showEmpty(EmptyShow.Shown shown) {
        place.showEmpty(shown);
    }

    private boolean hasShow() {
        return place.hasShow();
    }

    /** Goes on with a note that was left half written. */
    @Override
    public boolean takeFocus() {
        if (writing) {
            place.ifShown(WalkPanel::takeFocus);
        }
        return writing;
    }

    /** Leaves the note that is being written; false if none is. */
    public boolean closeNote() {
        boolean open = writing;
        writing = false;
        if (open) {
            place.ifShown(WalkPanel::closeNote);
            keysBack.run();
        }
        return open;
    }

    @Override
    public void wear(Appearance appearance) {
        worn = appearance;
        place.wear(appearance);
    }
}
