package crowdline.app.window.practice;

import crowdline.practice.Level;
import crowdline.practice.PracticeScore;
import crowdline.practice.PracticeScore.About;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.settings.Practised;
import crowdline.storage.settings.Practised.Well;
import crowdline.storage.settings.PractisedFile;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * How each speaker's last practice flights went. It may be asked and told from any thread; the {@code io} thread reads the
 * file first and writes it after every flight.
 */
public final class PractisedKeeper {
    /** So many flights of a level are kept of everybody. */
    static final int KEPT = 5;

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.UK);

    private final PractisedFile file;
    private final Supplier<String> speaker;
    private final Clock wall;
    private final Consumer<String> complain;
    private final Executor io;
    private final AtomicReference<Map<String, List<Practised>>> people = new AtomicReference<>(Map.of());

    /**
     * @param speaker the name of whoever speaks; empty if nobody was chosen
     * @param complain says a sentence in the foot line
     */
    public PractisedKeeper(
            PractisedFile file, Supplier<String> speaker, Clock wall, Consumer<String> complain, Executor io) {
        this.file = file;
        this.speaker = speaker;
        this.wall = wall;
        this.complain = complain;
        this.io = io;
        io.execute(this::read);
    }

    private void read() {
        PractisedFile.Reading reading = file.read();
        people.updateAndGet(meanwhile -> {
            Map<String, List<Practised>> all = new HashMap<>(reading.people());
            meanwhile.forEach((person, flown) -> flown.forEach(one -> add(all, person, one)));
            return Map.copyOf(all);
        });
        if (!reading.complaint().isEmpty()) {
            complain.accept(reading.complaint());
        }
    }

    private static void add(Map<String, List<Practised>> all, String person, Practised one) {
        List<Practised> flown = new ArrayList<>(all.getOrDefault(person, List.of()));
        flown.add(one);
        List<Practised> ofLevel =
                flown.stream().filter(f -> f.level() == one.level()).toList();
        if (ofLevel.size() > KEPT) {
            flown.remove(ofLevel.get(0));
        }
        all.put(person, List.copyOf(flown));
    }

    /** Keeps how whoever speaks did; nothing where there was nothing to tell. */
    void keep(Level level, String act, long flight, PracticeScore score) {
        if (score.lines().isEmpty()) {
            return;
        }
        Practised one = new Practised(
                level.number(),
                LocalDate.now(wall),
                act,
                flight,
                well(score, About.PLAN),
                well(score, About.STEPS),
                well(score, About.CALLS),
                well(score, About.TALK),
                well(score, About.DUTIES));
        String person = speaker.get();
        people.updateAndGet(before -> {
            Map<String, List<Practised>> all = new HashMap<>(before);
            add(all, person, one);
            return Map.copyOf(all);
        });
        io.execute(this::write);
    }

    private static Well well(PracticeScore score, About about) {
        return score.counts().stream()
                .filter(c -> c.about() == about)
                .map(c -> new Well(c.well(), c.of()))
                .findFirst()
                .orElse(Well.NOTHING);
    }

    /** How the last flights of a level went for whoever speaks, the newest first, a sentence each. */
    List<String> past(Level level) {
        List<String> said = new ArrayList<>(now().getOrDefault(speaker.get(), List.of()).stream()
                .filter(one -> one.level() == level.number())
                .map(PractisedKeeper::inWords)
                .toList());
        Collections.reverse(said);
        return List.copyOf(said);
    }

    private static String inWords(Practised one) {
        List<String> parts = new ArrayList<>();
        add(parts, one.plan(), "when the plan broke");
        add(parts, one.steps(), "in step");
        add(parts, one.calls(), "calls");
        add(parts, one.talk(), "not talked over");
        add(parts, one.duties(), "duties");
        return DAY.format(one.day()) + ", " + one.act() + ", flight " + one.flight() + ": " + String.join(", ", parts)
                + ".";
    }

    private static void add(List<String> parts, Well well, String what) {
        if (well.of() > 0) {
            parts.add(what + " " + well.well() + " of " + well.of());
        }
    }

    private Map<String, List<Practised>> now() {
        return Objects.requireNonNull(people.get());
    }

    private void write() {
        try {
            file.write(now());
        } catch (ShowFileException e) {
            complain.accept("How the practice went was not kept: " + e.getMessage());
        }
    }
}
