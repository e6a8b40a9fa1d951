package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.piece.Heard;
import crowdline.list.split.Sentence;
import crowdline.list.word.Text;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Answers between the lines of a list that is quoted with ">": "No, a four-point roll this year", "make that 3", "ok". */
final class Replies {
    private static final Pattern NO = Pattern.compile(
            "\\W*(?:no\\b(?! (?:change|problem|difference))|nope|not (?:any ?more|this|now)|gone|out\\b|dropped|cancelled|deleted|scrap|it's out|that's out|that's gone|now (?:an?|the|it's)|instead|changed|replaced)\\b?.*",
            Pattern.DOTALL);
    private static final Pattern ADDS =
            Pattern.compile("\\W*(?:and|plus|then|also|after|before|add|with|followed)\\b.*", Pattern.DOTALL);

    /** As many lines of the list are quoted. */
    private static final int LEAST_QUOTED = 3;
    /** As many lines of one's own begin with a figure: then they are the list, and what is quoted is not. */
    private static final int LEAST_OWN = 4;
    /** From one's own to what is quoted, or back; more often one answers line by line. */
    private static final int MOST_CHANGES = 2;

    private final Text text;
    private final List<Sentence> sentences;
    private final List<List<Heard>> heard;
    private final Set<Integer> answers = new HashSet<>();
    private final boolean isWithoutTheQuoted;

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
                    ? heard.get(i).stream().anyMatch(Heard::isFigure)
                    : isBehind && !sentences.get(i).followsGap(text);
        }
        if (quoted < LEAST_QUOTED) {
            answers.clear();
        }
        boolean isAnew = own >= LEAST_OWN && changes <= MOST_CHANGES && quoted > 0;
        isWithoutTheQuoted = isAnew;
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
        if (isFigure && !isNo && saysMoreOf(pieces, assembly)) {
            assembly.addNote(sentence.start(), sentence.end());
            return true;
        }
        if ((isNo || isFigure) && !ADDS.matcher(said).matches() && last.isFigure() && isQuoted(last.start())) {
            assembly.leaveOut(last.start(), last.start() + 1);
        }
        if (isFigure) {
            for (Heard piece : pieces) {
                if (piece.isFigure()) {
                    assembly.put(piece);
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
}
