package crowdline.console.keys;

import java.util.List;
import java.util.Locale;

/**
 * Everything the commentator can tell the console, with its keys. Keys are written as Swing's {@code KeyStroke} reads
 * them; a single character in quotes is matched by what it types, wherever the keyboard has it.
 *
 * <p>Presenter remotes and foot pedals type Page Down, Page Up, a full stop, F5 and Escape. The first two step; the
 * full stop marks a remark as said. F5 and Escape do nothing in Live, so that a button pressed by mistake does no harm.
 */
public enum Command {
    NEXT("Next figure", Scope.LIVE, "The aircraft has begun the next figure", "SPACE", "PAGE_DOWN", "RIGHT"),
    BACK("Step back", Scope.LIVE, "It was too early: back to the figure before", "BACK_SPACE", "PAGE_UP", "LEFT"),
    HOLD("Hold or go on", Scope.LIVE, "Stop the clock of the act, and start it again", "H"),
    DROP("Drop the next", Scope.LIVE, "The next figure will not be flown", "D"),
    UNDROP("Take the drop back", Scope.LIVE, "It will be flown after all", "shift D"),
    OFF_PLAN("Off plan or back", Scope.LIVE, "Something else is being flown", "O"),
    SAID("Said", Scope.LIVE, "The remark has been said", "S", "ENTER", "PERIOD"),
    NOT_SAID("Not said", Scope.LIVE, "Leave this remark out", "X"),
    FILLER("Filler", Scope.LIVE, "Something to say in a gap", "F"),
    FACT_1("Fact 1", Scope.LIVE, "Take the first fact", "1", "NUMPAD1"),
    FACT_2("Fact 2", Scope.LIVE, "Take the second fact", "2", "NUMPAD2"),
    FACT_3("Fact 3", Scope.LIVE, "Take the third fact", "3", "NUMPAD3"),
    BY_HAND("By hand", Scope.LIVE, "Only the keys move the position", "M"),
    BY_CLOCK("By clock", Scope.LIVE, "The clock moves the position", "C"),
    BY_AIRCRAFT("By aircraft", Scope.LIVE, "The aircraft's own position moves the act", "A"),
    NEXT_ACT("Next act", Scope.LIVE, "Choose the act that comes next", "N"),
    VARIANT("Next variant", Scope.LIVE, "Fly another variant of this act", "V"),
    END_ACT("Act over", Scope.LIVE, "The act has ended", "E"),
    TAKE_BACK("Take back", Scope.LIVE, "Undo the last thing done by hand", "Z", "ctrl Z"),
    INCIDENT("Incident page", Scope.LIVE, "Everything stops; the organiser's words", "I"),

    SAVE("Save", Scope.WORDS, "Write the words into the show's file", "ctrl S"),
    SAVE_AS("Save as…", Scope.WORDS, "Write them into another file", "ctrl shift S"),
    UNDO("Undo", Scope.WORDS, "Take the last change back", "ctrl Z"),
    REDO("Redo", Scope.WORDS, "Make it again", "ctrl Y", "ctrl shift Z"),
    ADD_REMARK("New remark", Scope.WORDS, "After the chosen one", "ctrl N"),
    DELETE_REMARK("Delete the remark", Scope.WORDS, "Undo brings it back", "ctrl D"),
    REMARK_UP("Earlier", Scope.WORDS, "Say the remark before the one above it", "ctrl UP"),
    REMARK_DOWN("Later", Scope.WORDS, "Say it after the one below it", "ctrl DOWN"),
    PLAIN_WORDS("Plain words", Scope.WORDS, "Put them in after the trade word", "ctrl PERIOD"),
    INTO_LIVE("Into Live", Scope.WORDS, "Save, and let Live say these words", "ctrl L"),

    OPEN("Open a show…", Scope.WINDOW, "Choose a show file", "ctrl O"),
    METAR("Paste a METAR…", Scope.WINDOW, "The air of the day from a report, in Prepare", "ctrl M"),
    RECEIVER("Receiver…", Scope.WINDOW, "Where the aircraft's position comes from", "ctrl R"),
    PACE("Speaker and pace…", Scope.WINDOW, "Whose pace the times are for; time a speaker", "ctrl P"),
    NEXT_SPEAKER("Next speaker", Scope.WINDOW, "The times of the next speaker who was timed", "ctrl shift P"),
    PREPARE("Prepare", Scope.WINDOW, "The show at a glance", "F2"),
    WORDS("Words", Scope.WINDOW, "Write the remarks", "F3"),
    LIVE("Live", Scope.WINDOW, "The running show", "F4"),
    GLOSSARY("Glossary", Scope.WINDOW, "Every figure explained", "F7"),
    THEME("Next theme", Scope.WINDOW, "Sunlight, day, night", "T", "ctrl T"),
    LARGER("Larger", Scope.WINDOW, "Everything larger", "ctrl PLUS", "ctrl EQUALS", "ctrl shift EQUALS", "ctrl ADD"),
    SMALLER("Smaller", Scope.WINDOW, "Everything smaller", "ctrl MINUS", "ctrl SUBTRACT"),
    FULL_SCREEN("Full screen", Scope.WINDOW, "All of the screen, or a window", "F11"),
    HELP("Keys", Scope.WINDOW, "What the keys do", "F1", "'?'"),
    QUIT("Quit", Scope.WINDOW, "Close the console", "ctrl Q");

    /** Where a command can be given. */
    public enum Scope {
        /** In the Live place only. */
        LIVE,
        /** In the Words place only. */
        WORDS,
        /** Anywhere in the window. */
        WINDOW
    }

    private final String label;
    private final Scope scope;
    private final String help;

    @SuppressWarnings("ImmutableEnumChecker") // filled by List.of, so it never changes
    private final List<String> keys;

    Command(String label, Scope scope, String help, String... keys) {
        this.label = label;
        this.scope = scope;
        this.help = help;
        this.keys = List.of(keys);
    }

    /** A stable name for settings and journals. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public String label() {
        return label;
    }

    public Scope scope() {
        return scope;
    }

    /** What it does, in one sentence. */
    public String help() {
        return help;
    }

    /** Its keys; the first is the one shown. */
    public List<String> keys() {
        return keys;
    }
}
