package crowdline.list;

import crowdline.list.Piece.Parting;
import crowdline.list.Tone.Heard;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Puts the pieces of a text together into lines and notes, in order. */
final class Assembly {
    /** A line with more pieces may list several things. */
    private static final int MOST_SAID = 4;

    private static final Names.Sense INVERTED = new Names.Sense("inverted pass", "inverted pass", false, List.of());

    private final Text text;
    private final GoingOn goingOn;
    private final boolean figureEachLine;
    private final boolean figuresFromTelling;
    private final List<Draft> lines = new ArrayList<>();
    private final Asides asides;

    private final Ahead ahead = new Ahead();

    private boolean parted;
    private boolean isAfterAll;
    private boolean isBeforeGap;
    private boolean lastWasNote;
    private boolean isNumberedList;
    private boolean isTimed;
    /** Whether the sentence talks, so that what is not understood of it is no figure. */
    private boolean isProse;
    private boolean isEnd;
    private boolean isFigureNext;
    /** Whether the sentence says what it says of a figure ahead of it. */
    private boolean leadsDetails;

    private boolean isMail;
    private int lastFigureLine = -1;
    private int told;
    private int figures;

    /**
     * Of a text.
     *
     * @param figureEachLine whether a line has one figure as a rule
     * @param figuresFromTelling whether figures are taken from sentences that tell something
     */
    Assembly(Text text, Names names, boolean figureEachLine, boolean figuresFromTelling) {
        this.figureEachLine = figureEachLine;
        this.text = text;
        this.goingOn = new GoingOn(names, text);
        this.asides = new Asides(text);
        this.figuresFromTelling = figuresFromTelling;
    }

    List<Draft> lines() {
        return lines;
    }

    Asides asides() {
        return asides;
    }

    int told() {
        return told;
    }

    int figures() {
        return figures;
    }

    void addNote(int start, int end) {
        lastWasNote = true;
        asides.add(start, end);
    }

    /**
     * Says where the next sentence stands.
     *
     * @param afterAll whether no figure follows
     * @param beforeGap whether an empty line follows
     */
    void stand(boolean afterAll, boolean beforeGap) {
        isAfterAll = afterAll;
        isBeforeGap = beforeGap;
    }

    void add(Sentence sentence, List<Heard> pieces) {
        if (pieces.stream().allMatch(piece -> piece.words().isEmpty())
                && text.written()
                        .substring(sentence.start(), sentence.end())
                        .chars()
                        .noneMatch(Character::isLetterOrDigit)) {
            parted |= figures > 0
                    && text.folded()
                            .substring(sentence.start(), sentence.end())
                            .strip()
                            .equals("--");
            return;
        }
        if (Condition.isAll(pieces.get(0).words())) {
            pieces.stream().flatMap(piece -> piece.drafts().stream()).forEach(Draft::doubt);
        }
        int first = 0;
        while (first < pieces.size() && Prelude.isAt(pieces, first, sentence, text, figures == 0)) {
            first++;
        }
        for (Heard piece : pieces.subList(0, first)) {
            isMail |= piece.beginsWith(Manner.GREETING);
            addNote(piece.piece().start(), piece.piece().end());
        }
        List<Heard> rest = pieces.subList(first, pieces.size());
        if (rest.isEmpty()) {
            return;
        }
        if (isSignedByAnInitial(rest)) {
            addNote(sentence.start(), sentence.end());
            return;
        }
        isTimed = Tone.isTimed(sentence, rest, text);
        isProse = false;
        if (!isTimed && isAside(sentence, rest)) {
            addAside(rest);
            return;
        }
        boolean hasFigure = rest.stream().anyMatch(Heard::isFigure);
        Draft previous = sentence.numbered() || !isNumberedList || lines.isEmpty() ? null : lines.get(lines.size() - 1);
        if (!lines.isEmpty() && (isNumber(rest) || isOfTheSameLine(rest, sentence))) {
            previous = lines.get(lines.size() - 1);
        }
        lastFigureLine = hasFigure ? sentence.line() : lastFigureLine;
        isNumberedList |= sentence.numbered() && hasFigure;
        lastWasNote = false;
        leadsDetails = rest.get(0).isDetail();
        for (int i = 0; i < rest.size(); i++) {
            isEnd = i == rest.size() - 1;
            isFigureNext = !isEnd && rest.get(i + 1).isFigure();
            previous = add(rest.get(i), sentence, previous);
        }
    }

