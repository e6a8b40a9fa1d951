package crowdline.loaded;

import crowdline.flight.Workers;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.Finding;
import crowdline.show.check.LocatedFinding;
import crowdline.show.check.Severity;
import crowdline.show.check.ShowRules;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.passes.PassesFile;
import crowdline.storage.show.ShowFile;
import crowdline.storage.show.ShowReading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads a show, checks it and computes everything the console needs from it. Takes a moment; off the event thread. */
public final class ShowLoader {
    /** The code of what was found in the passes of a show. */
    public static final String PASSES = "passes";

    private final Supplier<Catalogue> catalogue;
    private final Supplier<Paces> paces;
    private final Path passes;
    private final Workers workers;
    private final int settled;

    /**
     * @param catalogue asked for when a show is loaded, and not before
     * @param paces asked for when a show is loaded
     * @param passes where passes are that could not be kept beside their show
     * @param workers fly the varied flights behind the bands
     */
    public ShowLoader(Supplier<Catalogue> catalogue, Supplier<Paces> paces, Path passes, Workers workers) {
        this(catalogue, paces, passes, workers, LoadedShow.FLIGHTS);
    }

    /**
     * The same with another number of flights behind the bands of a show that has settled.
     *
     * @param settled 1 or more
     */
    public ShowLoader(Supplier<Catalogue> catalogue, Supplier<Paces> paces, Path passes, Workers workers, int settled) {
        this.settled = settled;
        this.catalogue = catalogue;
        this.paces = paces;
        this.passes = passes;
        this.workers = workers;
    }

    /**
     * A show that was read.
     *
     * @param file where it is
     * @param loaded the show, or null if findings stand in its way
     * @param ofFile what was found in the file
     */
    public record Result(Path file, @Nullable LoadedShow loaded, List<LocatedFinding> ofFile) {
        public Result {
            ofFile = List.copyOf(ofFile);
        }

        /** What was found, of the file first, then of the flights as they are predicted now. */
        public List<LocatedFinding> findings() {
            List<LocatedFinding> all = new ArrayList<>(ofFile);
            if (loaded != null) {
                all.addAll(loaded.findings());
            }
            return all;
        }
    }

    /**
     * A show whose content was found sound before; empty if it has to be checked first.
     *
     * @param flights varied flights behind each band, 1 or more
     */
    public Optional<LoadedShow> soundBefore(Path file, byte[] content, int flights) {
        Optional<LoadedShow> loaded = ShowFile.soundBefore(content)
                .map(show -> new LoadedShow(show, catalogue.get(), paces.get(), workers, flights, settled));
        // What is wrong with a pass is said when the show is checked.
        loaded.ifPresent(show -> learn(file, show));
        return loaded;
    }

    /** A show that has no file yet, with nothing computed. */
    public LoadedShow fresh(Show show) {
        return new LoadedShow(show, catalogue.get(), paces.get(), workers, LoadedShow.FIRST_FLIGHTS, settled);
    }

    /** Has a show learn from the passes of its file; what was found in them. */
    private List<LocatedFinding> learn(Path file, LoadedShow loaded) {
        try {
            PassesFile.Reading reading = new PassesFile(file, passes).read();
            loaded.learn(reading.passes());
            return reading.findings().stream().map(ShowLoader::ofPasses).toList();
        } catch (ShowFileException e) {
            return List.of(ofPasses(String.valueOf(e.getMessage())));
        }
    }

    /** What was found in the passes of a show, as one of the findings about the show; it names its file and line itself. */
    public static LocatedFinding ofPasses(String said) {
        return LocatedFinding.inNoLine(Severity.WARNING, PASSES, said);
    }

    /**
     * Reads a show file and loads the show in it if nothing stands in its way.
     *
     * @param flights varied flights behind each band, 1 or more
     */
    public Result load(Path file, int flights) throws ShowFileException {
        return load(
                file,
                ShowFile.bytes(file),
                known -> new LoadedShow(known, catalogue.get(), paces.get(), workers, flights, settled));
    }

    /** Checks content that a show was already loaded from. */
    public Result check(Path file, byte[] content, LoadedShow loaded) {
        return load(file, content, known -> loaded);
    }

    /** Checks content, and loads the show in it if nothing stands in its way. */
    public Result load(Path file, byte[] content, int flights) {
        return load(
                file, content, known -> new LoadedShow(known, catalogue.get(), paces.get(), workers, flights, settled));
    }

    private Result load(Path file, byte[] content, Function<Show, LoadedShow> loading) {
        ShowReading reading = new ShowFile().read(file, content);
        Show show = reading.show();
        List<LocatedFinding> findings = new ArrayList<>();
        if (show == null) {
            findings.addAll(reading.findings());
            return new Result(file, null, findings);
        }
        findings.addAll(reading.with(ShowRules.check(show, catalogue.get())).findings());
        LoadedShow loaded = loading.apply(show);
        List<Finding> flown = FlownCheck.slips(loaded);
        findings.addAll(reading.document().locate(flown));
        if (flown.stream().anyMatch(f -> f.severity() == Severity.ERROR)) {
            return new Result(file, null, findings);
        }
        findings.addAll(learn(file, loaded));
        return new Result(file, loaded, findings);
    }
}
