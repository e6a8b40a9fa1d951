package crowdline.list.split;

import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Parts a text into sentences and these into pieces, in time that grows as the text does. */
public final class Splitter {
    /** Nobody writes more of one figure; a longer stretch is cut between two words. */
    private static final int LONGEST_PIECE = 400;

    private static final Pattern MARK = Pattern.compile(
            "[\\s>|]*(?:[-*•·–—▪◦‣●○+»]+\\s+|(?:[-=~]{1,3}>+|[\\p{So}&&[^°]]{1,2}\\ufe0f?)\\s+|(?:fig(?:ure)?|no|item|step|manoeuvre|maneuver)\\.?\\s*#?\\d{1,3}\\b\\s*[:.)-]?\\s*(?=\\S)"
                    + "|#?\\s?\\(?\\d{1,3}(?:\\.\\)|\\s*[.):]|\\s-|/(?=\\s))(?=\\s|\\p{L})\\s*|(?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth|last|then|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?: figure)?\\s*[:>]\\s+|(?:alpha|alfa|bravo|charlie|delta|echo|foxtrot|golf|hotel|india|juliett?|kilo|lima|mike|november|oscar|papa|quebec|romeo|sierra|tango)[.:)]\\s+|\\d{1,3}\\t|#\\d{1,3}\\s+|\\(?(?:[a-z]|x{0,2}(?:ix|iv|vi{0,3}|i{1,3})|xx?)[.)]\\s+|(?:[a-z]|\\d{1,2})\\s+/\\s+(?=\\p{L})|(?:[a-v]/|[b-pr-v]:)\\s+(?=\\p{L})|\\[(?:[ x]|\\d{1,2})?\\]\\s*){1,4}+");

    /** The letter that some programs put in place of a bullet. */
    private static final Pattern RING = Pattern.compile("\\s*o\\s+(?=\\S)");

    private static final int LEAST_RINGS = 3;

    private static final Pattern COUNTED = Pattern.compile(
            "[\\s>|]*(\\d{1,3}|(?<rank>\\d{1,2}(?:st|nd|rd|th))|[a-z]|[xvi]{2,5})\\s+(?![x×*]\\s)(?=[\\p{L}\\d(#\"“‘'])");

    private static final Pattern BREAK = Pattern.compile("(?<stop>(?<=[\\p{L}\\d)\"'])[.!?]+(?=\\s|$))"
            + "|(?<comma>(?:-+>+|=+>+|~+>|[→⇒➔➜➡»›⟶►▶]|>+|;|(?<!\\d),|,(?!\\d{3}(?:\\D|$)|(?:5|25|75)(?![\\d,]))|\\s\\+\\s|\\s/\\s|\\.{2,}|…|\\s\\\\\\s))"
            + "|(?<numbered>(?<=[\\s;,])(?:\\(?\\d{1,2}[.)](?=\\s|\\p{L})\\s?|\\[\\d{1,2}\\]\\s|[a-h]\\)\\s))"
            + "|(?<bare>(?<=[\\s;,])\\d{1,2}\\s(?=\\p{L}|1/[24]))"
            + "|(?<word>\\b(?:and then|(?:and )?that's it(?= (?:i |we )?(?:and )?land)|so(?= (?:it's|its|it is|that's) an? \\w)|so(?= (?:i|we) (?:take|fly|run|dive|pull|come|start|open|loop|roll))|(?<=\\b(?:wave|waggle|bow) )and(?= land)|and(?= (?:i|we|he|she|they)(?:'ll| will)? lands?\\b)|and(?= another (?:from|to|at|on|the other|going|in|with|left|right|one|back|for)\\b)|and(?= a second(?: one)?(?:[,.;!\\n]|$| (?:from|to|at|straight|right|after)\\b))|(?<![^\\n])right then|then|and finally|and last(?:ly)?(?= (?:an?|my|the) )|last(?: but)? not least|followed(?: immediately| directly)? (?:by|with)|follow(?:s)? (?:it|that|this) (?:by|with)|(?:straight |directly |leading |flowing |going |back |right ){0,3}into|"
            + "(?:right |straight |directly )?after (?:that|this|which)|afterwards|before (?:a|an|the|my|another|pulling|going|doing)\\b(?! crowd)|before(?= (?:(?:i|we|he|she) )?(?:land(?:ing|s)?|coming|flying|finishing)\\b)|onto|"
            + "(?:(?:to|and|then|i|we) ){0,3}(?:finish|finishing|(?<!(?:left|right|hand|far|near|other|each|both|same|opposite) )end|ending|close|closing|start|starting|begin|beginning|open|opening)(?:es|s)?(?: off| up| it| them)? (?:with|by(?= (?:a|an|the|my|doing|flying)\\b)))\\b)"
            + "|(?<person>(?<=\\bi [a-z][^\\n]{2,200})(?<!\\b(?:as|when|whenever|before|while|once|if|after|where|until|till|that|what|which|because|like|how|so|and|then|but) )\\b(?=i (?:do|fly|land|take off|come in|pull up|dive|loop|roll|start|open)\\b))"
            + "|(?<spoken>\\b(?:comma|full stop(?! land)|new line|semicolon)\\b)"
            + "|(?<dash>\\s<-+|\\t+|\\|+| {3,}(?=\\S)|\\s[-–—]+\\s|:(?=\\s|$))");

