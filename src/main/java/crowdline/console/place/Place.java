package crowdline.console.place;

import crowdline.console.keys.Command;

/** The places of the window. */
public enum Place {
    PREPARE(Command.PREPARE),
    WORDS(Command.WORDS),
    WALK(Command.WALK),
    LIVE(Command.LIVE),
    DEBRIEF(Command.DEBRIEF),
    GLOSSARY(Command.GLOSSARY);

    private final Command command;

    Place(Command command) {
        this.command = command;
    }

    /** The scope of the keys that are its own. */
    public Command.Scope scope() {
        return switch (this) {
            case PREPARE -> Command.Scope.PREPARE;
            case WORDS -> Command.Scope.WORDS;
            case WALK -> Command.Scope.WALK;
            case DEBRIEF -> Command.Scope.DEBRIEF;
            case GLOSSARY -> Command.Scope.GLOSSARY;
            case LIVE -> Command.Scope.LIVE;
        };
    }

    /**
     * The place whose commands are in a scope.
     *
     * @throws IllegalArgumentException for those of the whole window
     */
    public static Place of(Command.Scope scope) {
        return switch (scope) {
            case PREPARE -> PREPARE;
            case WORDS -> WORDS;
            case WALK -> WALK;
            case LIVE -> LIVE;
            case DEBRIEF -> DEBRIEF;
            case GLOSSARY -> GLOSSARY;
            case FIRST, EDIT, WINDOW -> throw new IllegalArgumentException(scope + " is no place");
        };
    }

    /** The command that goes there. */
    public Command command() {
        return command;
    }
}
