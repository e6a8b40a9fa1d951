package crowdline.patter;

import crowdline.measure.Must;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The time before an act, in which nothing flies: how long it is, how full of talk it may be, and what it can be filled with
 * beside duties.
 *
 * @param endS when it is over
 * @param talkShare how much of it is talk at most, 0 to 1
 * @param lastTalk the last stretch of talk before now, or null if there was none
 * @param pieces longer pieces, the most wanted first
 * @param loose what may be said in any gap, besides the fillers among the candidates
 */
public record Gap(
        double endS, double talkShare, @Nullable Stretch lastTalk, List<Piece> pieces, List<Candidate> loose) {

    /** Talk with no more than this between is one stretch, seconds. Tuned: longer than a breath. */
    public static final double ONE_STRETCH_S = 3;

    /** A stretch of talk, not empty. */
    public record Stretch(double fromS, double toS) {
        public Stretch {
            Must.beFinite("fromS", fromS);
            Must.beAtLeast("toS", toS, fromS);
        }
    }

    /**
     * A longer piece.
     *
     * @param last whether it leads up to what comes after the gap, and so stands at its end
     * @param parts in the order they are said
     */
    public record Piece(boolean last, List<Candidate> parts) {
        public Piece {
            parts = List.copyOf(parts);
        }
    }

    public Gap {
        Must.beFinite("endS", endS);
        Must.beWithin("talkShare", talkShare, 0, 1);
        pieces = List.copyOf(pieces);
        loose = List.copyOf(loose);
    }
}
