package crowdline.console;

import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.live.OnAir;
import crowdline.console.live.SecondView;
import crowdline.console.second.SecondHost;
import crowdline.console.second.SecondWindow;
import crowdline.console.theme.Appearance;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Opens and closes the second window, and turns its look. On the event thread. */
final class SecondScreen {
    private final Supplier<@Nullable OnAir> running;
    private final SecondHost host;
    private final Supplier<Appearance> appearance;
    private @Nullable SecondWindow window;

    SecondScreen(Supplier<@Nullable OnAir> running, SecondHost host, Supplier<Appearance> appearance) {
        this.running = running;
        this.host = host;
        this.appearance = appearance;
    }

    /** Puts its commands into the window's table. */
    void fill(CommandTable.Filling table) {
        table.on(Command.SECOND_WINDOW, this::turn)
                .on(Command.SECOND_FULL, this::isOpen, () -> whileOpen(SecondWindow::turnFullScreen))
                .on(Command.SECOND_THEME, this::isOpen, () -> whileOpen(SecondWindow::nextTheme))
                .on(Command.SECOND_SPEAKER, this::isOpen, () -> whileOpen(SecondWindow::nextSpeaker))
                .on(Command.SECOND_LARGER, this::isOpen, () -> whileOpen(SecondWindow::larger))
                .on(Command.SECOND_SMALLER, this::isOpen, () -> whileOpen(SecondWindow::smaller));
    }

    boolean isOpen() {
        SecondWindow open = window;
        return open != null && open.isDisplayable();
    }

    private void whileOpen(Consumer<SecondWindow> change) {
        SecondWindow open = window;
        if (open != null && open.isDisplayable()) {
            change.accept(open);
        }
    }

    private void turn() {
        if (isOpen()) {
            close();
        } else {
            window = SecondWindow.open(this::view, host, appearance.get());
        }
    }

    private @Nullable SecondView view(@Nullable String reader) {
        OnAir show = running.get();
        return show == null ? null : show.second(reader);
    }

    void close() {
        whileOpen(SecondWindow::dispose);
        window = null;
    }
}
