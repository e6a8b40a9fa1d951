package crowdline.console.keys;

import java.awt.event.KeyEvent;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;

/**
 * Everything the commentator can tell the console, with its keys. Keys are written as Swing's {@code KeyStroke} reads
 * them; a single character in quotes is matched by what it types, wherever the keyboard has it.
 *
 * <p>Function keys stand in the order of the places.
 *
 * <p>Presenter remotes and foot pedals type Page Down, Page Up, a full stop, F5 and Escape. The first two step; the
 * full stop marks a remark as said. F5 only goes to Live and Escape does nothing there, so that a button pressed by
 * mistake does no harm.
 */
public enum Command {
    INCIDENT("Incident page", Scope.FIRST, "Everything stops; the organiser's words", "F12"),

    NEXT("Next figure", Scope.LIVE, "The aircraft has begun the next figure", "SPACE", "PAGE_DOWN", "RIGHT"),
    BACK("Step back", Scope.LIVE, "Pressed too early: back to the figure before", "BACK_SPACE", "PAGE_UP", "LEFT"),
    HOLD("Hold or carry on", Scope.LIVE, "Stop the figure's clock, and start it again", "H"),
    DROP("Drop the next", Scope.LIVE, "The next figure will not be flown", "D"),
    UNDROP("Undo the drop", Scope.LIVE, "It will be flown after all", "shift D"),
    SWAP("Swap the next two", Scope.LIVE, "The one after the next comes first", "W"),
    OFF_PLAN("Off the plan, or back", Scope.LIVE, "Something else is being flown", "O"),
    SAID("Said", Scope.LIVE, "The remark has been said", "S", "ENTER", "PERIOD"),
    NOT_SAID("Not said", Scope.LIVE, "Leave this remark out", "X"),
    FILLER("Filler", Scope.LIVE, "Something to say in a gap", "F"),
    FACT_1("Fact 1", Scope.LIVE, "Take the first fact", "1", "NUMPAD1"),
    FACT_2("Fact 2", Scope.LIVE, "Take the second fact", "2", "NUMPAD2"),
    FACT_3("Fact 3", Scope.LIVE, "Take the third fact", "3", "NUMPAD3"),
    BY_HAND("Follow the keys", Scope.LIVE, "Only your keys move the act on", "M"),
    BY_CLOCK("Follow the clock", Scope.LIVE, "The clock moves the act on", "C"),
    BY_AIRCRAFT("Follow the aircraft", Scope.LIVE, "The aircraft's own position moves the act on", "A"),
    NEXT_ACT("Next act", Scope.LIVE, "Choose the act that comes next", "N"),
    VARIANT("Next variant", Scope.LIVE, "Change to another variant of this act", "V"),
    END_ACT("Act over", Scope.LIVE, "The act has ended", "E"),
    ASK_IN_LIVE("What is that?", Scope.LIVE, "A few questions about what you see; F5 leads back", "Q"),
    JOT("Note", Scope.LIVE, "Note this moment, with a few words if there is time", "J"),
    ANNOUNCE("Announcements", Scope.LIVE, "The organiser's words for an occasion; choose by number", "B"),
    LOOK_UP("Look up", Scope.LIVE, "A figure, word, name, act or fact, by its first letters", "L"),
    HAND_OVER("The other speaks next", Scope.LIVE, "Said in the second window; again to take it back", "Y"),
    ORDER("Running order", Scope.LIVE, "Every act and when to expect it; its own keys are shown in it", "R"),
    DUTIES("Duties of the day", Scope.LIVE, "What must be said today; S ticks one off", "U"),
    ORDER_UP("Act above", Scope.LIVE, "In the running order: the act before", "UP"),
    ORDER_DOWN("Act below", Scope.LIVE, "In the running order: the act after", "DOWN"),
    ALL_LATER("A minute later", Scope.LIVE, "In the running order: this act and all after it", "alt RIGHT"),
    ALL_EARLIER("A minute earlier", Scope.LIVE, "In the running order: this act and all after it", "alt LEFT"),
    ALL_MUCH_LATER("Ten minutes later", Scope.LIVE, "In the running order: this act and all after it", "alt PAGE_DOWN"),
    ALL_MUCH_EARLIER(
            "Ten minutes earlier", Scope.LIVE, "In the running order: this act and all after it", "alt PAGE_UP"),
    ONE_LATER("This act later", Scope.LIVE, "In the running order: this act alone, by a minute", "alt shift RIGHT"),
    ONE_EARLIER("This act earlier", Scope.LIVE, "In the running order: this act alone, by a minute", "alt shift LEFT"),
    ACT_UP("Before the act above", Scope.LIVE, "In the running order: the two change places", "alt UP"),
    ACT_DOWN("After the act below", Scope.LIVE, "In the running order: the two change places", "alt DOWN"),
    CANCEL_ACT("Cancel, or bring back", Scope.LIVE, "In the running order: this act", "DELETE"),
    CHOOSE_ACT("This act now", Scope.LIVE, "In the running order: choose it; one that is over, again", "ctrl ENTER"),
    PUT_IN_ACT("Put in an act", Scope.LIVE, "In the running order: one nobody planned, after this one", "INSERT"),
    TAKE_BACK("Take back", Scope.LIVE, "Take back the last key", "Z", "ctrl Z"),
    INCIDENT_IN_LIVE("Incident page", Scope.LIVE, "The same as F12", "I"),

