package crowdline.app.window.walk;

import crowdline.app.shell.Exports;
import crowdline.console.debrief.DayChoice;
import crowdline.console.debrief.DebriefHost;
import crowdline.console.debrief.DebriefPresenter;
import crowdline.console.debrief.DebriefView;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.console.walk.Passes;
import crowdline.live.debrief.Debrief;
import crowdline.loaded.FlownDay;
import crowdline.loaded.LoadedShow;
import crowdline.paper.Wanted;
import crowdline.running.LiveDesk;
import crowdline.sheet.DebriefSheet;
import crowdline.sheet.DebriefTable;
import crowdline.sheet.day.DaySheet;
import crowdline.sheet.day.DayValues;
import crowdline.sheet.day.OtherDay;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.json.JsonOut;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The debrief of a running show. */
final class ShowDebrief implements DebriefHost {
    private static final DateTimeFormatter BEGUN = DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm", Locale.UK);
    /** So many days are offered; of an older one the file can be named. */
    private static final int MOST_DAYS = 30;

    private final Supplier<LoadedShow> loaded;
    private final LiveDesk desk;
    private final Passes passes;
    private final Executor io;
    private final Consumer<Mark> say;
    private final JournalShelf journals;
    private final Runnable changed;
    /** One and the same, so that what was made by it can be told from what was not. */
    private final DoubleFunction<LocalTime> hour = this::hour;

    private volatile @Nullable OtherDay other;
    /** The wall clock at second 0 of the session, to the second, so that no hour shown flickers. */
    private final Instant zero;

    /** @param changed told from any thread when another day stands beside this one */
    ShowDebrief(
            Supplier<LoadedShow> loaded,
            LiveDesk desk,
            Passes passes,
            JournalShelf journals,
            Executor io,
            Clock clock,
            Consumer<Mark> say,
            Runnable changed) {
        this.loaded = loaded;
        this.desk = desk;
        this.passes = passes;
        this.io = io;
        this.say = say;
        this.journals = journals;
        this.changed = changed;
        zero = clock.instant().minusNanos(Math.round(desk.nowS() * 1e9)).truncatedTo(ChronoUnit.SECONDS);
    }

    private Debrief debrief() {
        LoadedShow now = loaded.get();
        return Debrief.of(now.show(), desk.snapshot().state(), now.debriefSources(zero, passes::of));
    }

    private LocalTime hour(double sessionS) {
        return loaded.get().hour(zero, sessionS);
    }

    @Override
    public DebriefView view() {
        return DebriefPresenter.view(debrief(), hour, other);
    }

    @Override
    public void days(Consumer<List<DayChoice>> answer) {
        ZoneId zone = loaded.get().show().venue().timeZone();
        io.execute(() -> answer.accept(journals.flown(MOST_DAYS).stream()
                .map(day ->
                        new DayChoice(day.journal(), BEGUN.format(day.begun().atZone(zone)) + ", " + day.show()))
                .toList()));
    }

    @Override
    public void beside(Path journal) {
        LoadedShow now = loaded.get();
        io.execute(() -> {
            try {
                OtherDay read = FlownDay.of(journals.read(journal), now).beside();
                other = read;
                say.accept(new Mark(Form.DISC, Tone.GOOD, "Beside " + read.name()));
                changed.run();
            } catch (ShowFileException e) {
                say.accept(new Mark(Form.STOP, Tone.ALARM, String.valueOf(e.getMessage())));
            }
        });
    }

    @Override
    public void alone() {
        other = null;
        changed.run();
    }

    @Override
    public void saveText(Path file) {
        save(file, DebriefSheet.lines(debrief(), hour));
    }

    @Override
    public void saveTable(Path file) {
        save(file, DebriefTable.lines(debrief()));
    }

    @Override
    public void saveDay(Path file) {
        save(file, DaySheet.table(debrief(), hour, other));
    }

    @Override
    public void saveJson(Path file) {
        save(file, JsonOut.of(DayValues.of(debrief(), other)).lines().toList());
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
        return new Wanted.Flown(debrief(), hour, other);
    }
}
