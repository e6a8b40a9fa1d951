package crowdline.console;

import crowdline.console.debrief.DebriefHost;
import crowdline.console.edit.EditHost;
import crowdline.console.receiver.Receivers;
import crowdline.console.theme.Appearance;
import crowdline.show.DayAir;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** A program with no show open that does nothing it is asked for. */
class IdleHost implements Host {
    @Override
    public @Nullable DebriefHost debrief() {
        return null;
    }

    @Override
    public double nowS() {
        return 0;
    }

    @Override
    public EditHost edit() {
        return EditHost.NONE;
    }

    @Override
    public void open(Path file) {}

    @Override
    public void openDemo() {}

    @Override
    public DayAir air() {
        return DayAir.STANDARD;
    }

    @Override
    public void useAir(DayAir air, boolean toBeSaved) {}

    @Override
    public void findReceivers(Consumer<Receivers> found) {}

    @Override
    public void useReceiver(String where, double faster) {}

    @Override
    public List<Path> recent() {
        return List.of();
    }

    @Override
    public void keep(Appearance appearance) {}

    @Override
    public void quit() {}
}
