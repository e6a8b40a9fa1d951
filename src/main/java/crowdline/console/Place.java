package crowdline.console;

import crowdline.console.keys.Command;

/** The places of the window. */
public enum Place {
    PREPARE(Command.PREPARE),
    WORDS(Command.WORDS),
    LIVE(Command.LIVE),
    GLOSSARY(Command.GLOSSARY);

    private final Command command;

    Place(Command command) {
        this.command = command;
    }

    /** The command that goes there. */
    public Command command() {
        return command;
    }
}