    /** "Ring me. R": one letter behind a mail's list is somebody's name. */
    private boolean isSignedByAnInitial(List<Heard> rest) {
        List<Word> words = rest.get(0).words();
        return isMail
                && isAfterAll
                && rest.size() == 1
                && words.size() == 1
                && words.get(0).number() == null
                && words.get(0).end() - words.get(0).start() == 1;
    }

    /** "Loop. Gate 1200." */
    private boolean isOfTheSameLine(List<Heard> pieces, Sentence sentence) {
        return sentence.line() == lastFigureLine
                && !pieces.get(0).isFigure()
                && pieces.get(0).beginsWith(Manner.QUALIFYING);
    }

    /** "Loop. 150." */
    private static boolean isNumber(List<Heard> pieces) {
        List<Word> words = pieces.get(0).words();
        return pieces.size() == 1 && words.size() == 1 && words.get(0).number() != null;
    }

    private boolean isAside(Sentence sentence, List<Heard> pieces) {
        boolean figure = pieces.stream().anyMatch(Heard::isFigure);
        if (Tone.isTableHead(pieces) || Tone.isHeading(pieces, text, sentence)) {
            boolean details = pieces.stream().anyMatch(Heard::isDetail)
                    && pieces.stream().allMatch(p -> p.isDetail() || p.isSilent());
            return !details;
        }
        if (Tone.tells(sentence, pieces)) {
            told += figure ? 1 : 0;
            if (figure && Telling.isFlown(pieces, text, sentence)) {
                isProse = true;
                told--;
                return false;
            }
            boolean doubtful = pieces.stream().anyMatch(p -> Manner.DOUBT.hasAny(p.words()));
            return !figure || !figuresFromTelling || doubtful;
        }
        if (figure) {
            return false;
        }
        long words = pieces.stream().mapToLong(p -> p.words().size()).sum();
        boolean open = pieces.stream().anyMatch(p -> !p.isDetail() && !p.isSilent());
        return open && ((parted && words <= 6) || isName(sentence, pieces, words) || isApart(sentence));
    }

    /** Words of their own, ahead of the list or behind it. */
    private boolean isApart(Sentence sentence) {
        boolean goesOn = isMail && sentence.line() == lastFigureLine;
        boolean behind = isAfterAll && figures > 0 && (sentence.followsGap(text) || lastWasNote || goesOn);
        boolean ahead = figures == 0 && lines.isEmpty() && isBeforeGap && !isAfterAll;
        return !sentence.numbered() && (behind || ahead);
    }

    /** Such as "Sam," ahead of everything. */
    private boolean isName(Sentence sentence, List<Heard> pieces, long words) {
        String written =
                text.written().substring(sentence.start(), sentence.end()).strip();
        return lines.isEmpty() && pieces.size() <= 2 && words <= 3 && written.endsWith(",");
    }

    private void addAside(List<Heard> pieces) {
        for (Heard piece : pieces) {
            isMail |= piece.beginsWith(Manner.GREETING);
            addNote(piece.piece().start(), piece.piece().end());
            parted |= piece.beginsWith(Manner.PARTING);
        }
        if (pieces.stream().anyMatch(Heard::isFigure)) {
            asides.addTold(
                    pieces.get(0).piece().start(),
                    pieces.get(pieces.size() - 1).piece().end());
        }
    }

    /** Adds a piece, and tells which line the next may belong to. */
    private @Nullable Draft add(Heard heard, Sentence sentence, @Nullable Draft previous) {
        Piece piece = heard.piece();
        if (heard.isFigure()) {
            if (previous != null && goingOn.isRestOf(previous, heard)) {
                return previous;
            }
            if (Smoke.isTold(lines, heard)) {
                addNote(piece.start(), piece.end());
                return previous;
            }
            return addFigures(heard, piece.parting() == Parting.LINE ? null : previous);
        }
        Draft draft = heard.drafts().get(0);
        if (previous != null && goingOn.isRestOf(previous, heard)) {
            return previous;
        }
        if (previous != null && GoingOn.isHeldInverted(previous, heard)) {
            draft.mean(INVERTED);
            draft.forgetNotes();
            draft.beginAt(piece.start());
            return addFigures(heard, null);
        }
        if (heard.isSilent()) {
            return addSilent(piece, previous);
        }
        if (heard.isDetail()) {
            return addDetail(draft, piece, previous);
        }
        if (previous != null && previous.isFigure() && Condition.isAll(heard.words())) {
            previous.note(text.piece(piece.from(), piece.to()));
            previous.doubt();
            previous.takeIn(piece.start(), piece.end());
            return previous;
        }
        if (!isTimed && Tone.isAside(heard, sentence)) {
            addNote(piece.start(), piece.end());
            parted |= heard.beginsWith(Manner.PARTING);
            return previous;
        }
        boolean describes = heard.words().stream().allMatch(Prelude::describes)
                || heard.words().get(0).plain().equals("quarter")
                || (sentence.pieces().size() < 4 && Manner.QUALIFYING.hasAny(heard.words()))
                || Manner.QUALIFYING.has(heard.words().get(0));
        if (isFigureNext && isQuarterRollUp(heard)) {
            draft.beginAt(piece.start());
            ahead.add(draft);
            return null;
        }
        if (previous != null && (describes || piece.parting() == Parting.DASH || isSaidOf(previous, heard, sentence))) {
            previous.take(draft);
            previous.takeIn(piece.start(), piece.end());
            return previous;
        }
        if (parted || isProse) {
            addNote(piece.start(), piece.end());
            return previous;
        }
        Draft line = begun(piece);
        line.take(draft);
        lines.add(line);
        return line;
    }

