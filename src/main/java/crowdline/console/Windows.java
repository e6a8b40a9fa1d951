package crowdline.console;

import crowdline.console.edit.Editing;
import crowdline.console.help.HelpWindow;
import crowdline.console.pace.PaceDialog;
import crowdline.console.place.Place;
import crowdline.console.prepare.day.MetarDialog;
import crowdline.console.preview.PreviewWindow;
import crowdline.console.receiver.ReceiverDialog;
import crowdline.console.theme.Appearance;
import crowdline.paper.SheetKind;
import crowdline.show.DayAir;
import crowdline.show.Show;
import java.awt.Frame;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JFileChooser;

/** Opens the windows that ask for something, each over the main one. */
final class Windows {
    private final Frame owner;
    private final Host host;
    private final Supplier<Appearance> appearance;
    private final BooleanSupplier inIncident;

    /** @param inIncident whether the incident page is in front; then no window opens that was asked for before */
    Windows(Frame owner, Host host, Supplier<Appearance> appearance, BooleanSupplier inIncident) {
        this.inIncident = inIncident;
        this.owner = owner;
        this.host = host;
        this.appearance = appearance;
    }

    /** Explains a place, and everything else. */
    void explain(Place place) {
        HelpWindow.open(owner, appearance.get(), place);
    }

    /** Shows what can be printed of a show, first what belongs to a place. */
    void print(Show show, Place place) {
        PreviewWindow.open(owner, appearance.get(), host.paper(), show, first(place));
    }

    private static SheetKind first(Place place) {
        return switch (place) {
            case PREPARE, LIVE -> SheetKind.RUNNING;
            case WORDS, WALK -> SheetKind.CARDS;
            case DEBRIEF -> SheetKind.DEBRIEF;
            case GLOSSARY -> SheetKind.GLOSSARY;
        };
    }

    /** Asks for a show file. */
    void chooseShow(Consumer<Path> chosen) {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle("Open a show");
        if (chooser.showOpenDialog(owner) == JFileChooser.APPROVE_OPTION) {
            chosen.accept(chooser.getSelectedFile().toPath());
        }
    }

    /** The air to change for another: of the show that runs, or of one that is edited and was never saved. */
    Optional<DayAir> air(Editing editing) {
        return Optional.ofNullable(host.air())
                .or(() -> editing.isOpen() ? Optional.of(editing.now().air()) : Optional.empty());
    }

    /** Asks for the air of the day, if a show is open. */
    void pasteMetar(Editing editing, Consumer<DayAir> kept) {
        Consumer<DayAir> used = host.air() == null ? kept : next -> host.useAir(next, false);
        air(editing).ifPresent(air -> MetarDialog.ask(owner, appearance.get(), air, used, kept));
    }

    /** Asks where the aircraft's position comes from. */
    void chooseReceiver() {
        host.findReceivers(found -> late(() -> ReceiverDialog.ask(owner, appearance.get(), found, host::useReceiver)));
    }

    /** Asks whose pace the times are for. */
    void askPace() {
        host.pace().find(found -> late(() -> PaceDialog.ask(owner, appearance.get(), found, host.pace())));
    }

    /** Opens what took its time to find, unless the incident page has come in between. */
    private void late(Runnable opening) {
        if (!inIncident.getAsBoolean()) {
            opening.run();
        }
    }
}
