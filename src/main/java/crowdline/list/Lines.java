package crowdline.list;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.piece.Again;
import crowdline.list.piece.Canopy;
import crowdline.list.piece.Condition;
import crowdline.list.piece.GoingOn;
import crowdline.list.piece.Heard;
import crowdline.list.split.Asides;
import crowdline.list.split.Piece;
import crowdline.list.split.Piece.Parting;
import crowdline.list.split.Sentence;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The lines of a list as they come, piece after piece. */
final class Lines {
    private static final Names.Sense INVERTED = Names.Sense.of("inverted pass");

    private final Text text;
    private final Style style;
    private final GoingOn goingOn;
    private final Asides asides;
    private final List<Draft> lines = new ArrayList<>();
    private final Ahead ahead = new Ahead();
    private boolean isEnd;
    private boolean isFigureNext;
    private boolean isFigureLater;
    private int figures;

    /** Where something ends that takes back what was said before it; -1 if nothing did. */
    private int slipAt = -1;

    /** @param asides takes what is no line */
    Lines(Text text, Names names, Style style, Asides asides) {
        this.text = text;
        this.style = style;
        this.goingOn = new GoingOn(names, text);
        this.asides = asides;
    }

    List<Draft> all() {
        return lines;
    }

    boolean isEmpty() {
        return lines.isEmpty();
    }

    Draft last() {
        return lines.get(lines.size() - 1);
    }

    int figures() {
        return figures;
    }

    /** Whether the last figure is the landing, and no other follows. */
    boolean hasLanded(boolean isAfterAll) {
        return isAfterAll && !lines.isEmpty() && last().means("landing");
    }

    /** Adds the pieces of a sentence; the first may belong to the line before it. */
    void add(List<Heard> pieces, Told told, @Nullable Draft before) {
        Draft previous = before;
        int lastFigure = Heard.lastFigure(pieces);
        for (int i = 0; i < pieces.size(); i++) {
            isEnd = i == pieces.size() - 1;
            isFigureNext = Denial.isFigureNext(pieces, i);
            isFigureLater = i < lastFigure;
            previous = add(pieces.get(i), told, previous);
        }
    }

