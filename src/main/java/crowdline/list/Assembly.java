package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.piece.Condition;
import crowdline.list.piece.Heard;
import crowdline.list.split.Asides;
import crowdline.list.split.Sentence;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Puts the pieces of a text together into lines and notes, in order. */
final class Assembly {
    /** Words that say where it takes off to, at most. */
    private static final int MOST_WHERE = 3;

    private final Text text;
    private final Style style;
    private final boolean figuresFromTelling;
    private final Asides asides;
    private final WhoFlies who;
    private final Lines lines;
    private final TalkAround talk;
    private boolean isAfterAll;
    private boolean isBeforeGap;
    private boolean isAtTheEnd;
    private boolean isNumberedList;
    /** Whether the sentence talks, so that what is not understood of it is no figure. */
    private boolean isProse;

    private boolean isMail;
    private int greetingLine = -1;
    private int lastFigureLine = -1;
    private int told;

    /**
     * Of a text.
     *
     * @param figuresFromTelling whether figures are taken from sentences that tell something
     */
    Assembly(Text text, Names names, Style style, boolean figuresFromTelling) {
        this.text = text;
        this.style = style;
        this.asides = new Asides(text);
        this.who = new WhoFlies(text);
        this.talk = new TalkAround(text);
        this.lines = new Lines(text, names, style, asides);
        this.figuresFromTelling = figuresFromTelling;
    }

    List<Draft> lines() {
        return lines.all();
    }

    Asides asides() {
        return asides;
    }

    int told() {
        return told;
    }

    int figures() {
        return lines.figures();
    }

    void addNote(int start, int end) {
        asides.add(start, end);
    }

    /**
     * Says where the next sentence stands.
     *
     * @param afterAll whether no figure follows
     * @param beforeGap whether an empty line follows
     * @param atTheEnd whether no figure follows but in it
     */
    void stand(boolean afterAll, boolean beforeGap, boolean atTheEnd) {
        isAfterAll = afterAll;
        isBeforeGap = beforeGap;
        isAtTheEnd = atTheEnd;
    }

