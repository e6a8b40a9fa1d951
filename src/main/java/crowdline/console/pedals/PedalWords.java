package crowdline.console.pedals;

import crowdline.console.keys.Command;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import java.util.Locale;

/** What is said while pedals and keys of remotes are learned and tried. */
final class PedalWords {
    private PedalWords() {}

    /** Begins a sentence. */
    private static String first(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    static Mark once(String button) {
        return new Mark(Form.ONE_OF_THREE, Tone.CALM, first(button) + " heard. Press it once more. Tab stops.");
    }

    static Mark ask(String what, String command) {
        return new Mark(
                Form.DIAMOND,
                Tone.CAUTION,
                first(what) + ". Enter moves it to " + command + ", Tab leaves it as it is.");
    }

    static Mark gives(String button, Command command) {
        return new Mark(Form.DISC, Tone.GOOD, first(button) + " gives " + command.label());
    }

    static Mark nothing(String button) {
        return new Mark(
                Form.RING,
                Tone.CALM,
                first(button) + " does nothing yet; choose a command and press Enter to learn it");
    }

    static Mark resting() {
        return new Mark(
                Form.RING,
                Tone.CALM,
                "Choose a command and press Enter to learn a button for it. A press now only shows what it would do.");
    }
}
