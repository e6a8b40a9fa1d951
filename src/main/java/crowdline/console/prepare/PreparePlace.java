package crowdline.console.prepare;

import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.passes.PassesHost;
import crowdline.console.place.EmptyShow;
import crowdline.console.place.LazyCard;
import crowdline.console.place.PlaceOrEmpty;
import crowdline.console.place.PlaceScreen;
import crowdline.console.theme.Appearance;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;

/** The Prepare place, or how to open a show. */
public final class PreparePlace implements PlaceScreen {
    private final PlaceOrEmpty<PrepareView, PreparePanel> place;
    private final CommandTable written;
    private final Supplier<Set<Command>> possible;
    private PassesHost passes = PassesHost.NONE;

    /**
     * It has no commands of its own: what is given here is done to the show that is written in another place.
     *
     * @param possible which of that place's commands make sense here
     * @param written the commands of that place
     */
    public PreparePlace(
            Appearance appearance, Action open, Action demo, Supplier<Set<Command>> possible, CommandTable written) {
        this.possible = possible;
        this.written = written;
        place = new PlaceOrEmpty<>(
                "Prepare",
                appearance,
                new LazyCard<>(
                        appearance, a -> new PreparePanel(a, () -> passes), PreparePanel::show, PreparePanel::wear),
                open,
                demo);
    }

    /** Who is asked when somebody decides about a pass. */
    public void serve(PassesHost host) {
        passes = host;
    }

    @Override
    public JComponent component() {
        return place;
    }

    @Override
    public Set<Command> possible() {
        return possible.get();
    }

    @Override
    public CommandTable commands() {
        return written;
    }

    @Override
    public void refresh() {
        if (!hasShow()) {
            // Made only where it is looked at: a start in the middle of an act does not wait for it.
            place.show(null);
        }
    }

    /** Whether it shows a show. */
    public boolean hasShow() {
        return place.hasShow();
    }

    /** Shows the show at a glance; null for none. */
    public void show(@Nullable PrepareView view) {
        place.show(view);
    }

    /** Turns from the remarks to the passes. */
    public void showPasses() {
        place.ifShown(PreparePanel::showPasses);
    }

    @Override
    public void showEmpty(EmptyShow.Shown shown) {
        place.showEmpty(shown);
    }

    @Override
    public void wear(Appearance appearance) {
        place.wear(appearance);
    }
}
