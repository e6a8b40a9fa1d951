package crowdline.console.prepare;

import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.passes.PassesHost;
import crowdline.console.place.EmptyShow;
import crowdline.console.place.LazyCard;
import crowdline.console.place.PlaceOrEmpty;
import crowdline.console.place.PlaceScreen;
import crowdline.console.theme.Appearance;
import javax.swing.Action;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;

/** The Prepare place, or how to open a show. */
public final class PreparePlace implements PlaceScreen {
    private final PlaceOrEmpty<PrepareView, PreparePanel> place;
    private final CommandTable commands;
    private Runnable metar = () -> {};
    private PassesHost passes = PassesHost.NONE;

    public PreparePlace(Appearance appearance, Action open, Action demo) {
        commands = CommandTable.of(Command.Scope.PREPARE)
                .on(Command.METAR, this::hasShow, () -> metar.run())
                .filled();
        place = new PlaceOrEmpty<>(
                "Prepare",
                appearance,
                new LazyCard<>(
                        appearance, a -> new PreparePanel(a, () -> passes), PreparePanel::show, PreparePanel::wear),
                open,
                demo);
    }

    /**
     * Who serves it.
     *
     * @param host asked when somebody decides about a pass
     * @param pasteMetar asks for the air of the day
     */
    public void serve(PassesHost host, Runnable pasteMetar) {
        passes = host;
        metar = pasteMetar;
    }

    @Override
    public JComponent component() {
        return place;
    }

    @Override
    public CommandTable commands() {
        return commands;
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
