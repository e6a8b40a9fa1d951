package crowdline.app.window.practice;

import crowdline.app.window.work.KeptSettings;
import crowdline.console.live.OnAir;
import crowdline.console.path.CrowdView;
import crowdline.console.practice.Practice;
import crowdline.console.practice.PracticeChoice;
import crowdline.console.practice.PracticeHost;
import crowdline.console.practice.PracticeScored;
import crowdline.console.practice.Spotted;
import crowdline.live.state.LiveState;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLookup;
import crowdline.practice.CannotPractise;
import crowdline.practice.Level;
import crowdline.practice.PracticeFlight;
import crowdline.practice.PracticeScore;
import crowdline.practice.WhatChanged;
import crowdline.running.AircraftSource;
import crowdline.running.RunningShow;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.aircraft.Airframe;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalMachine;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/** Lets one practise on the acts of the running show. What takes time is done on the {@code io} thread. */
public final class PracticeKeeper implements PracticeHost {
    /** Where everything temporary is. */
    private static final Path TEMPORARY = Path.of(System.getProperty("java.io.tmpdir"));

    private final Supplier<@Nullable RunningShow> day;
    private final KeptSettings settings;
    private final JournalMachine machine;
    private final AircraftSource nowhere;
    private final Consumer<String> complain;
    private final Executor io;
    private final PractisedKeeper practised;
    private long seed;

    /**
     * @param day the show of the day
     * @param nowhere a source of positions that is never opened
     * @param seed of the first flight
     * @param complain says what went wrong
     * @param practised keeps how it went
     */
    public PracticeKeeper(
            Supplier<@Nullable RunningShow> day,
            KeptSettings settings,
            JournalMachine machine,
            AircraftSource nowhere,
            long seed,
            Consumer<String> complain,
            Executor io,
            PractisedKeeper practised) {
        this.day = day;
        this.settings = settings;
        this.machine = machine;
        this.nowhere = nowhere;
        this.seed = seed;
        this.complain = complain;
        this.io = io;
        this.practised = practised;
        io.execute(() -> PracticeFolder.sweep(TEMPORARY));
    }

    @Override
    public Optional<String> refusal() {
        RunningShow show = day.get();
        if (show == null) {
            return Optional.of("No show is open: open one with Ctrl+O, then practise on its acts.");
        }
        LiveState state = show.desk().snapshot().state();
        if (state.incidentOpen()) {
            return Optional.of("The incident page is open: practise when it is left.");
        }
        if (state.course().inTheAir()) {
            return Optional.of("An act is in the air: press E in Live when it is over, then practise.");
        }
        return flown(show.loaded().show()).findAny().isEmpty()
                ? Optional.of(
                        "Of the acts of this show only times are known, so there is nothing to see: say in Prepare"
                                + " which kind of aircraft flies one, and take that into Live with Ctrl+L.")
                : Optional.empty();
    }

    @Override
    public List<ActRow> acts() {
        RunningShow running = day.get();
        if (running == null) {
            return List.of();
        }
        ShowLookup words = running.loaded().words();
        return flown(running.loaded().show())
                .map(act -> new ActRow(act.id(), act.title(), words.who(act)))
                .toList();
    }

    /** The acts whose flight is computed. */
    private static Stream<Act> flown(Show show) {
        return show.acts().stream()
                .filter(act -> !act.figures().isEmpty()
                        && show.aircraft(act.airframe()).orElse(null) instanceof Airframe);
    }

    @Override
    public List<String> past(Level level) {
        return practised.past(level);
    }

    @Override
    public long seed() {
        return seed;
    }

    @Override
    public boolean skyApart() {
        return settings.get().skyApart();
    }

    @Override
    public void keepSkyApart(boolean apart) {
        if (apart != skyApart()) {
            settings.change(s -> s.withSkyApart(apart));
        }
    }

