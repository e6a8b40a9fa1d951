package crowdline.storage.show;

import crowdline.show.Show;
import crowdline.show.check.Finding;
import crowdline.show.check.LocatedFinding;
import crowdline.show.check.Severity;
import crowdline.storage.file.AtomicFile;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.file.ShowText;
import crowdline.storage.file.Where;
import crowdline.storage.json.JsonLayout;
import crowdline.storage.json.JsonParsing;
import crowdline.storage.json.ParsedJson;
import crowdline.storage.json.Quoted;
import crowdline.storage.json.Refusals;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Reads and writes show files. */
public final class ShowFile {
    private static final int MOST_FINDINGS = 500;
    private static final String VERSION_KEY = "crowdline";

    private final AtomicFile saves;
    private @Nullable ShowSchema schema;

    public ShowFile() {
        this(new AtomicFile());
    }

    ShowFile(AtomicFile saves) {
        this.saves = saves;
    }

    /**
     * The bytes of a show file.
     *
     * @throws ShowFileException if the file cannot be read at all, with one sentence for the user
     */
    public static byte[] bytes(Path file) throws ShowFileException {
        return ShowText.bytes(file);
    }

    /**
     * The show in bytes that were found sound before, without judging them by the schema again, which takes longer than
     * all the rest. Empty if they are not as sound as that: {@link #read(Path, byte[])} then says why.
     */
    public static Optional<Show> soundBefore(byte[] bytes) {
        ShowText text = ShowText.decode(bytes);
        if (text.fault() != null) {
            return Optional.empty();
        }
        ParsedJson parsed = JsonParsing.parse(text.text());
        JsonNode root = parsed.root();
        if (root == null || !parsed.findings().isEmpty() || version(root) != null) {
            return Optional.empty();
        }
        return ShowFromTree.show(root, new Refusals());
    }

    /**
     * Reads a show. Bad content gives findings, never an exception.
     *
     * @throws ShowFileException if the file cannot be read at all, with one sentence for the user
     */
    public ShowReading read(Path file) throws ShowFileException {
        return read(file, ShowText.bytes(file));
    }

    /** Reads a show from bytes; {@code file} is only how findings name it. */
    public ShowReading read(Path file, byte[] bytes) {
        ShowText text = ShowText.decode(bytes);
        ShowText.Fault fault = text.fault();
        if (fault != null) {
            ShowDocument nothing = new ShowDocument(file, null, Map.of(), Set.of());
            Finding finding = new Finding(Severity.ERROR, "not-utf-8", fault.message(), "");
            return new ShowReading(null, nothing, List.of(nothing.at(finding, fault.where())));
        }
        ParsedJson parsed = JsonParsing.parse(text.text());
        JsonNode root = parsed.root();
        if (root == null) {
            return reading(null, new ShowDocument(file, null, parsed.places(), Set.of()), parsed, List.of(), true);
        }
        @Nullable Finding version = version(root);
        if (version != null) {
            ShowDocument document = new ShowDocument(file, null, parsed.places(), Set.of());
            return reading(null, document, parsed, List.of(version), true);
        }
        ShowSchema.Verdict verdict = schema().judge(root, parsed.spoilt());
        ShowDocument document = new ShowDocument(file, root, parsed.places(), verdict.unknownKeys());
        List<Finding> findings = new ArrayList<>(verdict.findings());
        boolean clean = parsed.findings().isEmpty()
                && findings.stream().noneMatch(finding -> finding.severity() == Severity.ERROR);
        if (!clean) {
            return reading(null, document, parsed, findings, verdict.isWhole());
        }
        Refusals refusals = new Refusals();
        Optional<Show> show = ShowFromTree.show(root, refusals);
        findings.addAll(refusals.findings());
        return reading(show.orElse(null), document, parsed, findings, true);
    }

    /**
     * Writes a show over the file it was read from: unchanged values, the order of keys and keys the program does not
     * know stay. The file before is kept beside it.
     *
     * @param document what was read before
     * @return the file as it stands now
     * @throws ShowFileException if it cannot be written; the file is then as it was
     */
    public ShowDocument write(Path file, Show show, ShowDocument document) throws ShowFileException {
        return write(file, bytes(show, document));
    }

    /** Writes a new show; see {@link #write(Path, Show, ShowDocument)}. */
    public ShowDocument write(Path file, Show show) throws ShowFileException {
        return write(file, bytes(show, null));
    }

    private ShowDocument write(Path file, byte[] bytes) throws ShowFileException {
        saves.write(file, bytes);
        return read(file, bytes).document();
    }

    /** A show as a new file has it. */
    public byte[] bytes(Show show) {
        return bytes(show, null);
    }

    byte[] bytes(Show show, @Nullable ShowDocument document) {
        @Nullable JsonNode original = document == null ? null : document.root();
        Set<String> unknown = document == null ? Set.of() : document.unknownKeys();
        JsonNode root = Overlay.lay(ShowToTree.fresh(show), original, unknown);
        return JsonLayout.text(root).getBytes(StandardCharsets.UTF_8);
    }

    /** Loading the schema takes most of a second on a slow machine, so it waits until a file needs it. */
    private synchronized ShowSchema schema() {
        ShowSchema loaded = schema;
        if (loaded == null) {
            loaded = new ShowSchema();
            schema = loaded;
        }
        return loaded;
    }

    private static @Nullable Finding version(JsonNode root) {
        if (!root.isObject()) {
            return new Finding(
                    Severity.ERROR,
                    "not-a-show",
                    "the file holds " + Quoted.value(root) + " and not a show; a show file begins with {",
                    "");
        }
        JsonNode version = root.path(VERSION_KEY);
        if (version.isMissingNode()) {
            return new Finding(
                    Severity.ERROR,
                    "no-version",
                    "the file does not say that it is a show file; it needs \"crowdline\": " + ShowToTree.VERSION,
                    "");
        }
        if (!version.isNumber() || version.asDouble() != ShowToTree.VERSION) {
            return new Finding(
                    Severity.ERROR,
                    "wrong-version",
                    "the file says it is version " + Quoted.value(version) + "; this program reads version "
                            + ShowToTree.VERSION + ", so use the program it was written with or a newer one",
                    VERSION_KEY);
        }
        return null;
    }

    private static ShowReading reading(
            @Nullable Show show, ShowDocument document, ParsedJson parsed, List<Finding> findings, boolean isWhole) {
        List<LocatedFinding> located = new ArrayList<>();
        parsed.findings().forEach(found -> located.add(document.at(found.finding(), found.where())));
        located.addAll(document.locate(findings));
        List<LocatedFinding> sorted = ShowDocument.sorted(located);
        if (sorted.size() <= MOST_FINDINGS) {
            return new ShowReading(show, document, sorted);
        }
        List<LocatedFinding> first = new ArrayList<>(sorted.subList(0, MOST_FINDINGS));
        Finding rest = new Finding(
                Severity.ERROR,
                "more-findings",
                "there are " + (isWhole ? String.valueOf(sorted.size() - MOST_FINDINGS) : "many")
                        + " more findings; fix these first",
                "");
        first.add(document.at(rest, new Where(first.get(MOST_FINDINGS - 1).line(), 1)));
        return new ShowReading(show, document, first);
    }
}