    /** As many end what the commas between them part. */
    private static final Pattern SEMICOLONS = Pattern.compile("(?=.*,)(?:[^;]*[^;\\s|];\\s){3}.*", Pattern.DOTALL);

    private static final Pattern UNPUNCTUATED = Pattern.compile("(?:[^.,;:!?\\n]*?\\bi [a-z]+\\b){3}[^.,;:!?\\n]*");

    private static final List<String> ROMAN = List.of(
            "i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii", "xiii", "xiv", "xv", "xvi",
            "xvii", "xviii", "xix", "xx");

    /** Signs in a row are no bullet. */
    private static final Pattern DECORATION = Pattern.compile("\\s*([-*=~_+])\\1+\\s*");

    /** What follows is flown after what stands before. */
    private static final Pattern LEADS_ON = Pattern.compile(
            "(?:and |right )?then|and finally|followed.*|(?:right |straight |directly )?after (?:that|this|which)|afterwards");

    private static final Pattern PULLS_UP =
            Pattern.compile(".*\\b(?:pull(?:s|ing)?|up|chang(?:es?|ing)|fall(?:s|ing)?)\\s*", Pattern.DOTALL);

    private final Text text;
    private final Chat chat;
    private final Stops stops;
    private final List<Sentence> sentences = new ArrayList<>();

    /** The last number that counts what is flown in one line. */
    private int counted;

    /** Whether the line that is split has nothing but its words to part it: "i do a loop i do a spin i land". */
    private boolean isUnpunctuated;

    /** The numbers in the line that is split. */
    private Running running;

    private Splitter(Text text) {
        this.text = text;
        this.stops = new Stops(text);
        this.running = Running.none();
        this.chat = Chat.of(text.folded());
    }

    /** The sentences of a text, with every letter of it in one of their pieces. */
    public static List<Sentence> split(Text text) {
        Splitter splitter = new Splitter(text);
        splitter.splitLines();
        return splitter.sentences;
    }

