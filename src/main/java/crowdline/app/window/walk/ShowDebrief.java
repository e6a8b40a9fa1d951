package crowdline.app.window.walk;

import crowdline.app.shell.Exports;
import crowdline.console.debrief.DebriefHost;
import crowdline.console.debrief.DebriefPresenter;
import crowdline.console.debrief.DebriefView;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.console.walk.Passes;
import crowdline.live.debrief.Debrief;
import crowdline.loaded.LoadedShow;
import crowdline.paper.Wanted;
import crowdline.running.LiveDesk;
import crowdline.sheet.DebriefSheet;
import crowdline.sheet.DebriefTable;
import crowdline.sheet.day.DaySheet;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.json.JsonOut;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** The debrief of a running show. */
final class ShowDebrief implements DebriefHost {
    private final Supplier<LoadedShow> loaded;
    private final LiveDesk desk;
    private final Passes passes;
    private final Executor io;
    private final Consumer<Mark> say;
    /** The wall clock at second 0 of the session, to the second, so that no hour shown flickers. */
    private final Instant zero;

    ShowDebrief(
            Supplier<LoadedShow> loaded, LiveDesk desk, Passes passes, Executor io, Clock clock, Consumer<Mark> say) {
        this.loaded = loaded;
        this.desk = desk;
        this.passes = passes;
        this.io = io;
        this.say = say;
        zero = clock.instant().minusNanos(Math.round(desk.nowS() * 1e9)).truncatedTo(ChronoUnit.SECONDS);
    }

    private Debrief debrief() {
        LoadedShow now = loaded.get();
        return Debrief.of(now.show(), desk.snapshot().state(), now.debriefSources(zero, passes::of));
    }

    private Instant at(double sessionS) {
        return zero.plusNanos(Math.round(sessionS * 1e9));
    }

    private LocalTime hour(double sessionS) {
        return LocalTime.ofInstant(at(sessionS), loaded.get().show().venue().timeZone());
    }

    @Override
    public DebriefView view() {
        return DebriefPresenter.view(debrief(), this::hour);
    }

    @Override
    public void saveText(Path file) {
        save(file, DebriefSheet.lines(debrief(), this::hour));
    }

    @Override
    public void saveTable(Path file) {
        save(file, DebriefTable.lines(debrief()));
    }

    @Override
    public void saveDay(Path file) {
        save(file, DaySheet.table(debrief(), this::hour));
    }

    @Override
    public void saveJson(Path file) {
        save(file, JsonOut.of(debrief()).lines().toList());
    }

    private void save(Path file, List<String> lines) {
        io.execute(() -> {
            try {
                Exports.write(file, lines);
                say.accept(new Mark(Form.DISC, Tone.GOOD, "Saved as " + file.getFileName()));
            } catch (ShowFileException e) {
                say.accept(new Mark(Form.STOP, Tone.ALARM, String.valueOf(e.getMessage())));
            }
        });
    }

    /** What was flown so far. */
    Wanted.Flown flown() {
        return new Wanted.Flown(debrief(), this::hour);
    }
}