    void add(Sentence sentence, List<Heard> pieces) {
        if (Foot.isOfSignsAlone(sentence, pieces, text)) {
            asides.part(lines.figures() > 0 && sentence.said(text).equals("--"));
            return;
        }
        String said = sentence.said(text);
        boolean takesLeave = lines.figures() > 0 && Foot.takesLeave(said);
        if (takesLeave
                || Foot.isNothingFlown(said, sentence, pieces, text)
                || (lines.figures() > 0 && Foot.isRanked(sentence, text))) {
            addNote(sentence.start(), sentence.end());
            asides.part(takesLeave);
            return;
        }
        boolean isOfAll = !sentence.numbered() && Denial.isOfAll(said);
        if (isOfAll || (sentence.line() == lastFigureLine && !lines.isEmpty() && Denial.saysNo(pieces.get(0)))) {
            leaveOut(
                    isOfAll ? 0 : lines.last().start(),
                    isOfAll ? sentence.start() : lines.last().start() + 1);
            addNote(sentence.start(), sentence.end());
            return;
        }
        if (Condition.isAll(pieces.get(0).words())) {
            pieces.stream().flatMap(piece -> piece.drafts().stream()).forEach(Draft::doubt);
        }
        int first = 0;
        while (first < pieces.size() && Prelude.isAt(pieces, first, sentence, text, lines.figures() == 0)) {
            first++;
        }
        for (Heard piece : pieces.subList(0, first)) {
            greet(piece, sentence);
            addNote(piece.piece().start(), piece.piece().end());
        }
        int signed = lines.figures() == 0 ? pieces.size() : Foot.signedAt(pieces, text);
        pieces.subList(Math.max(first, signed), pieces.size())
                .forEach(piece -> addNote(piece.piece().start(), piece.piece().end()));
        asides.part(signed < pieces.size());
        List<Heard> rest = pieces.subList(first, Math.max(first, signed));
        WhoFlies.together(pieces.subList(0, first), rest);
        if (rest.isEmpty()) {
            return;
        }
        boolean isSigned =
                isAfterAll && style.figureEachLine() && lines.figures() > 0 && Foot.isSignature(sentence, rest, text);
        if ((isMail && isAfterAll && Foot.isAnInitial(rest))
                || ((asides.isParted() || isSigned || lines.hasLanded(isAfterAll))
                        && !sentence.numbered()
                        && Foot.isSomebody(rest, text))) {
            addNote(sentence.start(), sentence.end());
            return;
        }
        boolean isElsewhere = style.isElsewhere(sentence)
                && (sentence.numbered() || (!rest.get(0).isDetail() && !Tone.isTimed(sentence, rest, text)));
        if (rest.stream().noneMatch(Heard::isFigure)
                && (isElsewhere
                        || Facts.isOne(rest.get(0), lines.isEmpty())
                        || (lines.isEmpty() && Prelude.isOfTheLetter(sentence, rest)))) {
            addAside(sentence, rest);
            return;
        }
        if (Overlong.isFromTo(said)
                || (!sentence.numbered() && Facts.isLimit(said))
                || (pieces.stream().noneMatch(piece -> piece.isFigure() && !piece.isWeak())
                        && Overlong.saysHowLongTheActIs(said))
                || (isAfterAll && !sentence.numbered() && Overlong.isAll(rest))) {
            addAside(sentence, rest);
            return;
        }
        boolean isLine = text.folded().startsWith("\n", sentence.end());
        if ((isLine && Prelude.isOnlyWho(rest))
                || (lines.isEmpty()
                        && (Overlong.headsTheAct(rest)
                                || (!sentence.numbered()
                                        && (Prelude.isCraft(rest) || (isLine && Prelude.isTitle(rest))))))) {
            addNote(sentence.start(), sentence.end());
            return;
        }
        boolean isTimed = Tone.isTimed(sentence, rest, text)
                && !(isAhead() && rest.stream().noneMatch(Heard::isFigure) && !sentence.numbered());
        isProse = false;
        boolean isUnknown = rest.stream()
                .noneMatch(piece -> piece.isFigure() || piece.drafts().get(0).saysAnything());
        if (lines.isEmpty()
                && isUnknown
                && !isTimed
                && !sentence.numbered()
                && style.figureEachLine()
                && rest.stream().noneMatch(piece -> Manner.FLOWN.hasAny(piece.words()))) {
            addAside(sentence, rest);
            return;
        }
        if (!isTimed && isAside(sentence, rest)) {
            addAside(sentence, rest);
            return;
        }
        if (style.isMarked() && !sentence.numbered() && (Facts.isAbout(said) || !belongsToTheMarked(sentence, rest))) {
            addAside(sentence, rest);
            return;
        }
        boolean hasFigure = rest.stream().anyMatch(Heard::isFigure);
        Draft previous = sentence.numbered() || !isNumberedList || lines.isEmpty() ? null : lines.last();
        if (!lines.isEmpty() && ((rest.size() == 1 && rest.get(0).isNumber()) || isOfTheSameLine(rest, sentence))) {
            previous = lines.last();
        }
        lastFigureLine = hasFigure ? sentence.line() : lastFigureLine;
        isNumberedList |= sentence.numbered() && hasFigure;
        asides.listGoesOn();
        boolean isOne = rest.stream()
                        .filter(piece -> piece.isFigure() && !Beside.isGuess(piece) && !Beside.isRemark(piece))
                        .count()
                <= 1;
        talk.hear(sentence, rest, isTimed);
        lines.add(
                rest,
                new Told(
                        sentence,
                        isTimed,
                        isProse,
                        isOne,
                        rest.get(0).isDetail(),
                        sentence.isOfAParagraph(text),
                        isAtTheEnd),
                previous);
        who.hear(pieces.subList(0, first), within(sentence.start(), sentence.end()));
    }

    void finish() {
        lines.finish();
        who.note();
        WholeList.read(lines.all(), text, asides);
        leaveOut(talk.talked(lines.all()));
    }

    private void leaveOut(List<Draft> drafts) {
        lines.all().removeAll(drafts);
        drafts.forEach(draft -> draft.eachSpan(asides::add));
    }

    /** Leaves out what was taken from a stretch of the text. */
    void leaveOut(int start, int end) {
        leaveOut(within(start, end));
    }

    List<Draft> take(int start, int end) {
        List<Draft> taken = within(start, end);
        lines.all().removeAll(taken);
        return taken;
    }

    private List<Draft> within(int start, int end) {
        return lines.all().stream()
                .filter(draft -> draft.start() >= start && draft.start() < end)
                .toList();
    }

    /** Puts drafts right beside those of a sentence; at the end of the list if there are none. */
    void put(List<Draft> drafts, Sentence beside, boolean isAfter) {
        List<Draft> there = within(beside.start(), beside.end());
        int at = there.isEmpty()
                ? lines.all().size()
                : isAfter
                        ? lines.all().indexOf(there.get(there.size() - 1)) + 1
                        : lines.all().indexOf(there.get(0));
        lines.all().addAll(at, drafts);
    }

    /** Puts the figures of a piece at the end of the list, with all its words. */
    void put(Heard piece) {
        List<Draft> drafts = piece.drafts();
        drafts.get(0).beginAt(piece.piece().start());
        Draft last = drafts.get(drafts.size() - 1);
        last.takeIn(last.end(), piece.piece().end());
        lines.all().addAll(drafts);
    }

    /** Lets the last figure of a sentence say what another says. */
    void correct(Sentence sentence, Draft by) {
        List<Draft> there = within(sentence.start(), sentence.end());
        if (!there.isEmpty()) {
            by.forgetNotes();
            there.get(there.size() - 1).correct(by);
        }
    }