    /** Adds a piece, and tells which line the next may belong to. */
    private @Nullable Draft add(Heard heard, Told told, @Nullable Draft previous) {
        Sentence sentence = told.sentence();
        Piece piece = heard.piece();
        if (text.isRemark(piece.from()) && !lines.isEmpty() && !heard.isDetail() && !heard.isSilent()) {
            return Denial.strikes(heard) && isOnTheLastLine(piece) ? takeBack(last(), piece) : said(last(), heard);
        }
        if (previous != null && (heard.isWeak() || !heard.isFigure()) && Again.isHeldInverted(previous, heard)) {
            return addAs(INVERTED, heard);
        }
        if (heard.isWeak() && Canopy.opens(lines, heard)) {
            return addAs(Canopy.DESCENDING, heard);
        }
        if (heard.isFigure()) {
            if (previous != null
                    && (goingOn.isRestOf(previous, heard)
                            || Beside.isTurning(previous, heard)
                            || Beside.isOnceMore(previous, heard, style))) {
                return previous;
            }
            boolean isAside = Beside.isGuess(heard) || Beside.isRemark(heard);
            if (previous != null
                    && (Beside.isHowFar(previous, heard)
                            || Beside.isSaidAgain(previous, heard)
                            || Denial.isReason(heard)
                            || (isAside && Beside.isSaidOf(previous, heard, told, style)))) {
                return said(previous, heard);
            }
            if (Beside.isNamedOnceMore(lines.isEmpty() ? null : last(), heard, text)
                    || (previous != null && !told.isProse() && Beside.isOfTheLine(previous, heard, style))) {
                return said(last(), heard);
            }
            if (style.isMarked() && !sentence.numbered() && Beside.isGuess(heard) && !lines.isEmpty()) {
                return said(lines.get(lines.size() - 1), heard);
            }
            Draft saidOf = Beside.saidOf(lines, heard);
            if (saidOf != null) {
                saidOf.correct(heard.drafts().get(0));
                saidOf.takeIn(piece.start(), piece.end());
                return saidOf;
            }
            if (isFigureNext && Beside.isWhere(heard, text)) {
                Draft where = new Draft(piece.start(), piece.end());
                where.takeWhere(heard.drafts().get(0));
                ahead.add(where);
                return null;
            }
            if (Smoke.isTold(lines, heard) || Denial.isDenied(heard, told.isProse())) {
                if (!Denial.cancels(heard) || Revisions.isPerhaps(text, sentence) || !leavesOutLast(heard)) {
                    asides.add(piece.start(), piece.end());
                }
                return previous != null && lines.contains(previous) ? previous : null;
            }
            figures -= slipAt == piece.start() ? Anew.begin(lines, heard, text, asides) : 0;
            return addFigures(heard, piece.parting() == Parting.LINE ? null : previous);
        }
        Draft draft = heard.drafts().get(0);
        if (Canopy.opens(lines, heard)) {
            return addAs(Canopy.DESCENDING, heard);
        }
        if (Denial.takesBack(heard, isFigureNext) && isOnTheLastLine(piece) && slipAt != piece.start()) {
            slipAt = piece.end();
            return takeBack(last(), piece);
        }
        if (Denial.isSlip(heard)) {
            asides.add(piece.start(), piece.end());
            slipAt = piece.end();
            return previous;
        }
        Draft corrected = previous == null && slipAt == piece.start() && isOnTheLastLine(piece) ? last() : previous;
        if (corrected != null && corrected.isFigure() && Denial.corrects(heard, slipAt == piece.start())) {
            draft.forgetNotes();
            corrected.correct(draft);
            corrected.takeIn(piece.start(), piece.end());
            return corrected;
        }
        if (previous != null
                && (slipAt == piece.start() || Attached.isMade(heard))
                && previous.says(Detail.COUNT)
                && Attached.isCount(heard)) {
            Attached.count(previous, heard);
            previous.takeIn(piece.start(), piece.end());
            return previous;
        }
        if (previous != null && goingOn.isRestOf(previous, heard)) {
            return previous;
        }
        boolean isNext = !lines.isEmpty() && Again.isNextOfSeveral(last(), heard);
        if (isNext) {
            Again.part(last(), draft);
        }
        if (isNext || Again.isAnother(lines, heard)) {
            if (Condition.in(heard.words(), 0) < heard.words().size()) {
                draft.doubt();
            }
            return addAs(Objects.requireNonNull(last().sense()), heard);
        }
        if (heard.isSilent()) {
            return addSilent(piece, previous);
        }
        if (previous != null
                && previous.isFigure()
                && heard.words().get(0).plain().equals("not")) {
            return said(previous, heard);
        }
        if (heard.isDetail()) {
            return addDetail(draft, piece, told, previous);
        }
        if (isFigureNext && Prelude.isSomebody(heard, text)) {
            asides.add(piece.start(), piece.end());
            return null;
        }
        if (previous != null && previous.isFigure() && Condition.isBehindADetail(heard)) {
            previous.take(draft);
            previous.doubt();
            previous.takeIn(piece.start(), piece.end());
            return previous;
        }
        if (previous != null
                && previous.isFigure()
                && (Condition.isAll(heard.words()) || Condition.isAnotherCount(heard))) {
            previous.doubt();
            return said(previous, heard);
        }
        boolean isYawing = previous != null && previous.isFigure() && Beside.isYawing(heard);
        if (!told.isTimed() && !isYawing && Tone.isAside(heard, sentence)) {
            asides.add(piece.start(), piece.end());
            asides.part(heard.beginsWith(Manner.PARTING) || Tone.takesLeave(heard));
            return previous;
        }
        boolean describes = Beside.describes(heard, sentence);
        if (!lines.isEmpty() && Beside.isOnALineOf(last(), heard)) {
            return taken(last(), draft, piece);
        }
        if ((previous == null && isFigureLater && (Beside.isAhead(heard) || Prelude.isWhoAlone(heard)))
                || (isFigureNext && Beside.isQuarterRollUp(heard))) {
            draft.beginAt(piece.start());
            ahead.add(draft);
            return null;
        }
        if (previous != null
                && (describes
                        || piece.parting() == Parting.DASH
                        || isYawing
                        || Beside.isMeasuredAhead(previous, heard)
                        || Beside.isSaidOf(previous, heard, told, style))) {
            return taken(previous, draft, piece);
        }
        boolean isOnlySaid = told.isOfAParagraph() && !told.isTimed() && !Manner.FLOWN.hasAny(heard.words());
        if (previous != null && Beside.isTimeOf(previous, heard)) {
            return taken(previous, draft, piece);
        }
        boolean isAfterLanding =
                hasLanded(told.isAtTheEnd() && !isFigureNext) && !sentence.numbered() && !told.isTimed();
        if (asides.isParted()
                || isOnlySaid
                || isAfterLanding
                || (told.isProse() && !(sentence.numbered() && previous == null))) {
            asides.add(piece.start(), piece.end());
            return previous;
        }
        if (style.isMarked() && !sentence.numbered() && !lines.isEmpty()) {
            ahead.giveTo(draft);
            if (last().hasRoomFor(draft)) {
                last().take(draft);
            }
            draft.eachSpan(last()::takeIn);
            return last();
        }
        Draft line = new Draft(piece.start(), piece.end());
        ahead.giveTo(line);
        line.take(draft);
        lines.add(line);
        return line;
    }

