package crowdline.show.check;

import crowdline.show.Act;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.bounds.Nearest;
import crowdline.show.bounds.Quantity;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Remark;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Pieces for gaps have names of their own, and lead up to acts that are there. */
final class PieceRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        List<Piece> pieces = show.gaps().pieces();
        if (pieces.isEmpty()) {
            return;
        }
        Set<String> parts = show.gaps().remarks().map(Remark::id).collect(Collectors.toSet());
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            String path = "gaps.pieces[" + i + "]";
            if (!seen.add(piece.id())) {
                findings.accept(new Finding(
                        Severity.ERROR,
                        "duplicate-id",
                        "two pieces are called " + Written.quoted(piece.id())
                                + "; each piece needs a name of its own in the show",
                        path + ".id"));
            }
            String before = piece.beforeAct();
            if (before != null && show.act(before).isEmpty()) {
                String near =
                        Nearest.hint(before, show.acts().stream().map(Act::id).toList());
                findings.accept(new Finding(
                        Severity.WARNING,
                        "piece-names-no-act",
                        "the piece " + Written.quoted(piece.title()) + " leads up to the act " + Written.quoted(before)
                                + ", which the show does not have, so it is never said"
                                + (near.isEmpty() ? "; name one that is there" : near),
                        path + ".beforeAct"));
            }
            for (int p = 0; p < piece.parts().size(); p++) {
                if (!Quantity.ANSWER_S.isPlausible(piece.parts().get(p).answerS())) {
                    findings.accept(new Finding(
                            Severity.WARNING,
                            "long-answer",
                            "an answer in " + Written.quoted(piece.title()) + " takes "
                                    + Math.round(piece.parts().get(p).answerS()) + " seconds; check that this is meant",
                            path + ".parts[" + p + "].answerS"));
                }
            }
        }
        show.acts().stream()
                .flatMap(act -> show.everyRemarkOf(act.id()))
                .filter(r -> parts.contains(r.id()))
                .forEach(r -> findings.accept(new Finding(
                        Severity.ERROR,
                        "duplicate-id",
                        "the remark " + Written.quoted(r.id())
                                + " has the name of a part of a piece; call it something else",
                        "gaps.pieces")));
    }
}