    /** Lets others take the place of a figure. */
    void exchange(@Nullable Draft meant, List<Draft> now) {
        if (meant != null) {
            lines.all().addAll(lines.all().indexOf(meant), now);
            lines.all().remove(meant);
            meant.eachSpan(asides::add);
        }
    }

    void swap(Draft one, Draft other) {
        Exchanges.swap(lines.all(), one, other);
    }

    void swap(Sentence one, Sentence other) {
        Exchanges.swap(lines.all(), within(one.start(), one.end()), within(other.start(), other.end()));
    }

    /** Whether a sentence without a mark is flown, or says anything of a figure: ahead of the list only if it is nothing else. */
    private boolean belongsToTheMarked(Sentence sentence, List<Heard> pieces) {
        if (lines.isEmpty()) {
            // "Take off towards the church", "dive in - right behind you" stand ahead of the numbers as well.
            boolean isSurelyFlown = pieces.get(0).drafts().get(0).means("take-off")
                    || (!isBeforeGap
                            && pieces.size() == sentence.pieces().size()
                            && pieces.get(0).isFigure()
                            && pieces.get(0).notUnderstood() == 0);
            return pieces.stream().noneMatch(piece -> Manner.SENTENCE.hasAny(piece.words()))
                    && pieces.stream()
                            .allMatch(piece -> piece.isSilent()
                                    || piece.isDetail()
                                    || (piece.isFigure()
                                            && piece.drafts().get(0).notes().isEmpty())
                                    || (isSurelyFlown && piece.notUnderstood() <= MOST_WHERE));
        }
        boolean isOnTheLine = sentence.line() == lastFigureLine;
        return pieces.stream()
                .anyMatch(piece -> piece.isDetail() || (piece.isFigure() && (isOnTheLine || !Beside.isGuess(piece))));
    }

    /** "Loop. Gate 1200." */
    private boolean isOfTheSameLine(List<Heard> pieces, Sentence sentence) {
        return sentence.line() == lastFigureLine
                && !pieces.get(0).isFigure()
                && !Manner.FLOWN.hasAny(pieces.get(0).words())
                && pieces.get(0).beginsWith(Manner.QUALIFYING);
    }

    private boolean isAside(Sentence sentence, List<Heard> pieces) {
        boolean figure = pieces.stream().anyMatch(Heard::isFigure);
        if (Tone.isTableHead(pieces) || Tone.isHeading(pieces, text, sentence)) {
            boolean details = pieces.stream().anyMatch(Heard::isDetail)
                    && pieces.stream().allMatch(p -> p.isDetail() || p.isSilent());
            return !details;
        }
        if (figure && pieces.size() == 1 && Condition.isAll(pieces.get(0).words())) {
            told++;
            return true;
        }
        boolean isGreetingsLine = isMail && lines.isEmpty() && sentence.line() == greetingLine;
        if (!figure && isGreetingsLine && !sentence.numbered()) {
            return true;
        }
        if (Tone.tells(sentence, pieces)) {
            if (style.isMarked() && sentence.numbered() && Prelude.isFlown(pieces.get(0))) {
                isProse = true;
                return false;
            }
            if (figure && Telling.isFlown(pieces, text, sentence)) {
                isProse = true;
                return false;
            }
            told += figure ? 1 : 0;
            boolean doubtful = pieces.stream().anyMatch(p -> Manner.DOUBT.hasAny(p.words()));
            return !figure || !figuresFromTelling || doubtful;
        }
        if (figure) {
            return false;
        }
        long words = pieces.stream().mapToLong(p -> p.words().size()).sum();
        boolean open = pieces.stream().anyMatch(p -> !p.isDetail() && !p.isSilent());
        return open
                && ((asides.isParted() && words <= 6)
                        || (lines.isEmpty() && Prelude.isName(sentence, pieces, text))
                        || isApart(sentence));
    }

    /** Words of their own, ahead of the list or behind it. */
    private boolean isApart(Sentence sentence) {
        boolean goesOn = isMail && sentence.line() == lastFigureLine;
        boolean behind = isAfterAll && lines.figures() > 0 && (sentence.followsGap(text) || asides.isLast() || goesOn);
        return !sentence.numbered() && (behind || isAhead());
    }

    private boolean isAhead() {
        return lines.figures() == 0 && lines.isEmpty() && isBeforeGap && !isAfterAll;
    }

    private void greet(Heard piece, Sentence sentence) {
        if (piece.beginsWith(Manner.GREETING)) {
            isMail = true;
            greetingLine = sentence.line();
        }
    }

    private void addAside(Sentence sentence, List<Heard> pieces) {
        for (Heard piece : pieces) {
            greet(piece, sentence);
            addNote(piece.piece().start(), piece.piece().end());
            asides.part(piece.beginsWith(Manner.PARTING));
        }
        if (pieces.stream().anyMatch(Heard::isFigure)) {
            asides.addTold(
                    pieces.get(0).piece().start(),
                    pieces.get(pieces.size() - 1).piece().end());
        }
    }
}
