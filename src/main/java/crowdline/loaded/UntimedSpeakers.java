package crowdline.loaded;

import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.bounds.Written;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import crowdline.show.figure.Remark;
import crowdline.show.figure.Translation;
import crowdline.speech.pace.Paces;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Finds who speaks at a show at the usual pace because nobody timed them: paces lie on a machine, not in the show. */
public final class UntimedSpeakers {
    private UntimedSpeakers() {}

    /** One finding for each speaker who is there, has something to say, and was never timed. */
    public static List<Finding> of(Show show, Paces paces) {
        List<Speaker> all = show.speakers().all();
        List<Finding> found = new ArrayList<>();
        for (int s = 0; s < all.size(); s++) {
            Speaker speaker = all.get(s);
            if (!speaker.away() && !paces.isTimed(speaker, show.speakers()) && speaks(show, speaker)) {
                found.add(new Finding(
                        Severity.NOTE,
                        "speaker-not-timed",
                        "nobody has timed " + Written.quoted(speaker.name())
                                + " here, so the usual 160 words a minute is used; Ctrl+U times a speaker",
                        "speakers[" + s + "].name"));
            }
        }
        return found;
    }

    private static boolean speaks(Show show, Speaker speaker) {
        return show.everyRemark().flatMap(UntimedSpeakers::named).anyMatch(speaker::isCalled);
    }

    private static Stream<String> named(Remark remark) {
        Translation other = remark.translation();
        return Stream.concat(
                Stream.ofNullable(remark.speaker()), Stream.ofNullable(other == null ? null : other.speaker()));
    }
}
