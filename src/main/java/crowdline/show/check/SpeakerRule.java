package crowdline.show.check;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.bounds.Nearest;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Remark;
import crowdline.show.figure.Translation;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Speakers have names of their own, and remarks name speakers who are there. */
final class SpeakerRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        List<Speaker> all = show.speakers().all();
        for (int s = 0; s < all.size(); s++) {
            Speaker speaker = all.get(s);
            if (all.subList(0, s).stream().anyMatch(before -> before.isCalled(speaker.name()))) {
                findings.accept(new Finding(
                        Severity.WARNING,
                        "speaker-twice",
                        "two speakers are called " + Written.quoted(speaker.name())
                                + ", so only the first of them is found; give each a name of their own",
                        "speakers[" + s + "].name"));
            }
        }
        remarks(show, show.remarks(), "", findings);
        for (int a = 0; a < show.acts().size(); a++) {
            Act act = show.acts().get(a);
            remarks(show, act.remarks(), At.act(a) + ".", findings);
            for (int f = 0; f < act.figures().size(); f++) {
                remarks(show, act.figures().get(f).remarks(), At.figure(a, f) + ".", findings);
            }
        }
    }

    private static void remarks(Show show, List<Remark> remarks, String path, Consumer<Finding> findings) {
        for (int r = 0; r < remarks.size(); r++) {
            Remark remark = remarks.get(r);
            named(
                    show,
                    remark,
                    remark.speaker(),
                    " is for ",
                    "so whoever sits at the console says it",
                    path + "remarks[" + r + "].speaker",
                    findings);
            Translation other = remark.translation();
            named(
                    show,
                    remark,
                    other == null ? null : other.speaker(),
                    " has words in another language for ",
                    "so nobody says them",
                    path + "remarks[" + r + "].otherLanguage.speaker",
                    findings);
        }
    }

    private static void named(
            Show show,
            Remark remark,
            @Nullable String speaker,
            String what,
            String so,
            String path,
            Consumer<Finding> findings) {
        if (speaker != null && show.speakers().find(speaker).isEmpty()) {
            String near = Nearest.hint(
                    speaker, show.speakers().all().stream().map(Speaker::name).toList());
            findings.accept(new Finding(
                    Severity.WARNING,
                    "speaker-unknown",
                    "the remark " + Written.quoted(remark.id()) + what + Written.quoted(speaker)
                            + ", who is not among the speakers of the show, " + so
                            + (near.isEmpty() ? "; add the speaker, or name one who is there" : near),
                    path));
        }
    }
}
