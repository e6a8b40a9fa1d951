package crowdline.list;

import crowdline.list.line.FigureList;
import crowdline.list.name.Choices;
import crowdline.list.name.Initials;
import crowdline.list.name.Names;
import crowdline.list.name.Spelling;
import crowdline.list.piece.Heard;
import crowdline.list.piece.PieceReader;
import crowdline.list.split.Piece;
import crowdline.list.split.Sentence;
import crowdline.list.split.Splitter;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Reads the list of figures that a pilot sent. It takes time in proportion to the text, and never fails: what is wrong
 * with a text is a finding of the list. It remembers how words are spelt, and is used by one thread at a time.
 */
public final class ListReader {
    /** Longer texts are not read; a list of the longest act is a tenth of it. */
    public static final int MOST_LETTERS = 50_000;
    /** Texts with more lines are not read. */
    public static final int MOST_LINES = 1_000;

    /** Ahead of a letter that was answered. */
    private static final Pattern QUOTES = Pattern.compile(
            "\\bwrote\\s*:|-{2,} ?(?:begin |start of )?(?:(?:the |an? )?(?:original|forwarded|weitergeleitete|urspr)|message\\b).*");

    private static final Pattern ANOTHER =
            Pattern.compile("\\b(?:last (?:year|time|week|season)|same as|as before)\\b");
    private static final Pattern SUPPLY =
            Pattern.compile("\\b(?:litres?|liters?|gallons?|avgas|kerosene|fuel (?:after|before|for|on))\\b");
    /** All of a list, by another. */
    private static final Pattern OTHER_DAY = Pattern.compile(
            "(?:it's |its |it is |pretty much |much |about |basically |the )*same (?:list |routine |sequence |display |thing |stuff )?as (?:on |last |in |the |my )*"
                    + "(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day|yesterday|usual|always|practice|rehearsal|year|season|time|weekend)\\b.*");

    /** With as many figures the list stands in the answer, not in what was answered. */
    private static final int LEAST_ANSWERED = 5;

    private final Names names;
    private final Spelling spelling;
    private final PieceReader pieces;
    private final Choices choices;

    /** Reads what this catalogue has. */
    public ListReader(Catalogue catalogue) {
        names = new Names(catalogue);
        spelling = new Spelling(names, names.wordings());
        pieces = new PieceReader(names, new Initials(catalogue), spelling);
        choices = new Choices(names.figures(), spelling);
    }

    /** What a text lists. */
    public FigureList read(String written) {
        long lines = written.lines().count();
        if (written.length() > MOST_LETTERS || lines > MOST_LINES) {
            return refused(String.format(
                    Locale.UK,
                    "The list has %,d %s and %,d letters; %,d lines and %,d letters are read at most, so cut it"
                            + " down to what is flown",
                    lines,
                    lines == 1 ? "line" : "lines",
                    written.length(),
                    MOST_LINES,
                    MOST_LETTERS));
        }
        Text plain = Text.of(written, spelling::isWritten);
        Text text = plain.naming(called -> ShowNames.isOne(plain, called, pieces::read));
        List<Sentence> sentences = Splitter.split(text);
        List<List<Heard>> heard = sentences.stream()
                .map(sentence -> sentence.pieces().stream()
                        .map(piece -> heard(text, piece))
                        .toList())
                .toList();
        Style style = Style.of(sentences, heard);
        Assembly assembly = new Assembly(text, names, style, false);
        add(assembly, text, sentences, heard);
        if (assembly.figures() == 0 && assembly.told() > 0) {
            assembly = new Assembly(text, names, style, true);
            add(
                    assembly,
                    text,
                    sentences,
                    sentences.stream()
                            .map(sentence -> sentence.pieces().stream()
                                    .map(piece -> heard(text, piece))
                                    .toList())
                            .toList());
        }
        return new Findings(text, choices::nearest).listed(assembly, (int)
                written.lines().filter(line -> !line.isBlank()).count());
    }