    PLAY("Play or stop", Scope.WALK, "Fly the act on the screen; in timing, the next figure", "SPACE"),
    WALK_NEXT("Next figure", Scope.WALK, "To the start of the next figure", "RIGHT", "PAGE_DOWN"),
    WALK_BACK(
            "Figure before",
            Scope.WALK,
            "Back a figure; while timing, take a press back",
            "LEFT",
            "PAGE_UP",
            "BACK_SPACE"),
    SECOND_ON("A second on", Scope.WALK, "One second forward", "PERIOD"),
    SECOND_BACK("A second back", Scope.WALK, "One second back", "COMMA"),
    TO_START("To the start", Scope.WALK, "To the call of the first figure", "HOME"),
    TO_END("To the end", Scope.WALK, "To the end of the act", "END"),
    FASTER("Faster", Scope.WALK, "Up to four times as fast", "'+'"),
    SLOWER("Slower", Scope.WALK, "Down to a quarter of the speed", "'-'"),
    WALK_ACT("Next act", Scope.WALK, "Walk through another act", "A"),
    WALK_VARIANT("Next variant", Scope.WALK, "Another variant of the act", "V"),
    WALK_TIMES("Other times", Scope.WALK, "The prediction, then each pass", "W"),
    NOTE("Note", Scope.WALK, "Write a note on the figure", "N"),
    TIME_PASS("Time a pass", Scope.WALK, "Time the act as you walk it; again to stop", "P"),
    PRACTISE("Practise", Scope.WALK, "Read the remarks aloud and see how it went", "R"),
    READ_ALOUD("Read aloud", Scope.WALK, "In practice: a remark begins, or ends", "S"),
    READ_DONE("Just said", Scope.WALK, "In practice: a remark has just ended", "ENTER"),

    LATER_RUN("Next act", Scope.DEBRIEF, "The act flown after this", "RIGHT", "PAGE_DOWN"),
    EARLIER_RUN("Act before", Scope.DEBRIEF, "The act flown before this", "LEFT", "PAGE_UP"),
    DAY_CHARTS(
            "The day as charts", Scope.DEBRIEF, "Charts of the day and of each act, or back to the acts in words", "G"),
    OTHER_DAY("Another day beside it…", Scope.DEBRIEF, "Last year's day, or any other, beside this one", "O"),
    SAVE_TEXT("Save as text…", Scope.DEBRIEF, "The whole debrief as a text file", "S"),
    SAVE_TABLE("Save as table…", Scope.DEBRIEF, "The figures as comma-separated values", "C"),
    SAVE_DAY("Save the day…", Scope.DEBRIEF, "Acts, duties and talk of the day as comma-separated values", "D"),
    SAVE_JSON("Save as JSON…", Scope.DEBRIEF, "The whole debrief, for another program", "J"),
    SCORE_NEXT("Next flight", Scope.DEBRIEF, "After a practice flight: another one like it", "N"),
    SCORE_AGAIN("The same again", Scope.DEBRIEF, "After a practice flight: the same flight once more", "A"),
    SCORE_AWAY("Put the score away", Scope.DEBRIEF, "After a practice flight: back to the debrief of the day", "B"),
    ADD_REMARK("New remark", Scope.WORDS, "Add a remark after the chosen one", "ctrl K"),
    DELETE_REMARK("Delete the remark", Scope.WORDS, "Undo brings it back", "ctrl D"),
    REMARK_UP("Earlier", Scope.WORDS, "Move the remark up", "ctrl UP"),
    REMARK_DOWN("Later", Scope.WORDS, "Move the remark down", "ctrl DOWN"),
    PLAIN_WORDS("Plain words", Scope.WORDS, "Explain a trade word in plain words", "ctrl PERIOD"),
    EXPLAIN_WORD("Explain a word…", Scope.WORDS, "Explain the chosen word in the show's own glossary", "ctrl E"),
    FACT_REMARK("Make it a remark", Scope.WORDS, "Turn the chosen fact into a remark", "ctrl F"),
    ACCEPT("Accept the draft", Scope.WORDS, "These words, and their translation, are right", "ctrl ENTER"),
    ACCEPT_ALL("Accept every draft", Scope.WORDS, "Every one in the chosen act", "ctrl shift ENTER"),

