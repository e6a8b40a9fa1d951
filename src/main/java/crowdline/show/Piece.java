package crowdline.show;

import crowdline.show.bounds.Most;
import crowdline.show.bounds.Quantity;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.Translation;
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
 * @param speaker who says it, by name, or null for whoever is at the console
 * @param parts in the order they are said, at least one
 */
public record Piece(
        String id,
        String title,
        @Nullable String beforeAct,
        @Nullable String speaker,
        List<Part> parts) {

    /**
     * One part.
     *
     * @param text what is said or asked
     * @param answerS how long somebody else answers it, seconds; 0 if nobody does
     * @param speaker who says it, by name, or null for whoever says the piece
     * @param translation the same in another language, or null
     */
    public record Part(
            String text,
            double answerS,
            @Nullable String speaker,
            @Nullable Translation translation) {
        public Part {
            Most.mustBeText("part of a piece", text);
            Quantity.ANSWER_S.must(answerS);
            if (speaker != null) {
                Most.mustBeText("speaker of a part", speaker);
            }
        }

        /** One that whoever says the piece says. */
        public Part(String text, double answerS) {
            this(text, answerS, null, null);
        }
    }

    public Piece {
        Most.mustBeText("piece id", id);
        Most.mustBeText("piece title", title);
        if (beforeAct != null) {
            Most.mustBeText("beforeAct", beforeAct);
        }
        if (speaker != null) {
            Most.mustBeText("speaker of a piece", speaker);
        }
        Most.PARTS.must(parts);
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("the piece " + id + " has no parts; it needs at least one");
        }
    }

    /** One that is said at the console. */
    public Piece(String id, String title, @Nullable String beforeAct, List<Part> parts) {
        this(id, title, beforeAct, null, parts);
    }

    /** Its parts as remarks, each with an id of its own. */
    public List<Remark> remarks() {
        return IntStream.range(0, parts.size()).mapToObj(this::remark).toList();
    }

    private Remark remark(int i) {
        Part part = parts.get(i);
        String own = part.speaker();
        return new Remark(remarkId(i), RemarkKind.FACT, part.text(), null, null, null, 1, true)
                .saidBy(own == null ? speaker : own)
                .translated(part.translation());
    }

    /** The id of a part as a remark, from 0. */
    public String remarkId(int part) {
        return id + " (" + (part + 1) + ")";
    }
}