    /** "Loop, everybody loves it" in a list with one figure on a line: nothing is flown after the comma. */
    private boolean isSaidOf(Draft previous, Heard heard, Sentence sentence) {
        return (isProse || (figureEachLine && sentence.pieces().size() <= MOST_SAID))
                && previous.isFigure()
                && heard.piece().parting() == Parting.COMMA
                && !Manner.FLOWN.hasAny(heard.words());
    }

    /** "Quarter roll up, hammerhead": it is flown on the line up to what follows. */
    private static boolean isQuarterRollUp(Heard heard) {
        List<String> words = heard.words().stream().map(Word::plain).toList();
        return words.get(0).endsWith("quarter") && words.contains("roll") && words.contains("up");
    }

    private Draft addFigures(Heard heard, @Nullable Draft previous) {
        Piece piece = heard.piece();
        List<Draft> drafts = heard.drafts();
        Draft last = previous;
        for (int i = 0; i < drafts.size(); i++) {
            Draft draft = drafts.get(i);
            if (i == 0) {
                draft.beginAt(piece.start());
                ahead.giveTo(draft);
                if (piece.parting() == Parting.LINE) {
                    draft.startLine();
                }
            }
            GoingOn.landUnderCanopy(lines, draft);
            if (last == null || !goingOn.isBeginningOf(last, draft, isEnd && i == drafts.size() - 1)) {
                lines.add(draft);
                figures++;
                last = draft;
            }
        }
        Draft end = lines.get(lines.size() - 1);
        end.takeIn(end.end(), piece.end());
        return end;
    }

    private Draft begun(Piece piece) {
        Draft line = new Draft(piece.start(), piece.end());
        ahead.giveTo(line);
        return line;
    }

    private @Nullable Draft addSilent(Piece piece, @Nullable Draft previous) {
        if (previous != null) {
            previous.takeIn(piece.start(), piece.end());
            return previous;
        }
        ahead.add(new Draft(piece.start(), piece.end()));
        return null;
    }

    private @Nullable Draft addDetail(Draft draft, Piece piece, @Nullable Draft previous) {
        Draft before = previous;
        boolean smoke = draft.saysOnly(Detail.SMOKE);
        if (before == null
                && !smoke
                && !lines.isEmpty()
                && !draft.says(Detail.HEADING)
                && ahead.isEmpty()
                && piece.parting() == Parting.LINE
                && isNumber(draft)) {
            before = lines.get(lines.size() - 1);
        }
        if (before != null && before.hasRoomFor(draft)) {
            before.take(draft);
            before.takeIn(piece.start(), piece.end());
            return before;
        }
        if (before != null && !smoke && !draft.says(Detail.HEADING) && !(leadsDetails && isFigureNext)) {
            before.take(draft);
            before.takeIn(piece.start(), piece.end());
            return before;
        }
        Draft waiting = new Draft(piece.start(), piece.end());
        waiting.take(draft);
        ahead.add(waiting);
        return null;
    }

    private static boolean isNumber(Draft draft) {
        return draft.says(Detail.ENTRY_KT) || draft.says(Detail.HEIGHT_FT) || draft.says(Detail.SECONDS);
    }

    /** Ends the list: what was said ahead of a figure that never came is said of the last. */
    void finish() {
        Draft waiting = ahead.left();
        if (waiting == null) {
            return;
        }
        if (lines.isEmpty()) {
            waiting.eachSpan(this::addNote);
        } else {
            Draft last = lines.get(lines.size() - 1);
            if (last.hasRoomFor(waiting)) {
                last.take(waiting);
            } else {
                last.note(waiting.written(text));
            }
            waiting.eachSpan(last::takeIn);
        }
    }
}
