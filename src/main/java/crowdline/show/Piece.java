package crowdline.show;

import crowdline.show.bounds.Most;
import crowdline.show.bounds.Quantity;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Something longer for a gap between acts, said part by part: an interview with its questions, the story of an aircraft, how
 * the next performer is introduced.
 *
 * @param id stable, unique within the show
 * @param title what it is, such as "Interview with the tower"
 * @param beforeAct id of the act that it leads up to, or null if it is for any gap
 * @param parts in the order they are said, at least one
 */
public record Piece(String id, String title, @Nullable String beforeAct, List<Part> parts) {

    /**
     * One part.
     *
     * @param text what the commentator says or asks
     * @param answerS how long somebody else answers it, seconds; 0 if nobody does
     */
    public record Part(String text, double answerS) {
        public Part {
            Most.mustBeText("part of a piece", text);
            Quantity.ANSWER_S.must(answerS);
        }
    }

    public Piece {
        Most.mustBeText("piece id", id);
        Most.mustBeText("piece title", title);
        if (beforeAct != null) {
            Most.mustBeText("beforeAct", beforeAct);
        }
        Most.PARTS.must(parts);
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("the piece " + id + " has no parts; it needs at least one");
        }
    }

    /** Its parts as remarks, each with an id of its own. */
    public List<Remark> remarks() {
        return IntStream.range(0, parts.size())
                .mapToObj(i ->
                        new Remark(remarkId(i), RemarkKind.FACT, parts.get(i).text(), null, null, null, 1, true))
                .toList();
    }

    /** The id of a part as a remark, from 0. */
    public String remarkId(int part) {
        return id + " (" + (part + 1) + ")";
    }
}
