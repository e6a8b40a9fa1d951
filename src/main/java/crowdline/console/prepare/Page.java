package crowdline.console.prepare;

import crowdline.console.keys.Command;

/** What Prepare has pages for. */
enum Page {
    ACTS("Acts", Command.PAGE_ACTS),
    SHOW("Show", Command.PAGE_SHOW),
    AIRCRAFT("Aircraft", Command.PAGE_AIRCRAFT),
    PEOPLE("People", Command.PAGE_PEOPLE),
    ANNOUNCEMENTS("Announcements", Command.PAGE_ANNOUNCEMENTS),
    DUTIES("Duties", Command.PAGE_DUTIES);

    private final String word;
    private final Command command;

    Page(String word, Command command) {
        this.word = word;
        this.command = command;
    }

    String word() {
        return word;
    }

    Command command() {
        return command;
    }
}