    /** Leaves out the figure that was named last of those that a piece cancels; false if there is none. */
    private boolean leavesOutLast(Heard cancelling) {
        Draft named = Denial.lastOf(lines, cancelling);
        if (named != null) {
            takeBack(named, cancelling.piece());
        }
        return named != null;
    }

    /** Lets a line take what a piece says of it. */
    private static Draft taken(Draft by, Draft draft, Piece piece) {
        by.take(draft);
        by.takeIn(piece.start(), piece.end());
        return by;
    }

    /** Lets a figure take in what is said of it in another figure's words. */
    private Draft said(Draft of, Heard heard) {
        Piece piece = heard.piece();
        of.note(text.piece(piece.from(), piece.to()));
        of.takeIn(piece.start(), piece.end());
        return of;
    }

    /** A piece that names no figure, as the one it means. */
    private Draft addAs(Names.Sense meant, Heard heard) {
        Draft draft = heard.drafts().get(0);
        draft.meanToo(meant);
        if (!lines.isEmpty()) {
            Again.turn(draft, last(), heard);
        }
        return addFigures(heard, null);
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
            if (i == 0 && (Again.isAfterIt(lines, heard) || Again.isOutOfIt(lines, heard))) {
                Again.keep(drafts, last());
                continue;
            }
            Canopy.land(lines, draft);
            if (Canopy.isOpen(lines, draft)) {
                last().take(draft);
                draft.eachSpan(last()::takeIn);
                last = last();
                continue;
            }
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

    private boolean isOnTheLastLine(Piece piece) {
        return !lines.isEmpty() && Nested.isOnTheLineOf(last(), piece, text);
    }

    /** "Square loop? No, a loop": the figure named before is not flown. */
    private @Nullable Draft takeBack(Draft denied, Piece piece) {
        lines.remove(denied);
        figures -= denied.isFigure() ? 1 : 0;
        denied.eachSpan(asides::add);
        asides.add(piece.start(), piece.end());
        return null;
    }

    private @Nullable Draft addSilent(Piece piece, @Nullable Draft previous) {
        if (previous != null) {
            previous.takeIn(piece.start(), piece.end());
            return previous;
        }
        ahead.add(new Draft(piece.start(), piece.end()));
        return null;
    }

    private @Nullable Draft addDetail(Draft draft, Piece piece, Told told, @Nullable Draft previous) {
        boolean isBehindAll = previous == null ? piece.parting() == Parting.LINE : previous.means("landing");
        if (isBehindAll && !isFigureNext && Overlong.isOfTheAct(draft)) {
            asides.add(piece.start(), piece.end());
            return null;
        }
        Draft before = previous;
        boolean smoke = draft.saysOnly(Detail.SMOKE);
        if (before == null
                && !lines.isEmpty()
                && ((ahead.isEmpty() && Beside.isMeasuredBelow(draft, piece))
                        || (piece.parting() == Parting.LINE && Nested.isFurtherIn(piece, last(), text))
                        || Beside.isCountOfASpin(draft, last()))) {
            before = last();
        }
        boolean isNextOnes = smoke
                || (draft.says(Detail.HEADING) && (isFigureNext || piece.parting() == Parting.LINE))
                || (told.leadsDetails() && isFigureNext);
        if (before != null
                && isFigureNext
                && text.piece(piece.from(), piece.end()).endsWith(":")) {
            before = null;
        }
        if (before != null && (before.hasRoomFor(draft) || !isNextOnes)) {
            return taken(before, draft, piece);
        }
        Draft waiting = new Draft(piece.start(), piece.end());
        waiting.take(draft);
        ahead.add(waiting);
        return null;
    }

    /** Ends the list: what was said ahead of a figure that never came is said of the last. */
    void finish() {
        Draft waiting = ahead.left();
        if (waiting == null) {
            return;
        }
        if (lines.isEmpty()) {
            waiting.eachSpan(asides::add);
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