    private void add(Assembly assembly, Text text, List<Sentence> sentences, List<List<Heard>> heard) {
        FactSheet facts = FactSheet.of(text, sentences, heard);
        int last = sentences.size() - 1;
        while (last >= 0
                && (facts.has(last)
                        || heard.get(last).stream().noneMatch(Heard::isFigure)
                        || Tone.tells(sentences.get(last), heard.get(last)))) {
            last--;
        }
        boolean[] apart = apart(text, sentences, heard);
        int begin = begin(text, sentences, heard);
        Interview interview = Interview.of(text, sentences, heard);
        Reading reading = (from, to) -> pieces.read(text, from, to);
        Revisions revisions = Revisions.of(text, sentences, heard, reading);
        FlownIn flown = new FlownIn(heard);
        Exchanges exchanges = new Exchanges(text, sentences, flown, reading);
        Insertions insertions = new Insertions(text, sentences, heard, flown, reading);
        Afterthoughts afterthoughts =
                new Afterthoughts(text, sentences, flown, reading, Insertions.listed(sentences, heard));
        Days days = Days.of(text, sentences, heard);
        if (days.areSeveral()) {
            assembly.asides().ask(days.question());
        }
        Replies replies = new Replies(text, sentences, heard);
        Nested nested = new Nested(text, sentences, heard);
        int tableHead = tableHead(text, sentences);
        boolean isQuoted = false;
        for (int i = 0; i < sentences.size(); i++) {
            Sentence sentence = sentences.get(i);
            assembly.stand(i > last, apart[i], i >= last);
            boolean isSaid = !days.isOther(i)
                    && !replies.isOlder(i)
                    && (replies.takes(i, assembly) || interview.takes(i, assembly));
            if (isSaid) {
                continue;
            }
            if (nested.isSaidOfTheOneAbove(i) && !assembly.lines().isEmpty()) {
                Attached.to(assembly.lines().get(assembly.lines().size() - 1), sentence, heard.get(i), text);
                continue;
            }
            boolean isHead = sentence.isMailHead(text);
            isQuoted |= isHead
                    && assembly.figures() >= LEAST_ANSWERED
                    && QUOTES.matcher(text.folded())
                            .region(sentence.start(), sentence.end())
                            .find();
            boolean isOfAnother = (i < begin && !sentence.numbered() && isOfAnother(text, sentence))
                    || (heard.get(i).stream().noneMatch(Heard::isFigure) && isOfAnotherDay(text, sentence));
            boolean isTableHead = text.isTableHead(sentence.pieces().get(0).from());
            if (sentence.aside()
                    || days.isOther(i)
                    || facts.has(i)
                    || replies.isOlder(i)
                    || exchanges.takes(i)
                    || insertions.takes(i)
                    || (i < begin && exchanges.saysAhead(i, heard.get(i)))
                    || isHead
                    || isQuoted
                    || isOfAnother
                    || isTableHead
                    || (i < tableHead && saysNoFigure(heard.get(i)))
                    || interview.isAsked(i)
                    || interview.isAnswer(i)
                    || nested.isFurtherOut(i)
                    || (assembly.figures() >= LEAST_ANSWERED && Weather.isOf(text, sentence))
                    || (!sentence.numbered() && isOfSupply(text, sentence, heard.get(i)))
                    || revisions.takes(sentence)
                    || afterthoughts.takes(i)) {
                assembly.addNote(sentence.start(), sentence.end());
            } else {
                assembly.add(sentence, heard.get(i));
            }
        }
        assembly.finish();
        replies.make(assembly);
        revisions.make(assembly);
        exchanges.make(assembly);
        insertions.make(assembly);
        afterthoughts.make(assembly);
        int rest = sentences.isEmpty() ? 0 : sentences.get(sentences.size() - 1).end();
        if (hasWord(text.written().substring(rest))) {
            assembly.addNote(rest, text.written().length());
        }
    }

    /** Which sentence is the first head of a table; none is before the first if there is none. */
    private static int tableHead(Text text, List<Sentence> sentences) {
        for (int i = 0; i < sentences.size(); i++) {
            if (text.isTableHead(sentences.get(i).pieces().get(0).from())) {
                return i;
            }
        }
        return 0;
    }

    /** Ahead of a table: "aircraft,Tern 200" names none, whatever it is called. */
    private static boolean saysNoFigure(List<Heard> pieces) {
        boolean isLabelled = pieces.size() > 1 && pieces.get(0).words().stream().allMatch(Manner.HEADING::has);
        return isLabelled || pieces.stream().noneMatch(Heard::isFigure);
    }

    /** Ahead of which an empty line comes sooner than a figure. */
    private static boolean[] apart(Text text, List<Sentence> sentences, List<List<Heard>> heard) {
        boolean[] apart = new boolean[sentences.size()];
        for (int i = sentences.size() - 2; i >= 0; i--) {
            apart[i] = sentences.get(i + 1).followsGap(text)
                    || (apart[i + 1] && heard.get(i + 1).stream().noneMatch(Heard::isFigure));
        }
        return apart;
    }

    /** Where lines begin each of which begins with a figure; 0 if nowhere. */
    private static int begin(Text text, List<Sentence> sentences, List<List<Heard>> heard) {
        int first = 0;
        int lines = 0;
        int line = -1;
        for (int i = 0; i < sentences.size(); i++) {
            if (sentences.get(i).line() == line) {
                continue;
            }
            line = sentences.get(i).line();
            boolean begins = heard.get(i).get(0).isFigure()
                    && !isOfAnother(text, sentences.get(i))
                    && !Exchanges.says(text, sentences.get(i));
            first = lines == 0 ? i : first;
            lines = begins ? lines + 1 : 0;
            if (lines == LEAST_ANSWERED) {
                return first;
            }
        }
        return 0;
    }

    /** "Same as last year, but the spin is out", ahead of the list in full. */
    private static boolean isOfAnother(Text text, Sentence sentence) {
        return ANOTHER.matcher(text.folded())
                .region(sentence.start(), sentence.end())
                .find();
    }

    /** "Same as Thursday but shorter", and nothing that is flown. */
    private static boolean isOfAnotherDay(Text text, Sentence sentence) {
        return OTHER_DAY.matcher(sentence.said(text)).matches();
    }

    /** "We burn 200 litres and need 300 before we go home": what is to be had on the ground. */
    private static boolean isOfSupply(Text text, Sentence sentence, List<Heard> pieces) {
        return pieces.stream().filter(Heard::isFigure).count() <= 1
                && SUPPLY.matcher(text.folded())
                        .region(sentence.start(), sentence.end())
                        .find();
    }

    private static boolean hasWord(String written) {
        return written.chars().anyMatch(Character::isLetterOrDigit);
    }

    private Heard heard(Text text, Piece piece) {
        return new Heard(piece, pieces.read(text, piece.from(), piece.to()), text.words(piece.from(), piece.to()));
    }

    private static FigureList refused(String why) {
        return new FigureList(List.of(), List.of(), List.of(new Finding(Severity.ERROR, "list-too-long", why, "")));
    }
}