    FIND("Search", Scope.GLOSSARY, "Find pages by any word in them", "ctrl F"),
    SIFT("Figures, words, or both", Scope.GLOSSARY, "What the list has in it", "ctrl K"),
    PAGE_1("First page named here", Scope.GLOSSARY, "Open the first of the pages named under this one", "alt 1"),
    PAGE_2("Second page named here", Scope.GLOSSARY, "Open the second", "alt 2"),
    PAGE_3("Third page named here", Scope.GLOSSARY, "Open the third", "alt 3"),
    PAGE_4("Fourth page named here", Scope.GLOSSARY, "Open the fourth", "alt 4"),
    PAGE_5("Fifth page named here", Scope.GLOSSARY, "Open the fifth", "alt 5"),
    PAGE_6("Sixth page named here", Scope.GLOSSARY, "Open the sixth", "alt 6"),
    PAGE_BACK("The page before", Scope.GLOSSARY, "Go back to where the last page was opened from", "alt LEFT"),
    FLY("Fly it", Scope.GLOSSARY, "Fly the figure as the crowd sees it, or stop it", "F8"),
    NEXT_MOMENT("Next moment", Scope.GLOSSARY, "To the next moment there is something to see", "alt PERIOD"),
    MOMENT_BEFORE("Moment before", Scope.GLOSSARY, "To the moment before", "alt COMMA"),
    FLY_FASTER("Faster", Scope.GLOSSARY, "Fly it up to four times as fast", "alt UP"),
    FLY_SLOWER("Slower", Scope.GLOSSARY, "Fly it down to a quarter of the speed", "alt DOWN"),
    FLOWN_BY("Another aircraft", Scope.GLOSSARY, "Fly it with the next kind of aircraft", "alt K"),
    OWN_WORDS("In your own words…", Scope.GLOSSARY, "Explain this in the show's own words", "ctrl E"),
    NEW_WORD("A new word…", Scope.GLOSSARY, "Explain a word that is not in the list", "ctrl INSERT", "ctrl shift E"),
    KEEP_WORDS("Keep the words", Scope.GLOSSARY, "Keep what was written as the show's own words", "ctrl ENTER"),
    NOT_OWN("Without own words", Scope.GLOSSARY, "Remove the show's own words for this", "ctrl DELETE"),
    DRILL("Drill", Scope.GLOSSARY, "Questions about all figures. Start or stop", "ctrl D"),
    DRILL_ACT(
            "Drill this show or one act",
            Scope.GLOSSARY,
            "Only the figures of this show; again for its first act, its second",
            "ctrl shift D"),
    DRILL_1("First name", Scope.GLOSSARY, "In the drill, or in \"What is that?\": the first answer", "1", "NUMPAD1"),
    DRILL_2("Second name", Scope.GLOSSARY, "In the drill, or in \"What is that?\": the second answer", "2", "NUMPAD2"),
    DRILL_3("Third name", Scope.GLOSSARY, "In the drill, or in \"What is that?\": the third answer", "3", "NUMPAD3"),
    DRILL_4("Fourth name", Scope.GLOSSARY, "In the drill, or in \"What is that?\": the fourth answer", "4", "NUMPAD4"),
    ANSWER_5("Fifth answer", Scope.GLOSSARY, "In \"What is that?\": the fifth answer", "5", "NUMPAD5"),
    ANSWER_6("Sixth answer", Scope.GLOSSARY, "In \"What is that?\": the sixth answer", "6", "NUMPAD6"),
    NOT_SURE("Not sure", Scope.GLOSSARY, "In \"What is that?\": leave the question open", "0", "NUMPAD0"),
    ASK_BACK("Answer before", Scope.GLOSSARY, "In \"What is that?\": back to the answer before", "BACK_SPACE"),
    ASK("What is that?", Scope.GLOSSARY, "A few questions about what you saw, to find the figure", "alt Q"),
    DRILL_ON(
            "Next question",
            Scope.GLOSSARY,
            "In the drill: what the glossary says, or the next question",
            "SPACE",
            "ENTER"),

