package crowdline.console;

import crowdline.console.theme.Appearance;
import crowdline.show.DayAir;
import java.awt.Frame;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JFileChooser;

/** Opens the windows that ask for something, each over the main one. */
final class Windows {
    private final Frame owner;
    private final Host host;
    private final Supplier<Appearance> appearance;

    Windows(Frame owner, Host host, Supplier<Appearance> appearance) {
        this.owner = owner;
        this.host = host;
        this.appearance = appearance;
    }

    /** Asks for a show file. */
    void chooseShow(Consumer<Path> chosen) {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle("Open a show");
        if (chooser.showOpenDialog(owner) == JFileChooser.APPROVE_OPTION) {
            chosen.accept(chooser.getSelectedFile().toPath());
        }
    }

    /** Asks for the air of the day, if a show is open. */
    void pasteMetar(Consumer<DayAir> kept) {
        DayAir air = host.air();
        if (air != null) {
            MetarDialog.ask(owner, appearance.get(), air, next -> host.useAir(next, false), kept);
        }
    }

    /** Asks where the aircraft's position comes from. */
    void chooseReceiver() {
        host.findReceivers(found -> ReceiverDialog.ask(owner, appearance.get(), found, host::useReceiver));
    }

    /** Asks whose pace the times are for. */
    void askPace() {
        host.pace().find(found -> PaceDialog.ask(owner, appearance.get(), found, host.pace()));
    }
}
