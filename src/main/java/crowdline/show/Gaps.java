package crowdline.show;

import crowdline.show.bounds.Most;
import crowdline.show.bounds.Quantity;
import crowdline.show.figure.Remark;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the gaps between acts are filled with, and how full.
 *
 * @param talkPercent how much of a gap is talk at most, 0 to 100; duties are said all the same
 * @param pieces longer pieces, in the order they are wanted
 */
public record Gaps(double talkPercent, List<Piece> pieces) {
    /** As much as a first draft fills of an act. */
    public static final double USUAL_TALK_PERCENT = 50;

    /** Where the show says nothing of it. */
    public static final Gaps NONE = new Gaps(USUAL_TALK_PERCENT, List.of());

    public Gaps {
        Quantity.TALK_PERCENT.must(talkPercent);
        Most.PIECES.must(pieces);
        pieces = List.copyOf(pieces);
    }

    /** Every part of every piece as a remark. */
    public Stream<Remark> remarks() {
        return pieces.stream().flatMap(piece -> piece.remarks().stream());
    }

    /** The share of talk, 0 to 1. */
    public double talkShare() {
        return talkPercent / 100;
    }
}
