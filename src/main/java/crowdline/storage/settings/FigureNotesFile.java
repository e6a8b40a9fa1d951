package crowdline.storage.settings;

import crowdline.show.FigureNote;
import crowdline.storage.file.AtomicFile;
import crowdline.storage.file.OwnerOnly;
import crowdline.storage.file.Sha256;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.file.ShowText;
import crowdline.storage.json.JsonLayout;
import crowdline.storage.json.JsonParsing;
import crowdline.storage.json.ParsedJson;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The notes on the figures of one show, in a file of their own in the program's own folder. */
public final class FigureNotesFile {
    private static final String VERSION_KEY = "crowdlineNotes";
    private static final int VERSION = 1;

    private final Path file;
    private final Path show;

    /**
     * @param folder where notes are kept; it need not exist
     * @param show the show file they belong to
     */
    public FigureNotesFile(Path folder, Path show) {
        // The name of the show is only there to be recognised; the hash tells two folders apart.
        String name = String.valueOf(show.getFileName()).replaceAll("[^A-Za-z0-9._-]", "_");
        this.file = folder.resolve(
                name + "-" + Sha256.ofName(show.toAbsolutePath().normalize().toString()) + ".json");
        this.show = show;
    }

    /**
     * The notes there are.
     *
     * @throws ShowFileException if the file is there and cannot be read, with one sentence for the user
     */
    public List<FigureNote> read() throws ShowFileException {
        if (!Files.exists(file)) {
            return List.of();
        }
        OwnerOnly.withFolder(file);
        ShowText text = ShowText.decode(ShowText.bytes(file));
        ParsedJson parsed = JsonParsing.parse(text.text());
        JsonNode root = parsed.root();
        if (text.fault() != null
                || root == null
                || !parsed.findings().isEmpty()
                || root.path(VERSION_KEY).asInt(0) != VERSION) {
            throw new ShowFileException(
                    "the notes in " + file + " cannot be read; correct the file or move it away, and start again");
        }
        List<FigureNote> notes = new ArrayList<>();
        for (JsonNode node : root.path("notes")) {
            try {
                notes.add(new FigureNote(
                        node.path("act").asString(""),
                        node.path("figure").asString(""),
                        node.path("text").asString("")));
            } catch (IllegalArgumentException e) {
                throw new ShowFileException(
                        "a note in " + file + " cannot be used: " + e.getMessage() + "; correct it or take it out");
            }
        }
        return List.copyOf(notes);
    }

    /**
     * Saves the notes; what was there before is kept beside them.
     *
     * @throws ShowFileException if they cannot be saved, with one sentence for the user
     */
    public void write(List<FigureNote> notes) throws ShowFileException {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put(VERSION_KEY, VERSION);
        root.put("show", show.toAbsolutePath().normalize().toString());
        ArrayNode list = root.putArray("notes");
        for (FigureNote note : notes) {
            ObjectNode node = list.addObject();
            node.put("act", note.actId());
            node.put("figure", note.figureId());
            node.put("text", note.text());
        }
        try {
            OwnerOnly.folderOf(file);
        } catch (IOException e) {
            throw new ShowFileException("the folder of the notes, " + file.getParent() + ", cannot be made", e);
        }
        AtomicFile.ownerOnly().write(file, JsonLayout.text(root).getBytes(StandardCharsets.UTF_8));
    }
}