    @Override
    public void begin(PracticeChoice choice, Begun answer) {
        ask(choice, answer::doesNot, (loaded, act) -> {
            PracticeFolder folder = PracticeFolder.make(TEMPORARY);
            Running begun = new Running(choice, title(act, choice), made(loaded, choice, folder));
            // Looked at once here, so that the event thread finds everything worked out.
            begun.show().view();
            return () -> answer.flies(begun);
        });
    }

    @Override
    public void spot(PracticeChoice choice, Spotting answer) {
        ask(choice, answer::doesNot, (loaded, act) -> {
            Spotted asked = spotted(loaded, act, choice);
            return () -> answer.asks(asked);
        });
    }

    /** Makes what is practised on an act of the show that is open. */
    private interface Making {
        /** Made on the io thread; what it returns is done on the event thread. */
        Runnable of(LoadedShow loaded, Act act) throws CannotPractise, IOException;
    }

    private void ask(PracticeChoice choice, Consumer<String> doesNot, Making making) {
        RunningShow show = day.get();
        if (show == null) {
            doesNot.accept("No show is open.");
            return;
        }
        LoadedShow loaded = show.loaded();
        Act act = loaded.show().act(choice.actId()).orElse(null);
        if (act == null) {
            doesNot.accept("This act is not in the show any more: choose another.");
            return;
        }
        seed = choice.seed() % PracticeChoice.MOST + 1;
        io.execute(() -> {
            try {
                SwingUtilities.invokeLater(making.of(loaded, act));
            } catch (CannotPractise e) {
                SwingUtilities.invokeLater(() -> doesNot.accept(e.why()));
            } catch (IOException e) {
                SwingUtilities.invokeLater(
                        () -> doesNot.accept(
                                "The practice has nowhere to write what happens in it: is the disk of the temporary folder full?"));
            }
        });
    }

    private static Spotted spotted(LoadedShow loaded, Act act, PracticeChoice choice) throws CannotPractise {
        Variant variant = act.variantUnder(loaded.show().air().cloudBaseFt());
        WhatChanged changed = WhatChanged.of(loaded.show(), loaded.catalogue(), act, variant, choice.seed());
        PracticeFlight flight = changed.flight();
        return new Spotted(
                act.title() + ", flight " + choice.seed(),
                choice,
                PracticeShow.sky(loaded, act, variant, flight),
                flight.startS(),
                flight.endS(),
                changed.plan(),
                changed.choices(),
                changed.right());
    }

    private PracticeShow made(LoadedShow loaded, PracticeChoice choice, PracticeFolder folder) throws CannotPractise {
        try {
            return new PracticeShow(loaded, choice, machine, nowhere, folder);
        } catch (CannotPractise e) {
            folder.delete();
            throw e;
        }
    }

    private static String title(Act act, PracticeChoice choice) {
        return act.title() + ", level " + choice.level().number() + ", flight " + choice.seed();
    }

    /** On the io thread, or at once if the program is closed and nobody waits. */
    private void later(Runnable work) {
        try {
            io.execute(work);
        } catch (RejectedExecutionException e) {
            work.run();
        }
    }

    /** One that runs. */
    private final class Running implements Practice {
        private final PracticeChoice choice;
        private final String title;
        private final PracticeShow show;

        Running(PracticeChoice choice, String title, PracticeShow show) {
            this.choice = choice;
            this.title = title;
            this.show = show;
        }

        PracticeShow show() {
            return show;
        }

        @Override
        public OnAir onAir() {
            return show;
        }

        @Override
        public CrowdView sky() {
            return show.sky();
        }

        @Override
        public boolean isOver() {
            return show.isOver();
        }

        @Override
        public void end(Told told) {
            later(() -> {
                try {
                    PracticeScore score = show.end();
                    practised.keep(choice.level(), show.act(), choice.seed(), score);
                    SwingUtilities.invokeLater(() -> told.accept(new PracticeScored(title, choice, score)));
                } catch (ShowFileException e) {
                    complain.accept(String.valueOf(e.getMessage()));
                }
            });
        }

        @Override
        public void drop() {
            later(show::drop);
        }
    }
}
