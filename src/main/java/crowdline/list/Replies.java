package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.piece.Heard;
import crowdline.list.split.Piece;
import crowdline.list.split.Sentence;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Answers between the lines of a list that is quoted with ">": "No, a four-point roll this year", "make that 3", "ok". */
final class Replies {
    private static final Pattern NO = Pattern.compile(
            "\\W*(?:no\\b(?! (?:change|problem|difference))|nope|not (?:any ?more|this|now)|gone|out\\b|dropped|cancelled|deleted|scrap|it's out|that's out|that's gone|now (?:an?|the|it's)|instead|changed|replaced)\\b?.*",
            Pattern.DOTALL);
    private static final Pattern YES = Pattern.compile(
            "\\W*(?:yes|yep|yeah|yup|ok|okay|correct|right|fine|unchanged|still|stays)\\b.*", Pattern.DOTALL);
    /** "This goes before the knife edge": where the line belongs that is answered. */
    private static final Pattern GOES = Pattern.compile(
            ".*\\b(?:goes|comes|is|moves?|put)(?: (?:it|this|that|now|one))* (?<where>before|after) (?:the |my )?",
            Pattern.DOTALL);
    /** "And in front of it one slow pass". */
    private static final Pattern IN_FRONT = Pattern.compile(
            "(?:and |but |just |then )*(?:in front of|before|ahead of) (?:it|this|that|these|them)\\b.*");

    private static final Pattern ADDS =
            Pattern.compile("\\W*(?:and|plus|then|also|after|before|add|with|followed)\\b.*", Pattern.DOTALL);

    /** As many lines of the list are quoted. */
    private static final int LEAST_QUOTED = 3;
    /** As many lines of one's own begin with a figure: then they are the list, and what is quoted is not. */
    private static final int LEAST_OWN = 4;
    /** From one's own to what is quoted, or back; more often one answers line by line. */
    private static final int MOST_CHANGES = 2;

    /** A longer question is about something else. */
    private static final int LONGEST_ASKED = 6;

    /** The line that is answered, and the figure that it belongs beside. */
    private record Move(Draft answered, Heard beside, boolean isAfter) {}

    private final Text text;
    private final List<Sentence> sentences;
    private final List<List<Heard>> heard;
    private final Set<Integer> answers = new HashSet<>();
    private final List<Move> moves = new ArrayList<>();
    private final boolean isWithoutTheQuoted;
    /** The line that says no to the last figure; what else it says is said of nothing that is flown. */
    private int denying = -1;

    Replies(Text text, List<Sentence> sentences, List<List<Heard>> heard) {
        this.text = text;
        this.sentences = sentences;
        this.heard = heard;
        int quoted = 0;
        int own = 0;
        int changes = 0;
        boolean isQuotedBefore = false;
        boolean isBehind = false;
        for (int i = 0; i < sentences.size(); i++) {
            boolean isQuoted = isQuoted(sentences.get(i));
            boolean isFigure = heard.get(i).stream().anyMatch(Heard::isFigure)
                    && !text.piece(sentences.get(i).start(), sentences.get(i).end())
                            .endsWith("?");
            boolean leads = isFigure
                    && heard.get(i).stream()
                            .limit(1)
                            .flatMap(piece -> piece.drafts().stream())
                            .allMatch(Draft::leads);
            quoted += isQuoted && isFigure ? 1 : 0;
            own += !isQuoted && leads ? 1 : 0;
            changes += isFigure && isQuoted != isQuotedBefore ? 1 : 0;
            isQuotedBefore = isFigure ? isQuoted : isQuotedBefore;
            if (!isQuoted
                    && isBehind
                    && !sentences.get(i).followsGap(text)
                    && !sentences.get(i).isMailHead(text)) {
                answers.add(i);
            }
            isBehind = isQuoted
                    ? isFigure || (heard.get(i).stream().anyMatch(Heard::isFigure) && words(i) <= LONGEST_ASKED)
                    : isBehind && !sentences.get(i).followsGap(text);
        }
        if (quoted < LEAST_QUOTED) {
            answers.clear();
        }
        boolean isAnew = own >= LEAST_OWN && changes <= MOST_CHANGES && quoted > 0;
        isWithoutTheQuoted = isAnew;
    }

    private long words(int sentence) {
        return heard.get(sentence).stream()
                .mapToLong(piece -> piece.words().size())
                .sum();
    }

    /** "Low pass and land" - "fine, low pass from the right": of several in a line the one that is named is meant. */
    private static boolean saysMoreOf(List<Heard> pieces, Assembly assembly) {
        List<Draft> said = pieces.stream()
                .filter(Heard::isFigure)
                .flatMap(piece -> piece.drafts().stream())
                .toList();
        List<Draft> lines = assembly.lines();
        for (int i = lines.size() - 1; i >= Math.max(0, lines.size() - 2) && said.size() == 1; i--) {
            if (Exchanges.isSame(lines.get(i), said.get(0)) && said.get(0).saysAnything()) {
                said.get(0).forgetNotes();
                lines.get(i).correct(said.get(0));
                return true;
            }
        }
        return false;
    }