    PASTE_LIST("Paste the pilot's list…", Scope.PREPARE, "Add an act from the list the pilot sent", "ctrl I"),
    CELLS(
            "Cells of a spreadsheet…",
            Scope.PREPARE,
            "Take acts or remarks from one, or copy them for it",
            "ctrl shift I"),
    MAKE_ACT("Make the act", Scope.PREPARE, "From the list you pasted", "ctrl ENTER"),
    ADD("Add", Scope.PREPARE, "An act, or a figure when figures are chosen", "INSERT", "ctrl INSERT"),
    REMOVE("Remove", Scope.PREPARE, "The chosen act or figure; undo brings it back", "DELETE"),
    EARLIER("Earlier", Scope.PREPARE, "Move the chosen act or figure up", "alt UP"),
    LATER("Later", Scope.PREPARE, "Move the chosen act or figure down", "alt DOWN"),
    DUPLICATE("Duplicate the act", Scope.PREPARE, "Put a copy straight after it", "ctrl D"),
    TO_THE_LEFT("Further left", Scope.PREPARE, "Move the figure 50 m along the line", "alt LEFT"),
    TO_THE_RIGHT("Further right", Scope.PREPARE, "Move the figure 50 m along the line", "alt RIGHT"),
    HIGHER("Higher", Scope.PREPARE, "Begin the figure 50 ft higher", "alt PAGE_UP"),
    LOWER("Lower", Scope.PREPARE, "Begin the figure 50 ft lower", "alt PAGE_DOWN"),
    LONGER("Longer", Scope.PREPARE, "Fly its lines and slow rolls a second longer", "alt shift RIGHT"),
    SHORTER("Shorter", Scope.PREPARE, "Fly its lines and slow rolls a second shorter", "alt shift LEFT"),
    LAY_OUT("Lay the act out", Scope.PREPARE, "Afresh for today's air, or for an act drawn by hand", "ctrl shift L"),
    DRAFT_FIGURE(
            "Draft the figure's words", Scope.PREPARE, "For the chosen figure, if nobody has written any", "ctrl J"),
    DRAFT_ACT(
            "Draft the act's words",
            Scope.PREPARE,
            "In every figure without words; what is there stays",
            "ctrl shift J"),
    PAGE_ACTS("Acts", Scope.PREPARE, "The acts and their figures", "ctrl 1"),
    PAGE_SHOW("Show", Scope.PREPARE, "The day, the place, the limits and the air", "ctrl 2"),
    PAGE_AIRCRAFT("Aircraft", Scope.PREPARE, "What flies", "ctrl 3"),
    PAGE_PEOPLE("People", Scope.PREPARE, "Who flies, how names are said, facts", "ctrl 4"),
    PAGE_ANNOUNCEMENTS("Announcements", Scope.PREPARE, "Words for when something goes wrong", "ctrl 5"),
    PAGE_DUTIES("Duties", Scope.PREPARE, "What must be said on the day, and pieces for the gaps", "ctrl 6"),
    METAR("Paste a METAR…", Scope.PREPARE, "Take the day's air from a weather report", "ctrl M"),

    UNDO("Undo", Scope.EDIT, "Take back the last change to the show", "ctrl Z"),
    REDO("Redo", Scope.EDIT, "Make the change again", "ctrl Y", "ctrl shift Z"),

