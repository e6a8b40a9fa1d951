package crowdline.app.window.time;

import crowdline.app.sound.JavaSound;
import crowdline.app.sound.MicrophoneListener;
import crowdline.console.pace.Microphone;
import crowdline.console.pace.PaceHost;
import crowdline.console.pace.RemarksToTime;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.running.RunningShow;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.speech.pace.Pace;
import crowdline.speech.pace.Paces;
import crowdline.speech.say.Spoken;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.settings.PaceShelf;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Whose pace everything is timed for. What is on disk is read and written on the {@code io} thread. */
public final class PaceKeeper implements PaceHost {
    private final PaceShelf shelf;
    private final Supplier<@Nullable RunningShow> running;
    private final Consumer<Paces> changed;
    private final Consumer<Mark> say;
    private final Executor io;
    private final PaceInUse paces;
    private final JavaSound sound = new JavaSound();
    private final Microphone microphone = new MicrophoneListener(
            sound::open, SwingUtilities::invokeLater, "Space times by hand, and what was timed is kept.");

    /**
     * @param paces those in use; set before anybody is told
     * @param running the show being run, if any
     * @param changed told of all others from now on, on the io thread
     * @param say says a sentence in the foot line
     */
    public PaceKeeper(
            PaceShelf shelf,
            PaceInUse paces,
            Supplier<@Nullable RunningShow> running,
            Consumer<Paces> changed,
            Consumer<Mark> say,
            Executor io) {
        this.shelf = shelf;
        this.paces = paces;
        this.running = running;
        this.changed = changed;
        this.say = say;
        this.io = io;
    }

    /** What to say if the pace of the last session's speaker cannot be used. */
    public static Optional<String> missing(@Nullable String speaker, Pace first) {
        return speaker == null || first.name().equals(speaker)
                ? Optional.empty()
                : Optional.of("The pace of " + speaker
                        + " cannot be read, so the default pace is used; press Ctrl+U to time it again");
    }

    /** Whose pace it is; empty for the default's. */
    public static String speaker(Pace pace) {
        return pace.equals(Pace.DEFAULT) ? "" : pace.name();
    }

    @Override
    public void find(Consumer<Found> found) {
        io.execute(() -> {
            PaceShelf.Reading reading = shelf.read();
            sayOf(reading);
            RunningShow show = running.get();
            Show open = show == null ? null : show.loaded().show();
            Found all = new Found(
                    reading.paces().stream().map(Pace::name).toList(),
                    speaker(paces.get().own()),
                    RemarksToTime.of(texts(open), new Spoken(open == null ? Map.of() : open.sayAs())),
                    sound.whyNone().orElse(""));
            SwingUtilities.invokeLater(() -> found.accept(all));
        });
    }

    @Override
    public Microphone microphone() {
        return microphone;
    }

    public static List<String> texts(@Nullable Show show) {
        List<String> texts = new ArrayList<>();
        if (show != null) {
            show.remarksById().values().stream().map(Remark::text).sorted().forEach(texts::add);
        }
        return texts;
    }

    @Override
    public void use(String speaker) {
        io.execute(() -> {
            if (speaker.isEmpty()) {
                change(Pace.DEFAULT, shelf.read());
                return;
            }
            PaceShelf.Reading reading = shelf.read();
            sayOf(reading);
            reading.of(speaker)
                    .ifPresentOrElse(
                            pace -> change(pace, reading),
                            () -> say.accept(
                                    new Mark(Form.STOP, Tone.ALARM, "The pace of " + speaker + " is no longer there")));
        });
    }

    @Override
    public void useNext() {
        io.execute(() -> {
            PaceShelf.Reading reading = shelf.read();
            List<Pace> all = new ArrayList<>();
            all.add(Pace.DEFAULT);
            all.addAll(reading.paces());
            if (all.size() == 1) {
                say.accept(new Mark(
                        Form.DIAMOND,
                        Tone.CAUTION,
                        "No speaker has been timed yet; press Ctrl+U to time one with ten remarks"));
                return;
            }
            List<String> names = all.stream().map(Pace::name).toList();
            change(all.get((names.indexOf(paces.get().own().name()) + 1) % all.size()), reading);
        });
    }

    @Override
    public void keep(Pace made) {
        io.execute(() -> {
            try {
                shelf.write(made);
                change(made, shelf.read());
            } catch (ShowFileException e) {
                say.accept(new Mark(Form.STOP, Tone.ALARM, String.valueOf(e.getMessage())));
            }
        });
    }

    private void change(Pace next, PaceShelf.Reading known) {
        paces.set(known.with(next));
        changed.accept(paces.get());
        say.accept(new Mark(
                Form.DISC,
                Tone.GOOD,
                next.equals(Pace.DEFAULT)
                        ? "Times now use the default pace"
                        : "Times now use " + next.name() + "'s pace"));
    }

    private void sayOf(PaceShelf.Reading reading) {
        reading.said().stream().findFirst().ifPresent(said -> say.accept(new Mark(Form.DIAMOND, Tone.CAUTION, said)));
    }
}
