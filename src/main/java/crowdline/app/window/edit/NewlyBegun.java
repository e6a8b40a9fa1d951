package crowdline.app.window.edit;

import crowdline.console.ConsoleFrame;
import crowdline.console.keys.Command;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;

/** Shows the show that was begun, and says what comes next: whoever has none yet does not know. */
final class NewlyBegun {
    private static final String NEXT =
            "Name the new show and its day here; " + Command.PASTE_LIST.key() + " takes in the pilot's list";

    private NewlyBegun() {}

    static void show(ConsoleFrame frame) {
        frame.showNew();
        frame.say(new Mark(Form.RING, Tone.CALM, NEXT));
    }
}
