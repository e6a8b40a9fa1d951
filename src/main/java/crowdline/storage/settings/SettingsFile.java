package crowdline.storage.settings;

import crowdline.measure.Measures;
import crowdline.storage.file.AtomicFile;
import crowdline.storage.file.OwnerOnly;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.file.ShowText;
import crowdline.storage.json.JsonLayout;
import crowdline.storage.json.JsonParsing;
import crowdline.storage.json.ParsedJson;
import crowdline.telemetry.serial.ButtonSignal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The settings, in a folder of their own. Settings that cannot be read never stop the program. */
public final class SettingsFile {
    private static final String NAME = "settings.json";

    private final Path folder;
    private final AtomicFile saves = AtomicFile.ownerOnly();

    /**
     * Settings as read.
     *
     * @param settings what is to be used
     * @param said one sentence for the user if the file was broken, else null
     */
    public record Reading(Settings settings, @Nullable String said) {}

    /** @param folder where the settings are kept; it need not exist yet */
    public SettingsFile(Path folder) {
        this.folder = folder;
    }

    /** The settings; the defaults if there are none, or if they are broken, which are then kept aside. */
    public Reading read() {
        Path file = folder.resolve(NAME);
        if (!Files.exists(file)) {
            return new Reading(Settings.DEFAULT, null);
        }
        OwnerOnly.withFolder(file);
        try {
            return new Reading(settings(ShowText.bytes(file, ShowText.MOST_BYTES_OF_A_FEW_LINES)), null);
        } catch (ShowFileException e) {
            return new Reading(Settings.DEFAULT, e.getMessage() + "; the default settings are used");
        } catch (IllegalArgumentException e) {
            return new Reading(Settings.DEFAULT, aside(file, String.valueOf(e.getMessage())));
        }
    }

    /**
     * Saves the settings.
     *
     * @throws ShowFileException if they cannot be saved, with one sentence for the user
     */
    public void write(Settings settings) throws ShowFileException {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        ArrayNode recent = node.putArray("recentFiles");
        settings.recentFiles().forEach(path -> recent.add(path.toString()));
        node.put("theme", settings.theme());
        node.put("zoom", settings.zoom());
        String speaker = settings.speaker();
        if (speaker != null) {
            node.put("speaker", speaker);
        }
        Measures measures = settings.measures();
        if (!measures.equals(Measures.USUAL)) {
            node.put("units", measures.asAsked());
        }
        write(settings.buttons(), node);
        // Not said in files from before, where there was no such window.
        if (settings.skyApart()) {
            node.put("skyApart", true);
        }
        // Nor in these, which had no microphone in Live.
        if (settings.listens()) {
            node.put("listens", true);
        }
        if (!settings.second().equals(SecondLook.DEFAULT)) {
            write(settings.second(), node.putObject("second"));
        }
        try {
            OwnerOnly.folder(folder);
        } catch (IOException e) {
            throw ShowFileException.noFolder("the settings folder", folder, e);
        }
        saves.write(folder.resolve(NAME), JsonLayout.text(node).getBytes(StandardCharsets.UTF_8));
    }

    private static void write(SecondLook look, ObjectNode node) {
        node.put("theme", look.theme()).put("zoom", look.zoom());
        SecondLook.Place place = look.place();
        if (place != null) {
            node.put("x", place.x())
                    .put("y", place.y())
                    .put("width", place.width())
                    .put("height", place.height());
        }
        if (look.speaker() != null) {
            node.put("speaker", look.speaker());
        }
    }

    /** As it looks at first where nothing is said of it, as in files from before. */
    private static SecondLook second(JsonNode node) {
        SecondLook usual = SecondLook.DEFAULT;
        return new SecondLook(
                node.path("theme").asString(usual.theme()),
                node.path("zoom").asDouble(usual.zoom()),
                node.has("width")
                        ? new SecondLook.Place(
                                node.path("x").asInt(0),
                                node.path("y").asInt(0),
                                node.path("width").asInt(0),
                                node.path("height").asInt(0))
                        : null,
                speaker(node));
    }

    private static @Nullable String speaker(JsonNode second) {
        String name = second.path("speaker").asString("");
        return name.isBlank() ? null : name;
    }

    private static void write(LearnedButtons buttons, ObjectNode settings) {
        if (buttons.equals(LearnedButtons.NONE)) {
            return;
        }
        ObjectNode node = settings.putObject("buttons");
        String port = buttons.port();
        if (port != null) {
            node.put("port", port);
        }
        if (buttons.baud() != LearnedButtons.USUAL_BAUD) {
            node.put("baud", buttons.baud());
        }
        ObjectNode pedals = node.putObject("pedals");
        buttons.pedals().forEach((signal, command) -> pedals.put(signal.code(), command));
        ObjectNode keys = node.putObject("keys");
        buttons.keys().forEach(keys::put);
    }

    private static LearnedButtons buttons(JsonNode node) {
        Map<ButtonSignal, String> pedals = new LinkedHashMap<>();
        node.path("pedals").properties().forEach(entry -> pedals.put(signal(entry.getKey()), text(entry.getValue())));
        Map<String, String> keys = new LinkedHashMap<>();
        node.path("keys").properties().forEach(entry -> keys.put(entry.getKey(), text(entry.getValue())));
        return new LearnedButtons(
                node.has("port") ? text(node.path("port")) : null, baud(node.path("baud")), pedals, keys);
    }

    private static int baud(JsonNode node) {
        if (node.isMissingNode()) {
            return LearnedButtons.USUAL_BAUD;
        }
        double baud = node.isNumber() ? node.doubleValue() : Double.NaN;
        if (!(baud == Math.rint(baud) && Math.abs(baud) < Integer.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    LearnedButtons.speed(String.valueOf(node)) + "; it must be a whole number such as 9600");
        }
        return (int) baud;
    }

    private static ButtonSignal signal(String code) {
        return ButtonSignal.of(code)
                .orElseThrow(() -> new IllegalArgumentException(
                        "a pedal is \"" + code + "\"; it must be like \"byte 49\" or \"CTS on\""));
    }

    private static String text(JsonNode node) {
        return node.asString("");
    }

    private static Settings settings(byte[] bytes) {
        ShowText text = ShowText.decode(bytes);
        ParsedJson parsed = JsonParsing.parse(text.text());
        JsonNode root = parsed.root();
        if (text.fault() != null
                || root == null
                || !root.isObject()
                || !parsed.findings().isEmpty()) {
            throw new IllegalArgumentException("they are not JSON");
        }
        List<Path> recent = new ArrayList<>();
        root.path("recentFiles").forEach(path -> recent.add(Path.of(path.asString(""))));
        return new Settings(
                recent,
                root.path("theme").asString(Settings.DEFAULT.theme()),
                root.path("zoom").asDouble(Settings.DEFAULT.zoom()),
                root.has("speaker") ? root.path("speaker").asString("") : null,
                buttons(root.path("buttons")),
                Measures.of(root.path("units").asString(Measures.USUAL.asAsked())),
                root.path("skyApart").asBoolean(false),
                root.path("listens").asBoolean(false),
                second(root.path("second")));
    }

    private static String aside(Path file, String why) {
        Path broken = file.resolveSibling(NAME + ".broken");
        String message =
                "the settings could not be used (" + why + "); the default settings are used, and the old ones ";
        try {
            Files.move(file, broken, StandardCopyOption.REPLACE_EXISTING);
            return message + "are kept in " + broken;
        } catch (IOException e) {
            return message + "stay in " + file + " until the next save";
        }
    }
}
