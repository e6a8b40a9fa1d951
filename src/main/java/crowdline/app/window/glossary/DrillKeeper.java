package crowdline.app.window.glossary;

import crowdline.glossary.drill.Memory;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.settings.DrillFile;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * What each speaker remembers of the figures. It may be asked and told from any thread; the {@code io} thread, which does one
 * thing after another, reads the file first and writes it after every answer.
 */
public final class DrillKeeper {
    private final DrillFile file;
    private final Supplier<String> speaker;
    private final Clock wall;
    private final Consumer<String> complain;
    private final Executor io;
    private final AtomicReference<Map<String, Map<String, Memory>>> people = new AtomicReference<>(Map.of());

    /**
     * @param speaker the name of whoever speaks; empty if nobody was chosen
     * @param complain says a sentence in the foot line
     */
    public DrillKeeper(DrillFile file, Supplier<String> speaker, Clock wall, Consumer<String> complain, Executor io) {
        this.file = file;
        this.speaker = speaker;
        this.wall = wall;
        this.complain = complain;
        this.io = io;
        io.execute(this::read);
    }

    private void read() {
        DrillFile.Reading reading = file.read();
        // What was answered meanwhile is newer.
        people.updateAndGet(meanwhile -> {
            Map<String, Map<String, Memory>> all = new HashMap<>(reading.people());
            meanwhile.forEach(
                    (person, figures) -> figures.forEach((figure, memory) -> put(all, person, figure, memory)));
            return Map.copyOf(all);
        });
        if (!reading.complaint().isEmpty()) {
            complain.accept(reading.complaint());
        }
    }

    private static void put(Map<String, Map<String, Memory>> all, String person, String figure, Memory memory) {
        Map<String, Memory> figures = new HashMap<>(all.getOrDefault(person, Map.of()));
        figures.put(figure, memory);
        all.put(person, Map.copyOf(figures));
    }

    /** Of whoever speaks, by figure. */
    Map<String, Memory> remembered() {
        return now().getOrDefault(speaker.get(), Map.of());
    }

    /** Keeps what whoever speaks remembers of a figure from now on. */
    void remember(String figure, Memory memory) {
        String person = speaker.get();
        people.updateAndGet(before -> {
            Map<String, Map<String, Memory>> all = new HashMap<>(before);
            put(all, person, figure, memory);
            return Map.copyOf(all);
        });
        io.execute(this::write);
    }

    /** In days since 1970-01-01. */
    long today() {
        return LocalDate.now(wall).toEpochDay();
    }

    private Map<String, Map<String, Memory>> now() {
        return Objects.requireNonNull(people.get());
    }

    private void write() {
        try {
            file.write(now());
        } catch (ShowFileException e) {
            complain.accept("What the drill should remember was not saved: " + e.getMessage());
        }
    }
}
