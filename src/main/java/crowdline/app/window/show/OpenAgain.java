package crowdline.app.window.show;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.loaded.ShowRemarks;
import crowdline.show.Show;
import crowdline.show.check.LocatedFinding;
import crowdline.storage.journal.JournalShow;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What becomes of the open show when its file is opened again: its act, position and clock go on, and words that have
 * changed in the file come in.
 *
 * @param isAnew whether it has to be opened anew for what has changed, which nothing forbids
 * @param taken the show with the words of its file, or null if it stays as it is
 * @param ofFile what was found in the file
 * @param said one sentence
 */
record OpenAgain(boolean isAnew, @Nullable LoadedShow taken, List<LocatedFinding> ofFile, Mark said) {
    private static final Mark ANEW = new Mark(Form.RING, Tone.CALM, "Opening it again");

    OpenAgain {
        ofFile = List.copyOf(ofFile);
    }

    static OpenAgain of(
            OpenShow open, ShowLoader.Result known, JournalShow identity, Supplier<ShowLoader.Result> reading) {
        String name = String.valueOf(open.file().getFileName());
        boolean barred = open.running().desk().snapshot().state().mustNotBeLeft();
        if (open.identity().sha256().equals(identity.sha256())) {
            return as(known, Form.DISC, Tone.GOOD, name + " is open already and carries on where it is");
        }
        ShowLoader.Result read = reading.get();
        LoadedShow next = read.loaded();
        if (next == null) {
            return barred
                    ? as(known, Form.STOP, Tone.ALARM, name + " has errors now, so Live keeps the version it had")
                    : new OpenAgain(true, null, List.of(), ANEW);
        }
        LoadedShow now = open.running().loaded();
        Show sameAir = now.show().withAir(next.show().air());
        boolean otherAir = !sameAir.equals(now.show());
        if (!ShowRemarks.none(next.show()).equals(ShowRemarks.none(sameAir)) || (otherAir && !barred)) {
            return barred
                    ? as(
                            known,
                            Form.DIAMOND,
                            Tone.CAUTION,
                            name + " has changed in more than its words; press E in Live when the act is over, then"
                                    + " open it"
                                    + " again")
                    : new OpenAgain(true, null, List.of(), ANEW);
        }
        return new OpenAgain(
                false,
                now.withWords(next.show()),
                read.ofFile(),
                new Mark(Form.DISC, Tone.GOOD, "Live says the words of " + name + " as they stand in the file now"));
    }

    private static OpenAgain as(ShowLoader.Result known, Form form, Tone tone, String words) {
        return new OpenAgain(false, null, known.ofFile(), new Mark(form, tone, words));
    }
}
