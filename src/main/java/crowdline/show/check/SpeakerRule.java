package crowdline.show.check;

import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.bounds.Nearest;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
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
        EveryRemark.in(show, (path, remark) -> {
            String of = "the remark " + Written.quoted(remark.id());
            if (!path.startsWith("gaps.")) {
                named(show, of, remark.speaker(), path, findings);
            }
            translated(show, of, remark.translation(), path, findings);
        });
        List<Piece> pieces = show.gaps().pieces();
        for (int p = 0; p < pieces.size(); p++) {
            String of = "the piece " + Written.quoted(pieces.get(p).title());
            named(show, of, pieces.get(p).speaker(), EveryRemark.piece(p), findings);
            for (int i = 0; i < pieces.get(p).parts().size(); i++) {
                named(
                        show,
                        "a part of " + of,
                        pieces.get(p).parts().get(i).speaker(),
                        EveryRemark.part(p, i),
                        findings);
            }
        }
    }

    private static void named(
            Show show, String what, @Nullable String speaker, String path, Consumer<Finding> findings) {
        named(show, what + " is for ", speaker, "so whoever is at the console says it", path + ".speaker", findings);
    }

    private static void translated(
            Show show, String what, @Nullable Translation other, String path, Consumer<Finding> findings) {
        named(
                show,
                what + " has words in another language for ",
                other == null ? null : other.speaker(),
                "so nobody says them",
                path + ".otherLanguage.speaker",
                findings);
    }

    private static void named(
            Show show, String what, @Nullable String speaker, String so, String path, Consumer<Finding> findings) {
        if (speaker != null && show.speakers().find(speaker).isEmpty()) {
            String near = Nearest.hint(
                    speaker, show.speakers().all().stream().map(Speaker::name).toList());
            findings.accept(new Finding(
                    Severity.WARNING,
                    "speaker-unknown",
                    what + Written.quoted(speaker)
                            + ", who is not among the speakers of the show, " + so
                            + (near.isEmpty() ? "; add the speaker, or name one who is there" : near),
                    path));
        }
    }
}
