package crowdline.list.split;

import crowdline.list.word.MailHead;
import crowdline.list.word.Text;
import java.util.List;

/**
 * A line of a text, or a sentence in it.
 *
 * @param start where it begins
 * @param end where it ends, exclusive
 * @param line the line's number, from 0
 * @param numbered whether it begins with a number or a bullet
 * @param pieces at least one
 * @param aside whether it is none of the list, whatever it names: who sent a message, and what was answered
 */
public record Sentence(int start, int end, int line, boolean numbered, List<Piece> pieces, boolean aside) {
    /** A longer line with several sentences is a paragraph. */
    private static final int LONGEST_LINE = 140;

    public Sentence {
        pieces = List.copyOf(pieces);
    }

    /** Its words as they are compared, in small letters. */
    public String said(Text text) {
        return text.folded().substring(start, end).strip();
    }

    /** Its words as they stand. */
    public String written(Text text) {
        return text.written().substring(start, end).strip();
    }

    /** Whether it is part of a letter's head. */
    public boolean isMailHead(Text text) {
        return MailHead.isAt(text.folded(), start, end);
    }

    /** Whether an empty line stands before it. */
    public boolean followsGap(Text text) {
        int breaks = 0;
        for (int i = start;
                i < pieces.get(0).from()
                        && (Character.isWhitespace(text.written().charAt(i))
                                || text.written().charAt(i) == '>');
                i++) {
            breaks += text.written().charAt(i) == '\n' ? 1 : 0;
        }
        return breaks > 1;
    }

    /** Whether it stands with others in a line that is longer than a list has. */
    public boolean isOfAParagraph(Text text) {
        String folded = text.folded();
        int at = pieces.get(0).from();
        int begin = folded.lastIndexOf('\n', at - 1) + 1;
        int last = folded.indexOf('\n', at);
        last = last < 0 ? folded.length() : last;
        boolean isWhole = end >= last && start <= begin;
        return !numbered && !isWhole && last - begin > LONGEST_LINE;
    }
}
