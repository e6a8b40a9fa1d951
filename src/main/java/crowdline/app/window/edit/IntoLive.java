package crowdline.app.window.edit;

import crowdline.app.window.show.LiveShow;
import crowdline.console.ConsoleFrame;
import crowdline.console.edit.EditCommands;
import crowdline.console.paint.Form;
import crowdline.console.theme.Tone;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowRemarks;
import crowdline.running.RunningShow;
import crowdline.show.Show;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.ShowFile;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Lets Live run the show as it was saved.
 *
 * @param window hands work to the window
 * @param said says what became of it
 */
record IntoLive(LiveShow live, Consumer<Consumer<ConsoleFrame>> window, Said said) {
    /** Says something in the foot line. */
    interface Said {
        void say(Form form, Tone tone, String words);
    }

    /** What is left to be done where Live does not run what was saved; else nothing. */
    static String left(Show saved, @Nullable RunningShow running) {
        return running == null || running.loaded().show().withAir(saved.air()).equals(saved)
                ? ""
                : "; Ctrl+L takes the changes into Live and Walk through";
    }

    /**
     * Other words at any time; other acts, figures, aircraft or another place never under an act that is flown.
     *
     * @param next the show with what is computed of it
     * @return work that may follow when there is time
     */
    Optional<Runnable> take(Show show, Path file, RunningShow running, LoadedShow next) throws ShowFileException {
        LoadedShow now = running.loaded();
        if (ShowRemarks.none(show).equals(ShowRemarks.none(now.show().withAir(show.air())))) {
            running.take(now.withWords(show));
            window.accept(ConsoleFrame::liveChanged);
            said.say(Form.DISC, Tone.GOOD, "Saved; Live now uses these words");
            return Optional.empty();
        }
        if (!live.run(file, ShowFile.bytes(file), next)) {
            said.say(
                    Form.DIAMOND,
                    Tone.CAUTION,
                    "Saved, but an act is in the air: Live keeps its acts and figures. Press E in Live when it is over,"
                            + " then Ctrl+L again");
            return Optional.empty();
        }
        said.say(Form.DISC, Tone.GOOD, "Saved; Live now runs the show as it is here");
        // What is running must not wait for better bands.
        return Optional.of(() -> {
            next.settle();
            window.accept(ConsoleFrame::liveChanged);
            window.accept(frame -> frame.tellEdit(EditCommands::retimed));
        });
    }
}