    private boolean isQuoted(Sentence sentence) {
        return isQuoted(sentence.pieces().get(0).from());
    }

    private boolean isQuoted(int start) {
        int at = start;
        while (at < text.written().length()
                && Character.isWhitespace(text.written().charAt(at))) {
            at++;
        }
        int begin = text.written().lastIndexOf('\n', at - 1) + 1;
        return text.written()
                .substring(begin, Math.min(at + 1, text.written().length()))
                .stripLeading()
                .startsWith(">");
    }

    /** Whether a sentence belongs to an older list, quoted ahead of the list or behind it. */
    boolean isOlder(int sentence) {
        return isWithoutTheQuoted && isQuoted(sentences.get(sentence));
    }

    /** Whether a sentence answers a quoted line; then the line becomes what it says. */
    boolean takes(int at, Assembly assembly) {
        if (!answers.contains(at) || assembly.lines().isEmpty()) {
            return false;
        }
        Sentence sentence = sentences.get(at);
        List<Heard> pieces = heard.get(at);
        String said = sentence.said(text);
        boolean isFigure = pieces.stream().anyMatch(Heard::isFigure);
        boolean isNo = NO.matcher(said).matches();
        Draft last = assembly.lines().get(assembly.lines().size() - 1);
        if (!isFigure && sentence.line() == denying) {
            assembly.addNote(sentence.start(), sentence.end());
            return true;
        }
        denying = isNo ? sentence.line() : denying;
        if (isFigure && moves(sentence, pieces, last)) {
            assembly.addNote(sentence.start(), sentence.end());
            return true;
        }
        if (isFigure && !isNo && saysMoreOf(pieces, assembly)) {
            assembly.addNote(sentence.start(), sentence.end());
            return true;
        }
        if (isFigure && YES.matcher(said).matches() && last.isFigure()) {
            agree(at, last, assembly);
            return true;
        }
        if ((isNo || isFigure) && !ADDS.matcher(said).matches() && last.isFigure() && isQuoted(last.start())) {
            assembly.leaveOut(last.start(), last.start() + 1);
        }
        if (isFigure) {
            boolean isPut = false;
            for (Heard piece : pieces) {
                if (piece.isFigure()) {
                    assembly.put(piece);
                    isPut = true;
                } else if (isPut && piece.isDetail()) {
                    say(piece, assembly.lines().get(assembly.lines().size() - 1));
                } else {
                    assembly.addNote(piece.piece().start(), piece.piece().end());
                }
            }
            return true;
        }
        if (isNo) {
            assembly.addNote(sentence.start(), sentence.end());
        } else {
            Attached.to(last, sentence, pieces, text);
        }
        return true;
    }

    private static void say(Heard piece, Draft of) {
        of.take(piece.drafts().get(0));
        of.takeIn(piece.piece().start(), piece.piece().end());
    }

    /** "Yes, but one and a half rolls down now", "yes, and in front of it a slow pass": the line stays, whatever is said of it. */
    private void agree(int at, Draft last, Assembly assembly) {
        Draft said = last;
        for (Heard piece : heard.get(at)) {
            String words = piece.said();
            if (piece.isFigure() && IN_FRONT.matcher(words).matches()) {
                int asked = at;
                while (!isQuoted(sentences.get(asked))) {
                    asked--;
                }
                said = piece.drafts().get(piece.drafts().size() - 1);
                assembly.put(piece.drafts(), sentences.get(asked), false);
            } else if (piece.isFigure()
                    && (piece.piece().parting() == Piece.Parting.THEN
                            || ADDS.matcher(words).matches())) {
                assembly.put(piece);
                said = assembly.lines().get(assembly.lines().size() - 1);
            } else if (piece.isDetail()) {
                say(piece, said);
            } else if (YES.matcher(words).matches()) {
                said.takeIn(piece.piece().start(), piece.piece().end());
            } else {
                said.note(text.piece(piece.piece().from(), piece.piece().to()));
                said.takeIn(piece.piece().start(), piece.piece().end());
            }
        }
    }

    /** Remembers where the line that is answered belongs; false if the answer says nothing of that. */
    private boolean moves(Sentence sentence, List<Heard> pieces, Draft answered) {
        for (Heard piece : pieces) {
            List<Word> name = piece.drafts().get(0).name();
            Matcher goes = GOES.matcher(text.folded())
                    .region(
                            sentence.start(),
                            name.isEmpty() ? sentence.start() : name.get(0).start());
            if (goes.matches()) {
                moves.add(new Move(answered, piece, goes.group("where").equals("after")));
                return true;
            }
        }
        return false;
    }

    /** Puts each line where its answer says. */
    void make(Assembly assembly) {
        for (Move move : moves) {
            Draft beside = Denial.lastOf(assembly.lines(), move.beside());
            if (beside != null && assembly.lines().contains(move.answered()) && beside != move.answered()) {
                assembly.lines().remove(move.answered());
                int at = assembly.lines().indexOf(beside);
                assembly.lines().add(move.isAfter() ? at + 1 : at, move.answered());
            }
        }
    }
}