    private void splitLines() {
        List<Line> lines = lines();
        Broken broken = new Broken(text, chat, lines);
        int number = 0;
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            int end = line.end();
            while (broken.goesOn(i)) {
                i++;
                end = lines.get(i).end();
            }
            if (!line.isBlank()) {
                int message = chat.words(line.start(), line.end());
                if (chat.isAnswered(line.start(), line.end())) {
                    aside(end, number);
                } else {
                    if (message > line.start()) {
                        aside(message, number);
                    }
                    split(line, end, number);
                }
            }
            number++;
        }
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        int start = 0;
        int counted = 0;
        String folded = text.folded();
        boolean hasRings =
                folded.lines().filter(line -> RING.matcher(line).lookingAt()).count() >= LEAST_RINGS;
        while (start < folded.length()) {
            int end = lineEnd(start);
            int message = chat.words(start, end);
            Matcher mark = MARK.matcher(folded).region(message, end);
            int words = mark.lookingAt() ? mark.end() : message;
            Matcher ring = RING.matcher(folded).region(message, end);
            words = hasRings && ring.lookingAt() ? ring.end() : words;
            boolean numbered = words > message
                    && !DECORATION.matcher(folded).region(message, words).matches();
            Matcher count = COUNTED.matcher(folded).region(message, end);
            if (!numbered && count.lookingAt() && isNext(count.group(1), counted) && isCountedOn(end, counted)) {
                counted = next(count.group(1), counted);
                words = count.group("rank") == null ? count.end() : count.start("rank");
                numbered = true;
            }
            while (words < end && (Character.isWhitespace(folded.charAt(words)) || folded.charAt(words) == '>')) {
                words++;
            }
            lines.add(new Line(start, end, words, numbered));
            start = end + 1;
        }
        return lines;
    }

    /** Some leave out I and J. */
    private static boolean isNext(String mark, int counted) {
        int skipped = Character.isLetter(mark.charAt(0)) && (counted == 8 || counted == 9) ? 1 : 0;
        int number = next(mark, counted);
        return number > counted && number <= counted + 1 + skipped;
    }

    /** What a mark counts where the one before counted so far: "v" is the fifth behind "iv". */
    private static int next(String mark, int counted) {
        return ROMAN.indexOf(mark) == counted ? counted + 1 : count(mark);
    }

    /** The second of two lines shows that numbers count the lines; the first alone might count the figures. */
    private boolean isCountedOn(int end, int counted) {
        if (counted > 0) {
            return true;
        }
        int next = end + 1;
        while (next < text.folded().length()
                && Character.isWhitespace(text.folded().charAt(next))) {
            next++;
        }
        Matcher count = COUNTED.matcher(text.folded())
                .region(Math.min(next, text.folded().length()), text.folded().length());
        return count.lookingAt() && next(count.group(1), 1) == 2;
    }

    private int lineEnd(int start) {
        for (int i = start; i < text.folded().length(); i++) {
            char c = text.folded().charAt(i);
            if (c == '\n' || c == '\r' || c == '\u2028' || c == '\f' || c == '\u0085') {
                return i;
            }
        }
        return text.folded().length();
    }

    private void split(Line line, int end, int number) {
        Sentence last = sentences.isEmpty() ? null : sentences.get(sentences.size() - 1);
        int start = last == null ? 0 : last.end();
        List<Piece> pieces = new ArrayList<>();
        int pieceStart = start;
        int from = line.words();
        Piece.Parting parting = Piece.Parting.LINE;
        boolean numbered = line.numbered();
        Matcher found = BREAK.matcher(text.folded()).region(line.words(), end);
        found.useTransparentBounds(true);
        counted = line.numbered() ? count(text.folded().substring(line.start(), line.words())) : 0;
        running = running.of(text.folded(), line.words(), end);
        isUnpunctuated =
                UNPUNCTUATED.matcher(text.folded()).region(line.words(), end).matches();
        boolean areStops =
                SEMICOLONS.matcher(text.folded()).region(line.words(), end).matches();
        List<Bracket> brackets = brackets(line.words(), end);
        int next = 0;
        while (found.find()) {
            while (next < brackets.size() && brackets.get(next).close() < found.start()) {
                next++;
            }
            boolean isInside = next < brackets.size() && brackets.get(next).open() < found.start();
            if (isInside || !isBreak(found, from)) {
                if (found.group("numbered") != null || found.group("bare") != null) {
                    found.region(found.start() + 1, end);
                }
                continue;
            }
            boolean isWord = found.group("word") != null
                    || found.group("person") != null
                    || found.group("numbered") != null
                    || found.group("bare") != null;
            boolean isStop = (found.group("stop") != null && !stops.trailsOff(found, from))
                    || (areStops && found.group().equals(";"));
            int pieceEnd = isWord ? found.start() : found.end();
            cut(pieces, pieceStart, from, found.start(), pieceEnd, parting);
            pieceStart = pieceEnd;
            from = found.end();
            parting = parting(found);
            if (isStop) {
                parting = Piece.Parting.LINE;
                close(start, pieceStart, number, numbered, pieces);
                start = pieceStart;
                numbered = false;
            }
        }
        cut(pieces, pieceStart, from, end, end, parting);
        close(start, end, number, numbered, pieces);
    }

    /** Sets apart what stands up to here. */
    private void aside(int end, int number) {
        int start =
                sentences.isEmpty() ? 0 : sentences.get(sentences.size() - 1).end();
        List<Piece> whole = new ArrayList<>();
        cut(whole, start, start, end, end, Piece.Parting.LINE);
        sentences.add(new Sentence(start, end, number, false, whole, true));
    }

    private static Piece.Parting parting(Matcher found) {
        if (found.group("dash") != null) {
            return Piece.Parting.DASH;
        }
        String word = found.group("word");
        return word != null && LEADS_ON.matcher(word).matches() ? Piece.Parting.THEN : Piece.Parting.COMMA;
    }

    private void close(int start, int end, int number, boolean numbered, List<Piece> pieces) {
        if (!pieces.isEmpty()) {
            sentences.add(new Sentence(start, end, number, numbered, pieces, false));
            pieces.clear();
        }
    }

    private void cut(List<Piece> pieces, int start, int from, int to, int end, Piece.Parting parting) {
        int begin = start;
        int words = from;
        Piece.Parting by = parting;
        while (to - words > LONGEST_PIECE) {
            int at = words + LONGEST_PIECE;
            while (at > words && !Character.isWhitespace(text.folded().charAt(at))) {
                at--;
            }
            at = at == words ? words + LONGEST_PIECE : at;
            pieces.add(new Piece(begin, words, at, at, by));
            begin = at;
            words = at;
            by = Piece.Parting.COMMA;
        }
        pieces.add(new Piece(begin, words, Math.max(words, to), Math.max(words, end), by));
    }

    private boolean isBreak(Matcher found, int from) {
        if (found.group("word") != null && found.group().endsWith("into")) {
            return !PULLS_UP.matcher(text.folded())
                    .region(Math.max(from, found.start() - 40), found.start())
                    .matches();
        }
        if (found.group("stop") != null) {
            return stops.part(found, from);
        }
        if (found.group("person") != null) {
            return isUnpunctuated;
        }
        if (found.group("bare") != null) {
            return running.isAt(found.start());
        }
        if (found.group("numbered") != null) {
            int number = count(found.group());
            boolean isNext = number == counted + 1;
            counted = isNext ? number : counted;
            return isNext;
        }
        if (found.group("dash") != null
                && !found.group().isBlank()
                && found.group().indexOf('|') < 0
                && isLabel(from, found.start())) {
            return false;
        }
        return (found.group("comma") == null && found.group("dash") == null) || !isWay(found);
    }

    /** "Entry speed: 140" says one thing. */
    private boolean isLabel(int from, int to) {
        List<Word> words = Words.of(text.folded(), from, to);
        return !words.isEmpty() && words.stream().allMatch(Manner.LABEL::has);
    }

    /** The number that a mark such as "3." or "c)" counts, or 0. */
    private static int count(String mark) {
        String digits = mark.replaceAll("\\D", "");
        String letters = mark.replaceAll("[^a-z]", "");
        return !digits.isEmpty() && digits.length() < 4
                ? Integer.parseInt(digits)
                : letters.length() == 1 ? letters.charAt(0) - 'a' + 1 : 0;
    }

    /** "L -> R" and "left > right" are one thing. */
    private boolean isWay(Matcher found) {
        String before = text.folded()
                .substring(Math.max(0, found.start() - 6), found.start())
                .stripTrailing();
        String after = text.folded()
                .substring(found.end(), Math.min(text.folded().length(), found.end() + 7))
                .stripLeading();
        return found.group().matches("[-=~>→⇒\\s/]+")
                && before.matches("(?s)(?:.*[^\\p{L}])?(?:l|r|left|right)")
                && after.matches("(?s)(?:l|r|left|right)(?:[^\\p{L}].*)?");
    }

    private record Bracket(int open, int close) {}

    /** What stands in brackets that close soon, outermost. */
    private List<Bracket> brackets(int from, int to) {
        List<Bracket> brackets = new ArrayList<>();
        for (int i = from; i < to; i++) {
            char c = text.folded().charAt(i);
            int close = c == '(' ? closing(')', i, to) : c == '[' ? closing(']', i, to) : -1;
            if (close > 0) {
                brackets.add(new Bracket(i, close));
                i = close;
            }
        }
        return brackets;
    }

    private int closing(char closing, int open, int end) {
        int limit = Math.min(end, open + LONGEST_PIECE);
        for (int i = open + 1; i < limit; i++) {
            if (text.folded().charAt(i) == closing) {
                return i;
            }
        }
        return -1;
    }
}