    NEW_SHOW("New show", Scope.WINDOW, "Begin an empty show, in Prepare", "ctrl N"),
    OPEN("Open a show…", Scope.WINDOW, "Choose a show file", "ctrl O"),
    SAVE("Save", Scope.WINDOW, "Save the show in its file", "ctrl S"),
    SAVE_AS("Save as…", Scope.WINDOW, "Save the show in another file", "ctrl shift S"),
    INTO_LIVE("Use in Live", Scope.WINDOW, "Save, and take the changes into Live", "ctrl L"),
    PRINT("Print…", Scope.WINDOW, "Cue cards and all other paper", "ctrl P"),
    PRACTICE_FLIGHT("Practice flight…", Scope.WINDOW, "Try Live on an invented flight; again to leave it", "ctrl G"),
    RECEIVER("Receiver…", Scope.WINDOW, "Where positions come from", "ctrl R"),
    PEDALS("Pedals and remotes…", Scope.WINDOW, "What a pedal or a remote's buttons do", "ctrl B"),
    LISTEN("Listen, or stop", Scope.WINDOW, "The microphone measures talk and quiet in Live", "ctrl H"),
    PACE("Speaker and pace…", Scope.WINDOW, "Whose pace to use for the times", "ctrl U"),
    NEXT_SPEAKER("Next speaker", Scope.WINDOW, "Use the pace of the next speaker", "ctrl shift P"),
    PREPARE("Prepare", Scope.WINDOW, "The show at a glance", "F2"),
    WORDS("Words", Scope.WINDOW, "Write the remarks", "F3"),
    WALK("Walk through", Scope.WINDOW, "Fly the act on the screen", "F4"),
    LIVE("Live", Scope.WINDOW, "The running show", "F5"),
    DEBRIEF("Debrief", Scope.WINDOW, "What was flown and said", "F6"),
    GLOSSARY("Glossary", Scope.WINDOW, "Every figure explained", "F7"),
    THEME("Next theme", Scope.WINDOW, "Sunlight, day, night", "T", "ctrl T"),
    LARGER("Larger", Scope.WINDOW, "Everything larger", "ctrl PLUS", "ctrl EQUALS", "ctrl shift EQUALS", "ctrl ADD"),
    SMALLER("Smaller", Scope.WINDOW, "Everything smaller", "ctrl MINUS", "ctrl SUBTRACT"),
    FULL_SCREEN("Full screen", Scope.WINDOW, "Fill the screen, or go back to a window", "F11"),
    SECOND_WINDOW("Second window", Scope.WINDOW, "For a second speaker; see the View menu", "ctrl F11"),
    SECOND_FULL("Second: full screen", Scope.WINDOW, "The second window fills the screen it is on", "shift F11"),
    SECOND_THEME("Second: next theme", Scope.WINDOW, "The colours of the second window", "ctrl shift T"),
    SECOND_SPEAKER("Second: next speaker", Scope.WINDOW, "Who is at the second window", "ctrl shift F11"),
    SECOND_LARGER("Second: larger", Scope.WINDOW, "Everything larger in the second window", "ctrl shift PAGE_UP"),
    SECOND_SMALLER("Second: smaller", Scope.WINDOW, "Everything smaller in the second window", "ctrl shift PAGE_DOWN"),
    HELP("Keys", Scope.WINDOW, "What the keys do", "F1", "'?'"),
    EXPLAIN("Help…", Scope.WINDOW, "This place explained, and everything else", "ctrl F1", "shift F1"),
    TOUR("Tour", Scope.WINDOW, "Two minutes on the demo show", "F9"),
    TOUR_BACK("Back in the tour", Scope.WINDOW, "The step before", "shift F9"),
    QUIT("Quit", Scope.WINDOW, "Close the console", "ctrl Q");

    /** Where a command can be given. */
    public enum Scope {
        /**
         * In every window of the program, before anything else hears the key, whatever is open or written in and whatever
         * else is held down. Such a key belongs to nothing else and cannot be learned for anything else.
         */
        FIRST,
        /** In the Live place only. */
        LIVE,
        /** In the Walk through place only. */
        WALK,
        /** In the Debrief place only. */
        DEBRIEF,
        /** In the Glossary only. */
        GLOSSARY,
        /** In the Prepare place only. */
        PREPARE,
        /** In the Words place only. */
        WORDS,
        /** Anywhere in the window but in Live, where a step back is one of the running show. */
        EDIT,
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

    /** The name of its action. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public String label() {
        return label;
    }

    public Scope scope() {
        return scope;
    }

    /** Whether it is given in the running order that is open in Live. */
    public boolean isInRunningOrder() {
        return EnumSet.range(ORDER_UP, PUT_IN_ACT).contains(this);
    }

    /** What it does, in one sentence. */
    public String help() {
        return help;
    }

    /** Whether a press gives it before anything else hears the key. */
    public boolean isHeardFirst(KeyEvent press) {
        return scope == Scope.FIRST && keys.stream().anyMatch(key -> Keys.isKeyOf(key, press));
    }

    /** Its first key in words, such as "Space". */
    public String key() {
        return Keys.inWords(keys.get(0));
    }

    /** Its keys; the first is the one shown. */
    public List<String> keys() {
        return keys;
    }
}
